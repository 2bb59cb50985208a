package afterweld.cli;

import afterweld.choice.FurnaceSheet;
import afterweld.choice.FurnaceSheet.Expected;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** The furnace sheet as text and as JSON. */
final class SheetText {
  private SheetText() {}

  static String of(FurnaceSheet sheet, List<String> cautions) {
    String origin =
        sheet.ownSchedule()
            ? "Schedule as stated in the case."
            : "Standard schedule of the base, since the case states none.";
    String lines =
        sheet.lines().stream()
            .map(line -> Paragraph.hanging("- ", line.what() + ": " + line.text()))
            .collect(Collectors.joining());
    String expected =
        sheet.expected().stream()
            .map(one -> Paragraph.hanging("- ", expected(one)))
            .collect(Collectors.joining());
    return Paragraph.of("Furnace sheet: " + sheet.title())
        + Paragraph.of(origin)
        + "\n"
        + lines
        + "\n"
        + Paragraph.of("Hardness to expect after ageing")
        + expected
        + Paragraph.each(cautions);
  }

  private static String expected(Expected expected) {
    return String.format(
        Locale.ROOT,
        "%s: %.0f HV (%.0f HB%s); re-check under %.0f HV. A soft reading would mean: %s.",
        expected.place(),
        expected.vickers(),
        expected.brinell(),
        expected
            .rockwell()
            .map(value -> String.format(Locale.ROOT, ", %.0f HRB", value))
            .orElse(""),
        expected.acceptFrom(),
        expected.softMeans());
  }

  static String json(FurnaceSheet sheet, List<String> cautions) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", sheet.title());
    root.put("own_schedule", sheet.ownSchedule());
    root.put(
        "lines",
        sheet.lines().stream()
            .map(line -> Map.of("what", line.what(), "text", line.text()))
            .toList());
    root.put("expected", sheet.expected().stream().map(SheetText::json).toList());
    root.put("cautions", cautions);
    return JsonText.of(root);
  }

  private static Map<String, Object> json(Expected expected) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("place", expected.place());
    json.put("hardness_HV", new JsonNumber(expected.vickers(), 1));
    json.put("hardness_HB", new JsonNumber(expected.brinell(), 1));
    json.put(
        "hardness_HRB", expected.rockwell().map(value -> new JsonNumber(value, 1)).orElse(null));
    json.put("recheck_under_HV", new JsonNumber(expected.acceptFrom(), 1));
    json.put("a_soft_reading_would_mean", expected.softMeans());
    return json;
  }
}
