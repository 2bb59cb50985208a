package afterweld.metallurgy;

import afterweld.material.Composition;
import afterweld.thermal.TemperatureHistory;

/**
 * Metallurgy of an alloy that precipitates of magnesium and silicon harden: wrought 6xxx, castings
 * and weld metal.
 *
 * <p>Needles nucleate, grow, dissolve and coarsen in classes of size; the coarse phases, clusters,
 * silicon and the rounding of eutectic silicon follow beside them, all drawing on one matrix.
 * Validity: 25 to 590 °C; magnesium 0.4 to 1.2 and silicon 0.4 to 1.3 wt% for base metal, weld
 * metal of 4xxx and 5xxx fillers up to 60 % dilution. No vacancy memory, grain boundaries,
 * liquation or recrystallisation.
 */
public final class PrecipitationModel implements Metallurgy<PrecipitateState> {
  private final Metal metal;
  private final NumericalSettings settings;

  private PrecipitationModel(SoluteBudget budget, boolean cast, NumericalSettings settings) {
    metal = new Metal(budget, cast, new NeedleClasses(settings.needleClasses()));
    this.settings = settings;
  }

  /** Base metal, which starts with its solute dissolved. */
  public static PrecipitationModel wrought(Composition composition) {
    return wrought(composition, NumericalSettings.DEFAULT);
  }

  /** Base metal at other numerical settings. */
  public static PrecipitationModel wrought(Composition composition, NumericalSettings settings) {
    return new PrecipitationModel(new SoluteBudget(composition), false, settings);
  }

  /** Weld metal or a casting, which starts as solidified. */
  public static PrecipitationModel asCast(Composition composition) {
    return asCast(composition, NumericalSettings.DEFAULT);
  }

  /** Weld metal or a casting at other numerical settings. */
  public static PrecipitationModel asCast(Composition composition, NumericalSettings settings) {
    return new PrecipitationModel(new SoluteBudget(composition), true, settings);
  }

  /** Most formula units Mg2Si that can form, per atom. */
  public double hardeningSolute() {
    return metal.budget().hardening();
  }

  @Override
  public PrecipitateState start(double temperature) {
    return new StartCondition(metal).at(temperature);
  }

  /**
   * {@inheritDoc}
   *
   * @throws IllegalArgumentException if the state is one of another metal
   */
  @Override
  public PrecipitateState advance(PrecipitateState state, TemperatureHistory history) {
    boolean same =
        state.composition().equals(metal.budget().composition())
            && state.cast() == metal.cast()
            && state.metal().classes().count() == metal.classes().count();
    if (!same) {
      throw new IllegalArgumentException("the state belongs to another metal");
    }
    Precipitation precipitation = new Precipitation(state, settings);
    precipitation.follow(history);
    return precipitation.state();
  }
}
