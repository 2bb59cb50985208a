package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.StationHistory;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Everything needed to compute any station of one side: its metal, the weld metal, the heat of the
 * passes in its leg and what happens after welding.
 */
final class SideRun {
  private final SectionMetal<?> base;
  private final SectionMetal<?> weldMetal;
  private final StationTimeline timeline;
  private final List<TemperatureHistory> afterwards;
  private final AgedOnly agedOnly;
  private final double solidus;
  private final WeldMemory.OfSide memory;
  private final BooleanSupplier outdated;

  /**
   * A side.
   *
   * @param base its metal in the temper it is welded in
   * @param weldMetal what the pool freezes to
   * @param timeline heat of all passes
   * @param afterwards natural ageing and then each furnace step
   * @param agedOnly what these steps may promise
   * @param solidus of the base, K
   * @param memory of what the weld made of its stations
   * @param outdated whether nobody waits for the stations any more
   */
  SideRun(
      SectionMetal<?> base,
      SectionMetal<?> weldMetal,
      StationTimeline timeline,
      List<TemperatureHistory> afterwards,
      AgedOnly agedOnly,
      double solidus,
      WeldMemory.OfSide memory,
      BooleanSupplier outdated) {
    this.base = base;
    this.weldMetal = weldMetal;
    this.timeline = timeline;
    this.afterwards = afterwards;
    this.agedOnly = agedOnly;
    this.solidus = solidus;
    this.memory = memory;
    this.outdated = outdated;
  }

  StationTimeline timeline() {
    return timeline;
  }

  SideRun with(StationTimeline otherHeat, WeldMemory.OfSide its) {
    return new SideRun(base, weldMetal, otherHeat, afterwards, agedOnly, solidus, its, outdated);
  }

  SideRun with(SectionMetal<?> otherWeldMetal, WeldMemory.OfSide its) {
    return new SideRun(
        base, otherWeldMetal, timeline, afterwards, agedOnly, solidus, its, outdated);
  }

  WeldMemory.OfSide memory() {
    return memory;
  }

  /**
   * Computes one station.
   *
   * @param distance from the weld centre, m; negative if this is the left side
   */
  StationRun at(double distance) {
    WeldMemory.Welded welded = remembered(distance);
    List<Strength> computed = new ArrayList<>();
    computed.add(base.strengthBefore());
    computed.addAll(welded.trail().strengthsAlong(afterwards));
    List<Strength> strengths = stable(welded) ? OnTheShelf.held(computed) : computed;
    List<Strength> held = heldBack(welded) ? agedOnly.held(strengths) : strengths;
    return new StationRun(
        distance, welded.heat(), zone(welded), held, AgedOnly.changed(strengths, held));
  }

  /** The same station moment by moment. */
  WeldReplay.AtStation replayed(double distance) {
    WeldMemory.Welded welded = remembered(distance);
    SectionMetal<?> metal = welded.heat().melted() ? weldMetal : base;
    return new StationReplay(welded, metal.beforeWelding(), base.strengthBefore(), stable(welded))
        .along(afterwards, heldBack(welded) ? agedOnly : AgedOnly.NOTHING);
  }

  /** Whether it is metal that {@link OnTheShelf} holds. */
  private boolean stable(WeldMemory.Welded welded) {
    return !welded.heat().melted() && base.hasNeedles();
  }

  private boolean heldBack(WeldMemory.Welded welded) {
    return switch (zone(welded)) {
      case FUSION -> true;
      case BASE, ANNEALED, OVERAGED -> base.hasNeedles();
      default -> false;
    };
  }

  private WeldMemory.Welded remembered(double distance) {
    if (outdated.getAsBoolean()) {
      throw new CancellationException("nobody waits for this section any more");
    }
    return memory.at(distance, this::welded);
  }

  private WeldMemory.Welded welded(double distance) {
    StationHistory heat = timeline.at(distance);
    SectionMetal<?> metal = heat.melted() ? weldMetal : base;
    TemperatureHistory felt = heat.sinceFrozen().orElse(heat.history());
    return new WeldMemory.Welded(heat, metal.cooledAfter(felt));
  }

  private Zone zone(WeldMemory.Welded welded) {
    if (welded.heat().melted()) {
      return Zone.FUSION;
    }
    if (welded.heat().peakTemperature() >= solidus) {
      return Zone.PARTIALLY_MELTED;
    }
    List<Strength> asWelded = welded.trail().strengthsAlong(afterwards.subList(0, 1));
    return ZoneRule.of(
        welded.trail().zoneIfChanged(),
        welded.heat().passPeaks(),
        List.of(base.strengthBefore(), asWelded.get(0)));
  }
}
