package afterweld.choice.filler;

import afterweld.choice.answer.Requirement;
import afterweld.choice.practice.StandardTreatment;
import afterweld.material.Alloy;
import afterweld.section.WeldMetalTrial;
import afterweld.section.WeldSession;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.UsualDilution;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.CrackTendency;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.SiliconOnMagnesium;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * Every filler of the library held against one joint: what its weld metal becomes at this dilution
 * and over all dilutions, cracking, colour, service temperature, and what rules it out.
 *
 * <p>Chosen and ranked for what the case does with the weld: by the filler guides' order for its
 * purpose, fillers that would crack at this dilution after the others. Without a treatment in the
 * case it is judged as welded, and what the standard treatment of the base would do stands beside
 * it.
 *
 * @param options allowed ones first, the guides' first choice first among them
 * @param usual what the guides say for the pair
 * @param purpose what the filler is chosen for
 * @param treatment the steps the strengths after treatment are computed for; empty if none serves
 * @param ownTreatment whether the case names them itself
 * @param baseWelded yield of the weaker base as delivered, Pa
 * @param baseTreated the same after the treatment, of the bases that harden, Pa
 * @param choice the filler of the case: its dilution and band
 * @param bestOverBand strongest allowed filler in the judged state at the low end, at the dilution
 *     itself and at the high end
 */
