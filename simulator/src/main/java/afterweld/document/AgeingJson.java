package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;
import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.answer.Objection;
import afterweld.section.soundness.Soundness;
import afterweld.study.AgeingStudy;
import afterweld.study.JointAgeing;
import afterweld.study.Ranking;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.weld.WeldCase;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The result of {@code ageing} for programs. */
public final class AgeingJson {
  private AgeingJson() {}

  /**
   * The JSON text.
   *
   * @param study of the metals
   * @param joint what other ageing would make of the joint
   */
  public static String of(
      WeldCase weldCase,
      AgeingStudy study,
      JointAgeing joint,
      List<String> cautions,
      Soundness soundness,
      List<Objection> objections) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("soundness", FindingsJson.soundness(soundness));
    root.put("objections", FindingsJson.objections(objections));
    root.put("curves", study.curves().stream().map(AgeingJson::curve).toList());
    root.put("schedule", study.schedule().map(AgeingJson::schedule).orElse(null));
    root.put("windows", study.windows().stream().map(AgeingJson::window).toList());
    root.put("joint", joint(joint));
    root.put("paint_oven", study.paint().stream().map(AgeingJson::paint).toList());
    root.put("warnings", FindingsJson.warnings(study.warnings()));
    root.put("cautions", cautions);
    return JsonText.of(root);
  }

  private static Map<String, Object> joint(JointAgeing joint) {
    Ranking ranking = joint.ranking();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("ranked_by", RankingJson.rankedBy(joint.aim()));
    json.put("as_welded", RankingJson.joint(joint.aim(), joint.asWelded()));
    json.put("gains", joint.gains());
    json.put("as_written", RankingJson.joint(joint.aim(), joint.asWritten()));
    json.put("schedule", joint.schedule().map(trial -> trial(joint, trial)).orElse(null));
    json.put(
        "best",
        ranking.best().isPresent()
            ? trial(joint, joint.trials().get(ranking.best().getAsInt()))
            : null);
    json.put(
        "as_good_within_1_percent",
        ranking.asGood().stream().map(i -> when(joint.trials().get(i))).toList());
    json.put("trials", joint.trials().stream().map(trial -> trial(joint, trial)).toList());
    return json;
  }

  private static Map<String, Object> when(JointAgeing.Trial trial) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("temperature_C", new JsonNumber(trial.temperature() - ZERO_CELSIUS, 1));
    json.put("time_h", new JsonNumber(trial.time() / 3600, 3));
    return json;
  }

  private static Map<String, Object> trial(JointAgeing joint, JointAgeing.Trial trial) {
    Map<String, Object> json = when(trial);
    json.putAll(RankingJson.joint(joint.aim(), trial.joint()));
    return json;
  }

  private static Map<String, Object> curve(AgeingStudy.Curve curve) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("metal", curve.metal());
    json.put("temperature_C", new JsonNumber(curve.temperature() - ZERO_CELSIUS, 1));
    json.put("time_h", curve.hours().stream().map(hour -> new JsonNumber(hour, 3)).toList());
    json.put(
        "hardness_HV",
        curve.strengths().stream().map(one -> new JsonNumber(one.hardness(), 1)).toList());
    json.put("yield_MPa", curve.strengths().stream().map(one -> megapascal(one.yield())).toList());
    return json;
  }

  private static Map<String, Object> schedule(Age age) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("temperature_C", new JsonNumber(age.temperature() - ZERO_CELSIUS, 1));
    json.put("time_h", new JsonNumber(age.time() / 3600, 3));
    return json;
  }

  private static Map<String, Object> window(AgeingStudy.Window window) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("metal", window.metal());
    json.put("from_h", new JsonNumber(window.from(), 2));
    json.put("to_h", new JsonNumber(window.to(), 2));
    json.put("answers", window.answers());
    json.put("nothing_to_age", window.nothingToAge());
    json.put("peak_yield_MPa", megapascal(window.peak()));
    json.put("scheduled_yield_MPa", megapascal(window.scheduled()));
    return json;
  }

  private static Map<String, Object> paint(AgeingStudy.Paint paint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("metal", paint.metal());
    json.put("temperature_C", new JsonNumber(paint.temperature() - ZERO_CELSIUS, 1));
    json.put("yield_share_left", new JsonNumber(paint.share(), 3));
    return json;
  }
}
