package afterweld.thermal.shell;

import java.util.ArrayList;
import java.util.List;

/**
 * The lines of a net in one row, with what belongs to each: line 0 is shared by all legs, the lines
 * of each leg follow from the weld outwards.
 */
final class ShellLines {
  private static final int SHARED = 0;

  private final ShellMetal[] metal;
  private final double[] area;
  private final double[] face;
  private final double[] conductance;
  private final int[] inner;
  private final int[] first;
  private final int[] last;

  ShellLines(ShellGrid grid) {
    List<ShellGrid.Chain> chains = grid.chains();
    int count = 1 + chains.stream().mapToInt(ShellGrid.Chain::last).sum();
    metal = new ShellMetal[count];
    area = new double[count];
    face = new double[count];
    conductance = new double[count];
    inner = new int[count];
    first = new int[chains.size()];
    last = new int[chains.size()];
    metal[SHARED] = grid.junction();
    area[SHARED] = grid.junctionArea();
    face[SHARED] = grid.junctionFace();
    int next = 1;
    for (int c = 0; c < chains.size(); c++) {
      first[c] = next;
      next = fill(chains.get(c), next, grid.spacing());
      last[c] = next - 1;
    }
  }

  private int fill(ShellGrid.Chain chain, int start, double spacing) {
    double[] distance = chain.distance();
    for (int line = 1; line <= chain.last(); line++) {
      int here = start + line - 1;
      metal[here] = chain.metal();
      area[here] = chain.thickness() * chain.width(line);
      face[here] = chain.count() * chain.width(line);
      conductance[here] = chain.thickness() * spacing / (distance[line] - distance[line - 1]);
      inner[here] = line == 1 ? SHARED : here - 1;
    }
    return start + chain.last();
  }

  int count() {
    return metal.length;
  }

  int chains() {
    return first.length;
  }

  ShellMetal metal(int line) {
    return metal[line];
  }

  /** Area of the section that belongs to a line, m². */
  double area(int line) {
    return area[line];
  }

  /** Width of one face that belongs to a line, over all its legs, m. */
  double face(int line) {
    return face[line];
  }

  /** Heat flow to the next line inwards per place, kelvin and conductivity, m. */
  double conductance(int line) {
    return conductance[line];
  }

  /** The next line inwards. */
  int inner(int line) {
    return inner[line];
  }

  /** First line of a chain beside the shared one. */
  int first(int chain) {
    return first[chain];
  }

  /** Outermost line of a chain. */
  int last(int chain) {
    return last[chain];
  }

  /** The lines of a chain from the weld outwards, the shared one first. */
  int[] ofChain(int chain) {
    List<Integer> lines = new ArrayList<>(List.of(SHARED));
    for (int line = first[chain]; line <= last[chain]; line++) {
      lines.add(line);
    }
    return lines.stream().mapToInt(Integer::intValue).toArray();
  }
}
