package afterweld.thermal.furnace;

import afterweld.quantity.Check;
import java.util.OptionalDouble;

/** One step of the heat treatment after welding. SI units and kelvin. */
public sealed interface FurnaceStep {

  /** What the air or the salt around the part is. */
  enum Furnace {
    AIR,
    SALT
  }

  /**
   * Solution treatment.
   *
   * @param temperature set temperature, K
   * @param soak time from when the part is within the uniformity of the furnace of it, s
   * @param furnace air or salt
   */
  record SolutionTreat(double temperature, double soak, Furnace furnace) implements FurnaceStep {
    /** Refuses what it cannot be. */
    public SolutionTreat {
      Check.positive("solution temperature", temperature, "K");
      Check.positive("soak", soak, "s");
    }
  }

  /**
   * Quench into a medium after a delay in still air.
   *
   * @param medium what it is quenched in
   * @param temperature temperature of the medium, K
   * @param delay time between furnace and medium, s
   */
  record Quench(QuenchMedium medium, double temperature, double delay) implements FurnaceStep {
    /** Refuses what it cannot be. */
    public Quench {
      Check.positive("temperature of the medium", temperature, "K");
      Check.notNegative("quench delay", delay, "s");
    }
  }

  /**
   * Cooling at a measured rate.
   *
   * @param rate K/s
   */
  record QuenchAtRate(double rate) implements FurnaceStep {
    /** Refuses what it cannot be. */
    public QuenchAtRate {
      Check.positive("quench rate", rate, "K/s");
    }
  }

  /**
   * Time at room temperature.
   *
   * @param time s
   */
  record NaturalAge(double time) implements FurnaceStep {
    /** Refuses what it cannot be. */
    public NaturalAge {
      Check.notNegative("time at room temperature", time, "s");
    }
  }

  /**
   * Artificial ageing.
   *
   * @param temperature set temperature, K
   * @param time time at temperature, s
   * @param ramp how it is heated
   * @param overage true if a temperature of 260 °C or more is meant
   */
  record Age(double temperature, double time, Ramp ramp, boolean overage) implements FurnaceStep {
    /** Refuses what it cannot be. */
    public Age {
      Check.positive("ageing temperature", temperature, "K");
      Check.positive("ageing time", time, "s");
    }
  }

  /**
   * Annealing.
   *
   * @param temperature set temperature, K
   * @param time time at temperature, s
   * @param coolingRate rate down to 260 °C, K/s, if ordered; then still air
   */
  record Anneal(double temperature, double time, OptionalDouble coolingRate)
      implements FurnaceStep {
    /** Refuses what it cannot be. */
    public Anneal {
      Check.positive("annealing temperature", temperature, "K");
      Check.positive("annealing time", time, "s");
      Check.positive("cooling rate", coolingRate, "K/s");
    }

    /** Of metal that hardens by heat treatment, 28 K/h (common practice); K/s. */
    public static final double USUAL_COOLING = 28 / 3600.0;

    /** The ordered rate, or the usual one that the computation takes, K/s. */
    public double cooling() {
      return coolingRate.orElse(USUAL_COOLING);
    }
  }

  /**
   * Heating to the set temperature: in a given time, at a given rate, or as the furnace does it.
   *
   * @param time s, if given
   * @param rate K/s, if given
   */
  record Ramp(OptionalDouble time, OptionalDouble rate) {
    /** Refuses what it cannot be. */
    public Ramp {
      Check.notNegative("heating time", time, "s");
      Check.positive("heating rate", rate, "K/s");
      if (time.isPresent() && rate.isPresent()) {
        throw new IllegalArgumentException("a heating time and a heating rate in one ramp");
      }
    }

    /** The furnace's own heating. */
    public static final Ramp BY_FURNACE = new Ramp(OptionalDouble.empty(), OptionalDouble.empty());
  }
}
