package afterweld.thermal.furnace;

import afterweld.material.Alloy;
import afterweld.thermal.StillAir;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.Ramp;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a furnace schedule does to a plate of given thickness: one temperature history per step.
 *
 * <p>Heating follows a ramp if one is given, else a plate in moving air (h = 50 W/(m² K), assumed)
 * or salt (1000, assumed). Soak and ageing time count from when the part is within the furnace's
 * uniformity of the set temperature (practice: the coldest part at the set point less that). A
 * quench ends 5 K above its medium and the part is at 25 °C ten minutes later. After ageing the
 * part cools in still air.
 */
public final class FurnaceHistory {
  /** Where every step that ends at room temperature ends, K. */
  public static final double ROOM = 298.15;

  /**
   * Uniformity of a furnace at its set temperature, K either way: 10 °F, in °C rounded to 6 (AMS
   * 2770 for wrought metal and AMS 2771 for castings, from memory).
   */
  public static final double UNIFORMITY = 10 / 1.8;

  private static final double MOVING_AIR = 50;
  private static final double SALT = 1000;
  private static final double SETTLED = 0.5;
  private static final double LAST_HALF_KELVIN = 60;
  private static final double QUENCH_END = 5;
  private static final double TO_ROOM = 600;
  private static final double ANNEAL_SLOW_UNTIL = 533.15;
  private static final double RATE_FROM = 723.15;
  private static final double RATE_TO = 523.15;

  private final LumpedPlate plate;

  /**
   * Schedules for a plate.
   *
   * @param temper temper that its conductivity is taken for
   * @param thickness m
   */
  public FurnaceHistory(Alloy alloy, String temper, double thickness) {
    this.plate = new LumpedPlate(alloy, temper, thickness);
  }

  /** One history per step, each starting at the temperature the last one ended with. */
  public List<TemperatureHistory> of(List<FurnaceStep> steps) {
    List<TemperatureHistory> histories = new ArrayList<>();
    double temperature = ROOM;
    for (FurnaceStep step : steps) {
      TemperatureHistory history = of(step, temperature);
      histories.add(history);
      temperature = history.endTemperature();
    }
    return histories;
  }

  /**
   * One step.
   *
   * @param start temperature it starts at, K
   */
  public TemperatureHistory of(FurnaceStep step, double start) {
    if (step instanceof SolutionTreat treat) {
      double film = treat.furnace() == Furnace.SALT ? SALT : MOVING_AIR;
      return heated(start, treat.temperature(), treat.soak(), film, Ramp.BY_FURNACE);
    }
    if (step instanceof Quench quench) {
      return quenched(start, quench);
    }
    if (step instanceof QuenchAtRate quench) {
      return straight(start, ROOM, (start - ROOM) / quench.rate());
    }
    if (step instanceof NaturalAge age) {
      return TemperatureHistory.hold(start, age.time());
    }
    if (step instanceof Age age) {
      TemperatureHistory hot = hot(age, start);
      return hot.then(inStillAir(hot.endTemperature()));
    }
    Anneal anneal = (Anneal) step;
    return annealed(start, anneal);
  }

  /**
   * An ageing without its cooling: the heating, then its time at temperature to the last second.
   *
   * @param start K
   */
  public TemperatureHistory hot(Age age, double start) {
    return heated(start, age.temperature(), age.time(), MOVING_AIR, age.ramp());
  }

  private TemperatureHistory heated(double start, double set, double time, double film, Ramp ramp) {
    OptionalDouble rampTime = rampTime(ramp, Math.abs(set - start));
    if (rampTime.isPresent()) {
      return straight(start, set, rampTime.getAsDouble()).then(TemperatureHistory.hold(set, time));
    }
    double near = nearer(start, set, UNIFORMITY);
    TemperatureHistory heating = plate.approach(start, set, near, t -> film);
    TemperatureHistory settling = plate.approach(near, set, nearer(near, set, SETTLED), t -> film);
    double rest = time - settling.duration();
    if (rest <= 0) {
      return heating.then(settling.until(time));
    }
    double last = Math.min(rest, LAST_HALF_KELVIN);
    return heating.then(settling).thenTo(set, last).then(TemperatureHistory.hold(set, rest - last));
  }

  /** A temperature on the way from start to set, at most {@code distance} away from set. */
  private static double nearer(double start, double set, double distance) {
    return set - Math.signum(set - start) * Math.min(distance, Math.abs(set - start));
  }

  private static OptionalDouble rampTime(Ramp ramp, double rise) {
    if (ramp.time().isPresent()) {
      return ramp.time();
    }
    return ramp.rate().isPresent()
        ? OptionalDouble.of(rise / ramp.rate().getAsDouble())
        : OptionalDouble.empty();
  }

  private static TemperatureHistory straight(double start, double end, double duration) {
    return TemperatureHistory.of(new double[] {0, duration}, new double[] {start, end});
  }

  private TemperatureHistory quenched(double start, Quench quench) {
    TemperatureHistory transfer = transfer(start, quench.delay());
    double medium = quench.temperature();
    double fixed = QuenchFilm.coefficient(quench.medium(), medium);
    boolean air = quench.medium() == QuenchMedium.STILL_AIR;
    TemperatureHistory cooling =
        plate.approach(
            transfer.endTemperature(),
            medium,
            nearer(transfer.endTemperature(), medium, QUENCH_END),
            t -> air ? StillAir.coefficient(t, medium) : fixed);
    return transfer.then(cooling).thenTo(ROOM, TO_ROOM);
  }

  /** The way from the furnace to the bath, in still air. */
  private TemperatureHistory transfer(double start, double delay) {
    return start <= ROOM + QUENCH_END
        ? TemperatureHistory.hold(start, delay)
        : stillAir(start).until(delay);
  }

  private TemperatureHistory annealed(double start, Anneal anneal) {
    TemperatureHistory hot =
        heated(start, anneal.temperature(), anneal.time(), MOVING_AIR, Ramp.BY_FURNACE);
    double slowEnd = Math.min(ANNEAL_SLOW_UNTIL, hot.endTemperature());
    TemperatureHistory slow =
        hot.thenTo(slowEnd, (hot.endTemperature() - slowEnd) / anneal.cooling());
    return slow.then(inStillAir(slowEnd));
  }

  /** Cooling in still air to room temperature. */
  private TemperatureHistory inStillAir(double start) {
    if (start <= ROOM + QUENCH_END) {
      return straight(start, ROOM, TO_ROOM);
    }
    return stillAir(start).thenTo(ROOM, TO_ROOM);
  }

  private TemperatureHistory stillAir(double start) {
    return plate.approach(start, ROOM, ROOM + QUENCH_END, t -> StillAir.coefficient(t, ROOM));
  }

  /**
   * Mean cooling rate between 450 and 250 °C on the last way down, K/s: what quench sensitivity is
   * judged on. Empty if the history does not pass both.
   */
  public static OptionalDouble coolingRate(TemperatureHistory history) {
    double from = lastFallThrough(history, RATE_FROM);
    double to = lastFallThrough(history, RATE_TO);
    return to > from && from >= 0
        ? OptionalDouble.of((RATE_FROM - RATE_TO) / (to - from))
        : OptionalDouble.empty();
  }

  private static double lastFallThrough(TemperatureHistory history, double level) {
    for (int i = history.size() - 1; i > 0; i--) {
      double before = history.temperature(i - 1);
      double after = history.temperature(i);
      if (before >= level && after < level) {
        double part = (before - level) / (before - after);
        return history.time(i - 1) + part * (history.time(i) - history.time(i - 1));
      }
    }
    return -1;
  }
}
