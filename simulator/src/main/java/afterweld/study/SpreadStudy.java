package afterweld.study;

import afterweld.choice.RequirementCheck;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.joint.JointStrength;
import afterweld.quantity.Check;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.strength.ModelError;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How sure one can be of a joint: many joints simulated with inputs drawn from their spreads, each
 * through the whole chain from arc to tension test. SI units; all values are of the last state,
 * dressed flush.
 *
 * @param section of the case as written, which every other command shows
 * @param joint of that section, dressed flush in the last state
 * @param shift how far the middle of the joints lies from that joint; empty if not predicted
 * @param runs joints simulated
 * @param seed of the draws
 * @param leftOut draws that make no weld (a width the arc cannot melt, say), left out of the rest
 * @param unsound why each of the runs whose weld is no sound joint is none: they count as not met,
 *     and none of the figures but those on meeting the requirement is of them
 * @param inputs what was spread, and how
 * @param modelError what stands for the model's own error
 * @param process with exact models: only the inputs spread
 * @param total with the model's error as well
 * @param stations bands along the section
 * @param meltingPossible runs whose solution treatment reaches a solidus; empty without one
 * @param requirement what is asked
 */
public record SpreadStudy(
    SectionProfile section,
    JointStrength joint,
    Optional<MedianShift> shift,
    int runs,
    long seed,
    int leftOut,
    List<String> unsound,
    List<UncertainInput> inputs,
    ModelError modelError,
    View process,
    View total,
    List<StationBand> stations,
    Optional<Share> meltingPossible,
    Requirement requirement) {
  /** Runs where neither the case nor the user says how many. */
  public static final int USUAL_RUNS = 200;

  /** Seed where neither the case nor the user says one. */
  public static final long USUAL_SEED = 1;

  /** Copies the lists. */
  public SpreadStudy {
    unsound = List.copyOf(unsound);
    inputs = List.copyOf(inputs);
    stations = List.copyOf(stations);
  }

  /**
   * What nothing is claimed of the case as written for, as a sentence names it: then no chance is
   * given either. Empty if nothing stands against it.
   */
  public String against() {
    return RequirementCheck.of(section, joint, requirement).against();
  }

  /** How the requirement stands for the case as written, its reasons in a system of units. */
  public Judgement judgement(UnitSystem units) {
    return RequirementCheck.of(section, joint, requirement).judgement(units);
  }

  /**
   * The runs under one set of assumptions.
   *
   * @param tensile joint tensile strength, Pa
   * @param proof joint proof stress, Pa, of the runs that have one
   * @param decidingYield the yield that is judged, Pa: the proof stress, or the lowest local yield
   *     where the gauge misses the softest metal
   * @param lowestHardness of the softest place, HV
   * @param tensileP5 95 % interval of the 5 % quantile of the tensile strength, Pa; empty if there
   *     are too few runs or no strength is predicted
   * @param withoutProof runs that reach their maximum before a proof stress
   * @param failsIn share of runs by weakest zone, most first; empty if not predicted
   * @param undecided runs in which the next zone is within 2 %, so that no place can be named
   * @param met runs that meet all that is asked, by the rule of {@link
   *     afterweld.choice.RequirementCheck}; empty if no strength is asked, predicted or claimed
   * @param strengthsMet runs that meet the strength and hardness asked
   * @param beyondStrength runs that do not count as met whatever their strength, by what keeps them
   * @param target what the indices are of, in words
   * @param firstOrder part of its variance by input or group, largest first
   */
  public record View(
      Quantiles tensile,
      Quantiles proof,
      Quantiles decidingYield,
      Quantiles lowestHardness,
      Optional<Interval> tensileP5,
      int withoutProof,
      Map<String, Share> failsIn,
      Share undecided,
      Optional<Share> met,
      Optional<Share> strengthsMet,
      Map<String, Share> beyondStrength,
      String target,
      List<Influence> firstOrder) {
    /** Copies the list. */
    public View {
      firstOrder = List.copyOf(firstOrder);
    }

    /** What no input explains on its own. */
    public double interactionOrNoise() {
      return 1 - firstOrder.stream().mapToDouble(Influence::index).sum();
    }
  }

  /**
   * Two ends.
   *
   * @param low Pa
   * @param high Pa
   * @param coverage confidence that the true value lies between
   */
  public record Interval(double low, double high, double coverage) {
    /** Refuses what it cannot be. */
    public Interval {
      Check.rising("interval", low, high);
      Check.share("coverage", coverage);
    }
  }

  /**
   * What an input does to the joint.
   *
   * @param input name of the input or group
   * @param index first-order index; slightly below 0 means none, NaN that nothing varies
   * @param error its standard error; NaN if nothing varies
   */
  public record Influence(String input, double index, double error) {
    /** Refuses what it cannot be. */
    public Influence {
      Check.said("input", input);
    }
  }

  /**
   * One place of the section.
   *
   * @param distance m from the weld centre
   * @param hardness HV, with the model's error
   * @param yield Pa, with the model's error
   * @param hardnessProcess HV, inputs only
   * @param yieldProcess Pa, inputs only
   */
  public record StationBand(
      double distance,
      Quantiles hardness,
      Quantiles yield,
      Quantiles hardnessProcess,
      Quantiles yieldProcess) {
    /** Refuses what it cannot be. */
    public StationBand {
      Check.finite("distance", distance, "m");
    }
  }
}
