package afterweld.cli.profile;

import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.AlongWeld.AtPlace;
import afterweld.section.AlongWeld.Sections;
import afterweld.section.SectionProfile;
import afterweld.strength.Strength;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Collectors;

/** How a weld differs along its way, for a person. */
final class AlongWeldView {
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
    double here = AtPlace.lowest(section, Strength::yield);
    return along.stated().places().stream()
        .filter(at -> at.lowest(Strength::yield) < (1 - WEAKER) * here)
        .min(Comparator.comparingDouble(at -> at.lowest(Strength::yield)))
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

  private String[] cells(AtPlace at, UnitSystem units) {
    return new String[] {
      along.label(at.place()),
      distance(units, at.fromStart()),
      distance(units, at.beadWidth()),
      distance(units, at.softened(section)),
      OutputQuantity.YIELD.text(units, at.lowest(Strength::yield)),
      OutputQuantity.HARDNESS.text(units, at.lowest(Strength::hardness))
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
        + distance(units, other.end().softened(section))
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
    double start = sections.lastPass().current();
    return sections.endCurrent() == 1
        ? String.format(Locale.ROOT, "%.0f A", start)
        : String.format(Locale.ROOT, "%.0f A to %.0f A", start, start * sections.endCurrent());
  }

  private static String distance(UnitSystem units, double metres) {
    return OutputQuantity.DISTANCE.text(units, metres);
  }
}
