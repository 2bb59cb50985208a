package afterweld.charts.plot;

import java.awt.Color;
import java.util.List;

/**
 * A pale area between a lower and an upper line, in the units of the axes. Where an end is NaN the
 * area has a gap.
 *
 * @param slices from left to right
 * @param color colour of the line it belongs to
 */
public record Band(List<Slice> slices, Color color) {
  /** Copies the list. */
  public Band {
    slices = List.copyOf(slices);
  }

  /**
   * The area at one place.
   *
   * @param x place
   * @param low lower end
   * @param high upper end
   */
  public record Slice(double x, double low, double high) {
    boolean known() {
      return Double.isFinite(low) && Double.isFinite(high);
    }
  }

  /** The highest upper end; 0 if nothing is known. */
  public double top() {
    return slices.stream().filter(Slice::known).mapToDouble(Slice::high).max().orElse(0);
  }
}