public record FillerComparison(
    List<FillerOption> options,
    UsualFillers usual,
    FillerPurpose purpose,
    List<FurnaceStep> treatment,
    boolean ownTreatment,
    double baseWelded,
    double baseTreated,
    FillerChoice choice,
    List<String> bestOverBand) {

  /** Copies the lists. */
  public FillerComparison {
    options = List.copyOf(options);
    treatment = List.copyOf(treatment);
    bestOverBand = List.copyOf(bestOverBand);
  }

  /**
   * Compares all fillers of the library.
   *
   * @param session where welds that were computed are kept
   */
  public static FillerComparison of(
      WeldSession session, WeldCase weldCase, Requirement requirement) {
    List<FillerMetal> metals = new ArrayList<>();
    session.library().fillers().forEach(filler -> metals.add(FillerMetal.of(filler)));
    metals.add(FillerMetal.without(WeldPool.composition(weldCase.withoutFiller(), 1)));
    return of(session, weldCase, requirement, metals);
  }

  /**
   * Judges the case's own filler only.
   *
   * @param session where welds that were computed are kept
   */
  public static FillerComparison ofOwnFiller(
      WeldSession session, WeldCase weldCase, Requirement requirement) {
    return of(
        session,
        weldCase,
        requirement,
        weldCase.filler().alloy().stream().map(FillerMetal::of).toList());
  }

  private static FillerComparison of(
      WeldSession session, WeldCase weldCase, Requirement requirement, List<FillerMetal> fillers) {
    boolean own = !weldCase.afterWeld().isEmpty();
    List<FurnaceStep> steps = own ? weldCase.afterWeld() : standard(weldCase);
    FillerPurpose purpose = FillerPurpose.of(weldCase, requirement);
    FillerChoice choice = dilution(weldCase);
    UsualFillers usual = UsualFillers.of(weldCase);
    WeldMetalTrial trial = session.weldMetal(weldCase.withAfterWeld(steps));
    List<Side> sides = List.of(weldCase.left(), weldCase.right());
    List<Side> hardening = sides.stream().filter(side -> side.alloy().heatTreatable()).toList();
    double welded = weaker(sides, side -> trial.base(side).asWelded());
    double treated =
        weaker(hardening.isEmpty() ? sides : hardening, side -> trial.base(side).treated());
    FillerJudge.Joint joint =
        new FillerJudge.Joint(weldCase, choice, usual, purpose, steps, trial, treated);
    List<String> order = usual.suitable(purpose);
    List<FillerOption> options =
        fillers.parallelStream()
            .map(filler -> new FillerJudge(joint, filler).option())
            .sorted(byOrder(order))
            .toList();
    return new FillerComparison(
        options,
        usual,
        purpose,
        steps,
        own,
        welded,
        treated,
        choice,
        bestOverBand(ranked(options, fillers, PoolMetals.of(weldCase)), choice, own));
  }

  /** What the trade would do with the pair; nothing where it would spoil one of the two. */
  private static List<FurnaceStep> standard(WeldCase weldCase) {
    boolean both =
        weldCase.left().alloy().heatTreatable() && weldCase.right().alloy().heatTreatable();
    return both ? StandardTreatment.full(weldCase).orElse(List.of()) : List.of();
  }

  private static double weaker(List<Side> sides, Function<Side, Strength> state) {
    return sides.stream().mapToDouble(side -> state.apply(side).yield()).min().orElseThrow();
  }

  private static Comparator<FillerOption> byOrder(List<String> order) {
    return Comparator.comparing((FillerOption option) -> !option.allowed())
        .thenComparing(option -> !option.hasFiller())
        .thenComparing(option -> option.crack() == CrackTendency.HIGH)
        .thenComparing(
            option ->
                order.contains(option.filler()) ? order.indexOf(option.filler()) : order.size())
        .thenComparing(FillerOption::filler);
  }

  /** The filler of a case; where it has none, any filler at the dilution that its joint makes. */
  static FillerChoice dilution(WeldCase weldCase) {
    FillerChoice choice = weldCase.filler();
    if (choice.alloy().isPresent()) {
      return choice;
    }
    double usual = UsualDilution.of(weldCase.preparation(), weldCase.passes());
    return new FillerChoice(
        Optional.empty(),
        usual,
        Math.max(0, usual - UsualDilution.BAND),
        Math.min(1, usual + UsualDilution.BAND),
        false,
        choice.fromLeft());
  }

  /** Fillers that may be called the strongest: those whose strength is the model's own. */
  private static List<FillerOption> ranked(
      List<FillerOption> options, List<FillerMetal> fillers, PoolMetals metals) {
    Set<String> inDoubt =
        fillers.stream()
            .filter(filler -> SiliconOnMagnesium.holdsFor(metals.with(filler.composition())))
            .map(FillerMetal::name)
            .collect(Collectors.toSet());
    return options.stream()
        .filter(option -> option.allowed() && option.hasFiller())
        .filter(option -> !inDoubt.contains(option.filler()))
        .toList();
  }

  private static List<String> bestOverBand(
      List<FillerOption> options, FillerChoice choice, boolean treated) {
    return List.of(choice.dilutionLow(), choice.dilution(), choice.dilutionHigh()).stream()
        .map(
            dilution ->
                best(
                    options,
                    option ->
                        treated ? option.treatedYieldAt(dilution) : option.weldedYieldAt(dilution)))
        .toList();
  }

  private static String best(List<FillerOption> options, ToDoubleFunction<FillerOption> yield) {
    return options.stream()
        .filter(option -> !Double.isNaN(yield.applyAsDouble(option)))
        .max(Comparator.comparingDouble(yield))
        .map(FillerOption::filler)
        .orElse(FillerOption.WITHOUT);
  }

  /** The same where the weld is no joint whose strength is computed. */
  public FillerComparison withoutStrengths() {
    return new FillerComparison(
        options.stream().map(FillerOption::withoutStrength).toList(),
        usual,
        purpose,
        treatment,
        ownTreatment,
        baseWelded,
        baseTreated,
        choice,
        Collections.nCopies(bestOverBand.size(), FillerOption.WITHOUT));
  }

  /** The state in which the fillers are judged. */
  public String judgedState() {
    return ownTreatment ? "after heat treatment" : "as welded";
  }

  /** Yield of an option in the judged state, Pa; NaN where it is not shown. */
  public double judgedYield(FillerOption option, double dilution) {
    return ownTreatment ? option.treatedYieldAt(dilution) : option.weldedYieldAt(dilution);
  }

  /** Yield of the weaker base in the judged state, Pa. */
  public double judgedBase() {
    return ownTreatment ? baseTreated : baseWelded;
  }

  /** The option of that name, if it was compared. */
  public Optional<FillerOption> option(String filler) {
    return options.stream().filter(option -> option.filler().equals(filler)).findFirst();
  }

  /** Whether the case's own filler, or its weld without one, is allowed. */
  public boolean ownAllowed() {
    String own = choice.alloy().map(Alloy::name).orElse(FillerOption.WITHOUT);
    return option(own).filter(FillerOption::allowed).isPresent();
  }

  /** Whether the strongest filler is the same all over the band of the dilution. */
  public boolean clearOverBand() {
    return bestOverBand.stream().distinct().count() == 1;
  }

  /** Whether there is a treatment to show at all. */
  public boolean hardens() {
    return !treatment.isEmpty();
  }
}
