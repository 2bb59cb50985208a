package afterweld.charts;

import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Text;
import afterweld.study.SpreadStudy;
import afterweld.study.SpreadStudy.Influence;
import afterweld.study.SpreadStudy.View;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;

/** Bars of what matters: the part of the joint's variance that each input explains on its own. */
final class InfluenceChart {
  private static final int ROW = 62;
  private static final int AROUND = 330;
  private static final double NAMES = 420;
  private static final double FIGURES = 150;
  private static final float SIZE = 22;
  private static final Color WITHOUT = Ink.EMBER;
  private static final Color WITH = Ink.DEEP_BLUE;
  private static final BasicStroke RIM = new BasicStroke(6);
  private static final BasicStroke WHISKER = new BasicStroke(2.5f);

  private final SpreadStudy study;

  private InfluenceChart(SpreadStudy study) {
    this.study = study;
  }

  static Picture of(SpreadStudy study, String subject, String caution) {
    InfluenceChart chart = new InfluenceChart(study);
    Legend legend =
        new Legend(
            List.of(
                Legend.Entry.area("with the error of the computation", WITH),
                Legend.Entry.area("inputs only", WITHOUT)));
    Page page =
        new Page(
            AROUND + ROW * study.total().firstOrder().size(),
            "What matters for the " + study.total().target(),
            subject,
            legend,
            List.of(caution),
            List.of(
                "How much of the ups and downs an input makes alone; all of it is 1. Bars whose"
                    + " ends lie closer than three whiskers are not told apart."));
    return new Picture("influence", page, chart.description(), chart::draw);
  }

  private String description() {
    StringBuilder text =
        new StringBuilder("Part of the ups and downs by input, with the error of the computation:");
    for (Influence one : study.total().firstOrder()) {
      text.append(String.format(Locale.ROOT, " %s %.2f;", one.input(), Math.max(0, one.index())));
    }
    return text.toString();
  }

  private void draw(Graphics2D g, Rectangle2D room) {
    double row = room.getHeight() / (study.total().firstOrder().size() + 0.5);
    double top = room.getY() + row / 4;
    for (Influence one : study.total().firstOrder()) {
      Text name = Text.plain(one.input(), SIZE, Ink.TEXT);
      name.draw(g, room.getX() + NAMES - name.width() - 16, top + row / 2 + 8);
      bar(g, room, top + 0.14 * row, 0.33 * row, one, WITH);
      double lower = top + 0.53 * row;
      of(study.process(), one.input())
          .ifPresent(other -> bar(g, room, lower, 0.33 * row, other, WITHOUT));
      top += row;
    }
    g.setColor(Ink.AXIS);
    g.setStroke(new BasicStroke(1.5f));
    g.draw(
        new Line2D.Double(room.getX() + NAMES, room.getY(), room.getX() + NAMES, room.getMaxY()));
  }

  private static java.util.Optional<Influence> of(View view, String input) {
    return view.firstOrder().stream().filter(one -> one.input().equals(input)).findFirst();
  }

  private static void bar(
      Graphics2D g, Rectangle2D room, double top, double height, Influence one, Color color) {
    double left = room.getX() + NAMES;
    double unit = room.getWidth() - NAMES - FIGURES;
    double length = unit * Math.min(1, Math.max(0, one.index()));
    g.setColor(color);
    g.fill(new Rectangle2D.Double(left, top, Math.max(1, length), height));
    double from = left + unit * Math.max(0, one.index() - one.error());
    double to = left + unit * Math.min(1, Math.max(0, one.index() + one.error()));
    whisker(g, from, Math.max(from, to), top + height / 2);
    String figure = String.format(Locale.ROOT, "%.2f", Math.max(0, one.index()));
    Text.plain(figure, 19, Ink.TEXT)
        .draw(g, Math.max(to, left + length) + 12, top + height / 2 + 7);
  }

  private static void whisker(Graphics2D g, double from, double to, double middle) {
    g.setColor(Ink.PAPER);
    g.setStroke(RIM);
    g.draw(new Line2D.Double(from, middle, to, middle));
    g.setColor(Ink.TEXT);
    g.setStroke(WHISKER);
    g.draw(new Line2D.Double(from, middle, to, middle));
    g.draw(new Line2D.Double(to, middle - 5, to, middle + 5));
  }
}
