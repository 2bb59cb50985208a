package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.NEEDLE_SURFACE_ENERGY;
import static afterweld.metallurgy.SoluteBudget.PURE_PRECIPITATE;

import java.util.Arrays;

/**
 * The hardening needles (β″) while a history is followed: number per volume in each class of size.
 *
 * <p>A needle of radius {@code r} grows or dissolves by {@code dr/dt = D (C - C_i) / (q_p r)}, with
 * {@code C_i} the concentration at its curved interface. Between the fixed classes needles move by
 * rates that make the change of volume of every needle exact and keep every number positive,
 * whatever the length of the step:
 *
 * <pre>
 * shrinking, from the largest down:  N_i = (N_i + from above) / (1 + d),  d N_i goes to i-1
 *                                    d = a r_i (C_i - C) / (r_i³ - r_(i-1)³),  a = 3 D dt / q_p
 * growing, from the smallest up:     N_i = (N_i + from below) / (1 + u),  u N_i goes to i+1
 *                                    u = a r_i (C - C_i) / (r_(i+1)³ - r_i³)
 * </pre>
 *
 * That scheme spreads a distribution in time; {@link #sharpen} takes the excess back once a step.
 * Validity: spheres of the needles' volume, 0.5 to 60 nm. Source: numerical Kampmann-Wagner model
 * in the form of Myhr and Grong, Acta Mater. 48 (2000) 1605 (growth law, from memory), transport
 * scheme of this model.
 *
 * <p>Mutable and for one thread: lives only inside one call that follows a history.
 */
final class NeedlePopulation {
  private static final double SPHERE = 4 * Math.PI / 3;
  private static final double LARGEST_EXPONENT = 40;
  private static final double LARGEST_SHARE = 0.45;

  /**
   * Needles in a class, 1/m³, that count as none at either end of the distribution: of the 1e20 and
   * more that harden, less than a double can tell.
   */
  private static final double NONE = 1e3;

  private final NeedleClasses classes;
  private final double[] solubility;
  private double[] number;
  private double[] moved;
  private final double[] before;
  private final double[] unsharpened;
  private double solubilityTemperature = Double.NaN;
  private double flat;
  private double capillaryLength;

  /** The first and the last class that holds needles; the first above the last if none does. */
  private int low;

  private int high;

  NeedlePopulation(NeedleClasses classes, double[] number) {
    this.classes = classes;
    this.number = number.clone();
    moved = new double[number.length];
    before = new double[number.length];
    unsharpened = new double[number.length];
    solubility = new double[number.length];
    findEnds();
  }

  private void findEnds() {
    low = 0;
    high = number.length - 1;
    while (high >= 0 && number[high] < NONE) {
      number[high--] = 0;
    }
    while (low <= high && number[low] < NONE) {
      number[low++] = 0;
    }
  }

  /** Number per volume in each class, 1/m³. */
  double[] numbers() {
    return number.clone();
  }

  /** All needles, 1/m³. */
  double total() {
    double sum = 0;
    for (int i = low; i <= high; i++) {
      sum += number[i];
    }
    return sum;
  }

  /** Formula units in a distribution, per atom. */
  static double formulaUnits(NeedleClasses classes, double[] number) {
    double sum = 0;
    for (int i = 0; i < number.length; i++) {
      sum += number[i] * classes.cube[i];
    }
    return SPHERE * PURE_PRECIPITATE * sum;
  }

  /** Remembers the numbers for {@link #restore}. */
  void remember() {
    System.arraycopy(number, 0, before, 0, number.length);
  }

  /** Takes a step back. */
  void restore() {
    System.arraycopy(before, 0, number, 0, number.length);
    findEnds();
  }

  /** Adds new needles. */
  void add(NeedleNucleation nuclei) {
    for (int i = nuclei.first(); i <= nuclei.last(); i++) {
      number[i] += nuclei.number() * nuclei.share(i);
    }
    findEnds();
  }

  /** Takes the step's temperature, K. */
  void setTemperature(double temperature) {
    if (temperature == solubilityTemperature) {
      return;
    }
    flat = Math.exp(Solvus.lnNeedles(temperature));
    capillaryLength = Solvus.capillaryLength(NEEDLE_SURFACE_ENERGY.value(), temperature);
    Arrays.fill(solubility, Double.NaN);
    solubilityTemperature = temperature;
  }

