package afterweld.casefile;

import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.SHARE;

import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import java.util.List;
import java.util.Optional;

/** Reads {@code ring} and {@code seam}: the way of the arc, and where the section is taken. */
final class CourseReader {
  private static final Choices<Place> ON_RING = Choices.of(List.of(Place.values()), Ring::label);
  private static final Choices<Place> ON_SEAM = Choices.of(List.of(Place.values()), Seam::label);
  private static final Measure DIAMETER = Measure.within("diameter", LENGTH, 10, 5000, "mm");
  private static final Measure WELD_LENGTH = Measure.within("length", LENGTH, 10, 2000, "mm");
  private static final Measure BEYOND = Measure.within("beyond", LENGTH, 0, 250, "mm");
  private static final Measure END_CURRENT = Measure.within("end_current", SHARE, 40, 100, "%");
  private static final String POSITION = "position";
  private static final String SEAM = "seam";

  private final Section top;
  private final Plates plates;

  CourseReader(Section top, Plates plates) {
    this.top = top;
    this.plates = plates;
  }

  /** The tube the weld goes round, if there is one. */
  Optional<Ring> ring() {
    return top.inner("ring", "keys diameter, position and end_current").flatMap(this::ring);
  }

  /** The straight weld whose start and end count, if there is one. */
  Optional<Seam> seam() {
    Optional<Seam> seam =
        top.inner(SEAM, "keys length, beyond, position and end_current")
            .flatMap(CourseReader::seam);
    if (top.has(SEAM) && top.has("ring")) {
      top.unwanted(
          SEAM, "found together with ring, which meets its start; expected one of the two");
    }
    return seam;
  }

  private Optional<Ring> ring(Section section) {
    double diameter = section.required(DIAMETER);
    if (diameter <= 2 * plates.right().thickness()) {
      section.fault(
          DIAMETER.key(),
          "found "
              + DIAMETER.show(diameter)
              + "; expected more than twice the thickness of the right side");
    }
    Place place = section.choice(POSITION, ON_RING).orElse(Place.WORST);
    double endCurrent = section.quantityOr(END_CURRENT, 1);
    section.finish();
    return section.built(() -> new Ring(diameter, place, endCurrent));
  }

  private static Optional<Seam> seam(Section section) {
    double length = section.required(WELD_LENGTH);
    double beyond = section.quantityOr(BEYOND, 0);
    Place place = section.choice(POSITION, ON_SEAM).orElse(Place.WORST);
    double endCurrent = section.quantityOr(END_CURRENT, 1);
    section.finish();
    return section.built(() -> new Seam(length, beyond, place, endCurrent));
  }
}
