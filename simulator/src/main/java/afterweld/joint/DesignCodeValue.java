package afterweld.joint;

/**
 * What a design code gives for a weld.
 *
 * @param code the code
 * @param clause clause or table; empty if not known
 * @param item what the value is, with the side it is for
 * @param value in {@code unit}
 * @param unit MPa or mm
 * @param status edition as far as known, and how well the value is supported
 */
public record DesignCodeValue(
    String code, String clause, String item, double value, String unit, String status) {
  /** The same for one side only. */
  DesignCodeValue named(String side) {
    return new DesignCodeValue(code, clause, item + side, value, unit, status);
  }
}
