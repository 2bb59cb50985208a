package afterweld.study;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.FillerChoice;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** Cases that differ from a given one in one thing. SI units and kelvin. */
final class CaseChange {
  private CaseChange() {}

  static WeldCase passes(WeldCase from, UnaryOperator<Pass> change) {
    return withPasses(from, mapped(from.passes(), change));
  }

  static WeldCase withPasses(WeldCase from, List<Pass> passes) {
    return from.change().passes(passes).done();
  }

  static WeldCase steps(WeldCase from, UnaryOperator<FurnaceStep> change) {
    return from.withAfterWeld(mapped(from.afterWeld(), change));
  }

  private static <T> List<T> mapped(List<T> all, UnaryOperator<T> change) {
    return all.stream().map(change).toList();
  }

  /** Another dilution, as if it had been stated. */
  static WeldCase dilution(WeldCase from, double share) {
    FillerChoice old = from.filler();
    return filler(
        from,
        new FillerChoice(
            old.alloy(), share, share, share, true, old.fromLeft(), old.depositArea()));
  }

  /** Another composition of the filler wire. */
  static WeldCase fillerMetal(WeldCase from, UnaryOperator<Composition> change) {
    FillerChoice old = from.filler();
    Optional<Alloy> alloy =
        old.alloy().map(wire -> withComposition(wire, change.apply(wire.composition())));
    return filler(
        from,
        new FillerChoice(
            alloy,
            old.dilution(),
            old.dilutionLow(),
            old.dilutionHigh(),
            old.dilutionGiven(),
            old.fromLeft(),
            old.depositArea()));
  }

  private static WeldCase filler(WeldCase from, FillerChoice filler) {
    return from.change().filler(filler).done();
  }

  private static Alloy withComposition(Alloy alloy, Composition composition) {
    return new Alloy(
        alloy.name(),
        alloy.family(),
        alloy.uses(),
        composition,
        alloy.limits(),
        alloy.solidus(),
        alloy.liquidus(),
        alloy.density(),
        alloy.latentHeat(),
        alloy.conductivityByTemper(),
        alloy.conductivitySlope(),
        alloy.tempers(),
        alloy.schedule(),
        alloy.facts());
  }

  static WeldCase left(WeldCase from, UnaryOperator<Composition> change) {
    return from.change().sides(changed(from.left(), change), from.right()).done();
  }

  static WeldCase right(WeldCase from, UnaryOperator<Composition> change) {
    return from.change().sides(from.left(), changed(from.right(), change)).done();
  }

  private static Side changed(Side side, UnaryOperator<Composition> change) {
    return side.of(change.apply(side.composition()));
  }

  static WeldCase naturalAge(WeldCase from, double time) {
    return from.change().naturalAge(time).done();
  }

  /** A pass with other numbers; width and efficiency exclude each other. */
  static Pass pass(
      Pass old, double current, double voltage, double travelSpeed, double startTemperature) {
    return new Pass(
        old.process(),
        current,
        voltage,
        travelSpeed,
        startTemperature,
        old.beadWidth(),
        old.penetration(),
        old.efficiency(),
        old.offset(),
        old.pause());
  }

  static Pass travelSpeed(Pass old, double speed) {
    return pass(old, old.current(), old.voltage(), speed, old.startTemperature());
  }

  static Pass heat(Pass old, OptionalDouble beadWidth, OptionalDouble efficiency) {
    return new Pass(
        old.process(),
        old.current(),
        old.voltage(),
        old.travelSpeed(),
        old.startTemperature(),
        beadWidth,
        old.penetration(),
        efficiency,
        old.offset(),
        old.pause());
  }
}
