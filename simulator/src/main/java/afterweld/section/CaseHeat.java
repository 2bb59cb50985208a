package afterweld.section;

import afterweld.thermal.HeatFlow;
import afterweld.thermal.HeatFlowRule;
import afterweld.thermal.HeatInput;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.ShellSolver;
import afterweld.thermal.ShellWeld;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.SurfaceLoss;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldLegs;
import afterweld.thermal.WeldTimeline;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The heat of a case's passes in the temperature field that suits it: the steady one of wide plates
 * or the transient one of small parts, by rule or as the case says.
 */
final class CaseHeat {
  private static final String NARROW = "narrow-legs";

  private final WeldCase weldCase;
  private final WeldLegs legs;
  private final SurfaceLoss loss;
  private final HeatFlow.Choice choice;
  private final List<PassHeat> heats;
  private final Optional<ShellWeld> shell;

  private CaseHeat(
      WeldCase weldCase,
      WeldLegs legs,
      SurfaceLoss loss,
      HeatFlow.Choice choice,
      List<PassHeat> heats,
      Optional<ShellWeld> shell) {
    this.weldCase = weldCase;
    this.legs = legs;
    this.loss = loss;
    this.choice = choice;
    this.heats = heats;
    this.shell = shell;
  }

  /**
   * The heat of a case.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  static CaseHeat of(WeldCase weldCase) {
    WeldLegs legs = JointLegs.of(weldCase);
    SurfaceLoss loss = SurfaceLoss.stillAir(weldCase.ambient());
    HeatFlow.Choice choice = choice(weldCase, legs, loss);
    if (choice.flow() == HeatFlow.PLATE) {
      List<PassHeat> heats = HeatInput.into(legs, loss).of(weldCase.passes());
      return new CaseHeat(weldCase, legs, loss, choice, heats, Optional.empty());
    }
    ShellWeld weld = ShellSolver.of(legs, loss, course(weldCase)).weld(weldCase.passes());
    return new CaseHeat(weldCase, legs, loss, choice, weld.heats(), Optional.of(weld));
  }

  private static HeatFlow.Choice choice(WeldCase weldCase, WeldLegs legs, SurfaceLoss loss) {
    return weldCase
        .heatFlow()
        .map(flow -> new HeatFlow.Choice(flow, "the case says so"))
        .orElseGet(
            () -> HeatFlowRule.choose(legs, loss, weldCase.passes(), circumference(weldCase)));
  }

  private static OptionalDouble circumference(WeldCase weldCase) {
    return weldCase.ring().isPresent()
        ? OptionalDouble.of(Math.PI * weldCase.ring().get().diameter())
        : OptionalDouble.empty();
  }

  private static WeldCourse course(WeldCase weldCase) {
    return weldCase
        .ring()
        .map(ring -> WeldCourse.ring(Math.PI * ring.diameter(), place(ring.position())))
        .orElseGet(WeldCourse::straight);
  }

  private static WeldCourse.Place place(Ring.Position position) {
    return switch (position) {
      case WORST -> WeldCourse.Place.WORST;
      case START -> WeldCourse.Place.START;
      case HALF_LAP -> WeldCourse.Place.HALF_LAP;
      case LAP_END -> WeldCourse.Place.LAP_END;
    };
  }

  List<PassHeat> heats() {
    return heats;
  }

  /** Time line of the left side's stations. */
  StationTimeline left() {
    return timeline(0);
  }

  /** Time line of the right side's stations. */
  StationTimeline right() {
    return timeline(legs.legs().size() - 1);
  }

  private StationTimeline timeline(int leg) {
    return shell.isPresent()
        ? shell.get().timeline(leg, weldCase.depth())
        : WeldTimeline.of(legs, leg, heats, loss, weldCase.depth());
  }

  /** Peaks over the whole part, where the transient field was used. */
  Optional<PeakMap> peaks() {
    return shell.map(ShellWeld::peaks);
  }

  /** The same passes at another efficiency each, in the same section. */
  CaseHeat with(ToDoubleFunction<PassHeat> efficiency) {
    HeatInput input = HeatInput.into(legs, loss);
    List<PassHeat> others =
        heats.stream().map(heat -> input.of(heat.pass(), efficiency.applyAsDouble(heat))).toList();
    Optional<ShellWeld> other =
        shell.map(weld -> ShellSolver.of(legs, loss, course(weldCase)).weld(others, weld));
    return new CaseHeat(weldCase, legs, loss, choice, others, other);
  }

  /** What the reader of this heat must know. */
  List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (chosen()) {
      warnings.add(aboutField());
    }
    aboutRing(warnings);
    HeatInput input = HeatInput.into(legs, loss);
    heats.stream()
        .flatMap(heat -> input.warnings(heat).stream())
        .filter(warning -> shell.isEmpty() || !warning.code().equals(NARROW))
        .distinct()
        .map(warning -> new Warning(warning.code(), warning.text()))
        .forEach(warnings::add);
    return warnings;
  }

  /** Whether there was a choice at all: not for plain welds in wide plates. */
  private boolean chosen() {
    boolean narrow = weldCase.left().width().isPresent() || weldCase.right().width().isPresent();
    return shell.isPresent()
        || narrow
        || weldCase.ring().isPresent()
        || weldCase.heatFlow().isPresent();
  }

  private Warning aboutField() {
    return new Warning(
        "heat-flow-" + choice.flow().label(),
        String.format(
            Locale.ROOT,
            "Temperatures by the %s: %s.",
            shell.isPresent()
                ? "transient field of thin-walled parts"
                : "steady field of wide plates",
            choice.reason()));
  }

  private void aboutRing(List<Warning> warnings) {
    Optional<Ring> ring = weldCase.ring();
    if (ring.isPresent() && shell.isPresent()) {
      warnings.add(aboutSection(ring.get(), shell.get().peaks()));
      warnings.add(
          new Warning(
              "ring-constant-current",
              "The current is taken as constant round the ring; a welder who takes it back towards"
                  + " the end gets a narrower soft zone there than shown."));
      if (heats.stream().anyMatch(PassHeat::calibrated)) {
        warnings.add(
            new Warning(
                "ring-bead-width",
                "The bead width is taken as measured half way round, where the bead is as wide as"
                    + " on average: at constant current it is narrower at the start and wider at"
                    + " the end of the lap."));
      }
    }
    if (ring.isPresent() && shell.isEmpty() && weldCase.heatFlow().isPresent()) {
      warnings.add(
          new Warning(
              "ring-as-plate",
              "The weld goes round a tube, but the heat that builds up on the way round is not"
                  + " computed: the soft zone is wider than shown, most of all at the end of the"
                  + " lap."));
    }
  }

  private static Warning aboutSection(Ring ring, PeakMap peaks) {
    return new Warning(
        "ring-section",
        String.format(
            Locale.ROOT,
            "The section is taken %.0f mm from the start of the lap of %.0f mm (%s).",
            peaks.section() * 1e3,
            peaks.length() * 1e3,
            ring.position() == Ring.Position.WORST
                ? "where the legs get hottest"
                : ring.position().label()));
  }
}
