package afterweld.thermal;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * The temperature rise of a moving line source of constant power in a sheet of constant properties,
 * as the time integral of instantaneous sources: round a ring or along an endless sheet, with
 * insulated edges on both sides, from the start to the stop of the arc and after it.
 *
 * <pre>
 * T − T0 = q/(ρc d) ∫ Gx(x − vτ, s) Gy(y, s) ds,   s = t − τ
 * </pre>
 *
 * <p>Source: Carslaw and Jaeger, Conduction of Heat in Solids, 10.2 and 14.2; each G a theta
 * function, by images while s is small and by cosines later.
 */
public record MovingPointIntegral(
    double power,
    double conductivity,
    double diffusivity,
    double thickness,
    double speed,
    double weldLength,
    boolean ring,
    double left,
    double right) {
  private static final GaussIntegratorFactory FACTORY = new GaussIntegratorFactory();
  private static final int PANELS = 60;
  private static final double EARLIEST = 1e-6;

  /** Rise at a time after the arc has started, K. */
  double rise(double x, double y, double time) {
    double stop = weldLength / speed;
    double since = Math.max(0, time - stop);
    DoubleUnaryOperator density = s -> along(x - speed * (time - s), s) * across(y, s);
    double capacity = conductivity / diffusivity * thickness;
    return power / capacity * integral(density, Math.max(EARLIEST, since), time);
  }

  private static double integral(DoubleUnaryOperator density, double from, double to) {
    double sum = 0;
    double growth = Math.pow(to / from, 1.0 / PANELS);
    for (int panel = 0; panel < PANELS; panel++) {
      double start = from * Math.pow(growth, panel);
      GaussIntegrator points = FACTORY.legendre(8, start, start * growth);
      sum += points.integrate(density::applyAsDouble);
    }
    return sum;
  }

  private double gauss(double distance, double s) {
    double spread = 4 * diffusivity * s;
    return Math.exp(-distance * distance / spread) / Math.sqrt(Math.PI * spread);
  }

  private double along(double distance, double s) {
    if (!ring) {
      return gauss(distance, s);
    }
    if (4 * diffusivity * s < 0.6 * weldLength * weldLength) {
      double sum = 0;
      for (int turn = -3; turn <= 3; turn++) {
        sum += gauss(Math.IEEEremainder(distance, weldLength) + turn * weldLength, s);
      }
      return sum;
    }
    double sum = 1;
    for (int n = 1; n <= 6; n++) {
      double wave = 2 * Math.PI * n / weldLength;
      sum += 2 * Math.exp(-wave * wave * diffusivity * s) * Math.cos(wave * distance);
    }
    return sum / weldLength;
  }

  private double across(double y, double s) {
    double width = left + right;
    if (4 * diffusivity * s < 0.6 * width * width) {
      double sum = 0;
      for (int pair = -3; pair <= 3; pair++) {
        sum += gauss(y + 2 * pair * width, s) + gauss(2 * right - y + 2 * pair * width, s);
      }
      return sum;
    }
    double sum = 1;
    for (int n = 1; n <= 12; n++) {
      double wave = Math.PI * n / width;
      double shape = Math.cos(wave * left) * Math.cos(wave * (left + y));
      sum += 2 * Math.exp(-wave * wave * diffusivity * s) * shape;
    }
    return sum / width;
  }

  /** Highest rise at a place until a while after the arc has stopped, K. */
  public double peak(double x, double y) {
    double end = weldLength / speed + 80;
    double best = 0;
    double at = 0;
    for (double time = 0.5; time < end; time += 0.5) {
      double rise = rise(x, y, time);
      if (rise > best) {
        best = rise;
        at = time;
      }
    }
    for (double time = at - 0.5; time < at + 0.5; time += 0.02) {
      best = time > 0 ? Math.max(best, rise(x, y, time)) : best;
    }
    return best;
  }
}
