package afterweld.section;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SofteningTest {
  /** Annealed metal has nothing to lose, whatever lies beside it. */
  @Test
  void annealedMetalBesideMetalThatSoftensLosesNothing() {
    String socket =
        """
        left: {alloy: A356, temper: T6, thickness: 6 mm, width: 30 mm}
        right: {alloy: "3003", temper: O, thickness: 1.65 mm}
        joint: socket
        filler: {alloy: "4043", dilution: 35 %}
        ring: {diameter: 40 mm, position: start}
        """;
    String pass =
        "process: GTAW-AC, current: 95 A, voltage: 13 V, travel_speed: 3 mm/s, bead_width: 5 mm";
    SectionProfile profile = Welded.SESSION.profile(WrittenWelds.of(socket, pass, 1));
    assertTrue(profile.softening().left().any());
    assertFalse(profile.softening().right().any());
  }
}
