package afterweld.choice;

import afterweld.choice.FurnaceSheet.Line;
import afterweld.section.BothUnits;
import afterweld.section.FurnaceMargin;
import afterweld.section.Side;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Furnace;
import afterweld.thermal.FurnaceStep.Quench;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The lines of a furnace sheet: only what this order does, with the limits of this metal. */
final class FurnaceInstruction {
  private static final double LONGEST_BEFORE_STRAIGHTENING = 8 * 3600;
  private static final Set<String> WITH_BERYLLIUM = Set.of("4011", "A357");
  private static final String WITHIN =
      ", counted from when the coldest part is within "
          + BothUnits.difference(FurnaceMargin.TOLERANCE);

  private final FurnaceOrder order;

  FurnaceInstruction(FurnaceOrder order) {
    this.order = order;
  }

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Material", material()));
    lines.add(new Line("On arrival", arrival()));
    order.steps().forEach(step -> lines.addAll(of(step)));
    lines.add(new Line("Measure", measure()));
    lines.add(new Line("Mark as", mark()));
    lines.add(new Line("Hazards", hazards()));
    return lines;
  }

  private String material() {
    return order
            .sides()
            .map(FurnaceInstruction::part)
            .distinct()
            .collect(Collectors.joining(" to "))
        + ", welded with "
        + filler()
        + ".";
  }

  private static String part(Side side) {
    return side.alloy().name()
        + "-"
        + side.temper().name()
        + ", "
        + BothUnits.length(side.thickness());
  }

  private String filler() {
    return order.weldCase().filler().alloy().map(alloy -> alloy.name()).orElse("no filler");
  }

  private String arrival() {
    return "Welded, "
        + FurnaceWords.time(order.weldCase().naturalAge())
        + " at room temperature since. Clean and dry; closed cavities vented. Nothing wet or hollow"
        + " into a salt bath.";
  }

  private List<Line> of(FurnaceStep step) {
    if (step instanceof SolutionTreat treat) {
      return List.of(
          new Line("Solution treatment", solution(treat)), new Line("Soak", soak(treat)));
    }
    if (FurnaceOrder.isQuench(step)) {
      String text = step instanceof Quench quench ? quench(quench) : sentence(step);
      return List.of(new Line("Quench", text), new Line("Straightening", straightening(step)));
    }
    if (step instanceof Age age) {
      return List.of(new Line("Ageing", ageing(age)));
    }
    return List.of(new Line("Then", sentence(step)));
  }

  private static String sentence(FurnaceStep step) {
    String words = FurnaceWords.of(step);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  private String tolerance() {
    return " ± " + BothUnits.difference(FurnaceMargin.TOLERANCE) + " (" + order.practice() + ")";
  }

  private String solution(SolutionTreat treat) {
    return BothUnits.temperature(treat.temperature())
        + tolerance()
        + (treat.furnace() == Furnace.SALT ? ", in a salt bath" : ", in an air furnace")
        + ". Lowest solidus: base "
        + BothUnits.temperature(order.baseSolidus())
        + ", weld metal "
        + BothUnits.temperature(order.weldMetalSolidus())
        + " (memory).";
  }

  private String soak(SolutionTreat treat) {
    String limits =
        order
            .sides()
            .map(side -> side.alloy().name() + ": " + soakLimit(treat, side))
            .distinct()
            .collect(Collectors.joining("; "));
    return FurnaceWords.time(treat.soak())
        + (order.own() ? " as ordered" : " by the standard schedule")
        + WITHIN
        + ". "
        + limits
        + ".";
  }

  private static String soakLimit(SolutionTreat treat, Side side) {
    return side.alloy().casting()
        ? FurnaceObjections.castSoak()
        : "at least " + FurnaceObjections.leastSoak(treat, side).text();
  }

  private String quench(Quench quench) {
    return switch (quench.medium()) {
      case WATER, BOILING_WATER -> "Into " + bath(quench) + waterLimits() + immersion(quench);
      case POLYMER -> "Into " + bath(quench) + "." + immersion(quench);
      case SPRAY -> "Under a spray of " + BothUnits.temperature(quench.temperature()) + out(quench);
      case FORCED_AIR ->
          "In forced air of " + BothUnits.temperature(quench.temperature()) + out(quench);
      case STILL_AIR ->
          "In still air of " + BothUnits.temperature(quench.temperature()) + out(quench);
    };
  }

  private static String bath(Quench quench) {
    return quench.medium().label() + " of " + BothUnits.temperature(quench.temperature());
  }

  private String waterLimits() {
    return order
        .sides()
        .map(side -> FurnaceObjections.usualWater(side.alloy().casting()))
        .distinct()
        .collect(Collectors.joining("; ", "; usual for ", "."));
  }

  private String immersion(Quench quench) {
    return " From door to full immersion within " + delay(quench);
  }

  private String out(Quench quench) {
    return ", cooling within this time of leaving the furnace: " + delay(quench);
  }

  private String delay(Quench quench) {
    FurnacePractice.Limit longest =
        order
            .sides()
            .map(side -> FurnacePractice.of("longest quench delay", side.thickness()))
            .reduce((one, other) -> one.value() <= other.value() ? one : other)
            .orElseThrow();
    String whose = order.hasWrought() ? "limit by thickness " : "for wrought metal the limit is ";
    return FurnaceWords.time(quench.delay()) + "; " + whose + longest.text() + ".";
  }

  private String straightening(FurnaceStep quench) {
    String limit = FurnaceWords.time(LONGEST_BEFORE_STRAIGHTENING) + " at most";
    if (order.agesAfter(quench)) {
      double rest = order.restAfter(quench);
      String latest = rest < LONGEST_BEFORE_STRAIGHTENING ? "before the ageing in any case" : limit;
      return "Within 1 h of the quench, "
          + latest
          + " (common practice). Natural ageing before the ageing furnace changes the result: keep"
          + " to "
          + (rest > 0 ? FurnaceWords.time(rest) : "the order, which is no wait,")
          + " between quench and ageing.";
    }
    return "Within 1 h of the quench, "
        + limit
        + "; stored at −18 °C (0 °F) it may wait longer (common practice).";
  }

  private String ageing(Age age) {
    return BothUnits.temperature(age.temperature())
        + tolerance()
        + " for "
        + FurnaceWords.time(age.time())
        + (order.own() ? " as ordered" : " by the standard schedule")
        + WITHIN
        + FurnaceWords.heating(age.ramp())
        + (age.overage() ? ". Overageing is meant." : ".");
  }

  private String measure() {
    boolean known = order.sides().anyMatch(side -> side.alloy().name().equals("6061"));
    return "Hardness on base, beside the weld and on the weld, dressed flush, indents at least three"
        + " diagonals apart (ISO 6507-1, memory). Electrical conductivity as a check"
        + (known
            ? ": 6061 O 47, T4 40, T6 43 % IACS (memory)."
            : " against a sound piece of the same metal and temper.");
  }

  private String mark() {
    if (order.dissolves()) {
      return "Heat treated by the user's furnace ("
          + (order.ages() ? "T62" : "T42")
          + "-like), not as the mill's temper.";
    }
    return order.ages()
        ? "Aged after welding without solution treatment: no temper of its own."
        : "Treated after welding as stated above: no temper of its own.";
  }

  private String hazards() {
    String quench =
        order.steps().stream().anyMatch(FurnaceOrder::isQuench)
            ? "Furnace, hot water and quench"
            : "Furnace and hot parts";
    boolean beryllium =
        WITH_BERYLLIUM.contains(filler())
            || order.sides().anyMatch(side -> WITH_BERYLLIUM.contains(side.alloy().name()));
    return quench
        + ": follow local rules."
        + (beryllium ? " The metal contains beryllium: mind fume and dust." : "")
        + " The qualified procedure, the test coupon and the governing code decide.";
  }
}
