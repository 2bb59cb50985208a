package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.DesignCodeValue;
import afterweld.joint.FilletWeld;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.MemberReport;
import afterweld.joint.SoftenedReach;
import afterweld.joint.ThinCylinder;
import afterweld.section.Cautions;
import afterweld.section.SectionProfile;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The joint's part of the JSON result: metric, null where nothing is predicted. */
final class JointJson {
  private final SectionProfile profile;
  private final JointReport joint;

  /** The JSON of the joint of a section. */
  JointJson(SectionProfile profile, JointReport joint) {
    this.profile = profile;
    this.joint = joint;
  }

  /** What the joint carries, state by state. */
  List<Map<String, Object>> strengths() {
    return Stream.concat(joint.strengths().stream(), joint.overTwoInches().stream())
        .map(this::strength)
        .toList();
  }

  private Map<String, Object> strength(JointStrength strength) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("state", profile.states().get(strength.state()));
    json.put("gauge_mm", new JsonNumber(strength.gauge() * 1e3, 1));
    json.put("bead", strength.bead().label());
    json.put("proof_MPa", megapascal(strength.proof().orElse(Double.NaN)));
    json.put("proof_note", strength.proofNote());
    json.put("tensile_MPa", megapascal(strength.tensile().orElse(Double.NaN)));
    json.put("lowest_yield_MPa", megapascal(strength.lowestYield()));
    CrossWeldTension pull = strength.middle().orElse(null);
    json.put("efficiency_left", pull == null ? null : share(pull.tensileEfficiency().left()));
    json.put("efficiency_right", pull == null ? null : share(pull.tensileEfficiency().right()));
    json.put("fails_in", pull == null ? null : pull.failure().zone());
    json.put("runner_up", pull == null ? null : runnerUp(pull));
    json.put(
        "elongation_percent",
        strength
            .middle()
            .flatMap(CrossWeldTension::elongation)
            .map(band -> List.of(percent(band.low()), percent(band.high())))
            .orElse(null));
    return json;
  }

  private static String runnerUp(CrossWeldTension pull) {
    return pull.failure().undecided() ? pull.failure().runnerUp().orElseThrow().zone() : null;
  }

  private static JsonNumber share(double value) {
    return new JsonNumber(value, 3);
  }

  private static JsonNumber percent(double value) {
    return new JsonNumber(100 * value, 1);
  }

  /** Fillet and tube, where the case has them. */
  Map<String, Object> checks() {
    Map<String, Object> json = new LinkedHashMap<>();
    joint.checks().fillet().ifPresent(fillet -> json.put("fillet", fillet(fillet)));
    joint
        .checks()
        .treatedFillet()
        .ifPresent(fillet -> json.put("fillet_after_heat_treatment", fillet(fillet)));
    joint.checks().tube().ifPresent(tube -> json.put("tube", tube(tube)));
    joint
        .checks()
        .treatedTube()
        .ifPresent(tube -> json.put("tube_after_heat_treatment", tube(tube)));
    return json;
  }

  private static Map<String, Object> fillet(FilletWeld fillet) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("throat_mm", new JsonNumber(fillet.throat() * 1e3, 2));
    json.put("length_mm", new JsonNumber(fillet.length() * 1e3, 1));
    json.put("throat_force_kN", new JsonNumber(fillet.throatForce() * 1e-3, 1));
    json.put("leg_force_kN", new JsonNumber(fillet.legForce() * 1e-3, 1));
    json.put("force_kN", new JsonNumber(fillet.force() * 1e-3, 1));
    json.put("design_force_kN", new JsonNumber(fillet.designForce() * 1e-3, 1));
    return json;
  }

  private static Map<String, Object> tube(ThinCylinder tube) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("hoop_MPa", megapascal(tube.hoop()));
    json.put("axial_MPa", megapascal(tube.axial()));
    json.put("von_mises_MPa", megapascal(tube.equivalent()));
    json.put("soft_band_yields_at_MPa", megapascal(tube.bandYieldPressure()));
    json.put("base_yields_at_MPa", megapascal(tube.baseYieldPressure()));
    json.put("note", Cautions.PRESSURE);
    return json;
  }

  /** The member with the weld along it. */
  Map<String, Object> member(MemberReport member) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("width_mm", new JsonNumber(member.width() * 1e3, 1));
    json.put("states", member.states().stream().map(state -> memberState(member, state)).toList());
    json.put("note", MemberReport.NOTE);
    return json;
  }

  private Map<String, Object> memberState(MemberReport member, MemberReport.State state) {
    Optional<MemberReport.Codes> codes = member.codesFor(state);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("state", profile.states().get(state.state()));
    json.put("predicted_proof_kN", kilonewton(state.proofForce()));
    json.put("predicted_greatest_kN", kilonewton(state.greatestForce()));
    json.put("equivalent_reach_mm", new JsonNumber(state.equivalentReach() * 1e3, 1));
    json.put("en_kN", codes.map(code -> kilonewton(code.en())).orElse(null));
    json.put("en_design_kN", codes.map(code -> kilonewton(code.enDesign())).orElse(null));
    json.put("us_weighted_kN", codes.map(code -> kilonewton(code.us())).orElse(null));
    json.put("en_reach_mm", codes.map(code -> new JsonNumber(code.reach() * 1e3, 1)).orElse(null));
    return json;
  }

  private static JsonNumber kilonewton(double newton) {
    return new JsonNumber(newton * 1e-3, 1);
  }

  /** How far each side is softened as welded, beside what the code counts. */
  List<Map<String, Object>> softened(SectionProfile profile) {
    return SoftenedReach.of(profile, joint.codes()).stream().map(JointJson::softened).toList();
  }

  private static Map<String, Object> softened(SoftenedReach reach) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("side", reach.side());
    json.put(
        "hardness_back_at_90_percent_mm", new JsonNumber(reach.dip().orElse(Double.NaN) * 1e3, 1));
    json.put("zones_end_mm", new JsonNumber(reach.anyLoss() * 1e3, 1));
    json.put("code_mm", new JsonNumber(reach.code().orElse(Double.NaN) * 1e3, 1));
    json.put("design_mm", new JsonNumber(reach.design() * 1e3, 1));
    return json;
  }

  /** What the design codes give. */
  List<Map<String, Object>> codes() {
    return joint.codes().stream().map(JointJson::code).toList();
  }

  private static Map<String, Object> code(DesignCodeValue value) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("code", value.code());
    json.put("clause", value.clause());
    json.put("item", value.item());
    json.put("value_" + value.unit(), new JsonNumber(value.value(), 1));
    json.put("status", value.status());
    return json;
  }
}
