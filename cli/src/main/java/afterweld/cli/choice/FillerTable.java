package afterweld.cli.choice;

import afterweld.choice.filler.FillerAnswer;
import afterweld.choice.filler.FillerComparison;
import afterweld.choice.filler.FillerOption;
import afterweld.cli.command.NoticesText;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.document.Notices;
import afterweld.material.Element;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.WeldMetalTrial;
import afterweld.section.soundness.Soundness;
import afterweld.strength.Strength;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code fillers}. */
final class FillerTable {
  private final WeldCase weldCase;
  private final Soundness soundness;
  private final FillerComparison comparison;
  private final Notices notices;
  private final UnitSystem units;

  FillerTable(
      WeldCase weldCase,
      Soundness soundness,
      FillerComparison comparison,
      Notices notices,
      UnitSystem units) {
    this.weldCase = weldCase;
    this.soundness = soundness;
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
        + NoticesText.of(notices)
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
        + "; 85 %: dilution from which the weld metal reaches 85 % of the base's yield after a full"
        + " treatment; colour: match after anodizing; duct.: ductility by the filler guides, 1 best"
        + " to 4.";
  }

  private String treatment() {
    if (!comparison.hardens()) {
      return "No furnace hardens both bases: strengths are as welded.";
    }
    return comparison.ownTreatment()
        ? "Strengths as welded / after the case's own heat treatment; the weaker base"
            + (hardens() ? " that hardens" : "")
            + " then has "
            + (Double.isFinite(comparison.baseTreated())
                ? stress(comparison.baseTreated()) + " yield."
                : "a yield that is not predicted.")
        : "The case names no heat treatment: fillers are chosen as welded (base "
            + stress(comparison.baseWelded())
            + " yield). After the stroke, for information: after the standard treatment of the"
            + " base (then "
            + stress(comparison.baseTreated())
            + ").";
  }

  private boolean hardens() {
    return weldCase.left().alloy().heatTreatable() || weldCase.right().alloy().heatTreatable();
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
            "filler", " Si", " Mg", " yield", " tensile", "85 %", "cracking", "colour", " duct.");
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
      option.anodizedMatch(),
      option.ductility().isPresent() ? Integer.toString(option.ductility().getAsInt()) : "–"
    };
  }

  private static String answers(FillerOption option) {
    return switch (option.answer()) {
      case YES -> "at any";
      case WITH_DILUTION -> "from " + percent(option.answersFrom().orElseThrow());
      case NO -> "–";
    };
  }

  private String beforeAndAfter(FillerOption option, Function<Strength, Double> quantity) {
    String welded = value(option, WeldMetalTrial.Result::asWelded, quantity);
    return comparison.hardens()
        ? welded + " / " + value(option, WeldMetalTrial.Result::treated, quantity)
        : welded;
  }

  private String value(
      FillerOption option,
      Function<WeldMetalTrial.Result, Strength> state,
      Function<Strength, Double> quantity) {
    return option
        .result()
        .map(result -> quantity.apply(state.apply(result)))
        .filter(pascal -> !Double.isNaN(pascal))
        .map(pascal -> OutputQuantity.YIELD.text(units, pascal))
        .orElse("–");
  }

  private String reasons() {
    return comparison.options().stream()
        .map(
            option ->
                Paragraph.hanging(
                    "- ", option.filler() + ": " + String.join(" ", option.sentences())))
        .collect(Collectors.joining());
  }

  /** The answer only. */
  String answer() {
    String unsound = soundness.sound() ? "" : Paragraph.of(soundness.note());
    return unsound
        + FillerAnswer.of(comparison, units).stream()
            .map(Paragraph::of)
            .collect(Collectors.joining());
  }
}
