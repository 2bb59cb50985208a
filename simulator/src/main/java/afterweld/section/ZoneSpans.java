package afterweld.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Groups neighbouring stations of one zone on one side into spans that touch each other. */
final class ZoneSpans {
  private ZoneSpans() {}

  /** The spans from left to right; they meet half way between two stations. */
  static List<ZoneSpan> of(List<Station> stations) {
    List<ZoneSpan> spans = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= stations.size(); i++) {
      if (i == stations.size() || !together(stations.get(first), stations.get(i))) {
        spans.add(span(stations, first, i));
        first = i;
      }
    }
    return spans;
  }

  private static boolean together(Station one, Station other) {
    return one.zone() == other.zone() && one.place() == other.place();
  }

  private static ZoneSpan span(List<Station> stations, int first, int end) {
    List<Station> inside = stations.subList(first, end);
    int states = inside.get(0).estimates().size();
    List<Double> lowest =
        IntStream.range(0, states).mapToObj(state -> lowestHardness(inside, state)).toList();
    return new ZoneSpan(
        inside.get(0).zone(),
        inside.get(0).place(),
        border(stations, first),
        border(stations, end),
        lowest);
  }

  private static double border(List<Station> stations, int next) {
    if (next == 0) {
      return stations.get(0).distance();
    }
    if (next == stations.size()) {
      return stations.get(next - 1).distance();
    }
    return (stations.get(next - 1).distance() + stations.get(next).distance()) / 2;
  }

  private static double lowestHardness(List<Station> inside, int state) {
    return inside.stream()
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .reduce(Math::min)
        .orElseThrow();
  }
}
