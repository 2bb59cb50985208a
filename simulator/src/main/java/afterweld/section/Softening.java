package afterweld.section;

import afterweld.strength.Strength;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Predicate;

/**
 * From which peak temperature the base of each side loses over 2 % of its yield as welded: between
 * the last station beside the weld that did and the first that did not, straight in between. Weld
 * metal and partially melted metal do not count.
 *
 * @param left side
 * @param right side
 */
public record Softening(OfSide left, OfSide right) {
  /**
   * Of one side.
   *
   * @param from peak temperature, K; of a leg that is softened throughout the lowest there, which
   *     says only that the threshold is not above it; NaN if nothing softens
   * @param throughout whether the leg is softened to its end
   */
  public record OfSide(double from, boolean throughout) {
    /** Nothing softens. */
    public static final OfSide NOTHING = new OfSide(Double.NaN, false);

    /** Whether anything softens. */
    public boolean any() {
      return !Double.isNaN(from);
    }

    /** Whether the temperature is a threshold: some of the leg stayed under it. */
    public boolean threshold() {
      return any() && !throughout;
    }
  }

  private static final int HALVINGS = 6;

  /** Both sides from one peak temperature, K. */
  public static Softening both(double from) {
    return new Softening(new OfSide(from, false), new OfSide(from, false));
  }

  /** Whether anything softens. */
  public boolean any() {
    return left.any() || right.any();
  }

  /**
   * Where softening begins: between two stations it is looked for, so that few stations and many
   * tell the same. The station in the weld centre is of the left metal.
   *
   * @param at the station at a distance, m
   */
  static Softening of(List<StationRun> runs, DoubleFunction<StationRun> at) {
    return new Softening(
        side(runs, run -> run.distance() <= 0, at), side(runs, run -> run.distance() > 0, at));
  }

  private static OfSide side(
      List<StationRun> runs, Predicate<StationRun> here, DoubleFunction<StationRun> at) {
    List<StationRun> outwards =
        runs.stream()
            .filter(here)
            .filter(run -> !run.melted() && run.zone() != Zone.PARTIALLY_MELTED)
            .sorted(Comparator.comparingDouble(run -> Math.abs(run.distance())))
            .toList();
    if (outwards.isEmpty()) {
      return melted(runs.stream().filter(here).toList());
    }
    int last = outwards.size() - 1;
    while (last >= 0 && !ZoneRule.softer(outwards.get(last).strengths())) {
      last--;
    }
    if (last < 0) {
      return OfSide.NOTHING;
    }
    StationRun softened = outwards.get(last);
    return last == outwards.size() - 1
        ? new OfSide(softened.heat().peakTemperature(), true)
        : new OfSide(between(softened, outwards.get(last + 1), at), false);
  }

  /** A leg that melted to its end is soft to its end. */
  private static OfSide melted(List<StationRun> runs) {
    return runs.stream().mapToDouble(run -> run.heat().peakTemperature()).min().stream()
        .mapToObj(coolest -> new OfSide(coolest, true))
        .findFirst()
        .orElse(OfSide.NOTHING);
  }

  private static double between(StationRun inner, StationRun outer, DoubleFunction<StationRun> at) {
    StationRun softened = inner;
    StationRun sound = outer;
    for (int i = 0; i < HALVINGS; i++) {
      StationRun middle = at.apply((softened.distance() + sound.distance()) / 2);
      boolean softer = ZoneRule.softer(middle.strengths());
      softened = softer ? middle : softened;
      sound = softer ? sound : middle;
    }
    double inside = loss(softened.strengths());
    double outside = loss(sound.strengths());
    double hot = softened.heat().peakTemperature();
    double cool = sound.heat().peakTemperature();
    return cool + (ZoneRule.UNCHANGED_YIELD - outside) / (inside - outside) * (hot - cool);
  }

  private static double loss(List<Strength> strengths) {
    return 1 - strengths.get(1).yield() / strengths.get(0).yield();
  }
}
