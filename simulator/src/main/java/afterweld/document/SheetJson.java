package afterweld.document;

import afterweld.choice.FurnaceSheet;
import afterweld.choice.FurnaceSheet.Expected;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.section.soundness.Soundness;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The result of {@code sheet} for programs: the furnace sheet, or why there is none. */
public final class SheetJson {
  private SheetJson() {}

  /**
   * The JSON text of a sheet.
   *
   * @param standing of the case as written
   */
  public static String of(FurnaceSheet sheet, Judgement standing, List<String> cautions) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", sheet.title());
    root.put("own_schedule", sheet.ownSchedule());
    root.put("lines", sheet.lines().stream().map(SheetJson::line).toList());
    root.put("expected", sheet.expected().stream().map(SheetJson::expected).toList());
    root.put("on_hardness", sheet.onHardness());
    root.put("requirement", FindingsJson.requirement(standing));
    new Notices(sheet.soundness(), sheet.objections(), List.of(), cautions)
        .after("treatment", sheet.warnings())
        .addTo(root);
    return JsonText.of(root);
  }

  /**
   * The JSON text where there is nothing to send to a furnace.
   *
   * @param reasons why
   */
  public static String none(
      String title,
      List<String> reasons,
      Judgement standing,
      Soundness soundness,
      List<Objection> objections) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", title);
    root.put("lines", List.of());
    root.put("expected", List.of());
    root.put("reasons", reasons);
    root.put("requirement", FindingsJson.requirement(standing));
    root.put("soundness", FindingsJson.soundness(soundness));
    root.put("objections", FindingsJson.objections(objections));
    return JsonText.of(root);
  }

  private static Map<String, Object> line(FurnaceSheet.Line line) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("what", line.what());
    json.put("text", line.text());
    return json;
  }

  private static Map<String, Object> expected(Expected expected) {
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
