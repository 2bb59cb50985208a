package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.ACTIVATION_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.CLUSTER_HINDRANCE;
import static afterweld.metallurgy.PrecipitationParameters.GAS_CONSTANT;
import static afterweld.metallurgy.PrecipitationParameters.LEAST_DRIVING_FORCE;
import static afterweld.metallurgy.PrecipitationParameters.LEAST_NUCLEUS;
import static afterweld.metallurgy.PrecipitationParameters.NEEDLE_SURFACE_ENERGY;
import static afterweld.metallurgy.PrecipitationParameters.NUCLEATION_BARRIER;
import static afterweld.metallurgy.PrecipitationParameters.NUCLEATION_RATE;
import static afterweld.metallurgy.PrecipitationParameters.NUCLEUS_OVER_CRITICAL;
import static afterweld.metallurgy.PrecipitationParameters.NUCLEUS_SPREAD;

/**
 * New needles in one step of time.
 *
 * <p>Driving force {@code S = ln(C / C_e) + ln(1 - φ y)}: clusters ({@code y}) hold solute back.
 * Rate {@code J = J0 exp(-(A0/RT)³/S² - Q/RT)}. The nuclei are spread evenly in ln r from {@code
 * max(0.7 nm, 1.1 r*)} to 1.5 times that, so that no single class rings, and take at most half of
 * the excess solute of the matrix.
 *
 * <p>Validity: heterogeneous nucleation with a constant site density. Source: Myhr, Grong and
 * Andersen, Acta Mater. 49 (2001) 65 (rate, from memory); effect of clusters fitted.
 *
 * @param number nuclei, 1/m³
 * @param cap most that the excess solute allows, 1/m³
 * @param from place of the smallest nucleus on the scale of class numbers
 * @param to place of the largest
 * @param lastClass number of the last class
 */
record NeedleNucleation(double number, double cap, double from, double to, int lastClass) {
  private static final NeedleNucleation NONE = new NeedleNucleation(0, 0, 0, 0, -1);
  private static final double LARGEST_BARRIER = 60;
  private static final double LARGEST_SHARE_OF_EXCESS = 0.5;

  static NeedleNucleation in(NeedleClasses classes, Interval step, double c, double clusters) {
    double flat = Math.exp(Solvus.lnNeedles(step.temperature()));
    double drive = Math.log(c / flat) + Math.log(1 - CLUSTER_HINDRANCE.value() * clusters);
    if (!(drive > LEAST_DRIVING_FORCE.value())) {
      return NONE;
    }
    double thermal = GAS_CONSTANT.value() * step.temperature();
    double barrier = cube(NUCLEATION_BARRIER.value() / thermal) / (drive * drive);
    if (barrier > LARGEST_BARRIER) {
      return NONE;
    }
    double rate =
        NUCLEATION_RATE.value() * Math.exp(-barrier - ACTIVATION_ENERGY.value() / thermal);
    double smallest = nucleusRadius(step.temperature(), drive);
    double from = classes.place(smallest);
    double to = classes.place(NUCLEUS_SPREAD.value() * smallest);
    return new NeedleNucleation(
            rate * step.duration(), Double.POSITIVE_INFINITY, from, to, classes.count() - 1)
        .capped(classes, c - flat);
  }

  private static double nucleusRadius(double temperature, double drive) {
    double length = Solvus.capillaryLength(NEEDLE_SURFACE_ENERGY.value(), temperature);
    return Math.max(LEAST_NUCLEUS.value(), NUCLEUS_OVER_CRITICAL.value() * length / drive);
  }

  private NeedleNucleation capped(NeedleClasses classes, double excess) {
    double most = LARGEST_SHARE_OF_EXCESS * excess / meanFormulaUnits(classes);
    return new NeedleNucleation(Math.min(number, most), most, from, to, lastClass);
  }

  private double meanFormulaUnits(NeedleClasses classes) {
    double meanCube = 0;
    for (int i = first(); i <= last(); i++) {
      meanCube += share(i) * classes.cube[i];
    }
    return 4 * Math.PI / 3 * SoluteBudget.PURE_PRECIPITATE * meanCube;
  }

  /** First class that receives nuclei. */
  int first() {
    return Math.max(0, (int) Math.floor(from + 0.5));
  }

  /** Last class that receives nuclei; below {@link #first} if there are none. */
  int last() {
    return Math.min(lastClass, (int) Math.floor(to + 0.5));
  }

  /** Share of the nuclei that class {@code i} receives. */
  double share(int i) {
    double overlap = Math.min(i + 0.5, to) - Math.max(i - 0.5, from);
    return Math.max(0, overlap) / (to - from);
  }

  private static double cube(double x) {
    return x * x * x;
  }
}
