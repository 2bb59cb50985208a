package afterweld.section;

import afterweld.section.WeldReplay.AtStation;
import afterweld.section.WeldReplay.Moment;
import afterweld.strength.Strength;
import afterweld.thermal.StationHistory;
import afterweld.thermal.StationHistory.PassTimes;
import afterweld.thermal.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Follows one station moment by moment; every phase ends with the strength of the profile. */
final class StationReplay {
  private static final int FEWEST_PIECES = 24;

  private final WeldMemory.Welded welded;
  private final Trail<?> beforeWelding;
  private final Strength strengthBefore;
  private final boolean stable;

  /**
   * A station.
   *
   * @param welded the station after welding
   * @param beforeWelding its metal: the base in its temper, or weld metal as solidified
   * @param strengthBefore of the base at this place
   * @param stable whether {@link OnTheShelf} holds it
   */
  StationReplay(
      WeldMemory.Welded welded, Trail<?> beforeWelding, Strength strengthBefore, boolean stable) {
    this.welded = welded;
    this.beforeWelding = beforeWelding;
    this.strengthBefore = strengthBefore;
    this.stable = stable;
  }

  /**
   * Its moments in the passes and in the histories that follow them.
   *
   * @param afterwards natural ageing, then each furnace step
   * @param agedOnly what the steps may promise of it
   */
  AtStation along(List<TemperatureHistory> afterwards, AgedOnly agedOnly) {
    List<List<Moment>> phases = new ArrayList<>(passes());
    Trail<?> trail = welded.trail();
    Optional<Strength> limit = Optional.empty();
    for (int i = 0; i < afterwards.size(); i++) {
      if (limit.isEmpty() && agedOnly.limits(1 + i)) {
        limit = Optional.of(i == 1 && stable ? onTheShelf(trail) : trail.strength());
      }
      Trail<?> next = trail.after(afterwards.get(i));
      Optional<Strength> shelf = stable && i == 0 ? Optional.of(strengthBefore) : limit;
      phases.add(limited(phase(trail, afterwards.get(i), next.strength()), shelf));
      trail = next;
    }
    return new AtStation(welded.heat().distance(), phases);
  }

  private Strength onTheShelf(Trail<?> trail) {
    return AgedOnly.lower(trail.strength(), strengthBefore);
  }

  private static List<Moment> limited(List<Moment> moments, Optional<Strength> limit) {
    return limit.isEmpty()
        ? moments
        : moments.stream()
            .map(
                moment ->
                    new Moment(
                        moment.time(),
                        moment.temperature(),
                        AgedOnly.lower(moment.strength(), limit.get())))
            .toList();
  }

  private List<List<Moment>> passes() {
    List<Moment> all = welding();
    List<PassTimes> times = welded.heat().passTimes();
    List<List<Moment>> passes = new ArrayList<>();
    for (int i = 0; i < times.size(); i++) {
      double from = i == 0 ? 0 : times.get(i).start();
      double to = i + 1 < times.size() ? times.get(i + 1).start() : Double.POSITIVE_INFINITY;
      double arc = times.get(i).arc();
      passes.add(
          all.stream()
              .filter(moment -> moment.time() >= from && moment.time() < to)
              .map(moment -> at(moment, moment.time() - arc))
              .toList());
    }
    return passes;
  }

  private static Moment at(Moment moment, double time) {
    return new Moment(time, moment.temperature(), moment.strength());
  }

  /** The whole weld on the station's own clock. */
  private List<Moment> welding() {
    StationHistory heat = welded.heat();
    TemperatureHistory whole = heat.history();
    TemperatureHistory felt = heat.sinceFrozen().orElse(whole);
    double frozen = whole.duration() - felt.duration();
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < whole.size() && whole.time(i) < frozen; i++) {
      boolean untouched = whole.time(i) <= heat.passTimes().get(0).start();
      Strength strength = untouched ? strengthBefore : Strength.NOT_PREDICTED;
      moments.add(new Moment(whole.time(i), whole.temperature(i), strength));
    }
    List<Strength> strengths = beforeWelding.strengthsWithin(felt);
    for (int i = 0; i < felt.size(); i++) {
      moments.add(new Moment(frozen + felt.time(i), felt.temperature(i), strengths.get(i)));
    }
    return moments;
  }

  private static List<Moment> phase(Trail<?> trail, TemperatureHistory history, Strength last) {
    TemperatureHistory fine = finer(history);
    List<Strength> strengths = trail.strengthsWithin(fine);
    List<Moment> moments = new ArrayList<>();
    for (int i = 0; i < fine.size(); i++) {
      Strength strength = i == fine.size() - 1 ? last : strengths.get(i);
      moments.add(new Moment(fine.time(i), fine.temperature(i), strength));
    }
    return moments;
  }

  /** The history with its long pieces cut. */
  private static TemperatureHistory finer(TemperatureHistory history) {
    double longest = history.duration() / FEWEST_PIECES;
    TemperatureHistory fine = TemperatureHistory.hold(history.temperature(0), 0);
    for (int i = 1; i < history.size(); i++) {
      double start = history.time(i - 1);
      double length = history.time(i) - start;
      double rise = history.temperature(i) - history.temperature(i - 1);
      int pieces = length > longest ? (int) Math.ceil(length / longest) : 1;
      for (int k = 1; k <= pieces; k++) {
        double share = (double) k / pieces;
        fine = fine.thenTo(history.temperature(i - 1) + share * rise, length / pieces);
      }
    }
    return fine;
  }
}
