package afterweld.study;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.practice.HardeningAge;
import afterweld.choice.practice.StandardTreatment;
import afterweld.quantity.Check;
import afterweld.section.AgeingTrial;
import afterweld.section.CoolAgeing;
import afterweld.section.OverageingLimit;
import afterweld.section.WeldSession;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Hardness and yield of base and weld metal against ageing time at five temperatures around the
 * case's own (or the standard) schedule, the window in which 97 % of the peak is held, and what a
 * paint oven does to the finished part. Values end where {@link OverageingLimit} ends. Metal that
 * holds nothing that ageing could harden, such as an annealed base, has a window that says so and
 * no curves.
 *
 * @param curves for each metal that ageing can harden, coolest temperature first
 * @param schedule the ageing step; empty if no metal of the case answers to ageing
 * @param ownSchedule whether the case names it
 * @param windows for each metal at the schedule's temperature
 * @param paint what half an hour in a paint oven leaves
 * @param slow what is said of metals whose ageing is computed too slow
 */
public record AgeingStudy(
    List<Curve> curves,
    Optional<Age> schedule,
    boolean ownSchedule,
    List<Window> windows,
    List<Paint> paint,
    List<Warning> slow) {
  private static final double HOUR = 3600;
  private static final double FIRST_HOURS = 0.1;
  private static final double LAST_HOURS = 300;
  private static final int POINTS = 30;
  private static final double[] OFFSETS = {-30, -15, 0, 15, 30};
  private static final double[] PAINT_OVENS = {175, 190, 205, 220};
  private static final double PAINT_TIME = 1800;
  private static final double KEPT = 0.97;
  private static final double SLOW_UP_TO = 180 + ZERO_CELSIUS;
  private static final double GAIN = 1.05;

  /** Metal that never reaches this share of what full treatment gives it holds nothing to age. */
  private static final double HARDENABLE = 0.5;

  /** Copies the lists. */
  public AgeingStudy {
    curves = List.copyOf(curves);
    windows = List.copyOf(windows);
    paint = List.copyOf(paint);
    slow = List.copyOf(slow);
  }

  /**
   * One metal at one temperature.
   *
   * @param metal left, right or weld
   * @param temperature K
   * @param hours times at temperature, h
   * @param strengths one for each time; not predicted beyond the limit of overageing
   */
  public record Curve(
      String metal, double temperature, List<Double> hours, List<Strength> strengths) {
    /** Copies the lists. */
    public Curve {
      Check.positive("temperature", temperature, "K");
      hours = List.copyOf(hours);
      strengths = List.copyOf(strengths);
    }
  }

  /**
   * When 97 % of the highest yield is held.
   *
   * @param metal left, right or weld
   * @param from h; the shortest computed time if it is held from the start
   * @param to h; the end of the computed time if it is held till then; NaN, as all numbers, if the
   *     strength is not predicted or nothing is held
   * @param start yield after the shortest computed time, Pa
   * @param peak highest yield, Pa
   * @param scheduled yield after the schedule's time, Pa
   * @param nothingToAge whether the metal comes to the furnace with nothing that could harden it
   */
  public record Window(
      String metal,
      double from,
      double to,
      double start,
      double peak,
      double scheduled,
      boolean nothingToAge) {
    private static Window nothing(String metal) {
      double none = Double.NaN;
      return new Window(metal, none, none, none, none, none, true);
    }

    /** Whether ageing adds more than a twentieth to its yield. */
    public boolean answers() {
      return peak > GAIN * start;
    }

    /** Whether it is held from the shortest computed time on. */
    public boolean fromTheStart() {
      return from <= FIRST_HOURS;
    }

    /** Whether it is held to the longest computed time. */
    public boolean toTheEnd() {
      return to >= LAST_HOURS;
    }
  }

  /**
   * What a paint oven leaves of the finished part.
   *
   * @param metal left, right or weld
   * @param temperature of the oven, K
   * @param share of the finished yield that is left after half an hour; NaN if it is beyond the
   *     limit of overageing
   */
  public record Paint(String metal, double temperature, double share) {
    /** Refuses what it cannot be. */
    public Paint {
      Check.positive("temperature", temperature, "K");
    }
  }

  /** Limits of what the curves mean; none if there are no curves. */
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>(slow);
    schedule.ifPresent(age -> warnings.add(OverageingLimit.aboutCurves()));
    return warnings;
  }

  private static List<Warning> slow(WeldCase weldCase, Age schedule) {
    List<Warning> slow = new ArrayList<>();
    boolean wrought =
        Stream.of(weldCase.left(), weldCase.right()).anyMatch(side -> !side.alloy().casting());
    if (wrought && schedule.temperature() < SLOW_UP_TO) {
      slow.add(
          new Warning(
              "ageing-slow",
              "Up to about 180 °C (355 °F) ageing is computed too slow: the usual 8 h at 177 °C (350"
                  + " °F) counts as the peak of 6061, here it is a little short of it."));
    }
    CoolAgeing.ofCastings(weldCase, List.of(schedule)).ifPresent(slow::add);
    return slow;
  }

  /**
   * The study of a case.
   *
   * @param session where its weld is kept
   */
  public static AgeingStudy of(WeldSession session, WeldCase weldCase) {
    boolean treatable =
        weldCase.left().alloy().heatTreatable() || weldCase.right().alloy().heatTreatable();
    boolean own = weldCase.afterWeld().stream().anyMatch(Age.class::isInstance);
    List<FurnaceStep> steps =
        own ? weldCase.afterWeld() : StandardTreatment.full(weldCase).orElse(List.of());
    OptionalInt at = HardeningAge.place(steps);
    if (!treatable || at.isEmpty()) {
      return new AgeingStudy(List.of(), Optional.empty(), own, List.of(), List.of(), List.of());
    }
    return new Work(session, weldCase, steps, at.getAsInt()).study(own);
  }

  private record Metal(String name, AgeingTrial trial) {}

  private record Work(
      WeldSession session,
      WeldCase weldCase,
      List<FurnaceStep> steps,
      List<FurnaceStep> before,
      Age schedule) {
    Work(WeldSession session, WeldCase weldCase, List<FurnaceStep> steps, int at) {
      this(session, weldCase, steps, steps.subList(0, at), (Age) steps.get(at));
    }

    AgeingStudy study(boolean own) {
      List<Double> hours = hours();
      List<Metal> all = metals();
      List<Metal> hardened = all.stream().filter(metal -> !nothingToAge(metal, hours)).toList();
      List<Curve> curves =
          hardened.stream()
              .flatMap(
                  metal ->
                      Arrays.stream(OFFSETS).mapToObj(offset -> new Request(metal, hotter(offset))))
              .toList()
              .parallelStream()
              .map(request -> request.curve(hours))
              .toList();
      return new AgeingStudy(
          curves,
          Optional.of(schedule),
          own,
          all.stream()
              .map(
                  metal ->
                      hardened.contains(metal)
                          ? window(metal, scheduled(curves, metal))
                          : Window.nothing(metal.name()))
              .toList(),
          hardened.stream().flatMap(metal -> paint(metal).stream()).toList(),
          slow(weldCase, schedule));
    }

    /** Base metal that comes undissolved, and that ageing brings nowhere near its full strength. */
    private boolean nothingToAge(Metal metal, List<Double> hours) {
      if (metal.name().equals("weld")
          || before.stream().anyMatch(SolutionTreat.class::isInstance)) {
        return false;
      }
      Side side = metal.name().equals("left") ? weldCase.left() : weldCase.right();
      List<FurnaceStep> full =
          StandardTreatment.full(weldCase).orElseThrow().stream()
              .takeWhile(step -> !(step instanceof Age))
              .toList();
      return peak(metal.trial(), hours)
          < HARDENABLE * peak(AgeingTrial.base(weldCase, side, full), hours);
    }

    private double peak(AgeingTrial trial, List<Double> hours) {
      List<Double> times = hours.stream().map(hour -> hour * HOUR).toList();
      return trial.at(schedule, times).stream().mapToDouble(Strength::yield).max().orElseThrow();
    }

    private Age hotter(double offset) {
      return new Age(
          schedule.temperature() + offset, schedule.time(), schedule.ramp(), schedule.overage());
    }

    private record Request(Metal metal, Age age) {
      Curve curve(List<Double> hours) {
        List<Double> times = hours.stream().map(hour -> hour * HOUR).toList();
        List<Strength> aged = metal.trial().at(age, times);
        return new Curve(metal.name(), age.temperature(), hours, OverageingLimit.claimed(aged));
      }
    }

    private List<Metal> metals() {
      List<Metal> metals = new ArrayList<>();
      Side left = weldCase.left();
      Side right = weldCase.right();
      if (left.alloy().heatTreatable()) {
        metals.add(new Metal("left", AgeingTrial.base(weldCase, left, before)));
      }
      if (!right.equals(left) && right.alloy().heatTreatable()) {
        metals.add(new Metal("right", AgeingTrial.base(weldCase, right, before)));
      }
      metals.add(new Metal("weld", AgeingTrial.weld(session, weldCase, before)));
      return metals;
    }

    private static List<Double> hours() {
      double ratio = Math.pow(LAST_HOURS / FIRST_HOURS, 1.0 / (POINTS - 1));
      return IntStream.range(0, POINTS).mapToObj(i -> FIRST_HOURS * Math.pow(ratio, i)).toList();
    }

    /** The curve at the schedule's own temperature. */
    private Curve scheduled(List<Curve> curves, Metal metal) {
      return curves.stream()
          .filter(curve -> curve.metal().equals(metal.name()))
          .filter(curve -> curve.temperature() == schedule.temperature())
          .findFirst()
          .orElseThrow();
    }

    private Window window(Metal metal, Curve curve) {
      double[] yields =
          curve.strengths().stream()
              .mapToDouble(Strength::yield)
              .map(yield -> Double.isNaN(yield) ? 0 : yield)
              .toArray();
      double peak = Arrays.stream(yields).max().orElseThrow();
      if (peak == 0) {
        double none = Double.NaN;
        return new Window(metal.name(), none, none, none, none, none, false);
      }
      HeldTime held = HeldTime.of(curve.hours(), yields, KEPT * peak);
      return new Window(
          metal.name(), held.from(), held.to(), yields[0], peak, scheduled(metal, curve), false);
    }

    /** What a section of the case has away from the weld; not predicted where its curve is not. */
    private double scheduled(Metal metal, Curve curve) {
      List<Double> times =
          Stream.concat(curve.hours().stream().map(hour -> hour * HOUR), Stream.of(schedule.time()))
              .sorted()
              .distinct()
              .toList();
      Strength there =
          OverageingLimit.claimed(metal.trial().at(schedule, times))
              .get(times.indexOf(schedule.time()));
      return there.predicted() ? metal.trial().after(schedule).yield() : Double.NaN;
    }

    private List<Paint> paint(Metal metal) {
      return Arrays.stream(PAINT_OVENS)
          .map(celsius -> celsius + ZERO_CELSIUS)
          .mapToObj(oven -> new Paint(metal.name(), oven, left(metal, oven)))
          .toList();
    }

    private double left(Metal metal, double oven) {
      AgeingTrial done =
          metal.name().equals("weld")
              ? AgeingTrial.weld(session, weldCase, steps)
              : AgeingTrial.base(
                  weldCase,
                  metal.name().equals("left") ? weldCase.left() : weldCase.right(),
                  steps);
      Age bake = new Age(oven, PAINT_TIME, Ramp.BY_FURNACE, false);
      double share = done.after(bake).yield() / done.before().yield();
      return OverageingLimit.beyond(share) ? Double.NaN : share;
    }
  }
}
