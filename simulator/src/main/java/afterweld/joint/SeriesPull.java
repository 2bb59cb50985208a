package afterweld.joint;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Slices in series under one force: who stretches how far. Forces are per metre of width, N/m.
 *
 * <p>Each slice carries its section times its nominal stress. Its own greatest force is that at the
 * tensile strength, or at the strain where poor metal breaks. Since a neck or a shear band needs
 * about one thickness of room (assumed), what counts for the joint is the greatest force averaged
 * over one thickness inside the slice's zone: a pointed minimum is raised, a plateau stays. The
 * ends aren't averaged, the base goes on beyond them. A slice pulled beyond its own greatest force
 * by this averaging stays at its greatest strain.
 */
final class SeriesPull {
  private static final double MARGIN = 0.05;
  private static final double SMALLEST_STRAIN = 1e-9;
  private static final int STEPS = 200;

  private final List<Slice> slices;
  private final double modulus;
  private final double gauge;
  private final PowerLaw[] laws;
  private final double[] section;
  private final double[] inGauge;
  private final double[] ownForce;
  private final double[] force;

  SeriesPull(SliceLine line, TensionCoupon coupon) {
    slices = line.slices();
    modulus = coupon.modulus();
    gauge = coupon.gauge();
    int count = slices.size();
    laws = new PowerLaw[count];
    section = new double[count];
    inGauge = new double[count];
    ownForce = new double[count];
    for (int i = 0; i < count; i++) {
      fill(i);
    }
    force = averaged();
  }

  private void fill(int i) {
    Slice slice = slices.get(i);
    boolean again = i > 0 && slice.metal().equals(slices.get(i - 1).metal());
    laws[i] = again ? laws[i - 1] : slice.metal().law(modulus);
    section[i] = slice.section();
    inGauge[i] = slice.overlap(-gauge / 2, gauge / 2);
    ownForce[i] = section[i] * laws[i].tensile();
  }

  private double[] averaged() {
    double[] average = new double[slices.size()];
    for (int i = 0; i < average.length; i++) {
      average[i] = overOneThickness(i);
    }
    average[0] = Math.min(average[0], ownForce[0]);
    int last = average.length - 1;
    average[last] = Math.min(average[last], ownForce[last]);
    return average;
  }

  /** Mean written as a difference, so that on a plateau it is the plateau to the last digit. */
  private double overOneThickness(int i) {
    Slice middle = slices.get(i);
    double low = middle.centre() - middle.thickness() / 2;
    double high = middle.centre() + middle.thickness() / 2;
    double length = 0;
    double excess = 0;
    for (int j = firstInWindow(i, low); j < slices.size(); j++) {
      double share = slices.get(j).overlap(low, high);
      if (share <= 0 || !slices.get(j).zone().equals(middle.zone())) {
        break;
      }
      length += share;
      excess += share * (ownForce[j] - ownForce[i]);
    }
    return ownForce[i] + excess / length;
  }

  private int firstInWindow(int i, double low) {
    int first = i;
    while (first > 0
        && slices.get(first - 1).to() > low
        && slices.get(first - 1).zone().equals(slices.get(i).zone())) {
      first--;
    }
    return first;
  }

  /** Law of each slice. */
  PowerLaw law(int i) {
    return laws[i];
  }

  /** Force at which each slice would end the test, averaged over one thickness, N/m. */
  double force(int i) {
    return force[i];
  }

  /** Slice that ends the coupon. */
  int weakest() {
    int weakest = 0;
    for (int i = 1; i < force.length; i++) {
      weakest = force[i] < force[weakest] ? i : weakest;
    }
    return weakest;
  }

  /** Lowest greatest force of any single slice, not averaged, N/m. */
  double lowestOwnForce() {
    double lowest = ownForce[0];
    for (double own : ownForce) {
      lowest = Math.min(lowest, own);
    }
    return lowest;
  }

  /** True strain of a slice under a force (N/m). */
  double strain(int i, double pull) {
    return pull >= ownForce[i] ? laws[i].uniformStrain() : laws[i].strainAt(pull / section[i]);
  }

  /** Mean nominal strain over the gauge. */
  double meanStrain(double pull) {
    double extension = 0;
    for (int i = 0; i < inGauge.length; i++) {
      if (inGauge[i] > 0) {
        extension += Math.expm1(strain(i, pull)) * inGauge[i];
      }
    }
    return extension / gauge;
  }

  /** Mean nominal strain over the gauge less its elastic part. */
  double meanPlasticStrain(double pull) {
    double elastic = 0;
    for (int i = 0; i < inGauge.length; i++) {
      elastic += pull / (section[i] * modulus) * inGauge[i];
    }
    return meanStrain(pull) - elastic / gauge;
  }

  /**
   * Force at which the mean plastic strain is 0.2 %, N/m; it must not lie above the greatest.
   * Sought in logarithms, where the curve is nearly straight, from below the lowest proof force of
   * any slice in the gauge.
   */
  double proofForce(double greatest) {
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i < section.length; i++) {
      if (inGauge[i] > 0) {
        low = Math.min(low, section[i] * slices.get(i).metal().proof());
      }
    }
    double end = Math.log(greatest);
    return distanceFromProof(end) <= 0
        ? greatest
        : Math.exp(root().solve(STEPS, this::distanceFromProof, Math.log(low) - MARGIN, end));
  }

  private double distanceFromProof(double logPull) {
    double plastic = meanPlasticStrain(Math.exp(logPull));
    return Math.log(Math.max(plastic, SMALLEST_STRAIN) / PowerLaw.OFFSET);
  }

  /**
   * A solver keeps its search inside itself, so each search has its own: threads share this class.
   */
  private static BrentSolver root() {
    return new BrentSolver(1e-14, 1e-12);
  }
}
