package afterweld.study;

import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.choice.practice.HardeningAge;
import afterweld.choice.practice.StandardTreatment;
import afterweld.section.SectionRun;
import afterweld.section.WeldSession;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What becomes of the joint with other temperatures and times of its ageing, ranked by what the
 * case requires. The ageing is the first of the case, or of the standard treatment where it has
 * none; all other steps stay. The trials lie around it, or around the standard one where the trade
 * does not age at its temperature.
 *
 * @param aim what it is ranked by
 * @param trials coolest first, the times of one temperature rising; empty where no metal of the
 *     case hardens by heat
 * @param schedule the ageing as scheduled; empty where there are no trials
 * @param asWelded the joint without any treatment, after the same natural ageing
 * @param asWritten the joint of the case as it is written
 */
public record JointAgeing(
    Aim aim,
    List<Trial> trials,
    Optional<Trial> schedule,
    JointPlace asWelded,
    JointPlace asWritten) {
  private static final double[] OFFSETS = {-30, -15, 0, 15, 30};
  private static final double[] HOURS = {1, 2, 4, 8, 16, 32};
  private static final double HOUR = 3600;

  /** Copies the list. */
  public JointAgeing {
    trials = List.copyOf(trials);
  }

  /**
   * The joint after one ageing.
   *
   * @param temperature K
   * @param time s
   */
  public record Trial(double temperature, double time, JointPlace joint) {
    /** Whether what is required is met, or likely so. */
    public boolean good() {
      return joint.ranked() && joint.judgement().verdict().compareTo(Verdict.LIKELY) <= 0;
    }
  }

  /** Whether some ageing makes the joint better than it is as welded, by more than 1 %. */
  public boolean gains() {
    Ranking ranking = ranking();
    return ranking.best().isPresent()
        && !(trials.get(ranking.best().getAsInt()).joint().value()
            <= (1 + Ranking.SAME) * asWelded.value());
  }

  /** Which trials are best. */
  public Ranking ranking() {
    return new Ranking(trials.stream().map(Trial::joint).toList());
  }

  /**
   * The joint of a case.
   *
   * @param session where welds that were computed are kept
   * @param gauge gauge length of the tension test, m
   * @throws HeatInputException if the case makes no weld
   */
  public static JointAgeing of(
      WeldSession session, WeldCase weldCase, double gauge, Requirement asked) {
    JointPlace asWritten = JointPlace.of(session.profile(weldCase), gauge, asked);
    boolean own = weldCase.afterWeld().stream().anyMatch(Age.class::isInstance);
    Optional<List<FurnaceStep>> steps =
        own ? Optional.of(weldCase.afterWeld()) : StandardTreatment.full(weldCase);
    boolean hardens =
        Stream.of(weldCase.left(), weldCase.right()).anyMatch(side -> side.alloy().heatTreatable());
    SectionRun weld = session.weld(weldCase);
    JointPlace asWelded =
        JointPlace.of(weld.profile(weldCase.withAfterWeld(List.of()), () -> false), gauge, asked);
    if (!hardens || steps.isEmpty()) {
      return new JointAgeing(Aim.of(asked), List.of(), Optional.empty(), asWelded, asWritten);
    }
    return new Work(weldCase, weld, steps.get(), gauge, asked).ageing(asWelded, asWritten);
  }

  private record Work(
      WeldCase weldCase,
      SectionRun weld,
      List<FurnaceStep> steps,
      double gauge,
      Requirement asked) {
    JointAgeing ageing(JointPlace asWelded, JointPlace asWritten) {
      Age age = (Age) steps.get(place());
      Trial schedule = trial(age.temperature(), age.time());
      double centre = StandardTreatment.worthATrial(weldCase, age);
      List<Trial> trials =
          Arrays.stream(OFFSETS)
              .map(offset -> centre + offset)
              .boxed()
              .flatMap(
                  temperature ->
                      Arrays.stream(HOURS).mapToObj(hours -> new double[] {temperature, hours}))
              .toList()
              .parallelStream()
              .map(one -> trial(one[0], one[1] * HOUR))
              .toList();
      return new JointAgeing(Aim.of(asked), trials, Optional.of(schedule), asWelded, asWritten);
    }

    private int place() {
      return HardeningAge.place(steps).orElseThrow();
    }

    private Trial trial(double temperature, double time) {
      List<FurnaceStep> other = new ArrayList<>(steps);
      Age age = (Age) steps.get(place());
      other.set(place(), new Age(temperature, time, age.ramp(), age.overage()));
      WeldCase aged = weldCase.withAfterWeld(other);
      JointPlace place = JointPlace.of(weld.profile(aged, () -> false), gauge, asked);
      return new Trial(temperature, time, place.against(UnrankedAgeing.why(aged)));
    }
  }
}
