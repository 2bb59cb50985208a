package afterweld.study;

import afterweld.quantity.UnitSystem;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** Inputs that a map may run over. Values are SI and kelvin. */
public enum GridInput {
  TRAVEL_SPEED(
      "travel_speed", Kind.SPEED, (from, v) -> each(from, p -> CaseChange.travelSpeed(p, v))),
  PREHEAT("preheat", Kind.TEMPERATURE, GridInput::preheated),
  CURRENT(
      "current",
      Kind.CURRENT,
      (from, v) ->
          each(
              from,
              p -> CaseChange.pass(p, v, p.voltage(), p.travelSpeed(), p.startTemperature()))),
  VOLTAGE(
      "voltage",
      Kind.VOLTAGE,
      (from, v) ->
          each(
              from,
              p -> CaseChange.pass(p, p.current(), v, p.travelSpeed(), p.startTemperature()))),
  DILUTION("dilution", Kind.SHARE, CaseChange::dilution),
  NATURAL_AGE("natural_age", Kind.LONG_TIME, CaseChange::naturalAge),
  SOLUTION_TEMPERATURE(
      "solution_temperature",
      Kind.TEMPERATURE,
      (from, v) -> CaseChange.steps(from, step -> dissolvedAt(step, v))),
  QUENCH_DELAY(
      "quench_delay", Kind.TIME, (from, v) -> CaseChange.steps(from, step -> delayed(step, v))),
  AGEING_TEMPERATURE(
      "ageing_temperature",
      Kind.TEMPERATURE,
      (from, v) -> CaseChange.steps(from, step -> agedAt(step, v))),
  AGEING_TIME(
      "ageing_time", Kind.HOURS, (from, v) -> CaseChange.steps(from, step -> agedFor(step, v)));

  /** What an input measures, and the unit it is shown in. */
  public enum Kind {
    SPEED("mm/s", "in/min"),
    TEMPERATURE("°C", "°F"),
    CURRENT("A", "A"),
    VOLTAGE("V", "V"),
    SHARE("%", "%"),
    TIME("s", "s"),
    HOURS("h", "h"),
    LONG_TIME("days", "days");

    private static final double INCH_PER_MINUTE = 0.0254 / 60;
    private final String metric;
    private final String us;

    Kind(String metric, String us) {
      this.metric = metric;
      this.us = us;
    }

    /** The unit it is shown in. */
    public String unit(UnitSystem units) {
      return units == UnitSystem.METRIC ? metric : us;
    }

    /** A value from SI and kelvin in that unit. */
    public double in(UnitSystem units, double si) {
      return switch (this) {
        case SPEED -> units == UnitSystem.METRIC ? si * 1e3 : si / INCH_PER_MINUTE;
        case TEMPERATURE -> units.temperature(si);
        case CURRENT, VOLTAGE, TIME -> si;
        case SHARE -> 100 * si;
        case HOURS -> si / 3600;
        case LONG_TIME -> si / 86400;
      };
    }
  }

  private final String key;
  private final Kind kind;
  private final BiFunction<WeldCase, Double, WeldCase> change;

  GridInput(String key, Kind kind, BiFunction<WeldCase, Double, WeldCase> change) {
    this.key = key;
    this.kind = kind;
    this.change = change;
  }

  /** Whether it changes how the joint is aged. */
  boolean ages() {
    return this == AGEING_TEMPERATURE || this == AGEING_TIME;
  }

  /** The name a user writes. */
  public String key() {
    return key;
  }

  /** The name of its column or key, such as {@code travel_speed_mm_s}. */
  public String column(UnitSystem units) {
    String unit = kind.unit(units);
    return key + "_" + (unit.equals("%") ? "percent" : unit.replace("°", "").replace('/', '_'));
  }

  /** What it measures. */
  public Kind kind() {
    return kind;
  }

  /** Name for an axis, such as {@code travel speed (mm/s)}. */
  public String label(UnitSystem units) {
    return key.replace('_', ' ') + " (" + kind.unit(units) + ")";
  }

  /** The case with this input at a value. */
  WeldCase at(WeldCase from, double value) {
    return change.apply(from, value);
  }

  /** Why a case has no such input; empty if it has. */
  public Optional<String> missingIn(WeldCase weldCase) {
    return switch (this) {
      case TRAVEL_SPEED, PREHEAT, CURRENT, VOLTAGE, NATURAL_AGE -> Optional.empty();
      case DILUTION ->
          weldCase.filler().alloy().isPresent() ? Optional.empty() : Optional.of("has no filler");
      case SOLUTION_TEMPERATURE -> without(weldCase, SolutionTreat.class, "solution_treat");
      case QUENCH_DELAY -> without(weldCase, Quench.class, "quench with a medium");
      case AGEING_TEMPERATURE, AGEING_TIME -> without(weldCase, Age.class, "age");
    };
  }

  private static Optional<String> without(
      WeldCase weldCase, Class<? extends FurnaceStep> step, String name) {
    List<FurnaceStep> steps = weldCase.afterWeld();
    return steps.stream().anyMatch(step::isInstance)
        ? Optional.empty()
        : Optional.of("has no step " + name + " in after_weld");
  }

  private static WeldCase each(WeldCase from, UnaryOperator<Pass> change) {
    return CaseChange.passes(from, change);
  }

  /** Later passes that begin colder than the preheat begin at it. */
  private static WeldCase preheated(WeldCase from, double value) {
    Pass first = from.passes().get(0);
    return each(
        from,
        pass ->
            CaseChange.pass(
                pass,
                pass.current(),
                pass.voltage(),
                pass.travelSpeed(),
                pass.equals(first) ? value : Math.max(value, pass.startTemperature())));
  }

  private static FurnaceStep dissolvedAt(FurnaceStep step, double value) {
    return step instanceof SolutionTreat treat
        ? new SolutionTreat(value, treat.soak(), treat.furnace())
        : step;
  }

  private static FurnaceStep delayed(FurnaceStep step, double value) {
    return step instanceof Quench quench
        ? new Quench(quench.medium(), quench.temperature(), value)
        : step;
  }

  private static FurnaceStep agedAt(FurnaceStep step, double value) {
    return step instanceof Age age ? new Age(value, age.time(), age.ramp(), age.overage()) : step;
  }

  private static FurnaceStep agedFor(FurnaceStep step, double value) {
    return step instanceof Age age
        ? new Age(age.temperature(), value, age.ramp(), age.overage())
        : step;
  }
}
