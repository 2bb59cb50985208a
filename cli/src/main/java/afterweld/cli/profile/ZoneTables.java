package afterweld.cli.profile;

import static afterweld.quantity.OutputQuantity.DISTANCE;
import static afterweld.quantity.OutputQuantity.HARDNESS;
import static afterweld.quantity.OutputQuantity.PEAK_TEMPERATURE;
import static afterweld.quantity.OutputQuantity.TENSILE;
import static afterweld.quantity.OutputQuantity.YIELD;

import afterweld.cli.terminal.TextTable;
import afterweld.document.Quantities;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The zones of a section as tables of at most 80 columns. */
final class ZoneTables {
  private static final int WIDTH = 80;
  private static final int NAME_WIDTH = 16;
  private static final int SIDE_WIDTH = 6;
  private static final int NUMBER_WIDTH = 5;
  private static final int GAP = 3;
  private static final double SAME_PLACE = 1e-9;

  private final SectionProfile profile;
  private final UnitSystem units;

  ZoneTables(SectionProfile profile, UnitSystem units) {
    this.profile = profile;
    this.units = units;
  }

  /** Where the zones lie and how hot they became. */
  String places() {
    String length = " (" + units.lengthUnit() + ")";
    TextTable table =
        new TextTable(
            "zone",
            "side",
            " from" + length,
            " to" + length,
            " peak (" + units.temperatureUnit() + ")");
    for (ZoneSpan span : profile.zones()) {
      table.row(
          span.zone().label(),
          span.place().label(),
          DISTANCE.text(units, span.from()),
          DISTANCE.text(units, span.to()),
          peaks(span));
    }
    return table.text();
  }

  /** Above the melting range the model's temperature is a number without meaning. */
  private String peaks(ZoneSpan span) {
    if (span.zone() == Zone.FUSION) {
      return "molten";
    }
    DoubleSummaryStatistics peaks =
        stations(span).stream().mapToDouble(Station::peakTemperature).summaryStatistics();
    return peaks.getCount() == 0
        ? "–"
        : PEAK_TEMPERATURE.text(units, peaks.getMin())
            + " to "
            + PEAK_TEMPERATURE.text(units, peaks.getMax());
  }

  /** The lowest value in every zone and state; states are numbered as {@link #states} says. */
  String lowest() {
    List<OutputQuantity> columns = List.of(HARDNESS, YIELD, TENSILE);
    int room = (WIDTH - NAME_WIDTH - SIDE_WIDTH) / (GAP + NUMBER_WIDTH * stateCount());
    int together = Math.max(1, Math.min(room, columns.size()));
    List<String> tables = new ArrayList<>();
    for (int i = 0; i < columns.size(); i += together) {
      tables.add(lowest(columns.subList(i, Math.min(i + together, columns.size()))));
    }
    return String.join("\n", tables);
  }

  /** The numbers of the states in the heads of {@link #lowest}. */
  String states() {
    return IntStream.range(0, stateCount())
        .mapToObj(state -> (state + 1) + " " + profile.label(state))
        .collect(Collectors.joining(", "));
  }

  private String head(OutputQuantity quantity) {
    return Quantities.word(quantity) + " (" + quantity.unit(units) + ")";
  }

  private String lowest(List<OutputQuantity> columns) {
    StringBuilder text = new StringBuilder();
    text.append(row("", "", columns, this::head));
    text.append(row("zone", "side", columns, column -> numbers()));
    for (ZoneSpan span : profile.zones()) {
      text.append(
          row(span.zone().label(), span.place().label(), columns, column -> values(span, column)));
    }
    return text.toString();
  }

  private String row(
      String zone,
      String side,
      List<OutputQuantity> columns,
      Function<OutputQuantity, String> group) {
    StringBuilder line = new StringBuilder(pad(zone, NAME_WIDTH) + pad(" " + side, SIDE_WIDTH));
    for (OutputQuantity column : columns) {
      int width = Math.max(NUMBER_WIDTH * stateCount(), head(column).length());
      line.append(right(group.apply(column), GAP + width));
    }
    return line.toString().stripTrailing() + "\n";
  }

  private String numbers() {
    return IntStream.rangeClosed(1, stateCount())
        .mapToObj(state -> right(Integer.toString(state), NUMBER_WIDTH))
        .collect(Collectors.joining());
  }

  private String values(ZoneSpan span, OutputQuantity column) {
    return IntStream.range(0, stateCount())
        .mapToDouble(state -> lowest(span, state, column))
        .mapToObj(value -> right(column.text(units, value), NUMBER_WIDTH))
        .collect(Collectors.joining());
  }

  private double lowest(ZoneSpan span, int state, OutputQuantity column) {
    if (column == HARDNESS) {
      return span.lowestHardness().get(state);
    }
    return stations(span).stream()
        .mapToDouble(station -> Quantities.of(station.estimates().get(state).middle(), column))
        .min()
        .orElse(Double.NaN);
  }

  private List<Station> stations(ZoneSpan span) {
    return profile.stations().stream().filter(station -> lies(station, span)).toList();
  }

  private static boolean lies(Station station, ZoneSpan span) {
    return station.zone() == span.zone()
        && station.place() == span.place()
        && station.distance() >= span.from() - SAME_PLACE
        && station.distance() <= span.to() + SAME_PLACE;
  }

  private int stateCount() {
    return profile.states().size();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length()));
  }

  private static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
