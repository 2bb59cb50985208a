package afterweld.section;

import afterweld.material.Composition;
import afterweld.section.heat.CaseHeat;
import afterweld.section.heat.MeltDown;
import afterweld.section.soundness.Soundness;
import afterweld.section.soundness.SoundnessRule;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.PassHeat;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.weld.HotStart;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.WeldMetal;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Makes a section profile from a case: heat of the passes, thermal cycle and state at every
 * station, strength in every state, zones, bands and warnings. Pure: the same case gives the same
 * profile on any number of cores.
 *
 * <p>The band of a station spans the runs at both ends of a default efficiency and of a default
 * dilution, widened by the model's own error.
 */
final class SectionSimulation {
  private final WeldCase weldCase;
  private final boolean allStages;
  private final StationDensity density;
  private final CaseHeat heat;
  private final SoundnessRule rule;
  private final WeldMetal weldMetal;
  private final boolean symmetric;
  private final WeldMemory memory;
  private final BooleanSupplier outdated;

  /**
   * The simulation of a case.
   *
   * @param allStages whether the states between the steps of the heat treatment are shown too
   * @param density how many stations
   * @param memory of this weld
   * @param outdated asked before each station; true ends the run
   * @throws HeatInputException if the passes cannot make this weld
   */
  SectionSimulation(
      WeldCase weldCase,
      boolean allStages,
      StationDensity density,
      WeldMemory memory,
      BooleanSupplier outdated) {
    this.weldCase = weldCase;
    this.allStages = allStages;
    this.density = density;
    this.heat = memory.heat();
    this.rule =
        new SoundnessRule(weldCase, heat.heats(), heat.rootInSection(), heat.rootAtFallenCurrent());
    this.weldMetal = WeldPool.of(weldCase);
    this.symmetric = weldCase.symmetric();
    this.memory = memory;
    this.outdated = outdated;
  }

  /** The profile, with stations added where neighbours differ. */
  SectionProfile profile() {
    return profile(false);
  }

  /** The profile on some of its stations, its bands without those of default inputs. */
  SectionProfile preview() {
    return profile(true);
  }

  private SectionProfile profile(boolean quick) {
    SideRun left = left();
    SideRun right = symmetric ? left : right();
    StationLine line = new StationLine(left, right, symmetric, density);
    List<Double> lefts = quick ? few(weldCase.left(), left) : start(weldCase.left(), left);
    List<Double> rights = lefts;
    if (!symmetric) {
      rights = quick ? few(weldCase.right(), right) : start(weldCase.right(), right);
    }
    List<StationRun> runs = quick ? line.some(lefts, rights) : line.compute(lefts, rights);
    List<List<StationRun>> others = quick ? List.of() : otherRuns(left, right, runs);
    List<Station> stations = claimed(runs, others);
    List<List<Station>> each =
        Stream.concat(Stream.of(runs), others.stream())
            .map(one -> claimed(one, List.of()))
            .toList();
    Softening softening =
        Softening.of(
            runs,
            distance ->
                distance <= 0
                    ? left.at(distance)
                    : symmetric ? left.at(-distance).mirrored() : right.at(distance));
    return new SectionProfile(
        weldCase,
        soundness(left, right, stations),
        shownNames(),
        stations,
        each,
        ZoneSpans.of(
            stations,
            place ->
                place == Station.Place.LEFT
                    ? softenedTo(softening.left(), left)
                    : softenedTo(softening.right(), right)),
        weldMetal,
        heat.heats(),
        TellingCycles.of(runs),
        softening,
        warnings(runs),
        Cautions.of(weldCase));
  }

  private List<Station> claimed(List<StationRun> runs, List<List<StationRun>> others) {
    StationBands bands = new StationBands(weldCase, shownStates());
    return OverageingLimit.claimed(weldCase, bands.stations(runs, others), shownStates());
  }

  private static double softenedTo(Softening.OfSide side, SideRun run) {
    return side.threshold() ? run.timeline().reach(side.from()) : Double.NaN;
  }

  private Soundness soundness(SideRun left, SideRun right, List<Station> stations) {
    double strongest =
        stations.stream()
            .flatMap(station -> station.estimates().stream())
            .mapToDouble(estimate -> estimate.middle().tensile())
            .filter(Double::isFinite)
            .max()
            .orElse(Double.NaN);
    MeltDown molten = MeltDown.of(weldCase, heat, left.timeline(), right.timeline());
    return rule.of(molten, strongest, density.full());
  }

  /** How some of the stations go through the weld and what comes after it. */
  WeldReplay replay() {
    SideRun left = left();
    SideRun right = symmetric ? left : right();
    StationLine line = new StationLine(left, right, symmetric, density);
    List<Double> lefts = few(weldCase.left(), left);
    List<WeldReplay.AtStation> stations =
        line.replayed(lefts, symmetric ? lefts : few(weldCase.right(), right));
    return new WeldReplay(phaseNames(), stations);
  }

