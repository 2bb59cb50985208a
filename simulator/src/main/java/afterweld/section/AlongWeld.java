package afterweld.section;

import afterweld.thermal.HeatInputException;
import afterweld.thermal.PeakMap;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldCourse.Place;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

/**
 * How a weld that starts and ends differs along its way: the peak temperature of the whole part,
 * the section as welded near the start, half way and near the end, and what taking the current back
 * would change. Power is taken as proportional to the current.
 *
 * @param ring whether the weld meets its start
 * @param peaks of the whole part
 * @param places start, half way, end, all at the current of the case
 * @param other the end at another end current: with the current constant where the case takes it
 *     back, else taken back so far that the bead is as wide at the end as half way; empty where it
 *     would not have to be
 */
public record AlongWeld(
    boolean ring, PeakMap peaks, List<AtPlace> places, Optional<AtPlace> other) {
  private static final double NO_NEED = 0.98;

  /**
   * A section of the weld.
   *
   * @param place where
   * @param fromStart m from the start of the weld
   * @param endCurrent current at the end of the weld over that at its start
   * @param beadWidth of the last pass on the arc side, m
   * @param profile before welding and as welded, with few stations and without the bands of default
   *     inputs
   */
  public record AtPlace(
      Place place, double fromStart, double endCurrent, double beadWidth, SectionProfile profile) {}

  /** Copies the list. */
  public AlongWeld {
    places = List.copyOf(places);
  }

  /** The name of a place on this weld. */
  public String label(Place place) {
    return ring ? Ring.label(place) : Seam.label(place);
  }

  /**
   * The weld of a case along its way; empty where it has no start and end that count, or was not
   * followed in time.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public static Optional<AlongWeld> of(WeldCase weldCase) {
    if (!weldCase.course().ends()) {
      return Optional.empty();
    }
    CaseHeat heat = CaseHeat.of(weldCase);
    return heat.peaks().map(peaks -> of(weldCase.withAfterWeld(List.of()), heat, peaks));
  }

  private static AlongWeld of(WeldCase asWelded, CaseHeat heat, PeakMap peaks) {
    WeldCourse course = asWelded.course();
    CompletableFuture<Optional<AtPlace>> other =
        CompletableFuture.supplyAsync(() -> other(asWelded, heat));
    List<AtPlace> places =
        Stream.of(Place.START, Place.MIDDLE, Place.END)
            .map(place -> section(asWelded, heat, place, course.endPower()))
            .toList();
    return new AlongWeld(course.ring(), peaks, places, other.join());
  }

  private static Optional<AtPlace> other(WeldCase asWelded, CaseHeat heat) {
    boolean constant = asWelded.course().endPower() == 1;
    try {
      double share = constant ? heat.evenEndCurrent() : 1;
      return constant && share > NO_NEED
          ? Optional.empty()
          : Optional.of(section(asWelded, heat.withEndCurrent(share), Place.END, share));
    } catch (HeatInputException burnsThrough) {
      return Optional.empty();
    }
  }

  private static AtPlace section(WeldCase asWelded, CaseHeat heat, Place place, double endCurrent) {
    return new AtPlace(
        place,
        heat.peaks().orElseThrow().fromStart(place),
        endCurrent,
        heat.beadWidth(place),
        SectionSimulation.runThin(asWelded, heat.at(place)));
  }
}
