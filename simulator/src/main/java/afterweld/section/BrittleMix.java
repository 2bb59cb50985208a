package afterweld.section;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * A silicon filler on a base rich in magnesium: brittle Mg2Si forms, and no strength of such weld
 * metal is to be relied on. From 3 wt% Si in the filler and more than 2.5 wt% Mg in a base on
 * (common practice of filler guides; 5052, with 2.5 %, is the border that they accept).
 */
public final class BrittleMix {
  /** Why such a filler is ruled out. */
  public static final String SENTENCE =
      "Silicon filler on a base with more than 2.5 % Mg: brittle Mg2Si forms.";

  private static final double SILICON_FILLER = 3.0;
  private static final double BASE_MAGNESIUM = 2.5;

  private BrittleMix() {}

  /** Whether a filler forms it on the bases of a case. */
  public static boolean forms(WeldCase weldCase, Composition filler) {
    return forms(weldCase.left().composition(), filler)
        || forms(weldCase.right().composition(), filler);
  }

  /** Whether a filler forms it on a base. */
  public static boolean forms(Composition base, Composition filler) {
    return filler.of(Element.SI) > SILICON_FILLER && base.of(Element.MG) > BASE_MAGNESIUM;
  }
}
