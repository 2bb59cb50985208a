package afterweld.metallurgy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.material.Temper;
import afterweld.strength.StoredWorkStrength;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureHistory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StoredWorkTest {
  private static final double CELSIUS = 273.15;
  private static final double ROOM = 298.15;
  private static final double MEGA = 1e6;
  private static final String[] ALLOYS = {"1100", "3003", "5052", "5083", "5086", "5454"};

  private static Alloy alloy(String name) {
    return MaterialLibrary.standard().base(name).orElseThrow();
  }

  private static StoredWorkModel model(Alloy alloy, String temper) {
    return StoredWorkModel.of(alloy, alloy.temper(temper).orElseThrow());
  }

  private static Strength after(String name, String temper, TemperatureHistory history) {
    Alloy alloy = alloy(name);
    return StoredWorkStrength.of(alloy, alloy.temper(temper).orElseThrow())
        .of(model(alloy, temper).follow(history));
  }

  /** 60 K/s up, then 28 s from 400 to 200 °C, between tungsten-arc welds in 2 and in 3 mm plate. */
  private static TemperatureHistory weld(double peak) {
    double rise = peak - ROOM;
    double fall = 28 / Math.log(375.0 / 175);
    TemperatureHistory cycle = TemperatureHistory.hold(ROOM, 0).thenTo(peak, rise / 60);
    for (int i = 1; i <= 60; i++) {
      double time = 6 * fall * i * i / 3600.0;
      double before = 6 * fall * (i - 1) * (i - 1) / 3600.0;
      cycle = cycle.thenTo(ROOM + rise * Math.exp(-time / fall), time - before);
    }
    return cycle;
  }

  @ParameterizedTest
  @CsvSource({
    "3003, H14, 375, 136",
    "3003, H14, 425, 43",
    "5052, H34, 375, 119",
    "5052, H34, 400, 90",
    "5083, H116, 375, 161",
    "5083, H116, 400, 145"
  })
  void aWeldCycleSoftensAsAnIndependentComputationSays(
      String alloy, String temper, double peak, double yield) {
    // Yields of the same model computed independently, printed to 1 MPa. Their cooling time is not
    // stated: one time, 28 s, stands for all six.
    assertEquals(yield, after(alloy, temper, weld(peak + CELSIUS)).yield() / MEGA, 2.5);
  }

  @Test
  void anHourAt300HalfRecrystallizesHard3003() {
    // Annealing curves of 3003-H18: half soft after an hour near 300 °C (from memory).
    TemperatureHistory anneal = TemperatureHistory.hold(300 + CELSIUS, 3600);
    Alloy alloy = alloy("3003");
    assertEquals(0.5, model(alloy, "H18").follow(anneal).recrystallized(), 0.12);
    assertEquals(78, after("3003", "H18", anneal).yield() / MEGA, 1);
  }

  @ParameterizedTest
  @CsvSource({"1100, H14, 415", "3003, H18, 415", "5052, H34, 345", "5083, H116, 345"})
  void thePracticeAnnealSoftensFully(String alloy, String temper, double celsius) {
    // ASM Handbook vol. 4 (from memory): 1100 and 3003 at 415 °C, 5xxx at 345 °C, through-heating
    // is enough; twenty minutes here.
    double yield = after(alloy, temper, TemperatureHistory.hold(celsius + CELSIUS, 1200)).yield();
    assertEquals(StoredWorkModel.annealed(alloy(alloy)).yield(), yield, 0.02 * yield);
  }

  @Test
  void theAnnealedPairOfTheHandbookComesBack() {
    for (String name : ALLOYS) {
      Temper.Handbook handbook = StoredWorkModel.annealed(alloy(name));
      Strength annealed = after(name, "O", TemperatureHistory.hold(ROOM, 1));
      assertEquals(handbook.yield(), annealed.yield(), 1, name);
      assertEquals(handbook.tensile(), annealed.tensile(), 1e3, name);
    }
  }

  @Test
  void tenYearsOnTheShelfChangeNothing() {
    TemperatureHistory shelf = TemperatureHistory.hold(ROOM, 10 * 365 * 86400.0);
    for (String name : ALLOYS) {
      Alloy alloy = alloy(name);
      StoredWorkModel hard = model(alloy, alloy.tempers().get(1).name());
      StoredWorkState start = hard.start(ROOM);
      assertEquals(start.hardening(), hard.advance(start, shelf).hardening(), 0.02 * start.start());
    }
  }

  /**
   * H3x is stabilized: it keeps its strength on the shelf (EN 515) and loses little in an hour at
   * 150 °C, amid the 120 to 175 °C of the usual stabilizing (from memory). Heated at 16 K/min, 5052
   * recovers from 230 to 260 °C and has recrystallized at 370 °C (annealing of cryo-rolled 5052, an
   * abstract).
   */
  @ParameterizedTest
  @CsvSource({
    "5052, H32",
    "5052, H34",
    "5052, H36",
    "5052, H38",
    "5086, H32",
    "5086, H34",
    "5454, H32",
    "5454, H34"
  })
  void stabilizedMetalKeepsItsStrengthWhereItWasStabilized(String name, String temper) {
    StoredWorkModel model = model(alloy(name), temper);
    double before = model.start(ROOM).start();
    TemperatureHistory shelf = TemperatureHistory.hold(ROOM, 10 * 365 * 86400.0);
    assertEquals(before, model.follow(shelf).hardening(), 0.01 * before);
    TemperatureHistory hour = TemperatureHistory.hold(150 + CELSIUS, 3600);
    assertEquals(before, model.follow(hour).hardening(), 0.05 * before);
    assertTrue(model.follow(heatedTo(230)).hardening() > 0.75 * before);
    assertTrue(model.follow(heatedTo(370)).hardening() < 0.05 * before);
  }

  /** As in a calorimeter, 16 K/min. */
  private static TemperatureHistory heatedTo(double celsius) {
    return TemperatureHistory.hold(ROOM, 0).thenTo(celsius + CELSIUS, (celsius - 25) / 16 * 60);
  }

  @Property(tries = 300)
  void strengthStaysBetweenTheTemperAndTheAnnealedMetal(
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 250, max = 920) double temperature,
      @ForAll @DoubleRange(min = 0, max = 1e6) double time) {
    Alloy alloy = alloy(ALLOYS[which]);
    Temper hard = alloy.tempers().get(alloy.tempers().size() - 1);
    double yield =
        after(alloy.name(), hard.name(), TemperatureHistory.hold(temperature, time)).yield();
    assertTrue(yield >= StoredWorkModel.annealed(alloy).yield() - 1);
    assertTrue(yield <= hard.handbook().orElseThrow().yield() + 1);
  }

  @Property(tries = 200)
  void hotterOrLongerNeverHardens(
      @ForAll @IntRange(max = 5) int which,
      @ForAll @DoubleRange(min = 400, max = 900) double temperature,
      @ForAll @DoubleRange(min = 1, max = 1e5) double time,
      @ForAll @DoubleRange(min = 1, max = 3) double factor) {
    Alloy alloy = alloy(ALLOYS[which]);
    StoredWorkModel model = model(alloy, alloy.tempers().get(alloy.tempers().size() - 1).name());
    double held = model.follow(TemperatureHistory.hold(temperature, time)).hardening();
    double longer = model.follow(TemperatureHistory.hold(temperature, time * factor)).hardening();
    double hotter =
        model.follow(TemperatureHistory.hold(temperature + 10 * factor, time)).hardening();
    double noise = 0.01 * model.start(ROOM).start();
    assertTrue(longer <= held + noise && hotter <= held + noise);
  }

  @Property(tries = 100)
  void partsOfAHistoryGiveTheSameAsTheWhole(
      @ForAll @DoubleRange(min = 500, max = 850) double peak) {
    Alloy alloy = alloy("5083");
    StoredWorkModel model = model(alloy, "H116");
    TemperatureHistory up = TemperatureHistory.hold(300, 0).thenTo(peak, 8);
    TemperatureHistory down = TemperatureHistory.hold(peak, 0).thenTo(300, 64);
    StoredWorkState whole = model.follow(up.then(down));
    StoredWorkState parts = model.advance(model.follow(up), down);
    assertEquals(whole.hardening(), parts.hardening(), 1e-6 * whole.start());
  }

  /** Metal as delivered is what the table of its temper says, to the last figure. */
  @ParameterizedTest
  @CsvSource({
    "5052, H32",
    "5052, H34",
    "5083, H116",
    "5086, H32",
    "5454, H32",
    "3003, H12",
    "3003, H18"
  })
  void deliveredMetalHasTheStrengthOfItsTemper(String name, String temper) {
    Temper.Handbook table =
        MaterialLibrary.standard()
            .base(name)
            .orElseThrow()
            .temper(temper)
            .orElseThrow()
            .handbook()
            .orElseThrow();
    Strength delivered = after(name, temper, TemperatureHistory.hold(ROOM, 1));
    assertEquals(table.yield(), delivered.yield(), 1);
    assertEquals(table.tensile(), delivered.tensile(), 1);
  }
}
