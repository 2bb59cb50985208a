package afterweld.cli;

import afterweld.choice.FillerComparison;
import afterweld.choice.FillerOption;
import afterweld.material.Element;
import afterweld.section.OutputQuantity;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.section.WeldMetalTrial;
import afterweld.strength.Strength;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code fillers}. */
final class FillerTable {
  /** What stands with every number here. */
  static final String CAUTION =
      "Estimates for sound weld metal, 20 % either way; the qualified procedure, the test coupon and"
          + " the governing code decide.";

  private final WeldCase weldCase;
  private final FillerComparison comparison;
  private final UnitSystem units;

  FillerTable(WeldCase weldCase, FillerComparison comparison, UnitSystem units) {
    this.weldCase = weldCase;
    this.comparison = comparison;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    return Paragraph.of(weldCase.title())
        + Paragraph.of(head())
        + "\n"
        + table()
        + "\n"
        + Paragraph.of("Why")
        + reasons()
        + "\n"
        + Paragraph.of(CAUTION)
        + "\n"
        + answer();
  }

  private String head() {
    String treatment =
        comparison.ownTreatment()
            ? "the case's own heat treatment"
            : comparison.treatment().isEmpty()
                ? "no heat treatment, since the base does not answer to one"
                : "the standard treatment of the base, since the case names none";
    return "Weld metal at "
        + percent(comparison.choice().dilution())
        + " dilution (band "
        + percent(comparison.choice().dilutionLow())
        + " to "
        + percent(comparison.choice().dilutionHigh())
        + "), as welded and after "
        + treatment
        + "; the base then has "
        + stress(comparison.baseYield())
        + " yield. Composition in wt%, strengths in "
        + units.stressUnit()
        + ".";
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private String stress(double pascal) {
    return OutputQuantity.YIELD.text(units, pascal) + " " + units.stressUnit();
  }

  private String table() {
    TextTable table =
        new TextTable(
            "filler",
            "use",
            "Si",
            "Mg",
            "yield",
            "treated",
            "tensile",
            "treated",
            "answers",
            "cracking",
            "colour");
    comparison.options().forEach(option -> table.row(cells(option)));
    return table.text();
  }

  private String[] cells(FillerOption option) {
    return new String[] {
      option.filler(),
      option.allowed() ? "yes" : "no",
      String.format(Locale.ROOT, "%.2f", option.composition().of(Element.SI)),
      String.format(Locale.ROOT, "%.2f", option.composition().of(Element.MG)),
      value(option, WeldMetalTrial.Result::asWelded, Strength::yield),
      treated(option, Strength::yield),
      value(option, WeldMetalTrial.Result::asWelded, Strength::tensile),
      treated(option, Strength::tensile),
      option.answer().label(),
      option.crack().label(),
      option.anodizedMatch()
    };
  }

  private String treated(FillerOption option, Function<Strength, Double> quantity) {
    return option.curve().isEmpty() ? "–" : value(option, WeldMetalTrial.Result::treated, quantity);
  }

  private String value(
      FillerOption option,
      Function<WeldMetalTrial.Result, Strength> state,
      Function<Strength, Double> quantity) {
    return option
        .result()
        .map(result -> OutputQuantity.YIELD.text(units, quantity.apply(state.apply(result))))
        .orElse("–");
  }

  private String reasons() {
    return comparison.options().stream()
        .map(
            option ->
                Paragraph.hanging(
                    "- ", option.filler() + ": " + String.join(" ", option.reasons())))
        .collect(Collectors.joining());
  }

  /** The answer only. */
  String answer() {
    List<String> best = comparison.bestOverBand();
    if (comparison.options().stream().noneMatch(FillerOption::allowed)) {
      return Paragraph.of("No filler of the library suits this joint as asked.");
    }
    if (best.get(1).equals("none")) {
      return Paragraph.of("No strength after heat treatment decides between the fillers here.");
    }
    return comparison.clearOverBand()
        ? Paragraph.of("Strongest weld metal after heat treatment: " + best.get(1) + ".")
        : Paragraph.of(
            "Strongest weld metal after heat treatment: "
                + best.get(1)
                + " at this dilution, "
                + best.get(0)
                + " at the low end of the band, "
                + best.get(2)
                + " at the high end: measure the dilution on a macro section.");
  }
}
