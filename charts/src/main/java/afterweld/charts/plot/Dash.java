package afterweld.charts.plot;

import java.awt.BasicStroke;
import java.util.List;

/** Dash patterns, in line widths: they tell lines apart where colour is lost. */
public enum Dash {
  SOLID(List.of()),
  LONG(List.of(5.5f, 2.2f)),
  SHORT(List.of(3f, 2.4f)),
  DOTS(List.of(0.1f, 2.6f)),
  LONG_DOT(List.of(7f, 2.6f, 0.1f, 2.6f)),
  LONG_TWO_DOTS(List.of(7f, 2.6f, 0.1f, 2.6f, 0.1f, 2.6f)),
  WIDE(List.of(10f, 6f));

  private final List<Float> pattern;

  Dash(List<Float> pattern) {
    this.pattern = pattern;
  }

  /** The stroke of a line of {@code width} pixels. */
  BasicStroke stroke(float width) {
    if (pattern.isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
    float[] lengths = new float[pattern.size()];
    for (int i = 0; i < lengths.length; i++) {
      lengths[i] = pattern.get(i) * width;
    }
    return new BasicStroke(width, cap(), BasicStroke.JOIN_ROUND, 10, lengths, 0);
  }

  private int cap() {
    boolean dotted = pattern.stream().anyMatch(length -> length < 1);
    return dotted ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
  }
}
