package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.StationHistory.PassTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * The time line of the stations of one leg through all passes of a weld. SI units and kelvin.
 *
 * <p>A preheated part warms from 25 °C in 5 minutes and waits 2 minutes [assumed]. A station
 * follows each pass until it is within 5 K of the next interpass temperature, at most 2 hours;
 * where it is not there by then, or is colder, it goes there in 60 s. A stated pause takes the
 * place of that wait. After the last pass it is followed to 40 °C and goes to 25 °C in 10 minutes.
 */
public final class WeldTimeline implements StationTimeline {
  private static final double ROOM = 25 + ZERO_CELSIUS;
  private static final double COOLED = 40 + ZERO_CELSIUS;
  private static final double PREHEATING = 300;
  private static final double PREHEATED_WAIT = 120;

  /** Nearer than this to a temperature counts as there, K. */
  public static final double NEAR = 5;

  /** Longest wait for the interpass temperature, s. */
  public static final double LONGEST_WAIT = 2 * 3600;

  /** Longest cooling after the last pass, s. */
  public static final double LONGEST_COOLING = 6 * 3600;

  /** Time over which a part is brought to the temperature of its next pass, s. */
  public static final double TO_INTERPASS = 60;

  private static final double TO_ROOM = 600;

  private final Leg leg;
  private final List<PassHeat> heats;
  private final List<PlateField> fields;

  private WeldTimeline(Leg leg, List<PassHeat> heats, List<PlateField> fields) {
    this.leg = leg;
    this.heats = heats;
    this.fields = fields;
  }

  /**
   * The time line of one leg.
   *
   * @param index which of the legs
   * @param heats of the passes in their order, at least one
   * @param depth of the stations below the arc side, m
   */
  public static WeldTimeline of(
      WeldLegs legs, int index, List<PassHeat> heats, SurfaceLoss loss, double depth) {
    if (heats.isEmpty()) {
      throw new IllegalArgumentException("a weld needs a pass");
    }
    List<PlateField> fields =
        heats.stream().map(heat -> PlateField.of(legs, index, heat, loss, depth)).toList();
    return new WeldTimeline(legs.legs().get(index), List.copyOf(heats), fields);
  }

  /** The field of one pass in this leg. */
  public PlateField field(int pass) {
    return fields.get(pass);
  }

  @Override
  public StationHistory at(double distance) {
    List<StationPass> passes = new ArrayList<>();
    for (int i = 0; i < fields.size(); i++) {
      double offset = heats.get(i).pass().offset();
      passes.add(fields.get(i).station(leg.left() ? offset - distance : distance - offset));
    }
    List<Double> peaks = passes.stream().map(StationPass::peakTemperature).toList();
    double fusion = leg.material().fusionTemperature();
    boolean melted = peaks.stream().anyMatch(peak -> peak >= fusion);
    List<TemperatureHistory> cycles =
        IntStream.range(0, passes.size()).mapToObj(i -> followed(passes, i)).toList();
    return new StationHistory(distance, history(cycles), times(passes, cycles), peaks, melted);
  }

  @Override
  public double reach(double peak) {
    return furthest(field -> field.isotherm(peak));
  }

  @Override
  public double fusionReach() {
    return furthest(PlateField::fusionHalfWidth);
  }

  private double furthest(ToDoubleFunction<PlateField> halfWidth) {
    double furthest = 0;
    for (int i = 0; i < fields.size(); i++) {
      double offset = heats.get(i).pass().offset();
      double towards = leg.left() ? -offset : offset;
      furthest = Math.max(furthest, halfWidth.applyAsDouble(fields.get(i)) + towards);
    }
    return furthest;
  }

  /** When each pass begins to be felt and when its arc goes by. */
  private List<PassTimes> times(List<StationPass> passes, List<TemperatureHistory> cycles) {
    List<PassTimes> times = new ArrayList<>();
    double start = preheating(heats.get(0).pass());
    for (int i = 0; i < passes.size(); i++) {
      times.add(new PassTimes(start, start - passes.get(i).startTime()));
      start += cycles.get(i).duration() + (i + 1 < passes.size() ? lead(i + 1) : 0);
    }
    return times;
  }

  private TemperatureHistory history(List<TemperatureHistory> cycles) {
    TemperatureHistory history = preheated(heats.get(0).pass(), cycles.get(0));
    for (int i = 1; i < cycles.size(); i++) {
      TemperatureHistory next = cycles.get(i);
      history = history.thenTo(next.temperature(0), lead(i)).then(next);
    }
    return toRoom(history);
  }

  /** The end of every time line. */
  public static TemperatureHistory toRoom(TemperatureHistory history) {
    return history.thenTo(ROOM, TO_ROOM);
  }

  /** How long the part is preheated and then waits for the arc of the first pass, s. */
  public static double preheating(Pass pass) {
    return pass.startTemperature() > ROOM ? PREHEATING + pass.pause().orElse(PREHEATED_WAIT) : 0;
  }

  /** The preheat of the first pass and then its cycle. */
  public static TemperatureHistory preheated(Pass pass, TemperatureHistory first) {
    if (pass.startTemperature() <= ROOM) {
      return first;
    }
    return TemperatureHistory.of(
            new double[] {0, PREHEATING}, new double[] {ROOM, pass.startTemperature()})
        .thenTo(first.temperature(0), pass.pause().orElse(PREHEATED_WAIT))
        .then(first);
  }

  /** The cycle of one pass until the next begins or the part is cold. */
  private TemperatureHistory followed(List<StationPass> passes, int pass) {
    StationPass station = passes.get(pass);
    if (pass == passes.size() - 1) {
      return station.cycle(cooled(fields.get(pass).loss()), LONGEST_COOLING);
    }
    Pass next = heats.get(pass + 1).pass();
    if (next.pause().isPresent()) {
      double end = next.pause().getAsDouble() - lead(pass + 1);
      return station.cycleTo(Math.max(end, station.peakTime()));
    }
    return station.cycle(next.startTemperature() + NEAR, LONGEST_WAIT);
  }

  /** Temperature at which a part counts as cold, K. */
  public static double cooled(SurfaceLoss loss) {
    return Math.max(COOLED, loss.ambient() + NEAR);
  }

  /** Time in which a station goes to the temperature before a pass, s. */
  private double lead(int pass) {
    double half = heats.get(pass).pass().pause().orElse(Double.POSITIVE_INFINITY) / 2;
    return Math.min(TO_INTERPASS, half);
  }
}
