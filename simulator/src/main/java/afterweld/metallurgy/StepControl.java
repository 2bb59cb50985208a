package afterweld.metallurgy;

/**
 * How long a step of time may be. A step is limited by the change of temperature and by how much it
 * changes the precipitates, measured against the tolerance {@code ε}; a step that changes too much
 * is taken back and repeated with less.
 *
 * <p>The change of a step is the largest of: what all precipitates, or the intermediate phases
 * alone, gained or lost, over the hardening solute; the new needles against a tenth of what the
 * excess solute allows and against 12 % of the needles already there, both in tolerances; and the
 * solute that needles and matrix exchanged. The last two count at most five tolerances. Up to three
 * tolerances a step counts; the next aims at 0.9.
 *
 * <p>The length carries over from one piece of a history to the next, but a step left long by room
 * temperature must not swallow the start of a hold: pieces above 100 °C begin with 2 s at most.
 *
 * <p>Mutable and for one thread: lives only inside one call that follows a history.
 */
final class StepControl {
  private static final double HOT = 373.15;
  private static final double HOT_FIRST_STEP = 2;
  private static final double COOL = 393.15;
  private static final double COOL_FACTOR = 5;
  private static final double LEAST_STEP = 1e-5;
  private static final double LEAST_REPEATED_STEP = 2e-5;
  private static final double REPEAT_FACTOR = 0.4;
  private static final double REJECTED = 3;
  private static final double AIM = 0.9;
  private static final double LARGEST_GROWTH = 1.6;
  private static final double LARGEST_RATIO = 5;
  private static final double SHARE_OF_CAP = 0.1;
  private static final double SHARE_OF_NEEDLES = 0.12;
  private static final double FEW_NEEDLES = 1e20;

  private final NumericalSettings settings;
  private final double hardening;
  private double next;

  StepControl(NumericalSettings settings, double hardening, double next) {
    this.settings = settings;
    this.hardening = hardening;
    this.next = next;
  }

  /** Length that the next step would have, s. */
  double next() {
    return next;
  }

  /** Begins a straight piece of a history between two temperatures, K. */
  void beginPiece(double from, double to) {
    if (Math.max(from, to) > HOT) {
      next = Math.min(next, HOT_FIRST_STEP);
    }
  }

  /** Length of the next step, s. */
  double stepWithin(double rest, double temperature, double heatingRate) {
    double factor = temperature < COOL ? COOL_FACTOR : 1;
    return Math.min(Math.min(next, rest), factor * settings.temperatureStep() / heatingRate);
  }

  /**
   * How much a step changed; compare with the tolerance.
   *
   * @param nuclei needles that it made
   * @param needles all needles before it, 1/m³
   * @param total change of all precipitates, formula units per atom
   * @param intermediate change of the intermediate phases
   * @param exchange what needles and matrix exchanged, both ways added, over what is there to
   *     exchange
   */
  double change(
      NeedleNucleation nuclei, double needles, double total, double intermediate, double exchange) {
    double tolerance = settings.tolerance();
    double most = LARGEST_RATIO * tolerance;
    double solute = Math.max(Math.abs(total), Math.abs(intermediate)) / hardening;
    double ofCap = tolerance * nuclei.number() / (SHARE_OF_CAP * nuclei.cap() + 1);
    double ofNeedles = tolerance * nuclei.number() / (SHARE_OF_NEEDLES * (needles + FEW_NEEDLES));
    double nucleation = Math.min(most, Math.max(ofCap, ofNeedles));
    return Math.max(Math.max(solute, nucleation), Math.min(most, exchange));
  }

  /** Whether a step counts; sets the length of the next one either way. */
  boolean accepts(double change, double step) {
    double tolerance = settings.tolerance();
    if (change > REJECTED * tolerance && step > LEAST_REPEATED_STEP) {
      next = REPEAT_FACTOR * step;
      return false;
    }
    double factor = Math.max(REPEAT_FACTOR, Math.min(LARGEST_GROWTH, AIM * tolerance / change));
    double wanted = step * factor;
    next = Math.max(LEAST_STEP, factor < 1 ? wanted : Math.max(next, wanted));
    return true;
  }
}
