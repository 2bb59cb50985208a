package afterweld.strength;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Vickers hardness in other scales: Brinell with 500 kgf and a 10 mm ball, Rockwell B.
 *
 * <p>Linear between the pairs of the table for wrought aluminium. Outside its 40 to 160 HB the line
 * {@code HV = 1.208 HB - 4.3} continues it; it reproduces every pair to one point, and the reading
 * says that it is extrapolated. Rockwell B exists from 28 to 91 only: softer metal is read in
 * another scale.
 *
 * <p>Known error: two points between scales, more for castings and for hardness gradients as steep
 * as a heat-affected zone. Source: ASTM E140 table 9, from memory.
 */
public final class HardnessScale {
  private static final List<HardnessPair> PAIRS = HardnessPair.table();
  private static final List<HardnessPair> ROCKWELL_PAIRS =
      PAIRS.stream().filter(pair -> pair.rockwellB().isPresent()).toList();
  private static final double SLOPE = 1.208;
  private static final double INTERCEPT = -4.3;

  /** Where Rockwell B can be converted, and for what. */
  public static final String ROCKWELL_REACH =
      String.format(
          Locale.ROOT,
          "HRB from %.0f to %.0f, where the table for wrought aluminium holds; none is known for"
              + " castings",
          rockwell(ROCKWELL_PAIRS.get(0)),
          rockwell(ROCKWELL_PAIRS.get(ROCKWELL_PAIRS.size() - 1)));

  /** What is told to somebody with a Webster gauge. */
  public static final String NO_WEBSTER =
      "no table turns Webster readings into HV: give HV, HB or HRB, or compare the part with a piece"
          + " of the same alloy, temper and thickness under the same gauge";

  /** What is expected of somebody who reads a casting in HRB. */
  public static final String NO_CAST_ROCKWELL =
      "HV or HB: the table of HRB holds for wrought metal, and none is known for castings";

  private HardnessScale() {}

  /** Whether a unit or a column is named for a Webster gauge. */
  public static boolean webster(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT);
    return plain.startsWith("webster") || plain.equals("hw") || plain.equals("hwb");
  }

  /**
   * A converted hardness.
   *
   * @param value in the scale asked for; no number of what is none
   * @param extrapolated true outside the table
   */
  public record Reading(double value, boolean extrapolated) {}

  /** HB (500 kgf, 10 mm) of so many HV. */
  public static Reading brinell(double vickers) {
    OptionalDouble inside = between(PAIRS, HardnessPair::vickers, HardnessPair::brinell, vickers);
    return reading(inside, (vickers - INTERCEPT) / SLOPE);
  }

  /** HV of so many HB (500 kgf, 10 mm). */
  public static Reading vickersFromBrinell(double brinell) {
    OptionalDouble inside = between(PAIRS, HardnessPair::brinell, HardnessPair::vickers, brinell);
    return reading(inside, SLOPE * brinell + INTERCEPT);
  }

  /** HRB of so many HV; empty outside 28 to 91 HRB. */
  public static OptionalDouble rockwellB(double vickers) {
    return between(ROCKWELL_PAIRS, HardnessPair::vickers, HardnessScale::rockwell, vickers);
  }

  /** HV of so many HRB; empty outside 28 to 91 HRB. */
  public static OptionalDouble vickersFromRockwellB(double rockwellB) {
    return between(ROCKWELL_PAIRS, HardnessScale::rockwell, HardnessPair::vickers, rockwellB);
  }

  private static double rockwell(HardnessPair pair) {
    return pair.rockwellB().orElseThrow();
  }

  private static Reading reading(OptionalDouble inside, double outside) {
    return new Reading(inside.orElse(outside), inside.isEmpty());
  }

  /** Linear between neighbours of a rising table; empty outside it. */
  private static OptionalDouble between(
      List<HardnessPair> pairs,
      ToDoubleFunction<HardnessPair> from,
      ToDoubleFunction<HardnessPair> to,
      double value) {
    for (int i = 1; i < pairs.size(); i++) {
      double low = from.applyAsDouble(pairs.get(i - 1));
      double high = from.applyAsDouble(pairs.get(i));
      if (value >= low && value <= high) {
        double start = to.applyAsDouble(pairs.get(i - 1));
        double end = to.applyAsDouble(pairs.get(i));
        return OptionalDouble.of(start + (value - low) / (high - low) * (end - start));
      }
    }
    return OptionalDouble.empty();
  }
}
