package afterweld.thermal.shell;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.ConductionMaterial;
import java.util.Arrays;
import java.util.List;

/**
 * A metal as the transient field sees it: heat content with the heat of fusion, which is taken up
 * evenly from solidus to liquidus, conductivity and heat capacity, tabulated at every kelvin from
 * −100 to 4000 °C and linear between. SI units and kelvin.
 */
final class ShellMetal {
  private static final double LOWEST = -100 + ZERO_CELSIUS;
  private static final int SIZE = 4101;

  private final double[] heat = new double[SIZE];
  private final double[] conductivity = new double[SIZE];
  private final double[] capacity = new double[SIZE];

  private ShellMetal() {}

  static ShellMetal of(ConductionMaterial material) {
    ShellMetal metal = new ShellMetal();
    double fusion = material.latentTerm() / material.diffusivity();
    double range = material.liquidus() - material.solidus();
    for (int i = 0; i < SIZE; i++) {
      double temperature = LOWEST + i;
      metal.conductivity[i] = material.potential().conductivity(temperature);
      metal.capacity[i] = material.heatCapacity().applyAsDouble(temperature);
      double molten = molten(temperature, material.solidus(), range);
      double before = i == 0 ? molten : molten(temperature - 1, material.solidus(), range);
      double sensible = i == 0 ? 0 : (metal.capacity[i - 1] + metal.capacity[i]) / 2;
      metal.heat[i] = (i == 0 ? 0 : metal.heat[i - 1]) + sensible + fusion * (molten - before);
    }
    return metal;
  }

  private static double molten(double temperature, double solidus, double range) {
    return Math.min(1, Math.max(0, temperature - solidus) / Math.max(range, 1));
  }

  /** Several metals side by side at one temperature, as where the legs of a weld meet. */
  static ShellMetal blend(List<ShellMetal> metals, double[] shares) {
    double whole = 0;
    for (double share : shares) {
      whole += share;
    }
    ShellMetal blend = new ShellMetal();
    for (int metal = 0; metal < shares.length; metal++) {
      blend.add(metals.get(metal), shares[metal] / whole);
    }
    return blend;
  }

  private void add(ShellMetal other, double share) {
    for (int i = 0; i < SIZE; i++) {
      heat[i] += share * other.heat[i];
      conductivity[i] += share * other.conductivity[i];
      capacity[i] += share * other.capacity[i];
    }
  }

  /** Whether every value is the same. */
  boolean sameAs(ShellMetal other) {
    return Arrays.equals(heat, other.heat)
        && Arrays.equals(conductivity, other.conductivity)
        && Arrays.equals(capacity, other.capacity);
  }

  private static int below(double temperature) {
    return Math.min(Math.max((int) (temperature - LOWEST), 0), SIZE - 2);
  }

  private static double between(double[] table, double temperature) {
    int below = below(temperature);
    double part = temperature - LOWEST - below;
    return table[below] + part * (table[below + 1] - table[below]);
  }

  /** Heat content, J/m³, from the lower end of the table. */
  double heat(double temperature) {
    return between(heat, temperature);
  }

  /**
   * Properties of the cells of a line.
   *
   * @param temperature K
   * @param volume of a cell, m³
   * @param capacity to be filled: heat capacity of each cell without the heat of fusion, J/K
   * @param conductivities to be filled, W/(m K)
   */
  void properties(double[] temperature, double volume, double[] capacity, double[] conductivities) {
    for (int i = 0; i < temperature.length; i++) {
      int below = below(temperature[i]);
      double part = temperature[i] - LOWEST - below;
      double cool = this.capacity[below];
      capacity[i] = volume * (cool + part * (this.capacity[below + 1] - cool));
      double low = conductivity[below];
      conductivities[i] = low + part * (conductivity[below + 1] - low);
    }
  }

  /**
   * Temperature at a heat content, K; beyond the table the line of its end goes on.
   *
   * @param guess a temperature near it, from which the search starts
   */
  double temperature(double content, double guess) {
    int below = below(guess);
    while (below > 0 && heat[below] > content) {
      below--;
    }
    while (below < SIZE - 2 && heat[below + 1] < content) {
      below++;
    }
    return LOWEST + below + (content - heat[below]) / (heat[below + 1] - heat[below]);
  }
}
