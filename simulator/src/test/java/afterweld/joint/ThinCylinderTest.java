package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.Tube;
import afterweld.section.Cautions;
import org.junit.jupiter.api.Test;

class ThinCylinderTest {
  private static final SliceLine BAND =
      Profiles.plateauAndRamp(12, 22, 4, metal(115, 175), metal(240, 260));

  private static final SliceLine BASE =
      Profiles.plateauAndRamp(12, 22, 4, metal(240, 260), metal(240, 260));

  /**
   * Worked example: mean radius 100 mm, wall 4 mm: band yields at 5.31 MPa, base at 11.09, axial
   * pull breaks the band at 14.0; shown with three figures.
   */
  @Test
  void workedTube() {
    ThinCylinder tube = ThinCylinder.of(new Tube(0.204, 4e6), BAND, BASE);
    assertEquals(100e6, tube.hoop(), 1);
    assertEquals(50e6, tube.axial(), 1);
    assertEquals(86.6e6, tube.equivalent(), 1);
    assertEquals(5.31e6, tube.bandYieldPressure(), 1);
    assertEquals(11.1e6, tube.baseYieldPressure(), 1);
    assertEquals(14e6, tube.axialRupturePressure(), 1);
    assertEquals(15.6 * MM, tube.decayLength(), 1e-9);
    assertEquals(11.09e6, ThinCylinder.yieldPressure(240e6 * 4 * MM, 0.1), 0.006e6);
  }

  @Test
  void thePressureTextAlwaysTravelsWithTheNumbers() {
    ThinCylinder tube = ThinCylinder.of(new Tube(0.204, 0), BAND, BASE);
    assertEquals(Cautions.PRESSURE, tube.warnings().get(0).text());
    assertTrue(Cautions.PRESSURE.contains("not a design pressure"));
  }

  @Test
  void saysWhenTheBandIsPropped() {
    SliceLine narrow = Profiles.plateauAndRamp(3, 5, 4, metal(115, 175), metal(240, 260));
    assertTrue(propped(narrow));
    assertFalse(propped(BAND));
  }

  private static boolean propped(SliceLine line) {
    return ThinCylinder.of(new Tube(0.204, 1e6), line, BASE).warnings().stream()
        .anyMatch(warning -> warning.code().equals("propped-band"));
  }

  @Test
  void refusesThickWallsAndNonsense() {
    assertThrows(
        IllegalArgumentException.class, () -> ThinCylinder.of(new Tube(0.080, 1e6), BAND, BASE));
    assertThrows(
        IllegalArgumentException.class,
        () -> ThinCylinder.of(new Tube(Double.NaN, 1e6), BAND, BASE));
    assertThrows(
        IllegalArgumentException.class, () -> ThinCylinder.of(new Tube(0.204, -1), BAND, BASE));
  }
}
