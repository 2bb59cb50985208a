package afterweld.charts.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a chart, in the units of its axes. A value of NaN leaves a gap.
 *
 * @param name what the legend calls it
 * @param spots from left to right
 * @param look how it is drawn
 */
public record Curve(String name, List<Spot> spots, LineLook look) {
  private static final double ROUNDING = 1e-6;

  /** Copies the list. */
  public Curve {
    spots = List.copyOf(spots);
  }

  /**
   * One point.
   *
   * @param x in the unit of the horizontal axis
   * @param y in the unit of the vertical axis; NaN for nothing
   */
  public record Spot(double x, double y) {
    /** Whether there is a value to draw. */
    public boolean known() {
      return Double.isFinite(y);
    }
  }

  /** The pieces between the gaps, none of them empty. */
  public List<List<Spot>> pieces() {
    List<List<Spot>> pieces = new ArrayList<>();
    List<Spot> piece = new ArrayList<>();
    for (Spot spot : spots) {
      if (spot.known()) {
        piece.add(spot);
      } else if (!piece.isEmpty()) {
        pieces.add(piece);
        piece = new ArrayList<>();
      }
    }
    if (!piece.isEmpty()) {
      pieces.add(piece);
    }
    return pieces;
  }

  /** The part between two places with one point more on either side. */
  Curve around(double from, double to) {
    List<Spot> kept = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      boolean pastFrom = i + 1 == spots.size() || spots.get(i + 1).x() >= from;
      boolean beforeTo = i == 0 || spots.get(i - 1).x() <= to;
      if (pastFrom && beforeTo) {
        kept.add(spots.get(i));
      }
    }
    return new Curve(name, kept, look);
  }

  /** The part between two places. */
  public Curve between(double from, double to) {
    return new Curve(
        name, spots.stream().filter(spot -> spot.x() >= from && spot.x() <= to).toList(), look);
  }

  /**
   * The lowest point, the leftmost of those that differ by rounding only; empty if nothing is
   * known.
   */
  public Optional<Spot> lowest() {
    OptionalDouble least = spots.stream().filter(Spot::known).mapToDouble(Spot::y).min();
    double limit = least.orElse(0) + ROUNDING * Math.abs(least.orElse(0));
    return spots.stream().filter(spot -> spot.known() && spot.y() <= limit).findFirst();
  }

  /** The highest point, the leftmost of equals; empty if nothing is known. */
  public Optional<Spot> highest() {
    return spots.stream()
        .filter(Spot::known)
        .reduce((best, next) -> next.y() > best.y() ? next : best);
  }

  /** What to call the lowest point: a gap may hide a lower one. */
  public String lowestInWords() {
    return spots.stream().allMatch(Spot::known) ? "lowest" : "lowest predicted";
  }

  /** Whether the values differ by less than one percent of the highest. */
  public boolean even() {
    double low = lowest().map(Spot::y).orElse(0.0);
    double high = highest().map(Spot::y).orElse(0.0);
    return high - low < 0.01 * Math.abs(high);
  }
}
