package afterweld.cli.study;

import afterweld.choice.answer.Judgement;
import afterweld.cli.command.NoticesText;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.document.Notices;
import afterweld.joint.JointStrength;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.study.MedianShift;
import afterweld.study.Quantiles;
import afterweld.study.Share;
import afterweld.study.SpreadStudy;
import afterweld.study.SpreadStudy.Influence;
import afterweld.study.SpreadStudy.View;
import afterweld.study.UncertainInput;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code spread}. */
final class SpreadTable {
  private static final String MODEL_ERROR =
      "The error of the computation is as wide as the error bands (see the warnings), one error for"
          + " the whole joint.";
  private static final String GAUGE_MISSES =
      "In some of the joints the softest metal lies outside the gauge: there the lowest local yield"
          + " decides, as in every judgement here.";

  private final WeldCase weldCase;
  private final double gauge;
  private final SpreadStudy study;
  private final Notices notices;
  private final UnitSystem units;

  SpreadTable(
      WeldCase weldCase, double gauge, SpreadStudy study, Notices notices, UnitSystem units) {
    this.notices = notices;
    this.weldCase = weldCase;
    this.gauge = gauge;
    this.study = study;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    StringBuilder text = new StringBuilder(Paragraph.of(weldCase.title()));
    text.append('\n').append(asWritten());
    text.append('\n').append(Paragraph.of(head()));
    text.append('\n').append(inputs());
    text.append('\n').append(values());
    text.append('\n').append(notes());
    text.append('\n').append(places());
    text.append('\n').append(influences("With the error of the computation", study.total()));
    text.append('\n').append(influences("Inputs only", study.process()));
    text.append(Paragraph.of(ranking()));
    text.append('\n').append(Paragraph.of(MODEL_ERROR));
    return text.append('\n')
        .append(NoticesText.of(notices))
        .append('\n')
        .append(chances())
        .toString();
  }

  private String unsound() {
    List<String> unsound = study.unsound();
    return unsound.isEmpty()
        ? ""
        : " "
            + unsound.size()
            + " of them are no sound joint: they count as not met, and no strength below is theirs."
            + " The first of these is "
            + unsound.get(0);
  }

  /** What every other command says of the case as written. */
  private String asWritten() {
    Judgement judgement = study.judgement(units);
    String state = study.section().label(study.joint().state());
    String strength =
        study
            .joint()
            .middle()
            .map(
                pull ->
                    OutputQuantity.TENSILE.text(units, pull.tensile()) + " " + units.stressUnit())
            .orElse(study.joint().proofNote());
    String verdict = judgement.asked() ? " Requirement: " + judgement.words() + "." : "";
    return Paragraph.of(
        "Made as written, " + state + ": tensile strength " + strength + "." + verdict);
  }

  /** Where the middle of the joints lies, and why not at the prediction. */
  private String shift() {
    return study
        .shift()
        .filter(MedianShift::noticed)
        .map(
            shift ->
                Paragraph.of(
                    String.format(
                        Locale.ROOT,
                        "As this shop welds them half of the joints are under %s %s, %s than made as"
                            + " written, %s.",
                        OutputQuantity.TENSILE.text(units, shift.middle()),
                        units.stressUnit(),
                        shift.middle() < shift.predicted() ? "less" : "more",
                        why(shift))))
        .orElse("");
  }

  private static String why(MedianShift shift) {
    return shift.pulls().isEmpty()
        ? "by the inputs together"
        : "pulled there by "
            + shift.pulls().stream().map(MedianShift.Pull::input).collect(Collectors.joining(", "));
  }

  private String head() {
    String left =
        study.leftOut() == 0
            ? ""
            : " " + study.leftOut() + " of them make no weld and are left out of everything below.";
    return study.runs()
        + " joints computed from arc to tension test, each with its inputs somewhere in the ranges"
        + " below; last state, dressed flush, gauge "
        + BothUnits.gauge(gauge)
        + "."
        + left
        + unsound();
  }

  private String inputs() {
    TextTable table = new TextTable("input", "assumed");
    for (UncertainInput input : study.inputs()) {
      table.row(input.name(), input.words());
    }
    return table.text();
  }

  private String values() {
    TextTable table = new TextTable("of 100 joints below it", " 5", " 50", " 95", "");
    String stress = units.stressUnit();
    row(table, "tensile strength", study.total().tensile(), OutputQuantity.TENSILE, stress);
    row(table, "  inputs only", study.process().tensile(), OutputQuantity.TENSILE, "");
    row(table, "proof stress", study.total().proof(), OutputQuantity.YIELD, stress);
    row(table, "  inputs only", study.process().proof(), OutputQuantity.YIELD, "");
    if (!study.total().decidingYield().equals(study.total().proof())) {
      row(table, "yield that decides", study.total().decidingYield(), OutputQuantity.YIELD, stress);
      row(table, "  inputs only", study.process().decidingYield(), OutputQuantity.YIELD, "");
    }
    row(table, "lowest hardness", study.total().lowestHardness(), OutputQuantity.HARDNESS, "HV");
    row(table, "  inputs only", study.process().lowestHardness(), OutputQuantity.HARDNESS, "");
    return table.text();
  }

  private void row(
      TextTable table, String name, Quantiles values, OutputQuantity quantity, String unit) {
    table.row(
        name,
        quantity.text(units, values.p5()),
        quantity.text(units, values.p50()),
        quantity.text(units, values.p95()),
        unit);
  }

