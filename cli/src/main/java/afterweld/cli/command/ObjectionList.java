package afterweld.cli.command;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.choice.answer.Objection.Subject;
import afterweld.cli.terminal.Paragraph;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What stands against a filler or a heat treatment, for people. */
final class ObjectionList {
  private ObjectionList() {}

  /** For a person; empty where nothing stands against it. */
  static String text(List<Objection> objections) {
    return block("Against this filler", objections, one -> one.subject() == Subject.FILLER)
        + block("Against this heat treatment", objections, ObjectionList::againstTreatment)
        + block("On this heat treatment", objections, one -> one.severity() == Severity.NOTED);
  }

  private static boolean againstTreatment(Objection one) {
    return one.subject() == Subject.HEAT_TREATMENT && one.severity() != Severity.NOTED;
  }

  private static String block(String head, List<Objection> objections, Predicate<Objection> which) {
    String list =
        objections.stream()
            .filter(which)
            .map(one -> Paragraph.hanging("- ", one.text()))
            .collect(Collectors.joining());
    return list.isEmpty() ? "" : Paragraph.of(head) + list;
  }
}
