package afterweld.choice;

import afterweld.section.BothUnits;
import afterweld.section.Side;
import afterweld.section.WeldCase;
import afterweld.section.WeldMetalTrial;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Two different bases in one furnace: which of them the common schedule does not suit. */
final class SharedTreatment {
  /** A base that keeps this share of what its own schedule gives does not suffer (assumed). */
  private static final double SUITED = 0.97;

  private SharedTreatment() {}

  /** A sentence for each base that loses by the schedule of the case, one alloy or two. */
  static List<String> shortfalls(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .distinct()
        .flatMap(side -> loss(weldCase, side).stream())
        .toList();
  }

  /** The same for two different bases; empty for one alloy. */
  static List<String> losses(WeldCase weldCase) {
    if (weldCase.left().alloy().equals(weldCase.right().alloy())) {
      return List.of();
    }
    return shortfalls(weldCase);
  }

  private static Optional<String> loss(WeldCase weldCase, Side side) {
    return StandardTreatment.full(side)
        .flatMap(
            own -> {
              double shared = WeldMetalTrial.of(weldCase).base(side).yield();
              double alone = WeldMetalTrial.of(weldCase.withAfterWeld(own)).base(side).yield();
              return shared < SUITED * alone
                  ? Optional.of(sentence(weldCase, side, shared, alone))
                  : Optional.empty();
            });
  }

  private static String sentence(WeldCase weldCase, Side side, double shared, double own) {
    boolean alone = weldCase.left().alloy().equals(weldCase.right().alloy());
    return (alone ? "The schedule falls short: " : "The schedule does not suit both bases: ")
        + side.alloy().name()
        + " suffers, with "
        + BothUnits.stress(shared)
        + " yield in place of "
        + BothUnits.stress(own)
        + " by its own schedule.";
  }
}
