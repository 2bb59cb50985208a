package afterweld.casefile;

import static afterweld.casefile.Dimension.TEMPERATURE;
import static afterweld.casefile.Dimension.TEMPERATURE_RATE;
import static afterweld.casefile.Dimension.TIME;

import afterweld.casefile.text.Quoted;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * Reads the keys of one step of the heat treatment. Of a step with a fault nothing comes back; its
 * faults are gathered.
 */
final class StepReader {
  private static final Measure SET = Measure.within("temperature", TEMPERATURE, 50, 650, "°C");
  private static final Measure SOAK = Measure.within("soak", TIME, 0.001, 1000, "h");
  private static final Measure HOLD = Measure.within("time", TIME, 0.001, 1000, "h");
  private static final Measure BATH = Measure.within("temperature", TEMPERATURE, -50, 250, "°C");
  private static final Measure WATER = Measure.within("temperature", TEMPERATURE, 0, 100, "°C");
  private static final Measure DELAY = Measure.within("delay", TIME, 0, 3600, "s");
  private static final Measure RATE = rate("rate", 0.005, 5000, "K/s");
  private static final Measure RAMP_RATE = rate("ramp", 0.02, 6000, "K/min");
  private static final Measure RAMP_TIME = Measure.within("ramp", TIME, 0.001, 1000, "h");
  private static final Measure COOLING = rate("cooling", 1, 360_000, "K/h");
  private static final Choices<QuenchMedium> MEDIA =
      Choices.of(List.of(QuenchMedium.values()), QuenchMedium::label);
  private static final Choices<FurnaceStep.Furnace> FURNACES =
      Choices.of(
          List.of(FurnaceStep.Furnace.values()), kind -> kind.name().toLowerCase(Locale.ROOT));

  /** Solution treatments lie above this, K: 480 °C (common practice). */
  private static final double COLD_SOLUTION = UnitSystem.ZERO_CELSIUS + 480;

  /** No ageing lies above this, K: 260 °C (common practice). */
  private static final double OVERAGEING = UnitSystem.ZERO_CELSIUS + 260;

  /** Water of a tank at room temperature, K (common practice). */
  private static final double USUAL_BATH = UnitSystem.ZERO_CELSIUS + 25;

  /** Boiling water, K. */
  private static final double BOILING = UnitSystem.ZERO_CELSIUS + 100;

  /** Delay from furnace to water, s, that usual racks take (common practice). */
  private static final double USUAL_DELAY = 7;

  private final MeltingLimit limit;
  private final Notes notes;

  StepReader(MeltingLimit limit, Notes notes) {
    this.limit = limit;
    this.notes = notes;
  }

  /** What a step holds, for one that holds nothing. */
  static String expected(String step) {
    return switch (step) {
      case "quench" -> "medium, temperature and delay, or rate; {} means water of 25 °C";
      case "solution_treat" -> "temperature and soak, and furnace if it is salt";
      case "anneal" -> "temperature, time and cooling";
      default -> "temperature and time, and ramp or overage where they matter";
    };
  }

  /** Slower than a furnace that is left to itself overnight is no rate that anybody means. */
  private static Measure rate(String key, double low, double high, String unit) {
    return Measure.within(key, TEMPERATURE_RATE, low, high, unit);
  }

  Optional<FurnaceStep> solutionTreat(Section section) {
    double temperature = setTemperature(section);
    double soak = section.required(SOAK);
    FurnaceStep.Furnace furnace =
        section.choice("furnace", FURNACES).orElse(FurnaceStep.Furnace.AIR);
    if (temperature < COLD_SOLUTION) {
      notes.add(
          "cold-solution-treatment",
          "A solution treatment at "
              + BothUnits.temperature(temperature)
              + " is under 480 °C (900 °F): little dissolves.");
    }
    return built(section, () -> new FurnaceStep.SolutionTreat(temperature, soak, furnace));
  }

