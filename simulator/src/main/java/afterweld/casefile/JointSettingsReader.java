package afterweld.casefile;

import static afterweld.casefile.Dimension.ANGLE;
import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.PRESSURE;

import afterweld.joint.FilletWeld;
import afterweld.joint.JointSettings;
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.FilletSides;
import afterweld.joint.JointSettings.Member;
import afterweld.joint.JointSettings.Tube;
import afterweld.weld.Joint;
import java.util.List;
import java.util.Optional;

/** Reads {@code gauge}, {@code bend}, {@code fillet}, {@code tube} and {@code member}. */
final class JointSettingsReader {
  private static final Measure GAUGE = Measure.within("gauge", LENGTH, 5, 1000, "mm");
  private static final Measure BEND_ANGLE = Measure.above("angle", ANGLE, 0, 180, "deg");
  private static final Measure LENGTH_KEY = Measure.above("length", LENGTH, 0, 10_000, "mm");
  private static final Measure WIDTH_KEY = Measure.above("width", LENGTH, 0, 1000, "mm");
  private static final Measure MEMBER_WIDTH = Measure.above("width", LENGTH, 0, 10_000, "mm");
  private static final Measure LEG = Measure.within("leg", LENGTH, 2, 100, "mm");
  private static final Measure SECOND_LEG = Measure.within("second_leg", LENGTH, 2, 100, "mm");
  private static final Measure DIAMETER = Measure.above("diameter", LENGTH, 0, 5000, "mm");
  private static final Measure PRESSURE_KEY = Measure.above("pressure", PRESSURE, 0, 1000, "bar");
  private static final Choices<BendLoad> BEND_LOADS =
      Choices.of(List.of(BendLoad.values()), BendLoad::label);
  private static final Choices<FilletLoad> FILLET_LOADS =
      Choices.of(List.of(FilletLoad.values()), FilletLoad::label);
  private static final Choices<FilletSides> FILLET_SIDES =
      Choices.of(List.of(FilletSides.values()), FilletSides::label);

  /** A bend of a shorter strip is not bending (common practice). */
  private static final double STRIP_IN_THICKNESSES = 4;

  /**
   * The thin-wall formula holds from this ratio of mean radius to wall on (membrane theory, common
   * practice).
   */
  private static final double THIN_WALL = 10;

  private final Plates plates;
  private final Joint joint;

  JointSettingsReader(Plates plates, Joint joint) {
    this.plates = plates;
    this.joint = joint;
  }

  JointSettings read(Section top) {
    return new JointSettings(
        top.quantity(GAUGE).orElse(JointSettings.DEFAULT.gauge()),
        top.inner("bend", "keys angle, length, width and load")
            .flatMap(this::bend)
            .orElse(BendSettings.DEFAULT),
        top.inner("fillet", "keys leg, second_leg, length, load and sides").flatMap(this::fillet),
        top.inner("tube", "keys diameter and pressure").flatMap(this::tube),
        top.inner("member", "the key width").flatMap(this::member));
  }

  private Optional<BendSettings> bend(Section section) {
    BendSettings usual = BendSettings.DEFAULT;
    double angle = section.quantityOr(BEND_ANGLE, usual.angle());
    double length = section.quantityOr(LENGTH_KEY, usual.length());
    double width = section.quantityOr(WIDTH_KEY, usual.width());
    BendLoad load = section.choice("load", BEND_LOADS).orElse(usual.load());
    double shortest = STRIP_IN_THICKNESSES * plates.thickest();
    if (Measure.exceeds(shortest, length)) {
      section.fault(
          LENGTH_KEY.key(),
          "found "
              + LENGTH_KEY.show(length)
              + "; expected at least four thicknesses, "
              + LENGTH_KEY.show(shortest));
    }
    section.finish();
    return section.built(() -> new BendSettings(angle, length, width, load));
  }

  private Optional<Fillet> fillet(Section section) {
    double leg = section.required(LEG);
    double second = section.quantityOr(SECOND_LEG, leg);
    double length = section.required(LENGTH_KEY);
    Optional<FilletLoad> load = section.requiredChoice("load", FILLET_LOADS);
    double throat = leg * second / Math.hypot(leg, second);
    double shortest = FilletWeld.shortest(throat);
    if (Measure.exceeds(shortest, length)) {
      section.fault(
          LENGTH_KEY.key(),
          "found "
              + LENGTH_KEY.show(length)
              + "; expected at least eight throats and 30 mm, "
              + LENGTH_KEY.show(shortest));
    }
    if (joint == Joint.LAP && Measure.exceeds(Math.min(leg, second), plates.thickest())) {
      section.fault(
          LEG.key(),
          "found "
              + LEG.show(Math.min(leg, second))
              + "; expected at most "
              + LEG.show(plates.thickest())
              + ": the leg of a lap on the edge of a part is no larger than that edge");
    }
    Optional<FilletSides> sides = section.choice("sides", FILLET_SIDES);
    section.finish();
    return section.built(() -> new Fillet(leg, second, length, load.orElseThrow(), sides));
  }

  private Optional<Member> member(Section section) {
    double width = section.required(MEMBER_WIDTH);
    section.finish();
    return section.built(() -> new Member(width));
  }

  private Optional<Tube> tube(Section section) {
    double diameter = section.required(DIAMETER);
    double pressure = section.required(PRESSURE_KEY);
    double smallest = (2 * THIN_WALL + 1) * plates.right().thickness();
    if (Measure.exceeds(smallest, diameter)) {
      section.fault(
          DIAMETER.key(),
          "found "
              + DIAMETER.show(diameter)
              + "; expected a thin wall, an outside diameter of at least 21 thicknesses of the right side, "
              + DIAMETER.show(smallest)
              + "; without tube the rest of the case is computed");
    }
    section.finish();
    return section.built(() -> new Tube(diameter, pressure));
  }
}
