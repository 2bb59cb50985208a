package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static afterweld.joint.Profiles.station;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SliceLineTest {
  private static final List<StrengthStation> FIVE =
      List.of(
          station(-10, metal(276, 310), "base"),
          station(-4, metal(115, 180), "softened"),
          station(0, metal(125, 190), "weld"),
          station(4, metal(115, 180), "softened"),
          station(10, metal(276, 310), "base"));

  @Test
  void facesLieOnEveryZoneBoundaryAndStation() {
    SliceLine line = SliceLine.through(FIVE);
    for (double face : new double[] {-10, -7, -4, -2, 0, 2, 4, 7}) {
      assertTrue(
          line.slices().stream().anyMatch(s -> Math.abs(s.from() - face * MM) < 1e-12),
          "no face at " + face + " mm");
    }
    assertTrue(line.slices().stream().allMatch(s -> s.length() <= 0.5e-3 + 1e-12));
  }

  @Test
  void weldMetalIsNotSmearedIntoItsNeighbours() {
    SliceLine line = SliceLine.through(FIVE);
    line.slices().stream()
        .filter(slice -> slice.zone().equals("weld"))
        .forEach(slice -> assertEquals(metal(125, 190), slice.metal()));
    assertEquals(4 * MM, zoneLength(line, "weld"), 1e-12);
  }

  private static double zoneLength(SliceLine line, String zone) {
    return line.slices().stream()
        .filter(slice -> slice.zone().equals(zone))
        .mapToDouble(Slice::length)
        .sum();
  }

  @Test
  void strengthRunsStraightInsideAZone() {
    SliceLine line = Profiles.worked();
    for (Slice slice : line.slices()) {
      double y = Math.abs(slice.centre()) / MM;
      if (y > 12 && y < 22) {
        assertEquals(115 + 161 * (y - 12) / 10, slice.metal().proof() / 1e6, 1e-3);
        assertEquals(180 + 130 * (y - 12) / 10, slice.metal().tensile() / 1e6, 1e-3);
      }
    }
  }

  @Test
  void beadThickensTheFusionZoneOnly() {
    SliceLine deposited = SliceLine.through(FIVE).withReinforcement(1.5 * MM, "weld");
    for (Slice slice : deposited.slices()) {
      assertEquals(slice.zone().equals("weld") ? 7.5 * MM : 6 * MM, slice.thickness(), 1e-12);
    }
  }

  @Test
  void softBandReachesToTwoPercentBelowTheBase() {
    SliceLine.Band band = Profiles.worked().softBand();
    double end = 12 + 10 * (0.98 * 276 - 115) / 161;
    assertEquals(-end, band.low() / MM, 0.5);
    assertEquals(end, band.high() / MM, 0.5);
    assertEquals(0, SliceLine.uniform(0.1, MM, "base", metal(276, 310)).softBand().width());
  }

  @Test
  void cutsOrContinuesTheBase() {
    SliceLine line = Profiles.worked();
    SliceLine longer = line.over(0.200);
    assertEquals(-0.1, longer.from(), 1e-12);
    assertEquals(0.1, longer.to(), 1e-12);
    assertEquals(metal(276, 310), longer.left().metal());
    SliceLine shorter = line.over(0.020);
    assertEquals(0.020, shorter.to() - shorter.from(), 1e-12);
    assertEquals(metal(115, 180), shorter.right().metal());
  }

  @Test
  void refusesTooFewStationsAndDisorder() {
    refused(FIVE.subList(0, 4));
    List<StrengthStation> twice = new ArrayList<>(FIVE);
    twice.set(1, station(-10, metal(115, 180), "softened"));
    refused(twice);
    assertThrows(IllegalArgumentException.class, () -> station(Double.NaN, metal(1, 2), "base"));
    assertThrows(
        IllegalArgumentException.class, () -> new StrengthStation(0, metal(100, 200), 0, "base"));
  }

  private static void refused(List<StrengthStation> stations) {
    assertThrows(IllegalArgumentException.class, () -> SliceLine.through(stations));
  }

  @Test
  void refusesGapsEmptySlicesAndLostAreaOfOne() {
    Slice first = Slice.sound(0, MM, MM, "base", metal(100, 200));
    Slice apart = Slice.sound(2 * MM, 3 * MM, MM, "base", metal(100, 200));
    assertThrows(IllegalArgumentException.class, () -> new SliceLine(List.of(first, apart)));
    assertThrows(IllegalArgumentException.class, () -> new SliceLine(List.of()));
    assertThrows(
        IllegalArgumentException.class, () -> Slice.sound(MM, MM, MM, "base", metal(100, 200)));
    assertThrows(
        IllegalArgumentException.class, () -> new Slice(0, MM, MM, "base", metal(100, 200), 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Slice(0, MM, MM, "base", metal(100, 200), Double.NaN));
  }
}
