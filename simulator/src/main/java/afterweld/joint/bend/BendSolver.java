package afterweld.joint.bend;

import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.PowerLaw;
import afterweld.joint.Slice;
import afterweld.joint.SliceLine;
import afterweld.joint.SliceMetal;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Finds the moment that bends a strip by an angle: {@code sum of kappa_i(M s_i) dx = angle}, with s
 * the moment's share along the strip (1 for couples; 1 - |x|/(L/2) for an edge under the middle).
 * The angle rises with the moment, so there is one.
 */
final class BendSolver {
  private static final int STEPS = 300;
  private static final double GROWTH = 1.25;

  private final List<Slice> slices;
  private final BendCoupon coupon;
  private final BendSection[] sections;
  private final double[] share;

  BendSolver(SliceLine line, BendCoupon coupon) {
    this.slices = line.slices();
    this.coupon = coupon;
    sections = new BendSection[slices.size()];
    share = new double[slices.size()];
    for (int i = 0; i < sections.length; i++) {
      sections[i] = section(slices.get(i));
      share[i] = share(slices.get(i));
    }
  }

  private BendSection section(Slice slice) {
    SliceMetal metal = slice.metal();
    PowerLaw law = PowerLaw.through(metal.proof(), metal.tensile(), coupon.modulus());
    double width = coupon.strip().width() * (1 - slice.lostArea());
    return BendSection.of(law, width, slice.thickness());
  }

  private double share(Slice slice) {
    return coupon.strip().load() == BendLoad.COUPLES
        ? 1
        : 1 - Math.abs(slice.centre()) / (coupon.strip().length() / 2);
  }

  /** Greatest moment along the strip when the angle is reached, N m. */
  double moment() {
    double low = Double.POSITIVE_INFINITY;
    double evenCurvature = coupon.strip().angle() / coupon.strip().length();
    for (BendSection section : sections) {
      low = Math.min(low, section.moment(evenCurvature));
    }
    UnivariateFunction miss = moment -> Math.min(angle(moment), 1e6) - coupon.strip().angle();
    double high = low;
    while (miss.value(high) < 0) {
      low = high;
      high *= GROWTH;
    }
    return high == low ? low : root().solve(STEPS, miss, low, high);
  }

  private double angle(double moment) {
    double sum = 0;
    for (int i = 0; i < sections.length; i++) {
      sum += curvature(i, moment) * slices.get(i).length();
    }
    return sum;
  }

  /** Curvature of a slice under the strip's moment (N m), 1/m. */
  double curvature(int i, double moment) {
    return sections[i].curvature(moment * share[i]);
  }

  /** Curvature left after release, 1/m. */
  double set(int i, double moment) {
    return curvature(i, moment) - sections[i].elasticCurvature(moment * share[i]);
  }

  /**
   * A solver keeps its search inside itself, so each search has its own: threads share this class.
   */
  private static BrentSolver root() {
    return new BrentSolver(1e-13, 1e-12);
  }
}
