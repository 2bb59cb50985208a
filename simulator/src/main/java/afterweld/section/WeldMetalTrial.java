package afterweld.section;

import afterweld.material.Composition;
import afterweld.section.heat.CaseHeat;
import afterweld.strength.Strength;
import afterweld.thermal.StationHistory;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.PoolMetals;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What weld metal of any composition would become at the centre of a case's weld: the heat of the
 * case's passes, its natural ageing and its heat treatment, with another metal in the pool. For
 * comparing fillers and dilutions without computing the whole section anew.
 */
public final class WeldMetalTrial {
  private final PoolMetals metals;
  private final List<TemperatureHistory> histories;
  private final AgedOnly agedOnly;
  private final boolean overaged;

  private WeldMetalTrial(
      PoolMetals metals, List<TemperatureHistory> histories, AgedOnly agedOnly, boolean overaged) {
    this.metals = metals;
    this.histories = List.copyOf(histories);
    this.agedOnly = agedOnly;
    this.overaged = overaged;
  }

  /**
   * The trial of a case.
   *
   * @param heat of its weld
   */
  static WeldMetalTrial of(WeldCase weldCase, CaseHeat heat) {
    Side governing = governing(weldCase);
    boolean left = governing.equals(weldCase.left());
    StationHistory centre = (left ? heat.left() : heat.right()).at(0);
    List<TemperatureHistory> histories = new ArrayList<>();
    histories.add(centre.sinceFrozen().orElse(centre.history()));
    histories.add(TemperatureHistory.hold(FurnaceHistory.ROOM, weldCase.naturalAge()));
    histories.addAll(
        new FurnaceHistory(governing.alloy(), governing.temper().name(), governing.thickness())
            .of(weldCase.afterWeld()));
    return new WeldMetalTrial(
        PoolMetals.of(weldCase),
        histories,
        AgedOnly.of(weldCase.afterWeld()),
        OverageingLimit.atTheEnd(weldCase));
  }

  /** The side whose heat the weld metal follows: the thicker, turned round as well. */
  static Side governing(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .max(
            Comparator.comparingDouble(Side::thickness)
                .thenComparing(side -> side.alloy().name())
                .thenComparing(side -> side.temper().name()))
        .orElseThrow();
  }

  List<TemperatureHistory> histories() {
    return histories;
  }

  /**
   * Strength as welded, after natural ageing, and after the whole treatment (the same if there is
   * none); aged without solution treatment no stronger than as welded ({@link AgedOnly}), and not
   * predicted beyond the {@link OverageingLimit}.
   *
   * @param filler what is added to the bases of the case; empty if nothing is
   */
  public Result of(Composition metal, Optional<Composition> filler) {
    return of(metals.with(filler), metal);
  }

  /** The same of what melts together in the case itself. */
  public Result of(Composition metal) {
    return of(metals, metal);
  }

  private Result of(PoolMetals pool, Composition metal) {
    List<Strength> strengths = agedOnly.held(SectionMetal.weld(pool, metal).follow(histories));
    return result(strengths);
  }

  private Result result(List<Strength> strengths) {
    return new Result(
        strengths.get(1), overaged ? Strength.NOT_PREDICTED : strengths.get(strengths.size() - 1));
  }

  /**
   * Strength of the base of a side without a weld, as delivered and through the treatment; not
   * predicted beyond the {@link OverageingLimit}.
   *
   * @param side left or right part of the case
   */
  public Result base(Side side) {
    SectionMetal<?> base = SectionMetal.base(side);
    List<Strength> strengths = new ArrayList<>(List.of(base.strengthBefore()));
    strengths.addAll(base.follow(histories.subList(1, histories.size())));
    return result(base.hasNeedles() ? agedOnly.held(OnTheShelf.held(strengths)) : strengths);
  }

  /**
   * What a metal becomes.
   *
   * @param asWelded after natural ageing
   * @param treated after the heat treatment
   */
  public record Result(Strength asWelded, Strength treated) {}
}
