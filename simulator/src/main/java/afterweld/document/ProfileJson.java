package afterweld.document;

import static afterweld.document.JsonNumber.days;
import static afterweld.quantity.OutputQuantity.DISTANCE;
import static afterweld.quantity.OutputQuantity.HARDNESS;
import static afterweld.quantity.OutputQuantity.PEAK_TEMPERATURE;
import static afterweld.quantity.OutputQuantity.TENSILE;
import static afterweld.quantity.OutputQuantity.YIELD;
import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.joint.JointReport;
import afterweld.quantity.OutputQuantity;
import afterweld.section.AlongWeld;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import afterweld.weldmetal.WeldMetal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The result of {@code profile} for programs: keys that stay, metric units in every key, a fixed
 * number of decimals, null where the model gives no value.
 */
public final class ProfileJson {
  private static final List<OutputQuantity> STRENGTHS = List.of(HARDNESS, YIELD, TENSILE);

  private final SectionProfile profile;
  private final JointReport joint;
  private final Judgement judgement;
  private final List<Objection> objections;
  private final Optional<AlongWeld> along;

  /**
   * The JSON of a section.
   *
   * @param judgement with its reasons in metric units
   * @param along the weld along its way, if it has a start and an end that count
   */
  public ProfileJson(
      SectionProfile profile,
      JointReport joint,
      Judgement judgement,
      List<Objection> objections,
      Optional<AlongWeld> along) {
    this.profile = profile;
    this.joint = joint;
    this.judgement = judgement;
    this.objections = objections;
    this.along = along;
  }

  /** The JSON text, ending in a line break. */
  public String text() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", profile.weldCase().title());
    root.put("soundness", FindingsJson.soundness(profile.soundness()));
    root.put("states", profile.states());
    root.put("waiting_days", days(profile.weldCase().naturalAge()));
    root.put("stations", profile.stations().stream().map(ProfileJson::station).toList());
    root.put("zones", profile.zones().stream().map(ProfileJson::zone).toList());
    root.put("weld_metal", weldMetal(profile.weldMetal()));
    along.ifPresent(view -> root.put("along_weld", AlongWeldJson.of(view, profile)));
    JointJson jointJson = new JointJson(profile, joint);
    root.put("joint", jointJson.strengths());
    root.putAll(jointJson.checks());
    joint.member().ifPresent(member -> root.put("member", jointJson.member(member)));
    root.put("design_codes", jointJson.codes());
    root.put("design_codes_note", joint.codesNote());
    root.put("softened_reach", jointJson.softened(profile));
    root.put("requirement", FindingsJson.requirement(judgement));
    root.put("objections", FindingsJson.objections(objections));
    root.put("warnings", FindingsJson.warnings(Notices.of(profile, joint.warnings())));
    root.put("cautions", profile.cautions());
    return JsonText.of(root);
  }

  private static Map<String, Object> station(Station station) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(DISTANCE.key(METRIC), number(DISTANCE, station.distance()));
    json.put("side", station.place().label());
    json.put("zone", station.zone().label());
    json.put(PEAK_TEMPERATURE.key(METRIC), number(PEAK_TEMPERATURE, station.peakTemperature()));
    STRENGTHS.forEach(
        quantity -> json.put(quantity.key(METRIC), values(station, quantity, Estimate::middle)));
    for (OutputQuantity quantity : STRENGTHS) {
      json.put(quantity.key(METRIC) + "_low", values(station, quantity, Estimate::low));
      json.put(quantity.key(METRIC) + "_high", values(station, quantity, Estimate::high));
    }
    return json;
  }

  private static List<JsonNumber> values(
      Station station, OutputQuantity quantity, Function<Estimate, Strength> end) {
    return station.estimates().stream()
        .map(estimate -> number(quantity, Quantities.of(end.apply(estimate), quantity)))
        .toList();
  }

  private static Map<String, Object> zone(ZoneSpan span) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("zone", span.zone().label());
    json.put("side", span.place().label());
    json.put("from_mm", number(DISTANCE, span.from()));
    json.put("to_mm", number(DISTANCE, span.to()));
    json.put(
        "lowest_hardness_HV",
        span.lowestHardness().stream().map(value -> number(HARDNESS, value)).toList());
    return json;
  }

  private static Map<String, Object> weldMetal(WeldMetal metal) {
    Map<String, Object> composition = new LinkedHashMap<>();
    metal
        .composition()
        .toMap()
        .forEach((element, share) -> composition.put(element.symbol(), new JsonNumber(share, 3)));
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("filler", metal.filler());
    json.put("dilution", new JsonNumber(metal.dilution(), 3));
    json.put("dilution_low", new JsonNumber(metal.dilutionLow(), 3));
    json.put("dilution_high", new JsonNumber(metal.dilutionHigh(), 3));
    json.put("composition_wt", composition);
    json.put("solidus_C", number(PEAK_TEMPERATURE, metal.solidus()));
    json.put("crack_tendency", metal.crackTendency().label());
    return json;
  }

  private static JsonNumber number(OutputQuantity quantity, double si) {
    return new JsonNumber(quantity.in(METRIC, si), quantity == DISTANCE ? 3 : 1);
  }
}
