package afterweld.section;

import afterweld.material.Composition;
import afterweld.material.Element;

/**
 * A silicon filler on a base rich in magnesium: brittle Mg2Si forms, and no strength of such weld
 * metal is to be relied on. From 3 wt% Si in the filler and 2.5 wt% Mg in a base on (common
 * practice of filler guides).
 */
public final class BrittleMix {
  private static final double SILICON_FILLER = 3.0;
  private static final double BASE_MAGNESIUM = 2.5;

  private BrittleMix() {}

  /** Whether a filler forms it on the bases of a case. */
  public static boolean forms(WeldCase weldCase, Composition filler) {
    double magnesium =
        Math.max(
            weldCase.left().composition().of(Element.MG),
            weldCase.right().composition().of(Element.MG));
    return filler.of(Element.SI) > SILICON_FILLER && magnesium >= BASE_MAGNESIUM;
  }
}
