package afterweld.thermal.shell;

import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.Cubic;
import afterweld.thermal.Root;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * One leg in the section that a run has recorded: its temperature at any distance from the weld and
 * in any depth, against time.
 *
 * <p>Between the lines of the net a cubic goes through the four nearest. The net is even through
 * the thickness; what differs with depth is added by {@link ShellLocalRise}.
 */
final class ShellSection {
  private static final double NEAR_STEP = 0.25e-3;
  private static final double GROWTH = 1.03;
  private static final double ACCURACY = 1e-8;
  private static final int STRIDE = 4;

  private final ShellRecord record;
  private final ConductionMaterial material;
  private final int[] lines;
  private final double[] distance;
  private final List<ShellLocalRise> local;

  /**
   * A leg.
   *
   * @param lines of the leg in the record's frames, the shared one first
   * @param distance of the lines from the weld centre, m
   * @param local what each pass adds with depth
   */
  ShellSection(
      ShellRecord record,
      ConductionMaterial material,
      int[] lines,
      double[] distance,
      List<ShellLocalRise> local) {
    this.record = record;
    this.material = material;
    this.lines = lines;
    this.distance = distance;
    this.local = List.copyOf(local);
  }

  ShellRecord record() {
    return record;
  }

  double end() {
    return distance[distance.length - 1];
  }

  /** Temperatures at a distance from the weld centre (without sign) while a pass ran, K. */
  double[] temperatures(int pass, double y) {
    int from = record.arcs().get(pass).firstFrame();
    double[] temperatures = new double[record.end(pass) - from];
    double place = Math.min(y, end());
    Cubic cubic = Cubic.at(distance, place);
    for (int i = 0; i < temperatures.length; i++) {
      temperatures[i] = temperature(pass, from + i, place, cubic);
    }
    return temperatures;
  }

  private double temperature(int pass, int frame, double place, Cubic cubic) {
    double even = even(record.frame(frame), cubic);
    double added = local.get(pass).at(record.time(frame), place);
    return added == 0
        ? even
        : material.potential().temperature(material.potential().at(even) + added);
  }

  private double even(double[] frame, Cubic cubic) {
    double sum = 0;
    for (int i = 0; i < cubic.count(); i++) {
      sum += cubic.weight(i) * frame[lines[cubic.first() + i]];
    }
    return sum;
  }

  /**
   * Highest temperature of a pass at a distance, K: looked for at every fourth frame and then
   * around the best of them, since the frames are far closer than the temperature changes.
   */
  double peak(int pass, double y) {
    int from = record.arcs().get(pass).firstFrame();
    int to = record.end(pass);
    double place = Math.min(y, end());
    Cubic cubic = Cubic.at(distance, place);
    int best = from;
    double highest = 0;
    for (int frame = from; frame < to; frame += STRIDE) {
      double temperature = temperature(pass, frame, place, cubic);
      best = temperature > highest ? frame : best;
      highest = Math.max(highest, temperature);
    }
    int last = Math.min(to - 1, best + STRIDE - 1);
    for (int frame = Math.max(from, best - STRIDE + 1); frame <= last; frame++) {
      highest = Math.max(highest, temperature(pass, frame, place, cubic));
    }
    return highest;
  }

  /** Highest temperature of all passes at a distance, K. */
  double peak(double y) {
    double highest = 0;
    for (int pass = 0; pass < record.arcs().size(); pass++) {
      highest = Math.max(highest, peak(pass, y));
    }
    return highest;
  }

  /** Distances at which peaks are looked at, m: close together near the weld. */
  List<Double> ladder() {
    List<Double> rungs = new ArrayList<>();
    double step = NEAR_STEP;
    for (double y = 0; y < end(); y += step) {
      rungs.add(y);
      step *= GROWTH;
    }
    rungs.add(end());
    return rungs;
  }

  /**
   * Largest distance from the weld centre where a peak is reached, m; 0 if nowhere.
   *
   * @param peak peak temperature against distance, cheap on the ladder
   * @param temperature K
   */
  double outermost(DoubleUnaryOperator peak, double temperature) {
    List<Double> rungs = ladder();
    for (int i = rungs.size() - 1; i >= 0; i--) {
      if (peak.applyAsDouble(rungs.get(i)) >= temperature) {
        return i == rungs.size() - 1
            ? end()
            : Root.between(
                y -> peak.applyAsDouble(y) - temperature, rungs.get(i), rungs.get(i + 1), ACCURACY);
      }
    }
    return 0;
  }
}
