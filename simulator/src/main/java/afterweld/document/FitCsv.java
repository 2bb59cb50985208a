package afterweld.document;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.HardnessTraverse.Point;
import afterweld.study.TraverseFit;
import java.util.List;

/** A measured traverse beside the case as written and as fitted: a row for each point. */
public final class FitCsv {
  private FitCsv() {}

  /**
   * The CSV text.
   *
   * @param units of the distances; hardness is HV
   */
  public static String of(TraverseFit fit, UnitSystem units) {
    StringBuilder text =
        new StringBuilder(
            OutputQuantity.DISTANCE.key(units)
                + ",measured_HV,as_written_HV,fitted_HV,residual_HV\n");
    List<Point> points = fit.traverse().points();
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      text.append(new JsonNumber(units.length(point.distance()), 3))
          .append(',')
          .append(new JsonNumber(point.hardness(), 1))
          .append(',')
          .append(new JsonNumber(fit.before().get(i), 1))
          .append(',')
          .append(new JsonNumber(fit.after().get(i), 1))
          .append(',')
          .append(new JsonNumber(point.hardness() - fit.after().get(i), 1))
          .append('\n');
    }
    return text.toString();
  }
}
