package afterweld.thermal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The example of the package's tour, run. */
class TourTest {
  @Test
  void computesTheExample() {
    Alloy alloy = MaterialLibrary.standard().base("6061").orElseThrow();
    WeldLegs butt = WeldLegs.plate(3e-3, ConductionMaterial.of(alloy, "T6"));
    SurfaceLoss air = SurfaceLoss.stillAir(293.15);
    Pass pass = Welds.pass(110 * 14 / 15.0, 3e-3, 293.15, OptionalDouble.of(8e-3), none());
    PassHeat heat = HeatInput.into(butt, air).of(pass);
    assertEquals(0.61, heat.efficiency(), 0.005);
    PlateField field = PlateField.of(butt, 1, heat, air, 1.5e-3);
    assertEquals(22.7e-3, field.isotherm(573.15), 0.05e-3);
    WeldTimeline timeline = WeldTimeline.of(butt, 1, List.of(heat), air, 1.5e-3);
    assertEquals(688.8, timeline.at(12e-3).peakTemperature(), 0.05);
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }
}
