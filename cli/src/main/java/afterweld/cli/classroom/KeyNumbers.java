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
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The few numbers that tell two sections apart, for people: metric, with all their digits. */
final class KeyNumbers {
  private final SectionProfile profile;
  private final JointReport joint;
  private final List<Map<String, Object>> rows = new ArrayList<>();

  KeyNumbers(SectionProfile profile, JointReport joint) {
    this.profile = profile;
    this.joint = joint;
  }

  /** Rows of group, key, name, unit and value. */
  List<Map<String, Object>> rows() {
    for (int state = 1; state < profile.states().size(); state++) {
      rowsOf(state, profile.label(state), state == 1 ? "_welded" : "_treated");
    }
    String weld = "the weld";
    row(weld, "softened_width", "softened width", "mm", affectedWidth(profile) * 1e3);
    row(weld, "bead_width", "bead width, arc side", "mm", beadWidth() * 1e3);
    row(weld, "heat_input", "heat into the metal", "kJ/mm", heatInput() * 1e-6);
    row(weld, "magnesium", "Mg, weld metal", "wt%", share(Element.MG));
    row(weld, "silicon", "Si, weld metal", "wt%", share(Element.SI));
    return rows;
  }

  private void rowsOf(int state, String group, String end) {
    double hardness = lowest(state, Strength::hardness);
    row(group, "lowest_hardness" + end, "lowest hardness", "HV", hardness);
    row(group, "edge_hardness" + end, besideName(), "HV", besideWeld(state));
    row(group, "lowest_yield" + end, "lowest yield", "MPa", lowest(state, Strength::yield) * 1e-6);
    row(group, "weld_yield" + end, "yield, weld centre", "MPa", centre(state) * 1e-6);
    JointStrength flush = flush(state);
    double tensile = flush.tensile().orElse(Double.NaN);
    row(group, "tensile" + end, "joint tensile, flush", "MPa", tensile * 1e-6);
    Map<String, Object> fails = begun(group, "fails_in" + end, "fails in");
    fails.put("text", flush.failsIn().isEmpty() ? "–" : String.join(" or ", flush.failsIn()));
  }

  private void row(String group, String key, String name, String unit, double value) {
    Map<String, Object> row = begun(group, key, name);
    row.put("unit", unit);
    row.put("value", Json.number(value));
  }

  private Map<String, Object> begun(String group, String key, String name) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("group", group);
    row.put("key", key);
    row.put("name", name);
    rows.add(row);
    return row;
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

  private String besideName() {
    boolean alike = profile.weldCase().left().equals(profile.weldCase().right());
    return alike ? "hardness beside weld" : "hardness beside weld, softer side";
  }

  /** Hardness of the first station that never melted, on the softer side. */
  private double besideWeld(int state) {
    return Stream.of(-1, 1)
        .flatMap(side -> firstUnmelted(side).stream())
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .reduce(Math::min)
        .orElse(Double.NaN);
  }

  /**
   * The station nearest to the weld centre that never melted.
   *
   * @param side 1 for the right, -1 for the left
   */
  private Optional<Station> firstUnmelted(int side) {
    return profile.stations().stream()
        .filter(station -> side * station.distance() > 0 && station.zone() != Zone.FUSION)
        .filter(station -> station.zone() != Zone.PARTIALLY_MELTED)
        .min(Comparator.comparingDouble(station -> Math.abs(station.distance())));
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
