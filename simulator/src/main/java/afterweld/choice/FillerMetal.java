package afterweld.choice;

import afterweld.material.Alloy;
import afterweld.material.Composition;

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

  boolean none() {
    return name.equals(FillerOption.WITHOUT);
  }
}
