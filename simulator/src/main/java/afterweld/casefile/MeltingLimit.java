package afterweld.casefile;

import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.section.BothUnits;
import afterweld.section.FillerChoice;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The hottest a furnace may be set without melting the joint somewhere: 6 K for the furnace and 5 K
 * as a margin below the lowest solidus of bases and weld metal.
 *
 * @param solidus lowest solidus, K; NaN if nothing is known
 * @param metal which metal has it, as a message says it
 * @param weldMayMelt true if the weld metal has so much magnesium that parts of it may melt from
 *     450 °C on
 */
record MeltingLimit(double solidus, String metal, boolean weldMayMelt) {
  /** Uniformity of a furnace at its set temperature, +-6 K (AMS 2770/2771, from memory). */
  private static final double FURNACE = 6;

  private static final double MARGIN = 5;
  private static final double ZERO_CELSIUS = 273.15;

  /** Eutectics of Al-Cu, Al-Si-Mg2Si and Al-Si, rounded towards the safe side, K. */
  private static final double WITH_COPPER = ZERO_CELSIUS + 521;

  private static final double WITH_MAGNESIUM_AND_SILICON = ZERO_CELSIUS + 557;
  private static final double WITH_SILICON = ZERO_CELSIUS + 574;

  /** Silicon that magnesium binds as Mg2Si, by weight. */
  private static final double MAGNESIUM_PER_SILICON = 1.73;

  /** The limit of a joint as far as it is known. */
  static MeltingLimit of(Plates plates, Optional<FillerChoice> filler) {
    double base = plates.lowestSolidus();
    Optional<Composition> weld = filler.flatMap(choice -> weldMetal(plates, choice));
    double deposit = weld.map(metal -> weldMetalSolidus(metal, base)).orElse(Double.NaN);
    boolean mayMelt = weld.map(MeltingLimit::meltsEarly).orElse(false);
    return deposit < base
        ? new MeltingLimit(deposit, "the weld metal as deposited", mayMelt)
        : new MeltingLimit(base, "the base metal", mayMelt);
  }

  /** The highest set temperature, K. */
  double highestSetting() {
    return solidus - FURNACE - MARGIN;
  }

  /** What is expected of a set temperature. */
  String expected() {
    return "at most "
        + BothUnits.temperature(highestSetting())
        + ": "
        + metal
        + " begins to melt at "
        + BothUnits.temperature(solidus)
        + ", less 6 K for the furnace and a margin of 5 K";
  }

  /**
   * Solidus of as-deposited weld metal, K: the eutectic that its last liquid freezes at, or the
   * solidus of the base where there is none.
   */
  private static double weldMetalSolidus(Composition metal, double baseSolidus) {
    return eutectic(metal).orElse(baseSolidus);
  }

  /**
   * Copper from 1 %; magnesium from 0.1 % with 1 % of free silicon; silicon from 1.65 %.
   * Temperatures from memory, limits assumed.
   */
  private static OptionalDouble eutectic(Composition metal) {
    double magnesium = metal.of(Element.MG);
    double silicon = metal.of(Element.SI);
    double freeSilicon = Math.max(0, silicon - magnesium / MAGNESIUM_PER_SILICON);
    if (metal.of(Element.CU) >= 1) {
      return OptionalDouble.of(WITH_COPPER);
    }
    if (magnesium >= 0.1 && freeSilicon >= 1) {
      return OptionalDouble.of(WITH_MAGNESIUM_AND_SILICON);
    }
    return silicon >= 1.65 ? OptionalDouble.of(WITH_SILICON) : OptionalDouble.empty();
  }

  /** Al-Mg weld metal that has none of the eutectics above (limit assumed). */
  private static boolean meltsEarly(Composition metal) {
    return metal.of(Element.MG) >= 2.5 && eutectic(metal).isEmpty();
  }

  private static Optional<Composition> weldMetal(Plates plates, FillerChoice choice) {
    Optional<Composition> left = plates.left().composition();
    Optional<Composition> right = plates.right().composition();
    if (left.isEmpty() || right.isEmpty() || Double.isNaN(choice.dilution())) {
      return Optional.empty();
    }
    Composition base = left.get().mixedWith(right.get(), choice.fromLeft());
    return Optional.of(
        choice
            .alloy()
            .map(filler -> base.mixedWith(filler.composition(), choice.dilution()))
            .orElse(base));
  }
}
