package afterweld.weldmetal;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What melts together in a pool, by the alloys as filler guides rule on them: one lot of 5052 with
 * a little more magnesium than another is no other alloy.
 *
 * @param left left base, wt%
 * @param right right base, wt%
 * @param filler empty where none is added
 * @param stated the bases that are not what their names say, but what the case states
 */
public record PoolMetals(
    Composition left, Composition right, Optional<Composition> filler, List<Composition> stated) {
  /** Over the alloy's limit, wt%: no certificate of that alloy says so much (assumed). */
  private static final double ANOTHER_METAL = 0.5;

  /** The metals of a case. */
  public static PoolMetals of(WeldCase weldCase) {
    return new PoolMetals(
        brought(weldCase.left()),
        brought(weldCase.right()),
        weldCase.filler().alloy().map(Alloy::composition),
        Stream.of(weldCase.left(), weldCase.right())
            .filter(PoolMetals::another)
            .map(Side::composition)
            .toList());
  }

  /**
   * As the alloy is named, whatever a certificate says within its limits; what holds so much more
   * silicon or magnesium than the alloy may is another metal, such as an old weld.
   */
  private static Composition brought(Side side) {
    return another(side) ? side.composition() : side.alloy().composition();
  }

  private static boolean another(Side side) {
    return Stream.of(Element.SI, Element.MG)
        .anyMatch(
            element -> side.composition().of(element) > side.alloy().most(element) + ANOTHER_METAL);
  }

  /** The same bases with another filler. */
  public PoolMetals with(Composition other) {
    return with(Optional.of(other));
  }

  /** The same bases with another filler or without one. */
  public PoolMetals with(Optional<Composition> other) {
    return new PoolMetals(left, right, other, stated);
  }

  boolean fillerHolds(Element element, double more) {
    return filler.filter(metal -> metal.of(element) > more).isPresent();
  }

  boolean baseHolds(Element element, double more) {
    return Stream.of(left, right).anyMatch(metal -> metal.of(element) > more);
  }

  boolean anyHolds(Element element, double more) {
    return fillerHolds(element, more) || baseHolds(element, more);
  }

  boolean statedHolds(Element element, double more) {
    return stated.stream().anyMatch(metal -> metal.of(element) > more);
  }

  List<Composition> bases() {
    return List.of(left, right);
  }
}
