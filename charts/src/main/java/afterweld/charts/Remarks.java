package afterweld.charts;

import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Figures;
import afterweld.quantity.OutputQuantity;
import afterweld.section.Cautions;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.soundness.Soundness;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The words that stand round the charts of a section: the case in one line, cautions, notes. */
final class Remarks {
  private static final String ESTIMATE = "Estimate, not a design value.";

  private final SectionView view;
  private final SectionProfile profile;

  Remarks(SectionView view) {
    this.view = view;
    this.profile = view.profile();
  }

  /** The case in one line. */
  String subject() {
    WeldCase weld = profile.weldCase();
    return weld.title()
        + " · "
        + weld.joint().label()
        + ", "
        + parts(weld)
        + ", "
        + filler(weld)
        + standing();
  }

  private String standing() {
    Soundness soundness = profile.soundness();
    return soundness.sound()
        ? ""
        : soundness.notSound()
            ? " · NOT A SOUND JOINT: no strength of the joint is claimed"
            : " · the joint's strength is not computed";
  }

  private String parts(WeldCase weld) {
    String left = part(weld.left());
    String right = part(weld.right());
    return left.equals(right) ? left : left + " to " + right;
  }

  private String part(Side side) {
    return side.alloy().name() + "-" + side.temper().name() + " " + length(side.thickness());
  }

  private String length(double metres) {
    double shown = Math.rint(view.distance(metres) * 1000) / 1000;
    return Figures.shortest(shown) + " " + view.units().lengthUnit();
  }

  private static String filler(WeldCase weld) {
    FillerChoice choice = weld.filler();
    return choice
        .alloy()
        .map(
            alloy ->
                "filler "
                    + alloy.name()
                    + " at "
                    + Figures.rounded(100 * choice.dilution(), 0)
                    + " % dilution")
        .orElse("no filler");
  }

  /** What must stand under every picture: the main caution and, for a tube, that on pressure. */
  List<String> caution() {
    List<String> chosen = new ArrayList<>();
    for (int i = 0; i < profile.cautions().size(); i++) {
      if (i == 0 || profile.cautions().get(i).equals(Cautions.PRESSURE)) {
        chosen.add(profile.cautions().get(i));
      }
    }
    boolean said = chosen.stream().anyMatch(text -> text.contains("not a design value"));
    if (!said) {
      chosen.add(0, ESTIMATE);
    }
    return chosen;
  }

  /** Gaps in the curves of the quantities, and which warnings come with the result. */
  List<String> notes(List<OutputQuantity> quantities) {
    List<String> notes = new ArrayList<>();
    if (!profile.soundness().sound()) {
      notes.add("The joint is " + profile.soundness().note());
    }
    Map<String, List<OutputQuantity>> byGaps =
        quantities.stream()
            .collect(Collectors.groupingBy(this::gaps, LinkedHashMap::new, Collectors.toList()));
    byGaps.remove("");
    byGaps.forEach((gaps, same) -> notes.add("Not predicted, " + titles(same) + ": " + gaps + "."));
    if (!profile.warnings().isEmpty()) {
      notes.add("Warnings that come with the result: " + warningNames() + ".");
    }
    return notes;
  }

  private static String titles(List<OutputQuantity> quantities) {
    return quantities.stream().map(OutputQuantity::title).collect(Collectors.joining(" and "));
  }

  private String warningNames() {
    return profile.warnings().stream()
        .map(Warning::code)
        .distinct()
        .map(code -> code.replace('-', ' '))
        .collect(Collectors.joining("; "));
  }

  private String gaps(OutputQuantity quantity) {
    List<String> gaps = new ArrayList<>();
    for (int state = 0; state < view.states(); state++) {
      List<String> zones = zonesWithoutValue(view.curve(quantity, state));
      if (!zones.isEmpty()) {
        gaps.add(profile.states().get(state) + " (" + String.join(", ", zones) + ")");
      }
    }
    return String.join("; ", gaps);
  }

  private List<String> zonesWithoutValue(Curve curve) {
    List<String> zones = new ArrayList<>();
    for (int i = 0; i < curve.spots().size(); i++) {
      Station station = profile.stations().get(i);
      if (!curve.spots().get(i).known() && !zones.contains(station.zone().label())) {
        zones.add(station.zone().label());
      }
    }
    return zones;
  }
}
