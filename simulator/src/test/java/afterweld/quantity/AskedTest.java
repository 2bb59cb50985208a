package afterweld.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A value asked is repeated as it was written; 24 ksi is 165.5 MPa (NIST SP 811). */
class AskedTest {
  private static final double KSI = 6.894757e6;
  private static final Asked TENSILE = new Asked(OutputQuantity.TENSILE, 24 * KSI, "24 ksi");

  @Test
  void ksiStaysKsiWithMpaBehind() {
    assertEquals("24 ksi (165 MPa)", TENSILE.text(UnitSystem.METRIC));
    assertEquals("24 ksi", TENSILE.text(UnitSystem.US));
  }

  @Test
  void mpaStaysMpaWithKsiBehind() {
    Asked asked = new Asked(OutputQuantity.TENSILE, 165e6, "165 MPa");
    assertEquals("165 MPa", asked.text(UnitSystem.METRIC));
    assertEquals("165 MPa (23.9 ksi)", asked.text(UnitSystem.US));
  }

  @Test
  void inBothUnitsTheOneAskedComesFirst() {
    assertEquals("24 ksi (165 MPa)", TENSILE.inBothUnits());
    assertEquals(
        "165 MPa (23.9 ksi)", new Asked(OutputQuantity.TENSILE, 165e6, "165 MPa").inBothUnits());
  }

  @Test
  void brinellStaysBrinell() {
    Asked asked = new Asked(OutputQuantity.HARDNESS, 80, "70 HB");
    assertEquals("70 HB (80 HV)", asked.text(UnitSystem.METRIC));
    assertEquals("70 HB (80 HV)", asked.text(UnitSystem.US));
  }

  @Test
  void aResultThatFallsShortByAHairCanBeToldFromIt() {
    assertEquals("24 ksi (165.5 MPa)", TENSILE.textBeside(UnitSystem.METRIC, 165.4e6));
  }

  @Test
  void whatNobodyWroteIsShownInMetric() {
    assertEquals("241 MPa", Asked.of(OutputQuantity.YIELD, 241e6).text(UnitSystem.METRIC));
  }
}
