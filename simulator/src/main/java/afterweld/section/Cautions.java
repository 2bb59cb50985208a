package afterweld.section;

import java.util.List;

/** What every output says beside its numbers, whatever the case. */
final class Cautions {
  /** The cautions, in the order they are shown. */
  static final List<String> ALWAYS =
      List.of(
          "Estimates for sound metal at room temperature, not a design value: the qualified"
              + " procedure, the test coupon and the governing code decide.",
          "A code's welded strength (annealed or as welded) governs unless the code allows the"
              + " heat-treated value. EN values hold 3 days after welding.",
          "Pressure parts follow the pressure code and licensed practice.",
          "Molten metal, furnace, hot water and quench hazards: follow local rules. Vent closed"
              + " cavities before heating and quenching. Nothing wet or hollow goes into a salt"
              + " bath. Filler 4011 and alloy A357 contain beryllium: mind the fume.",
          "Preheat or interpass above 120 °C softens T6. Heat straightening or re-welding undoes a"
              + " heat treatment.",
          "Fillers with more than 3 % Mg: not for service above 65 °C, and not meant for heat"
              + " treatment after welding.");

  private Cautions() {}
}
