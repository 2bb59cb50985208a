package afterweld.section;

import afterweld.section.heat.CaseHeat;
import afterweld.section.heat.SolvedShells;
import afterweld.thermal.HeatInputException;
import afterweld.weld.WeldCase;
import java.util.function.BooleanSupplier;

/**
 * A weld that is looked at again and again: what it made of the metal is kept, so that another
 * natural ageing or another heat treatment need not weld anew, and only follows the steps that
 * differ. What comes out does not depend on what is kept. May be used by several threads at once.
 *
 * <pre>{@code
 * SectionRun run = session.weld(weldCase);
 * run.preview(weldCase, () -> false);                             // at once
 * run.profile(weldCase, () -> false);                             // settled
 * run.profile(weldCase.withAfterWeld(other), () -> false);        // the furnace alone
 * }</pre>
 */
public final class SectionRun {
  private static final int FEW_PASSES = 6;

  private final WeldCase welded;
  private final WeldMemory memory;
  private volatile NearbySections nearby;

  /**
   * A run that has computed nothing yet.
   *
   * @param welded a weld alone
   * @param solved fields that may be used again, and where a new one is kept
   */
  SectionRun(WeldCase welded, SolvedShells solved) {
    this.welded = welded;
    this.memory = WeldMemory.keeping(() -> CaseHeat.of(welded, solved));
  }

  /**
   * The heat of the weld.
   *
   * @throws HeatInputException if its passes cannot make it
   */
  CaseHeat heat() {
    return memory.heat();
  }

  /** Whether a case differs from this weld at most in what happens after it. */
  public boolean holds(WeldCase other) {
    return other.weldAlone().equals(welded);
  }

  /**
   * Whether a picture of this weld may take seconds, as far as can be told before: heat that is
   * followed in time through the whole part, many passes, or a settled picture of two unlike sides,
   * each of which has bands of its own.
   *
   * @throws HeatInputException if a number of a pass is out of range
   */
  public boolean takesLong(boolean settled) {
    return welded.passes().size() > FEW_PASSES
        || (settled && !welded.left().equals(welded.right()))
        || CaseHeat.isFollowed(welded);
  }

  /**
   * The settled profile of a case with this weld.
   *
   * @param outdated asked before each station; true ends the run
   * @throws HeatInputException if the passes cannot make this weld
   * @throws java.util.concurrent.CancellationException if it is outdated
   */
  public SectionProfile profile(WeldCase weldCase, BooleanSupplier outdated) {
    return simulation(weldCase, outdated).profile();
  }

  /**
   * The profile on some of the stations that the settled one begins with: of a wide weld 17 on the
   * side that stands for both, or 12 on each of two unlike ones. Its bands hold the model's own
   * error alone.
   *
   * @param outdated asked before each station; true ends the run
   * @throws HeatInputException if the passes cannot make this weld
   * @throws java.util.concurrent.CancellationException if it is outdated
   */
  public SectionProfile preview(WeldCase weldCase, BooleanSupplier outdated) {
    return simulation(weldCase, outdated).preview();
  }

  /**
   * Whether the heat of this weld is known and was followed in time, and a case has the same parts,
   * so that its preview may be had near this weld, far quicker than from its own heat.
   */
  public boolean isNear(WeldCase other) {
    return memory.knownHeat().flatMap(CaseHeat::peaks).isPresent()
        && other.passes().size() == welded.passes().size()
        && other
            .weldAlone()
            .change()
            .passes(welded.passes())
            .filler(welded.filler())
            .done()
            .equals(welded);
  }

  /** Whether it is ready for previews near this weld. */
  public boolean isReadyNear() {
    return nearby != null;
  }

  /** Makes ready for previews near this weld, which takes about as long as its heat did. */
  public void readyNear() {
    nearby();
  }

  private synchronized NearbySections nearby() {
    if (nearby == null) {
      nearby = new NearbySections(memory.knownHeat().orElseThrow());
    }
    return nearby;
  }

  /**
   * The preview of a case near this weld.
   *
   * @param outdated asked before each station; true ends the run
   * @throws HeatInputException if its passes cannot make the weld
   * @throws java.util.concurrent.CancellationException if it is outdated
   */
  public SectionProfile previewNear(WeldCase other, BooleanSupplier outdated) {
    if (!isNear(other)) {
      throw new IllegalArgumentException("other parts: " + other.title());
    }
    return nearby().preview(other, outdated);
  }

  /** Whether the heat of this weld is known. */
  public boolean isSolved() {
    return memory.knownHeat().isPresent();
  }

  /**
   * The stations of the preview, moment by moment.
   *
   * @param outdated asked before each station; true ends the run
   * @throws HeatInputException if the passes cannot make this weld
   * @throws java.util.concurrent.CancellationException if it is outdated
   */
  public WeldReplay replay(WeldCase weldCase, BooleanSupplier outdated) {
    return simulation(weldCase, outdated).replay();
  }

  /**
   * The settled profile with a state after every step of the heat treatment.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  SectionProfile everyStage(WeldCase weldCase) {
    return simulation(weldCase, true, StationDensity.FULL, () -> false).profile();
  }

  /**
   * The profile at fewer stations and with no runs at the ends of defaults.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  SectionProfile thin(WeldCase weldCase) {
    return simulation(weldCase, false, StationDensity.THIN, () -> false).profile();
  }

  private SectionSimulation simulation(WeldCase weldCase, BooleanSupplier outdated) {
    return simulation(weldCase, false, StationDensity.FULL, outdated);
  }

  private SectionSimulation simulation(
      WeldCase weldCase, boolean allStages, StationDensity density, BooleanSupplier outdated) {
    if (!holds(weldCase)) {
      throw new IllegalArgumentException("another weld: " + weldCase.title());
    }
    return new SectionSimulation(weldCase, allStages, density, memory, outdated);
  }
}
