package afterweld.weldmetal;

import afterweld.material.Composition;
import afterweld.material.Element;
import java.util.Locale;
import java.util.Optional;

/**
 * Metal rich in silicon and metal rich in magnesium in one pool: brittle Mg2Si forms, and nothing
 * is to be claimed of such weld metal. From more than 3 wt% Si in one of the metals and more than
 * 2.5 wt% Mg in another on (common practice of filler guides, which forbid 4xxx fillers on 5083 and
 * its kin and 5xxx fillers on silicon castings; 5052, with 2.5 %, is the border that they accept).
 * Beside a silicon casting from more than 3 wt% Mg on: filler charts give 4043 for 5454 to A356
 * (AWS A5.10, from memory).
 */
public final class BrittleMix {
  private static final double MUCH_SILICON = 3.0;
  private static final double MUCH_MAGNESIUM = 2.5;
  private static final String STATED = "metal that is stated with more than 2.5 % Mg";
  private static final String BY_STANDARD = "an alloy that has more than 2.5 % Mg by its standard";
  private static final double MUCH_BESIDE_A_CASTING = 3.0;

  private BrittleMix() {}

  /** Whether it forms. */
  public static boolean forms(PoolMetals metals) {
    return metals.anyHolds(Element.SI, MUCH_SILICON)
        && metals.anyHolds(Element.MG, muchMagnesium(metals));
  }

  private static double muchMagnesium(PoolMetals metals) {
    return metals.baseHolds(Element.SI, MUCH_SILICON) ? MUCH_BESIDE_A_CASTING : MUCH_MAGNESIUM;
  }

  /** Why such weld metal is ruled out: which metals meet. */
  public static String reason(PoolMetals metals) {
    String meeting =
        basesMeet(metals)
            ? "A base with more than 3 % Si and one with more than 3 % Mg"
            : metals.fillerHolds(Element.SI, MUCH_SILICON)
                ? "Silicon filler on "
                    + (metals.statedHolds(Element.MG, MUCH_MAGNESIUM) ? STATED : BY_STANDARD)
                : "Magnesium filler on a base with more than 3 % Si";
    return meeting + ": brittle Mg2Si forms.";
  }

  /**
   * What to note of silicon filler on a lot whose certificate goes over the border that its alloy
   * keeps by its standard: filler charts go by the alloy; empty where the lot does not.
   *
   * @param lot what the case states of the base
   * @param alloy what its standard names
   */
  public static Optional<String> ofALot(Composition lot, Composition alloy, Composition filler) {
    double magnesium = lot.of(Element.MG);
    boolean over = magnesium > MUCH_MAGNESIUM && alloy.of(Element.MG) <= MUCH_MAGNESIUM;
    return over && filler.of(Element.SI) > MUCH_SILICON
        ? Optional.of(
            String.format(
                Locale.ROOT,
                "Silicon filler on a lot stated with %.2f %% Mg: filler charts go by the alloy and"
                    + " take it, guides that go by the magnesium stop at 2.5 %%, where brittle Mg2Si"
                    + " begins. A 5xxx filler is the surer choice.",
                magnesium))
        : Optional.empty();
  }

  /** What to take in its place. */
  public static String remedy(PoolMetals metals) {
    if (basesMeet(metals)) {
      return "Filler charts differ on such a pair, and nothing is claimed of it here: change one of the two"
          + " metals, join them without melting, or prove the joint on coupons.";
    }
    return metals.fillerHolds(Element.SI, MUCH_SILICON)
        ? "Take a magnesium filler (5xxx): 'afterweld fillers' names those that suit what is asked."
        : "Take a silicon filler (4xxx), such as 4043.";
  }

  private static boolean basesMeet(PoolMetals metals) {
    return metals.baseHolds(Element.SI, MUCH_SILICON)
        && metals.baseHolds(Element.MG, MUCH_BESIDE_A_CASTING);
  }
}
