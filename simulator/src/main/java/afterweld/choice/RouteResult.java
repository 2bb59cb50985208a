package afterweld.choice;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.joint.JointStrength;
import afterweld.quantity.Check;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One route, simulated in full.
 *
 * @param name of the route
 * @param steps what the shop does, in order
 * @param rest at room temperature between welding and the furnace, or until the test, s
 * @param treatment the furnace steps
 * @param joint the finished joint, dressed flush
 * @param lowestHardness of the softest place, HV; NaN where nothing is claimed
 * @param judgement how it stands against what is asked
 * @param strengths the strengths asked, one by one
 * @param constraints each on its own
 * @param shopSteps number of steps, for the ranking
 * @param furnaceHours time in furnaces, h
 * @param distortion 1 none, 0.5 moderate, 0 severe
 * @param reasons plain sentences
 */
public record RouteResult(
    String name,
    List<String> steps,
    double rest,
    List<FurnaceStep> treatment,
    JointStrength joint,
    double lowestHardness,
    Judgement judgement,
    List<StrengthFinding> strengths,
    List<RouteConstraint> constraints,
    int shopSteps,
    double furnaceHours,
    double distortion,
    List<String> reasons) {

  /** Copies the lists. */
  public RouteResult {
    Check.notNegative("rest", rest, "s");
    Check.within("steps in the shop", shopSteps, 1, Integer.MAX_VALUE, "");
    Check.notNegative("hours in the furnace", furnaceHours, "h");
    Check.share("distortion", distortion);
    steps = List.copyOf(steps);
    treatment = List.copyOf(treatment);
    strengths = List.copyOf(strengths);
    constraints = List.copyOf(constraints);
    reasons = List.copyOf(reasons);
  }

  /** The same with more to say. */
  RouteResult and(List<String> more) {
    List<String> all = new ArrayList<>(reasons);
    all.addAll(more);
    return new RouteResult(
        name,
        steps,
        rest,
        treatment,
        joint,
        lowestHardness,
        judgement,
        strengths,
        constraints,
        shopSteps,
        furnaceHours,
        distortion,
        all);
  }

  /** Whether no constraint rules it out. */
  public boolean allowed() {
    return constraints.stream()
        .noneMatch(constraint -> constraint.state() == RouteConstraint.State.NOT_MET);
  }

  /** Whether a constraint waits for an answer of the user or of a test. */
  public boolean open() {
    return constraints.stream()
        .anyMatch(constraint -> constraint.state() == RouteConstraint.State.NEEDS_ANSWER);
  }

  /** The constraint on strength, or that on a sound weld where there is no strength. */
  public RouteConstraint strength() {
    return constraints.get(0);
  }

  /** What a constraint says, with strengths in a system of units. */
  public String text(RouteConstraint constraint, UnitSystem units) {
    return constraint.name().equals(RouteConstraint.STRENGTH) && !strengths.isEmpty()
        ? text(strengths, joint, units)
        : constraint.text();
  }

  /** How strengths stand, and which yield was judged where that is not the proof of the table. */
  static String text(List<StrengthFinding> strengths, JointStrength joint, UnitSystem units) {
    boolean judged =
        strengths.stream()
            .filter(StrengthFinding::predicted)
            .anyMatch(found -> found.asked().quantity() == OutputQuantity.YIELD);
    return Stream.concat(
            strengths.stream().map(found -> found.sentence(units)),
            Stream.of(joint.decidingNote()).filter(note -> judged && !note.isEmpty()))
        .collect(Collectors.joining(" "));
  }
}
