package afterweld.thermal.shell;

import afterweld.thermal.Leg;
import afterweld.thermal.WeldLegs;
import java.util.ArrayList;
import java.util.List;

/**
 * The net on which the transient field is computed: a line along the weld that all legs share, and
 * lines beside it in every leg, each with the same places along the weld. SI units.
 *
 * <p>Along the weld the spacing is 1.5 mm, finer where a ring would get fewer than 90 places, wider
 * where a line would get more than 600. Across, the lines lie as close to 12 mm from the weld and
 * then 20 % farther apart each, up to 10 mm, which moves peaks by under 0.5 K. A wide leg ends at
 * 250 mm. Legs that cannot differ are computed once: one leg with the thickness and the faces of
 * both.
 */
final class ShellGrid {
  private static final double SPACING = 1.5e-3;
  private static final int FEWEST_ROUND = 90;
  private static final int MOST = 600;
  private static final double EVEN_TO = 12e-3;
  private static final double GROWTH = 1.2;
  private static final double WIDEST_SPACING = 10e-3;
  private static final double LONGEST_LEG = 0.25;

  private final boolean ring;
  private final int places;
  private final double spacing;
  private final int[] chainOfLeg;
  private final List<Chain> chains = new ArrayList<>();
  private final ShellMetal junction;

  /** One leg, or several that cannot differ, as lines from the weld outwards. */
  static final class Chain {
    private final Leg leg;
    private final boolean anySide;
    private final ShellMetal metal;
    private final double[] distance;
    private double thickness;
    private int count;

    private Chain(Leg leg, ShellMetal metal, boolean anySide, double spacing) {
      this.leg = leg;
      this.anySide = anySide;
      this.metal = metal;
      this.distance = distances(Math.min(leg.widthOrWide(), LONGEST_LEG), spacing);
    }

    private boolean takes(Leg other, ShellMetal otherMetal) {
      return (anySide || leg.left() == other.left())
          && metal.sameAs(otherMetal)
          && leg.thickness() == other.thickness()
          && leg.width().equals(other.width());
    }

    private void add(Leg other) {
      thickness += other.thickness();
      count++;
    }

    ShellMetal metal() {
      return metal;
    }

    /** Of all its legs together, m. */
    double thickness() {
      return thickness;
    }

    /** How many legs it stands for. */
    int count() {
      return count;
    }

    /** Distance of its lines from the weld centre, m; the first is 0. */
    double[] distance() {
      return distance;
    }

    int last() {
      return distance.length - 1;
    }

    /** Which way it leads from the weld centre: −1 left, 1 right. */
    int direction() {
      return leg.left() ? -1 : 1;
    }

    /** Inner border of a line's strip, m. */
    double from(int line) {
      return line == 0 ? 0 : (distance[line - 1] + distance[line]) / 2;
    }

    /** Outer border of a line's strip, m. */
    double to(int line) {
      return line == last() ? distance[line] : (distance[line] + distance[line + 1]) / 2;
    }

    double width(int line) {
      return to(line) - from(line);
    }

    private static double[] distances(double end, double even) {
      List<Double> all = new ArrayList<>(List.of(0.0));
      double step = Math.min(even, end / 4);
      double next = step;
      while (next < end - 0.6 * step) {
        all.add(next);
        step = next < EVEN_TO ? step : Math.min(step * GROWTH, Math.max(WIDEST_SPACING, step));
        next += step;
      }
      all.add(end);
      return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
  }

  /**
   * A net.
   *
   * @param legs of the weld
   * @param ring whether it closes on itself
   * @param length of the weld line, m
   * @param coarseness factor on the usual spacing
   * @param centred whether all beads lie on the weld centre, so that left and right are alike
   */
  ShellGrid(WeldLegs legs, boolean ring, double length, double coarseness, boolean centred) {
    this.ring = ring;
    double wanted = SPACING * coarseness;
    int least = ring ? (int) Math.ceil(FEWEST_ROUND / coarseness) : 8;
    this.places = (int) Math.min(MOST, Math.max(least, Math.round(length / wanted)));
    this.spacing = length / places;
    this.chainOfLeg = new int[legs.legs().size()];
    for (int i = 0; i < chainOfLeg.length; i++) {
      Leg leg = legs.legs().get(i);
      chainOfLeg[i] = chain(leg, centred, wanted);
      chains.get(chainOfLeg[i]).add(leg);
    }
    this.junction = junction(chains);
  }

  private int chain(Leg leg, boolean centred, double wanted) {
    ShellMetal metal = ShellMetal.of(leg.material());
    for (int i = 0; i < chains.size(); i++) {
      if (chains.get(i).takes(leg, metal)) {
        return i;
      }
    }
    chains.add(new Chain(leg, metal, centred, Math.min(spacing, wanted)));
    return chains.size() - 1;
  }

  private static ShellMetal junction(List<Chain> chains) {
    double[] shares =
        chains.stream().mapToDouble(chain -> chain.thickness() * chain.width(0)).toArray();
    return ShellMetal.blend(chains.stream().map(Chain::metal).toList(), shares);
  }

  boolean ring() {
    return ring;
  }

  /** How many places there are along the weld. */
  int places() {
    return places;
  }

  /** Distance between neighbours along the weld, m. */
  double spacing() {
    return spacing;
  }

  double length() {
    return places * spacing;
  }

  /** Where along the weld a place lies, m: on a ring the first at the start of the lap. */
  double along(int place) {
    return ring ? place * spacing : (place + 0.5) * spacing;
  }

  /** The place of an index that may lie beyond the ends: a ring goes on, a line stays there. */
  int place(int index) {
    return ring ? Math.floorMod(index, places) : Math.max(0, Math.min(index, places - 1));
  }

  List<Chain> chains() {
    return chains;
  }

  /** Which chain stands for a leg of the weld. */
  int chainOf(int leg) {
    return chainOfLeg[leg];
  }

  /** The metal of the line that all legs share. */
  ShellMetal junction() {
    return junction;
  }

  /** Area of the section that belongs to the shared line, m². */
  double junctionArea() {
    return chains.stream().mapToDouble(chain -> chain.thickness() * chain.width(0)).sum();
  }

  /** Width of one face that belongs to the shared line, over all legs, m. */
  double junctionFace() {
    return chains.stream().mapToDouble(chain -> chain.count() * chain.width(0)).sum();
  }
}
