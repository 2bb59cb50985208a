package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;

import afterweld.quantity.UnitSystem;
import afterweld.study.Aim;
import afterweld.study.JointPlace;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Joints that are ranked by what a case requires, for programs, always metric. */
final class RankingJson {
  private RankingJson() {}

  /** What they are ranked by. */
  static Map<String, Object> rankedBy(Aim aim) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", aim.name());
    json.put("unit", aim.unit(UnitSystem.METRIC));
    json.put(
        "asked",
        aim.asked()
            .map(asked -> new JsonNumber(aim.in(UnitSystem.METRIC, asked.value()), 1))
            .orElse(null));
    return json;
  }

  /** One of them. */
  static Map<String, Object> joint(Aim aim, JointPlace joint) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("value", new JsonNumber(aim.in(UnitSystem.METRIC, joint.value()), 1));
    json.put("value_low", new JsonNumber(aim.in(UnitSystem.METRIC, joint.valueLow()), 1));
    json.put("joint_proof_MPa", megapascal(joint.figures().proof()));
    json.put("joint_tensile_MPa", megapascal(joint.figures().tensile()));
    json.put("lowest_hardness_HV", new JsonNumber(joint.figures().hardness(), 1));
    json.put("verdict", verdict(aim, joint).orElse(null));
    json.put("blank", joint.blank().isEmpty() ? null : joint.blank());
    json.put("objections", joint.objections());
    return json;
  }

  /** How it stands; empty where no strength is required. */
  static Optional<String> verdict(Aim aim, JointPlace joint) {
    return aim.required() ? Optional.of(joint.judgement().verdict().label()) : Optional.empty();
  }
}
