package afterweld.thermal.furnace;

import afterweld.material.Alloy;
import afterweld.thermal.ConductionMaterial;
import afterweld.thermal.SpecificHeat;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A plate that heats or cools evenly through both faces: dT/dt = 2 h (T_end - T) / (ρ c_p t).
 *
 * <p>Validity: Biot number h t / (2 λ) under about 0.5; a faster film is corrected by h / (1 +
 * Bi/3) for the mean temperature (exact for the first eigenvalue to within a few percent).
 *
 * <p>Worked example: in still air 6061 at 530 °C loses 44, 15 and 8 K in 10 s at 1, 3 and 6 mm.
 */
final class LumpedPlate {
  private static final double CHORD = 0.3;
  private static final double LONGEST_LOG_STEP = 0.5;

  private final DoubleUnaryOperator conductivity;
  private final DoubleUnaryOperator volumetricHeat;
  private final double thickness;

  /**
   * A plate of the given thickness.
   *
   * @param temper temper that its conductivity is taken for
   * @param thickness m
   */
  LumpedPlate(Alloy alloy, String temper, double thickness) {
    DoubleUnaryOperator specificHeat = SpecificHeat.of(alloy);
    this.conductivity = ConductionMaterial.of(alloy, temper).potential()::conductivity;
    this.volumetricHeat = t -> alloy.density() * specificHeat.applyAsDouble(t);
    this.thickness = thickness;
  }

  /**
   * The history from one temperature towards another until a stop temperature is reached.
   *
   * @param start K
   * @param end temperature of the surroundings, K
   * @param stop temperature at which to stop, between start and end, K
   * @param film film coefficient as a function of the plate's temperature, W/(m² K)
   */
  TemperatureHistory approach(double start, double end, double stop, DoubleUnaryOperator film) {
    List<double[]> points = new ArrayList<>();
    points.add(new double[] {0, start});
    double time = 0;
    double temperature = start;
    while (Math.abs(end - temperature) > Math.abs(end - stop) * (1 + 1e-12)) {
      double difference = Math.abs(end - temperature);
      double logStep = Math.min(LONGEST_LOG_STEP, Math.sqrt(8 * CHORD / difference));
      logStep = Math.min(logStep, Math.log(difference / Math.abs(end - stop)));
      double next = end + (temperature - end) * Math.exp(-logStep);
      time += logStep * timeConstant((temperature + next) / 2, film);
      temperature = next;
      points.add(new double[] {time, temperature});
    }
    return history(points);
  }

  private static TemperatureHistory history(List<double[]> points) {
    if (points.size() == 1) {
      return TemperatureHistory.hold(points.get(0)[1], 0);
    }
    return TemperatureHistory.of(
        points.stream().mapToDouble(point -> point[0]).toArray(),
        points.stream().mapToDouble(point -> point[1]).toArray());
  }

  /** How long the plate takes to come nearer by a factor e at that temperature, s. */
  private double timeConstant(double temperature, DoubleUnaryOperator film) {
    double h = film.applyAsDouble(temperature);
    double biot = h * thickness / (2 * conductivity.applyAsDouble(temperature));
    double effective = h / (1 + biot / 3);
    return volumetricHeat.applyAsDouble(temperature) * thickness / (2 * effective);
  }
}
