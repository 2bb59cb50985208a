package afterweld.joint;

import static afterweld.joint.Profiles.MM;
import static afterweld.joint.Profiles.metal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.joint.JointSettings.Tube;
import afterweld.section.Cautions;
import afterweld.weld.Warning;
import java.util.List;
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
    ThinCylinder tube = ThinCylinder.of(new Tube(0.204, 4e6), BAND, BASE, true);
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
    ThinCylinder tube = ThinCylinder.of(new Tube(0.204, 0), BAND, BASE, true);
    assertEquals(Cautions.PRESSURE, tube.warnings().get(0).text());
    assertTrue(Cautions.PRESSURE.contains("not a design pressure"));
  }

  @Test
  void saysWhenTheBandIsPropped() {
    SliceLine narrow = Profiles.plateauAndRamp(3, 5, 4, metal(115, 175), metal(240, 260));
    assertTrue(said(narrow, true).contains("propped-band"));
    assertFalse(said(BAND, true).contains("propped-band"));
  }

  /** Barlow: along a tube every place of the band has the whole hoop stress, wide or narrow. */
  @Test
  void nothingPropsTheBandOfAWeldThatMayRunAlongTheTube() {
    SliceLine narrow = Profiles.plateauAndRamp(3, 5, 4, metal(115, 175), metal(240, 260));
    for (SliceLine line : List.of(narrow, BAND)) {
      assertTrue(said(line, false).contains("unpropped-band"));
      assertFalse(said(line, false).contains("propped-band"));
      assertFalse(said(line, true).contains("unpropped-band"));
    }
    assertEquals(List.of("pressure-code"), said(BASE, false), "no band, nothing to prop");
    assertEquals(tube(narrow, true).bandYieldPressure(), tube(narrow, false).bandYieldPressure());
    String text = tube(narrow, false).warnings().get(1).text();
    assertTrue(text.contains("along the tube nothing props"), text);
    assertTrue(text.contains("begins to yield at the pressure") && text.contains("'ring'"), text);
  }

  private static List<String> said(SliceLine line, boolean around) {
    return tube(line, around).warnings().stream().map(Warning::code).toList();
  }

  private static ThinCylinder tube(SliceLine line, boolean around) {
    return ThinCylinder.of(new Tube(0.204, 1e6), line, BASE, around);
  }

  @Test
  void refusesThickWallsAndNonsense() {
    assertThrows(
        IllegalArgumentException.class,
        () -> ThinCylinder.of(new Tube(0.080, 1e6), BAND, BASE, true));
    assertThrows(
        IllegalArgumentException.class,
        () -> ThinCylinder.of(new Tube(Double.NaN, 1e6), BAND, BASE, true));
    assertThrows(
        IllegalArgumentException.class,
        () -> ThinCylinder.of(new Tube(0.204, -1), BAND, BASE, true));
  }
}
