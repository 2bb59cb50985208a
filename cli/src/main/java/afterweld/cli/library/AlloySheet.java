package afterweld.cli.library;

import afterweld.choice.filler.FillerUse;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.material.Alloy;
import afterweld.material.Element;
import afterweld.material.Fact;
import afterweld.material.Source;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;

/** One alloy or filler in full: what the model uses, then every value with status and source. */
final class AlloySheet {
  private static final int VALUE_WIDTH = 17;

  private final Alloy alloy;
  private final UnitSystem units;
  private final List<String> sources;

  AlloySheet(Alloy alloy, UnitSystem units) {
    this.alloy = alloy;
    this.units = units;
    this.sources =
        new ArrayList<>(
            new LinkedHashSet<>(
                alloy.facts().stream().map(Fact::source).map(Source::text).toList()));
  }

  /** The whole sheet. */
  String text() {
    return head()
        + use()
        + "\nComposition (wt%, rest aluminium)\n"
        + composition()
        + valuesHead()
        + facts()
        + "\nSources\n"
        + sourceList();
  }

  private String head() {
    return Paragraph.of(alloy.name() + ", " + family() + ", sold as " + AlloyList.uses(alloy))
        + "melting range "
        + AlloyList.meltingRange(alloy, units)
        + " "
        + units.temperatureUnit()
        + "\n"
        + standardSchedule();
  }

  private String use() {
    List<String> lines = FillerUse.of(alloy).lines();
    return lines.isEmpty() ? "" : "\nUse as a filler\n" + Paragraph.each(lines);
  }

  private String valuesHead() {
    return units == UnitSystem.US
        ? "\nValues of the library, temperatures and strengths in °F and ksi\n"
        : "\nValues as the library states them\n";
  }

  private String family() {
    return switch (alloy.family()) {
      case WROUGHT_HEAT_TREATABLE -> "wrought, hardened by precipitates of magnesium and silicon";
      case CAST_HEAT_TREATABLE -> "casting, hardened by precipitates of magnesium and silicon";
      case WORK_HARDENED -> "wrought, hardened by cold work only";
      case FILLER_ONLY -> "filler metal";
    };
  }

  private String standardSchedule() {
    return alloy
        .schedule()
        .map(
            schedule ->
                Paragraph.of(
                    "standard treatment after welding: solution "
                        + temperature(schedule.solutionTemperature())
                        + " "
                        + hours(schedule.soak())
                        + ", quench, age "
                        + temperature(schedule.ageTemperature())
                        + " "
                        + hours(schedule.ageTime())
                        + " ("
                        + schedule.source().status().label()
                        + ")"))
        .orElse("");
  }

  private String temperature(double kelvin) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, kelvin) + " " + units.temperatureUnit();
  }

  private static String hours(double seconds) {
    return String.format(Locale.ROOT, "%.1f h", seconds / 3600).replace(".0 ", " ");
  }

  private String composition() {
    TextTable table = new TextTable("element", " min", " max", " nominal", " model");
    for (Element element : Element.values()) {
      Alloy.Limit limit = alloy.limits().get(element);
      double share = alloy.composition().of(element);
      if (limit != null || share > 0) {
        table.row(
            element.symbol(),
            limit == null || limit.min() == 0 ? "" : percent(limit.min()),
            limit == null ? "" : percent(limit.max()),
            nominal(element),
            percent(share));
      }
    }
    return table.text();
  }

  private String nominal(Element element) {
    return alloy.facts().stream()
        .filter(fact -> fact.property().equals("nominal"))
        .filter(fact -> fact.qualifier().equals(element.symbol()))
        .map(Fact::value)
        .findFirst()
        .orElse("");
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.2f", share);
  }

  private String facts() {
    TextTable table = new TextTable("property", "of", "value", "status", " see");
    for (Fact fact : alloy.facts()) {
      List<String> value = Paragraph.lines(new FactText(fact, units).value(), VALUE_WIDTH);
      String source = "[" + (sources.indexOf(fact.source().text()) + 1) + "]";
      String status = fact.source().status().label();
      table.row(fact.property(), fact.qualifier(), value.get(0), status, source);
      value.stream().skip(1).forEach(more -> table.row("", "", "  " + more, "", ""));
    }
    return table.text();
  }

  private String sourceList() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < sources.size(); i++) {
      text.append(Paragraph.hanging("[" + (i + 1) + "] ", sources.get(i)));
    }
    return text.toString();
  }
}
