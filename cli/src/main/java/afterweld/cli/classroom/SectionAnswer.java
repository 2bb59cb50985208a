package afterweld.cli.classroom;

import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.quantity.OutputQuantity;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import afterweld.thermal.PassHeat;
import afterweld.weld.Warning;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** A section for the page: columns of numbers in metric units with all their digits. */
final class SectionAnswer {
  private static final double DAY = 86400;

  private final SectionProfile profile;

  SectionAnswer(SectionProfile profile) {
    this.profile = profile;
  }

  /** Keys and values for JSON. */
  Map<String, Object> keys() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("states", profile.states());
    json.put("waiting_days", profile.weldCase().naturalAge() / DAY);
    json.put("distance_mm", column(station -> station.distance() * 1e3));
    json.put("zone", profile.stations().stream().map(s -> s.zone().label()).toList());
    json.put("peak_temperature_C", column(s -> METRIC.temperature(s.peakTemperature())));
    json.put("hardness_HV", bands(Strength::hardness, OutputQuantity.HARDNESS));
    json.put("yield_MPa", bands(Strength::yield, OutputQuantity.YIELD));
    json.put("tensile_MPa", bands(Strength::tensile, OutputQuantity.TENSILE));
    json.put("zones", profile.zones().stream().map(SectionAnswer::zone).toList());
    json.put("passes", profile.passes().stream().map(SectionAnswer::pass).toList());
    json.put("traverse_depth_mm", profile.weldCase().depth() * 1e3);
    json.put("controls", new ControlValues(profile.weldCase()).keys());
    return json;
  }

  private List<Double> column(ToDoubleFunction<Station> value) {
    return Json.numbers(profile.stations().stream().mapToDouble(value));
  }

  private Map<String, Object> bands(ToDoubleFunction<Strength> value, OutputQuantity quantity) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("middle", states(Estimate::middle, value, quantity));
    json.put("low", states(Estimate::low, value, quantity));
    json.put("high", states(Estimate::high, value, quantity));
    return json;
  }

  /** One list per state. */
  private List<List<Double>> states(
      Function<Estimate, Strength> end, ToDoubleFunction<Strength> value, OutputQuantity quantity) {
    return IntStream.range(0, profile.states().size())
        .mapToObj(
            state ->
                column(
                    station ->
                        quantity.in(
                            METRIC,
                            value.applyAsDouble(end.apply(station.estimates().get(state))))))
        .toList();
  }

  private static Map<String, Object> zone(ZoneSpan span) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("zone", span.zone().label());
    json.put("from_mm", span.from() * 1e3);
    json.put("to_mm", span.to() * 1e3);
    return json;
  }

  private static Map<String, Object> pass(PassHeat heat) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("efficiency", heat.efficiency());
    json.put("half_width_mm", heat.fusionHalfWidth() * 1e3);
    json.put("offset_mm", heat.pass().offset() * 1e3);
    return json;
  }

  static Map<String, Object> warning(Warning warning) {
    return Map.of("text", warning.text());
  }
}
