package afterweld.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Cuts a thermal cycle into few straight pieces, so that what is computed along it stays cheap.
 * Pieces leave the curve by at most 0.5 K at the peak and 1 K from 50 K below it on; in the liquid,
 * from which nothing is computed, by a tenth of what it is above the liquidus more, at most 5 K.
 * The peak itself is always kept.
 *
 * <p>The curve is sampled more widely the farther from its peak, samples are added until it is
 * nearly straight between them, and from each kept sample a piece runs as far as its chord allows.
 */
public final class ChordCut {
  private static final int HEATING_SAMPLES = 36;
  private static final int COOLING_SAMPLES = 60;
  private static final int MOST_HALVINGS = 10;
  private static final double TOLERANCE = 1;
  private static final double PEAK_TOLERANCE = 0.5;
  private static final double LIQUID_TOLERANCE = 5;
  private static final double PER_KELVIN_BELOW_PEAK = 0.01;
  private static final double PER_KELVIN_LIQUID = 0.1;
  private static final double SHORTEST = 1e-3;

  /** Parts of the tolerance: for the curve between samples, and for the chords over samples. */
  private static final double BETWEEN_SAMPLES = 0.12;

  private static final double AT_SAMPLES = 0.8;

  private final DoubleUnaryOperator cycle;
  private final double peak;
  private final double liquidus;

  private ChordCut(DoubleUnaryOperator cycle, double peak, double liquidus) {
    this.cycle = cycle;
    this.peak = peak;
    this.liquidus = liquidus;
  }

  /** A point of the curve, s and K. */
  private record Sample(double time, double temperature) {}

  /**
   * The history of a cycle, its time counted from {@code start}.
   *
   * @param cycle K against s
   * @param start s
   * @param peakTime s, not before start
   * @param end s
   * @param scale width of the peak, s
   * @param liquidus K
   */
  static TemperatureHistory of(
      DoubleUnaryOperator cycle,
      double start,
      double peakTime,
      double end,
      double scale,
      double liquidus) {
    double last = Math.max(end, start + SHORTEST);
    double top = Math.min(peakTime, last);
    ChordCut cut = new ChordCut(cycle, cycle.applyAsDouble(peakTime), liquidus);
    List<Sample> kept = new ArrayList<>();
    cut.keep(cut.samples(top, start, scale, HEATING_SAMPLES), kept);
    cut.keep(cut.samples(top, last, scale, COOLING_SAMPLES), kept);
    double first = kept.get(0).time();
    return TemperatureHistory.of(
        kept.stream().mapToDouble(sample -> sample.time() - first).toArray(),
        kept.stream().mapToDouble(Sample::temperature).toArray());
  }

  /**
   * The points of a computed cycle that are kept, by their index: its first, its highest, its last
   * and those between that pieces must run through.
   *
   * @param times s, rising
   * @param temperatures K, as many
   * @param liquidus K
   */
  public static List<Integer> kept(double[] times, double[] temperatures, double liquidus) {
    int highest = 0;
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i < times.length; i++) {
      highest = temperatures[i] > temperatures[highest] ? i : highest;
      samples.add(new Sample(times[i], temperatures[i]));
    }
    ChordCut cut = new ChordCut(unused -> Double.NaN, temperatures[highest], liquidus);
    List<Sample> kept = new ArrayList<>();
    cut.keep(samples.subList(0, highest + 1), kept);
    cut.keep(samples.subList(highest, samples.size()), kept);
    return kept.stream().map(samples::indexOf).toList();
  }

  private double tolerance(double temperature) {
    double below = PER_KELVIN_BELOW_PEAK * (peak - temperature);
    double liquid = PER_KELVIN_LIQUID * Math.max(0, temperature - liquidus);
    return Math.min(LIQUID_TOLERANCE, Math.min(TOLERANCE, PEAK_TOLERANCE + below) + liquid);
  }

  /** Samples in the order of time from one place to another, one of which is the peak. */
  private List<Sample> samples(double top, double other, double scale, int count) {
    if (top == other) {
      return List.of(at(top));
    }
    double range = asinh(Math.abs(other - top) / scale);
    double sign = Math.signum(other - top);
    List<Sample> samples = new ArrayList<>();
    for (int i = 0; i <= count; i++) {
      double part = (double) (sign < 0 ? count - i : i) / count;
      Sample next = at(top + sign * scale * Math.sinh(part * range));
      if (i > 0) {
        refine(samples.get(samples.size() - 1), next, MOST_HALVINGS, samples);
      }
      samples.add(next);
    }
    return samples;
  }

  private static double asinh(double x) {
    return Math.log(x + Math.sqrt(x * x + 1));
  }

  private Sample at(double time) {
    return new Sample(time, cycle.applyAsDouble(time));
  }

  private void refine(Sample from, Sample to, int halvings, List<Sample> samples) {
    Sample middle = at((from.time() + to.time()) / 2);
    double bow = middle.temperature() - (from.temperature() + to.temperature()) / 2;
    boolean more = Math.abs(bow) > BETWEEN_SAMPLES * tolerance(middle.temperature());
    if (more && halvings > 0) {
      refine(from, middle, halvings - 1, samples);
      samples.add(middle);
      refine(middle, to, halvings - 1, samples);
    }
  }

  /** Adds the samples that the pieces run between; the first is there already or begins. */
  private void keep(List<Sample> samples, List<Sample> kept) {
    if (kept.isEmpty()) {
      kept.add(samples.get(0));
    }
    int anchor = 0;
    while (anchor < samples.size() - 1) {
      anchor = farthest(samples, anchor);
      kept.add(samples.get(anchor));
    }
  }

  /** The last sample whose chord from the anchor stays within every tolerance between. */
  private int farthest(List<Sample> samples, int anchor) {
    Sample from = samples.get(anchor);
    double lowest = Double.NEGATIVE_INFINITY;
    double highest = Double.POSITIVE_INFINITY;
    int best = anchor + 1;
    for (int i = anchor + 1; i < samples.size() && lowest <= highest; i++) {
      Sample to = samples.get(i);
      double lapse = to.time() - from.time();
      double rise = to.temperature() - from.temperature();
      if (rise >= lowest * lapse && rise <= highest * lapse) {
        best = i;
      }
      double tolerance = AT_SAMPLES * tolerance(to.temperature());
      lowest = Math.max(lowest, (rise - tolerance) / lapse);
      highest = Math.min(highest, (rise + tolerance) / lapse);
    }
    return best;
  }
}
