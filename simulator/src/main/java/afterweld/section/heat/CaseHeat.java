package afterweld.section.heat;

import afterweld.quantity.BothUnits;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse.Place;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.WeldTimeline;
import afterweld.thermal.shell.HeatFlowRule;
import afterweld.thermal.shell.ShellSolver;
import afterweld.thermal.shell.ShellVariants;
import afterweld.thermal.shell.ShellWeld;
import afterweld.weld.Joint;
import afterweld.weld.JointLegs;
import afterweld.weld.Preparation;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;

/**
 * The heat of a case's passes in the temperature field that suits it: the steady one of wide plates
 * or the transient one of small parts, by rule or as the case says.
 */
public final class CaseHeat {
  private static final String NARROW = "narrow-legs";

  /** Stands for the section the case asks for, wherever that is. */
  private static final Place SECTION = Place.WORST;

  private final WeldCase weldCase;
  private final WeldLegs legs;
  private final SurfaceLoss loss;
  private final HeatFlow.Choice choice;
  private final List<PassHeat> heats;
  private final Optional<ShellWeld> shell;
  private final Place place;

  /** Looking at a leg takes time, and many ask for it. */
  private final Map<Integer, StationTimeline> timelines = new ConcurrentHashMap<>();

  /** The same passes with other heat or entering elsewhere, as the bands of every profile ask. */
  private final Map<Variant, CaseHeat> variants = new ConcurrentHashMap<>();

  private record Variant(List<PassHeat> heats, double unequalWeight) {}

  private CaseHeat(
      WeldCase weldCase,
      WeldLegs legs,
      SurfaceLoss loss,
      HeatFlow.Choice choice,
      List<PassHeat> heats,
      Optional<ShellWeld> shell,
      Place place) {
    this.weldCase = weldCase;
    this.legs = legs;
    this.loss = loss;
    this.choice = choice;
    this.heats = heats;
    this.shell = shell;
    this.place = place;
  }

  /**
   * The heat of a case.
   *
   * @param solved fields that may be used again, and where the new one is kept
   * @throws HeatInputException if the passes cannot make this weld
   */
  public static CaseHeat of(WeldCase weldCase, SolvedShells solved) {
    WeldLegs legs = JointLegs.of(weldCase);
    SurfaceLoss loss = SurfaceLoss.stillAir(weldCase.ambient());
    HeatFlow.Choice choice = choice(weldCase, legs, loss);
    if (choice.flow() == HeatFlow.PLATE) {
      List<PassHeat> heats = HeatInput.into(legs, loss).of(weldCase.passes());
      return new CaseHeat(weldCase, legs, loss, choice, heats, Optional.empty(), SECTION);
    }
    ShellWeld weld = solved.of(weldCase, () -> shell(weldCase, legs, loss));
    return new CaseHeat(weldCase, legs, loss, choice, weld.heats(), Optional.of(weld), SECTION);
  }

  /**
   * Heat of the passes of a case that is looked at but once.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public static List<PassHeat> heats(WeldCase weldCase) {
    return of(weldCase, new SolvedShells()).heats();
  }

  /**
   * Whether the heat of a case is followed in time through the whole part, which takes seconds.
   *
   * @throws HeatInputException if a number of a pass is out of range
   */
  public static boolean isFollowed(WeldCase weldCase) {
    SurfaceLoss loss = SurfaceLoss.stillAir(weldCase.ambient());
    return choice(weldCase, JointLegs.of(weldCase), loss).flow() == HeatFlow.SHELL;
  }

  private static ShellWeld shell(WeldCase weldCase, WeldLegs legs, SurfaceLoss loss) {
    return ShellSolver.of(legs, loss, weldCase.course()).weld(weldCase.passes());
  }

  private static HeatFlow.Choice choice(WeldCase weldCase, WeldLegs legs, SurfaceLoss loss) {
    return weldCase
        .heatFlow()
        .map(flow -> new HeatFlow.Choice(flow, "the case says so"))
        .orElseGet(() -> HeatFlowRule.choose(legs, loss, weldCase.passes(), weldCase.course()));
  }

  /** Heat of every pass, in their order. */
  public List<PassHeat> heats() {
    return heats;
  }

  /** Time line of the left side's stations. */
  public StationTimeline left() {
    return timeline(0);
  }

  /** Time line of the right side's stations. */
  public StationTimeline right() {
    return timeline(legs.legs().size() - 1);
  }

  private StationTimeline timeline(int leg) {
    return timelines.computeIfAbsent(leg, this::looked);
  }

  private StationTimeline looked(int leg) {
    return shell.isPresent()
        ? shell.get().timeline(place, leg, weldCase.depth())
        : WeldTimeline.of(legs, leg, heats, loss, weldCase.depth());
  }

  /** Peaks over the whole part, where the transient field was used. */
  public Optional<PeakMap> peaks() {
    return shell.map(ShellWeld::peaks);
  }

  /** The same passes at another efficiency each, in the same section. */
  public CaseHeat with(ToDoubleFunction<PassHeat> efficiency) {
    HeatInput input = HeatInput.into(legs, loss);
    List<PassHeat> others =
        heats.stream().map(heat -> input.of(heat.pass(), efficiency.applyAsDouble(heat))).toList();
    return variant(others, legs);
  }

  private CaseHeat variant(List<PassHeat> others, WeldLegs otherLegs) {
    return variants.computeIfAbsent(
        new Variant(others, otherLegs.unequalWeight()), unused -> solved(others, otherLegs));
  }

  private CaseHeat solved(List<PassHeat> others, WeldLegs otherLegs) {
    Optional<ShellWeld> weld =
        shell.map(like -> ShellSolver.of(otherLegs, loss, weldCase.course()).weld(others, like));
    return new CaseHeat(weldCase, otherLegs, loss, choice, others, weld, place);
  }

