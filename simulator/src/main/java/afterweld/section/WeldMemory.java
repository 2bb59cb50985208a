package afterweld.section;

import afterweld.material.Composition;
import afterweld.section.heat.CaseHeat;
import afterweld.thermal.PassHeat;
import afterweld.thermal.StationHistory;
import afterweld.weld.Side;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;

/**
 * What was computed of one weld and may be used again, because it depends on the weld alone: where
 * the stations begin, and what each of them is after welding. A forgetful memory keeps nothing.
 */
final class WeldMemory {
  private final boolean keeps;
  private final AtomicReference<CaseHeat> heat = new AtomicReference<>();
  private final Map<SideKey, OfSide> sides = new ConcurrentHashMap<>();

  private record SideKey(
      int side, List<PassHeat> heats, double unequalWeight, Composition weldMetal) {}

  private WeldMemory(boolean keeps) {
    this.keeps = keeps;
  }

  /** For a profile that is computed once. */
  static WeldMemory forgetful() {
    return new WeldMemory(false);
  }

  /** For a profile that is computed once, its heat known. */
  static WeldMemory of(CaseHeat heat) {
    WeldMemory memory = forgetful();
    memory.heat.set(heat);
    return memory;
  }

  /** For a weld that is looked at again and again. */
  static WeldMemory keeping() {
    return new WeldMemory(true);
  }

  /** The heat of the weld. */
  CaseHeat heat(Supplier<CaseHeat> compute) {
    return heat.updateAndGet(known -> known != null ? known : compute.get());
  }

  /** The heat of the weld, if it is known by now. */
  Optional<CaseHeat> knownHeat() {
    return Optional.ofNullable(heat.get());
  }

  /**
   * The memory of a side.
   *
   * @param which 0 for the left side, 1 for the right one
   * @param weldHeat in which field
   * @param weldMetal what the pool froze to
   */
  OfSide side(int which, CaseHeat weldHeat, Composition weldMetal) {
    return keeps
        ? sides.computeIfAbsent(
            new SideKey(which, weldHeat.heats(), weldHeat.unequalWeight(), weldMetal),
            unused -> new OfSide(true))
        : new OfSide(false);
  }

  /**
   * One station after welding.
   *
   * @param heat its time line through the weld
   * @param trail its metal, cooled
   */
  record Welded(StationHistory heat, Trail<?> trail) {}

  /** The memory of one side. */
  static final class OfSide {
    private final boolean keeps;
    private final Map<Double, Welded> stations = new ConcurrentHashMap<>();
    private final Map<Side, List<Double>> starts = new ConcurrentHashMap<>();

    private OfSide(boolean keeps) {
      this.keeps = keeps;
    }

    Welded at(double distance, DoubleFunction<Welded> compute) {
      Welded known = stations.get(distance);
      if (known != null) {
        return known;
      }
      Welded found = compute.apply(distance);
      if (keeps) {
        stations.put(distance, found);
      }
      return found;
    }

    List<Double> start(Side side, Supplier<List<Double>> compute) {
      return starts.computeIfAbsent(side, unused -> compute.get());
    }
  }
}
