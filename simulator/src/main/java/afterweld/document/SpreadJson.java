package afterweld.document;

import static afterweld.document.JsonNumber.days;
import static afterweld.document.JsonNumber.megapascal;

import afterweld.choice.answer.Judgement;
import afterweld.quantity.UnitSystem;
import afterweld.section.ErrorBand;
import afterweld.strength.ModelError;
import afterweld.study.MedianShift;
import afterweld.study.OrderRanks;
import afterweld.study.Quantiles;
import afterweld.study.Share;
import afterweld.study.SpreadStudy;
import afterweld.study.SpreadStudy.Influence;
import afterweld.study.SpreadStudy.StationBand;
import afterweld.study.SpreadStudy.View;
import afterweld.study.UncertainInput;
import afterweld.weld.WeldCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The result of {@code spread} for programs. */
public final class SpreadJson {
  private static final double MEGA = 1e-6;
  private static final List<String> OF_A_VIEW =
      List.of(
          "joint_tensile_MPa",
          "joint_proof_MPa",
          "deciding_yield_MPa",
          "lowest_hardness_HV",
          "joint_tensile_MPa_p5_interval",
          "fails_in",
          "fails_undecided",
          "without_proof",
          "chance_met",
          "chance_strengths_met",
          "not_met_whatever_the_strength");
  private static final List<String> OF_ALL_JOINTS =
      List.of(
          "melting_possible",
          "first_order_of",
          "first_order",
          "first_order_error",
          "first_order_with_model_error",
          "first_order_with_model_error_error");

  private SpreadJson() {}

  /** The JSON text. */
  public static String of(WeldCase weldCase, SpreadStudy study, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("requirement", FindingsJson.requirement(study.judgement(UnitSystem.METRIC)));
    root.put("waiting_days", days(weldCase.naturalAge()));
    root.put("predicted_tensile_MPa", megapascal(study.joint().tensile()));
    root.put("predicted_proof_MPa", megapascal(study.joint().proof()));
    root.put("median_shift", study.shift().map(SpreadJson::shift).orElse(null));
    root.put("runs", count(study.runs()));
    root.put("seed", study.seed());
    root.put("left_out", count(study.leftOut()));
    root.put("not_sound", count(study.unsound().size()));
    root.put("plain_random_joints_for_95_of_95", count(OrderRanks.runsFor(0.95, 0.95)));
    root.put("inputs", study.inputs().stream().map(SpreadJson::input).toList());
    root.put("model_error", modelError(study.modelError()));
    root.put("stations", study.stations().stream().map(SpreadJson::station).toList());
    putView(root, study.total(), "");
    putView(root, study.process(), "_inputs_only");
    root.put("melting_possible", study.meltingPossible().map(SpreadJson::share).orElse(null));
    root.put("first_order_of", study.total().target());
    root.put("first_order", indices(study.process(), Influence::index));
    root.put("first_order_error", indices(study.process(), Influence::error));
    root.put("first_order_with_model_error", indices(study.total(), Influence::index));
    root.put("first_order_with_model_error_error", indices(study.total(), Influence::error));
    notices.addTo(root);
    return JsonText.of(root);
  }

  /** The same keys where no joint was simulated: null where a joint would have given a value. */
  public static String none(WeldCase weldCase, Judgement judgement, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("requirement", FindingsJson.requirement(judgement));
    root.put("waiting_days", days(weldCase.naturalAge()));
    List.of("predicted_tensile_MPa", "predicted_proof_MPa", "median_shift")
        .forEach(key -> root.put(key, null));
    root.put("runs", count(0));
    List.of("seed", "left_out", "not_sound").forEach(key -> root.put(key, null));
    root.put("plain_random_joints_for_95_of_95", count(OrderRanks.runsFor(0.95, 0.95)));
    List.of("inputs", "model_error", "stations").forEach(key -> root.put(key, null));
    List.of("", "_inputs_only")
        .forEach(suffix -> OF_A_VIEW.forEach(key -> root.put(key + suffix, null)));
    OF_ALL_JOINTS.forEach(key -> root.put(key, null));
    notices.addTo(root);
    return JsonText.of(root);
  }

