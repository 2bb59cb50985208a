package afterweld.cli.choice;

import afterweld.choice.FurnaceSheet;
import afterweld.choice.FurnaceSheet.Expected;
import afterweld.cli.terminal.Paragraph;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The furnace sheet as text. */
final class SheetText {
  private SheetText() {}

  static String of(FurnaceSheet sheet, List<String> cautions) {
    String lines =
        sheet.lines().stream()
            .map(line -> Paragraph.hanging("- ", line.what() + ": " + line.text()))
            .collect(Collectors.joining());
    return Paragraph.of("Furnace sheet: " + sheet.title())
        + Paragraph.of(sheet.origin())
        + "\n"
        + lines
        + expected(sheet)
        + list("What the prediction says of this treatment", sheet.warnings())
        + "\n"
        + Paragraph.each(cautions);
  }

  private static String list(String head, List<String> sentences) {
    return sentences.isEmpty()
        ? ""
        : "\n"
            + head
            + "\n"
            + sentences.stream()
                .map(sentence -> Paragraph.hanging("- ", sentence))
                .collect(Collectors.joining());
  }

  private static String expected(FurnaceSheet sheet) {
    String notes = sheet.onHardness().stream().map(Paragraph::of).collect(Collectors.joining());
    if (sheet.expected().isEmpty()) {
      return notes.isEmpty() ? "" : "\n" + notes;
    }
    return list(
            "Hardness to expect after the treatment",
            sheet.expected().stream().map(SheetText::expected).toList())
        + notes;
  }

  /** Why there is no sheet, and what a reader can do about it. */
  static String none(String title, List<String> reasons) {
    return Paragraph.of("No furnace sheet: " + title) + Paragraph.each(reasons);
  }

  private static String expected(Expected expected) {
    return String.format(
        Locale.ROOT,
        "%s: %.0f HV (%.0f HB%s); re-check %s %.0f HV. Such a reading would mean: %s.",
        expected.place(),
        expected.vickers(),
        expected.brinell(),
        expected
            .rockwell()
            .map(value -> String.format(Locale.ROOT, ", %.0f HRB", value))
            .orElse(""),
        expected.recheck().side(),
        expected.recheck().limit(),
        expected.recheck().means());
  }
}
