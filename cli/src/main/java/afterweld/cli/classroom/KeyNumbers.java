package afterweld.cli.classroom;

import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.JointStrength.Bead;
import afterweld.material.Element;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import afterweld.thermal.PassHeat;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** The few numbers that tell two sections apart, for people: metric, with all their digits. */
final class KeyNumbers {
  private final SectionProfile profile;
  private final JointReport joint;
  private final List<Map<String, Object>> rows = new ArrayList<>();

  KeyNumbers(SectionProfile profile, JointReport joint) {
    this.profile = profile;
    this.joint = joint;
  }

  /** Rows of key, name, unit and value. */
  List<Map<String, Object>> rows() {
    for (int state = 1; state < profile.states().size(); state++) {
      rowsOf(state);
    }
    row("softened_width", "softened and melted width", "mm", affectedWidth(profile) * 1e3);
    row("bead_width", "bead width on the arc side", "mm", beadWidth() * 1e3);
    row("heat_input", "heat into the metal", "kJ/mm", heatInput() * 1e-6);
    row("magnesium", "magnesium in the weld metal", "wt%", share(Element.MG));
    row("silicon", "silicon in the weld metal", "wt%", share(Element.SI));
    return rows;
  }

  private void rowsOf(int state) {
    String key = state == 1 ? "welded" : "treated";
    String name = profile.states().get(state);
    row(
        "lowest_hardness_" + key,
        name + ": lowest hardness",
        "HV",
        lowest(state, Strength::hardness));
    row(
        "lowest_yield_" + key,
        name + ": lowest yield",
        "MPa",
        lowest(state, Strength::yield) * 1e-6);
    row("weld_yield_" + key, name + ": yield at the weld centre", "MPa", centre(state) * 1e-6);
    row("edge_hardness_" + key, name + ": hardness beside the weld", "HV", besideWeld(state));
    JointStrength flush = flush(state);
    row(
        "tensile_" + key,
        name + ": joint tensile, flush",
        "MPa",
        flush.tensile().orElse(Double.NaN) * 1e-6);
    Map<String, Object> fails = new LinkedHashMap<>();
    fails.put("key", "fails_in_" + key);
    fails.put("name", name + ": fails in");
    fails.put("text", flush.failsIn().isEmpty() ? "–" : String.join(" or ", flush.failsIn()));
    rows.add(fails);
  }

  private void row(String key, String name, String unit, double value) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("key", key);
    row.put("name", name);
    row.put("unit", unit);
    row.put("value", Json.number(value));
    rows.add(row);
  }

  private JointStrength flush(int state) {
    return joint.strengths().stream()
        .filter(strength -> strength.state() == state && strength.bead() == Bead.FLUSH)
        .findFirst()
        .orElseThrow();
  }

  private double lowest(int state, ToDoubleFunction<Strength> value) {
    return profile.stations().stream()
        .mapToDouble(station -> value.applyAsDouble(station.estimates().get(state).middle()))
        .reduce(Math::min)
        .orElseThrow();
  }

  private double centre(int state) {
    Station nearest = profile.stations().get(0);
    for (Station station : profile.stations()) {
      nearest = Math.abs(station.distance()) < Math.abs(nearest.distance()) ? station : nearest;
    }
    return nearest.estimates().get(state).middle().yield();
  }

  /** Hardness of the first station on the right that never melted. */
  private double besideWeld(int state) {
    return profile.stations().stream()
        .filter(station -> station.distance() > 0 && station.zone() != Zone.FUSION)
        .filter(station -> station.zone() != Zone.PARTIALLY_MELTED)
        .findFirst()
        .map(station -> station.estimates().get(state).middle().hardness())
        .orElse(Double.NaN);
  }

  /** From the first to the last place that is not base, m. */
  static double affectedWidth(SectionProfile profile) {
    List<ZoneSpan> affected =
        profile.zones().stream().filter(span -> span.zone() != Zone.BASE).toList();
    return affected.isEmpty() ? 0 : affected.get(affected.size() - 1).to() - affected.get(0).from();
  }

  private double beadWidth() {
    return 2 * profile.passes().stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow();
  }

  private double heatInput() {
    return profile.passes().stream()
        .mapToDouble(heat -> heat.netPower() / heat.pass().travelSpeed())
        .sum();
  }

  private double share(Element element) {
    return profile.weldMetal().composition().of(element);
  }
}
