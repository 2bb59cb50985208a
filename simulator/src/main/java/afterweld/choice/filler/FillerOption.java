package afterweld.choice.filler;

import afterweld.material.Composition;
import afterweld.quantity.Check;
import afterweld.section.WeldMetalTrial;
import afterweld.weldmetal.CrackTendency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * One filler held against the joint.
 *
 * @param filler name; {@code none} for a weld without filler
 * @param dilution share of base in the weld metal, 0 to 1
 * @param composition of the weld metal at that dilution
 * @param result what the weld metal becomes, after the treatment {@link
 *     afterweld.strength.Strength#NOT_PREDICTED} where that is not to be shown; empty if it is not
 *     predicted
 * @param answer whether it answers to heat treatment
 * @param answersFrom dilution from which on it does
 * @param crack tendency at the joint's dilution
 * @param crackOverBand tendencies at the low and the high end of the dilution's band
 * @param anodizedMatch whether it matches the base after anodizing: yes, no, or a test piece
 * @param ductility the guide's rating from 1 (best) to 4 (poor); empty if it has none
 * @param serviceAbove65C whether it may serve above 65 °C
 * @param allowed whether nothing rules it out for this joint
 * @param reasons plain sentences, the deciding one first
 * @param furnace a sentence on what a furnace makes of it; empty where nothing is computed
 * @param curve yield over dilution; empty where it is not predicted
 */
public record FillerOption(
    String filler,
    double dilution,
    Composition composition,
    Optional<WeldMetalTrial.Result> result,
    Answer answer,
    OptionalDouble answersFrom,
    CrackTendency crack,
    List<CrackTendency> crackOverBand,
    String anodizedMatch,
    OptionalInt ductility,
    boolean serviceAbove65C,
    boolean allowed,
    List<String> reasons,
    Optional<String> furnace,
    List<Point> curve) {

  /** Copies the lists. */
  public FillerOption {
    Check.share("dilution", dilution);
    Check.rising("dilutions of the curve", curve.stream().mapToDouble(Point::dilution).toArray());
    crackOverBand = List.copyOf(crackOverBand);
    reasons = List.copyOf(reasons);
    curve = List.copyOf(curve);
  }

  /** The name under which a weld without filler is judged. */
  public static final String WITHOUT = "none";

  /** Whether a filler is there: without one there is nothing to dilute. */
  public boolean hasFiller() {
    return !filler.equals(WITHOUT);
  }

  /** All that is said of it, never nothing. */
  public List<String> sentences() {
    List<String> said = Stream.concat(reasons.stream(), furnace.stream()).toList();
    return said.isEmpty() ? List.of("Nothing speaks against it.") : said;
  }

  /** The same filler where no strength of the weld is given. */
  FillerOption withoutStrength() {
    return new FillerOption(
        filler,
        dilution,
        composition,
        Optional.empty(),
        Answer.NO,
        OptionalDouble.empty(),
        crack,
        crackOverBand,
        anodizedMatch,
        ductility,
        serviceAbove65C,
        allowed,
        reasons,
        Optional.empty(),
        List.of());
  }

  /** Whether weld metal answers to a heat treatment after welding. */
  public enum Answer {
    YES("yes"),
    WITH_DILUTION("with dilution"),
    NO("no");

    private final String label;

    Answer(String label) {
      this.label = label;
    }

    /** The words used in results. */
    public String label() {
      return label;
    }
  }

  /**
   * A point of the curve.
   *
   * @param dilution 0 to 1
   * @param welded yield as welded, Pa
   * @param treated yield after the treatment, Pa; NaN where it is not to be shown
   */
  public record Point(double dilution, double welded, double treated) {
    /** Refuses what it cannot be. */
    public Point {
      Check.share("dilution", dilution);
    }
  }

  /** Yield at a dilution, by the curve; NaN without one. */
  private double at(double dilution, ToDoubleFunction<Point> state) {
    for (int i = 1; i < curve.size(); i++) {
      Point from = curve.get(i - 1);
      Point to = curve.get(i);
      if (dilution <= to.dilution()) {
        double part = (dilution - from.dilution()) / (to.dilution() - from.dilution());
        double low = state.applyAsDouble(from);
        return low + part * (state.applyAsDouble(to) - low);
      }
    }
    return Double.NaN;
  }

  /** Yield after heat treatment at a dilution, Pa; NaN where it is not shown. */
  public double treatedYieldAt(double at) {
    return at(at, Point::treated);
  }

  /** Yield as welded at a dilution, Pa; NaN where it is not predicted. */
  public double weldedYieldAt(double at) {
    return at(at, Point::welded);
  }
}
