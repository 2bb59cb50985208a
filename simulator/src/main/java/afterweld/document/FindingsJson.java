package afterweld.document;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.section.soundness.Soundness;
import afterweld.weld.Warning;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a case stands, in the keys that every result has. */
public final class FindingsJson {
  private FindingsJson() {}

  /** A judgement, its reasons as it words them; verdict and chance null where nothing is asked. */
  public static Map<String, Object> requirement(Judgement judgement) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("met", judgement.met().orElse(null));
    json.put("verdict", judgement.asked() ? judgement.verdict().label() : null);
    json.put("chance", new JsonNumber(judgement.chance().orElse(Double.NaN), 4));
    json.put("reasons", judgement.reasons());
    return json;
  }

  /** Whether the weld is a joint: {@code sound} is null where nothing was computed. */
  public static Map<String, Object> soundness(Soundness soundness) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(
        "sound",
        switch (soundness.state()) {
          case SOUND -> true;
          case NOT_SOUND, BRITTLE -> false;
          case NOT_COMPUTED -> null;
        });
    json.put("reasons", soundness.reasons());
    json.put("remedies", soundness.remedies());
    return json;
  }

  /** What stands against filler and heat treatment. */
  public static List<Map<String, Object>> objections(List<Objection> objections) {
    return objections.stream().map(FindingsJson::objection).toList();
  }

  private static Map<String, Object> objection(Objection objection) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("against", objection.subject().label());
    json.put("severity", objection.severity().label());
    json.put("text", objection.text());
    return json;
  }

  /** Warnings in their order. */
  public static List<Map<String, Object>> warnings(List<Warning> warnings) {
    return warnings.stream().map(FindingsJson::warning).toList();
  }

  private static Map<String, Object> warning(Warning warning) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", warning.code());
    json.put("text", warning.text());
    return json;
  }
}
