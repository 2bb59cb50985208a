package afterweld.document;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Node;
import afterweld.study.JointFigures;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A map over one or two inputs: a row for each place. */
public final class GridCsv {
  private final GridStudy study;
  private final UnitSystem units;

  /** The CSV of a map, in a system of units. */
  public GridCsv(GridStudy study, UnitSystem units) {
    this.study = study;
    this.units = units;
  }

  /** The CSV text. */
  public String text() {
    List<String> head = new ArrayList<>();
    study.inputs().forEach(input -> head.add(input.column(units)));
    head.add("joint_proof_" + units.stressUnit());
    head.add("joint_" + OutputQuantity.TENSILE.key(units));
    head.add("lowest_hardness_HV");
    head.add("lowest_" + OutputQuantity.YIELD.key(units));
    head.add("softened_width_" + units.lengthUnit());
    head.add("bead_width_" + units.lengthUnit());
    head.add("verdict");
    head.add("blank_or_objected");
    return String.join(",", head)
        + "\n"
        + study.nodes().stream().map(this::row).collect(Collectors.joining());
  }

  private String row(Node node) {
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < study.inputs().size(); i++) {
      cells.add(number(study.inputs().get(i).kind().in(units, node.values().get(i)), 3));
    }
    JointFigures figures = node.joint().figures();
    cells.add(number(units.stress(figures.proof()), 2));
    cells.add(number(units.stress(figures.tensile()), 2));
    cells.add(number(figures.hardness(), 1));
    cells.add(number(units.stress(node.lowestYield().middle()), 2));
    cells.add(number(units.length(node.softenedWidth()), 3));
    cells.add(number(units.length(node.beadWidth()), 3));
    cells.add(RankingJson.verdict(study.aim(), node.joint()).orElse(""));
    cells.add(quoted(node.joint().against()));
    return String.join(",", cells) + "\n";
  }

  private static String quoted(String text) {
    return text.isEmpty() ? "" : '"' + text.replace("\"", "\"\"") + '"';
  }

  private static String number(double value, int decimals) {
    return Double.isFinite(value) ? new JsonNumber(value, decimals).toString() : "";
  }
}
