package afterweld.charts.report;

import afterweld.choice.FurnaceSheet;
import afterweld.choice.answer.Objection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The furnace sheet as a page. */
public final class SheetPage {
  private SheetPage() {}

  /**
   * The page.
   *
   * @param cautions what must be read with it
   */
  public static String of(FurnaceSheet sheet, List<String> cautions) {
    Map<String, Object> values = new HashMap<>();
    values.put("title", sheet.title());
    values.put("origin", sheet.origin());
    values.put("hasUnknown", !sheet.soundness().sound());
    values.put("unknown", sheet.soundness().reasons());
    values.put("hasObjections", !texts(sheet, false).isEmpty());
    values.put("objections", texts(sheet, false));
    values.put("hasNotes", !texts(sheet, true).isEmpty());
    values.put("notes", texts(sheet, true));
    values.put(
        "lines",
        sheet.lines().stream()
            .map(line -> Map.of("what", line.what(), "text", line.text()))
            .toList());
    values.put("hasExpected", !sheet.expected().isEmpty());
    values.put("expected", sheet.expected().stream().map(SheetPage::expected).toList());
    values.put("onHardness", sheet.onHardness());
    values.put("hasWarnings", !sheet.warnings().isEmpty());
    values.put("warnings", sheet.warnings());
    values.put("cautions", cautions);
    return new HtmlTemplate("sheet.html").filled(values);
  }

  private static List<String> texts(FurnaceSheet sheet, boolean noted) {
    return sheet.objections().stream()
        .filter(one -> noted == (one.severity() == Objection.Severity.NOTED))
        .map(Objection::text)
        .toList();
  }

  private static Map<String, String> expected(FurnaceSheet.Expected expected) {
    return Map.of(
        "place", expected.place(),
        "vickers", whole(expected.vickers()),
        "brinell", whole(expected.brinell()),
        "rockwell", expected.rockwell().map(SheetPage::whole).orElse("–"),
        "recheck", expected.recheck().side() + " " + whole(expected.recheck().limit()),
        "means", expected.recheck().means());
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
