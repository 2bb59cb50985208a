package afterweld.choice.schedule;

import afterweld.choice.practice.HardeningAge;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.Quench;
import afterweld.thermal.furnace.FurnaceStep.QuenchAtRate;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.CoatingBake;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldPool;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What goes to the furnace shop: a joint with its treatment, and what can be read off it.
 *
 * @param weldCase with the treatment in it
 * @param own whether the case names the treatment
 */
public record FurnaceOrder(WeldCase weldCase, boolean own) {

  /** The steps in their order. */
  public List<FurnaceStep> steps() {
    return weldCase.afterWeld();
  }

  /** The two sides, or one if they are alike. */
  public Stream<Side> sides() {
    return Stream.of(weldCase.left(), weldCase.right()).distinct();
  }

  /** The sides that a heat treatment hardens. */
  Stream<Side> hardening() {
    return sides().filter(side -> side.alloy().heatTreatable());
  }

  /** Whether a part hardens by heat. */
  public boolean hardens() {
    return hardening().findAny().isPresent();
  }

  /** Whether a part is a casting. */
  public boolean hasCasting() {
    return weldCase.hasCasting();
  }

  boolean hasWrought() {
    return sides().anyMatch(side -> !side.alloy().casting());
  }

  /** Whether it bakes a coating and is not meant to harden. */
  public boolean bakes() {
    return CoatingBake.is(weldCase);
  }

  /** Whether a step bakes a coating. */
  public boolean bakes(int index) {
    return bakes() || HardeningAge.bakedAfter(steps(), index);
  }

  /** Whether it solution treats. */
  public boolean dissolves() {
    return has(SolutionTreat.class);
  }

  /** Place of the last step of a kind; -1 if there is none. */
  int last(Class<? extends FurnaceStep> kind) {
    return IntStream.range(0, steps().size())
        .filter(place -> kind.isInstance(steps().get(place)))
        .max()
        .orElse(-1);
  }

  /** Whether it ages artificially. */
  public boolean ages() {
    return has(Age.class);
  }

  /** Whether softening is all that the furnace is for. */
  public boolean onlyAnneals() {
    return has(Anneal.class) && !dissolves() && !ages();
  }

  private boolean has(Class<? extends FurnaceStep> kind) {
    return steps().stream().anyMatch(kind::isInstance);
  }

  /** Whether a step cools from the solution temperature. */
  public static boolean isQuench(FurnaceStep step) {
    return step instanceof Quench || step instanceof QuenchAtRate;
  }

  /** Whether an ageing follows this step. */
  public boolean agesAfter(FurnaceStep step) {
    return steps().stream().skip(steps().indexOf(step) + 1L).anyMatch(Age.class::isInstance);
  }

  /** Time at room temperature between this step and the next furnace, s. */
  public double restAfter(FurnaceStep step) {
    return steps().stream()
        .skip(steps().indexOf(step) + 1L)
        .takeWhile(NaturalAge.class::isInstance)
        .mapToDouble(rest -> ((NaturalAge) rest).time())
        .sum();
  }

  /** The practice that a limit comes from, by the kind of metal. */
  public String practice() {
    String wrought = hasWrought() ? "AMS 2770" : "";
    String cast = hasCasting() ? "AMS 2771" : "";
    String both = hasWrought() && hasCasting() ? " and " : "";
    return wrought + both + cast + " practice, memory";
  }

  /** Lowest solidus of the bases, K. */
  public double baseSolidus() {
    return WeldPool.baseSolidus(weldCase.left(), weldCase.right());
  }

  /** Where the weld metal may begin to melt, K. */
  public double weldMetalSolidus() {
    return WeldPool.solidus(
        WeldPool.composition(weldCase, weldCase.filler().dilution()), baseSolidus());
  }

  boolean weldMetalOnlyMayMelt() {
    return WeldPool.meltingPossibleFrom450(
        WeldPool.composition(weldCase, weldCase.filler().dilution()));
  }
}
