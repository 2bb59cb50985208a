package afterweld.cli.profile;

import afterweld.cli.terminal.JsonNumber;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.AlongWeld.AtPlace;
import afterweld.section.AlongWeld.Sections;
import afterweld.section.SectionProfile;
import afterweld.section.Softening;
import afterweld.section.Station;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.StationTimeline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How a weld differs along its way, for a person and for programs. */
final class AlongWeldView {
  private static final int AS_WELDED = 1;

  /** A place weaker than the section by less than this share is as strong. */
  private static final double WEAKER = 0.03;

  private final AlongWeld along;
  private final SectionProfile section;

  /**
   * A view.
   *
   * @param section of the same weld, which all else is judged by
   */
  AlongWeldView(AlongWeld along, SectionProfile section) {
    this.along = along;
    this.section = section;
  }

  /** A row for each place, and what another fall of the current would change. */
  String table(UnitSystem units) {
    String length = " (" + units.lengthUnit() + ")";
    TextTable table =
        new TextTable(
            "place",
            " from start" + length,
            " bead" + length,
            " softened" + length,
            " yield (" + units.stressUnit() + ")",
            " HV");
    along.stated().places().forEach(at -> table.row(cells(at, units)));
    return table.text()
        + Paragraph.of(
            "Bead on the arc side; softened from edge to edge, where the base loses over 2 % of its"
                + " yield; lowest yield and hardness as welded.")
        + weaker(units)
        + along.other().map(other -> Paragraph.of(sentence(other, units))).orElse("");
  }

  /** Where the weld is weaker than in the section, which is where it got hottest. */
  private String weaker(UnitSystem units) {
    double here = lowest(section, Strength::yield);
    return along.stated().places().stream()
        .filter(at -> lowest(at, Strength::yield) < (1 - WEAKER) * here)
        .min(Comparator.comparingDouble(at -> lowest(at, Strength::yield)))
        .map(
            at ->
                Paragraph.of(
                    "The section that all else speaks of yields at "
                        + OutputQuantity.YIELD.text(units, here)
                        + " "
                        + units.stressUnit()
                        + ". At the place called "
                        + along.label(at.place())
                        + " the weld is weaker: judge it there too (position: "
                        + along.label(at.place())
                        + ")."))
        .orElse("");
  }

  private Stream<Sections> all() {
    return Stream.concat(Stream.of(along.stated()), along.other().stream());
  }

  private String[] cells(AtPlace at, UnitSystem units) {
    return new String[] {
      along.label(at.place()),
      distance(units, at.fromStart()),
      distance(units, at.beadWidth()),
      distance(units, softened(at)),
      OutputQuantity.YIELD.text(units, lowest(at, Strength::yield)),
      OutputQuantity.HARDNESS.text(units, lowest(at, Strength::hardness))
    };
  }

  private String sentence(Sections other, UnitSystem units) {
    String fall =
        other.endCurrent() == 1
            ? "held constant at " + currents(other)
            : "falling evenly from " + currents(other);
    String beads =
        other.places().stream()
            .map(at -> along.label(at.place()) + " " + distance(units, at.beadWidth()))
            .collect(Collectors.joining(", "));
    String unit = " " + units.lengthUnit();
    return "With the same current half way but "
        + fall
        + ", the bead would be: "
        + beads
        + unit
        + "; softened at the "
        + along.label(other.end().place())
        + ": "
        + distance(units, softened(other.end()))
        + unit
        + ". "
        + evenness(other)
        + "Power is taken as proportional to the current.";
  }

  /** What a fall of the current cannot do: it never makes a start that the arc did not warm. */
  private String evenness(Sections other) {
    if (other.startsCold()) {
      return "No bead forms at the start with it: hold the arc there until the pool has formed,"
          + " preheat, or run on over the start. ";
    }
    if (other.endsCold()) {
      return "No bead is left at the "
          + along.label(other.end().place())
          + " with it: take the current back less. ";
    }
    return other.even() ? "" : "The bead is not even with it. ";
  }

  /** Of the last pass, from start to end. */
  private static String currents(Sections sections) {
    double start = lastPass(sections).current();
    return sections.endCurrent() == 1
        ? String.format(Locale.ROOT, "%.0f A", start)
        : String.format(Locale.ROOT, "%.0f A to %.0f A", start, start * sections.endCurrent());
  }

  private static Pass lastPass(Sections sections) {
    return sections.passes().get(sections.passes().size() - 1).pass();
  }

  private static String distance(UnitSystem units, double metres) {
    return OutputQuantity.DISTANCE.text(units, metres);
  }

  /** Distance between the outer edges of what got hot enough to lose strength, m. */
  private double softened(AtPlace at) {
    Softening softening = at.profile().orElse(section).softening();
    return reach(at.left(), softening.left(), softening.right())
        + reach(at.right(), softening.right(), softening.left());
  }

  /**
   * A leg that softened to its end knows no threshold: the other side's is taken if it is lower.
   */
  private static double reach(StationTimeline heat, Softening.OfSide own, Softening.OfSide other) {
    if (!own.any()) {
      return 0;
    }
    boolean lower = own.throughout() && other.threshold() && other.from() < own.from();
    return heat.reach(lower ? other.from() : own.from());
  }

  private static double lowest(AtPlace at, ToDoubleFunction<Strength> quantity) {
    return at.profile().map(profile -> lowest(profile, quantity)).orElse(Double.NaN);
  }

  private static double lowest(SectionProfile profile, ToDoubleFunction<Strength> quantity) {
    return profile.stations().stream()
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
    json.put("softened_mm", new JsonNumber(softened(at) * 1e3, 1));
    json.put("lowest_yield_MPa", new JsonNumber(lowest(at, Strength::yield) / 1e6, 1));
    json.put("lowest_hardness_HV", new JsonNumber(lowest(at, Strength::hardness), 1));
    return json;
  }
}
