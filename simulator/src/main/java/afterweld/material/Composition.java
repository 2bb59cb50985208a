package afterweld.material;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a metal is made of: weight percent per element, the rest aluminium.
 *
 * <p>Weight percent is kept, and not a fraction, because every certificate, standard and formula of
 * the trade is written in it.
 */
public final class Composition {
  private final double[] weightPercent;

  private Composition(double[] weightPercent) {
    this.weightPercent = weightPercent;
  }

  /**
   * A composition from weight percents; an element that is not named is absent.
   *
   * @throws IllegalArgumentException if a share is negative or not finite, or if all together
   *     exceed 100 %
   */
  public static Composition of(Map<Element, Double> weightPercent) {
    double[] shares = new double[Element.values().length];
    weightPercent.forEach((element, share) -> shares[element.ordinal()] = checked(element, share));
    if (Arrays.stream(shares).sum() > 100) {
      throw new IllegalArgumentException("composition adds up to more than 100 wt%");
    }
    return new Composition(shares);
  }

  private static double checked(Element element, double share) {
    if (!(share >= 0 && share <= 100)) {
      throw new IllegalArgumentException(
          element.symbol() + " " + share + " wt% (expected 0 to 100 wt%)");
    }
    return share;
  }

  /** Weight percent of one element. */
  public double of(Element element) {
    return weightPercent[element.ordinal()];
  }

  /** This composition with one element replaced, in weight percent. */
  public Composition with(Element element, double share) {
    double[] shares = weightPercent.clone();
    shares[element.ordinal()] = checked(element, share);
    return new Composition(shares);
  }

  /**
   * Linear mix by weight, as weld metal is mixed from base and filler.
   *
   * @param share weight share of this composition, 0 to 1; the rest is {@code other}
   */
  public Composition mixedWith(Composition other, double share) {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("share " + share + " (expected 0 to 1)");
    }
    double[] shares = new double[weightPercent.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = share * weightPercent[i] + (1 - share) * other.weightPercent[i];
    }
    return new Composition(shares);
  }

  /** Weight percent of every element that is present, in the order of {@link Element}. */
  public Map<Element, Double> toMap() {
    Map<Element, Double> map = new EnumMap<>(Element.class);
    for (Element element : Element.values()) {
      if (of(element) > 0) {
        map.put(element, of(element));
      }
    }
    return map;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Composition that && Arrays.equals(weightPercent, that.weightPercent);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(weightPercent);
  }

  @Override
  public String toString() {
    return toMap().toString();
  }
}
