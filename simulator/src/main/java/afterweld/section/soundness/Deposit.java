package afterweld.section.soundness;

import afterweld.material.Alloy;
import afterweld.thermal.PassHeat;
import afterweld.weld.FillerChoice;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much metal the passes of a weld lay down, as an area of the section. SI units.
 *
 * <p>As stated; none without filler; of a metal arc by the wire that its current melts, k I / v
 * with k = 1.0 mm³/(A s) for wire of 4xxx and other alloys, 1.2 for 5xxx [wire-feed charts for 1.2
 * to 1.6 mm, from memory, within 20 %]; of a tungsten arc nobody knows, since the welder feeds what
 * the groove takes: then no more than the pools can hold, half circles over their widths [assumed].
 *
 * @param area m²
 * @param kind where it comes from
 */
record Deposit(double area, Kind kind) {
  /** Estimates may be low by this factor before a groove is called unfilled. */
  static final double TOLERANCE = 1.25;

  private static final double PER_AMPERE = 1.0e-9;
  private static final double PER_AMPERE_5XXX = 1.2e-9;

  /** Where the area comes from. */
  enum Kind {
    STATED,
    NO_FILLER,
    WIRE_BY_CURRENT,
    POOLS
  }

  /** What the passes of a case lay down. */
  static Deposit of(WeldCase weldCase, List<PassHeat> heats) {
    FillerChoice filler = weldCase.filler();
    if (filler.alloy().isEmpty()) {
      return new Deposit(0, Kind.NO_FILLER);
    }
    OptionalDouble stated = filler.depositArea();
    if (stated.isPresent()) {
      return new Deposit(stated.getAsDouble(), Kind.STATED);
    }
    boolean tungsten = weldCase.passes().stream().anyMatch(pass -> pass.process().tungstenArc());
    return tungsten
        ? new Deposit(heats.stream().mapToDouble(Deposit::pool).sum(), Kind.POOLS)
        : new Deposit(wire(filler.alloy().get(), heats), Kind.WIRE_BY_CURRENT);
  }

  /** Half a circle on the bead, or half an ellipse where the case states a deeper penetration. */
  private static double pool(PassHeat heat) {
    double half = heat.fusionHalfWidth();
    return Math.PI / 2 * half * Math.max(half, heat.pass().penetration().orElse(half));
  }

  private static double wire(Alloy filler, List<PassHeat> heats) {
    double perAmpere = filler.name().startsWith("5") ? PER_AMPERE_5XXX : PER_AMPERE;
    return heats.stream()
        .mapToDouble(heat -> perAmpere * heat.pass().current() / heat.pass().travelSpeed())
        .sum();
  }

  /** Whether it is known no better than within {@link #TOLERANCE}. */
  boolean estimated() {
    return kind == Kind.WIRE_BY_CURRENT || kind == Kind.POOLS;
  }

  /** The most it may be, m². */
  double most() {
    return estimated() ? TOLERANCE * area : area;
  }
}
