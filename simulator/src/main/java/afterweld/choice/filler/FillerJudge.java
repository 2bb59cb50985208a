package afterweld.choice.filler;

import afterweld.choice.filler.FillerOption.Answer;
import afterweld.choice.filler.FillerOption.Point;
import afterweld.choice.filler.FillerPurpose.Heat;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.FillerGuidance;
import afterweld.material.MaterialLibrary;
import afterweld.section.WeldMetalTrial;
import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.CrackTendency;
import afterweld.weldmetal.PoolMetals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Judges one filler on a joint.
 *
 * <p>Weld metal answers to heat treatment where its yield after a full treatment reaches 85 % of
 * the base's (assumed; near what codes ask of heat-treated welds). What a filler becomes in a
 * furnace is not shown where it has more than 3 % Mg or the guides say that it does not harden.
 */
final class FillerJudge {
  private static final double ANSWERING_SHARE = 0.85;
  private static final double PRACTICAL_DILUTION = 0.8;
  private static final double MOST_COPPER = 0.5;
  private static final int CURVE_STEPS = 20;

  private final Joint joint;
  private final FillerMetal filler;
  private final Composition metal;
  private final boolean rich;
  private final boolean unfit;
  private final boolean brittle;

  FillerJudge(Joint joint, FillerMetal filler) {
    this.joint = joint;
    this.filler = filler;
    this.metal = mixed(joint.choice.dilution());
    this.rich = MagnesiumRule.rich(filler.composition());
    this.unfit = rich || (!filler.none() && joint.usual.keepsSoft(filler.name()));
    PoolMetals pool = PoolMetals.of(joint.weld);
    this.brittle = BrittleMix.forms(pool.with(added()));
  }

  /**
   * What all fillers are held against.
   *
   * @param weld the case as written
   * @param choice its dilution and band
   * @param usual what the guides say for its bases
   * @param purpose what the filler is chosen for
   * @param treatment steps of {@code trial}
   * @param trial weld metals through those steps
   * @param baseTreated yield of the weaker base after them, Pa
   */
  record Joint(
      WeldCase weld,
      FillerChoice choice,
      UsualFillers usual,
      FillerPurpose purpose,
      List<FurnaceStep> treatment,
      WeldMetalTrial trial,
      double baseTreated) {
    boolean hardens() {
      return weld.left().alloy().heatTreatable() || weld.right().alloy().heatTreatable();
    }

    boolean full() {
      return !treatment.isEmpty() && (weld.afterWeld().isEmpty() || purpose.heat() == Heat.FULL);
    }
  }

  FillerOption option() {
    boolean predicted = metal.of(Element.CU) <= MOST_COPPER && !brittle;
    List<Point> curve = predicted ? curve() : List.of();
    OptionalDouble from = answersFrom(curve);
    CrackTendency crack = CrackTendency.of(metal);
    List<String> against =
        FillerCheck.against(joint.weld, joint.usual, joint.purpose, filler, metal);
    return new FillerOption(
        filler.name(),
        filler.none() ? 1 : joint.choice.dilution(),
        metal,
        predicted ? Optional.of(shown(metal)) : Optional.empty(),
        answer(from),
        from,
        crack,
        List.of(
            CrackTendency.of(mixed(joint.choice.dilutionLow())),
            CrackTendency.of(mixed(joint.choice.dilutionHigh()))),
        ColourMatch.of(joint.weld, metal, filler).word(),
        ductility(),
        !rich,
        against.isEmpty(),
        against.isEmpty() ? remarks(crack) : against,
        against.isEmpty()
            ? Optional.of(predicted ? furnace(from) : unpredicted())
            : Optional.empty(),
        curve);
  }

  private Optional<Composition> added() {
    return filler.none() ? Optional.empty() : Optional.of(filler.composition());
  }

  private Composition mixed(double dilution) {
    return filler.welded(joint.weld, dilution);
  }

