package afterweld.casefile;

import afterweld.material.Composition;
import afterweld.section.BothUnits;
import afterweld.section.FillerChoice;
import afterweld.section.FurnaceMargin;
import afterweld.section.WeldPool;
import java.util.Optional;

/**
 * The hottest a furnace may be set without certainly melting the joint somewhere: under the lowest
 * solidus of bases and weld metal as far as they are known. Weld metal that only may melt is
 * computed, and the result says so.
 *
 * @param solidus lowest solidus, K; NaN if nothing is known
 * @param metal which metal has it, as a message says it
 */
record MeltingLimit(double solidus, String metal) {
  /** The limit of a joint as far as it is known. */
  static MeltingLimit of(Plates plates, Optional<FillerChoice> filler) {
    double base = plates.lowestSolidus();
    double deposit =
        filler
            .flatMap(choice -> weldMetal(plates, choice))
            .map(metal -> WeldPool.eutectic(metal).orElse(base))
            .orElse(Double.NaN);
    return deposit < base
        ? new MeltingLimit(deposit, "the weld metal as deposited")
        : new MeltingLimit(base, "the base metal");
  }

  /** The highest set temperature, K. */
  double highestSetting() {
    return FurnaceMargin.highestSetting(solidus);
  }

  /** What is expected of a set temperature. */
  String expected() {
    return "at most "
        + BothUnits.temperature(highestSetting())
        + ": "
        + metal
        + " begins to melt at "
        + BothUnits.temperature(solidus)
        + ", less "
        + BothUnits.difference(FurnaceMargin.TOLERANCE)
        + " for the furnace and a margin of "
        + BothUnits.difference(FurnaceMargin.MARGIN);
  }

  private static Optional<Composition> weldMetal(Plates plates, FillerChoice choice) {
    Optional<Composition> left = plates.left().composition();
    Optional<Composition> right = plates.right().composition();
    if (left.isEmpty() || right.isEmpty() || Double.isNaN(choice.dilution())) {
      return Optional.empty();
    }
    return Optional.of(WeldPool.composition(left.get(), right.get(), choice, choice.dilution()));
  }
}
