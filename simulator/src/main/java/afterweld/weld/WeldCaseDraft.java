package afterweld.weld;

import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.List;
import java.util.Optional;

/**
 * A case while some of it is changed; the rest stays as it was. Mutable and for one thread.
 *
 * <pre>{@code
 * WeldCase other = weldCase.change().naturalAge(86400).afterWeld(List.of()).done();
 * }</pre>
 */
public final class WeldCaseDraft {
  private final WeldCase from;
  private String title;
  private Side left;
  private Side right;
  private Optional<Ring> ring;
  private Optional<Seam> seam;
  private FillerChoice filler;
  private List<Pass> passes;
  private double naturalAge;
  private List<FurnaceStep> afterWeld;
  private List<Warning> notes;

  WeldCaseDraft(WeldCase from) {
    this.from = from;
    this.title = from.title();
    this.left = from.left();
    this.right = from.right();
    this.ring = from.ring();
    this.seam = from.seam();
    this.filler = from.filler();
    this.passes = from.passes();
    this.naturalAge = from.naturalAge();
    this.afterWeld = from.afterWeld();
    this.notes = from.notes();
  }

  /** What the joint is called. */
  WeldCaseDraft title(String other) {
    title = other;
    return this;
  }

  /** Both parts. */
  public WeldCaseDraft sides(Side otherLeft, Side otherRight) {
    left = otherLeft;
    right = otherRight;
    return this;
  }

  /** The tube. */
  public WeldCaseDraft ring(Ring other) {
    ring = Optional.of(other);
    return this;
  }

  /** The straight weld whose start and end count. */
  public WeldCaseDraft seam(Seam other) {
    seam = Optional.of(other);
    return this;
  }

  /** Filler and dilution. */
  public WeldCaseDraft filler(FillerChoice other) {
    filler = other;
    return this;
  }

  /** In the order they are welded. */
  public WeldCaseDraft passes(List<Pass> others) {
    passes = others;
    return this;
  }

  /**
   * Time between welding and the next step or the test.
   *
   * @param time s
   */
  public WeldCaseDraft naturalAge(double time) {
    naturalAge = time;
    return this;
  }

  /** Heat treatment, in order. */
  public WeldCaseDraft afterWeld(List<FurnaceStep> steps) {
    afterWeld = steps;
    return this;
  }

  /** Sentences of the reader of the case. */
  public WeldCaseDraft notes(List<Warning> others) {
    notes = others;
    return this;
  }

  /** The changed case. */
  public WeldCase done() {
    return new WeldCase(
        title,
        left,
        right,
        from.joint(),
        from.preparation(),
        ring,
        seam,
        filler,
        passes,
        from.reinforcement(),
        from.ambient(),
        from.depth(),
        naturalAge,
        afterWeld,
        from.heatFlow(),
        notes);
  }
}
