package afterweld.charts;

import afterweld.charts.plot.Axis;
import afterweld.charts.plot.Band;
import afterweld.charts.plot.Curve;
import afterweld.charts.plot.LineLook;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.strength.Strength;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A section profile as the charts need it: curves and bands in the units that the reader asked for.
 *
 * @param profile what was computed
 * @param requirement what the drawing asks
 * @param units units of all that is drawn
 */
record SectionView(SectionProfile profile, Requirement requirement, UnitSystem units) {

  /** The horizontal axis: the part of the section where something happened. */
  Axis distanceAxis() {
    return SectionWindow.of(profile).axis(units);
  }

  double distance(double metres) {
    return OutputQuantity.DISTANCE.in(units, metres);
  }

  int states() {
    return profile.states().size();
  }

  /** The states that carry the story, in order. */
  List<Integer> mainStates() {
    return IntStream.range(0, states())
        .filter(state -> StateLooks.main(state, states()))
        .boxed()
        .toList();
  }

  /** The states between, in order. */
  List<Integer> stageStates() {
    return IntStream.range(0, states())
        .filter(state -> !StateLooks.main(state, states()))
        .boxed()
        .toList();
  }

  /** One state's best estimates across the section. */
  Curve curve(OutputQuantity quantity, int state) {
    List<Curve.Spot> spots =
        profile.stations().stream()
            .map(
                station ->
                    new Curve.Spot(
                        distance(station.distance()),
                        value(quantity, estimate(station, state).middle())))
            .toList();
    return new Curve(profile.states().get(state), spots, StateLooks.of(state, states()));
  }

  /** One state's error band across the section. */
  Band band(OutputQuantity quantity, int state) {
    List<Band.Slice> slices =
        profile.stations().stream()
            .map(station -> slice(quantity, station, estimate(station, state)))
            .toList();
    return new Band(slices, StateLooks.of(state, states()).color());
  }

  private Band.Slice slice(OutputQuantity quantity, Station station, Estimate estimate) {
    return new Band.Slice(
        distance(station.distance()),
        value(quantity, estimate.low()),
        value(quantity, estimate.high()));
  }

  private static Estimate estimate(Station station, int state) {
    return station.estimates().get(state);
  }

  /** The highest temperature across the section. */
  Curve peakTemperature(LineLook look) {
    List<Curve.Spot> spots =
        profile.stations().stream()
            .map(
                station ->
                    new Curve.Spot(
                        distance(station.distance()), units.temperature(station.peakTemperature())))
            .toList();
    return new Curve(OutputQuantity.PEAK_TEMPERATURE.title(), spots, look);
  }

  /** What is asked of the quantity, in the units of the chart. */
  OptionalDouble required(OutputQuantity quantity) {
    OptionalDouble asked =
        switch (quantity) {
          case HARDNESS -> requirement.hardness();
          case YIELD -> requirement.yield();
          case TENSILE -> requirement.tensile();
          case DISTANCE, PEAK_TEMPERATURE -> OptionalDouble.empty();
        };
    return asked.isPresent()
        ? OptionalDouble.of(quantity.in(units, asked.getAsDouble()))
        : OptionalDouble.empty();
  }

  private double value(OutputQuantity quantity, Strength strength) {
    double si =
        switch (quantity) {
          case HARDNESS -> strength.hardness();
          case YIELD -> strength.yield();
          case TENSILE -> strength.tensile();
          case DISTANCE, PEAK_TEMPERATURE ->
              throw new IllegalArgumentException(quantity.title() + " is not a strength");
        };
    return quantity.in(units, si);
  }
}
