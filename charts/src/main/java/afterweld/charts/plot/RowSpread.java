package afterweld.charts.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Sets labels side by side in a row, each as near to its wanted place as its neighbours allow.
 *
 * <p>Neighbours that would overlap are joined to a block that stands, as a whole, at the mean of
 * what its members want; blocks are joined until none overlap. Pixels.
 */
public final class RowSpread {
  private final double gap;
  private final double from;
  private final double to;

  /**
   * @param gap least distance between labels
   * @param from left end of the row
   * @param to right end of the row
   */
  public RowSpread(double gap, double from, double to) {
    this.gap = gap;
    this.from = from;
    this.to = to;
  }

  /**
   * A label.
   *
   * @param centre where its middle wants to be
   * @param width its width
   */
  public record Label(double centre, double width) {}

  private record Block(List<Label> labels, double width, double left) {}

  /** Whether all labels have room in the row. */
  public boolean holds(List<Label> labels) {
    return width(labels) <= to - from;
  }

  /**
   * The middles of the labels.
   *
   * @param labels from left to right
   */
  public List<Double> centres(List<Label> labels) {
    List<Block> blocks = new ArrayList<>();
    for (Label label : labels) {
      Block block = block(List.of(label));
      while (!blocks.isEmpty() && overlap(blocks.get(blocks.size() - 1), block)) {
        block = joined(blocks.remove(blocks.size() - 1), block);
      }
      blocks.add(block);
    }
    return blocks.stream().flatMap(block -> centresIn(block).stream()).toList();
  }

  private boolean overlap(Block left, Block right) {
    return left.left + left.width + gap > right.left;
  }

  private Block joined(Block left, Block right) {
    List<Label> labels = new ArrayList<>(left.labels);
    labels.addAll(right.labels);
    return block(labels);
  }

  private Block block(List<Label> labels) {
    double wantedLeft = 0;
    double offset = 0;
    for (Label label : labels) {
      wantedLeft += label.centre - (offset + label.width / 2);
      offset += label.width + gap;
    }
    double width = width(labels);
    double left = Math.max(from, Math.min(to - width, wantedLeft / labels.size()));
    return new Block(labels, width, left);
  }

  private double width(List<Label> labels) {
    return labels.stream().mapToDouble(Label::width).sum() + gap * (labels.size() - 1);
  }

  private List<Double> centresIn(Block block) {
    List<Double> centres = new ArrayList<>();
    double left = block.left;
    for (Label label : block.labels) {
      centres.add(left + label.width / 2);
      left += label.width + gap;
    }
    return centres;
  }
}
