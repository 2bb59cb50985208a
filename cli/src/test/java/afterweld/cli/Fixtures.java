package afterweld.cli;

import afterweld.CaseSession;
import afterweld.casefile.CaseFile;
import afterweld.choice.RouteSettings;
import afterweld.choice.answer.Requirement;
import afterweld.cli.command.ReadCase;
import afterweld.cli.terminal.Streams;
import afterweld.joint.JointSettings;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Fact;
import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.material.Temper;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Softening;
import afterweld.section.Station;
import afterweld.section.Station.Place;
import afterweld.section.WeldSession;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.section.soundness.Soundness;
import afterweld.strength.Strength;
import afterweld.study.SpreadSettings;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.WeldingProcess;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldMetal;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Hand-made results for tests: invented round numbers in the shape of a welded 6 mm plate, one
 * station a millimetre, the same on both sides.
 */
public final class Fixtures {
  static final double MM = 1e-3;
  public static final double MPA = 1e6;
  public static final List<String> THREE_STATES =
      List.of("before welding", "as welded", "after heat treatment");

  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final Source SOURCE =
      new Source("Handbook of invented values, table 1", Status.MEMORY);

  private Fixtures() {}

  /** Streams into memory, and what was written to them. */
  public static final class Memory {
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    public Streams streams(boolean terminal) {
      return new Streams(out, err, StandardCharsets.UTF_8, terminal);
    }

    String out() {
      return out.toString(StandardCharsets.UTF_8);
    }

    public String err() {
      return err.toString(StandardCharsets.UTF_8);
    }
  }

  static Alloy alloy6061() {
    Temper t6 = new Temper("T6", Optional.empty(), Optional.empty(), SOURCE);
    List<Fact> facts =
        List.of(
            new Fact("nominal", "Mg", "1", "wt%", SOURCE),
            new Fact("recipe", "T6", "530 °C; hold 1 h; 300 K/s to 25 °C; hold 1 d", "", SOURCE),
            new Fact("solidus", "", "582", "°C", SOURCE),
            new Fact("conductivity", "T6", "167", "W/(m K)", SOURCE),
            new Fact("yield", "T6", "276", "MPa", new Source("Another table", Status.READ)));
    return new Alloy(
        "6061",
        Alloy.Family.WROUGHT_HEAT_TREATABLE,
        List.of(Alloy.Use.BASE),
        Composition.of(Map.of(Element.SI, 0.6, Element.MG, 1.0)),
        Map.of(Element.MG, new Alloy.Limit(0.8, 1.2), Element.FE, new Alloy.Limit(0, 0.7)),
        855.15,
        925.15,
        2700,
        380e3,
        Map.of("T6", 167.0),
        4e-4,
        List.of(t6),
        Optional.of(new Alloy.StandardSchedule(803.15, 3600, 450.15, 28800, SOURCE)),
        facts);
  }

  static Alloy alloy4643() {
    return new Alloy(
        "4643",
        Alloy.Family.FILLER_ONLY,
        List.of(Alloy.Use.FILLER),
        Composition.of(Map.of(Element.SI, 4.1, Element.MG, 0.2)),
        Map.of(),
        846.15,
        908.15,
        2690,
        380e3,
        Map.of("all", 160.0),
        4e-4,
        List.of(),
        Optional.empty(),
        List.of(new Fact("solidus", "", "573", "°C", SOURCE)));
  }

  static Side side() {
    Alloy alloy = alloy6061();
    return new Side(alloy, alloy.tempers().get(0), 6 * MM, NONE, alloy.composition());
  }

  static WeldCase weldCase() {
    return WeldCase.of(side(), side())
        .title("Fork arm to base plate")
        .joint(Joint.BUTT, Preparation.SINGLE_V)
        .filler(new FillerChoice(Optional.of(alloy4643()), 0.4, 0.25, 0.55, false, 0.5))
        .passes(List.of(pass(OptionalDouble.of(11 * MM))))
        .reinforcement(1.65 * MM)
        .ambient(293.15)
        .depth(3 * MM)
        .naturalAge(86400)
        .notes(List.of(new Warning("preparation-assumed", "Single-v preparation assumed.")))
        .done();
  }

  static Pass pass(OptionalDouble beadWidth) {
    return new Pass(
        WeldingProcess.GTAW_AC, 180, 15, 0.0021, 393.15, beadWidth, NONE, NONE, 0, NONE);
  }

  static PassHeat calibrated() {
    OptionalDouble width = OptionalDouble.of(11 * MM);
    return new PassHeat(pass(width), 0.58, 0.58, 0.58, true, 1566, 5.5 * MM, width);
  }

