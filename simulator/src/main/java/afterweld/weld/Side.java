package afterweld.weld;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Temper;
import afterweld.quantity.Check;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One of the two parts that are joined.
 *
 * @param alloy library alloy
 * @param temper temper at welding
 * @param thickness m
 * @param width leg length from the weld centre, m; empty means wide
 * @param composition composition used: the library's, with what a certificate overrides
 * @param certified elements whose content a certificate states, even if it states the library's
 */
public record Side(
    Alloy alloy,
    Temper temper,
    double thickness,
    OptionalDouble width,
    Composition composition,
    Set<Element> certified) {
  /** Copies the set. */
  public Side {
    Check.positive("thickness", thickness, "m");
    Check.positive("width", width, "m");
    certified = Set.copyOf(certified);
  }

  /** A part without a certificate. */
  public Side(
      Alloy alloy, Temper temper, double thickness, OptionalDouble width, Composition composition) {
    this(alloy, temper, thickness, width, composition, Set.of());
  }

  /** Whether it comes hardened by ageing, as T5 and T6 do. */
  public boolean comesAged() {
    return alloy.heatTreatable()
        && (temper.name().startsWith("T5") || temper.name().startsWith("T6"));
  }

  /** The same part in another temper. */
  public Side inTemper(Temper other) {
    return new Side(alloy, other, thickness, width, composition, certified);
  }

  /** The same part of other metal. */
  public Side of(Composition other) {
    return new Side(alloy, temper, thickness, width, other, certified);
  }
}
