package afterweld.weld;

import afterweld.quantity.Check;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One joint with its procedure and its heat treatment: everything the simulation needs and nothing
 * else. SI units and kelvin.
 *
 * <pre>{@code
 * WeldCase bracket = WeldCase.of(plate, plate).filler(filler).passes(List.of(pass)).done();
 * WeldCase slower = bracket.change().passes(List.of(slow)).done();
 * }</pre>
 *
 * @param title what the joint is called
 * @param parts what is joined
 * @param procedure how it is welded
 * @param filler filler and dilution
 * @param after what happens to it after welding
 * @param notes what the reader of the case filled in by rule, in sentences for the result
 */
public record WeldCase(
    String title,
    Parts parts,
    WeldProcedure procedure,
    FillerChoice filler,
    AfterWelding after,
    List<Warning> notes) {

  /** Copies the list, and refuses a depth below the thinner part. */
  public WeldCase {
    Check.within("depth", procedure.depth(), 0, parts.thinnest(), "m");
    notes = List.copyOf(notes);
  }

  /**
   * A butt joint of square edges to begin with: at 20 °C, looked at half way through the thinner
   * part, not heat treated and tested after the usual wait. It lacks filler and passes.
   */
  public static WeldCaseDraft of(Side left, Side right) {
    return new WeldCaseDraft(left, right);
  }

  /** Through or thicker part; negative distances. */
  public Side left() {
    return parts.left();
  }

  /** Other part; positive distances. */
  public Side right() {
    return parts.right();
  }

  /** How the parts meet. */
  public Joint joint() {
    return parts.joint();
  }

  /** How the edges are prepared. */
  public Preparation preparation() {
    return parts.preparation();
  }

  /** The tube, if the weld goes round one. */
  public Optional<Ring> ring() {
    return parts.ring();
  }

  /** Start, end and length of a straight weld, if they count. */
  public Optional<Seam> seam() {
    return parts.seam();
  }

  /** In the order they are welded, at least one. */
  public List<Pass> passes() {
    return procedure.passes();
  }

  /** Height of the bead above flush, m; empty where it follows the bead width. */
  public OptionalDouble reinforcement() {
    return procedure.reinforcement();
  }

  /** Room temperature, K. */
  public double ambient() {
    return procedure.ambient();
  }

  /** Of the traverse below the arc side, m. */
  public double depth() {
    return procedure.depth();
  }

  /** Temperature field to use; empty where the rule decides. */
  public Optional<HeatFlow> heatFlow() {
    return procedure.heatFlow();
  }

  /** Time between welding and the next step or the test, s. */
  public double naturalAge() {
    return after.naturalAge();
  }

  /** Heat treatment, in order; empty if none. */
  public List<FurnaceStep> afterWeld() {
    return after.steps();
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
    return left().equals(right()) && passes().stream().allMatch(pass -> pass.offset() == 0);
  }

  /** Whether it joins tubes. */
  public boolean ofTubes() {
    return parts.tubes();
  }

  /** Whether a side of it is a casting. */
  public boolean hasCasting() {
    return parts.both().anyMatch(side -> side.alloy().casting());
  }

  /** Whether a side of it is wrought metal that hardens by heat treatment. */
  public boolean hardensWrought() {
    return parts.both().anyMatch(side -> side.alloy().heatTreatable() && !side.alloy().casting());
  }

  /** The same weld with another heat treatment after it. */
  public WeldCase withAfterWeld(List<FurnaceStep> steps) {
    return new WeldCase(
        title, parts, procedure, filler, new AfterWelding(naturalAge(), steps), notes);
  }

  /** The weld with nothing after it and without a name: equal for cases that weld alike. */
  public WeldCase weldAlone() {
    return new WeldCase("", parts, procedure, filler, new AfterWelding(0, List.of()), List.of());
  }

  /** The same weld without filler: its weld metal is melted base alone. */
  public WeldCase withoutFiller() {
    FillerChoice none = new FillerChoice(Optional.empty(), 1, 1, 1, true, filler.fromLeft());
    return new WeldCase(title, parts, procedure, none, after, notes);
  }

  /** The way of the arc. */
  public WeldCourse course() {
    return ring().map(Ring::course).or(() -> seam().map(Seam::course)).orElse(WeldCourse.steady());
  }

  /** A draft with everything of this case, to be changed. */
  public WeldCaseDraft change() {
    return new WeldCaseDraft(this);
  }
}
