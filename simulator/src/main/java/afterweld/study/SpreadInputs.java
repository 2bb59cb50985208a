package afterweld.study;

import afterweld.choice.schedule.ScheduleCheck;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.quantity.BothUnits;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * What spreads in a case and by how much.
 *
 * <pre>
 * dilution              normal, two standard deviations = 10 points (or the default's own band)
 * bead width            uniform +-0.5 mm, where a width calibrates the pass
 * arc efficiency        triangular +-15 %, where none does
 * travel speed          uniform +-10 %
 * furnace temperature   uniform over its uniformity, one draw for solution treatment, one for ageing
 * soak                  uniform, 0 to 20 % longer
 * quench delay          triangular, 3 to 15 s around the case's own
 * ageing time           uniform +-10 %
 * composition           uniform within the alloy's limits; +-5 % where the case states it
 * </pre>
 *
 * <p>The widths are assumptions of common practice, none is measured; the case's {@code spread} key
 * replaces them. Passes share a draw, since one hand welds them; parts that are alike share a lot
 * of metal. Elements that the strength models do not read, or take as absent, stay as they are.
 * Volts and amps enter through the heat only, so the efficiency stands for them.
 */
final class SpreadInputs {
  private static final String NEAR_THE_MIDDLE = ", mostly near the middle";
  private static final double DILUTION = 0.10;
  private static final double BEAD_WIDTH = 0.5e-3;
  private static final double EFFICIENCY = 0.15;
  private static final double TRAVEL_SPEED = 0.10;
  private static final double FURNACE = 6;
  private static final double SOAK = 0.20;
  private static final double SHORTEST_DELAY = 3;
  private static final double LONGEST_DELAY = 15;
  private static final double AGEING_TIME = 0.10;
  private static final double CERTIFICATE = 0.05;
  private static final double LOWEST_EFFICIENCY = 0.3;
  private static final double HIGHEST_EFFICIENCY = 0.9;
  private static final Set<Element> READ_BY_THE_MODELS =
      EnumSet.of(Element.SI, Element.FE, Element.CU, Element.MN, Element.MG, Element.CR);

  private final WeldCase weldCase;
  private final SpreadSettings settings;
  private final List<UncertainInput> inputs = new ArrayList<>();

  private SpreadInputs(WeldCase weldCase, SpreadSettings settings) {
    this.weldCase = weldCase;
    this.settings = settings;
  }

  /** The inputs of a case that matter to it. */
  static List<UncertainInput> of(WeldCase weldCase, SpreadSettings settings) {
    SpreadInputs all = new SpreadInputs(weldCase, settings);
    all.addDilution();
    all.addHeat();
    all.addFurnace();
    all.addAgeing();
    all.addCompositions();
    return List.copyOf(all.inputs);
  }

  private void add(
      String name,
      String group,
      String words,
      Distribution spread,
      BiFunction<WeldCase, Double, WeldCase> change) {
    inputs.add(new UncertainInput(name, group, words, spread, change));
  }

  private void add(
      String name,
      String words,
      Distribution spread,
      BiFunction<WeldCase, Double, WeldCase> change) {
    add(name, name, words, spread, change);
  }

  private static String plusMinus(double half, String unit) {
    return String.format(Locale.ROOT, "±%.3g %s", half, unit);
  }

  private void addDilution() {
    if (weldCase.filler().alloy().isEmpty()) {
      return;
    }
    double own = (weldCase.filler().dilutionHigh() - weldCase.filler().dilutionLow()) / 2;
    double half = settings.dilution().orElse(Math.max(DILUTION, own));
    add(
        "dilution",
        plusMinus(100 * half, "points") + NEAR_THE_MIDDLE,
        Distribution.truncatedNormal(weldCase.filler().dilution(), half / 2, 0, 1),
        CaseChange::dilution);
  }

  private void addHeat() {
    if (weldCase.passes().stream().anyMatch(pass -> pass.beadWidth().isPresent())) {
      double half = settings.beadWidth().orElse(BEAD_WIDTH);
      add(
          "bead width",
          "±" + BothUnits.length(half),
          Distribution.uniform(-half, half),
          (from, by) -> CaseChange.passes(from, pass -> wider(pass, by)));
    }
    Set<WeldingProcess> free = withoutWidth();
    if (!free.isEmpty()) {
      double half = settings.arcEfficiency().orElse(EFFICIENCY);
      add(
          "arc efficiency",
          plusMinus(100 * half, "%") + NEAR_THE_MIDDLE,
          Distribution.triangular(1 - half, 1, 1 + half),
          (from, by) ->
              CaseChange.passes(
                  from, pass -> free.contains(pass.process()) ? hotter(pass, by) : pass));
    }
    double half = settings.travelSpeed().orElse(TRAVEL_SPEED);
    add(
        "travel speed",
        plusMinus(100 * half, "%"),
        Distribution.uniform(1 - half, 1 + half),
        (from, by) ->
            CaseChange.passes(from, pass -> CaseChange.travelSpeed(pass, by * pass.travelSpeed())));
  }

  /** Processes none of whose passes has a bead width to tell its efficiency. */
  private Set<WeldingProcess> withoutWidth() {
    Set<WeldingProcess> free = EnumSet.noneOf(WeldingProcess.class);
    weldCase.passes().forEach(pass -> free.add(pass.process()));
    weldCase.passes().stream()
        .filter(pass -> pass.beadWidth().isPresent())
        .forEach(pass -> free.remove(pass.process()));
    return free;
  }

  private static Pass wider(Pass pass, double by) {
    return pass.beadWidth().isEmpty()
        ? pass
        : CaseChange.heat(
            pass, OptionalDouble.of(pass.beadWidth().getAsDouble() + by), OptionalDouble.empty());
  }

  private static Pass hotter(Pass pass, double by) {
    double middle = pass.efficiency().orElse(pass.process().efficiency());
    double drawn = Math.max(LOWEST_EFFICIENCY, Math.min(HIGHEST_EFFICIENCY, by * middle));
    return CaseChange.heat(pass, OptionalDouble.empty(), OptionalDouble.of(drawn));
  }

  private void addFurnace() {
    boolean solution =
        weldCase.afterWeld().stream()
            .anyMatch(step -> step instanceof SolutionTreat || step instanceof Anneal);
    if (solution) {
      double half = settings.furnaceTemperature().orElse(FURNACE);
      add(
          "solution furnace temperature",
          "±" + BothUnits.difference(half),
          Distribution.uniform(-half, half),
          (from, by) -> CaseChange.steps(from, step -> hotterSolution(step, by)));
      double longer = settings.soak().orElse(SOAK);
      add(
          "soak",
          String.format(Locale.ROOT, "0 to %.3g %% longer", 100 * longer),
          Distribution.uniform(1, 1 + longer),
          (from, by) -> CaseChange.steps(from, step -> longerSoak(step, by)));
    }
    weldCase.afterWeld().stream()
        .filter(Quench.class::isInstance)
        .map(step -> ((Quench) step).delay())
        .findFirst()
        .ifPresent(this::addDelay);
  }

  private void addDelay(double own) {
    OptionalDouble half = settings.quenchDelay();
    double low = half.isPresent() ? own - half.getAsDouble() : Math.min(own, SHORTEST_DELAY);
    double high = half.isPresent() ? own + half.getAsDouble() : Math.max(own, usuallyLongest());
    add(
        "quench delay",
        String.format(
            Locale.ROOT, "%.3g to %.3g s, mostly near %.3g s", Math.max(0, low), high, own),
        Distribution.triangular(Math.max(0, low), own, high),
        (from, by) ->
            CaseChange.steps(
                from,
                step ->
                    step instanceof Quench quench
                        ? new Quench(quench.medium(), quench.temperature(), by)
                        : step));
  }

  /** A shop that says nothing of its quench is taken to keep to practice. */
  private double usuallyLongest() {
    return Math.min(
        LONGEST_DELAY, ScheduleCheck.longestQuenchDelay(weldCase).orElse(LONGEST_DELAY));
  }

  private static FurnaceStep hotterSolution(FurnaceStep step, double by) {
    if (step instanceof SolutionTreat treat) {
      return new SolutionTreat(treat.temperature() + by, treat.soak(), treat.furnace());
    }
    return step instanceof Anneal anneal
        ? new Anneal(anneal.temperature() + by, anneal.time(), anneal.coolingRate())
        : step;
  }

  private static FurnaceStep longerSoak(FurnaceStep step, double by) {
    if (step instanceof SolutionTreat treat) {
      return new SolutionTreat(treat.temperature(), by * treat.soak(), treat.furnace());
    }
    return step instanceof Anneal anneal
        ? new Anneal(anneal.temperature(), by * anneal.time(), anneal.coolingRate())
        : step;
  }

  private void addAgeing() {
    if (weldCase.afterWeld().stream().noneMatch(Age.class::isInstance)) {
      return;
    }
    double half = settings.furnaceTemperature().orElse(FURNACE);
    add(
        "ageing temperature",
        "±" + BothUnits.difference(half),
        Distribution.uniform(-half, half),
        (from, by) -> CaseChange.steps(from, step -> aged(step, by, 1)));
    double time = settings.ageingTime().orElse(AGEING_TIME);
    add(
        "ageing time",
        plusMinus(100 * time, "%"),
        Distribution.uniform(1 - time, 1 + time),
        (from, by) -> CaseChange.steps(from, step -> aged(step, 0, by)));
  }

  private static FurnaceStep aged(FurnaceStep step, double hotter, double longer) {
    return step instanceof Age age
        ? new Age(age.temperature() + hotter, longer * age.time(), age.ramp(), age.overage())
        : step;
  }

  private void addCompositions() {
    boolean alike = weldCase.left().equals(weldCase.right());
    addComposition(
        alike ? "base" : "left",
        weldCase.left(),
        (from, change) ->
            alike
                ? CaseChange.right(CaseChange.left(from, change), change)
                : CaseChange.left(from, change));
    if (!alike) {
      addComposition("right", weldCase.right(), CaseChange::right);
    }
    weldCase
        .filler()
        .alloy()
        .ifPresent(
            wire ->
                addComposition(
                    "filler", wire, wire.composition(), Set.of(), CaseChange::fillerMetal));
  }

  private void addComposition(
      String metal, Side side, BiFunction<WeldCase, UnaryOperator<Composition>, WeldCase> change) {
    addComposition(metal, side.alloy(), side.composition(), side.certified(), change);
  }

  private void addComposition(
      String metal,
      Alloy alloy,
      Composition own,
      Set<Element> certified,
      BiFunction<WeldCase, UnaryOperator<Composition>, WeldCase> change) {
    for (Element element : READ_BY_THE_MODELS) {
      double share = own.of(element);
      Optional<Distribution> spread = content(alloy, element, share, certified.contains(element));
      spread.ifPresent(
          distribution ->
              add(
                  metal + " " + element.symbol(),
                  "composition",
                  content(distribution),
                  distribution,
                  (from, drawn) -> change.apply(from, old -> old.with(element, drawn))));
    }
  }

  private static String content(Distribution between) {
    return figure(between.quantile().at(0)) + " to " + figure(between.quantile().at(1)) + " wt%";
  }

  private static String figure(double share) {
    return new BigDecimal(share)
        .round(new MathContext(3))
        .setScale(3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private Optional<Distribution> content(
      Alloy alloy, Element element, double share, boolean certified) {
    if (!(share > 0)) {
      return Optional.empty();
    }
    if (settings.composition().isPresent() || certified) {
      double half = settings.composition().orElse(CERTIFICATE);
      return half > 0
          ? Optional.of(Distribution.uniform((1 - half) * share, (1 + half) * share))
          : Optional.empty();
    }
    return Optional.ofNullable(alloy.limits().get(element))
        .filter(limit -> limit.max() > limit.min())
        .map(limit -> Distribution.uniform(limit.min(), limit.max()));
  }
}
