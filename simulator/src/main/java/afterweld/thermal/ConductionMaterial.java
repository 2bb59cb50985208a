package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.material.Alloy;
import java.util.function.DoubleUnaryOperator;

/**
 * What the weld's temperature field needs to know of a metal. SI units and kelvin.
 *
 * <p>One diffusivity stands for the whole range of temperature. In 6061 it changes only from 64 to
 * 74 mm²/s while the conductivity rises by half, so that a field in the heat potential with one
 * diffusivity follows a field with all properties variable within 4 K (rms). The value near 150 °C
 * fits best, because most of the field is cool.
 *
 * <p>6061 has a table of conductivity. Any other alloy: conductivity λ20 (1 + slope (T − 20 °C)) up
 * to the solidus, from there linear to 0.75 of it at the liquidus [assumed]; heat capacity 903 +
 * 0.41 T J/(kg K), T in °C (EN 1999-1-2); diffusivity at 150 °C. Only 6061 was compared with a
 * field of variable properties.
 *
 * @param potential integral of the conductivity, W/m
 * @param diffusivity that of the whole field, m²/s
 * @param latentTerm density times heat of fusion times diffusivity, W/m
 * @param solidus K
 * @param liquidus K
 * @param lossConductivity conductivity that the surface losses are related to, W/(m K)
 * @param heatCapacity density times specific heat without the heat of fusion, J/(m³ K), against K;
 *     only the transient field follows it
 */
public record ConductionMaterial(
    HeatPotential potential,
    double diffusivity,
    double latentTerm,
    double solidus,
    double liquidus,
    double lossConductivity,
    DoubleUnaryOperator heatCapacity) {

  private static final double DIFFUSIVITY_6061 = 68e-6;
  private static final double DIFFUSIVITY_TEMPERATURE = 150 + ZERO_CELSIUS;
  private static final double LOSS_TEMPERATURE = 260 + ZERO_CELSIUS;
  private static final double ROOM = 20 + ZERO_CELSIUS;
  private static final double LIQUID_SHARE = 0.75;

  /** Checks that the numbers can be a metal. */
  public ConductionMaterial {
    boolean melts = solidus > 0 && liquidus >= solidus;
    if (!melts || !(diffusivity > 0) || !(latentTerm >= 0) || !(lossConductivity > 0)) {
      throw new IllegalArgumentException(
          "not a metal: " + diffusivity + " m²/s, " + solidus + " K");
    }
  }

  /** A metal whose heat capacity does not change: conductivity over diffusivity. */
  public ConductionMaterial(
      HeatPotential potential,
      double diffusivity,
      double latentTerm,
      double solidus,
      double liquidus,
      double lossConductivity) {
    this(
        potential,
        diffusivity,
        latentTerm,
        solidus,
        liquidus,
        lossConductivity,
        temperature -> lossConductivity / diffusivity);
  }

  /**
   * The metal of a library alloy.
   *
   * @param temperName temper at welding; one without a conductivity of its own takes that of the
   *     nearest temper listed
   * @throws IllegalArgumentException if the library knows no conductivity of the alloy
   */
  public static ConductionMaterial of(Alloy alloy, String temperName) {
    if (alloy.name().equals("6061")) {
      return of(alloy, Conductivity6061.POTENTIAL, DIFFUSIVITY_6061);
    }
    double atRoom = NearestTemper.value(alloy.conductivityByTemper(), temperName);
    HeatPotential potential = HeatPotential.of(rule(alloy, atRoom));
    double capacity = alloy.density() * specificHeat(DIFFUSIVITY_TEMPERATURE);
    return of(alloy, potential, potential.conductivity(DIFFUSIVITY_TEMPERATURE) / capacity);
  }

  private static ConductionMaterial of(Alloy alloy, HeatPotential potential, double diffusivity) {
    return new ConductionMaterial(
        potential,
        diffusivity,
        alloy.density() * alloy.latentHeat() * diffusivity,
        alloy.solidus(),
        alloy.liquidus(),
        potential.conductivity(LOSS_TEMPERATURE),
        volumetric(alloy));
  }

  private static DoubleUnaryOperator volumetric(Alloy alloy) {
    DoubleUnaryOperator specific = SpecificHeat.of(alloy);
    return temperature -> alloy.density() * specific.applyAsDouble(temperature);
  }

  private static DoubleUnaryOperator rule(Alloy alloy, double atRoom) {
    double melting = alloy.liquidus() - alloy.solidus();
    return temperature -> {
      double solid = Math.min(temperature, alloy.solidus());
      double molten = Math.min(1, Math.max(0, temperature - alloy.solidus()) / melting);
      double conductivity = atRoom * (1 + alloy.conductivitySlope() * (solid - ROOM));
      return conductivity * (1 - (1 - LIQUID_SHARE) * molten);
    };
  }

  /** Heat capacity of the solid by EN 1999-1-2, J/(kg K), at a temperature in K. */
  private static double specificHeat(double temperature) {
    return 903 + 0.41 * (temperature - ZERO_CELSIUS);
  }

  /** Temperature that marks the fusion line: the middle of the melting range, K. */
  public double fusionTemperature() {
    return (solidus + liquidus) / 2;
  }

  /** The same metal as if it melted without taking up heat. */
  public ConductionMaterial withoutLatentHeat() {
    return new ConductionMaterial(
        potential, diffusivity, 0, solidus, liquidus, lossConductivity, heatCapacity);
  }

  /** The same metal with its surface losses related to another conductivity, W/(m K). */
  public ConductionMaterial withLossConductivity(double conductivity) {
    return new ConductionMaterial(
        potential, diffusivity, latentTerm, solidus, liquidus, conductivity, heatCapacity);
  }
}
