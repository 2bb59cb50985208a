package afterweld.metallurgy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class NeedlePopulationTest {
  private static final NeedleClasses CLASSES = new NeedleClasses(100);

  @Test
  void classesSpanHalfANanometreToSixty() {
    assertEquals(0.5e-9, CLASSES.radius[0], 1e-24);
    assertEquals(60e-9, CLASSES.radius[99], 1e-21);
    assertEquals(42, CLASSES.place(CLASSES.radius[42]), 1e-9);
    assertTrue(CLASSES.radius[CLASSES.dissolving] >= 2e-9);
    assertTrue(CLASSES.radius[CLASSES.dissolving - 1] < 2e-9);
  }

  /** One class in a matrix held at c: volume rate 4 π r D (c - c_i) N / q_p, exact for small dt. */
  @Test
  void transportChangesVolumeByTheGrowthLaw() {
    double temperature = 473.15;
    NeedlePopulation needles = new NeedlePopulation(CLASSES, oneClass(40, 1e22));
    needles.setTemperature(temperature);
    Interval step = Interval.of(temperature, 1e-6);
    double before = needles.afterTransport(0, 1e-3);
    double r = CLASSES.radius[40];
    double interfaceConcentration =
        Math.exp(Solvus.lnNeedles(temperature) + Solvus.capillaryLength(0.225, temperature) / r);
    for (double factor : new double[] {0.2, 0.9, 1.1, 5}) {
      double c = factor * interfaceConcentration;
      double expected =
          4 * Math.PI * r * step.diffusivity() * 1e-6 * (c - interfaceConcentration) * 1e22;
      double gained = needles.afterTransport(step.growth(), c) - before;
      assertEquals(expected, gained, 1e-4 * Math.abs(expected), "factor " + factor);
    }
  }

  @Test
  void numbersStayPositiveHoweverLongTheStep() {
    NeedlePopulation needles = new NeedlePopulation(CLASSES, oneClass(40, 1e22));
    needles.setTemperature(673.15);
    for (double c : new double[] {0, 1e-4, 1e-2}) {
      double growth = Interval.of(673.15, 1e9).growth();
      needles.sharpen(growth, c);
      assertTrue(needles.afterTransport(growth, c) >= 0);
      needles.accept();
      for (double n : needles.numbers()) {
        assertTrue(n >= 0);
      }
    }
  }

  /** What does not vanish from the smallest class is still there. */
  @Test
  void growthKeepsTheNumber() {
    NeedlePopulation needles = new NeedlePopulation(CLASSES, oneClass(40, 1e22));
    needles.setTemperature(473.15);
    double growth = Interval.of(473.15, 100).growth();
    needles.sharpen(growth, 0.01);
    needles.afterTransport(growth, 0.01);
    needles.accept();
    assertEquals(1e22, needles.total(), 1e10);
  }

  @Test
  void sharesOfNucleiAddUpToOne() {
    Interval step = Interval.of(448.15, 1);
    NeedleNucleation nuclei = NeedleNucleation.in(CLASSES, step, 0.004, 0.3);
    double sum = 0;
    for (int i = nuclei.first(); i <= nuclei.last(); i++) {
      sum += nuclei.share(i);
    }
    assertEquals(1, sum, 1e-12);
    assertTrue(nuclei.number() > 0 && nuclei.number() <= nuclei.cap());
  }

  @Test
  void nothingNucleatesInALeanMatrix() {
    assertEquals(0, NeedleNucleation.in(CLASSES, Interval.of(448.15, 1), 1e-5, 0).number());
  }

  private static double[] oneClass(int i, double count) {
    double[] number = new double[CLASSES.count()];
    number[i] = count;
    return number;
  }
}
