package afterweld.metallurgy;

import afterweld.material.Alloy;
import afterweld.material.Temper;
import afterweld.thermal.TemperatureHistory;

/**
 * Recovery and recrystallization of work-hardened metal (1xxx, 3xxx, 5xxx).
 *
 * <p>With s the yield above the annealed value (Pa) and B the extent of recrystallization:
 *
 * <pre>
 * recovery           ds/dt = -K s² exp(-U/RT) sinh(V d/kT),  K = 379 1/(Pa s), V = 35 · 2.3e-29 m³
 *                    d = s; of stabilized metal s · min(1, s_ref/s0)
 * recrystallization  dB/dt = sqrt(ln 2)/3600 s · exp(-(Q/R)(1/T - 1/T50)) · (s0/s_ref)^1.5
 * recrystallized share X = 1 - exp(-B²)
 * </pre>
 *
 * Metal of the tempers H3x has been through a stabilizing treatment, which takes what recovers
 * soonest (EN 515). Each is taken to come out of it as ready to recover as the reference is,
 * however hard it was rolled (assumed; cryo-rolled 5052 recovers between 230 and 260 °C at 16
 * K/min).
 *
 * <p>Validity: the strength before and after is an input, only the way between is predicted, within
 * 25 K. Source: recovery in the form of Verdier, Brechet and Guyot, Acta Mater. 47 (1999) 127 (from
 * memory), recrystallization after Johnson, Mehl, Avrami and Kolmogorov with exponent 2; constants
 * set by hand ({@link SofteningKinetics}).
 */
public final class StoredWorkModel implements Metallurgy<StoredWorkState> {
  private static final double GAS = 8.314462;
  private static final double BOLTZMANN = 1.380649e-23;
  private static final double RECOVERY_RATE = 379;
  private static final double ACTIVATION_VOLUME = 35 * 2.3e-29;
  private static final double HALF_EXTENT_RATE = Math.sqrt(Math.log(2)) / 3600;
  private static final double STRESS_EXPONENT = 1.5;
  private static final double TEMPERATURE_STEP = 4;
  private static final double STRESS_STEP = 0.01;
  private static final double EXTENT_STEP = 0.05;
  private static final double FULL_EXTENT = 4;

  private final SofteningKinetics kinetics;
  private final double start;
  private final double driving;

  /**
   * Metal of given kinetics.
   *
   * @param start yield above the annealed value before any softening, Pa
   */
  private StoredWorkModel(SofteningKinetics kinetics, double start, boolean stabilized) {
    this.kinetics = kinetics;
    this.start = start;
    this.driving = stabilized ? Math.min(1, kinetics.referenceStress() / start) : 1;
  }

  /**
   * A library alloy in one of its tempers, from the handbook yields of that temper and of O.
   *
   * @throws java.util.NoSuchElementException if the library lacks one of them
   */
  public static StoredWorkModel of(Alloy alloy, Temper temper) {
    double hard = temper.handbook().orElseThrow().yield();
    double start = Math.max(0, hard - annealed(alloy).yield());
    boolean stabilized = temper.name().startsWith("H3");
    return new StoredWorkModel(SofteningKinetics.of(alloy.name()), start, stabilized);
  }

  /** Handbook strength of the annealed alloy. */
  public static Temper.Handbook annealed(Alloy alloy) {
    return alloy.temper("O").orElseThrow().handbook().orElseThrow();
  }

  @Override
  public StoredWorkState start(double temperature) {
    return new StoredWorkState(start, start, 0);
  }

  @Override
  public StoredWorkState advance(StoredWorkState state, TemperatureHistory history) {
    StoredWorkState now = state;
    for (int i = 1; i < history.size(); i++) {
      now =
          piece(
              now,
              history.time(i) - history.time(i - 1),
              history.temperature(i - 1),
              history.temperature(i));
    }
    return now;
  }

  /** One straight piece of the history, in parts of at most 4 K. */
  private StoredWorkState piece(StoredWorkState state, double duration, double from, double to) {
    int parts = Math.max(1, (int) Math.ceil(Math.abs(to - from) / TEMPERATURE_STEP));
    StoredWorkState now = state;
    for (int i = 0; i < parts; i++) {
      now = held(now, duration / parts, from + (to - from) * (i + 0.5) / parts);
    }
    return now;
  }

  private StoredWorkState held(StoredWorkState state, double duration, double temperature) {
    double left = duration;
    double stress = state.unrecovered();
    double extent = state.extent();
    double growth = growth(state.start(), temperature);
    while (left > 0 && stress > 0 && extent < FULL_EXTENT) {
      double recovery = recovery(stress, temperature);
      double step = Math.min(left, Math.min(STRESS_STEP * stress / recovery, EXTENT_STEP / growth));
      stress -= step * recovery;
      extent += step * growth;
      left -= step;
    }
    return new StoredWorkState(state.start(), stress, extent);
  }

  /** Rate at which recovery takes away stress, Pa/s. */
  private double recovery(double stress, double temperature) {
    double drive = ACTIVATION_VOLUME * driving * stress / (BOLTZMANN * temperature);
    double barrier = kinetics.recoveryEnergy() / (GAS * temperature);
    double rate = (Math.exp(drive - barrier) - Math.exp(-drive - barrier)) / 2;
    return RECOVERY_RATE * stress * stress * rate;
  }

  /** Rate of the extent of recrystallization, 1/s. */
  private double growth(double startStress, double temperature) {
    double activation = kinetics.recrystallizationEnergy() / GAS;
    double warmth = Math.exp(-activation * (1 / temperature - 1 / kinetics.halfTemperature()));
    double drive = Math.pow(startStress / kinetics.referenceStress(), STRESS_EXPONENT);
    return HALF_EXTENT_RATE * warmth * drive;
  }
}
