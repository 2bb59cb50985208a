package afterweld.charts;

import afterweld.charts.plot.Ink;
import afterweld.charts.plot.Legend;
import afterweld.charts.plot.Page;
import afterweld.charts.plot.Picture;
import afterweld.charts.plot.Plot;
import afterweld.quantity.OutputQuantity;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The pictures of strength across a section: hardness alone, yield above tensile strength. */
final class SectionPictures {
  private final SectionView view;
  private final Remarks remarks;

  SectionPictures(SectionView view) {
    this.view = view;
    this.remarks = new Remarks(view);
  }

  /** Hardness. */
  Picture hardness() {
    return picture("hardness", "Hardness across the weld", 1060, List.of(OutputQuantity.HARDNESS));
  }

  /** Yield and tensile strength. */
  Picture strength() {
    return picture(
        "strength",
        "Yield and tensile strength across the weld",
        1560,
        List.of(OutputQuantity.YIELD, OutputQuantity.TENSILE));
  }

  private Picture picture(String name, String title, int height, List<OutputQuantity> quantities) {
    Page page =
        new Page(
            height,
            title,
            remarks.subject(),
            legend(quantities),
            remarks.caution(),
            remarks.notes(quantities));
    String description = new Description(view).of(title, quantities);
    return new Picture(name, page, description, (g, body) -> draw(g, body, quantities));
  }

  private void draw(Graphics2D g, Rectangle2D body, List<OutputQuantity> quantities) {
    double top = body.getY() + ZoneStrip.HEIGHT - Plot.PADDING;
    double height = (body.getMaxY() - top) / quantities.size();
    for (int i = 0; i < quantities.size(); i++) {
      Rectangle2D frame =
          new Rectangle2D.Double(body.getX(), top + i * height, body.getWidth(), height);
      boolean lowest = i == quantities.size() - 1;
      Plot plot = new SectionPanel(view, quantities.get(i)).draw(g, frame, lowest);
      if (i == 0) {
        new ZoneStrip(view).name(g, plot);
      }
    }
  }

  private Legend legend(List<OutputQuantity> quantities) {
    List<Legend.Entry> entries = new ArrayList<>();
    for (int state = 0; state < view.states(); state++) {
      String name = view.profile().label(state);
      entries.add(Legend.Entry.line(name, StateLooks.of(state, view.states())));
    }
    entries.add(Legend.Entry.area("error range of the model", Ink.tint(Ink.DEEP_BLUE, 0.2)));
    String required = required(quantities);
    if (!required.isEmpty()) {
      entries.add(Legend.Entry.line(required, SectionPanel.LIMIT));
    }
    return new Legend(entries);
  }

  private String required(List<OutputQuantity> quantities) {
    return quantities.stream()
        .filter(quantity -> view.required(quantity).isPresent())
        .map(SectionPictures::meaning)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  private static String meaning(OutputQuantity quantity) {
    return quantity == OutputQuantity.HARDNESS
        ? "required of the softest place"
        : "required of the joint as a whole, not of one place";
  }
}
