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
  private final Notices notices;
  private final UnitSystem units;

  FillerTable(WeldCase weldCase, FillerComparison comparison, Notices notices, UnitSystem units) {
    this.weldCase = weldCase;
    this.comparison = comparison;
    this.notices = notices;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    return Paragraph.of(weldCase.title())
        + Paragraph.of(head())
        + "\n"
        + tables()
        + "\n"
        + Paragraph.of("Why")
        + reasons()
        + "\n"
        + notices.text()
        + "\n"
        + answer();
  }

  private String head() {
    String assumed = weldCase.filler().alloy().isEmpty() ? ", assumed since the case has none" : "";
    return "Weld metal at "
        + percent(comparison.choice().dilution())
        + " dilution (band "
        + percent(comparison.choice().dilutionLow())
        + " to "
        + percent(comparison.choice().dilutionHigh())
        + assumed
        + "). "
        + treatment()
        + " Composition in wt%, strengths in "
        + units.stressUnit()
        + "; colour: match after anodizing; duct.: ductility by the filler guides, 1 best to 4.";
  }

  private String treatment() {
    if (comparison.treatment().isEmpty()) {
      return "The base does not answer to heat treatment, so strengths are as welded.";
    }
    return "Strengths as welded / after "
        + (comparison.ownTreatment()
            ? "the case's own heat treatment"
            : "the standard treatment of the base, since the case names none")
        + "; the base (the weaker of two) then has "
        + stress(comparison.baseYield())
        + " yield. answers: to that treatment, and from which dilution on.";
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }

  private String stress(double pascal) {
    return OutputQuantity.YIELD.text(units, pascal) + " " + units.stressUnit();
  }

  private String tables() {
    List<FillerOption> allowed =
        comparison.options().stream().filter(FillerOption::allowed).toList();
    List<FillerOption> ruledOut =
        comparison.options().stream().filter(option -> !option.allowed()).toList();
    return (allowed.isEmpty() ? "" : table(allowed))
        + (ruledOut.isEmpty() ? "" : "\nRuled out for this joint\n" + table(ruledOut));
  }

  private String table(List<FillerOption> options) {
    TextTable table =
        new TextTable(
            "filler",
            " Si",
            " Mg",
            " yield",
            " tensile",
            "answers",
            "cracking",
            "colour",
            " duct.");
    options.forEach(option -> table.row(cells(option)));
    return table.text();
  }

  private String[] cells(FillerOption option) {
    return new String[] {
      option.filler(),
      String.format(Locale.ROOT, "%.2f", option.composition().of(Element.SI)),
      String.format(Locale.ROOT, "%.2f", option.composition().of(Element.MG)),
      beforeAndAfter(option, Strength::yield),
      beforeAndAfter(option, Strength::tensile),
      answers(option),
      option.crack().label(),
      option.anodizedMatch().equals("not listed") ? "–" : option.anodizedMatch(),
      option.ductility().isPresent() ? Integer.toString(option.ductility().getAsInt()) : "–"
    };
  }

  private static String answers(FillerOption option) {
    return option.answer() == FillerOption.Answer.WITH_DILUTION
        ? "from " + percent(option.answersFrom().orElseThrow())
        : option.answer().label();
  }

  private String beforeAndAfter(FillerOption option, Function<Strength, Double> quantity) {
    if (comparison.treatment().isEmpty()) {
      return value(option, WeldMetalTrial.Result::asWelded, quantity);
    }
    String after =
        option.curve().isEmpty() ? "–" : value(option, WeldMetalTrial.Result::treated, quantity);
    return value(option, WeldMetalTrial.Result::asWelded, quantity) + " / " + after;
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
      return Paragraph.of("No strength decides between the fillers here.");
    }
    return comparison.clearOverBand()
        ? Paragraph.of(
            "Of the fillers that suit, "
                + best.get(1)
                + " makes the strongest weld metal "
                + comparison.rankedState()
                + ".")
        : Paragraph.of(
            "Of the fillers that suit, the strongest weld metal "
                + comparison.rankedState()
                + " is made by "
                + best.get(1)
                + " at this dilution, "
                + best.get(0)
                + " at the low end of the band, "
                + best.get(2)
                + " at the high end: measure the dilution on a macro section.");
  }
}