  private List<String> phaseNames() {
    List<String> names = new ArrayList<>();
    for (int pass = 1; pass <= heat.heats().size(); pass++) {
      names.add(heat.heats().size() == 1 ? "welding" : "pass " + pass);
    }
    names.add(StageNames.NATURAL_AGEING);
    weldCase.afterWeld().stream().map(StageNames::step).forEach(names::add);
    return names;
  }

  private SideRun left() {
    return side(weldCase.left(), 0, heat.left());
  }

  private SideRun right() {
    return side(weldCase.right(), 1, heat.right());
  }

  private SideRun side(Side side, int which, StationTimeline timeline) {
    FurnaceHistory furnace =
        new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness());
    List<TemperatureHistory> afterwards = new ArrayList<>();
    afterwards.add(TemperatureHistory.hold(FurnaceHistory.ROOM, weldCase.naturalAge()));
    afterwards.addAll(furnace.of(weldCase.afterWeld()));
    return new SideRun(
        SectionMetal.base(side),
        SectionMetal.weld(PoolMetals.of(weldCase), weldMetal.composition()),
        timeline,
        afterwards,
        AgedOnly.of(weldCase.afterWeld()),
        side.alloy().solidus(),
        memory.side(which, heat, weldMetal.composition()),
        outdated);
  }

  private List<Double> start(Side side, SideRun run) {
    return run.memory().start(side, density, () -> placement(side, run).distances());
  }

  private List<Double> few(Side side, SideRun run) {
    return placement(side, run).few(symmetric);
  }

  private StationPlacement placement(Side side, SideRun run) {
    return new StationPlacement(side, run.timeline(), HotStart.warmest(weldCase), density);
  }

  /** The same stations at both ends of what the case leaves to defaults or leaves open. */
  private List<List<StationRun>> otherRuns(SideRun left, SideRun right, List<StationRun> runs) {
    List<List<StationRun>> others = new ArrayList<>();
    if (!density.full()) {
      return others;
    }
    if (heat.heats().stream().anyMatch(pass -> pass.efficiencyLow() < pass.efficiencyHigh())) {
      others.add(withHeat(left, right, runs, heat.with(PassHeat::efficiencyLow)));
      others.add(withHeat(left, right, runs, heat.with(PassHeat::efficiencyHigh)));
    }
    if (heat.depthIsOpen()) {
      others.add(withHeat(left, right, runs, heat.meltedThrough()));
      others.add(withHeat(left, right, runs, heat.heatedAtTheTop()));
    }
    if (weldMetal.dilutionLow() < weldMetal.dilutionHigh()) {
      others.add(withDilution(left, right, runs, weldMetal.dilutionLow()));
      others.add(withDilution(left, right, runs, weldMetal.dilutionHigh()));
    }
    return others;
  }

  private List<StationRun> withHeat(
      SideRun left, SideRun right, List<StationRun> runs, CaseHeat other) {
    return new StationLine(
            left.with(other.left(), memory.side(0, other, weldMetal.composition())),
            right.with(other.right(), memory.side(1, other, weldMetal.composition())),
            symmetric,
            density)
        .again(runs, run -> true);
  }

  private List<StationRun> withDilution(
      SideRun left, SideRun right, List<StationRun> runs, double dilution) {
    Composition metal = WeldPool.composition(weldCase, dilution);
    return new StationLine(
            withMetal(left, 0, metal), withMetal(right, 1, metal), symmetric, density)
        .again(runs, StationRun::melted);
  }

  private SideRun withMetal(SideRun side, int which, Composition metal) {
    return side.with(
        SectionMetal.weld(PoolMetals.of(weldCase), metal), memory.side(which, heat, metal));
  }

  /** Before welding, as welded, and either every step or the last. */
  private int[] shownStates() {
    int steps = weldCase.afterWeld().size();
    if (allStages || steps <= 1) {
      return IntStream.range(0, 2 + steps).toArray();
    }
    return new int[] {0, 1, 1 + steps};
  }

  private List<String> shownNames() {
    List<String> all = new ArrayList<>(List.of(StageNames.BEFORE_WELDING, StageNames.AS_WELDED));
    all.addAll(StageNames.of(weldCase.afterWeld()));
    return IntStream.of(shownStates()).mapToObj(all::get).toList();
  }

  private List<Warning> warnings(List<StationRun> runs) {
    List<Warning> warnings = new ArrayList<>(CaseWarnings.of(weldCase, weldMetal));
    warnings.addAll(heat.warnings());
    OverageingLimit.warning(weldCase).forEach(warnings::add);
    warnings.addAll(rule.warnings());
    warnings.addAll(ResultWarnings.of(weldCase, runs, rule.fusedThrough()));
    return warnings.stream().distinct().toList();
  }
}
