package afterweld.cli.choice;

import afterweld.choice.FurnaceSheet;
import afterweld.choice.FurnaceSheet.Expected;
import afterweld.choice.answer.Objection;
import afterweld.cli.command.Notices;
import afterweld.cli.command.ObjectionList;
import afterweld.cli.command.SoundnessView;
import afterweld.cli.command.Standing;
import afterweld.cli.terminal.JsonNumber;
import afterweld.cli.terminal.JsonText;
import afterweld.cli.terminal.Paragraph;
import afterweld.section.soundness.Soundness;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The furnace sheet as text and as JSON. */
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

  /** The same for a program. */
  static String noneJson(
      String title,
      List<String> reasons,
      Soundness soundness,
      List<Objection> objections,
      Standing standing) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", title);
    root.put("lines", List.of());
    root.put("expected", List.of());
    root.put("reasons", reasons);
    root.put("requirement", standing.json());
    root.put("soundness", SoundnessView.json(soundness));
    root.put("objections", ObjectionList.json(objections));
    return JsonText.of(root);
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

  static String json(FurnaceSheet sheet, Standing standing, List<String> cautions) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", sheet.title());
    root.put("own_schedule", sheet.ownSchedule());
    root.put("lines", sheet.lines().stream().map(SheetText::json).toList());
    root.put("expected", sheet.expected().stream().map(SheetText::json).toList());
    root.put("on_hardness", sheet.onHardness());
    root.put("requirement", standing.json());
    new Notices(sheet.soundness(), sheet.objections(), List.of(), cautions)
        .after("treatment", sheet.warnings())
        .addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> json(FurnaceSheet.Line line) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("what", line.what());
    json.put("text", line.text());
    return json;
  }

  private static Map<String, Object> json(Expected expected) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("place", expected.place());
    json.put("hardness_HV", new JsonNumber(expected.vickers(), 1));
    json.put("hardness_HB", new JsonNumber(expected.brinell(), 1));
    json.put(
        "hardness_HRB", expected.rockwell().map(value -> new JsonNumber(value, 1)).orElse(null));
    JsonNumber limit = new JsonNumber(expected.recheck().limit(), 1);
    boolean over = expected.recheck().over();
    json.put("recheck_under_HV", over ? null : limit);
    json.put("recheck_over_HV", over ? limit : null);
    json.put("such_a_reading_would_mean", expected.recheck().means());
    return json;
  }
}
