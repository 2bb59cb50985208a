package afterweld.validation;

import afterweld.validation.Comparison.Measure;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Predicted against published strength as a picture: both axes logarithmic, in MPa. */
final class PublishedPlot {
  private static final double LOW = 30;
  private static final double HIGH = 450;
  private static final int SIZE = 560;
  private static final int LEFT = 90;
  private static final int TOP = 70;
  private static final int[] TICKS = {30, 50, 100, 200, 300, 450};
  private static final double NAMED_FROM = 15;
  private static final String TEST = "#0b3d6b";
  private static final String CALIBRATION = "#b3541e";

  private static final String GRID = "stroke=\"#dddddd\"";
  private static final String TEN_PERCENT = "stroke=\"#777777\" stroke-dasharray=\"6 5\"";

  private final Map<PublishedRow, List<Comparison>> results;
  private final Set<String> named = new HashSet<>();
  private final StringBuilder svg = new StringBuilder();

  PublishedPlot(Map<PublishedRow, List<Comparison>> results) {
    this.results = results;
  }

  /** The whole picture. */
  String svg() {
    add(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 880 720\" width=\"880\""
            + " height=\"720\" font-family=\"sans-serif\" font-size=\"15\">");
    add("<title>Predicted against published strength</title>");
    add(
        "<desc>Yield and tensile strength of every published row, predicted against published, with"
            + " lines at 10 % either way. The numbers are in the tables of VALIDATION.md.</desc>");
    add("<rect width=\"880\" height=\"720\" fill=\"#ffffff\"/>");
    text(LEFT, 34, "font-size=\"21\" font-weight=\"bold\"", "Predicted against published strength");
    frame();
    lines();
    marks("calibration");
    marks("test");
    legend();
    return svg.append("</svg>\n").toString();
  }

  private void add(String line) {
    svg.append(line).append('\n');
  }

  private void text(double x, double y, String look, String words) {
    add(String.format(Locale.ROOT, "<text x=\"%.1f\" y=\"%.1f\" %s>%s</text>", x, y, look, words));
  }

  private void line(double fromX, double fromY, double toX, double toY, String look) {
    add(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>",
            fromX,
            fromY,
            toX,
            toY,
            look));
  }

  private static double share(double megapascal) {
    double inside = Math.max(LOW, Math.min(HIGH, megapascal));
    return Math.log(inside / LOW) / Math.log(HIGH / LOW);
  }

  private static double x(double megapascal) {
    return LEFT + SIZE * share(megapascal);
  }

  private static double y(double megapascal) {
    return TOP + SIZE * (1 - share(megapascal));
  }

  private void frame() {
    for (int tick : TICKS) {
      line(x(tick), y(LOW), x(tick), y(HIGH), GRID);
      line(x(LOW), y(tick), x(HIGH), y(tick), GRID);
      text(x(tick), y(LOW) + 24, "text-anchor=\"middle\"", Integer.toString(tick));
      text(x(LOW) - 10, y(tick) + 5, "text-anchor=\"end\"", Integer.toString(tick));
    }
    text(LEFT + SIZE / 2.0, y(LOW) + 54, "text-anchor=\"middle\"", "published, MPa");
    double middle = TOP + SIZE / 2.0;
    String turned =
        String.format(
            Locale.ROOT, "text-anchor=\"middle\" transform=\"rotate(-90 34 %.1f)\"", middle);
    text(34, middle, turned, "predicted, MPa");
  }

  private void lines() {
    line(x(LOW), y(LOW), x(HIGH), y(HIGH), "stroke=\"#333333\" stroke-width=\"1.5\"");
    line(x(LOW), y(1.1 * LOW), x(HIGH / 1.1), y(HIGH), TEN_PERCENT);
    line(x(LOW / 0.9), y(LOW), x(HIGH), y(0.9 * HIGH), TEN_PERCENT);
  }

  private void marks(String kind) {
    results.forEach(
        (row, all) -> {
          if (row.kind().equals(kind)) {
            all.stream().filter(PublishedPlot::isStrength).forEach(one -> mark(row, one));
          }
        });
  }

  private static boolean isStrength(Comparison one) {
    return one.measure() == Measure.YIELD || one.measure() == Measure.TENSILE;
  }

  private void mark(PublishedRow row, Comparison one) {
    double x = x(one.published());
    double y = y(one.predicted());
    mark(x, y, one.measure(), row.kind());
    String name = row.id() + " " + one.label();
    if (Math.abs(one.errorPercent()) >= NAMED_FROM
        && named.add(Math.round(x) + " " + Math.round(y))) {
      boolean above = one.predicted() > one.published();
      String look = "font-size=\"13\" text-anchor=\"" + (above ? "end" : "start") + "\"";
      text(above ? x - 11 : x + 11, y + 5, look, name);
    }
  }

  /** Test rows are filled, calibration rows hollow; yield is round, tensile strength square. */
  private void mark(double x, double y, Measure measure, String kind) {
    String look =
        kind.equals("test")
            ? "fill=\"" + TEST + "\" fill-opacity=\"0.75\" stroke=\"#ffffff\""
            : "fill=\"none\" stroke-width=\"2\" stroke=\"" + CALIBRATION + "\"";
    String form =
        measure == Measure.YIELD
            ? "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"6\" %s/>"
            : "<rect x=\"%.1f\" y=\"%.1f\" width=\"11\" height=\"11\" %s/>";
    double corner = measure == Measure.YIELD ? 0 : 5.5;
    add(String.format(Locale.ROOT, form, x - corner, y - corner, look));
  }

  private void legend() {
    double x = LEFT + SIZE + 30;
    entry(x, 100, Measure.YIELD, "test", "yield, test rows");
    entry(x, 128, Measure.TENSILE, "test", "tensile, test rows");
    entry(x, 156, Measure.YIELD, "calibration", "yield, calibration");
    entry(x, 184, Measure.TENSILE, "calibration", "tensile, calibration");
    line(x - 8, 212, x + 8, 212, "stroke=\"#333333\" stroke-width=\"1.5\"");
    text(x + 18, 217, "", "predicted = published");
    line(x - 8, 240, x + 8, 240, TEN_PERCENT);
    text(x + 18, 245, "", "10 % either way");
    text(x - 8, 280, "font-size=\"13\"", "Named: off by 15 % or more.");
    text(x - 8, 300, "font-size=\"13\"", "Limits of a code are not shown.");
  }

  private void entry(double x, double y, Measure measure, String kind, String words) {
    mark(x, y, measure, kind);
    text(x + 18, y + 5, "", words);
  }
}
