package afterweld.cli.library;

import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.material.Alloy;
import afterweld.material.Element;
import afterweld.material.Temper;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** All alloys and fillers, a line each. */
final class AlloyList {
  private static final int TEMPER_WIDTH = 24;

  private final List<Alloy> alloys;
  private final UnitSystem units;

  AlloyList(List<Alloy> alloys, UnitSystem units) {
    this.alloys = alloys;
    this.units = units;
  }

  /** The table and how to see more. */
  String text() {
    TextTable table =
        new TextTable(
            "alloy",
            "sold as",
            " Si wt%",
            " Mg wt%",
            " melts (" + units.temperatureUnit() + ")",
            "tempers");
    alloys.forEach(alloy -> add(table, alloy));
    return table.text()
        + "\n"
        + Paragraph.of("'afterweld materials ALLOY' shows every value with its source.");
  }

  /** A row, and further ones where there are more tempers than a line holds. */
  private void add(TextTable table, Alloy alloy) {
    List<String> tempers = Paragraph.lines(tempers(alloy), TEMPER_WIDTH);
    table.row(
        alloy.name(),
        uses(alloy),
        share(alloy, Element.SI),
        share(alloy, Element.MG),
        meltingRange(alloy, units),
        tempers.get(0));
    tempers.stream().skip(1).forEach(more -> table.row("", "", "", "", "", more));
  }

  /** Such as {@code base, filler}. */
  static String uses(Alloy alloy) {
    return alloy.uses().stream()
        .map(use -> use.name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(", "));
  }

  /** Solidus to liquidus, without the unit. */
  static String meltingRange(Alloy alloy, UnitSystem units) {
    OutputQuantity temperature = OutputQuantity.PEAK_TEMPERATURE;
    return temperature.text(units, alloy.solidus())
        + " to "
        + temperature.text(units, alloy.liquidus());
  }

  private static String tempers(Alloy alloy) {
    return alloy.tempers().stream().map(Temper::name).collect(Collectors.joining(" "));
  }

  private static String share(Alloy alloy, Element element) {
    return String.format(Locale.ROOT, "%.2f", alloy.composition().of(element));
  }
}
