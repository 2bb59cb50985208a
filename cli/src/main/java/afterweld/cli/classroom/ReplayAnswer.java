package afterweld.cli.classroom;

import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.section.WeldReplay;
import afterweld.section.WeldReplay.AtStation;
import afterweld.section.WeldReplay.Moment;
import afterweld.strength.Strength;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A replay as pictures: for each phase a row of moments that all stations share, and what each
 * station is like then, to a tenth. Between computed moments the page gets straight lines.
 */
final class ReplayAnswer {
  private static final double ARC_IN_VIEW = 0.030;
  private static final int APPROACHING = 14;
  private static final int LEAVING = 56;
  private static final double FIRST_MOMENT = 0.1;
  private static final int AFTERWARDS = 24;

  private final WeldReplay replay;
  private final WeldCase weldCase;

  ReplayAnswer(WeldReplay replay, WeldCase weldCase) {
    this.replay = replay;
    this.weldCase = weldCase;
  }

  /** Keys and values for JSON. */
  Map<String, Object> keys() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(
        "distance_mm",
        Json.numbers(replay.stations().stream().mapToDouble(s -> s.distance() * 1e3)));
    List<Map<String, Object>> phases = new ArrayList<>();
    for (int phase = 0; phase < replay.phases().size(); phase++) {
      phases.add(phase(phase));
    }
    json.put("phases", phases);
    return json;
  }

  private Map<String, Object> phase(int phase) {
    List<Double> times = times(phase);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", replay.phases().get(phase));
    json.put("arc", phase < weldCase.passes().size());
    json.put("time_s", times);
    List<List<Moment>> moments = times.stream().map(time -> picture(phase, time)).toList();
    json.put("temperature_C", values(moments, m -> METRIC.temperature(m.temperature())));
    json.put("hardness_HV", values(moments, m -> m.strength().hardness()));
    json.put("yield_MPa", values(moments, m -> METRIC.stress(m.strength().yield())));
    json.put("tensile_MPa", values(moments, m -> METRIC.stress(m.strength().tensile())));
    return json;
  }

  private List<Double> times(int phase) {
    double end =
        replay.stations().stream()
            .map(station -> station.phases().get(phase))
            .mapToDouble(moments -> moments.get(moments.size() - 1).time())
            .max()
            .orElseThrow();
    return phase < weldCase.passes().size() ? roundTheArc(phase, end) : growing(end);
  }

  /** Evenly while the arc comes, then in growing steps. */
  private List<Double> roundTheArc(int pass, double end) {
    double coming = ARC_IN_VIEW / weldCase.passes().get(pass).travelSpeed();
    List<Double> times = new ArrayList<>();
    for (int i = APPROACHING; i >= 0; i--) {
      times.add(0.0 - coming * i / APPROACHING);
    }
    for (int i = 0; i <= LEAVING; i++) {
      times.add(FIRST_MOMENT * Math.pow(end / FIRST_MOMENT, (double) i / LEAVING));
    }
    return times;
  }

  private static List<Double> growing(double end) {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i <= AFTERWARDS; i++) {
      double share = (double) i / AFTERWARDS;
      times.add(end * share * share);
    }
    return times;
  }

  /** Every station at a time. */
  private List<Moment> picture(int phase, double time) {
    return replay.stations().stream().map(station -> at(station, phase, time)).toList();
  }

  private static List<List<Double>> values(
      List<List<Moment>> pictures, ToDoubleFunction<Moment> value) {
    return pictures.stream()
        .map(
            picture ->
                Json.numbers(picture.stream().mapToDouble(m -> tenth(value.applyAsDouble(m)))))
        .toList();
  }

  private static double tenth(double value) {
    return Double.isFinite(value) ? Math.round(10 * value) / 10.0 : value;
  }

  /** The station at a time; before its first moment that one, after its last that. */
  static Moment at(AtStation station, int phase, double time) {
    List<Moment> moments = station.phases().get(phase);
    int next = 0;
    while (next < moments.size() && moments.get(next).time() < time) {
      next++;
    }
    if (next == 0) {
      return moments.get(0);
    }
    if (next == moments.size()) {
      return moments.get(next - 1);
    }
    return between(moments.get(next - 1), moments.get(next), time);
  }

  private static Moment between(Moment before, Moment after, double time) {
    double share = (time - before.time()) / (after.time() - before.time());
    Strength one = before.strength();
    Strength other = after.strength();
    return new Moment(
        time,
        mixed(before.temperature(), after.temperature(), share),
        new Strength(
            mixed(one.yield(), other.yield(), share),
            mixed(one.tensile(), other.tensile(), share),
            mixed(one.hardness(), other.hardness(), share)));
  }

  private static double mixed(double one, double other, double share) {
    return one + share * (other - one);
  }
}
