package afterweld.choice;

import afterweld.choice.FurnaceSheet.Line;
import afterweld.choice.schedule.AnnealRule;
import afterweld.choice.schedule.FurnaceLimits;
import afterweld.choice.schedule.FurnaceObjections;
import afterweld.choice.schedule.FurnaceOrder;
import afterweld.choice.schedule.FurnaceWords;
import afterweld.choice.schedule.StepOrder;
import afterweld.material.Alloy;
import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weldmetal.FurnaceMargin;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The lines of a furnace sheet: only what this order does, with the limits of this metal. */
final class FurnaceInstruction {
  private static final double HOUR = 3600;

  /** A rest that is shorter than this, s, nobody can use (assumed). */
  private static final double BRIEF = 600;

  /** Store that keeps quenched metal soft, K: 0 °F (common practice). */
  private static final double COLD_STORE = 255.15;

  private final FurnaceOrder order;
  private final UnitSystem first;
  private final FurnaceLimits limits;
  private final FurnaceObjections figures;
  private final StepOrder sequence;
  private final boolean objected;

  /**
   * Lines of an order.
   *
   * @param first the system of units that leads
   * @param objected whether something stands against it
   */
  FurnaceInstruction(FurnaceOrder order, UnitSystem first, boolean objected) {
    this.order = order;
    this.first = first;
    this.limits = new FurnaceLimits(order, first);
    this.figures = new FurnaceObjections(order);
    this.sequence = new StepOrder(order);
    this.objected = objected;
  }