  static PassHeat byDefault() {
    return new PassHeat(pass(NONE), 0.6, 0.45, 0.75, false, 1620, 5.6 * MM, NONE);
  }

  /** Before welding, as welded and after heat treatment. */
  public static SectionProfile profile() {
    return profile(THREE_STATES, UnaryOperator.identity());
  }

  /** A profile whose stations are changed one by one. */
  public static SectionProfile profile(List<String> states, UnaryOperator<Station> change) {
    List<Station> stations =
        IntStream.rangeClosed(-40, 40)
            .mapToObj(mm -> change.apply(station(mm, states.size())))
            .toList();
    return new SectionProfile(
        weldCase(),
        Soundness.SOUND,
        states,
        stations,
        List.of(stations),
        spans(stations),
        new WeldMetal("4643", 0.4, 0.25, 0.55, alloy4643().composition(), 830.15),
        List.of(calibrated(), byDefault()),
        List.of(),
        Softening.both(563.15),
        List.of(new Warning("dip-uncertain", "The depth of the dip is uncertain.")),
        List.of("Estimates for sound metal, not a design value."));
  }

  private static Station station(int mm, int states) {
    Zone zone = zone(Math.abs(mm));
    Place place = zone == Zone.FUSION ? Place.WELD : mm < 0 ? Place.LEFT : Place.RIGHT;
    double peak = Math.min(1000, 320 + 3000.0 / (Math.abs(mm) + 1));
    List<Estimate> estimates =
        IntStream.range(0, states).mapToObj(state -> band(yieldAt(zone, mm, state))).toList();
    return new Station(mm * MM, place, zone, peak, estimates);
  }

  private static Zone zone(int distance) {
    if (distance <= 5) {
      return Zone.FUSION;
    }
    if (distance <= 7) {
      return Zone.PARTIALLY_MELTED;
    }
    if (distance <= 11) {
      return Zone.SOLUTIONIZED;
    }
    if (distance <= 18) {
      return Zone.ANNEALED;
    }
    return distance <= 27 ? Zone.OVERAGED : Zone.BASE;
  }

  /** MPa: flat before welding, a dip at 15 mm after it, most of it back in every later state. */
  private static double yieldAt(Zone zone, int mm, int state) {
    if (state == 0 || zone == Zone.BASE) {
      return 276;
    }
    double dip = zone == Zone.FUSION ? 126 : 110 + 8.0 * Math.abs(Math.abs(mm) - 15);
    return state == 1 ? dip : 270 - 0.2 * (276 - dip);
  }

  public static Estimate band(double yield) {
    Strength middle = new Strength(yield * MPA, (yield + 40) * MPA, 0.183 * (2 * yield + 40));
    return new Estimate(middle, middle.times(0.85), middle.times(1.2));
  }

  public static Estimate notPredicted() {
    return new Estimate(Strength.NOT_PREDICTED, Strength.NOT_PREDICTED, Strength.NOT_PREDICTED);
  }

  private static List<ZoneSpan> spans(List<Station> stations) {
    List<ZoneSpan> spans = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= stations.size(); i++) {
      if (i == stations.size() || stations.get(i).zone() != stations.get(from).zone()) {
        spans.add(span(stations.subList(from, i)));
        from = i;
      }
    }
    return spans;
  }

  private static ZoneSpan span(List<Station> stations) {
    Station first = stations.get(0);
    List<Double> lowest =
        IntStream.range(0, first.estimates().size())
            .mapToObj(state -> lowestHardness(stations, state))
            .toList();
    double last = stations.get(stations.size() - 1).distance();
    return new ZoneSpan(first.zone(), first.place(), first.distance(), last, lowest);
  }

  private static double lowestHardness(List<Station> stations, int state) {
    return stations.stream()
        .mapToDouble(station -> station.estimates().get(state).middle().hardness())
        .min()
        .orElseThrow();
  }

  static ReadCase caseFile(Requirement requirement) {
    return new ReadCase(
        CaseSession.of(new WeldSession(), read(requirement)),
        (pointer, message) -> pointer + ": " + message);
  }

  private static CaseFile read(Requirement requirement) {
    return new CaseFile(
        weldCase(),
        requirement,
        RouteSettings.DEFAULT,
        JointSettings.DEFAULT,
        SpreadSettings.DEFAULT);
  }

  public static Requirement yieldOf(double mpa) {
    OptionalDouble yield = OptionalDouble.of(mpa * MPA);
    return new Requirement(yield, NONE, NONE, Optional.empty(), NONE);
  }
}