  /** Concentration at the interface of a class, worked out when it is first asked for. */
  private double solubility(int i) {
    if (Double.isNaN(solubility[i])) {
      double exponent = Math.min(LARGEST_EXPONENT, capillaryLength / classes.radius[i]);
      solubility[i] = flat * Math.exp(exponent);
    }
    return solubility[i];
  }

  /** Undoes the spreading that the coming transport will add, at the concentration before it. */
  void sharpen(double growth, double c) {
    System.arraycopy(number, 0, unsharpened, 0, number.length);
    for (int i = Math.max(1, low); i <= Math.min(high, number.length - 2); i++) {
      double drive = c - solubility(i);
      if (drive > 0) {
        sharpen(i, i + 1, i - 1, growth * classes.upwards[i] * drive);
      } else {
        sharpen(i, i - 1, i + 1, -growth * classes.downwards[i] * drive);
      }
    }
  }

  private void sharpen(int i, int ahead, int behind, double rate) {
    double slopeBehind = unsharpened[i] - unsharpened[behind];
    double slopeAhead = unsharpened[ahead] - unsharpened[i];
    if (slopeBehind * slopeAhead > 0) {
      double slope = Math.abs(slopeBehind) < Math.abs(slopeAhead) ? slopeBehind : slopeAhead;
      double wanted = slope * Math.min(0.5, rate * (1 + rate) / 2);
      double shift =
          Math.max(
              -LARGEST_SHARE * unsharpened[ahead],
              Math.min(LARGEST_SHARE * unsharpened[i], wanted));
      number[i] -= shift;
      number[ahead] += shift;
    }
  }

  /**
   * Formula units in the needles after transport in a matrix of concentration {@code c}; the moved
   * numbers count only after {@link #accept}.
   */
  double afterTransport(double growth, double c) {
    Arrays.fill(moved, 0);
    int firstGrowing = firstGrowing(c);
    double volume = shrink(growth, c, firstGrowing) + grow(growth, c, firstGrowing);
    return SPHERE * PURE_PRECIPITATE * volume;
  }

  /** The interface concentration falls with the radius: all needles from this class on grow. */
  private int firstGrowing(double c) {
    int i = low;
    while (i <= high && solubility(i) >= c) {
      i++;
    }
    return i;
  }

  /*
   * The quotient is formed on its own: it does not wait for the class before, so that the divisions
   * of neighbouring classes overlap. Beyond the ends it goes on as long as needles flow out.
   */
  private double shrink(double growth, double c, int firstGrowing) {
    double inflow = 0;
    double volume = 0;
    for (int i = firstGrowing - 1; i >= 0 && (i >= low || inflow >= NONE); i--) {
      double rate = growth * classes.downwards[i] * (solubility(i) - c);
      double left = (number[i] + inflow) * (1 / (1 + rate));
      moved[i] = left;
      inflow = rate * left;
      volume += left * classes.cube[i];
    }
    return volume;
  }

  private double grow(double growth, double c, int firstGrowing) {
    double inflow = 0;
    double volume = 0;
    for (int i = firstGrowing; i < moved.length && (i <= high || inflow >= NONE); i++) {
      double rate = growth * classes.upwards[i] * (c - solubility(i));
      double left = (number[i] + inflow) * (1 / (1 + rate));
      moved[i] = left;
      inflow = rate * left;
      volume += left * classes.cube[i];
    }
    return volume;
  }

  /** Makes the last transport count. */
  void accept() {
    double[] old = number;
    number = moved;
    moved = old;
    findEnds();
  }

  /** Formula units that changed place between needles and matrix in the step, both ways added. */
  double grossExchange(double growth, double c) {
    double sum = 0;
    for (int i = low; i <= high; i++) {
      double change = growth * classes.radius[i] * Math.abs(c - solubility(i));
      sum += Math.min(change, classes.cube[i]) * number[i];
    }
    return SPHERE * PURE_PRECIPITATE * sum;
  }

  /** Needles that shrank through the dissolving radius in the step, 1/m³. */
  double dissolved(double growth, double c) {
    int i = classes.dissolving;
    double rate = growth * classes.downwards[i] * (solubility(i) - c);
    return Math.max(0, rate * number[i]);
  }
}
