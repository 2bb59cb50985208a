package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.Slice;
import afterweld.joint.SliceLine;
import afterweld.quantity.Check;
import java.util.Comparator;
import java.util.Optional;

/**
 * The strip across the weld in one state, bent by end couples and over an edge.
 *
 * @param state place in the profile's list of states
 * @param line the metal across the weld, dressed flush
 * @param couples bent by end couples
 * @param edge bent over an edge
 * @param softened from the first to the last softened metal, m from the weld centre
 * @param stretch how far its metal stretches; empty where that is not predicted
 * @param noStretch why that is so; empty where there is one
 */
public record BentState(
    int state,
    SliceLine line,
    StripBend couples,
    StripBend edge,
    SliceLine.Band softened,
    Optional<Stretch> stretch,
    String noStretch) {
  /** Refuses what it cannot be. */
  public BentState {
    Check.notNegative("state", state, "");
    if (stretch.isPresent() != noStretch.isEmpty()) {
      throw new IllegalArgumentException("either a stretch, or why there is none");
    }
  }

  /**
   * How far the metal of the strip stretches evenly.
   *
   * @param sharpest at the sharpest place under end couples
   * @param least the least that any metal does
   */
  public record Stretch(EvenStretch sharpest, EvenStretch least) {}

  /**
   * How far a metal stretches in a tension test before it necks. A bend doesn't neck, so its
   * surface stands more than that; how much more is its ductility, which is not predicted.
   *
   * @param zone where
   * @param strain nominal uniform strain, 0 to 1
   */
  public record EvenStretch(String zone, double strain) {
    /** Curvatures that count as the sharpest too (assumed). */
    private static final double ALIKE = 0.999;

    /** Refuses what it cannot be. */
    public EvenStretch {
      Check.said("zone", zone);
      Check.notNegative("strain", strain, "");
    }

    private static EvenStretch of(Slice slice, double modulus) {
      return new EvenStretch(slice.zone(), Math.expm1(slice.metal().law(modulus).uniformStrain()));
    }

    static EvenStretch least(SliceLine line, double modulus) {
      return line.slices().stream()
          .map(slice -> of(slice, modulus))
          .min(Comparator.comparingDouble(EvenStretch::strain))
          .orElseThrow();
    }

    /** Of places that are bent alike the outermost, so that a strip turned round names it too. */
    static EvenStretch sharpest(SliceLine line, StripBend bend, double modulus) {
      double sharpest =
          bend.line().stream().mapToDouble(StripBend.Bent::curvature).max().orElseThrow();
      double place =
          bend.line().stream()
              .filter(bent -> bent.curvature() >= ALIKE * sharpest)
              .map(StripBend.Bent::position)
              .max(Comparator.comparingDouble(Math::abs))
              .orElseThrow();
      return line.slices().stream()
          .filter(slice -> slice.from() <= place && place <= slice.to())
          .max(Comparator.comparingDouble(slice -> Math.abs(slice.centre())))
          .map(slice -> of(slice, modulus))
          .orElseThrow();
    }
  }

  /**
   * Bends a strip both ways.
   *
   * @param unknown why nothing is said of how far it stretches; empty where it is
   * @throws IllegalArgumentException if the strip is shorter than 4 thicknesses or than the
   *     softened band
   */
  static BentState of(
      int state, SliceLine line, BendSettings strip, Optional<UnknownStretch> unknown) {
    StripBend couples = StripBend.bend(line, coupon(strip, BendLoad.COUPLES));
    StripBend edge = StripBend.bend(line, coupon(strip, BendLoad.EDGE));
    SliceLine cut = line.over(strip.length());
    double modulus = coupon(strip, BendLoad.COUPLES).modulus();
    return new BentState(
        state,
        line,
        couples,
        edge,
        line.softBand(),
        unknown.isPresent()
            ? Optional.empty()
            : Optional.of(
                new Stretch(
                    EvenStretch.sharpest(cut, couples, modulus), EvenStretch.least(cut, modulus))),
        unknown.map(UnknownStretch::reason).orElse(""));
  }

  private static BendCoupon coupon(BendSettings strip, BendLoad load) {
    return BendCoupon.of(new BendSettings(strip.angle(), strip.length(), strip.width(), load));
  }

  /** The strip bent one way. */
  public StripBend by(BendLoad load) {
    return load == BendLoad.COUPLES ? couples : edge;
  }
}
