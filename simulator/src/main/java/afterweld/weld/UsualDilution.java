package afterweld.weld;

import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Share of melted base in the weld metal when nobody measured it, by edge preparation and process.
 *
 * <p>Square edges 70 % (tungsten arc) or 60 % (metal arc), a groove in one pass 40 %, its root 50 %
 * and each fill 28 %, a fillet 32 or 30 %. The weld has one composition, so the passes are averaged
 * with equal weight. Each figure is the middle of a range of common practice and holds within
 * {@link #BAND}; a macro section tells better.
 */
public final class UsualDilution {
  /** Half-width of the band, as a share. */
  public static final double BAND = 0.15;

  private UsualDilution() {}

  /** The share of base, 0 to 1; NaN without a pass. */
  public static double of(Preparation preparation, List<Pass> passes) {
    return IntStream.range(0, passes.size())
        .mapToDouble(i -> ofPass(preparation, passes.get(i).process(), i, passes.size()))
        .average()
        .orElse(Double.NaN);
  }

  private static double ofPass(
      Preparation preparation, WeldingProcess process, int index, int count) {
    return switch (preparation) {
      case SQUARE -> process.tungstenArc() ? 0.70 : 0.60;
      case FILLET -> process.tungstenArc() ? 0.32 : 0.30;
      case SINGLE_V, DOUBLE_V -> inGroove(index, count);
    };
  }

  private static double inGroove(int index, int count) {
    if (count == 1) {
      return 0.40;
    }
    return index == 0 ? 0.50 : 0.28;
  }
}
