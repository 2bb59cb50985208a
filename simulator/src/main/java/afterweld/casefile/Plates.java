package afterweld.casefile;

import afterweld.material.Alloy;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * What other parts of the case are measured against: the two sides as far as they are known.
 *
 * @param left the through or thicker part
 * @param right the other part
 */
record Plates(SideReader.Draft left, SideReader.Draft right) {
  /** Share of the absolute solidus that preheat and interpass must stay under (assumed). */
  private static final double HOTTEST_START = 0.9;

  /** Thickness of the thicker side, m; NaN if one of them is not known. */
  double thickest() {
    return Math.max(left.thickness(), right.thickness());
  }

  /** Thickness of the thinner side, m; NaN if neither is known. */
  double thinnest() {
    return smallest(SideReader.Draft::thickness);
  }

  /** Whether a side is known to be a casting. */
  boolean anyCasting() {
    return List.of(left, right).stream()
        .anyMatch(side -> side.alloy().filter(Alloy::casting).isPresent());
  }

  /** The lower solidus of the bases, K; NaN if neither is known. */
  double lowestSolidus() {
    return smallest(side -> side.alloy().map(Alloy::solidus).orElse(Double.NaN));
  }

  /** The temperature that preheat and interpass must stay under, K; NaN if it is not known. */
  double hottestStart() {
    return HOTTEST_START * lowestSolidus();
  }

  private double smallest(ToDoubleFunction<SideReader.Draft> property) {
    DoubleStream known =
        List.of(left, right).stream().mapToDouble(property).filter(value -> !Double.isNaN(value));
    return known.min().orElse(Double.NaN);
  }
}
