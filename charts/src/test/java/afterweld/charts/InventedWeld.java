package afterweld.charts;

import afterweld.choice.answer.Requirement;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.material.Temper;
import afterweld.section.Cautions;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.SectionProfile.TellingCycle;
import afterweld.section.Softening;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.section.soundness.Soundness;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.TemperatureHistory;
import afterweld.thermal.WeldCourse.Place;
import afterweld.thermal.WeldingProcess;
import afterweld.weld.FillerChoice;
import afterweld.weld.Ring;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weld.WeldCaseDraft;
import afterweld.weldmetal.WeldMetal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A weld to draw in tests: every number of it is invented to look like a butt weld in 6 mm plate,
 * none is computed or measured.
 */
public final class InventedWeld {
  static final String BEFORE = "before welding";
  static final String AS_WELDED = "as welded";
  static final String AFTER = "after heat treatment";
  static final String CAUTION =
      "Estimates for sound metal at room temperature, not a design value: the qualified procedure,"
          + " the test coupon and the governing code decide.";

  private static final double AMBIENT = 293.15;
  private static final Source INVENTED = new Source("invented for drawing", Status.ASSUMED);

  /** The metal of one side: what it holds before welding and where its zones end, m. */
  record Metal(Side side, Strength before, List<Zone> zones, List<Double> ends) {}

  private final Metal left;
  private final Metal right;
  private final List<String> states;
  private double leg = 0.060;
  private int passes = 1;
  private boolean weldMetalPredicted = true;
  private String title = "Fork arm to base plate, observatory mount";
  private Optional<Ring> ring = Optional.empty();
  private List<Warning> warnings = List.of();

  private InventedWeld(Metal left, Metal right, List<String> states) {
    this.left = left;
    this.right = right;
    this.states = states;
  }

  public static InventedWeld symmetric() {
    return new InventedWeld(plate(), plate(), List.of(BEFORE, AS_WELDED, AFTER));
  }

  public static InventedWeld twoStates() {
    return new InventedWeld(plate(), plate(), List.of(BEFORE, AS_WELDED));
  }

  public static InventedWeld twoSided() {
    return new InventedWeld(plate(), strip(), List.of(BEFORE, AS_WELDED, AFTER));
  }

  public static InventedWeld manyStages() {
    return new InventedWeld(
        plate(),
        plate(),
        List.of(
            BEFORE,
            AS_WELDED,
            "after solution treatment",
            "after quench",
            "after natural ageing",
            "after ageing",
            AFTER));
  }

  public InventedWeld withLegs(double metres) {
    leg = metres;
    return this;
  }

  public InventedWeld withUnknownWeldMetal() {
    weldMetalPredicted = false;
    return this;
  }

  /** The same pass again and again, with a wait between. */
  public InventedWeld inPasses(int count) {
    passes = count;
    return this;
  }

  public InventedWeld titled(String words) {
    title = words;
    return this;
  }

  public InventedWeld onTube() {
    ring = Optional.of(new Ring(0.114, Place.WORST));
    return this;
  }

  public InventedWeld warning(Warning... given) {
    warnings = List.of(given);
    return this;
  }

  public static Requirement requirement() {
    return new Requirement(
        OptionalDouble.of(193e6),
        OptionalDouble.of(248e6),
        OptionalDouble.of(74),
        Optional.empty(),
        OptionalDouble.empty());
  }

  private static Metal plate() {
    return new Metal(
        new Side(
            alloy("6061", Alloy.Family.WROUGHT_HEAT_TREATABLE, 855.15, 925.15),
            new Temper("T6", Optional.empty(), Optional.empty(), INVENTED),
            0.006,
            OptionalDouble.empty(),
            composition()),
        new Strength(276e6, 310e6, 107),
        List.of(Zone.PARTIALLY_MELTED, Zone.SOLUTIONIZED, Zone.ANNEALED, Zone.OVERAGED, Zone.BASE),
        List.of(0.0058, 0.0072, 0.0095, 0.0168));
  }

  private static Metal strip() {
    return new Metal(
        new Side(
            alloy("5052", Alloy.Family.WORK_HARDENED, 880.15, 922.15),
            new Temper("H32", Optional.empty(), Optional.empty(), INVENTED),
            0.004,
            OptionalDouble.empty(),
            composition()),
        new Strength(193e6, 228e6, 68),
        List.of(Zone.PARTIALLY_MELTED, Zone.RECRYSTALLIZED, Zone.RECOVERED, Zone.BASE),
        List.of(0.0056, 0.0106, 0.0170));
  }

  private static Alloy alloy(String name, Alloy.Family family, double solidus, double liquidus) {
    return new Alloy(
        name,
        family,
        List.of(Alloy.Use.BASE),
        composition(),
        Map.of(),
        solidus,
        liquidus,
        2700,
        390e3,
        Map.of("all", 160.0),
        0,
        List.of(),
        Optional.empty(),
        List.of());
  }

  private static Composition composition() {
    return Composition.of(Map.of(Element.MG, 1.0, Element.SI, 0.6));
  }

  public SectionProfile profile() {
    List<Station> stations = new ArrayList<>();
    for (double x = -leg; x <= leg + 1e-9; x += step(x)) {
      stations.add(station(x));
    }
    return new SectionProfile(
        weldCase(),
        Soundness.SOUND,
        states,
        stations,
        List.of(stations),
        zones(),
        new WeldMetal("4643", 0.3, 0.15, 0.45, composition(), 850),
        List.of(),
        List.of(cycle(0), cycle(0.0075), cycle(0.011), cycle(-0.020)),
        Softening.both(488.15),
        warnings,
        List.of(
            CAUTION,
            ring.isPresent() ? Cautions.PRESSURE : "Pressure parts follow the pressure code.",
            "Molten metal, furnace, hot water and quench hazards: local rules."));
  }

