package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class WeldTimelineTest {
  private static final WeldLegs LEGS = WeldLegs.plate(3e-3, Metals.ALUMINIUM_6061);
  private static final SurfaceLoss AIR = SurfaceLoss.stillAir(Welds.ROOM);
  private static final Pass BEAD = Welds.withBead(8e-3);

  private static WeldTimeline timeline(int leg, Pass... passes) {
    List<PassHeat> heats = HeatInput.into(LEGS, AIR).of(List.of(passes));
    return WeldTimeline.of(LEGS, leg, heats, AIR, 1.5e-3);
  }

  @Test
  void endsAtRoomTemperature() {
    TemperatureHistory history = timeline(1, BEAD).at(12e-3).history();
    int last = history.size() - 1;
    assertEquals(25 + ZERO_CELSIUS, history.endTemperature(), 1e-9);
    assertEquals(40 + ZERO_CELSIUS, history.temperature(last - 1), 1e-3);
    assertEquals(600, history.time(last) - history.time(last - 1), 1e-6);
  }

  @Test
  void preheatsInFiveMinutesAndWaitsTwo() {
    Pass warm = Welds.startingAt(BEAD, 120 + ZERO_CELSIUS);
    TemperatureHistory history = timeline(1, warm).at(12e-3).history();
    assertEquals(25 + ZERO_CELSIUS, history.temperature(0), 1e-9);
    assertEquals(120 + ZERO_CELSIUS, history.at(300), 1e-9);
    assertEquals(120 + ZERO_CELSIUS, history.at(420), 0.51);
    assertTrue(history.at(421) > 120.5 + ZERO_CELSIUS);
    assertTrue(history.at(480) > 200 + ZERO_CELSIUS);
  }

  @Test
  void followsEveryPass() {
    Pass second = Welds.changed(BEAD, 66 + ZERO_CELSIUS, 1e-3, OptionalDouble.empty());
    StationHistory station = timeline(1, BEAD, second).at(9e-3);
    assertEquals(2, station.passPeaks().size());
    PlateField first = timeline(1, BEAD).field(0);
    assertEquals(first.peakTemperature(9e-3), station.passPeaks().get(0), 1e-9);
    PlateField nearer = timeline(1, second).field(0);
    assertEquals(nearer.peakTemperature(8e-3), station.passPeaks().get(1), 1e-9);
    assertEquals(station.peakTemperature(), station.history().peakTemperature(), 1e-6);
    int[] turns = turns(station.history());
    assertEquals(3, turns.length, "up, down, up, down");
    assertEquals(71 + ZERO_CELSIUS, station.history().temperature(turns[1] - 1), 1e-3);
    assertEquals(66.5 + ZERO_CELSIUS, station.history().temperature(turns[1]), 1e-2);
  }

  private static int[] turns(TemperatureHistory history) {
    return java.util.stream.IntStream.range(1, history.size() - 1)
        .filter(
            i ->
                (history.temperature(i) - history.temperature(i - 1))
                        * (history.temperature(i + 1) - history.temperature(i))
                    < 0)
        .toArray();
  }

  /** Offsets count along the distances: to the right on the right, the mirror on the left. */
  @Test
  void placesTheBeadOnBothSides() {
    Pass right = Welds.changed(BEAD, Welds.ROOM, 2e-3, OptionalDouble.empty());
    Pass left = Welds.changed(BEAD, Welds.ROOM, -2e-3, OptionalDouble.empty());
    double near = timeline(1, right).at(10e-3).peakTemperature();
    double far = timeline(0, right).at(-10e-3).peakTemperature();
    assertTrue(near > far + 50);
    assertEquals(near, timeline(0, left).at(-10e-3).peakTemperature(), 1e-9);
    assertEquals(far, timeline(1, left).at(10e-3).peakTemperature(), 1e-9);
  }

  /** The second pass begins to warm the station 10 minutes after the first arc passed it. */
  @Test
  void waitsAsLongAsThePauseSays() {
    Pass second = Welds.changed(BEAD, 50 + ZERO_CELSIUS, 0, OptionalDouble.of(600));
    WeldTimeline timeline = timeline(1, BEAD, second);
    TemperatureHistory history = timeline.at(9e-3).history();
    int[] turns = turns(history);
    StationPass first = timeline.field(0).station(9e-3);
    StationPass next = timeline.field(1).station(9e-3);
    double heating = next.peakTime() - next.startTime();
    double between = history.time(turns[2]) - history.time(turns[0]);
    assertEquals(600 - first.peakTime() + heating, between, 1e-6);
  }

  @Test
  void warmsAColdStationToTheInterpassTemperature() {
    Pass second = Welds.startingAt(BEAD, 150 + ZERO_CELSIUS);
    TemperatureHistory history = timeline(1, BEAD, second).at(80e-3).history();
    double peak = history.peakTemperature();
    assertTrue(peak > 150 + ZERO_CELSIUS && peak < 250 + ZERO_CELSIUS);
    assertEquals(25 + ZERO_CELSIUS, history.endTemperature(), 1e-9);
  }

  @Test
  void startsWeldMetalAgainWhenItHasFrozen() {
    Pass second = Welds.startingAt(BEAD, 66 + ZERO_CELSIUS);
    WeldTimeline timeline = timeline(1, BEAD, second);
    StationHistory inside = timeline.at(1e-3);
    assertTrue(inside.melted());
    TemperatureHistory cast = inside.sinceFrozen().orElseThrow();
    assertEquals(540 + ZERO_CELSIUS, cast.temperature(0), 1e-9);
    assertEquals(540 + ZERO_CELSIUS, cast.peakTemperature(), 1e-9);
    assertEquals(inside.history().endTemperature(), cast.endTemperature());
    double before = inside.history().duration() - cast.duration();
    assertEquals(540 + ZERO_CELSIUS, inside.history().at(before), 1e-6);
    StationHistory outside = timeline.at(9e-3);
    assertTrue(outside.sinceFrozen().isEmpty());
  }

  /** A later pass that only warms the first bead leaves its heat in the cast metal's history. */
  @Test
  void keepsLaterCyclesBelow540() {
    Pass away = Welds.changed(BEAD, Welds.ROOM, 16e-3, OptionalDouble.empty());
    StationHistory station = timeline(1, BEAD, away).at(0);
    TemperatureHistory cast = station.sinceFrozen().orElseThrow();
    assertEquals(540 + ZERO_CELSIUS, cast.temperature(0), 1e-9);
    assertEquals(3, turns(cast).length + 1, "down, up, down");
    assertTrue(station.passPeaks().get(1) < 540 + ZERO_CELSIUS);
  }

  @Test
  void needsAPass() {
    assertThrows(
        IllegalArgumentException.class, () -> WeldTimeline.of(LEGS, 0, List.of(), AIR, 1e-3));
  }
}
