package afterweld.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** Groups neighbouring stations of one zone on one side into spans that touch each other. */
final class ZoneSpans {
  private final List<Station> stations;
  private final ToDoubleFunction<Station.Place> softenedTo;

  private ZoneSpans(List<Station> stations, ToDoubleFunction<Station.Place> softenedTo) {
    this.stations = stations;
    this.softenedTo = softenedTo;
  }

  /**
   * The spans from left to right; they meet half way between two stations, at the base where its
   * loss of yield begins.
   *
   * @param softenedTo how far from the weld centre a side is softened, m; NaN if not known
   */
  static List<ZoneSpan> of(List<Station> stations, ToDoubleFunction<Station.Place> softenedTo) {
    return new ZoneSpans(stations, softenedTo).all();
  }

  private List<ZoneSpan> all() {
    List<ZoneSpan> spans = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= stations.size(); i++) {
      if (i == stations.size() || !together(stations.get(first), stations.get(i))) {
        spans.add(span(first, i));
        first = i;
      }
    }
    return spans;
  }

  private static boolean together(Station one, Station other) {
    return one.zone() == other.zone() && one.place() == other.place();
  }

  private ZoneSpan span(int first, int end) {
    List<Station> inside = stations.subList(first, end);
    int states = inside.get(0).estimates().size();
    List<Double> lowest =
        IntStream.range(0, states).mapToObj(state -> lowestHardness(inside, state)).toList();
    return new ZoneSpan(
        inside.get(0).zone(), inside.get(0).place(), border(first), border(end), lowest);
  }

  private double border(int next) {
    if (next == 0) {
      return stations.get(0).distance();
    }
    if (next == stations.size()) {
      return stations.get(next - 1).distance();
    }
    return between(stations.get(next - 1), stations.get(next));
  }

  private double between(Station one, Station other) {
    boolean baseBegins = (one.zone() == Zone.BASE) != (other.zone() == Zone.BASE);
    double softened =
        baseBegins && one.place() == other.place()
            ? softenedTo.applyAsDouble(one.place())
            : Double.NaN;
    if (Double.isNaN(softened)) {
      return (one.distance() + other.distance()) / 2;
    }
    double signed = Math.copySign(softened, one.distance());
    return Math.max(one.distance(), Math.min(other.distance(), signed));
  }

  private static double lowestHardness(List<Station> inside, int state) {
    return inside.stream()
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .reduce(Math::min)
        .orElseThrow();
  }
}
