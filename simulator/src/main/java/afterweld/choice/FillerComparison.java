package afterweld.choice;

import afterweld.choice.FillerOption.Answer;
import afterweld.choice.FillerOption.Point;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.FillerGuidance;
import afterweld.material.MaterialLibrary;
import afterweld.section.BrittleMix;
import afterweld.section.CrackTendency;
import afterweld.section.FillerChoice;
import afterweld.section.WeldCase;
import afterweld.section.WeldMetalTrial;
import afterweld.section.WeldPool;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Every filler of the library held against one joint: what its weld metal becomes at this dilution
 * and over all dilutions, whether it answers to the heat treatment, cracking, colour, service
 * temperature, and what rules it out.
 *
 * <p>Weld metal answers to heat treatment where its yield after the treatment reaches 85 % of the
 * base's (assumed; near what codes ask of heat-treated welds). Fillers with more than 3 % Mg are
 * not meant for it, and the size of their response is not shown.
 *
 * @param options allowed ones first, the strongest after treatment first among them
 * @param treatment the steps the strengths are computed for
 * @param ownTreatment whether the case names them itself
 * @param baseYield yield of the weaker base after the treatment, Pa
 * @param choice the filler of the case: its dilution and band
 * @param bestOverBand best allowed filler at the low end, at the dilution itself and at the high
 *     end
 */