  private static Map<String, Object> shift(MedianShift shift) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("tensile_MPa", megapascal(shift.middle() - shift.predicted()));
    Map<String, Object> pulls = new LinkedHashMap<>();
    shift.pulls().forEach(one -> pulls.put(one.input(), megapascal(one.shift())));
    json.put("pulled_by_MPa", pulls);
    return json;
  }

  private static JsonNumber count(long value) {
    return new JsonNumber(value, 0);
  }

  private static Map<String, Object> input(UncertainInput input) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", input.name());
    json.put("group", input.group());
    json.put("assumed", input.words());
    json.put("shape", input.spread().shape());
    return json;
  }

  private static Map<String, Object> modelError(ModelError error) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("hardness", residuals(error.hardness()));
    json.put("yield", residuals(error.yield()));
    json.put("tensile", residuals(error.tensile()));
    return json;
  }

  private static Map<String, Object> residuals(ModelError.Residuals residuals) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("relative_standard_deviation", deviations(residuals));
    json.put("values", count(residuals.values()));
    json.put("published_values", count(residuals.published()));
    json.put("left_out", count(residuals.leftOut()));
    json.put("assumed", residuals.assumed());
    return json;
  }

  private static Map<String, Object> deviations(ModelError.Residuals residuals) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("treated", deviation(ErrorBand.TREATED, residuals));
    json.put("affected", deviation(ErrorBand.AFFECTED, residuals));
    json.put("weld_metal", deviation(ErrorBand.WELD_METAL, residuals));
    return json;
  }

  private static JsonNumber deviation(ErrorBand band, ModelError.Residuals residuals) {
    return new JsonNumber(band.share(residuals) / ErrorBand.DEVIATIONS, 3);
  }

  private static Map<String, Object> station(StationBand band) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("distance_mm", new JsonNumber(band.distance() * 1e3, 3));
    json.put("hardness_HV", quantiles(band.hardness(), 1));
    json.put("yield_MPa", quantiles(band.yield(), MEGA));
    json.put("hardness_HV_inputs_only", quantiles(band.hardnessProcess(), 1));
    json.put("yield_MPa_inputs_only", quantiles(band.yieldProcess(), MEGA));
    return json;
  }

  private static Map<String, Object> quantiles(Quantiles values, double factor) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("p5", new JsonNumber(values.p5() * factor, 1));
    json.put("p50", new JsonNumber(values.p50() * factor, 1));
    json.put("p95", new JsonNumber(values.p95() * factor, 1));
    return json;
  }

  private static void putView(Map<String, Object> root, View view, String suffix) {
    root.put("joint_tensile_MPa" + suffix, quantiles(view.tensile(), MEGA));
    root.put("joint_proof_MPa" + suffix, quantiles(view.proof(), MEGA));
    root.put("deciding_yield_MPa" + suffix, quantiles(view.decidingYield(), MEGA));
    root.put("lowest_hardness_HV" + suffix, quantiles(view.lowestHardness(), 1));
    root.put(
        "joint_tensile_MPa_p5_interval" + suffix,
        view.tensileP5()
            .map(p5 -> List.of(megapascal(p5.low()), megapascal(p5.high())))
            .orElse(null));
    Map<String, Object> places = new LinkedHashMap<>();
    view.failsIn().forEach((zone, share) -> places.put(zone, new JsonNumber(share.estimate(), 3)));
    root.put("fails_in" + suffix, places);
    root.put("fails_undecided" + suffix, new JsonNumber(view.undecided().estimate(), 3));
    root.put("without_proof" + suffix, count(view.withoutProof()));
    root.put("chance_met" + suffix, view.met().map(SpreadJson::share).orElse(null));
    root.put(
        "chance_strengths_met" + suffix, view.strengthsMet().map(SpreadJson::share).orElse(null));
    Map<String, Object> beyond = new LinkedHashMap<>();
    view.beyondStrength().forEach((why, share) -> beyond.put(why, share(share)));
    root.put("not_met_whatever_the_strength" + suffix, beyond);
  }

  private static Map<String, Object> share(Share share) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("estimate", new JsonNumber(share.estimate(), 3));
    json.put("low", new JsonNumber(share.low(), 3));
    json.put("high", new JsonNumber(share.high(), 3));
    return json;
  }

  private static Map<String, Object> indices(View view, ToDoubleFunction<Influence> value) {
    Map<String, Object> json = new LinkedHashMap<>();
    view.firstOrder()
        .forEach(one -> json.put(one.input(), new JsonNumber(value.applyAsDouble(one), 3)));
    return json;
  }
}
