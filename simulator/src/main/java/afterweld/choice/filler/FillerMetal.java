package afterweld.choice.filler;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldPool;

/**
 * What is added to the pool; without filler it is more of what is there.
 *
 * @param name of the filler, or {@code none}
 * @param composition wt%
 */
record FillerMetal(String name, Composition composition) {
  static FillerMetal of(Alloy filler) {
    return new FillerMetal(filler.name(), filler.composition());
  }

  static FillerMetal without(Composition base) {
    return new FillerMetal(FillerOption.WITHOUT, base);
  }

  /**
   * The weld metal with this filler.
   *
   * @param dilution share of melted base, 0 to 1
   */
  Composition welded(WeldCase weld, double dilution) {
    return WeldPool.composition(weld.withoutFiller(), 1).mixedWith(composition, dilution);
  }

  boolean none() {
    return name.equals(FillerOption.WITHOUT);
  }
}
