package afterweld.thermal.shell;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.Cubic;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;

/**
 * Runs the transient field through the passes of a weld and keeps what is asked of it: the record
 * of one section and the highest temperature of every cell. Mutable and for one thread.
 *
 * <p>While the arc is on a step is a quarter of the time in which it moves by one spacing; then
 * steps grow by 3 % up to 1 s, and later to a fiftieth of the time since. Where a cell passes 3000
 * °C or has no temperature any more, the pass is run again with half the step, three times at most.
 */
final class ShellRun {
  private static final double STEP_SHARE = 0.25;
  private static final double STEP_GROWTH = 1.03;
  private static final double USUAL_LONGEST = 1;
  private static final double SHARE_OF_ELAPSED = 0.02;
  private static final double HOTTEST = 3000 + ZERO_CELSIUS;
  private static final int HALVINGS = 3;
  private static final double[] NEIGHBOURS = {-1, 0, 1, 2};

  private final ShellGrid grid;
  private final ShellLines lines;
  private final WeldCourse course;
  private final ShellField field;
  private final double[][] peaks;
  private final List<ShellRecord> records;
  private double time;
  private double given;

  /**
   * A run.
   *
   * @param start temperature of everything, K
   * @param places where a record is kept, m along the weld, at least one
   */
  ShellRun(ShellGrid grid, WeldCourse course, SurfaceLoss loss, double start, List<Double> places) {
    this.grid = grid;
    this.lines = new ShellLines(grid);
    this.course = course;
    this.field = new ShellField(grid, lines, loss, start);
    this.peaks = new double[lines.count()][grid.places()];
    this.records = places.stream().map(ShellRecord::new).toList();
    observe();
  }

  /** Where a run can come back to. */
  static final class Mark {
    private final ShellField.Snapshot field;
    private final double[][] peaks;
    private final int frames;
    private final int arcs;
    private final double time;
    private final double given;

    private Mark(ShellRun run) {
      field = run.field.snapshot();
      peaks = Arrays.stream(run.peaks).map(double[]::clone).toArray(double[][]::new);
      frames = run.records.get(0).size();
      arcs = run.records.get(0).arcs().size();
      time = run.time;
      given = run.given;
    }
  }

  Mark mark() {
    return new Mark(this);
  }

  void backTo(Mark mark) {
    field.restore(mark.field);
    for (int line = 0; line < peaks.length; line++) {
      System.arraycopy(mark.peaks[line], 0, peaks[line], 0, peaks[line].length);
    }
    records.forEach(record -> record.cutTo(mark.frames, mark.arcs));
    time = mark.time;
    given = mark.given;
  }

  ShellLines lines() {
    return lines;
  }

  /** What one of the places went through. */
  ShellRecord record(int place) {
    return records.get(place);
  }

  /** Highest temperature of every cell so far, K, by line and place; not to be changed. */
  double[][] peaks() {
    return peaks;
  }

  ShellField field() {
    return field;
  }

  /** Heat put in so far, J. */
  double given() {
    return given;
  }

  /** The arc along the whole course. */
  void weld(Pass pass, double power) {
    weld(pass, power, course.stop());
  }

  /**
   * The arc from the start of the course on.
   *
   * @param power that enters the metal at the start, W
   * @param until where it stops being followed, m from the end of the parts
   * @throws HeatInputException if the heat is more than the metal can take
   */
  void weld(Pass pass, double power, double until) {
    Mark before = mark();
    double step = STEP_SHARE * grid.spacing() / pass.travelSpeed();
    for (int halving = 0; halving <= HALVINGS; halving++) {
      if (weld(pass, power, until, step)) {
        return;
      }
      backTo(before);
      step /= 2;
    }
    throw new HeatInputException(
        "current", "this heat burns through: the metal under the arc passes 3000 °C");
  }

  private boolean weld(Pass pass, double power, double until, double wantedStep) {
    double from = course.beyond();
    double speed = pass.travelSpeed();
    ShellRecord.Arc arc =
        new ShellRecord.Arc(time, speed, from, course.stop(), power, records.get(0).size());
    records.forEach(record -> record.begin(arc));
    ShellSource source = new ShellSource(grid, lines, pass.offset());
    int steps = (int) Math.ceil((until - from) / speed / wantedStep);
    double way = (until - from) / steps;
    double step = way / speed;
    for (int i = 0; i < steps; i++) {
      double here = from + i * way;
      double energy = power * course.power(here + way / 2) * step;
      field.step(step, source.along(here, here + way, energy), source.share());
      given += energy;
      time += step;
      observe();
      if (!(field.hottest() < HOTTEST)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Lets everything cool in still air.
   *
   * @param until hottest temperature at which it ends, K
   * @param longest s
   */
  void cool(double until, double longest) {
    double step = STEP_SHARE * grid.spacing() / records.get(0).arcs().get(0).speed();
    double elapsed = 0;
    while (elapsed < longest && field.hottest() > until) {
      double largest = Math.max(USUAL_LONGEST, SHARE_OF_ELAPSED * elapsed);
      step = Math.min(Math.min(step * STEP_GROWTH, largest), longest - elapsed + 1e-9);
      field.step(step);
      elapsed += step;
      time += step;
      observe();
    }
  }

  /** Brings everything to one temperature in a given time. */
  void bringTo(double temperature, double duration) {
    double before = field.content();
    field.fill(temperature);
    given += field.content() - before;
    time += duration;
    observe();
  }

  /** Called after every step, so a thread that is interrupted ends here. */
  private void observe() {
    if (Thread.currentThread().isInterrupted()) {
      throw new CancellationException("interrupted while the heat was followed");
    }
    for (int line = 0; line < lines.count(); line++) {
      double[] here = field.line(line);
      double[] highest = peaks[line];
      for (int i = 0; i < here.length; i++) {
        highest[i] = Math.max(highest[i], here[i]);
      }
    }
    records.forEach(record -> record.add(time, frame(record.along())));
  }

  /** Temperatures of all lines at a distance along the weld, K. */
  private double[] frame(double along) {
    double index = (along - grid.along(0)) / grid.spacing();
    int below = (int) Math.floor(index);
    Cubic cubic = Cubic.at(NEIGHBOURS, index - below);
    double[] frame = new double[lines.count()];
    for (int i = 0; i < cubic.count(); i++) {
      int place = grid.place(below - 1 + i);
      for (int line = 0; line < frame.length; line++) {
        frame[line] += cubic.weight(i) * field.line(line)[place];
      }
    }
    return frame;
  }
}
