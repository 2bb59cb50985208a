package afterweld.thermal.shell;

import java.util.ArrayList;
import java.util.List;

/**
 * What a section across the weld went through: time and temperature of every line after every step,
 * and when and where the arc ran. SI units and kelvin.
 */
final class ShellRecord {
  private final double along;
  private final List<Double> times = new ArrayList<>();
  private final List<double[]> frames = new ArrayList<>();
  private final List<Arc> arcs = new ArrayList<>();

  /**
   * One pass of the arc.
   *
   * @param start of the pass, s
   * @param speed m/s
   * @param from where it starts, m along the weld
   * @param to where it stops, m along the weld
   * @param power at the start, W
   * @param firstFrame index of the first frame that belongs to it
   */
  record Arc(double start, double speed, double from, double to, double power, int firstFrame) {
    double end() {
      return start + (to - from) / speed;
    }
  }

  /**
   * An empty record.
   *
   * @param along where on the weld the section is taken, m
   */
  ShellRecord(double along) {
    this.along = along;
  }

  double along() {
    return along;
  }

  void begin(Arc arc) {
    arcs.add(arc);
  }

  void add(double time, double[] temperatures) {
    times.add(time);
    frames.add(temperatures);
  }

  int size() {
    return times.size();
  }

  double time(int frame) {
    return times.get(frame);
  }

  double[] frame(int frame) {
    return frames.get(frame);
  }

  List<Arc> arcs() {
    return arcs;
  }

  /** Frame at which a pass's own frames end. */
  int end(int pass) {
    return pass + 1 < arcs.size() ? arcs.get(pass + 1).firstFrame() : size();
  }

  /** Forgets what came after a number of frames and passes. */
  void cutTo(int frameCount, int arcCount) {
    times.subList(frameCount, times.size()).clear();
    frames.subList(frameCount, frames.size()).clear();
    arcs.subList(arcCount, arcs.size()).clear();
  }
}
