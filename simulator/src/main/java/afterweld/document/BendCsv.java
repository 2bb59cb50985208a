package afterweld.document;

import static afterweld.quantity.OutputQuantity.DISTANCE;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.bend.BendReport;
import afterweld.joint.bend.BentState;
import afterweld.joint.bend.StripBend;
import afterweld.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/** Curvature along the strip as {@code bend.csv}: a row for each slice, a column for each bend. */
public final class BendCsv {
  private static final int DISTANCE_DECIMALS = 4;
  private static final int CURVATURE_DECIMALS = 6;

  private final List<String> names;
  private final BendReport report;
  private final UnitSystem units;

  /**
   * The CSV of the bends.
   *
   * @param names of the states
   * @param units of lengths, stresses and moments
   */
  public BendCsv(List<String> names, BendReport report, UnitSystem units) {
    this.names = names;
    this.report = report;
    this.units = units;
  }

  /** The CSV text with its head. */
  public String text() {
    StringBuilder text = new StringBuilder(line(head()));
    List<StripBend> bends = bends();
    for (int i = 0; i < bends.get(0).line().size(); i++) {
      List<String> cells = new ArrayList<>();
      double place = units.length(bends.get(0).line().get(i).position());
      cells.add(new JsonNumber(place, DISTANCE_DECIMALS).toString());
      for (StripBend bend : bends) {
        double curvature = bend.line().get(i).curvature() / units.length(1);
        cells.add(new JsonNumber(curvature, CURVATURE_DECIMALS).toString());
      }
      text.append(line(cells));
    }
    return text.toString();
  }

  private List<String> head() {
    List<String> head = new ArrayList<>();
    head.add(DISTANCE.key(units));
    for (BendLoad load : report.loads()) {
      for (BentState bent : report.states()) {
        String state = names.get(bent.state());
        head.add("curvature_per_" + units.lengthUnit() + " (" + state + " " + load.label() + ")");
      }
    }
    return head;
  }

  private List<StripBend> bends() {
    return report.loads().stream()
        .flatMap(load -> report.states().stream().map(bent -> bent.by(load)))
        .toList();
  }

  private static String line(List<String> cells) {
    return String.join(",", cells) + "\n";
  }
}
