package afterweld.strength;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.material.Composition;
import afterweld.material.MaterialLibrary;
import org.junit.jupiter.api.Test;

class PlainStrengthTest {
  private static final MaterialLibrary LIBRARY = MaterialLibrary.standard();

  private static Composition of(String alloy) {
    return LIBRARY.base(alloy).orElseThrow().composition();
  }

  /** Typical tensile strengths of 1100-O and 3003-O, Aluminum Association. */
  @Test
  void givesTheAnnealedSheet() {
    assertEquals(90e6, PlainStrength.of(of("1100")).tensile(), 2e6);
    assertEquals(110e6, PlainStrength.of(of("3003")).tensile(), 2e6);
    assertEquals(41e6, PlainStrength.of(of("3003")).yield(), 1e6);
  }

  /**
   * Least tensile strength of 1100 weld metal in the US Aluminum Design Manual, table J.2.1: 75 MPa
   * (11 ksi), a minimum, so typical metal is above it.
   */
  @Test
  void isAboveTheLeastOfTheCode() {
    assertTrue(PlainStrength.of(of("1100")).tensile() > 75e6);
  }

  @Test
  void holdsOnlyForMetalWithoutHardeners() {
    assertTrue(PlainStrength.holdsFor(of("1100")));
    assertTrue(PlainStrength.holdsFor(of("3003")));
    for (String alloy : new String[] {"6061", "5052", "A356"}) {
      assertFalse(PlainStrength.holdsFor(of(alloy)), alloy);
    }
  }
}
