package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.Figures;
import afterweld.quantity.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.Softening;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the pictures of a section show, in sentences, for readers who cannot see them. */
final class Description {
  private final SectionView view;
  private final SectionProfile profile;

  Description(SectionView view) {
    this.view = view;
    this.profile = view.profile();
  }

  /** Sentences for curves of the given quantities. */
  String of(String title, List<OutputQuantity> quantities) {
    List<String> sentences = opening(title);
    for (OutputQuantity quantity : quantities) {
      for (int state = 0; state < view.states(); state++) {
        sentences.add(lowest(quantity, state));
      }
      view.required(quantity)
          .ifPresent(value -> sentences.add("Required: " + figure(quantity, value) + "."));
    }
    return closed(sentences);
  }

  private String lowest(OutputQuantity quantity, int state) {
    Axis across = view.distanceAxis();
    Curve curve = view.curve(quantity, state).between(across.from(), across.to());
    String start = quantity.title() + " " + profile.label(state);
    return curve
        .lowest()
        .map(spot -> start + ": " + value(quantity, curve, spot) + ".")
        .orElse(start + ": not predicted.");
  }

  private String value(OutputQuantity quantity, Curve curve, Curve.Spot lowest) {
    String value = figure(quantity, lowest.y());
    String place = figure(OutputQuantity.DISTANCE, lowest.x());
    return curve.even()
        ? value + " throughout"
        : curve.lowestInWords() + " " + value + " at " + place;
  }

  /** Sentences for the temperatures. */
  String ofTemperature(String title) {
    List<String> sentences = opening(title);
    for (Curve cycle : new CyclePanel(view).curves()) {
      sentences.add("Thermal cycle " + cycle.name() + ".");
    }
    softening("left", profile.softening().left()).ifPresent(sentences::add);
    softening("right", profile.softening().right()).ifPresent(sentences::add);
    return closed(sentences);
  }

  private Optional<String> softening(String side, Softening.OfSide softening) {
    return softening.threshold()
        ? Optional.of(
            "The "
                + side
                + " base softens from "
                + Figures.of(OutputQuantity.PEAK_TEMPERATURE, view.units(), softening.from())
                + ".")
        : Optional.empty();
  }

  private List<String> opening(String title) {
    List<String> sentences = new ArrayList<>();
    sentences.add(title + ": " + new Remarks(view).subject() + ".");
    return sentences;
  }

  private String closed(List<String> sentences) {
    sentences.addAll(new Remarks(view).caution());
    profile.cautions().stream().filter(text -> !sentences.contains(text)).forEach(sentences::add);
    profile.warnings().stream().map(Warning::text).forEach(sentences::add);
    return String.join(" ", sentences);
  }

  private String figure(OutputQuantity quantity, double shown) {
    return Figures.shown(quantity, view.units(), shown);
  }
}