  private String notes() {
    StringBuilder text = new StringBuilder();
    if (!study.total().decidingYield().equals(study.total().proof())) {
      text.append(Paragraph.of(GAUGE_MISSES));
    }
    study
        .total()
        .tensileP5()
        .ifPresent(
            p5 ->
                text.append(
                    Paragraph.of(
                        "The 5 % value of the tensile strength lies between "
                            + OutputQuantity.TENSILE.text(units, p5.low())
                            + " and "
                            + OutputQuantity.TENSILE.text(units, p5.high())
                            + " "
                            + units.stressUnit()
                            + ", as far as so many joints can tell.")));
    if (study.total().withoutProof() > 0) {
      text.append(
          Paragraph.of(
              "Joints that reach their maximum before a 0.2 % proof stress: "
                  + study.total().withoutProof()
                  + ". They are left out of its row and count as not meeting a yield."));
    }
    study
        .meltingPossible()
        .filter(share -> share.count() > 0)
        .ifPresent(
            share ->
                text.append(
                    Paragraph.of(
                        "In "
                            + share.count()
                            + " of "
                            + share.runs()
                            + " joints the solution treatment reaches a solidus: melting is"
                            + " possible.")));
    return text.toString();
  }

  private String places() {
    if (study.total().failsIn().isEmpty()) {
      return Paragraph.of("Place of failure: " + JointStrength.NOT_PREDICTED + ".");
    }
    TextTable table = new TextTable("weakest zone", " of joints", " inputs only");
    study
        .total()
        .failsIn()
        .forEach(
            (zone, share) ->
                table.row(
                    zone,
                    percent(share.estimate()),
                    percent(
                        study.process().failsIn().containsKey(zone)
                            ? study.process().failsIn().get(zone).estimate()
                            : 0)));
    return table.text()
        + Paragraph.of(
            "In "
                + percent(study.total().undecided().estimate())
                + " of the joints the next zone is within 2 %, so that no place can be named.");
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static String influences(String title, View view) {
    if (view.firstOrder().isEmpty()) {
      return Paragraph.of(title + ": the " + view.target() + " hardly varies; nothing to rank.");
    }
    TextTable table = new TextTable(title, " part", " ±");
    for (Influence one : view.firstOrder()) {
      table.row(one.input(), figure(part(one.index())), figure(one.error()));
    }
    table.row("together, or not told apart", figure(part(view.interactionOrNoise())), "");
    return table.text();
  }

  /** A part lies between none and all, whatever few joints tell. */
  private static double part(double told) {
    return Math.min(1, Math.max(0, told));
  }

  private static String figure(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private String ranking() {
    return "Part: how much of the ups and downs of the "
        + study.total().target()
        + " an input makes alone; all of it is 1. Two inputs are only as different as they seem where"
        + " their parts lie more than three times ± apart.";
  }

  /** The answer only. */
  String answer() {
    return asWritten() + chances() + Paragraph.each(notices.cautions());
  }

  private String chances() {
    return Paragraph.of(
            study
                .total()
                .met()
                .map(met -> "Of the joints as this shop welds them, " + chance(met))
                .orElse(unasked()))
        + shift()
        + study
            .process()
            .met()
            .map(met -> Paragraph.of("As if the computation were exact, " + chance(met)))
            .orElse("")
        + strengthsAlone()
        + notCounted();
  }

  /** Why joints that are strong enough do not count. */
  private String notCounted() {
    if (study.total().met().isEmpty() || study.total().beyondStrength().isEmpty()) {
      return "";
    }
    return Paragraph.of(
        "Not counted as met, whatever their strength: "
            + study.total().beyondStrength().entrySet().stream()
                .map(
                    one ->
                        one.getValue().count()
                            + " of "
                            + one.getValue().runs()
                            + " joints ("
                            + one.getKey()
                            + ")")
                .collect(Collectors.joining(", "))
            + "; see profile.");
  }

  /** Where something else decides and not the strength. */
  private String strengthsAlone() {
    return study
        .total()
        .strengthsMet()
        .filter(strengths -> !strengths.equals(study.total().met().orElseThrow()))
        .map(
            strengths ->
                Paragraph.of(
                    "Strength alone is met by "
                        + strengths.count()
                        + " of "
                        + strengths.runs()
                        + "."))
        .orElse("");
  }

  private String unasked() {
    if (study.requirement().asksStrength() && !study.against().isEmpty()) {
      return "No chance is given: nothing is claimed of the strengths while something stands against "
          + study.against()
          + ".";
    }
    return study.requirement().asksStrength()
        ? "No chance can be given: the joint is " + JointStrength.NOT_PREDICTED + "."
        : "The case requires no strength, so there is no chance to give.";
  }

  private String chance(Share met) {
    String asked = met.count() + " of " + met.runs() + " joints met " + requirement();
    if (!met.atAnEnd()) {
      return String.format(
          Locale.ROOT,
          "%s (so many joints tell %.0f to %.0f %%).",
          asked,
          100 * met.low(),
          100 * met.high());
    }
    double certain = 100 * (1 - met.ruleOfThree());
    return met.count() == 0
        ? String.format(
            Locale.ROOT, "%s (so many joints tell at most %.2g %%).", asked, 100 - certain)
        : String.format(Locale.ROOT, "%s (so many joints tell at least %.1f %%).", asked, certain);
  }

  private String requirement() {
    return java.util.stream.Stream.of(
            asked(OutputQuantity.YIELD, "yield "),
            asked(OutputQuantity.TENSILE, "tensile "),
            asked(OutputQuantity.HARDNESS, "hardness "),
            asked(OutputQuantity.PEAK_TEMPERATURE, "service at "),
            study.requirement().anodizedMatch().orElse(false) ? "colour after anodizing" : "")
        .filter(text -> !text.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private String asked(OutputQuantity quantity, String name) {
    return study.requirement().asked(quantity).map(asked -> name + asked.text(units)).orElse("");
  }
}