public record FillerComparison(
    List<FillerOption> options,
    List<FurnaceStep> treatment,
    boolean ownTreatment,
    double baseYield,
    FillerChoice choice,
    List<String> bestOverBand) {
  private static final double ANSWERING_SHARE = 0.85;
  private static final double PRACTICAL_DILUTION = 0.8;
  private static final double DILUTION_WITHOUT_FILLER = 0.40;
  private static final double DILUTION_BAND = 0.15;
  private static final int CURVE_STEPS = 20;

  /** Copies the lists. */
  public FillerComparison {
    options = List.copyOf(options);
    treatment = List.copyOf(treatment);
    bestOverBand = List.copyOf(bestOverBand);
  }

  /** Compares all fillers of the library. */
  public static FillerComparison of(WeldCase weldCase, Requirement requirement) {
    List<Metal> metals = new ArrayList<>();
    MaterialLibrary.standard().fillers().forEach(filler -> metals.add(Metal.of(filler)));
    metals.add(new Metal(FillerOption.WITHOUT, WeldPool.composition(weldCase.withoutFiller(), 1)));
    return of(weldCase, requirement, metals);
  }

  /** Judges the case's own filler only. */
  public static FillerComparison ofOwnFiller(WeldCase weldCase, Requirement requirement) {
    return of(weldCase, requirement, weldCase.filler().alloy().stream().map(Metal::of).toList());
  }

  /** What is added to the pool; without filler it is more of what is there. */
  private record Metal(String name, Composition composition) {
    static Metal of(Alloy filler) {
      return new Metal(filler.name(), filler.composition());
    }

    boolean none() {
      return name.equals(FillerOption.WITHOUT);
    }
  }

  private static FillerComparison of(
      WeldCase weldCase, Requirement requirement, List<Metal> fillers) {
    boolean own = !weldCase.afterWeld().isEmpty();
    List<FurnaceStep> steps =
        own ? weldCase.afterWeld() : StandardTreatment.full(weldCase).orElse(List.of());
    WeldCase treated = weldCase.withAfterWeld(steps);
    FillerChoice choice = compared(weldCase.filler());
    WeldMetalTrial trial = WeldMetalTrial.of(treated);
    double base =
        Math.min(trial.base(weldCase.left()).yield(), trial.base(weldCase.right()).yield());
    List<FillerOption> options =
        fillers.parallelStream()
            .map(filler -> new Judge(treated, choice, requirement, trial, base, filler).option())
            .sorted(
                Comparator.comparing((FillerOption option) -> !option.allowed())
                    .thenComparing(option -> !option.hasFiller())
                    .thenComparing(option -> option.crack() == CrackTendency.HIGH)
                    .thenComparing(Comparator.comparingDouble(FillerComparison::rank).reversed())
                    .thenComparing(FillerOption::filler))
            .toList();
    return new FillerComparison(options, steps, own, base, choice, bestOverBand(options, choice));
  }

  /** The dilution fillers are compared at: a case without filler says nothing about it. */
  private static FillerChoice compared(FillerChoice choice) {
    return choice.alloy().isPresent()
        ? choice
        : new FillerChoice(
            Optional.empty(),
            DILUTION_WITHOUT_FILLER,
            DILUTION_WITHOUT_FILLER - DILUTION_BAND,
            DILUTION_WITHOUT_FILLER + DILUTION_BAND,
            false,
            choice.fromLeft());
  }

  private static double rank(FillerOption option) {
    return option.result().map(result -> result.treated().yield()).orElse(0.0);
  }

  private static List<String> bestOverBand(List<FillerOption> options, FillerChoice choice) {
    return List.of(choice.dilutionLow(), choice.dilution(), choice.dilutionHigh()).stream()
        .map(dilution -> best(options, dilution))
        .toList();
  }

  private static String best(List<FillerOption> options, double dilution) {
    return options.stream()
        .filter(option -> option.allowed() && option.hasFiller())
        .filter(option -> !option.curve().isEmpty())
        .max(Comparator.comparingDouble(option -> option.treatedYieldAt(dilution)))
        .map(FillerOption::filler)
        .orElse("none");
  }

  /** In which state the fillers are ranked: after a heat treatment, or as welded without one. */
  public String rankedState() {
    return treatment.isEmpty() ? "as welded" : "after heat treatment";
  }

  /** Whether the best filler is the same all over the band of the dilution. */
  public boolean clearOverBand() {
    return bestOverBand.stream().distinct().count() == 1;
  }

  /** Judges one filler. */
  private static final class Judge {
    private final WeldCase weldCase;
    private final FillerChoice choice;
    private final Requirement requirement;
    private final WeldMetalTrial trial;
    private final double base;
    private final Metal filler;
    private final List<String> against = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    Judge(
        WeldCase weldCase,
        FillerChoice choice,
        Requirement requirement,
        WeldMetalTrial trial,
        double base,
        Metal filler) {
      this.weldCase = weldCase;
      this.choice = choice;
      this.requirement = requirement;
      this.trial = trial;
      this.base = base;
      this.filler = filler;
    }

    FillerOption option() {
      double dilution = choice.dilution();
      Composition metal = mixed(dilution);
      boolean predicted = metal.of(Element.CU) <= 0.5 && !brittle();
      boolean rich = MagnesiumRule.rich(filler.composition());
      boolean shown = predicted && (!rich || weldCase.afterWeld().isEmpty());
      List<Point> curve = shown ? curve() : List.of();
      OptionalDouble from = answersFrom(curve);
      Answer answer = answer(from);
      CrackTendency crack = CrackTendency.of(metal);
      judge(predicted, rich, crack, answer, from);
      List<String> reasons = new ArrayList<>(against);
      reasons.addAll(remarks);
      return new FillerOption(
          filler.name(),
          filler.none() ? 1 : dilution,
          metal,
          predicted ? Optional.of(trial.of(metal)) : Optional.empty(),
          answer,
          from,
          crack,
          List.of(
              CrackTendency.of(mixed(choice.dilutionLow())),
              CrackTendency.of(mixed(choice.dilutionHigh()))),
          filler.none()
              ? "yes"
              : guidance().map(guide -> guide.anodizedMatch().label()).orElse("not listed"),
          ductility(),
          !rich,
          against.isEmpty(),
          reasons,
          curve);
    }

    private Composition mixed(double dilution) {
      Composition plate = WeldPool.composition(weldCase.withoutFiller(), 1);
      return plate.mixedWith(filler.composition(), dilution);
    }

    private Optional<FillerGuidance> guidance() {
      return MaterialLibrary.standard()
          .guidance(weldCase.left().alloy().name(), filler.name())
          .filter(
              guide ->
                  MaterialLibrary.standard()
                      .guidance(weldCase.right().alloy().name(), filler.name())
                      .isPresent());
    }

    /** The poorer of the guide's ratings for the two bases. */
    private OptionalInt ductility() {
      return guidance().isEmpty()
          ? OptionalInt.empty()
          : Stream.of(weldCase.left(), weldCase.right())
              .flatMap(
                  side ->
                      MaterialLibrary.standard()
                          .guidance(side.alloy().name(), filler.name())
                          .stream())
              .mapToInt(FillerGuidance::ductility)
              .max();
    }

    private List<Point> curve() {
      return IntStream.rangeClosed(0, CURVE_STEPS)
          .mapToObj(step -> (double) step / CURVE_STEPS)
          .map(dilution -> new Point(dilution, trial.of(mixed(dilution)).treated().yield()))
          .toList();
    }

    private OptionalDouble answersFrom(List<Point> curve) {
      return treatable()
          ? curve.stream()
              .filter(point -> point.yield() >= ANSWERING_SHARE * base)
              .mapToDouble(Point::dilution)
              .findFirst()
          : OptionalDouble.empty();
    }

    private boolean treatable() {
      return weldCase.left().alloy().heatTreatable() || weldCase.right().alloy().heatTreatable();
    }

    private static Answer answer(OptionalDouble from) {
      if (from.isEmpty() || from.getAsDouble() > PRACTICAL_DILUTION) {
        return Answer.NO;
      }
      return from.getAsDouble() == 0 ? Answer.YES : Answer.WITH_DILUTION;
    }

    private void judge(
        boolean predicted, boolean rich, CrackTendency crack, Answer answer, OptionalDouble from) {
      judgeMagnesium(rich);
      judgeService(rich);
      judgeColour();
      if (filler.none()) {
        judgeWithoutFiller(crack);
      } else if (guidance().isEmpty()) {
        against.add("Not a usual filler for this base.");
      }
      if (!predicted) {
        remarks.add(
            brittle()
                ? "The strength of such weld metal is not predicted."
                : "More than 0.5 % copper in the weld metal: its strength is not predicted.");
      }
      remarks.add(answerSentence(rich, predicted, answer, from));
      if (crack == CrackTendency.HIGH && !filler.none()) {
        remarks.add("The weld metal lies where cracking on solidification is likely.");
      }
      guidance()
          .filter(guide -> !guide.note().isEmpty())
          .ifPresent(guide -> remarks.add("Guide: " + guide.note() + "."));
    }

    private void judgeWithoutFiller(CrackTendency crack) {
      if (crack == CrackTendency.HIGH) {
        against.add(
            "Melted base alone, as 6xxx is, lies where cracking on solidification is likely: at most"
                + " a seal bead or a trial.");
      } else {
        remarks.add("Melted base alone: for thin, well fitted joints.");
      }
    }

    private void judgeMagnesium(boolean rich) {
      boolean solution = weldCase.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
      boolean age = weldCase.afterWeld().stream().anyMatch(Age.class::isInstance);
      if (rich && solution) {
        against.add("More than 3 % Mg: not for a heat treatment after welding.");
      } else if (rich && age) {
        remarks.add("More than 3 % Mg: ageing after welding only with caution.");
      }
      if (brittle()) {
        against.add("Silicon filler on a base with 2.5 % Mg or more: brittle Mg2Si forms.");
      }
    }

    /** Whether a silicon filler meets a base rich in magnesium. */
    private boolean brittle() {
      return !filler.none() && BrittleMix.forms(weldCase, filler.composition());
    }

    private void judgeService(boolean rich) {
      boolean warm = requirement.serviceTemperature().orElse(0) > MagnesiumRule.WARM_SERVICE;
      if (rich && warm) {
        against.add(
            "More than 3 % Mg: not for service above 65 °C, 150 °F (some guides draw the line at 5 %).");
      }
    }

    private void judgeColour() {
      boolean asked = requirement.anodizedMatch().orElse(false);
      boolean none =
          guidance()
              .filter(guide -> guide.anodizedMatch() == FillerGuidance.AnodizedMatch.NO)
              .isPresent();
      if (asked && none) {
        against.add("Turns grey when anodized; a match is asked for.");
      }
    }

    private String answerSentence(
        boolean rich, boolean predicted, Answer answer, OptionalDouble from) {
      if (!treatable()) {
        return "The base does not answer to heat treatment, so nothing is gained by one.";
      }
      if (rich) {
        return "Not meant for heat treatment after welding; no strength is promised after one.";
      }
      if (!predicted) {
        return "Whether it answers to heat treatment is not computed.";
      }
      return switch (answer) {
        case YES -> "Answers to this treatment by itself, at any dilution.";
        case WITH_DILUTION ->
            "Answers to this treatment only from "
                + Math.round(100 * from.getAsDouble())
                + " % dilution on, when enough of the base is in it"
                + (from.getAsDouble() > choice.dilution() ? ": not at this joint's." : ".");
        case NO -> "Hardly answers to this treatment at practical dilutions.";
      };
    }
  }
}
