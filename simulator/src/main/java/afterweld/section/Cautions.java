package afterweld.section;

import afterweld.weld.WeldCase;
import java.util.List;

/** What every output says beside its numbers. */
public final class Cautions {
  /** Stands on every output about a ring or a tube. */
  public static final String PRESSURE =
      "For information only, not a design pressure. Pressure parts follow the pressure code (ASME"
          + " VIII-1, B31.3, EN 13445-8, PD 5500) and licensed practice, which normally allow only"
          + " annealed or as-welded strengths, with joint factors, a proof test and qualified"
          + " procedures. No bursting pressure is promised; fatigue, low temperature, creep and"
          + " corrosion are not covered.";

  private static final String PRESSURE_IN_SHORT =
      "Pressure parts follow the pressure code and licensed practice.";

  private static final List<String> ALWAYS =
      List.of(
          "Estimates for sound metal at room temperature, not a design value: the qualified"
              + " procedure, the test coupon and the governing code decide.",
          "A code's welded strength (annealed or as welded) governs unless the code allows the"
              + " heat-treated value. EN values hold 3 days after welding.",
          PRESSURE_IN_SHORT,
          "Molten metal, furnace, hot water and quench hazards: follow local rules. Vent closed"
              + " cavities before heating and quenching. Nothing wet and no closed hollow goes into a"
              + " salt bath. Filler 4011 and alloy A357 contain beryllium: mind the fume.",
          "Preheat or interpass above 120 °C (250 °F) softens T6. Heat straightening or re-welding undoes a"
              + " heat treatment.",
          "Fillers with more than 3 % Mg: not for service above 65 °C (150 °F), and not meant for heat"
              + " treatment after welding.");

  private Cautions() {}

  /** The cautions of a case, in the order they are shown. */
  static List<String> of(WeldCase weldCase) {
    return weldCase.ring().isPresent() ? withPressure(ALWAYS) : ALWAYS;
  }

  /** The same cautions with the one on pressure in full. */
  static List<String> withPressure(List<String> cautions) {
    return cautions.stream()
        .map(caution -> caution.equals(PRESSURE_IN_SHORT) ? PRESSURE : caution)
        .toList();
  }
}