  private static Optional<FurnaceStep> built(Section section, Supplier<FurnaceStep> step) {
    section.finish();
    return section.built(step);
  }

  private double setTemperature(Section section) {
    double temperature = section.required(SET);
    if (limit.isExceededBy(temperature)) {
      section.fault(
          SET.key(),
          "found " + BothUnits.temperature(temperature) + "; expected " + limit.expected());
    }
    return temperature;
  }

  Optional<FurnaceStep> quench(Section section) {
    OptionalDouble rate = section.quantity(RATE);
    QuenchMedium medium = section.choice("medium", MEDIA).orElse(QuenchMedium.WATER);
    double temperature = section.quantityOr(isWater(medium) ? WATER : BATH, usualBath(medium));
    double delay = section.quantityOr(DELAY, USUAL_DELAY);
    if (section.has(RATE.key())) {
      refuseBesideRate(section);
      return built(section, () -> new FurnaceStep.QuenchAtRate(rate.orElseThrow()));
    }
    if (!(section.has(BATH.key()) && section.has(DELAY.key()))) {
      notes.add(
          "quench-by-default",
          String.format(
              Locale.ROOT,
              "Quench: %s at %s after a delay of %.0f s.",
              medium.label(),
              BothUnits.temperature(temperature),
              delay));
    }
    return built(section, () -> new FurnaceStep.Quench(medium, temperature, delay));
  }

  private static boolean isWater(QuenchMedium medium) {
    return medium == QuenchMedium.WATER || medium == QuenchMedium.BOILING_WATER;
  }

  private static double usualBath(QuenchMedium medium) {
    return medium == QuenchMedium.BOILING_WATER ? BOILING : USUAL_BATH;
  }

  private static void refuseBesideRate(Section section) {
    for (String key : List.of("medium", BATH.key(), DELAY.key())) {
      if (section.has(key)) {
        section.unwanted(key, "found together with rate, which says it all; expected one of them");
      }
    }
  }

  Optional<FurnaceStep> age(Section section) {
    double temperature = setTemperature(section);
    double time = section.required(HOLD);
    FurnaceStep.Ramp ramp = ramp(section);
    boolean overage = section.truth("overage").orElse(false);
    if (!overage && !Measure.exceeds(OVERAGEING, temperature) && !Double.isNaN(temperature)) {
      section.fault(
          SET.key(),
          "found "
              + BothUnits.temperature(temperature)
              + "; expected an ageing temperature under "
              + BothUnits.temperature(OVERAGEING)
              + ", or overage: true beside it if softening is meant");
    }
    return built(section, () -> new FurnaceStep.Age(temperature, time, ramp, overage));
  }

  private static FurnaceStep.Ramp ramp(Section section) {
    String expected = RAMP_TIME.expected() + ", or " + RAMP_RATE.expected();
    Optional<String> text = section.text(RAMP_TIME.key(), expected);
    if (text.filter(RAMP_TIME::understands).isPresent()) {
      return new FurnaceStep.Ramp(section.quantity(RAMP_TIME), OptionalDouble.empty());
    }
    if (text.filter(RAMP_RATE::understands).isPresent()) {
      return new FurnaceStep.Ramp(OptionalDouble.empty(), section.quantity(RAMP_RATE));
    }
    text.ifPresent(
        other ->
            section.fault(RAMP_TIME.key(), "found " + Quoted.of(other) + "; expected " + expected));
    return FurnaceStep.Ramp.BY_FURNACE;
  }

  Optional<FurnaceStep> anneal(Section section) {
    double temperature = setTemperature(section);
    double time = section.required(HOLD);
    OptionalDouble cooling = section.quantity(COOLING);
    if (!section.has(COOLING.key())) {
      notes.add(
          "cooling-by-default", "Anneal: cooled at 28 K/h (50 °F/h) down to 260 °C (500 °F).");
    }
    return built(section, () -> new FurnaceStep.Anneal(temperature, time, cooling));
  }
}
