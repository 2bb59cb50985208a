package afterweld.cli.study;

import afterweld.choice.practice.HardeningAge;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.AgedOnly;
import afterweld.study.AgeingStudy;
import afterweld.study.JointAgeing;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a person reads on the terminal after {@code ageing}. */
final class AgeingTable {
  private static final int EVERY = 5;

  private final WeldCase weldCase;
  private final AgeingStudy study;
  private final JointAgeing joint;
  private final List<String> cautions;
  private final UnitSystem units;

  AgeingTable(
      WeldCase weldCase,
      AgeingStudy study,
      JointAgeing joint,
      List<String> cautions,
      UnitSystem units) {
    this.weldCase = weldCase;
    this.study = study;
    this.joint = joint;
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
    text.append('\n').append(new JointAgeingTable(joint, study.ownSchedule(), units).table());
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
            || weldCase.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
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
    return BothUnits.temperature(units, kelvin);
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
    if (study.paint().isEmpty()) {
      return "";
    }
    String sentences =
        study.paint().stream()
            .map(
                paint ->
                    name(paint.metal())
                        + " "
                        + share(paint.share())
                        + " at "
                        + temperature(paint.temperature()))
            .collect(Collectors.joining(", "));
    return Paragraph.of(
        "Yield left of the finished part after 30 minutes in a paint oven: "
            + sentences
            + ". Short reheats of T6 are known to cost a few percent more than computed here.");
  }

  private static String share(double share) {
    return Double.isNaN(share) ? "–" : String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  /** The answer only. */
  String answer() {
    String joints = new JointAgeingTable(joint, study.ownSchedule(), units).answer();
    if (study.schedule().isEmpty()) {
      return Paragraph.of("No metal of this joint hardens by ageing: ageing does nothing for it.")
          + joints;
    }
    return study.windows().stream().map(this::window).collect(Collectors.joining())
        + neverHardens()
        + joints;
  }

  /** What follows the first ageing is not in its curve. */
  private boolean againAged() {
    return HardeningAge.place(weldCase.afterWeld()).stream()
        .anyMatch(
            place ->
                weldCase.afterWeld().stream().skip(place + 1L).anyMatch(Age.class::isInstance));
  }

  private String neverHardens() {
    return Stream.of(weldCase.left(), weldCase.right())
        .filter(side -> !side.alloy().heatTreatable())
        .map(side -> side.alloy().name())
        .distinct()
        .map(name -> Paragraph.of(name + " does not harden by heat: ageing does nothing for it."))
        .collect(Collectors.joining());
  }

  private String window(AgeingStudy.Window window) {
    if (window.nothingToAge()) {
      return Paragraph.of(
          name(window.metal())
              + ": ageing does nothing for it as it comes, it holds nothing that ageing could"
              + " harden. Solution treat and quench it first, then age.");
    }
    if (Double.isNaN(window.peak())) {
      return Paragraph.of(name(window.metal()) + ": not predicted.");
    }
    String reached =
        Double.isNaN(window.scheduled())
            ? "the schedule ages beyond the limit of what tests show, no strength is given after it"
            : String.format(
                Locale.ROOT,
                "the %s reaches %.0f %% of it",
                againAged() ? "first of the ageings" : "schedule",
                100 * window.scheduled() / window.peak());
    String from = window.fromTheStart() ? "from the start" : "from " + hours(window.from());
    String to = window.toTheEnd() ? "the end of the computed 300 h" : hours(window.to());
    String yield = OutputQuantity.YIELD.text(units, window.peak()) + " " + units.stressUnit();
    if (window.metal().equals("weld") && AgedOnly.is(weldCase.afterWeld())) {
      return Paragraph.of(
          "weld metal: aged without solution treatment it is taken no stronger than before, since"
              + " how it answers as deposited is not verified; "
              + reached
              + ".");
    }
    if (!window.answers()) {
      return Paragraph.of(
          name(window.metal())
              + ": does not answer, ageing adds less than 5 %; 97 % of its highest yield ("
              + yield
              + ") is held "
              + from
              + " to "
              + to
              + "; "
              + reached
              + ".");
    }
    return Paragraph.of(
        String.format(
            Locale.ROOT,
            "%s: 97 %% of the peak yield (%s) is held %s to %s; %s.",
            name(window.metal()),
            yield,
            from,
            to,
            reached));
  }
}
