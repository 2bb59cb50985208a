package afterweld.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** A code's value is printed as the code prints it: 24 ksi for a 6061 butt weld (AWS D1.2). */
class DesignCodeValueTest {
  @Test
  void ksiStayWholeAndMetricCodesAreConverted() {
    DesignCodeValue aws = new DesignCodeValue("AWS D1.2", "", "tensile", 165, "MPa", "24", "");
    assertEquals("165 MPa (24 ksi)", aws.text(UnitSystem.METRIC));
    assertEquals("24 ksi", aws.text(UnitSystem.US));
    DesignCodeValue en = new DesignCodeValue("EN 1999-1-1", "", "proof", 115, "MPa", "", "");
    assertEquals("115 MPa", en.text(UnitSystem.METRIC));
    assertEquals("16.7 ksi", en.text(UnitSystem.US));
  }
}
