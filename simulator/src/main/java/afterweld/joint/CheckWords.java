package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The checks of fillet and tube in sentences, in one system of units. */
final class CheckWords {
  private final JointChecks checks;
  private final UnitSystem units;

  CheckWords(JointChecks checks, UnitSystem units) {
    this.checks = checks;
    this.units = units;
  }

  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    checks.fillet().ifPresent(fillet -> sentences.add(sentence("as welded", fillet)));
    checks
        .treatedFillet()
        .ifPresent(fillet -> sentences.add(sentence("model value after heat treatment", fillet)));
    checks.tube().ifPresent(tube -> sentences.add(sentence(tube)));
    checks
        .treatedTube()
        .ifPresent(
            tube ->
                sentences.add(
                    "Tube after heat treatment, model value: the weakest metal begins to yield near "
                        + pressure(tube.bandYieldPressure())
                        + "; a pressure code normally allows no more than as welded or annealed."));
    return sentences;
  }

  private String sentence(String state, FilletWeld fillet) {
    return (fillet.onBothSides() ? "One fillet, " : "Fillet, ")
        + state
        + ": throat "
        + with(OutputQuantity.DISTANCE, fillet.throat())
        + " over "
        + with(OutputQuantity.DISTANCE, fillet.length())
        + " carries "
        + force(fillet.force())
        + ", "
        + force(fillet.designForce())
        + " with the factor 1.25; "
        + (fillet.legDecides() ? "the metal beside the leg" : "the throat")
        + " decides."
        + (fillet.onBothSides() ? " The joint has one on each side: twice that." : "");
  }

  private String sentence(ThinCylinder tube) {
    return "Tube at "
        + pressure(tube.pressure())
        + ": hoop stress "
        + with(OutputQuantity.YIELD, tube.hoop())
        + "; the soft band as welded begins to yield near "
        + pressure(tube.bandYieldPressure())
        + ", the base as it was before welding near "
        + pressure(tube.baseYieldPressure())
        + ".";
  }

  private String with(OutputQuantity quantity, double si) {
    return quantity.text(units, si) + " " + quantity.unit(units);
  }

  private String force(double newton) {
    return String.format(Locale.ROOT, "%.1f %s", units.force(newton), units.forceUnit());
  }

  private String pressure(double pascal) {
    return BothUnits.pressure(units, pascal);
  }
}
