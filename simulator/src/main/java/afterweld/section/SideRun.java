package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.StationHistory;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything needed to compute any station of one side: its metal, the weld metal, the heat of the
 * passes in its leg and what happens after welding.
 */
final class SideRun {
  private final SectionMetal<?> base;
  private final SectionMetal<?> weldMetal;
  private final StationTimeline timeline;
  private final List<TemperatureHistory> afterwards;
  private final double solidus;

  /**
   * A side.
   *
   * @param base its metal in the temper it is welded in
   * @param weldMetal what the pool freezes to
   * @param timeline heat of all passes
   * @param afterwards natural ageing and then each furnace step
   * @param solidus of the base, K
   */
  SideRun(
      SectionMetal<?> base,
      SectionMetal<?> weldMetal,
      StationTimeline timeline,
      List<TemperatureHistory> afterwards,
      double solidus) {
    this.base = base;
    this.weldMetal = weldMetal;
    this.timeline = timeline;
    this.afterwards = afterwards;
    this.solidus = solidus;
  }

  StationTimeline timeline() {
    return timeline;
  }

  SideRun with(StationTimeline otherHeat) {
    return new SideRun(base, weldMetal, otherHeat, afterwards, solidus);
  }

  SideRun with(SectionMetal<?> otherWeldMetal) {
    return new SideRun(base, otherWeldMetal, timeline, afterwards, solidus);
  }

  /**
   * Computes one station.
   *
   * @param distance from the weld centre, m; negative if this is the left side
   */
  StationRun at(double distance) {
    StationHistory heat = timeline.at(distance);
    SectionMetal<?> metal = heat.melted() ? weldMetal : base;
    List<TemperatureHistory> histories = new ArrayList<>();
    histories.add(heat.sinceFrozen().orElse(heat.history()));
    histories.addAll(afterwards);
    SectionMetal.Track track = metal.follow(histories);
    List<Strength> strengths = new ArrayList<>();
    strengths.add(base.strengthBefore());
    strengths.addAll(track.strengths().subList(1, track.strengths().size()));
    return new StationRun(distance, heat, zone(heat, track), strengths);
  }

  private Zone zone(StationHistory heat, SectionMetal.Track track) {
    if (heat.melted()) {
      return Zone.FUSION;
    }
    return heat.peakTemperature() >= solidus ? Zone.PARTIALLY_MELTED : track.zone();
  }
}
