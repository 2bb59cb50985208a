package afterweld.casefile;

import afterweld.choice.answer.Requirement;
import afterweld.choice.filler.FillerPurpose;
import afterweld.choice.filler.UsualFillers;
import afterweld.material.Composition;
import afterweld.quantity.BothUnits;
import afterweld.weld.FillerChoice;
import afterweld.weldmetal.FurnaceMargin;
import afterweld.weldmetal.WeldPool;
import java.util.List;
import java.util.Optional;

/**
 * The hottest a furnace may be set without certainly melting the joint somewhere: under the lowest
 * solidus of bases and weld metal as far as they are known. Weld metal that only may melt is
 * computed, and the result says so.
 *
 * @param solidus lowest solidus, K; NaN if nothing is known
 * @param metal which metal has it, as a message says it
 * @param suitable fillers that the guides take for a full treatment of the pair and for what the
 *     case requires; empty where a base sets the limit or the case has one of them
 */
record MeltingLimit(double solidus, String metal, List<String> suitable) {
  /** As many fillers are named as one reads at a glance (assumed). */
  private static final int NAMED = 3;

  /** Copies the list. */
  MeltingLimit {
    suitable = List.copyOf(suitable);
  }

  /** The limit of a joint as far as it is known. */
  static MeltingLimit of(Plates plates, Optional<FillerChoice> filler, Requirement requirement) {
    double base = plates.lowestSolidus();
    double deposit =
        filler
            .flatMap(choice -> weldMetal(plates, choice))
            .map(metal -> WeldPool.eutectic(metal).orElse(base))
            .orElse(Double.NaN);
    return deposit < base
        ? new MeltingLimit(
            deposit, "the weld metal as deposited", suitable(plates, filler, requirement))
        : new MeltingLimit(base, "the base metal", List.of());
  }

  private static List<String> suitable(
      Plates plates, Optional<FillerChoice> filler, Requirement requirement) {
    List<String> suitable =
        plates.left().alloy().isPresent()
                && plates.right().alloy().isPresent()
                && (plates.left().alloy().get().heatTreatable()
                    || plates.right().alloy().get().heatTreatable())
            ? UsualFillers.of(plates.left().alloy().get(), plates.right().alloy().get())
                .suitable(FillerPurpose.treated(requirement))
            : List.of();
    boolean has =
        filler
            .flatMap(FillerChoice::alloy)
            .filter(own -> suitable.contains(own.name()))
            .isPresent();
    return has ? List.of() : suitable.subList(0, Math.min(NAMED, suitable.size()));
  }

  /** Whether a set temperature, K, is over the highest; not if nothing is known. */
  boolean isExceededBy(double temperature) {
    return !Double.isNaN(solidus)
        && !Double.isNaN(temperature)
        && !FurnaceMargin.allows(temperature, solidus);
  }

  /** What is expected of a set temperature. */
  String expected() {
    return "at most "
        + BothUnits.temperature(FurnaceMargin.highestSetting(solidus))
        + ": "
        + metal
        + " begins to melt at "
        + BothUnits.temperature(solidus)
        + ", less "
        + BothUnits.difference(FurnaceMargin.TOLERANCE)
        + " for the furnace and a margin of "
        + BothUnits.difference(FurnaceMargin.MARGIN)
        + (suitable.isEmpty()
            ? ""
            : "; for a full treatment of this pair take " + String.join(" or ", suitable));
  }

  private static Optional<Composition> weldMetal(Plates plates, FillerChoice choice) {
    Optional<Composition> left = plates.left().composition();
    Optional<Composition> right = plates.right().composition();
    if (left.isEmpty() || right.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(WeldPool.composition(left.get(), right.get(), choice, choice.dilution()));
  }
}