  List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Material", material()));
    lines.add(new Line("On arrival", arrival()));
    for (int i = 0; i < order.steps().size(); i++) {
      lines.addAll(of(i));
    }
    lines.add(new Line("Measure", measure()));
    lines.add(new Line("Mark as", mark()));
    lines.add(new Line("Hazards", hazards()));
    return lines;
  }

  private String material() {
    return order.sides().map(this::part).distinct().collect(Collectors.joining(" to "))
        + ", welded with "
        + filler()
        + ".";
  }

  private String part(Side side) {
    return side.alloy().name()
        + "-"
        + side.temper().name()
        + ", "
        + BothUnits.length(side.thickness(), first);
  }

  private String filler() {
    return order.weldCase().filler().alloy().map(alloy -> alloy.name()).orElse("no filler");
  }

  private String arrival() {
    return "Welded, "
        + FurnaceWords.time(order.weldCase().naturalAge())
        + " at room temperature since. Clean and dry; closed cavities vented. Nothing wet and no closed"
        + " hollow into a salt bath.";
  }

  private List<Line> of(int index) {
    FurnaceStep step = order.steps().get(index);
    if (sequence.idle(index)) {
      return List.of(new Line("Leave out", sentence(step)));
    }
    if (step instanceof SolutionTreat treat) {
      return List.of(
          new Line("Solution treatment", solution(treat)), new Line("Soak", soak(treat)));
    }
    if (FurnaceOrder.isQuench(step)) {
      return List.of(
          new Line("Quench", quench(index)), new Line("Straightening", straightening(step)));
    }
    boolean hold = index > 0 && FurnaceOrder.isQuench(order.steps().get(index - 1));
    if (step instanceof NaturalAge && hold && order.agesAfter(step)) {
      return List.of();
    }
    if (step instanceof Anneal anneal) {
      return List.of(new Line("Anneal", annealing(anneal) + " The time is " + counted() + "."));
    }
    return step instanceof Age age
        ? List.of(
            order.bakes(index) ? new Line("Bake", bake(age)) : new Line("Ageing", ageing(age)))
        : List.of(new Line("Then", sentence(step)));
  }

  private String annealing(Anneal anneal) {
    AnnealRule rule = new AnnealRule(order);
    return rule.tooCold(anneal).isEmpty()
        ? cooled(anneal)
        : cooled(new Anneal(rule.usual(), anneal.time(), anneal.coolingRate()))
            + ordered(temperature(anneal.temperature()));
  }

  /** Only metal that hardens by heat treatment stays harder where it cools fast. */
  private String cooled(Anneal anneal) {
    boolean usual = order.hardens() && anneal.coolingRate().isEmpty();
    String text = FurnaceWords.of(anneal, first);
    return usual
        ? sentence(text + FurnaceWords.cooling(anneal, first))
            + " The case states no cooling: this is the usual one."
        : sentence(text);
  }

  private String sentence(FurnaceStep step) {
    return sentence(FurnaceWords.of(step, first));
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  private String temperature(double kelvin) {
    return BothUnits.temperature(kelvin, first);
  }

  private static String ordered(String what) {
    return " (ordered: " + what + ")";
  }

  private String tolerance() {
    return " ± "
        + BothUnits.difference(FurnaceMargin.TOLERANCE, first)
        + " ("
        + order.practice()
        + ")";
  }

  private String within() {
    return ", " + counted();
  }

  private String counted() {
    return "counted from when the coldest part is within "
        + BothUnits.difference(FurnaceMargin.TOLERANCE, first);
  }

  private String solution(SolutionTreat treat) {
    String set =
        figures.tooCold(treat)
            ? temperature(limits.usual().orElseThrow().solutionTemperature())
                + ordered(temperature(treat.temperature()))
            : temperature(treat.temperature());
    return set
        + tolerance()
        + (treat.furnace() == Furnace.SALT ? ", in a salt bath" : ", in an air furnace")
        + ". Lowest solidus: base "
        + temperature(order.baseSolidus())
        + ", weld metal "
        + temperature(order.weldMetalSolidus())
        + " (memory).";
  }

  private String soak(SolutionTreat treat) {
    String time = FurnaceWords.time(treat.soak());
    Optional<FurnaceLimits.Limit> least = limits.leastSoak(treat.furnace());
    if (least.isPresent() && figures.tooShort(treat)) {
      return "At least " + least.get().text() + ordered(time) + within() + ".";
    }
    return time
        + (order.own() ? " as ordered" : " by the standard schedule")
        + within()
        + least.map(limit -> "; at least " + limit.text()).orElse("")
        + ".";
  }

  private String quench(int index) {
    FurnaceStep step = order.steps().get(index);
    if (figures.tooSlow(index)) {
      String bath = limits.water().map(water -> "Into water of " + water.text()).orElseThrow();
      return bath + ordered(FurnaceWords.of(step, first)) + "." + immersion(Optional.empty());
    }
    if (!(step instanceof Quench quench)) {
      return sentence(step) + " At least as fast.";
    }
    return switch (quench.medium()) {
      case WATER, BOILING_WATER -> "Into " + water(quench) + immersion(Optional.of(quench));
      case POLYMER -> "Into " + bath(quench) + "." + immersion(Optional.of(quench));
      case SPRAY -> "Under a spray of " + temperature(quench.temperature()) + out(quench);
      case FORCED_AIR -> "In forced air of " + temperature(quench.temperature()) + out(quench);
      case STILL_AIR -> "In still air of " + temperature(quench.temperature()) + out(quench);
    };
  }

  private String bath(Quench quench) {
    return quench.medium().label() + " of " + temperature(quench.temperature());
  }

  private String water(Quench quench) {
    Optional<FurnaceLimits.Water> usual = limits.water();
    if (usual.isPresent() && figures.wrongWater(quench)) {
      return "water of " + usual.get().text() + ordered(temperature(quench.temperature())) + ".";
    }
    return bath(quench) + usual.map(water -> "; usual is " + water.text()).orElse("") + ".";
  }

  private String immersion(Optional<Quench> quench) {
    String time =
        quench.map(this::delay).orElseGet(() -> limits.longestDelay().orElseThrow().text());
    return " From door to full immersion within " + time + ".";
  }

  private String out(Quench quench) {
    return ", cooling within this time of leaving the furnace: "
        + delay(quench)
        + (FurnaceObjections.bath(quench)
            ? "."
            : "; no table of quench delay holds for air, where the cooling rate decides.");
  }

  private String delay(Quench quench) {
    String time = FurnaceWords.time(quench.delay());
    Optional<FurnaceLimits.Limit> longest =
        FurnaceObjections.bath(quench) ? limits.longestDelay() : Optional.empty();
    if (longest.isPresent() && figures.isLate(quench)) {
      return longest.get().text() + ordered(time);
    }
    return time + longest.map(limit -> "; the limit is " + limit.text()).orElse("");
  }

  private String straightening(FurnaceStep quench) {
    String cold = "later only if kept at " + temperature(COLD_STORE) + " (common practice).";
    if (!order.agesAfter(quench)) {
      return "Within 1 h of the quench, 2 h at the outside; " + cold;
    }
    double rest = order.restAfter(quench);
    if (rest < BRIEF) {
      return "None: the ordered hold of "
          + FurnaceWords.time(rest)
          + " between quench and ageing leaves no time for it.";
    }
    return (rest > 2 * HOUR
            ? "Within 1 h of the quench, 2 h at the outside; " + cold
            : "Within "
                + (rest < HOUR ? FurnaceWords.time(rest) : "1 h")
                + " of the quench, and before the ageing in any case (common practice).")
        + " Then hold: the ageing begins "
        + FurnaceWords.time(rest)
        + " after the quench, and another wait changes the result.";
  }

  private String bake(Age age) {
    return temperature(age.temperature())
        + " for "
        + FurnaceWords.time(age.time())
        + " as ordered, counted in the metal; hotter or longer costs the base its strength.";
  }

  private String ageing(Age age) {
    String hold = temperature(age.temperature()) + " for " + FurnaceWords.time(age.time());
    if (figures.wrongAge(age)) {
      return limits
              .usual()
              .map(
                  usual ->
                      temperature(usual.ageTemperature())
                          + tolerance()
                          + " for "
                          + FurnaceWords.time(usual.ageTime()))
              .orElseThrow()
          + ordered(hold)
          + within()
          + ".";
    }
    return temperature(age.temperature())
        + tolerance()
        + " for "
        + FurnaceWords.time(age.time())
        + (order.own() ? " as ordered" : " by the standard schedule")
        + within()
        + FurnaceWords.heating(age.ramp(), first)
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
    if (objected) {
      return "Nothing yet: first put right what stands against it.";
    }
    if (order.bakes()) {
      return "Coating baked after welding: no temper of its own.";
    }
    if (order.onlyAnneals()) {
      return "O, annealed by the user's furnace; with the furnace lot.";
    }
    if (!order.dissolves()) {
      return order.ages()
          ? "Aged after welding without solution treatment: no temper of its own."
          : "Treated after welding as stated above: no temper of its own.";
    }
    return order.sides().map(this::mark).distinct().collect(Collectors.joining(" "));
  }

  private String mark(Side side) {
    String name = order.sides().count() > 1 ? side.alloy().name() + ": " : "";
    if (!side.alloy().heatTreatable()) {
      return name + "annealed by the treatment.";
    }
    if (side.alloy().casting()) {
      return name + aged("T4", "T6", "T7") + ", re-treated, with the furnace lot.";
    }
    return name
        + aged("T42", "T62", "T72")
        + ", heat treated by the user's furnace, not the mill's temper; with the furnace lot.";
  }

  private String aged(String naturally, String toTheFull, String beyond) {
    boolean overaged =
        order.steps().stream().anyMatch(step -> step instanceof Age age && age.overage());
    return order.ages() ? (overaged ? beyond : toTheFull) : naturally;
  }

  /** Ordered into a bath, or put into one by the sheet where the order is too slow. */
  private boolean intoABath(int index) {
    FurnaceStep step = order.steps().get(index);
    return wet(step) || (FurnaceOrder.isQuench(step) && figures.tooSlow(index));
  }

  private static boolean wet(FurnaceStep step) {
    return step instanceof Quench quench
        ? FurnaceObjections.bath(quench)
        : FurnaceOrder.isQuench(step);
  }

  private String hazards() {
    String quench =
        IntStream.range(0, order.steps().size()).anyMatch(this::intoABath)
            ? "Furnace, hot water and quench"
            : "Furnace and hot parts";
    boolean beryllium =
        Stream.concat(order.weldCase().filler().alloy().stream(), order.sides().map(Side::alloy))
            .anyMatch(Alloy::holdsBeryllium);
    return quench
        + ": follow local rules."
        + (beryllium ? " The metal contains beryllium: mind fume and dust." : "")
        + " The qualified procedure, the test coupon and the governing code decide.";
  }
}
