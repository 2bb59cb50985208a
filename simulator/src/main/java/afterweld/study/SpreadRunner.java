package afterweld.study;

import afterweld.choice.RequirementCheck;
import afterweld.choice.ThroatRule;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.section.ErrorBand;
import afterweld.section.Estimate;
import afterweld.section.NearbySections;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.WeldSession;
import afterweld.strength.ModelError;
import afterweld.strength.Strength;
import afterweld.study.SpreadStudy.Influence;
import afterweld.study.SpreadStudy.Interval;
import afterweld.study.SpreadStudy.StationBand;
import afterweld.study.SpreadStudy.View;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldPool;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Runs the joints of a {@link SpreadStudy}. A joint's section is forgotten once it is counted, so
 * that a thousand cost little more memory than ten; the draws belong to a run's number, so that the
 * result is the same on any number of threads.
 *
 * <p>The model's error is one standard normal draw for the joint as a whole, as it was measured on
 * joints, times the standard deviation that the error band of the place stands for ({@link
 * ErrorBand}: nine values of ten of a normal distribution). So the middle of the joints is the
 * prediction, and a model that is off in yield is taken to be off alike in hardness and tensile
 * strength [assumed]. Where every input is held, the section is that of the case itself, with its
 * printed bands, so that the chance is that of every other command.
 */
public final class SpreadRunner {
  private static final double LEAST_FACTOR = 0.2;
  private static final double HIGHEST_HARDNESS = 260;
  private static final double HARDNESS_STEP = 0.1;
  private static final double HIGHEST_YIELD = 700e6;
  private static final double YIELD_STEP = 0.25e6;
  private static final int FEWEST = 5;
  private static final String MODEL_ERROR = "model error";

  private final WeldCase weldCase;
  private final double gauge;
  private final Requirement requirement;
  private final int runs;
  private final long seed;
  private final List<UncertainInput> inputs;
  private final double[][] shares;
  private final ModelError error = ModelError.standard();
  private final NearbySections nearby;
  private final SectionProfile section;
  private final JointStrength joint;
  private final boolean held;
  private final SectionProfile heldSection;
  private final String against;
  private final double[] distances;
  private final JointRun[] process;
  private final JointRun[] total;
  private final boolean[] melts;
  private final Tally[] tallies = new Tally[4];

  private SpreadRunner(
      WeldSession session,
      WeldCase weldCase,
      double gauge,
      Requirement requirement,
      SpreadSettings settings) {
    this.weldCase = weldCase;
    this.gauge = gauge;
    this.requirement = requirement;
    this.runs = settings.runs().orElse(SpreadStudy.USUAL_RUNS);
    this.seed = settings.seed().orElse(SpreadStudy.USUAL_SEED);
    this.inputs = SpreadInputs.of(weldCase, settings);
    this.shares = LatinHypercube.shares(runs, inputs.size() + 1, seed);
    this.nearby = session.near(weldCase);
    this.section = session.profile(weldCase);
    this.held = inputs.stream().allMatch(UncertainInput::held);
    this.heldSection = held ? upToTheStrongest(section, gauge) : section;
    this.joint = JointReport.finished(section, gauge);
    this.against = RequirementCheck.of(section, joint, requirement).against();
    this.distances = section.stations().stream().mapToDouble(Station::distance).toArray();
    this.process = new JointRun[runs];
    this.total = new JointRun[runs];
    this.melts = new boolean[runs];
    for (int i = 0; i < tallies.length; i++) {
      tallies[i] =
          i % 2 == 0
              ? new Tally(distances.length, HIGHEST_HARDNESS, HARDNESS_STEP)
              : new Tally(distances.length, HIGHEST_YIELD, YIELD_STEP);
    }
  }

  /**
   * Runs a study.
   *
   * @param session where welds that were computed are kept
   * @param gauge gauge length of the tension test, m
   * @param settings half-widths; runs and seed where the case says them
   * @param done called after every joint, from any thread
   * @throws HeatInputException if the case itself, or every draw of it, makes no weld
   */
  public static SpreadStudy run(
      WeldSession session,
      WeldCase weldCase,
      double gauge,
      Requirement requirement,
      SpreadSettings settings,
      Runnable done) {
    SpreadRunner runner = new SpreadRunner(session, weldCase, gauge, requirement, settings);
    IntStream.range(0, runner.runs)
        .parallel()
        .forEach(
            run -> {
              runner.simulate(run);
              done.run();
            });
    return runner.study();
  }

  private void simulate(int run) {
    WeldCase drawn = weldCase;
    for (int input = 0; input < inputs.size(); input++) {
      drawn = inputs.get(input).at(drawn, shares[input][run]);
    }
    try {
      count(run, drawn, held ? heldSection : nearby.of(drawn));
    } catch (HeatInputException noWeld) {
      process[run] = null;
    }
  }

