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
 * What was computed of one weld and may be used again, because it depends on the weld alone: its
 * heat, where the stations begin, and what each of them is after welding. A forgetful memory keeps
 * nothing of the stations.
 */
final class WeldMemory {
  private final boolean keeps;
  private final Supplier<CaseHeat> compute;
  private final AtomicReference<CaseHeat> heat = new AtomicReference<>();
  private final Map<SideKey, OfSide> sides = new ConcurrentHashMap<>();

  private record SideKey(
      int side, List<PassHeat> heats, double unequalWeight, Composition weldMetal) {}

  private record StartKey(Side side, StationDensity density) {}

  private WeldMemory(boolean keeps, Supplier<CaseHeat> compute) {
    this.keeps = keeps;
    this.compute = compute;
  }

  /** For a profile that is computed once, its heat known. */
  static WeldMemory of(CaseHeat heat) {
    return new WeldMemory(false, () -> heat);
  }

  /**
   * For a weld that is looked at again and again.
   *
   * @param compute its heat, when first asked for
   */
  static WeldMemory keeping(Supplier<CaseHeat> compute) {
    return new WeldMemory(true, compute);
  }

  /**
   * The heat of the weld.
   *
   * @throws afterweld.thermal.HeatInputException if the passes cannot make this weld
   */
  CaseHeat heat() {
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
    private final Map<StartKey, List<Double>> starts = new ConcurrentHashMap<>();

    private OfSide(boolean keeps) {
      this.keeps = keeps;
    }

    /** A station: whoever asks while it is being computed waits for it. */
    Welded at(double distance, DoubleFunction<Welded> compute) {
      return keeps ? stations.computeIfAbsent(distance, compute::apply) : compute.apply(distance);
    }

    /** Where the stations begin; computed on many threads, so that nobody may wait for it. */
    List<Double> start(Side side, StationDensity density, Supplier<List<Double>> compute) {
      StartKey key = new StartKey(side, density);
      List<Double> known = starts.get(key);
      if (known == null) {
        known = compute.get();
        starts.put(key, known);
      }
      return known;
    }
  }
}
