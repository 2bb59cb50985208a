package afterweld.section.soundness;

import static afterweld.quantity.BothUnits.length;

import afterweld.quantity.UnitSystem;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.weld.Preparation;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;

/**
 * Whether a fillet leaves its thick part cold: a part over 12 mm that is more than four times as
 * thick as the other draws the heat away faster than a pool wets it. It counts as wetted where it
 * is preheated to 100 °C or more, or where half the pool is at least as wide as the thin part is
 * thick, which is the leg of the usual fillet [assumed; that thick aluminium is preheated for
 * welding is common practice].
 */
final class ColdSide {
  /** Preheat from which on a thick part counts as wetted, K. */
  static final double WARM = 100 + UnitSystem.ZERO_CELSIUS;

  private static final double THICK = 12e-3;
  private static final double TIMES_THICKER = 4;

  private ColdSide() {}

  /** Why the thick part is not joined; empty if it is, as far as can be told. */
  static Optional<String> reason(WeldCase weldCase, List<PassHeat> heats) {
    double thin = Math.min(weldCase.left().thickness(), weldCase.right().thickness());
    double thick = Math.max(weldCase.left().thickness(), weldCase.right().thickness());
    boolean unlike = thick > THICK && thick > TIMES_THICKER * thin;
    double widest = heats.stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow();
    boolean warm =
        weldCase.passes().stream().map(Pass::startTemperature).findFirst().orElseThrow() >= WARM;
    if (weldCase.preparation() != Preparation.FILLET || !unlike || warm || widest >= thin) {
      return Optional.empty();
    }
    return Optional.of(
        "The thick side stays cold: "
            + length(thick)
            + " draws the heat away, and a pool "
            + length(2 * widest)
            + " wide lies on it without wetting it beside "
            + length(thin)
            + ".");
  }
}
