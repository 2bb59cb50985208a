package afterweld.weld;

import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/**
 * A case in the making: what is not named stays as it was. Not for sharing between threads; the
 * case that it is done with is immutable.
 */
public final class WeldCaseDraft {
  private String title;
  private Side left;
  private Side right;
  private Joint joint;
  private Preparation preparation;
  private Optional<Ring> ring;
  private Optional<Seam> seam;
  private Optional<FillerChoice> filler;
  private List<Pass> passes;
  private OptionalDouble reinforcement;
  private double ambient;
  private double depth;
  private Optional<HeatFlow> heatFlow;
  private OptionalDouble naturalAge;
  private List<FurnaceStep> afterWeld;
  private List<Warning> notes;

  WeldCaseDraft(Side left, Side right) {
    this.title = "";
    this.left = left;
    this.right = right;
    this.joint = Joint.BUTT;
    this.preparation = Preparation.SQUARE;
    this.ring = Optional.empty();
    this.seam = Optional.empty();
    this.filler = Optional.empty();
    this.passes = List.of();
    this.reinforcement = OptionalDouble.empty();
    this.ambient = WeldProcedure.USUAL_AMBIENT;
    this.depth = WeldProcedure.usualDepth(Math.min(left.thickness(), right.thickness()));
    this.heatFlow = Optional.empty();
    this.naturalAge = OptionalDouble.empty();
    this.afterWeld = List.of();
    this.notes = List.of();
  }

  WeldCaseDraft(WeldCase from) {
    this.title = from.title();
    this.left = from.left();
    this.right = from.right();
    this.joint = from.joint();
    this.preparation = from.preparation();
    this.ring = from.ring();
    this.seam = from.seam();
    this.filler = Optional.of(from.filler());
    this.passes = from.passes();
    this.reinforcement = from.reinforcement();
    this.ambient = from.ambient();
    this.depth = from.depth();
    this.heatFlow = from.heatFlow();
    this.naturalAge = OptionalDouble.of(from.naturalAge());
    this.afterWeld = from.afterWeld();
    this.notes = from.notes();
  }

  /** What the joint is called. */
  public WeldCaseDraft title(String other) {
    title = other;
    return this;
  }

  /** Both parts. */
  public WeldCaseDraft sides(Side otherLeft, Side otherRight) {
    left = otherLeft;
    right = otherRight;
    return this;
  }

  /** How they meet, and how their edges are prepared. */
  public WeldCaseDraft joint(Joint other, Preparation edges) {
    joint = other;
    preparation = edges;
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
    filler = Optional.of(other);
    return this;
  }

  /** In the order they are welded. */
  public WeldCaseDraft passes(List<Pass> others) {
    passes = others;
    return this;
  }

  /**
   * Height of the bead above flush.
   *
   * @param height m
   */
  public WeldCaseDraft reinforcement(double height) {
    reinforcement = OptionalDouble.of(height);
    return this;
  }

  /**
   * Room temperature.
   *
   * @param kelvin K
   */
  public WeldCaseDraft ambient(double kelvin) {
    ambient = kelvin;
    return this;
  }

  /**
   * Of the traverse below the arc side.
   *
   * @param below m
   */
  public WeldCaseDraft depth(double below) {
    depth = below;
    return this;
  }

  /** The temperature field to use, in place of the one by rule. */
  public WeldCaseDraft heatFlow(HeatFlow other) {
    heatFlow = Optional.of(other);
    return this;
  }

  /**
   * Time between welding and the next step or the test.
   *
   * @param time s
   */
  public WeldCaseDraft naturalAge(double time) {
    naturalAge = OptionalDouble.of(time);
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

  /**
   * The case.
   *
   * @throws IllegalArgumentException with what is wrong with its parts, its procedure, its filler
   *     and what comes after, each of them by its first fault
   */
  public WeldCase done() {
    List<String> faults = new ArrayList<>();
    Optional<Parts> parts =
        tried(faults, () -> new Parts(left, right, joint, preparation, ring, seam));
    Optional<WeldProcedure> procedure =
        tried(faults, () -> new WeldProcedure(passes, reinforcement, ambient, depth, heatFlow));
    double wait = naturalAge.orElse(AfterWelding.usualWait(afterWeld));
    Optional<AfterWelding> after = tried(faults, () -> new AfterWelding(wait, afterWeld));
    if (filler.isEmpty()) {
      faults.add("no filler; expected a FillerChoice, of no alloy where none is added");
    }
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", faults));
    }
    return new WeldCase(
        title,
        parts.orElseThrow(),
        procedure.orElseThrow(),
        filler.orElseThrow(),
        after.orElseThrow(),
        notes);
  }

  private static <T> Optional<T> tried(List<String> faults, Supplier<T> made) {
    try {
      return Optional.of(made.get());
    } catch (IllegalArgumentException fault) {
      faults.add(fault.getMessage());
      return Optional.empty();
    }
  }
}