  private static double step(double x) {
    return Math.abs(x) < 0.030 ? 0.00025 : 0.001;
  }

  private WeldCase weldCase() {
    Alloy filler = alloy("4643", Alloy.Family.FILLER_ONLY, 848, 908);
    WeldCaseDraft draft =
        WeldCase.of(left.side(), right.side())
            .title(title)
            .filler(new FillerChoice(Optional.of(filler), 0.3, 0.15, 0.45, false, 0.5))
            .passes(Collections.nCopies(passes, pass()))
            .reinforcement(0.0015)
            .ambient(AMBIENT)
            .depth(0.003)
            .naturalAge(86400);
    ring.ifPresent(draft::ring);
    return draft.done();
  }

  private static Pass pass() {
    return new Pass(
        WeldingProcess.GTAW_AC,
        180,
        15,
        0.0021,
        AMBIENT,
        OptionalDouble.of(0.011),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        OptionalDouble.empty());
  }

  private static final double FUSION = 0.0055;

  private Metal metal(double x) {
    return x <= 0 ? left : right;
  }

  private Zone zone(double x) {
    double away = Math.abs(x);
    if (away < FUSION) {
      return Zone.FUSION;
    }
    Metal metal = metal(x);
    int i = 0;
    while (i < metal.ends().size() && away >= metal.ends().get(i)) {
      i++;
    }
    return metal.zones().get(i);
  }

  private List<ZoneSpan> zones() {
    List<ZoneSpan> spans = new ArrayList<>();
    spans.addAll(side(left, -1));
    Collections.reverse(spans);
    spans.add(span(Zone.FUSION, Station.Place.WELD, -FUSION, FUSION));
    spans.addAll(side(right, 1));
    return spans;
  }

  private List<ZoneSpan> side(Metal metal, int sign) {
    List<ZoneSpan> spans = new ArrayList<>();
    double from = FUSION;
    for (int i = 0; i < metal.zones().size(); i++) {
      double to = i < metal.ends().size() ? metal.ends().get(i) : leg;
      Station.Place place = sign < 0 ? Station.Place.LEFT : Station.Place.RIGHT;
      double low = Math.min(sign * from, sign * to);
      spans.add(span(metal.zones().get(i), place, low, Math.max(sign * from, sign * to)));
      from = to;
    }
    return spans;
  }

  private ZoneSpan span(Zone zone, Station.Place place, double from, double to) {
    return new ZoneSpan(zone, place, from, to, Collections.nCopies(states.size(), 60.0));
  }

  private Station station(double x) {
    Zone zone = zone(x);
    Station.Place side = x <= 0 ? Station.Place.LEFT : Station.Place.RIGHT;
    List<Estimate> estimates = new ArrayList<>();
    for (String state : states) {
      estimates.add(estimate(x, zone, state));
    }
    Station.Place place = zone == Zone.FUSION ? Station.Place.WELD : side;
    return new Station(x, place, zone, peak(x), estimates);
  }

  private Estimate estimate(double x, Zone zone, String state) {
    if (zone == Zone.FUSION && !weldMetalPredicted && !state.equals(BEFORE)) {
      return new Estimate(Strength.NOT_PREDICTED, Strength.NOT_PREDICTED, Strength.NOT_PREDICTED);
    }
    double share = share(Math.abs(x), zone, metal(x), state);
    Strength middle = metal(x).before().times(share);
    double spread = state.equals(BEFORE) ? 0.05 : 0.09;
    return new Estimate(middle, middle.times(1 - spread), middle.times(1 + spread));
  }

  private static double share(double away, Zone zone, Metal metal, String state) {
    double reach = metal.ends().get(metal.ends().size() - 1);
    double outward = Math.min(1, Math.max(0, (away - 0.0075) / (reach - 0.0075)));
    double welded = zone == Zone.FUSION ? 0.58 : 0.56 + 0.08 * Math.cos(away * 500);
    double softened = welded + (1 - welded) * outward * outward * (3 - 2 * outward);
    boolean hardens = metal.side().alloy().heatTreatable();
    return switch (state) {
      case BEFORE -> 1;
      case AS_WELDED -> softened;
      case "after solution treatment" -> 0.45;
      case "after quench" -> 0.47;
      case "after natural ageing" -> 0.62;
      case "after ageing" -> zone == Zone.FUSION ? 0.86 : 0.97;
      default -> hardens ? (zone == Zone.FUSION ? 0.88 : 0.985) : 0.52;
    };
  }

  private static double peak(double x) {
    return AMBIENT + 597 * FUSION / Math.max(Math.abs(x), 0.0012);
  }

  /** Rises and falls as behind a line of heat in a thin plate. */
  private TellingCycle cycle(double x) {
    double peakTime = 0.4 + x * x / 1.2e-4;
    List<Double> times = new ArrayList<>(List.of(0.0));
    for (double t = 0.05; t < 600; t *= 1.06) {
      times.add(t);
    }
    double[] time = times.stream().mapToDouble(t -> t).toArray();
    double[] temperature = new double[time.length];
    temperature[0] = AMBIENT;
    for (int i = 1; i < time.length; i++) {
      double ratio = peakTime / time[i];
      double rise = Math.min(900, peak(x) - AMBIENT) * Math.sqrt(ratio);
      temperature[i] = AMBIENT + rise * Math.exp(0.5 * (1 - ratio));
    }
    TemperatureHistory once = TemperatureHistory.of(time, temperature);
    TemperatureHistory all = once;
    for (int i = 1; i < passes; i++) {
      all = all.thenTo(AMBIENT, 60).then(once);
    }
    return new TellingCycle(x, zone(x), all);
  }
}
