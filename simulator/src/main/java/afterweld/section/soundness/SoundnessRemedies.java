package afterweld.section.soundness;

import afterweld.quantity.BothUnits;
import afterweld.quantity.UnitSystem;
import afterweld.section.heat.CaseHeat;
import afterweld.section.heat.MeltDown;
import afterweld.thermal.AdvisedSetting;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.function.UnaryOperator;

/**
 * What would make a joint of a weld that is none: the current, the speed or the preheat at which
 * its pools would reach, found by trying, each alone with the arc efficiency kept; the passes or
 * the preparation it takes.
 *
 * <p>Tried as far as a shop goes: tungsten arc to 400 A, metal arc to 450 A, down to 1 mm/s and 4
 * mm/s, preheat to 150 °C [common practice].
 */
final class SoundnessRemedies {
  private static final double MOST_TUNGSTEN = 400;
  private static final double MOST_METAL_ARC = 450;
  private static final double SLOWEST_TUNGSTEN = 1e-3;
  private static final double SLOWEST_METAL_ARC = 4e-3;
  private static final double HOTTEST = 150 + UnitSystem.ZERO_CELSIUS;
  private static final double THICKEST_V = 12e-3;
  private static final int HALVINGS = 12;

  private final WeldCase weldCase;
  private final List<PassHeat> heats;
  private final SoundnessRule rule;
  private final MeltDown molten;

  SoundnessRemedies(WeldCase weldCase, List<PassHeat> heats, SoundnessRule rule, MeltDown molten) {
    this.weldCase = weldCase;
    this.heats = heats;
    this.rule = rule;
    this.molten = molten;
  }

  List<String> all() {
    List<String> all = new ArrayList<>();
    if (molten.collapses()) {
      all.add(
          "Less heat: less current or faster travel, the current taken back towards the end"
              + " (end_current), stops to cool, or a backing or chill bar that holds the pool.");
    }
    if (molten.startsCold() || rule.startsCold() || atColdStart()) {
      all.add(
          "At the start hold the arc until the pool has formed, preheat, or start on a run-on tab; on"
              + " a ring run on over the start.");
    }
    if (molten.endsCold() || rule.endsOpen()) {
      all.add("Let the current fall less towards the end (end_current).");
    }
    boolean cold = ColdSide.reason(weldCase, heats).isPresent();
    if (!molten.collapses() && (cold || !rule.fusedThrough() || rule.edgeStaysCold(molten))) {
      all.addAll(hotter(cold));
    }
    if (cold) {
      all.add(
          "Preheat the thick part to "
              + BothUnits.temperature(ColdSide.WARM)
              + " or more, and hold the arc on it.");
    }
    if (!rule.fusedThrough() && !rule.groove().open()) {
      all.add(prepare());
    }
    if (!rule.filled()) {
      all.addAll(filling());
    }
    return all;
  }

  private boolean atColdStart() {
    return weldCase.course().ends()
        && weldCase.course().place() == Place.START
        && rule.edgeStaysCold(molten);
  }

  /** Current, speed and preheat at which the pools would reach. */
  private List<String> hotter(boolean cold) {
    List<String> words = new ArrayList<>();
    if (CaseHeat.isFollowed(weldCase)) {
      return List.of("More current, slower travel or preheat.");
    }
    Pass first = weldCase.passes().get(0);
    double most = first.process().tungstenArc() ? MOST_TUNGSTEN : MOST_METAL_ARC;
    double slowest = slowest();
    search(first.current(), most, this::withCurrent)
        .ifPresent(
            amperes ->
                words.add(
                    "With "
                        + AdvisedSetting.current(amperes)
                        + " at this speed the pool would reach."));
    search(first.travelSpeed(), slowest, this::withSpeed)
        .ifPresent(
            speed ->
                words.add(
                    "At " + AdvisedSetting.speed(speed) + " and this current it would reach."));
    if (!cold) {
      search(first.startTemperature(), HOTTEST, this::withPreheat)
          .ifPresent(
              kelvin ->
                  words.add("Preheated to " + AdvisedSetting.preheat(kelvin) + " it would reach."));
    }
    if (words.isEmpty()) {
      words.add("No current, speed or preheat of common practice makes this pool reach.");
    }
    return words;
  }

  /** The value nearest to the case's own at which it would reach, for an {@link AdvisedSetting}. */
  private OptionalDouble search(double own, double limit, DoubleFunction<WeldCase> changed) {
    DoublePredicate reaches = value -> reaches(changed.apply(value));
    if (!reaches.test(limit)) {
      return OptionalDouble.empty();
    }
    double cold = own;
    double hot = limit;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (cold + hot) / 2;
      if (reaches.test(middle)) {
        hot = middle;
      } else {
        cold = middle;
      }
    }
    return OptionalDouble.of(hot);
  }

  private static boolean reaches(WeldCase changed) {
    try {
      List<PassHeat> hotter = CaseHeat.heats(changed);
      return new SoundnessRule(changed, hotter).fusedThrough()
          && ColdSide.reason(changed, hotter).isEmpty();
    } catch (HeatInputException noWeld) {
      return false;
    }
  }

  private double slowest() {
    return weldCase.passes().get(0).process().tungstenArc() ? SLOWEST_TUNGSTEN : SLOWEST_METAL_ARC;
  }

  private WeldCase withCurrent(double amperes) {
    double factor = amperes / weldCase.passes().get(0).current();
    return changed(pass -> pass.withCurrent(factor * pass.current()));
  }

  private WeldCase withSpeed(double speed) {
    double factor = speed / weldCase.passes().get(0).travelSpeed();
    return changed(pass -> pass.withTravelSpeed(factor * pass.travelSpeed()));
  }

  private WeldCase withPreheat(double kelvin) {
    return changed(pass -> pass.withStartTemperature(Math.max(kelvin, pass.startTemperature())));
  }

  private WeldCase changed(UnaryOperator<Pass> change) {
    List<Pass> passes = heats.stream().map(PassHeat::passAtThisEfficiency).map(change).toList();
    return weldCase.change().passes(passes).done();
  }

  private String prepare() {
    boolean thick = rule.groove().thickness() > THICKEST_V;
    return thick
        ? "Prepare a double-v and fill it from both sides in several passes."
        : "Prepare a single-v and fill it, or weld from both sides.";
  }

  private List<String> filling() {
    Deposit deposit = rule.deposit();
    if (deposit.kind() == Deposit.Kind.NO_FILLER) {
      return List.of("Use a filler, or square edges that need none.");
    }
    double area = rule.groove().area();
    double each = deposit.area() / heats.size();
    int more = (int) Math.ceil((area - deposit.area()) / each);
    List<String> words = new ArrayList<>();
    words.add("About " + more + " more " + (more == 1 ? "pass" : "passes") + " like the last.");
    slower(area / deposit.area()).ifPresent(words::add);
    return words;
  }

  private Optional<String> slower(double times) {
    double speed = weldCase.passes().get(0).travelSpeed() / times;
    boolean byCurrent = rule.deposit().kind() == Deposit.Kind.WIRE_BY_CURRENT;
    return byCurrent && speed >= slowest()
        ? Optional.of("At " + AdvisedSetting.speed(speed) + " the wire would fill it.")
        : Optional.empty();
  }
}
