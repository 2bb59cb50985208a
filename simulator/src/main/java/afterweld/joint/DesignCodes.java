package afterweld.joint;

import afterweld.material.Alloy;
import afterweld.material.ClassPathTable;
import afterweld.quantity.UnitSystem;
import afterweld.weld.HotStart;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the design codes give for the same weld: EN 1999-1-1 (strength and half width of the
 * heat-affected zone, reduced for tungsten-arc welding and thick metal, wider for a warm
 * interpass), the US Aluminum Design Manual (welded minimums, filler strength) and AWS D1.2
 * (minimum of the qualification test). Values are characteristic minima; many stand here from
 * memory and say so.
 */
final class DesignCodes {
  private static final List<Map<String, String>> ROWS =
      ClassPathTable.rows(DesignCodes.class, "/afterweld/material/design_codes.csv");

  private static final double COOL_INTERPASS = 60 + UnitSystem.ZERO_CELSIUS;
  private static final double WARM_INTERPASS = 120 + UnitSystem.ZERO_CELSIUS;
  private static final Set<String> EVERY_TEMPER = Set.of("", "all", "as welded");
  private static final Set<String> LENGTHS_AND_STRENGTHS = Set.of("MPa", "mm");

  private final WeldCase weldCase;
  private final Side side;

  private DesignCodes(WeldCase weldCase, Side side) {
    this.weldCase = weldCase;
    this.side = side;
  }

  /** All values for the weld, left side first; those that hold for both sides once. */
  static List<DesignCodeValue> of(WeldCase weldCase) {
    List<DesignCodeValue> left = new DesignCodes(weldCase, weldCase.left()).values();
    List<DesignCodeValue> right = new DesignCodes(weldCase, weldCase.right()).values();
    return Stream.concat(named(left, right, " (left)"), onlyIn(right, left, " (right)"))
        .distinct()
        .toList();
  }

  private static Stream<DesignCodeValue> named(
      List<DesignCodeValue> own, List<DesignCodeValue> others, String side) {
    return own.stream().map(value -> others.contains(value) ? value : value.named(side));
  }

  private static Stream<DesignCodeValue> onlyIn(
      List<DesignCodeValue> own, List<DesignCodeValue> others, String side) {
    return own.stream().filter(value -> !others.contains(value)).map(value -> value.named(side));
  }

  /** Annealed metal has no softened zone (EN 1999-1-1, 6.1.6.1, from memory). */
  private boolean annealed() {
    return side.temper().name().equals("O");
  }

  private List<DesignCodeValue> values() {
    return ROWS.stream()
        .filter(row -> LENGTHS_AND_STRENGTHS.contains(row.get("unit")))
        .filter(row -> concernsMetal(row) && concernsThickness(row) && concernsProcess(row))
        .filter(row -> !annealed() || !row.get("unit").equals("mm"))
        .map(this::value)
        .toList();
  }

  private boolean concernsMetal(Map<String, String> row) {
    String alloy = row.get("alloy");
    String filler = row.get("filler");
    if (alloy.isEmpty()) {
      return isFiller(filler);
    }
    return (alloy.equals(side.alloy().name()) || alloy.equals(family()))
        && (filler.isEmpty() || isFiller(filler))
        && concernsTemper(row.get("temper"))
        && !row.get("form").equals("lighting pole");
  }

  private boolean isFiller(String filler) {
    String used = weldCase.filler().alloy().map(Alloy::name).orElse("none");
    return filler.equals(used) || filler.equals(used + "A");
  }

  private boolean concernsTemper(String temper) {
    String own = side.temper().name();
    return EVERY_TEMPER.contains(temper)
        || temper.equals(own)
        || temper.equals(own.substring(0, 1));
  }

  private String family() {
    return side.alloy().name().charAt(0) + "xxx";
  }

  private boolean concernsThickness(Map<String, String> row) {
    double millimetres = side.thickness() * 1e3;
    return millimetres > number(row, "over_mm", 0)
        && millimetres <= number(row, "up_to_mm", Double.POSITIVE_INFINITY);
  }

  /**
   * Widths are given for each process, up to a stated 120 °C before a pass; strengths for MIG only,
   * with factors for TIG and thicker metal.
   */
  private boolean concernsProcess(Map<String, String> row) {
    if (!row.get("unit").equals("mm")) {
      return true;
    }
    boolean told = !HotStart.beyondCodes(weldCase) && !HotStart.byPause(weldCase);
    return told && row.get("quantity").endsWith(tig() ? "TIG" : "MIG");
  }

  private boolean tig() {
    return weldCase.passes().stream().anyMatch(pass -> pass.process().tungstenArc());
  }

  private DesignCodeValue value(Map<String, String> row) {
    String quantity = row.get("quantity");
    double value = number(row, "value", Double.NaN);
    if (quantity.endsWith("in the HAZ, MIG")) {
      String process = tig() ? "TIG" : "MIG";
      quantity = quantity.replace("MIG", process);
      value *= factorOf(process);
    }
    if (row.get("unit").equals("mm")) {
      value *= interpassFactor();
    }
    String form = row.get("form").isEmpty() ? "" : ", " + row.get("form");
    return new DesignCodeValue(
        row.get("code"),
        row.get("clause"),
        quantity + form,
        value,
        row.get("unit"),
        row.get("us_value"),
        row.get("source") + ": " + row.get("status"));
  }

  /** On the strengths of the table, which are for MIG up to 15 mm. */
  private double factorOf(String process) {
    return ROWS.stream()
        .filter(row -> row.get("quantity").equals("factor on HAZ strength, " + process))
        .filter(row -> row.get("alloy").equals(family()))
        .filter(row -> concernsTemper(row.get("temper")) && concernsThickness(row))
        .mapToDouble(row -> number(row, "value", 1))
        .findFirst()
        .orElse(1);
  }

  /** 1 + (T - 60)/120 from 60 to 120 °C (EN 1999-1-1, 6.1.6.3). */
  private double interpassFactor() {
    double counted = Math.min(WARM_INTERPASS, Math.max(COOL_INTERPASS, HotStart.warmest(weldCase)));
    return 1 + (counted - COOL_INTERPASS) / 120;
  }

  private static double number(Map<String, String> row, String column, double otherwise) {
    String text = row.get(column);
    return text.isEmpty() ? otherwise : Double.parseDouble(text);
  }
}
