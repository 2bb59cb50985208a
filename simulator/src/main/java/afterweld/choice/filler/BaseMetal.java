package afterweld.choice.filler;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.weld.Side;

/**
 * A base as the filler guides see it.
 *
 * @param name of the alloy
 * @param metal what it holds here
 */
record BaseMetal(String name, Composition metal) {
  static BaseMetal of(Side side) {
    return new BaseMetal(side.alloy().name(), side.composition());
  }

  static BaseMetal of(Alloy alloy) {
    return new BaseMetal(alloy.name(), alloy.composition());
  }
}