  /** An unfit filler is shown through a furnace only where nothing of the joint hardens there. */
  private WeldMetalTrial.Result shown(Composition of) {
    WeldMetalTrial.Result result = joint.trial.of(of, added());
    return unfit && joint.full()
        ? new WeldMetalTrial.Result(result.asWelded(), Strength.NOT_PREDICTED)
        : result;
  }

  private List<Point> curve() {
    return IntStream.rangeClosed(0, CURVE_STEPS)
        .mapToObj(step -> point((double) step / CURVE_STEPS))
        .toList();
  }

  private Point point(double dilution) {
    WeldMetalTrial.Result result = shown(mixed(dilution));
    return new Point(dilution, result.asWelded().yield(), result.treated().yield());
  }

  private OptionalDouble answersFrom(List<Point> curve) {
    return joint.hardens() && joint.full()
        ? curve.stream()
            .filter(point -> point.treated() >= ANSWERING_SHARE * joint.baseTreated)
            .mapToDouble(Point::dilution)
            .findFirst()
        : OptionalDouble.empty();
  }

  private static Answer answer(OptionalDouble from) {
    if (from.isEmpty() || from.getAsDouble() > PRACTICAL_DILUTION) {
      return Answer.NO;
    }
    return from.getAsDouble() == 0 ? Answer.YES : Answer.WITH_DILUTION;
  }

  private List<FillerGuidance> guidance() {
    List<FillerGuidance> both =
        Stream.of(joint.weld.left(), joint.weld.right()).flatMap(this::guidance).toList();
    return both.size() == 2 ? both : List.of();
  }

  private Stream<FillerGuidance> guidance(Side side) {
    return MaterialLibrary.standard().guidance(side.alloy().name(), filler.name()).stream();
  }

  /** The poorer of the guide's ratings for the two bases. */
  private OptionalInt ductility() {
    return guidance().stream().mapToInt(FillerGuidance::ductility).max();
  }

  private List<String> remarks(CrackTendency crack) {
    List<String> remarks = new ArrayList<>();
    if (crack == CrackTendency.HIGH) {
      remarks.add("Cracking high at this dilution: less base in the weld, or another filler.");
    }
    if (filler.none()) {
      remarks.add("Melted base alone: for thin, well fitted edges.");
    } else if (joint.usual.onlyRated(filler.name())) {
      remarks.add(
          "Rated well by the filler guides on these bases, but not among their choices for the"
              + " pair.");
    }
    remarks.addAll(notes());
    return remarks;
  }

  /** The guides' notes; where those for the two bases differ, each names its base. */
  private List<String> notes() {
    List<FillerGuidance> words = guidance();
    boolean alike = words.stream().map(FillerGuidance::note).distinct().count() < 2;
    return words.stream()
        .filter(word -> !word.note().isEmpty())
        .map(word -> (alike ? "Guide: " : "Guide, on " + word.base() + ": ") + word.note() + ".")
        .distinct()
        .toList();
  }

  private String unpredicted() {
    return brittle
        ? "The strength of such weld metal is not predicted."
        : "More than 0.5 % copper in the weld metal: its strength is not predicted.";
  }

  private String furnace(OptionalDouble from) {
    if (!joint.hardens() || joint.treatment.isEmpty()) {
      return "No furnace hardens both bases, so nothing is gained by one.";
    }
    if (!joint.full()) {
      return "Aged without solution treatment it is taken no stronger than as welded.";
    }
    if (unfit) {
      return filler.none()
          ? "Nothing is promised after a full treatment."
          : "It takes part in no full treatment.";
    }
    double share = shown(metal).treated().yield() / joint.baseTreated;
    if (Double.isNaN(share)) {
      return "What it becomes in this furnace is not predicted.";
    }
    return (joint.weld.afterWeld().isEmpty()
            ? "Were it fully treated, it would reach "
            : "Reaches ")
        + Math.round(100 * share)
        + " % of the base's yield at this dilution, "
        + switch (answer(from)) {
          case YES -> "85 % at any.";
          case WITH_DILUTION ->
              "85 % from " + Math.round(100 * from.getAsDouble()) + " % dilution on.";
          case NO -> "85 % at no practical one.";
        };
  }
}
