package afterweld.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * A line whose soft slices are raised by a constraint factor, each run of them by no more than what
 * the weaker of its two neighbours carries.
 */
final class RaisedBand {
  private final List<Slice> slices;
  private final double factor;
  private final double softUpTo;
  private final double modulus;

  RaisedBand(SliceLine line, double factor, double softUpTo, double modulus) {
    this.slices = line.slices();
    this.factor = factor;
    this.softUpTo = softUpTo;
    this.modulus = modulus;
  }

  SliceLine line() {
    List<Slice> raised = new ArrayList<>();
    int i = 0;
    while (i < slices.size()) {
      int end = i;
      while (end < slices.size() && soft(end)) {
        end++;
      }
      double neighbour = Math.min(ownForce(i - 1), ownForce(end));
      for (; i < end; i++) {
        raised.add(raised(slices.get(i), neighbour));
      }
      if (i < slices.size()) {
        raised.add(slices.get(i));
        i++;
      }
    }
    return new SliceLine(raised);
  }

  private boolean soft(int i) {
    return slices.get(i).metal().proof() <= softUpTo;
  }

  private double ownForce(int i) {
    return i < 0 || i >= slices.size()
        ? Double.POSITIVE_INFINITY
        : slices.get(i).section() * slices.get(i).metal().tensile();
  }

  private Slice raised(Slice slice, double neighbourForce) {
    SliceMetal metal = slice.metal();
    double own = slice.section() * metal.tensile();
    double wanted = PlasticConstraint.tensileFactor(factor, metal.law(modulus).uniformStrain());
    double tensileFactor = Math.max(1, Math.min(wanted, neighbourForce / own));
    return slice.of(metal.strengthened(Math.min(factor, tensileFactor), tensileFactor));
  }
}
