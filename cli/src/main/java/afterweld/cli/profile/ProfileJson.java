package afterweld.cli.profile;

import static afterweld.quantity.OutputQuantity.DISTANCE;
import static afterweld.quantity.OutputQuantity.HARDNESS;
import static afterweld.quantity.OutputQuantity.PEAK_TEMPERATURE;
import static afterweld.quantity.OutputQuantity.TENSILE;
import static afterweld.quantity.OutputQuantity.YIELD;
import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.cli.command.Notices;
import afterweld.cli.command.ObjectionList;
import afterweld.cli.command.Quantities;
import afterweld.cli.command.SoundnessView;
import afterweld.cli.command.Standing;
import afterweld.cli.terminal.JsonNumber;
import afterweld.cli.terminal.JsonText;
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
import java.util.stream.Stream;

/**
 * The result of {@code profile} for programs: keys that stay, metric units in every key, a fixed
 * number of decimals, null where the model gives no value.
 */
final class ProfileJson {
  private static final double DAY = 86400;
  private static final List<OutputQuantity> STRENGTHS = List.of(HARDNESS, YIELD, TENSILE);

  private final SectionProfile profile;
  private final JointReport joint;
  private final Judgement judgement;
  private final List<Objection> objections;
  private final Optional<AlongWeld> along;

  ProfileJson(
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
  String text() {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", profile.weldCase().title());
    root.put("soundness", SoundnessView.json(profile.soundness()));
    root.put("states", profile.states());
    root.put("waiting_days", new JsonNumber(profile.weldCase().naturalAge() / DAY, 4));
    root.put("stations", profile.stations().stream().map(ProfileJson::station).toList());
    root.put("zones", profile.zones().stream().map(ProfileJson::zone).toList());
    root.put("weld_metal", weldMetal(profile.weldMetal()));
    along.ifPresent(view -> root.put("along_weld", new AlongWeldView(view, profile).json()));
    JointJson jointJson = new JointJson(profile, joint);
    root.put("joint", jointJson.strengths());
    root.putAll(jointJson.checks());
    joint.member().ifPresent(member -> root.put("member", jointJson.member(member)));
    root.put("design_codes", jointJson.codes());
    root.put("design_codes_note", joint.codesNote());
    root.put("softened_reach", jointJson.softened(profile));
    root.put("requirement", Standing.json(judgement));
    root.put("objections", ObjectionList.json(objections));
    root.put(
        "warnings",
        Notices.warnings(
            Stream.concat(Notices.of(profile).stream(), joint.warnings().stream()).toList()));
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
