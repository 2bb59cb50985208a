package afterweld.joint.bend;

import afterweld.joint.Slice;
import afterweld.joint.SliceLine;
import java.util.List;

/**
 * Where a bent strip is sharpest.
 *
 * @param slice the slice there
 * @param curvature its curvature, 1/m
 * @param averaged greatest mean over one thickness, 1/m
 */
record CurvaturePeak(Slice slice, double curvature, double averaged) {

  static CurvaturePeak of(SliceLine strip, List<StripBend.Bent> bent) {
    int sharpest = 0;
    double averaged = 0;
    for (int i = 0; i < bent.size(); i++) {
      sharpest = bent.get(i).curvature() > bent.get(sharpest).curvature() ? i : sharpest;
      averaged = Math.max(averaged, overOneThickness(strip, bent, i));
    }
    return new CurvaturePeak(
        strip.slices().get(sharpest), bent.get(sharpest).curvature(), averaged);
  }

  double thickness() {
    return slice.thickness();
  }

  private static double overOneThickness(SliceLine strip, List<StripBend.Bent> bent, int middle) {
    Slice centre = strip.slices().get(middle);
    double low = centre.centre() - centre.thickness() / 2;
    double high = centre.centre() + centre.thickness() / 2;
    double length = 0;
    double angle = 0;
    for (int i = first(strip, middle, low); i < bent.size(); i++) {
      double share = strip.slices().get(i).overlap(low, high);
      if (share <= 0) {
        break;
      }
      length += share;
      angle += share * bent.get(i).curvature();
    }
    return angle / length;
  }

  private static int first(SliceLine strip, int middle, double low) {
    int first = middle;
    while (first > 0 && strip.slices().get(first - 1).to() > low) {
      first--;
    }
    return first;
  }
}