  private void count(int run, WeldCase drawn, SectionProfile profile) {
    SectionReading predicted = new SectionReading(profile);
    SectionReading exact = predicted.exact();
    double deviations = Distribution.standardNormal().quantile().at(shares[inputs.size()][run]);
    SectionReading off = predicted.changed((zone, estimate) -> withError(estimate, deviations));
    tallies[0].addAll(exact.at(distances, Strength::hardness));
    tallies[1].addAll(exact.at(distances, Strength::yield));
    tallies[2].addAll(off.at(distances, Strength::hardness));
    tallies[3].addAll(off.at(distances, Strength::yield));
    melts[run] = melts(drawn, profile);
    Optional<StrengthFinding> throat = ThroatRule.finding(exact.profile(), requirement);
    process[run] = joint(exact, throat, 0);
    total[run] = joint(off, throat, deviations);
  }

  private JointRun joint(
      SectionReading reading, Optional<StrengthFinding> throat, double deviations) {
    return JointRun.of(
        reading, gauge, requirement, against, throat.map(found -> found.drawn(deviations)));
  }

  private static Strength withError(Estimate estimate, double deviations) {
    return new Strength(
        off(estimate, Strength::yield, deviations),
        off(estimate, Strength::tensile, deviations),
        off(estimate, Strength::hardness, deviations));
  }

  private static double off(
      Estimate estimate, ToDoubleFunction<Strength> quantity, double deviations) {
    double middle = quantity.applyAsDouble(estimate.middle());
    double end = quantity.applyAsDouble(deviations > 0 ? estimate.high() : estimate.low());
    double off = Math.abs(deviations) * (end - middle) / ErrorBand.DEVIATIONS;
    return Math.max(LEAST_FACTOR * middle, middle + off);
  }

  /**
   * A section whose high ends are those of the run that may be strongest, as the band of the joint
   * is: the highest values of every place make no joint.
   */
  private static SectionProfile upToTheStrongest(SectionProfile section, double gauge) {
    List<Station> strongest =
        section
            .ofEachRun()
            .max(Comparator.comparingDouble(run -> highest(run, gauge)))
            .orElseThrow()
            .stations();
    return section.withStations(
        IntStream.range(0, strongest.size())
            .mapToObj(i -> upTo(section.stations().get(i), strongest.get(i)))
            .toList());
  }

  private static double highest(SectionProfile run, double gauge) {
    return JointReport.finished(run, gauge).high().map(pull -> pull.tensile()).orElse(Double.NaN);
  }

  private static Station upTo(Station station, Station strongest) {
    List<Estimate> estimates =
        IntStream.range(0, station.estimates().size())
            .mapToObj(
                state ->
                    new Estimate(
                        station.estimates().get(state).middle(),
                        station.estimates().get(state).low(),
                        strongest.estimates().get(state).high()))
            .toList();
    return new Station(
        station.distance(), station.place(), station.zone(), station.peakTemperature(), estimates);
  }

  private static boolean melts(WeldCase drawn, SectionProfile profile) {
    double solidus =
        Math.min(profile.weldMetal().solidus(), WeldPool.baseSolidus(drawn.left(), drawn.right()));
    return drawn.afterWeld().stream()
        .anyMatch(step -> step instanceof SolutionTreat treat && treat.temperature() >= solidus);
  }

  private SpreadStudy study() {
    int[] kept = IntStream.range(0, runs).filter(run -> process[run] != null).toArray();
    if (kept.length == 0) {
      throw new HeatInputException("bead_width", "no draw of the spread makes a weld");
    }
    List<String> unsound =
        IntStream.of(kept)
            .filter(run -> !process[run].sound())
            .mapToObj(run -> process[run].lacks())
            .toList();
    View total = view(kept, this.total, true);
    return new SpreadStudy(
        section,
        joint,
        shift(total.tensile().p50()),
        runs,
        seed,
        runs - kept.length,
        unsound,
        inputs,
        error,
        view(kept, process, false),
        total,
        bands(),
        meltingPossible(kept),
        requirement);
  }

  private Optional<MedianShift> shift(double middle) {
    double predicted = exactTensile(section);
    return Double.isFinite(predicted) && Double.isFinite(middle)
        ? Optional.of(
            MedianShift.of(
                new MedianShift(predicted, middle, List.of()),
                weldCase,
                inputs,
                seed,
                this::tensile))
        : Optional.empty();
  }

  private double tensile(WeldCase drawn) {
    try {
      return exactTensile(nearby.of(drawn));
    } catch (HeatInputException noWeld) {
      return Double.NaN;
    }
  }

  private double exactTensile(SectionProfile profile) {
    SectionProfile exact = new SectionReading(profile).exact().profile();
    return JointReport.finished(exact, gauge).tensile().orElse(Double.NaN);
  }

