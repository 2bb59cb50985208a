package afterweld.choice;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Requirement;
import afterweld.choice.filler.FillerCheck;
import afterweld.choice.schedule.ScheduleCheck;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * All that stands against a case as it is written: its filler ({@link FillerCheck}) and its heat
 * treatment ({@link ScheduleCheck}). What is objected to is computed, stands before every other
 * answer, and no command ranks it or calls it met: nothing is claimed of its strengths ({@link
 * RequirementCheck}).
 */
public final class CaseObjections {
  private CaseObjections() {}

  /**
   * The gravest first, the filler's first among equals; where a treatment is refused, what refuses
   * it and no more.
   */
  public static List<Objection> of(WeldCase weldCase, Requirement requirement) {
    List<Objection> ofSchedule = ScheduleCheck.of(weldCase, requirement);
    if (ofSchedule.stream().anyMatch(one -> one.severity() == Severity.REFUSED)) {
      return ofSchedule;
    }
    return Stream.concat(FillerCheck.objection(weldCase, requirement).stream(), ofSchedule.stream())
        .sorted(Comparator.comparing(Objection::severity))
        .toList();
  }

  /** Those that are more than remarks. */
  public static List<Objection> serious(WeldCase weldCase, Requirement requirement) {
    return of(weldCase, requirement).stream()
        .filter(objection -> objection.severity() != Severity.NOTED)
        .toList();
  }

  /** What the serious ones are about, as a sentence names it; empty where there are none. */
  static String subjects(List<Objection> serious) {
    return serious.stream()
        .map(objection -> objection.subject().label())
        .distinct()
        .collect(Collectors.joining(" and "));
  }
}
