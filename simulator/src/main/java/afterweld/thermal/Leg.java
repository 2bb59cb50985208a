package afterweld.thermal;

import java.util.OptionalDouble;

/**
 * One plate that leads heat away from the weld. A butt has two, a tee three (two of the base, one
 * of the web), a bead on plate two of the same plate.
 *
 * @param left whether it lies on the left, where distances are negative
 * @param thickness m
 * @param width from the weld centre to its end, m; empty means wide
 * @param material metal at welding
 */
public record Leg(
    boolean left, double thickness, OptionalDouble width, ConductionMaterial material) {
  /** Thinner sheet is not welded by these processes, m (assumed). */
  private static final double THINNEST = 0.5e-3;

  /** Thicker plate was not checked, m (assumed). */
  private static final double THICKEST = 40e-3;

  /** Checks what the field can take. */
  public Leg {
    if (!(thickness >= THINNEST && thickness <= THICKEST)) {
      throw HeatInputException.outside("thickness", thickness * 1e3, "mm", "0.5 to 40 mm");
    }
    if (width.isPresent() && !(width.getAsDouble() > 0 && width.getAsDouble() < 1e3)) {
      throw HeatInputException.outside("width", width.getAsDouble() * 1e3, "mm", "more than 0");
    }
  }

  /** A wide leg. */
  public static Leg wide(boolean left, double thickness, ConductionMaterial material) {
    return new Leg(left, thickness, OptionalDouble.empty(), material);
  }

  /** Width, m; infinite where none is stated. */
  public double widthOrWide() {
    return width.orElse(Double.POSITIVE_INFINITY);
  }
}
