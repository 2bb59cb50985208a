package afterweld.document;

import static afterweld.quantity.OutputQuantity.DISTANCE;
import static afterweld.quantity.OutputQuantity.HARDNESS;
import static afterweld.quantity.OutputQuantity.PEAK_TEMPERATURE;
import static afterweld.quantity.OutputQuantity.TENSILE;
import static afterweld.quantity.OutputQuantity.YIELD;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * The stations as {@code profile.csv}: a row each, the unit in every column's name, an empty cell
 * where the model gives no value.
 */
public final class ProfileCsv {
  private static final List<OutputQuantity> STRENGTHS = List.of(HARDNESS, YIELD, TENSILE);

  private final SectionProfile profile;
  private final UnitSystem units;

  /** The CSV of a section, in a system of units. */
  public ProfileCsv(SectionProfile profile, UnitSystem units) {
    this.profile = profile;
    this.units = units;
  }

  /** The CSV text with its head. */
  public String text() {
    StringBuilder text = new StringBuilder(line(head()));
    profile.stations().forEach(station -> text.append(line(cells(station))));
    return text.toString();
  }

  private List<String> head() {
    List<String> head = new ArrayList<>();
    head.add(DISTANCE.key(units));
    head.add("side");
    head.add("zone");
    head.add(PEAK_TEMPERATURE.key(units));
    for (String state : profile.states()) {
      STRENGTHS.forEach(quantity -> head.add(quantity.key(units) + " (" + state + ")"));
    }
    return head;
  }

  private List<String> cells(Station station) {
    List<String> cells = new ArrayList<>();
    cells.add(cell(DISTANCE, station.distance()));
    cells.add(station.place().label());
    cells.add(station.zone().label());
    cells.add(cell(PEAK_TEMPERATURE, station.peakTemperature()));
    station
        .estimates()
        .forEach(
            estimate ->
                STRENGTHS.forEach(
                    quantity ->
                        cells.add(cell(quantity, Quantities.of(estimate.middle(), quantity)))));
    return cells;
  }

  private String cell(OutputQuantity quantity, double si) {
    if (!Double.isFinite(si)) {
      return "";
    }
    return BigDecimal.valueOf(quantity.in(units, si))
        .setScale(decimals(quantity), RoundingMode.HALF_EVEN)
        .toPlainString();
  }

  private int decimals(OutputQuantity quantity) {
    boolean metric = units == UnitSystem.METRIC;
    return switch (quantity) {
      case DISTANCE -> metric ? 3 : 4;
      case PEAK_TEMPERATURE, HARDNESS -> 1;
      case YIELD, TENSILE -> metric ? 1 : 2;
    };
  }

  private static String line(List<String> cells) {
    return String.join(",", cells) + "\n";
  }
}
