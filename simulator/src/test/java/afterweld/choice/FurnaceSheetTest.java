package afterweld.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.QuenchMedium;
import java.util.List;
import org.junit.jupiter.api.Test;

class FurnaceSheetTest {
  private static FurnaceSheet sheet(Cases cases) {
    return FurnaceSheet.of(cases.weldCase()).orElseThrow();
  }

  private static String text(FurnaceSheet sheet, String what) {
    return sheet.lines().stream()
        .filter(line -> line.what().equals(what))
        .map(FurnaceSheet.Line::text)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void limitsFollowThicknessWithTheirSource() {
    // MIL-H-6088 tables, from memory: 3 mm soaks 40 min in air, waits at most 15 s.
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6"));
    assertFalse(sheet.ownSchedule());
    assertTrue(text(sheet, "Soak").contains("40 min (MIL-H-6088"), text(sheet, "Soak"));
    assertTrue(text(sheet, "Quench").contains("limit by thickness 15 s"), text(sheet, "Quench"));
    assertEquals(10, FurnacePractice.of("longest quench delay", 0.001).value());
  }

  @Test
  void expectedHardnessIsThatOfT6() {
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6").withFiller(Cases.filler("4643", 0.4)));
    // 6061-T6 typical 95 HB (Aluminum Association), 10 %.
    FurnaceSheet.Expected base = sheet.expected().get(0);
    assertEquals(95, base.brinell(), 9.5);
    assertTrue(base.acceptFrom() < base.vickers());
    assertEquals(3, sheet.expected().size());
  }

  @Test
  void aScheduleThatWouldMeltIsRefused() {
    List<FurnaceStep> hot =
        List.of(
            new FurnaceStep.SolutionTreat(555 + 273.15, 3600, FurnaceStep.Furnace.AIR),
            new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 7));
    FurnaceSheet sheet = sheet(Cases.butt("6061", "T6").then(hot));
    assertEquals(1, sheet.refusals().size());
    assertTrue(sheet.expected().isEmpty());
  }

  @Test
  void workHardenedJointsHaveNoSheet() {
    assertTrue(FurnaceSheet.of(Cases.butt("5083", "H116").weldCase()).isEmpty());
  }
}
