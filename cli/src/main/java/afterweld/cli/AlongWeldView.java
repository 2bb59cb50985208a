package afterweld.cli;

import afterweld.section.AlongWeld;
import afterweld.section.AlongWeld.AtPlace;
import afterweld.section.AlongWeld.Sections;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.UnitSystem;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** How a weld differs along its way, for a person and for programs. */
final class AlongWeldView {
  private static final int AS_WELDED = 1;

  private final AlongWeld along;

  AlongWeldView(AlongWeld along) {
    this.along = along;
  }

  /** A row for each place, at the current of the case and at another. */
  String table(UnitSystem units) {
    String length = " (" + units.lengthUnit() + ")";
    TextTable table =
        new TextTable(
            "place",
            "current (A)",
            " at" + length,
            " bead" + length,
            " softened" + length,
            " yield (" + units.stressUnit() + ")",
            " HV");
    all()
        .forEach(
            sections -> sections.places().forEach(at -> table.row(cells(sections, at, units))));
    return table.text()
        + Paragraph.of(
            "Bead on the arc side; softened from edge to edge; lowest yield and hardness as"
                + " welded.")
        + Paragraph.of(aboutCurrent());
  }

  private Stream<Sections> all() {
    return Stream.concat(Stream.of(along.stated()), along.other().stream());
  }

  private String[] cells(Sections sections, AtPlace at, UnitSystem units) {
    return new String[] {
      along.label(at.place()),
      currents(sections),
      distance(units, at.fromStart()),
      distance(units, at.beadWidth()),
      distance(units, softened(at.profile())),
      OutputQuantity.YIELD.text(units, lowest(at, Strength::yield)),
      OutputQuantity.HARDNESS.text(units, lowest(at, Strength::hardness))
    };
  }

  /** Of the last pass, from start to end. */
  private static String currents(Sections sections) {
    double start = lastPass(sections).current();
    return sections.endCurrent() == 1
        ? String.format(Locale.ROOT, "%.0f", start)
        : String.format(Locale.ROOT, "%.0f to %.0f", start, start * sections.endCurrent());
  }

  private static Pass lastPass(Sections sections) {
    return sections.passes().get(sections.passes().size() - 1).pass();
  }

  private static String distance(UnitSystem units, double metres) {
    return OutputQuantity.DISTANCE.text(units, metres);
  }

  private String aboutCurrent() {
    if (along.other().isEmpty()) {
      return "The end melts no farther than the middle: the current need not be taken back.";
    }
    Sections other = along.other().get();
    String power = " Power is taken as proportional to the current.";
    return other.endCurrent() == 1
        ? "Below, the same current half way held constant." + power
        : String.format(
                Locale.ROOT,
                "Below, the same current half way, falling evenly to %.0f %% of its first value: so"
                    + " the end would melt no farther than half way.",
                100 * other.endCurrent())
            + power;
  }

  /** Distance between the outer edges of what is not base, m. */
  private static double softened(SectionProfile profile) {
    List<ZoneSpan> changed =
        profile.zones().stream().filter(span -> span.zone() != Zone.BASE).toList();
    return changed.isEmpty() ? 0 : changed.get(changed.size() - 1).to() - changed.get(0).from();
  }

  private static double lowest(AtPlace at, ToDoubleFunction<Strength> quantity) {
    return at.profile().stations().stream()
        .mapToDouble(station -> quantity.applyAsDouble(asWelded(station)))
        .filter(Double::isFinite)
        .min()
        .orElse(Double.NaN);
  }

  private static Strength asWelded(Station station) {
    return station.estimates().get(AS_WELDED).middle();
  }

  /** A list of the places for programs. */
  List<Map<String, Object>> json() {
    List<Map<String, Object>> places = new ArrayList<>();
    all().forEach(sections -> sections.places().forEach(at -> places.add(json(sections, at))));
    return places;
  }

  private Map<String, Object> json(Sections sections, AtPlace at) {
    double start = lastPass(sections).current();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("place", along.label(at.place()));
    json.put("from_start_mm", new JsonNumber(at.fromStart() * 1e3, 1));
    json.put("start_current_A", new JsonNumber(start, 1));
    json.put("end_current_A", new JsonNumber(start * sections.endCurrent(), 1));
    json.put("bead_width_mm", new JsonNumber(at.beadWidth() * 1e3, 2));
    json.put("softened_mm", new JsonNumber(softened(at.profile()) * 1e3, 1));
    json.put("lowest_yield_MPa", new JsonNumber(lowest(at, Strength::yield) / 1e6, 1));
    json.put("lowest_hardness_HV", new JsonNumber(lowest(at, Strength::hardness), 1));
    return json;
  }
}
