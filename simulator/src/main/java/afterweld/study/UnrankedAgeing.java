package afterweld.study;

import afterweld.choice.practice.HardeningAge;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.section.CoolAgeing;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Ageings that are computed and yet must not be called best, wherever ageings are compared. */
final class UnrankedAgeing {
  private UnrankedAgeing() {}

  /** Why a case that is aged so is not ranked, though no command objects to it. */
  static List<String> why(WeldCase weldCase) {
    List<String> against = new ArrayList<>();
    if (weldCase.hasCasting()) {
      against.add(CoolAgeing.CASTINGS);
    }
    if (hardening(weldCase).anyMatch(age -> ScheduleCheck.agesShort(weldCase, age))) {
      against.add("Shorter than the trade ages such metal at that temperature.");
    }
    return against;
  }

  private static Stream<Age> hardening(WeldCase weldCase) {
    return HardeningAge.place(weldCase.afterWeld()).stream()
        .mapToObj(place -> (Age) weldCase.afterWeld().get(place));
  }
}
