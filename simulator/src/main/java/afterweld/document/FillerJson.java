package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;

import afterweld.choice.answer.Judgement;
import afterweld.choice.filler.FillerAnswer;
import afterweld.choice.filler.FillerComparison;
import afterweld.choice.filler.FillerOption;
import afterweld.quantity.UnitSystem;
import afterweld.section.soundness.Soundness;
import afterweld.strength.Strength;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The result of {@code fillers} for programs. */
public final class FillerJson {
  private FillerJson() {}

  /**
   * The JSON text.
   *
   * @param standing of the case as written
   */
  public static String of(
      WeldCase weldCase,
      Soundness soundness,
      FillerComparison comparison,
      Judgement standing,
      Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("fillers", comparison.options().stream().map(FillerJson::filler).toList());
    root.put(
        "dilution_curves",
        comparison.options().stream()
            .filter(option -> option.hasFiller() && !option.curve().isEmpty())
            .map(FillerJson::curve)
            .toList());
    root.put("soundness", soundness.state().label());
    root.put("purpose", comparison.purpose().label());
    root.put("guides_for", comparison.usual().pair().map(pair -> pair.bases()).orElse(null));
    root.put("derived", comparison.usual().derived());
    root.put("answer", FillerAnswer.of(comparison, UnitSystem.METRIC));
    root.put("base_yield_MPa", megapascal(comparison.baseWelded()));
    root.put("base_yield_MPa_after_heat_treatment", megapascal(comparison.baseTreated()));
    root.put("best_over_band", comparison.bestOverBand());
    root.put("requirement", FindingsJson.requirement(standing));
    notices.addTo(root);
    return JsonText.of(root);
  }

  /** The same where none makes a sound joint of the weld. */
  public static String none(WeldCase weldCase, Judgement standing, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("fillers", List.of());
    root.put("requirement", FindingsJson.requirement(standing));
    notices.addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> filler(FillerOption option) {
    Map<String, Object> composition = new LinkedHashMap<>();
    option
        .composition()
        .toMap()
        .forEach((element, share) -> composition.put(element.symbol(), new JsonNumber(share, 3)));
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("filler", option.filler());
    json.put("dilution", new JsonNumber(option.dilution(), 3));
    json.put("composition_wt", composition);
    json.put("yield_MPa", pair(option, Strength::yield));
    json.put("tensile_MPa", pair(option, Strength::tensile));
    json.put("heat_treatable", option.answer().label());
    json.put(
        "answers_from_dilution",
        option.answersFrom().isPresent()
            ? new JsonNumber(option.answersFrom().getAsDouble(), 2)
            : null);
    json.put("crack_tendency", option.crack().label());
    json.put(
        "crack_tendency_over_band",
        option.crackOverBand().stream().map(crack -> crack.label()).toList());
    json.put("anodized_match", option.anodizedMatch());
    json.put(
        "ductility_rating",
        option.ductility().isPresent() ? new JsonNumber(option.ductility().getAsInt(), 0) : null);
    json.put("service_above_65C", option.serviceAbove65C());
    json.put("allowed", option.allowed());
    json.put("reasons", option.sentences());
    return json;
  }

  /** As welded and after heat treatment; null where it is not predicted or not to be shown. */
  private static List<JsonNumber> pair(FillerOption option, ToDoubleFunction<Strength> quantity) {
    List<JsonNumber> pair = new ArrayList<>();
    pair.add(
        option
            .result()
            .map(result -> megapascal(quantity.applyAsDouble(result.asWelded())))
            .orElse(null));
    pair.add(
        option
            .result()
            .map(result -> megapascal(quantity.applyAsDouble(result.treated())))
            .orElse(null));
    return pair;
  }

  private static Map<String, Object> curve(FillerOption option) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("filler", option.filler());
    json.put(
        "dilution",
        option.curve().stream().map(point -> new JsonNumber(point.dilution(), 2)).toList());
    json.put(
        "yield_MPa_after_heat_treatment",
        option.curve().stream().map(point -> megapascal(point.treated())).toList());
    json.put(
        "yield_MPa_as_welded",
        option.curve().stream().map(point -> megapascal(point.welded())).toList());
    return json;
  }
}
