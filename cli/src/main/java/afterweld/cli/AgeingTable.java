package afterweld.cli;

import afterweld.section.OutputQuantity;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.study.AgeingStudy;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code ageing}. */
final class AgeingTable {
  /** What stands with every number here. */
  static final String CAUTION =
      "Estimates for sound metal, 10 to 20 % either way; a hardness test on the part decides.";

  private static final int EVERY = 5;

  private final WeldCase weldCase;
  private final AgeingStudy study;
  private final List<String> cautions;
  private final UnitSystem units;

  AgeingTable(WeldCase weldCase, AgeingStudy study, List<String> cautions, UnitSystem units) {
    this.weldCase = weldCase;
    this.study = study;
    this.cautions = cautions;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    StringBuilder text = new StringBuilder(Paragraph.of(weldCase.title()));
    if (study.schedule().isEmpty()) {
      return text.append(answer()).toString();
    }
    text.append(Paragraph.of(head(study.schedule().get())));
    study.curves().stream()
        .map(AgeingStudy.Curve::metal)
        .distinct()
        .forEach(metal -> text.append('\n').append(table(metal)));
    text.append('\n').append(paint()).append('\n').append(warnings());
    text.append('\n').append(Paragraph.each(cautions));
    return text.append('\n').append(answer()).toString();
  }

  private String warnings() {
    return study.warnings().stream()
        .map(warning -> Paragraph.hanging("- ", warning.text()))
        .collect(Collectors.joining("", "Warnings\n", ""));
  }

  /** In which state the metals come to the ageing furnace. */
  private String start() {
    boolean dissolved =
        !study.ownSchedule()
            || weldCase.afterWeld().stream()
                .takeWhile(step -> !(step instanceof Age))
                .anyMatch(SolutionTreat.class::isInstance);
    return dissolved
        ? " The metals come to it solution treated and quenched."
        : " The metals come to it as welded: the base in its temper, the weld metal as it froze.";
  }

  private String head(Age age) {
    return "Hardness (HV) after ageing; the schedule is "
        + temperature(age.temperature())
        + " for "
        + hours(age.time() / 3600)
        + (study.ownSchedule() ? "." : ", the standard one, since the case names none.")
        + start();
  }

  private String temperature(double kelvin) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, kelvin) + " " + units.temperatureUnit();
  }

  private static String hours(double hours) {
    return String.format(Locale.ROOT, hours < 10 ? "%.1f h" : "%.0f h", hours);
  }

  private String table(String metal) {
    List<AgeingStudy.Curve> curves =
        study.curves().stream().filter(curve -> curve.metal().equals(metal)).toList();
    String[] head = new String[curves.size() + 1];
    head[0] = name(metal);
    for (int i = 0; i < curves.size(); i++) {
      head[i + 1] = temperature(curves.get(i).temperature());
    }
    TextTable table = new TextTable(head);
    for (int point = 0; point < curves.get(0).hours().size(); point += EVERY) {
      String[] cells = new String[head.length];
      cells[0] = hours(curves.get(0).hours().get(point));
      for (int i = 0; i < curves.size(); i++) {
        double hardness = curves.get(i).strengths().get(point).hardness();
        cells[i + 1] = OutputQuantity.HARDNESS.text(units, hardness);
      }
      table.row(cells);
    }
    return table.text();
  }

  private String name(String metal) {
    if (metal.equals("weld")) {
      return "weld metal";
    }
    return weldCase.left().equals(weldCase.right()) ? "base" : metal + " base";
  }

  private String paint() {
    String sentences =
        study.paint().stream()
            .filter(paint -> !Double.isNaN(paint.share()))
            .map(
                paint ->
                    String.format(
                        Locale.ROOT,
                        "%s %.0f %% at %s",
                        name(paint.metal()),
                        100 * paint.share(),
                        temperature(paint.temperature())))
            .collect(Collectors.joining(", "));
    return Paragraph.of(
        "Yield left of the finished part after 30 minutes in a paint oven: "
            + sentences
            + ". Short reheats of T6 are known to cost a few percent more than computed here.");
  }

  /** The answer only. */
  String answer() {
    if (study.schedule().isEmpty()) {
      return Paragraph.of("No metal of this joint answers to ageing.");
    }
    return study.windows().stream().map(this::window).collect(Collectors.joining());
  }

  private String window(AgeingStudy.Window window) {
    if (Double.isNaN(window.peak())) {
      return Paragraph.of(name(window.metal()) + ": not predicted.");
    }
    double share = window.scheduled() / window.peak();
    String from = window.fromTheStart() ? "from the start" : "from " + hours(window.from());
    String to = window.toTheEnd() ? "the end of the computed 300 h" : hours(window.to());
    String yield = OutputQuantity.YIELD.text(units, window.peak()) + " " + units.stressUnit();
    if (!window.answers()) {
      return Paragraph.of(
          name(window.metal())
              + ": does not answer, ageing adds less than 5 %; 97 % of its highest yield ("
              + yield
              + ") is held "
              + from
              + " to "
              + to
              + ".");
    }
    return Paragraph.of(
        String.format(
            Locale.ROOT,
            "%s: 97 %% of the peak yield (%s) is held %s to %s; the schedule reaches %.0f %% of it.",
            name(window.metal()),
            yield,
            from,
            to,
            100 * share));
  }
}
