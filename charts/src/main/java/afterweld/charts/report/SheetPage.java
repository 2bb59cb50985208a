package afterweld.charts.report;

import afterweld.choice.FurnaceSheet;
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
    return new HtmlTemplate("sheet.html")
        .filled(
            Map.of(
                "pressure",
                cautions,
                "title",
                sheet.title(),
                "origin",
                sheet.ownSchedule()
                    ? "Schedule as stated in the case."
                    : "Standard schedule of the base, since the case states none.",
                "refusals",
                sheet.refusals(),
                "lines",
                sheet.lines().stream()
                    .map(line -> Map.of("what", line.what(), "text", line.text()))
                    .toList(),
                "hasExpected",
                !sheet.expected().isEmpty(),
                "expected",
                sheet.expected().stream().map(SheetPage::expected).toList()));
  }

  private static Map<String, String> expected(FurnaceSheet.Expected expected) {
    return Map.of(
        "place", expected.place(),
        "vickers", whole(expected.vickers()),
        "brinell", whole(expected.brinell()),
        "rockwell", expected.rockwell().map(SheetPage::whole).orElse("–"),
        "accept", whole(expected.acceptFrom()),
        "softMeans", expected.softMeans());
  }

  private static String whole(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
