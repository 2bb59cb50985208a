package afterweld.thermal;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The legs that meet at a weld and share its heat. SI units.
 *
 * <p>Every leg has the temperature of the others at the same distance, and together they act as one
 * plate of half the sum of their thicknesses (checked against finite-volume fields of three-legged
 * joints: within 1.3 K). Legs of different metals count with their conductivity [assumed].
 *
 * @param legs at least two
 * @param unequalWeight how far the heat enters only at the top of unequal legs: 0 if all are melted
 *     through, 1 for partial penetration or a fillet on the thick leg, 0.5 if unknown; the ends 0
 *     and 1 are then its band
 */
public record WeldLegs(List<Leg> legs, double unequalWeight) {
  /** Weight of the correction for unequal legs when nothing is known. */
  public static final double UNKNOWN_WEIGHT = 0.5;

  private static final double NARROW_ALIKE = 3.5;
  private static final double NARROW_UNLIKE = 14;

  /** Checks and copies the legs. */
  public WeldLegs {
    legs = List.copyOf(legs);
    if (legs.size() < 2) {
      throw new HeatInputException("joint", "a weld needs two legs or more to lead its heat away");
    }
    if (!(unequalWeight >= 0 && unequalWeight <= 1)) {
      throw new IllegalArgumentException("weight " + unequalWeight + " (expected 0 to 1)");
    }
  }

  /** A bead on a wide plate, or a butt of two wide plates alike. */
  public static WeldLegs plate(double thickness, ConductionMaterial material) {
    return new WeldLegs(
        List.of(Leg.wide(true, thickness, material), Leg.wide(false, thickness, material)), 0);
  }

  /** The same legs with another weight for their unequal thickness. */
  public WeldLegs withUnequalWeight(double weight) {
    return new WeldLegs(legs, weight);
  }

  /** Thickness of the thinnest leg, m. */
  public double thinnest() {
    return thicknesses().min().orElseThrow();
  }

  /** Thickness of the thickest leg, m. */
  public double thickest() {
    return thicknesses().max().orElseThrow();
  }

  /**
   * Whether the legs end so near that the heat builds up along the weld: v w/a under 3.5 for two
   * legs of one width, under 14 for others.
   *
   * @param speed travel speed v, m/s
   */
  public boolean narrow(double speed) {
    double least =
        legs.stream()
            .mapToDouble(leg -> speed * leg.widthOrWide() / leg.material().diffusivity())
            .min()
            .orElseThrow();
    boolean alike =
        legs.size() == 2 && legs.stream().mapToDouble(Leg::widthOrWide).distinct().count() == 1;
    return least < (alike ? NARROW_ALIKE : NARROW_UNLIKE);
  }

  private DoubleStream thicknesses() {
    return legs.stream().mapToDouble(Leg::thickness);
  }

  /**
   * The weld as one leg sees it.
   *
   * @param index which leg
   * @param sourceDepth depth to which the heat enters, m; not deeper than this leg
   * @param depth of the line looked at, m; not deeper than this leg
   * @param offset of the bead's centre from the weld centre, m; negative to the left
   */
  public LegGeometry seenFrom(int index, double sourceDepth, double depth, double offset) {
    Leg leg = legs.get(index);
    double towards = leg.left() ? -offset : offset;
    return new LegGeometry(
        leg.thickness(),
        jointThickness(leg),
        thicknesses().average().orElseThrow(),
        Math.min(sourceDepth, leg.thickness()),
        Math.min(depth, leg.thickness()),
        leg.widthOrWide() - towards,
        otherWidth(index) + towards);
  }

  private double jointThickness(Leg seenFrom) {
    double conductance =
        legs.stream().mapToDouble(leg -> leg.thickness() * leg.material().lossConductivity()).sum();
    return conductance / seenFrom.material().lossConductivity() / 2;
  }

  /** Mean width of the other legs by thickness; infinite if one of them is wide. */
  private double otherWidth(int index) {
    double area = 0;
    double thickness = 0;
    for (int i = 0; i < legs.size(); i++) {
      if (i != index) {
        area += legs.get(i).widthOrWide() * legs.get(i).thickness();
        thickness += legs.get(i).thickness();
      }
    }
    return area / thickness;
  }

  /** What the unequal thickness of the legs does to one of them. */
  public LegCorrection correction(int index) {
    return LegCorrection.of(index, thicknesses().boxed().toList(), unequalWeight);
  }
}
