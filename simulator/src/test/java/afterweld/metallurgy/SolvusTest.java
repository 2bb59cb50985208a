package afterweld.metallurgy;

import static afterweld.metallurgy.Treatments.kelvin;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SolvusTest {
  /** 1.0 % Mg and 0.46 % Si: ln([Mg]²[Si]) = -14.45 to the digits of that value. */
  private static final double LN_6061 = (-14.45 - Math.log(4)) / 3;

  @Test
  void linesMeet6061AtTheirSolvusTemperatures() {
    assertEquals(LN_6061, Solvus.lnNeedles(675), 1e-12);
    assertEquals(LN_6061, Solvus.lnCoarse(733.7), 1e-12);
  }

  /** log10([Mg]²[Si]) = 5.97 - 5212/T in wt%, from memory; the line lies 14 % above it. */
  @Test
  void equilibriumLineLiesAboveTheHandbookLine() {
    for (double celsius : new double[] {400, 500, 595}) {
      double product = Math.pow(10, 5.97 - 5212 / kelvin(celsius));
      double atomic = product * Math.pow(0.2698 / 24.305, 2) * 0.2698 / 28.086;
      double raised = Math.exp(Solvus.lnEquilibrium(kelvin(celsius))) / Math.cbrt(atomic / 4);
      assertEquals(1.14, raised, 0.01);
    }
  }

  /** Gibbs-Thomson: 2 · 0.225 · 3.95e-5 / (8.314462 · 448.15) m. */
  @Test
  void capillaryLength() {
    assertEquals(4.770e-9, Solvus.capillaryLength(0.225, 448.15), 1e-12);
  }

  /** 5.113e-20 m²/s at 175 °C by definition; Arrhenius by hand at 25 °C. */
  @Test
  void diffusivity() {
    assertEquals(5.113e-20, Diffusion.diffusivity(448.15), 1e-30);
    double slower = Math.exp(-123000 / 8.314462 * (1 / 298.15 - 1 / 448.15));
    assertEquals(5.113e-20 * slower, Diffusion.diffusivity(298.15), 1e-30);
  }
}
