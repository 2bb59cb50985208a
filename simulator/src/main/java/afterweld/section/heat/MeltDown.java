package afterweld.section.heat;

import static afterweld.quantity.BothUnits.length;

import afterweld.thermal.StationTimeline;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a weld stays up, whether it begins and ends as a bead, and whether its edges melt at all.
 * A pool that goes through a wall falls out of it where it is wider than surface tension can hold:
 * on a side more than 6 mm (the length over which it holds molten aluminium, from 0.9 N/m and 2400
 * kg/m³, from memory) and more than three thicknesses [assumed; beads of two to four thicknesses in
 * all are common practice]. A leg that melts to its free edge has nothing left to stand on.
 *
 * @param sides left and right
 * @param end what the hot end of the weld is called
 * @param startBead width of the bead near the start, m; empty where the weld is the same all along
 * @param endBead width of the bead near the end, m; empty likewise
 * @param wholeDepth whether the section stands for the whole depth: in heat that is followed in
 *     time, the mean through the thickness, or with one pass; a line in the depth of many passes
 *     may lie beside all of them
 */
public record MeltDown(
    List<OfSide> sides,
    String end,
    OptionalDouble startBead,
    OptionalDouble endBead,
    boolean wholeDepth) {
  private static final double HELD = 6e-3;
  private static final double THICKNESSES = 3;

  /** Narrower is no bead, m. */
  public static final double NO_BEAD = 2e-3;

  private static final double TO_THE_EDGE = 0.999;

  /** Copies the list. */
  public MeltDown {
    sides = List.copyOf(sides);
  }

  /**
   * One side.
   *
   * @param name its name
   * @param thickness m
   * @param edge distance of its free edge from the weld centre, m; infinite if it is wide
   * @param inSection how far it is molten where the section is taken, m
   * @param fused how far it is molten at most, m
   * @param hot how far it comes to its solidus, m
   */
  record OfSide(
      String name, double thickness, double edge, double inSection, double fused, double hot) {
    private boolean fallsOut() {
      return fused > HELD && fused > THICKNESSES * thickness;
    }

    private boolean toTheEdge() {
      return hot >= TO_THE_EDGE * edge;
    }
  }

  /** What melts away under the passes of a case. */
  public static MeltDown of(
      WeldCase weldCase, CaseHeat heat, StationTimeline left, StationTimeline right) {
    boolean along = heat.peaks().isPresent() && weldCase.course().ends();
    double atEnd = along ? heat.beadWidth(Place.END) : 0;
    return new MeltDown(
        List.of(
            side("left", weldCase.left(), left, atEnd / 2),
            side("right", weldCase.right(), right, atEnd / 2)),
        weldCase.ring().isPresent() ? Ring.label(Place.END) : Seam.label(Place.END),
        along ? OptionalDouble.of(heat.beadWidth(Place.START)) : OptionalDouble.empty(),
        along ? OptionalDouble.of(atEnd) : OptionalDouble.empty(),
        heat.peaks().isPresent() || weldCase.passes().size() == 1);
  }

  private static OfSide side(String name, Side side, StationTimeline heat, double atEnd) {
    return new OfSide(
        name,
        side.thickness(),
        side.width().orElse(Double.POSITIVE_INFINITY),
        heat.fusionReach(),
        Math.max(heat.fusionReach(), atEnd),
        heat.reach(side.alloy().solidus()));
  }

  /** Whether some of it melts down. */
  public boolean collapses() {
    return sides.stream().anyMatch(side -> side.fallsOut() || side.toTheEdge());
  }

  /** Whether it begins without a bead. */
  public boolean startsCold() {
    return none(startBead);
  }

  /** Whether it ends without a bead, as where the current falls too far. */
  public boolean endsCold() {
    return none(endBead);
  }

  private static boolean none(OptionalDouble bead) {
    return bead.orElse(Double.POSITIVE_INFINITY) < NO_BEAD;
  }

  /** Why an edge that must melt through does not, where the section is taken; empty if both do. */
  public Optional<String> unmolten() {
    List<String> cold =
        sides.stream()
            .filter(side -> wholeDepth && !(side.inSection() > 0))
            .map(OfSide::name)
            .toList();
    return switch (cold.size()) {
      case 0 -> Optional.empty();
      case 1 ->
          Optional.of(
              "Lack of fusion: the edge of the "
                  + cold.get(0)
                  + " side does not come to its melting point where the section is taken.");
      default ->
          Optional.of(
              "Lack of fusion: neither edge comes to its melting point where the section is taken.");
    };
  }

  /** Why it is no joint: none if it stays up, begins and ends as a bead. */
  public List<String> reasons() {
    List<String> reasons = new ArrayList<>();
    sides.stream()
        .filter(side -> side.fallsOut() || side.toTheEdge())
        .findFirst()
        .ifPresent(side -> reasons.add(collapse(side)));
    if (startsCold()) {
      reasons.add(noBead("start", startBead.orElseThrow()));
    }
    if (endsCold()) {
      reasons.add(noBead(end, endBead.orElseThrow()));
    }
    return reasons;
  }

  private static String noBead(String place, double width) {
    return "Lack of fusion at the "
        + place
        + (width > 0
            ? ": the bead there is only " + length(width) + " wide."
            : ": no bead forms there.");
  }

  private String collapse(OfSide side) {
    String where =
        startBead.isPresent()
            ? ": the part collapses at the " + end + "."
            : ": the part collapses.";
    return side.toTheEdge()
        ? "It melts down: the "
            + side.name()
            + " side comes to its melting point out to its free edge"
            + where
        : "It melts down: "
            + length(side.fused())
            + " are molten on the "
            + side.name()
            + " side, in a wall of "
            + length(side.thickness())
            + where;
  }
}
