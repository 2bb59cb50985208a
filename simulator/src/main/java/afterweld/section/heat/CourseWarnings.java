package afterweld.section.heat;

import afterweld.quantity.BothUnits;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What must be known of the way of the arc and of the temperature field that was used for it. */
final class CourseWarnings {
  private final WeldCase weldCase;
  private final HeatFlow.Choice choice;
  private final Optional<PeakMap> peaks;
  private final List<PassHeat> heats;
  private final WeldCourse course;

  /**
   * Of a case.
   *
   * @param peaks of the whole part, where it was followed in time
   */
  CourseWarnings(
      WeldCase weldCase, HeatFlow.Choice choice, Optional<PeakMap> peaks, List<PassHeat> heats) {
    this.weldCase = weldCase;
    this.choice = choice;
    this.peaks = peaks;
    this.heats = heats;
    this.course = weldCase.course();
  }

  List<Warning> all() {
    List<Warning> warnings = new ArrayList<>();
    if (chosen()) {
      warnings.add(field());
    }
    if (course.ends() && peaks.isPresent()) {
      if (peaks.get().length() < course.length()) {
        warnings.add(shortened(peaks.get()));
      }
      warnings.add(section(peaks.get()));
      warnings.add(current());
      if (heats.stream().anyMatch(PassHeat::calibrated)) {
        warnings.add(beadWidth());
      }
    }
    if (peaks.isPresent() && heats.stream().anyMatch(heat -> heat.pass().pause().isPresent())) {
      warnings.add(
          new Warning(
              "pause-decides",
              "A stated pause decides how warm a later pass finds the metal: its interpass"
                  + " temperature is not used."));
    }
    boolean hot = weldCase.heatFlow().isPresent() || choice.leavesHeatOut();
    if (course.ends() && peaks.isEmpty() && hot) {
      warnings.add(course.ring() ? ringAsPlate() : seamAsPlate());
    }
    if (peaks.isEmpty() && course.endPower() != 1) {
      warnings.add(
          new Warning(
              "end-current-unused",
              "The steady field knows no start and end: end_current changes nothing here."));
    }
    return warnings;
  }

  /** Whether there was a choice at all: not for plain welds in wide plates. */
  private boolean chosen() {
    boolean narrow = weldCase.left().width().isPresent() || weldCase.right().width().isPresent();
    return peaks.isPresent() || narrow || course.ends() || weldCase.heatFlow().isPresent();
  }

  private Warning field() {
    return new Warning(
        "heat-flow-" + choice.flow().label(),
        String.format(
            Locale.ROOT,
            "Temperatures by the %s: %s.",
            peaks.isPresent()
                ? "transient field of thin-walled parts"
                : "steady field of wide plates",
            choice.reason()));
  }

  private Warning section(PeakMap map) {
    String where =
        course.place() == Place.WORST
            ? "where the legs get hottest"
            : course.ring() ? Ring.label(course.place()) : Seam.label(course.place());
    return new Warning(
        course.ring() ? "ring-section" : "seam-section",
        String.format(
            Locale.ROOT,
            "The section is taken %s from the start of the %s of %s (%s).",
            BothUnits.length(map.section()),
            course.ring() ? "lap" : "weld",
            BothUnits.length(map.length()),
            where));
  }

  private Warning shortened(PeakMap map) {
    return new Warning(
        "seam-shortened",
        String.format(
            Locale.ROOT,
            "The weld of %s is followed as one of %s, which is steady in its middle.",
            BothUnits.length(course.length()),
            BothUnits.length(map.length())));
  }

  private Warning current() {
    return course.endPower() == 1
        ? new Warning(
            "constant-current",
            "The current is taken as constant; a welder who takes it back towards the end gets a"
                + " narrower soft zone there than shown.")
        : new Warning(
            "falling-current",
            String.format(
                Locale.ROOT,
                "The current falls evenly to %.0f %% of its first value by the end of the weld, and"
                    + " the power with it.",
                100 * course.endPower()));
  }

  private Warning beadWidth() {
    String where = course.ring() ? "half way round" : "half way along the weld";
    return new Warning(
        "bead-width-half-way",
        "The bead width is taken as measured "
            + where
            + ": elsewhere it differs, as the view along the weld shows.");
  }

  private static Warning ringAsPlate() {
    return new Warning(
        "ring-as-plate",
        "The weld goes round a tube, but the heat that builds up on the way round is not computed:"
            + " the soft zone is wider than shown, most of all at the end of the lap.");
  }

  private static Warning seamAsPlate() {
    return new Warning(
        "seam-as-plate",
        "The weld starts and ends, but is computed as if it were long: near its start the metal"
            + " stays cooler than shown, near the edge where it ends it gets hotter.");
  }
}
