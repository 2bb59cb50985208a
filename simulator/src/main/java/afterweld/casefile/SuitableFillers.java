package afterweld.casefile;

import afterweld.choice.filler.FillerPurpose;
import afterweld.choice.filler.UsualFillers;
import afterweld.material.Alloy;
import java.util.List;
import java.util.Optional;

/** The fillers to offer when a case names none: those that suit its bases as welded, best first. */
final class SuitableFillers {
  private SuitableFillers() {}

  /** Names out of {@code known} that suit both sides; all of them if nothing is certain. */
  static List<String> of(Optional<Alloy> left, Optional<Alloy> right, List<String> known) {
    if (left.isEmpty() || right.isEmpty()) {
      return known;
    }
    List<String> both =
        UsualFillers.of(left.get(), right.get()).suitable(FillerPurpose.WELDED).stream()
            .filter(known::contains)
            .toList();
    return both.isEmpty() ? known : both;
  }
}
