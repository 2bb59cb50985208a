package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One joint with its procedure and its heat treatment: everything the simulation needs and nothing
 * else. SI units and kelvin.
 *
 * @param title what the joint is called
 * @param left through or thicker part; negative distances
 * @param right other part; positive distances
 * @param joint how they meet
 * @param preparation how the edges are prepared
 * @param ring the tube, if the weld goes round one
 * @param seam start, end and length of a straight weld, if they count
 * @param filler filler and dilution
 * @param passes in the order they are welded, at least one
 * @param reinforcement height of the bead above flush, m; empty where it follows the bead width
 *     that the thermal model finds
 * @param ambient K
 * @param depth of the traverse below the arc side, m
 * @param naturalAge time between welding and the next step or the test, s
 * @param afterWeld heat treatment, in order; empty if none
 * @param heatFlow temperature field to use; empty where the rule decides
 * @param notes what the reader of the case filled in by rule, in sentences for the result
 */
public record WeldCase(
    String title,
    Side left,
    Side right,
    Joint joint,
    Preparation preparation,
    Optional<Ring> ring,
    Optional<Seam> seam,
    FillerChoice filler,
    List<Pass> passes,
    OptionalDouble reinforcement,
    double ambient,
    double depth,
    double naturalAge,
    List<FurnaceStep> afterWeld,
    Optional<HeatFlow> heatFlow,
    List<Warning> notes) {

  /** Copies the lists. */
  public WeldCase {
    Check.positive("ambient temperature", ambient, "K");
    Check.notNegative("reinforcement", reinforcement, "m");
    Check.within("depth", depth, 0, Math.min(left.thickness(), right.thickness()), "m");
    Check.notNegative("time at room temperature", naturalAge, "s");
    Check.some("passes of a weld", passes);
    if (ring.isPresent() && seam.isPresent()) {
      throw new IllegalArgumentException("a ring and a seam in one weld");
    }
    passes = List.copyOf(passes);
    afterWeld = List.copyOf(afterWeld);
    notes = List.copyOf(notes);
  }

  /** A case without a seam that leaves the choice of the temperature field to the rule. */
  public WeldCase(
      String title,
      Side left,
      Side right,
      Joint joint,
      Preparation preparation,
      Optional<Ring> ring,
      FillerChoice filler,
      List<Pass> passes,
      OptionalDouble reinforcement,
      double ambient,
      double depth,
      double naturalAge,
      List<FurnaceStep> afterWeld,
      List<Warning> notes) {
    this(
        title,
        left,
        right,
        joint,
        preparation,
        ring,
        Optional.empty(),
        filler,
        passes,
        reinforcement,
        ambient,
        depth,
        naturalAge,
        afterWeld,
        Optional.empty(),
        notes);
  }

  /**
   * Height of the bead above flush where nobody measured it: 0.15 of its width, at most 3 mm
   * (common practice).
   *
   * @param beadWidth surface width, m
   * @return m
   */
  public static double usualReinforcement(double beadWidth) {
    return Math.min(0.15 * beadWidth, 0.003);
  }

  /** Whether the right of the weld mirrors the left: like parts, and no arc beside the joint. */
  public boolean symmetric() {
    return left.equals(right) && passes.stream().allMatch(pass -> pass.offset() == 0);
  }

  /** Whether it joins tubes. */
  public boolean ofTubes() {
    return ring.isPresent() || joint == Joint.SOCKET;
  }

  /** Whether a side of it is a casting. */
  public boolean hasCasting() {
    return left.alloy().casting() || right.alloy().casting();
  }

  /** Whether a side of it is wrought metal that hardens by heat treatment. */
  public boolean hardensWrought() {
    return Stream.of(left, right)
        .anyMatch(side -> side.alloy().heatTreatable() && !side.alloy().casting());
  }

  /** The same weld with another heat treatment after it. */
  public WeldCase withAfterWeld(List<FurnaceStep> steps) {
    return change().afterWeld(steps).done();
  }

  /** The weld with nothing after it and without a name: equal for cases that weld alike. */
  public WeldCase weldAlone() {
    return change().title("").naturalAge(0).afterWeld(List.of()).notes(List.of()).done();
  }

  /** The same weld without filler: its weld metal is melted base alone. */
  public WeldCase withoutFiller() {
    return change()
        .filler(new FillerChoice(Optional.empty(), 1, 1, 1, true, filler.fromLeft()))
        .done();
  }

  /** The way of the arc. */
  public WeldCourse course() {
    return ring.map(Ring::course).or(() -> seam.map(Seam::course)).orElseGet(WeldCourse::steady);
  }

  /** A draft with everything of this case, to be changed. */
  public WeldCaseDraft change() {
    return new WeldCaseDraft(this);
  }
}