  /** What solves welds like this one, where the transient field was used. */
  public Optional<ShellVariants> variants() {
    return shell.map(
        known -> ShellVariants.of(ShellSolver.of(legs, loss, weldCase.course()), known));
  }

  /**
   * The heat of a case with the same parts and nearly the same passes, in the same field.
   *
   * @param variants of this heat
   * @throws HeatInputException if its passes cannot make the weld
   */
  public CaseHeat of(WeldCase like, Optional<ShellVariants> variants) {
    Optional<ShellWeld> weld = variants.map(known -> known.weld(like.passes()));
    List<PassHeat> passes =
        weld.map(ShellWeld::heats).orElseGet(() -> HeatInput.into(legs, loss).of(like.passes()));
    return new CaseHeat(like, legs, loss, choice, passes, weld, place);
  }

  /**
   * The same heat with the section at another place of the weld.
   *
   * @param elsewhere not the worst
   */
  public CaseHeat at(Place elsewhere) {
    return new CaseHeat(weldCase, legs, loss, choice, heats, shell, elsewhere);
  }

  /**
   * The same current half way, with another share of its first value at the end: more at the start.
   */
  public CaseHeat withEndCurrent(double share) {
    List<PassHeat> others = ShellSolver.of(legs, loss, weldCase.course()).pivoted(heats, share);
    ShellWeld other =
        ShellSolver.of(legs, loss, weldCase.course().withEndPower(share))
            .weld(others, shell.orElseThrow());
    return new CaseHeat(weldCase, legs, loss, choice, others, Optional.of(other), place);
  }

  /** Share of the first current at the end that keeps the bead even from half way on. */
  public double evenEndCurrent() {
    return ShellSolver.of(legs, loss, weldCase.course()).evenEndPower(shell.orElseThrow());
  }

  /** Width of the last bead at a place of the weld, m. */
  public double beadWidth(Place elsewhere) {
    return shell.orElseThrow().beadWidth(elsewhere);
  }

  /**
   * Whether legs of unequal thickness meet and nobody said how deep the weld goes into them: the
   * heat may enter through their full depth or at their top.
   */
  public boolean depthIsOpen() {
    double weight = legs.unequalWeight();
    return weight > 0 && weight < 1 && legs.thickest() > legs.thinnest();
  }

  /** Weight of the heat entering at the top of unequal legs. */
  public double unequalWeight() {
    return legs.unequalWeight();
  }

  /** The same heat, entering through the full depth of unequal legs. */
  public CaseHeat meltedThrough() {
    return withUnequalWeight(0);
  }

  /** The same heat, entering at the top of unequal legs. */
  public CaseHeat heatedAtTheTop() {
    return withUnequalWeight(1);
  }

  private CaseHeat withUnequalWeight(double weight) {
    return variant(heats, legs.withUnequalWeight(weight));
  }

  /** The root at a place of the weld; empty where no rule tells it apart. */
  private Optional<RootFusion> rootAt(Place elsewhere) {
    boolean alike =
        shell.isEmpty()
            || !weldCase.course().ends()
            || heats.size() > 1
            || heats.get(0).pass().penetration().isPresent()
            || weldCase.joint() == Joint.BEAD
            || weldCase.preparation() == Preparation.FILLET;
    double bead = alike ? 0 : beadWidth(elsewhere);
    return bead < MeltDown.NO_BEAD
        ? Optional.empty()
        : Optional.of(RootFusion.of(Groove.of(weldCase), bead / 2));
  }

  /** The root where the current has fallen; empty where it does not fall or no rule tells it. */
  public Optional<RootFusion> rootAtFallenCurrent() {
    return weldCase.course().endPower() < 1 ? rootAt(Place.END) : Optional.empty();
  }

  /** The root in a section that is taken where the weld begins; empty for any other section. */
  public Optional<RootFusion> rootInSection() {
    return weldCase.course().ends() && weldCase.course().place() == Place.START
        ? rootAt(Place.START)
        : Optional.empty();
  }

  /**
   * A bead that reaches the root half way and not where it begins. In another section than that it
   * is told and not ruled out: on a ring the end of the lap runs over it.
   */
  private Optional<Warning> coldStart() {
    boolean missing =
        rootInSection().isEmpty()
            && RootFusion.of(Groove.of(weldCase), heats).through()
            && rootAt(Place.START).filter(root -> !root.through()).isPresent();
    return missing
        ? Optional.of(
            new Warning(
                "cold-start",
                "The start is cold: the bead is "
                    + BothUnits.length(beadWidth(Place.START))
                    + " wide there, and by the rule of its depth it does not reach the root. Hold"
                    + " the arc there until the pool has formed, preheat, or run on over the start,"
                    + " and look at the root."))
        : Optional.empty();
  }

  /** What the reader of this heat must know. */
  public List<Warning> warnings() {
    List<Warning> warnings = new CourseWarnings(weldCase, choice, peaks(), heats).all();
    if (depthIsOpen()) {
      warnings.add(
          new Warning(
              "unequal-legs-depth",
              "The thicknesses differ and no pass states its penetration: the bands span heat that"
                  + " enters through the full depth and heat that enters at the top."));
    }
    coldStart().ifPresent(warnings::add);
    HeatInput input = HeatInput.into(legs, loss);
    heats.stream()
        .flatMap(heat -> input.warnings(heat).stream())
        .filter(warning -> shell.isEmpty() || !warning.code().equals(NARROW))
        .distinct()
        .map(warning -> new Warning(warning.code(), warning.text()))
        .forEach(warnings::add);
    return warnings;
  }
}
