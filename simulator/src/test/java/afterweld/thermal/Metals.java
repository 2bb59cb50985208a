package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Metals that the checks were computed with. */
public final class Metals {
  public static final ConductionMaterial ALUMINIUM_6061 =
      ConductionMaterial.of(alloy("6061", 582, 652, 2700, 380e3, Map.of("T6", 167.0), 0), "T6");

  private Metals() {}

  static Alloy alloy(
      String name,
      double solidusCelsius,
      double liquidusCelsius,
      double density,
      double latentHeat,
      Map<String, Double> conductivityByTemper,
      double slope) {
    return new Alloy(
        name,
        Alloy.Family.WROUGHT_HEAT_TREATABLE,
        List.of(Alloy.Use.BASE),
        Composition.of(Map.of()),
        Map.of(),
        solidusCelsius + ZERO_CELSIUS,
        liquidusCelsius + ZERO_CELSIUS,
        density,
        latentHeat,
        conductivityByTemper,
        slope,
        List.of(),
        Optional.empty(),
        List.of());
  }

  /** A metal of constant properties that takes up no heat to melt, solidus and liquidus in °C. */
  public static ConductionMaterial constant(
      double conductivity, double diffusivity, double solidus, double liquidus) {
    return new ConductionMaterial(
        HeatPotential.constant(conductivity),
        diffusivity,
        0,
        solidus + ZERO_CELSIUS,
        liquidus + ZERO_CELSIUS,
        conductivity);
  }
}
