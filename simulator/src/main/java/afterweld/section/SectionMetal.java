package afterweld.section;

import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.TemperRecipe;
import afterweld.metallurgy.Metallurgy;
import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.metallurgy.State;
import afterweld.metallurgy.StoredWorkModel;
import afterweld.strength.MagnesiumStrength;
import afterweld.strength.PlainStrength;
import afterweld.strength.PrecipitateStrength;
import afterweld.strength.StoredWorkStrength;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureHistory;
import afterweld.weld.Side;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.SiliconOnMagnesium;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * One metal of the section: how its state follows temperature, what strength each state has, and
 * how a heat-affected zone of it is named.
 *
 * @param <S> kind of state of its family of alloys
 * @param metallurgy moves the state
 * @param before state in which the metal enters the weld: the base temper, or weld metal as
 *     solidified
 * @param strength strength of a state
 * @param zone what it is called, if the weld changed it, by the states before welding and right
 *     after cooling
 */
record SectionMetal<S extends State>(
    Metallurgy<S> metallurgy,
    S before,
    Function<S, Strength> strength,
    BiFunction<S, S, Zone> zone) {

  /** Weld metal with more copper than this (wt%) is outside every model here (assumed). */
  private static final double MOST_COPPER = 0.5;

  /** Temperature at which cast metal starts its own history, K (assumed). */
  static final double CAST_START = 813.15;

  /** The metal of one side, made by its temper's own history. */
  static SectionMetal<?> base(Side side) {
    return side.alloy().heatTreatable() ? hardenedByHeat(side) : hardenedByWork(side);
  }

  private static SectionMetal<?> hardenedByWork(Side side) {
    StoredWorkModel model = StoredWorkModel.of(side.alloy(), side.temper());
    StoredWorkStrength strength = StoredWorkStrength.of(side.alloy(), side.temper());
    return new SectionMetal<>(
        model,
        model.start(CAST_START),
        strength::of,
        (before, cooled) -> ZoneRule.recrystallization(cooled));
  }

  private static SectionMetal<?> hardenedByHeat(Side side) {
    TemperRecipe recipe = side.temper().recipe().orElseThrow();
    PrecipitationModel model =
        recipe.asCast()
            ? PrecipitationModel.asCast(side.composition())
            : PrecipitationModel.wrought(side.composition());
    return precipitating(model, model.follow(TemperatureHistory.of(recipe)));
  }

  /**
   * Weld metal of one composition, as it solidifies.
   *
   * @param metals that melted together into it
   */
  static SectionMetal<?> weld(PoolMetals metals, Composition composition) {
    PrecipitationModel model = PrecipitationModel.asCast(composition);
    PrecipitateState start = model.start(CAST_START);
    if (PlainStrength.holdsFor(composition)) {
      Strength plain = PlainStrength.of(composition);
      return new SectionMetal<>(model, start, state -> plain, ZoneRule::precipitation);
    }
    if (BrittleMix.forms(metals) || !predicted(composition)) {
      return new SectionMetal<>(
          model, start, state -> Strength.NOT_PREDICTED, ZoneRule::precipitation);
    }
    Function<PrecipitateState, Strength> strength =
        SiliconOnMagnesium.holdsFor(metals)
            ? state -> SiliconOnMagnesium.capped(dissolved(state))
            : SectionMetal::dissolved;
    return new SectionMetal<>(model, start, strength, ZoneRule::precipitation);
  }

  /** Strength of weld metal, no lower than what its dissolved magnesium alone makes. */
  private static Strength dissolved(PrecipitateState state) {
    return MagnesiumStrength.atLeast(
        PrecipitateStrength.of(state), state.matrixMagnesium(), state.composition());
  }

  /** Whether the strength of weld metal of that composition can be predicted. */
  static boolean predicted(Composition composition) {
    return composition.of(Element.CU) <= MOST_COPPER;
  }

  private static SectionMetal<PrecipitateState> precipitating(
      PrecipitationModel model, PrecipitateState before) {
    return new SectionMetal<>(model, before, PrecipitateStrength::of, ZoneRule::precipitation);
  }

  /** Whether it enters the weld hardened by needles. */
  boolean hasNeedles() {
    return before instanceof PrecipitateState state && ZoneRule.hasNeedles(state);
  }

  /** Strength in the state before welding. */
  Strength strengthBefore() {
    return strength.apply(before);
  }

  /**
   * Strengths after each history of the metal; the first is right after the weld has cooled.
   *
   * @param histories one after the other
   */
  List<Strength> follow(List<TemperatureHistory> histories) {
    Trail<S> cooled = cooledAfter(histories.get(0));
    List<Strength> strengths = new ArrayList<>(List.of(cooled.strength()));
    strengths.addAll(cooled.strengthsAlong(histories.subList(1, histories.size())));
    return strengths;
  }

  /** The metal before welding. */
  Trail<S> beforeWelding() {
    return new Trail<>(this, before);
  }

  /** The metal once the weld has cooled. */
  Trail<S> cooledAfter(TemperatureHistory welding) {
    return new Trail<>(this, metallurgy.advance(before, welding));
  }
}
