package afterweld.section;

import afterweld.material.ClassPathTable;
import afterweld.quantity.BothUnits;
import afterweld.strength.Strength;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The least strength of a temper as it is delivered: metal under it is not that temper, so that no
 * band of untouched base metal goes lower. By EN 1999-1-1, tables 3.2, EN 755-2, ASTM B221 and the
 * US Aluminum Design Manual: a case names neither form nor standard, so the lowest that holds for
 * its thickness. SI units.
 *
 * @param yield Pa
 * @param tensile Pa
 * @param source where they are from, and how well supported
 */
record DeliveredMinimum(double yield, double tensile, String source) {
  private static final List<Map<String, String>> ROWS =
      ClassPathTable.rows(DeliveredMinimum.class, "/afterweld/material/design_codes.csv");
  private static final String PROOF = "proof of the base";
  private static final String TENSILE = "tensile strength of the base";
  private static final double MEGA = 1e6;

  /**
   * That of a side; empty where none is known for its temper and thickness, and where its own
   * composition is stated: that may be old weld metal.
   */
  static Optional<DeliveredMinimum> of(Side side) {
    return side.composition().equals(side.alloy().composition()) ? listed(side) : Optional.empty();
  }

  private static Optional<DeliveredMinimum> listed(Side side) {
    List<Map<String, String>> rows =
        ROWS.stream()
            .filter(row -> row.get("alloy").equals(side.alloy().name()))
            .filter(row -> row.get("temper").equals(side.temper().name()))
            .filter(row -> within(row, side.thickness() * 1e3))
            .toList();
    return lowest(rows, PROOF)
        .flatMap(
            yield ->
                lowest(rows, TENSILE)
                    .map(
                        tensile ->
                            new DeliveredMinimum(
                                stress(yield),
                                stress(tensile),
                                tensile.get("source") + ": " + tensile.get("status"))));
  }

  private static boolean within(Map<String, String> row, double millimetres) {
    return millimetres > number(row.get("over_mm"), 0)
        && millimetres <= number(row.get("up_to_mm"), Double.POSITIVE_INFINITY);
  }

  private static double number(String text, double otherwise) {
    return text.isEmpty() ? otherwise : Double.parseDouble(text);
  }

  private static Optional<Map<String, String>> lowest(
      List<Map<String, String>> rows, String quantity) {
    return rows.stream()
        .filter(row -> row.get("quantity").equals(quantity))
        .min(Comparator.comparingDouble(DeliveredMinimum::stress));
  }

  private static double stress(Map<String, String> row) {
    return MEGA * Double.parseDouble(row.get("value"));
  }

  /** The low end of a band of such metal, no higher than the metal itself. */
  Strength under(Strength low, Strength metal) {
    return new Strength(
        Math.max(low.yield(), Math.min(yield, metal.yield())),
        Math.max(low.tensile(), Math.min(tensile, metal.tensile())),
        low.hardness());
  }

  /** What is said of each side of a case, with or without one. */
  static Stream<Warning> said(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .map(side -> new Warning("delivered-minimum", said(side)))
        .distinct();
  }

  private static String said(Side side) {
    String name = side.alloy().name() + "-" + side.temper().name();
    if (!side.composition().equals(side.alloy().composition())) {
      return name
          + " of the stated composition: no minimum of the temper is held for it, so the band of its"
          + " base metal is not cut at one.";
    }
    return of(side)
        .map(
            least ->
                name
                    + " as delivered has at least "
                    + BothUnits.stress(least.yield())
                    + " yield and "
                    + BothUnits.stress(least.tensile())
                    + " tensile strength ("
                    + least.source()
                    + "): no band of untouched base metal goes lower.")
        .orElse(
            name
                + ": no minimum of its temper in this thickness is known here, so the band of its"
                + " base metal is not cut at one.");
  }
}
