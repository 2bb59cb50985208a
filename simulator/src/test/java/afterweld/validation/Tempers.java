package afterweld.validation;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import afterweld.material.TemperRecipe;
import afterweld.metallurgy.PrecipitateState;
import afterweld.metallurgy.PrecipitationModel;
import afterweld.strength.PrecipitateStrength;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureHistory;
import java.util.Map;

/** Metal through laboratory schedules: solution treatment, quench, shelf, ageing. */
final class Tempers {
  static final double ROOM = 298.15;
  static final double DAY = 86400;
  private static final double CELSIUS = 273.15;

  private Tempers() {}

  static Alloy alloy(String name) {
    return MaterialLibrary.standard().base(name).orElseThrow();
  }

  /** An alloy of the library in one of its tempers. */
  static Strength temper(String name, String temper) {
    Alloy alloy = alloy(name);
    return strength(alloy, alloy.temper(temper).orElseThrow().recipe().orElseThrow());
  }

  private static Strength strength(Alloy alloy, TemperRecipe recipe) {
    PrecipitationModel model =
        recipe.asCast()
            ? PrecipitationModel.asCast(alloy.composition())
            : PrecipitationModel.wrought(alloy.composition());
    return PrecipitateStrength.of(model.follow(TemperatureHistory.of(recipe)));
  }

  /** Solution treatment for an hour and a quench at a rate, K/s. */
  static TemperatureHistory quenched(double solutionCelsius, double rate) {
    double solution = solutionCelsius + CELSIUS;
    return TemperatureHistory.hold(solution, 3600).thenTo(ROOM, (solution - ROOM) / rate);
  }

  /** A day on the shelf and an age with 0.5 K/s up and 2 K/s down. */
  static TemperatureHistory aged(TemperatureHistory quenched, double celsius, double hours) {
    return quenched.thenTo(ROOM, DAY).then(reheat(celsius, hours, 0.5, 2));
  }

  /** From room temperature to a temperature, held, and back. */
  static TemperatureHistory reheat(double celsius, double hours, double up, double down) {
    double rise = celsius + CELSIUS - ROOM;
    return TemperatureHistory.hold(ROOM, 0)
        .thenTo(celsius + CELSIUS, rise / up)
        .thenTo(celsius + CELSIUS, hours * 3600)
        .thenTo(ROOM, rise / down);
  }

  static double yieldOf(Composition composition, TemperatureHistory history) {
    PrecipitationModel model = PrecipitationModel.wrought(composition);
    return PrecipitateStrength.of(model.follow(history)).yield() * 1e-6;
  }

  /** Yield that a reheat leaves of T6, as a share. */
  static double leftAfterReheat(double celsius, double hours) {
    Alloy alloy = alloy("6061");
    PrecipitationModel model = PrecipitationModel.wrought(alloy.composition());
    TemperRecipe recipe = alloy.temper("T6").orElseThrow().recipe().orElseThrow();
    PrecipitateState before = model.follow(TemperatureHistory.of(recipe));
    PrecipitateState after = model.advance(before, reheat(celsius, hours, 2, 5));
    return PrecipitateStrength.of(after).yield() / PrecipitateStrength.of(before).yield();
  }

  /** Mg2Si that stays dissolved with more of it present than dissolves, wt%. */
  static double dissolvedMagnesiumSilicide(double celsius) {
    double magnesiumShare = 2 * 24.305 / (2 * 24.305 + 28.086);
    Composition plenty =
        Composition.of(
            Map.of(Element.MG, 3 * magnesiumShare, Element.SI, 3 * (1 - magnesiumShare)));
    PrecipitateState start = PrecipitationModel.wrought(plenty).start(celsius + CELSIUS);
    return start.matrixMagnesium() / magnesiumShare;
  }

  /** Slowest quench after which the aged yield is at least a share of that of a fast one, K/s. */
  static double criticalRate(String name, double solution, double age, double share) {
    Composition composition = alloy(name).composition();
    double fast = yieldOf(composition, aged(quenched(solution, 300), age, 8));
    double rate = 300;
    while (rate > 0.01
        && yieldOf(composition, aged(quenched(solution, rate / 1.1), age, 8)) >= share * fast) {
      rate /= 1.1;
    }
    return rate;
  }

  /** Gain of yield by ageing of a cast metal without magnesium over its quenched state, MPa. */
  static double gainWithoutMagnesium() {
    Composition silicon = Composition.of(Map.of(Element.SI, 5.0));
    PrecipitationModel model = PrecipitationModel.asCast(silicon);
    PrecipitateState solution =
        model.advance(
            model.start(540 + CELSIUS),
            TemperatureHistory.hold(540 + CELSIUS, 0)
                .thenTo(ROOM, 60)
                .then(TemperatureHistory.hold(ROOM, 0).thenTo(530 + CELSIUS, 600))
                .thenTo(530 + CELSIUS, 3600)
                .thenTo(ROOM, 2));
    PrecipitateState aged =
        model.advance(solution, TemperatureHistory.hold(ROOM, DAY).then(reheat(175, 8, 0.5, 2)));
    return (PrecipitateStrength.of(aged).yield() - PrecipitateStrength.of(solution).yield()) * 1e-6;
  }
}
