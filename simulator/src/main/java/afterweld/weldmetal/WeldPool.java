package afterweld.weldmetal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.OptionalDouble;

/**
 * What the pool mixes to and where the metal it freezes to begins to melt again.
 *
 * <p>Mixing is linear by weight without loss of magnesium. The solidus of as-deposited weld metal
 * follows its low-melting eutectics (from memory of handbook values, simplified): Al-Cu 521 °C from
 * 1 % Cu; Al-Mg2Si-Si 557 °C from 0.1 % Mg with 1 % free Si; Al-Si 574 °C from 1.65 % Si; from 2.5
 * % Mg melting is possible from 450 °C on; otherwise the solidus of the base.
 */
public final class WeldPool {
  private static final double SILICON_PER_MAGNESIUM = 1 / 1.73;

  private static final double POSSIBLE_WITH_MAGNESIUM = 450 + ZERO_CELSIUS;

  private WeldPool() {}

  /** The weld metal of a case at its own dilution. */
  public static WeldMetal of(WeldCase weldCase) {
    FillerChoice filler = weldCase.filler();
    Composition composition = composition(weldCase, filler.dilution());
    return new WeldMetal(
        filler.alloy().map(Alloy::name).orElse("none"),
        filler.dilution(),
        filler.dilutionLow(),
        filler.dilutionHigh(),
        composition,
        solidus(composition, baseSolidus(weldCase.left(), weldCase.right())));
  }

  /**
   * Composition of the weld metal at any dilution.
   *
   * @param dilution share of melted base, 0 to 1
   */
  public static Composition composition(WeldCase weldCase, double dilution) {
    return composition(
        weldCase.left().composition(), weldCase.right().composition(), weldCase.filler(), dilution);
  }

  /**
   * Composition of the weld metal of two bases.
   *
   * @param dilution share of melted base, 0 to 1
   */
  public static Composition composition(
      Composition left, Composition right, FillerChoice choice, double dilution) {
    Composition base = left.mixedWith(right, choice.fromLeft());
    return choice.alloy().map(alloy -> base.mixedWith(alloy.composition(), dilution)).orElse(base);
  }

  /** The lower solidus of the two sides, K. */
  public static double baseSolidus(Side left, Side right) {
    return Math.min(left.alloy().solidus(), right.alloy().solidus());
  }

  /**
   * Temperature at which as-deposited weld metal may begin to melt, K.
   *
   * @param baseSolidus of the parts, K: used where no low-melting eutectic is expected
   */
  public static double solidus(Composition metal, double baseSolidus) {
    double possible = meltingPossibleFrom450(metal) ? POSSIBLE_WITH_MAGNESIUM : baseSolidus;
    return eutectic(metal).orElse(possible);
  }

  /** Temperature of the eutectic that certainly freezes last, K; empty where there is none. */
  public static OptionalDouble eutectic(Composition metal) {
    double freeSilicon =
        Math.max(0, metal.of(Element.SI) - metal.of(Element.MG) * SILICON_PER_MAGNESIUM);
    if (metal.of(Element.CU) >= 1) {
      return OptionalDouble.of(521 + ZERO_CELSIUS);
    }
    if (metal.of(Element.MG) >= 0.1 && freeSilicon >= 1) {
      return OptionalDouble.of(557 + ZERO_CELSIUS);
    }
    return metal.of(Element.SI) >= 1.65
        ? OptionalDouble.of(574 + ZERO_CELSIUS)
        : OptionalDouble.empty();
  }

  /**
   * Whether Al-Mg eutectic may melt from 450 °C on: 2.5 % Mg or more with none of the eutectics
   * above. A possibility only: a case with it is computed and says so, but it is no treatment to
   * send to a furnace shop.
   */
  public static boolean meltingPossibleFrom450(Composition metal) {
    return metal.of(Element.MG) >= 2.5 && eutectic(metal).isEmpty();
  }
}