  private Optional<Share> meltingPossible(int[] kept) {
    boolean solution = weldCase.afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
    int count = (int) IntStream.of(kept).filter(run -> melts[run]).count();
    return solution ? Optional.of(new Share(count, kept.length)) : Optional.empty();
  }

  private List<StationBand> bands() {
    return IntStream.range(0, distances.length)
        .mapToObj(
            place ->
                new StationBand(
                    distances[place],
                    tallies[2].quantiles(place),
                    tallies[3].quantiles(place),
                    tallies[0].quantiles(place),
                    tallies[1].quantiles(place)))
        .toList();
  }

  private View view(int[] all, JointRun[] joints, boolean withError) {
    int[] kept = IntStream.of(all).filter(run -> joints[run].sound()).toArray();
    double[] tensile = values(kept, joints, JointRun::tensile);
    double[] proof = values(kept, joints, JointRun::proof);
    double[] hardness = values(kept, joints, JointRun::lowestHardness);
    double[] deciding = values(kept, joints, JointRun::decidingYield);
    boolean predicted = Arrays.stream(tensile).allMatch(Double::isFinite);
    return new View(
        Quantiles.of(tensile),
        Quantiles.of(proof),
        Quantiles.of(deciding),
        Quantiles.of(hardness),
        predicted ? p5(tensile) : Optional.empty(),
        (int)
            IntStream.range(0, kept.length)
                .filter(i -> Double.isFinite(tensile[i]) && !Double.isFinite(proof[i]))
                .count(),
        predicted ? counted(kept, joints, joint -> List.of(joint.failsIn())) : Map.of(),
        new Share(
            (int) IntStream.of(kept).filter(run -> joints[run].undecided()).count(),
            Math.max(1, kept.length)),
        met(all, joints, predicted, JointRun::met),
        met(all, joints, predicted, JointRun::strengthsMet),
        counted(all, joints, JointRun::beyondStrength),
        predicted ? "joint tensile strength" : "lowest hardness",
        influences(kept, predicted ? tensile : hardness, withError));
  }

  private static double[] values(
      int[] kept, JointRun[] joints, ToDoubleFunction<JointRun> quantity) {
    return IntStream.of(kept).mapToDouble(run -> quantity.applyAsDouble(joints[run])).toArray();
  }

  private static Optional<Interval> p5(double[] values) {
    OrderRanks ranks = OrderRanks.around(0.05, values.length);
    if (ranks.low() < 1 || ranks.high() > values.length) {
      return Optional.empty();
    }
    double[] sorted = Arrays.stream(values).sorted().toArray();
    return Optional.of(
        new Interval(sorted[ranks.low() - 1], sorted[ranks.high() - 1], ranks.coverage()));
  }

  /** How many joints have what, the most frequent first. */
  private static Map<String, Share> counted(
      int[] kept, JointRun[] joints, Function<JointRun, List<String>> what) {
    Map<String, Long> counts =
        IntStream.of(kept)
            .mapToObj(run -> what.apply(joints[run]))
            .flatMap(List::stream)
            .collect(Collectors.groupingBy(one -> one, Collectors.counting()));
    Map<String, Share> shares = new LinkedHashMap<>();
    counts.entrySet().stream()
        .sorted(
            Map.Entry.<String, Long>comparingByValue()
                .reversed()
                .thenComparing(Map.Entry.comparingByKey()))
        .forEach(
            entry ->
                shares.put(entry.getKey(), new Share(entry.getValue().intValue(), kept.length)));
    return shares;
  }

  private Optional<Share> met(
      int[] kept, JointRun[] joints, boolean predicted, Predicate<JointRun> meets) {
    if (!requirement.asksStrength() || !predicted || !against.isEmpty()) {
      return Optional.empty();
    }
    int count = (int) IntStream.of(kept).filter(run -> meets.test(joints[run])).count();
    return Optional.of(new Share(count, kept.length));
  }

  private List<Influence> influences(int[] kept, double[] output, boolean withError) {
    if (kept.length < FEWEST || !Arrays.stream(output).allMatch(Double::isFinite)) {
      return List.of();
    }
    FirstOrder indices = new FirstOrder(output);
    Map<String, FirstOrder.Index> sums = new LinkedHashMap<>();
    int columns = withError ? shares.length : inputs.size();
    for (int column = 0; column < columns; column++) {
      String group = column < inputs.size() ? inputs.get(column).group() : MODEL_ERROR;
      sums.merge(group, indices.of(kept(kept, shares[column])), FirstOrder.Index::and);
    }
    return sums.entrySet().stream()
        .map(sum -> new Influence(sum.getKey(), sum.getValue().value(), sum.getValue().error()))
        .filter(influence -> Double.isFinite(influence.index()))
        .sorted(Comparator.comparingDouble(Influence::index).reversed())
        .toList();
  }

  private static double[] kept(int[] kept, double[] column) {
    return IntStream.of(kept).mapToDouble(run -> column[run]).toArray();
  }
}
