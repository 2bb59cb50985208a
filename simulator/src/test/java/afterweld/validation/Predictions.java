package afterweld.validation;

import static afterweld.validation.Comparison.Measure.EXTENT;
import static afterweld.validation.Comparison.Measure.HARDNESS;
import static afterweld.validation.Comparison.Measure.OTHER;
import static afterweld.validation.Comparison.Measure.PEAK;
import static afterweld.validation.Comparison.Measure.TENSILE;
import static afterweld.validation.Comparison.Measure.YIELD;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.ProfileSlices;
import afterweld.joint.SliceLine;
import afterweld.joint.bend.BendCoupon;
import afterweld.joint.bend.StripBend;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.MaterialLibrary;
import afterweld.strength.HardnessScale;
import afterweld.strength.Strength;
import afterweld.thermal.Pass;
import afterweld.thermal.TemperatureChecks;
import afterweld.thermal.WeldingProcess;
import afterweld.validation.TestWeld.Arc;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;

/** What the program predicts for every published row, by the row's id. */
final class Predictions {
  private static final double MEGA = 1e-6;
  private static final double DILUTION = 0.4;

  private final Map<String, Supplier<List<Comparison>>> byRow = new LinkedHashMap<>();

  private Predictions() {
    tempers();
    dissolutionAndAgeing();
    zones();
    welds();
    facts();
    scales();
    temperatures();
  }

  /** The comparisons of one row; empty for a row that is an input or a definition. */
  static List<Comparison> of(PublishedRow row) {
    Supplier<List<Comparison>> prediction = new Predictions().byRow.get(row.id());
    return prediction == null ? List.of() : prediction.get();
  }

  private void tempers() {
    temper("T01", "6061", "O", 0.10, 55, 124, 30);
    temper("T02", "6061", "T4", 0.10, 145, 241, 65);
    temper("T03", "6061", "T6", 0.10, 276, 310, 95);
    temper("T04", "6063", "T4", 0.15, 90, 172, Double.NaN);
    temper("T05", "6063", "T5", 0.15, 145, 186, 60);
    temper("T06", "6063", "T6", 0.10, 215, 241, 73);
    temper("T07", "6082", "T4", 0.15, 170, 260, Double.NaN);
    byRow.put("T08", Predictions::between6082Limits);
    temper("T09", "6005A", "T6", 0.10, 260, 285, Double.NaN);
    temper("T10", "6351", "T6", 0.12, 283, 310, 95);
    temper("T11", "A356", "T6", 0.15, 207, 283, 90);
    temper("T12", "A357", "T6", 0.15, 290, 359, 100);
  }

  private void temper(
      String id,
      String alloy,
      String temper,
      double share,
      double yield,
      double tensile,
      double brinell) {
    byRow.put(
        id,
        () -> {
          Strength strength = Tempers.temper(alloy, temper);
          List<Comparison> all = new ArrayList<>();
          all.add(Comparison.within(share, YIELD, "yield", yield, strength.yield() * MEGA));
          all.add(Comparison.within(share, TENSILE, "tensile", tensile, strength.tensile() * MEGA));
          if (!Double.isNaN(brinell)) {
            double predicted = HardnessScale.brinell(strength.hardness()).value();
            all.add(Comparison.within(share, HARDNESS, "hardness HB", brinell, predicted));
          }
          return all;
        });
  }

  private static List<Comparison> between6082Limits() {
    Strength strength = Tempers.temper("6082", "T6");
    return List.of(
        new Comparison(YIELD, "yield", 310, strength.yield() * MEGA, 260, 310),
        new Comparison(TENSILE, "tensile", 340, strength.tensile() * MEGA, 310, 340));
  }

  private void dissolutionAndAgeing() {
    solubility("S01", 595, 1.85, 0.05);
    solubility("S02", 500, 1.05, 0.08);
    solubility("S03", 400, 0.47, 0.12);
    byRow.put("A01", Predictions::equalCycles);
    byRow.put("A02", Predictions::reheats);
    byRow.put(
        "A03",
        () ->
            List.of(new Comparison(OTHER, "gain, MPa", 0, Tempers.gainWithoutMagnesium(), -2, 2)));
    byRow.put(
        "Q01",
        () ->
            List.of(
                Comparison.withinFactor(
                    3,
                    OTHER,
                    "rate under which the aged yield falls by 5 %, K/s",
                    6.25,
                    Tempers.criticalRate("6005A", 530, 175, 0.95))));
    byRow.put(
        "Q02",
        () ->
            List.of(
                Comparison.withinFactor(
                    10,
                    OTHER,
                    "rate under which the aged yield falls by 5 %, K/s",
                    10,
                    Tempers.criticalRate("6063", 520, 180, 0.95))));
  }

  private void solubility(String id, double celsius, double published, double share) {
    byRow.put(
        id,
        () ->
            List.of(
                Comparison.within(
                    share,
                    OTHER,
                    "Mg2Si in solution, wt%",
                    published,
                    Tempers.dissolvedMagnesiumSilicide(celsius))));
  }

  private static List<Comparison> equalCycles() {
    Composition composition = Tempers.alloy("6061").composition();
    double[] yields = {
      Tempers.yieldOf(composition, Tempers.aged(Tempers.quenched(530, 300), 204, 1)),
      Tempers.yieldOf(composition, Tempers.aged(Tempers.quenched(530, 300), 177, 8)),
      Tempers.yieldOf(composition, Tempers.aged(Tempers.quenched(530, 300), 160, 18))
    };
    double largest = DoubleStream.of(yields).max().orElseThrow();
    double smallest = DoubleStream.of(yields).min().orElseThrow();
    double mean = DoubleStream.of(yields).average().orElseThrow();
    double spread = 100 * (largest - smallest) / mean;
    return List.of(new Comparison(OTHER, "spread of the three yields, %", 0, spread, 0, 6));
  }

  private static List<Comparison> reheats() {
    List<Comparison> all = new ArrayList<>();
    double[][] reheats = {{191, 1.5}, {204, 0.5}, {218, 0.25}, {232, 1.0 / 12}};
    for (double[] reheat : reheats) {
      double loss = 100 * (1 - Tempers.leftAfterReheat(reheat[0], reheat[1]));
      String label = Math.round(reheat[0]) + " °C, " + Math.round(reheat[1] * 60) + " min: loss, %";
      all.add(new Comparison(OTHER, label, 5, loss, 2, 9));
    }
    return all;
  }

  private void zones() {
    byRow.put("H01", () -> bothArcs(Predictions::softenedShare));
    byRow.put("H02", () -> bothArcs(Predictions::softenedT4));
    byRow.put("H03", () -> bothArcs(Predictions::softened6063));
    byRow.put("H04", Predictions::extents);
    byRow.put("H05", () -> bothArcs(Predictions::inchRule));
  }

  private interface ByArc {
    List<Comparison> of(Arc arc);
  }

  private static List<Comparison> bothArcs(ByArc prediction) {
    List<Comparison> all = new ArrayList<>(prediction.of(Arc.TIG));
    all.addAll(prediction.of(Arc.MIG));
    return all;
  }

  private static List<Comparison> softenedShare(Arc arc) {
    TestWeld weld = TestWeld.asWelded("6061", "T6", "4043", DILUTION, arc);
    Strength soft = weld.softest();
    return List.of(
        new Comparison(
            OTHER, arc + " yield over base", 0.48, soft.yield() / weld.base().yield(), 0.35, 0.55),
        new Comparison(
            OTHER,
            arc + " tensile over base",
            0.635,
            soft.tensile() / weld.base().tensile(),
            0.5,
            0.75));
  }

  private static List<Comparison> softenedT4(Arc arc) {
    Strength soft = TestWeld.asWelded("6061", "T4", "4043", DILUTION, arc).softest();
    double none = Double.POSITIVE_INFINITY;
    return List.of(
        new Comparison(OTHER, arc + " yield, limit", 95, soft.yield() * MEGA, 95, none),
        new Comparison(OTHER, arc + " tensile, limit", 150, soft.tensile() * MEGA, 150, none));
  }

  private static List<Comparison> softened6063(Arc arc) {
    Strength soft = TestWeld.asWelded("6063", "T6", "4043", DILUTION, arc).softest();
    return List.of(
        new Comparison(OTHER, arc + " yield, limit", 65, soft.yield() * MEGA, 65, 1.7 * 65),
        new Comparison(OTHER, arc + " tensile, limit", 110, soft.tensile() * MEGA, 110, 1.7 * 110));
  }

  private static List<Comparison> extents() {
    return List.of(
        Comparison.withinFactor(1.6, EXTENT, "TIG", 30, extent(Arc.TIG)),
        Comparison.withinFactor(1.6, EXTENT, "MIG", 20, extent(Arc.MIG)));
  }

  private static List<Comparison> inchRule(Arc arc) {
    return List.of(Comparison.withinFactor(3, EXTENT, arc + " (a factor 3)", 25, extent(arc)));
  }

  private static double extent(Arc arc) {
    return TestWeld.asWelded("6061", "T6", "4043", DILUTION, arc).extent(0.05);
  }

  private void welds() {
    joint("W01", 0.15, 0.15, 186, 124, 8, arc -> welded("6061", "T6", "4043", arc));
    joint("W02", 0.15, 0.15, 303, 276, 6, arc -> TestWeld.treated("6061", "T6", "4043", 0.6, arc));
    joint("W03", 0.15, 0.15, 207, 131, 11, arc -> welded("6061", "T6", "5356", arc));
    byRow.put(
        "W04",
        () ->
            List.of(
                Comparison.fact(
                    "the result warns",
                    TestWeld.treated("6061", "T6", "5356", DILUTION, Arc.TIG)
                        .warnsOf("filler-not-for-heat-treatment"))));
    joint(
        "W05",
        0.20,
        0.20,
        310,
        276,
        Double.NaN,
        arc -> TestWeld.treated("6061", "T6", "4643", 0.2, arc));
    byRow.put("W06", Predictions::fillerOrder);
    joint("W07", 0.15, 0.40, 110, 48, 24, arc -> welded("3003", "H18", "1100", arc));
    joint("W08", 0.15, 0.40, 296, 152, 16, arc -> welded("5083", "H116", "5183", arc));
    byRow.put("W09", Predictions::neverBelowAnnealed);
  }

  private static TestWeld welded(String base, String temper, String filler, Arc arc) {
    return TestWeld.asWelded(base, temper, filler, DILUTION, arc);
  }

  private interface WeldByArc {
    TestWeld of(Arc arc);
  }

  private void joint(
      String id,
      double share,
      double elongationShare,
      double tensile,
      double proof,
      double elongation,
      WeldByArc weld) {
    byRow.put(
        id,
        () ->
            bothArcs(
                arc ->
                    pulled(
                        arc,
                        weld.of(arc).pulled(),
                        share,
                        elongationShare,
                        tensile,
                        proof,
                        elongation)));
  }

  private static List<Comparison> pulled(
      Arc arc,
      CrossWeldTension pulled,
      double share,
      double elongationShare,
      double tensile,
      double proof,
      double elongation) {
    List<Comparison> all = new ArrayList<>();
    all.add(Comparison.within(share, TENSILE, arc + " tensile", tensile, pulled.tensile() * MEGA));
    all.add(
        Comparison.within(
            share, YIELD, arc + " proof", proof, pulled.proof().orElse(Double.NaN) * MEGA));
    if (!Double.isNaN(elongation)) {
      SliceLine.Band band = pulled.elongation().orElseThrow();
      double middle = 50 * (band.low() + band.high());
      all.add(
          Comparison.within(
              elongationShare,
              OTHER,
              arc + " elongation (middle of the band), %",
              elongation,
              middle));
    }
    return all;
  }

  private static List<Comparison> fillerOrder() {
    double poor = treatedWeldMetal("4043", 0.15);
    double better = treatedWeldMetal("4643", 0.15);
    double much = Math.min(treatedWeldMetal("4043", 0.6), treatedWeldMetal("4643", 0.6));
    return List.of(
        Comparison.fact("4043 at 0.15 under 4643 at 0.15", poor < better),
        Comparison.fact("4643 at 0.15 under either at 0.6", better < much));
  }

  private static double treatedWeldMetal(String filler, double dilution) {
    return TestWeld.treated("6061", "T6", filler, dilution, Arc.TIG).weldMetal().yield();
  }

  private static List<Comparison> neverBelowAnnealed() {
    List<Comparison> all = new ArrayList<>();
    String[][] bases = {{"3003", "H14"}, {"5052", "H34"}, {"5083", "H116"}};
    for (String[] base : bases) {
      String filler = base[0].equals("3003") ? "1100" : "5356";
      double annealed =
          Tempers.alloy(base[0]).temper("O").orElseThrow().handbook().orElseThrow().yield() * MEGA;
      double soft = welded(base[0], base[1], filler, Arc.TIG).softest().yield() * MEGA;
      all.add(Comparison.within(0.05, YIELD, base[0] + " softest yield", annealed, soft));
    }
    return all;
  }

  private void facts() {
    byRow.put("W10", Predictions::widening);
    byRow.put("W11", Predictions::kink);
    byRow.put(
        "D01",
        () ->
            List.of(
                new Comparison(OTHER, "80 % base: Mg, wt%", 1.75, weldMagnesium(0.8), 1.65, 1.85),
                new Comparison(OTHER, "40 % base: Mg, wt%", 3.3, weldMagnesium(0.4), 3.15, 3.45)));
  }

  private static double weldMagnesium(double dilution) {
    Composition filler = MaterialLibrary.standard().filler("5356").orElseThrow().composition();
    return Tempers.alloy("6061").composition().mixedWith(filler, dilution).of(Element.MG);
  }

  private static List<Comparison> widening() {
    double plain = extent(pass(200, 2.5e-3, 293.15));
    return List.of(
        Comparison.fact("more preheat", extent(pass(200, 2.5e-3, 373.15)) > plain),
        Comparison.fact("slower travel", extent(pass(200, 2.0e-3, 293.15)) > plain),
        Comparison.fact("more power", extent(pass(230, 2.5e-3, 293.15)) > plain));
  }

  private static double extent(Pass pass) {
    return TestWeld.of("6061", "T6", "4043", DILUTION, pass, 30 * Tempers.DAY, List.of())
        .extent(0.05);
  }

  private static Pass pass(double current, double speed, double start) {
    return new Pass(
        WeldingProcess.GTAW_AC,
        current,
        17,
        speed,
        start,
        OptionalDouble.empty(),
        OptionalDouble.of(0.006),
        OptionalDouble.of(0.6),
        0,
        OptionalDouble.empty());
  }

  private static List<Comparison> kink() {
    TestWeld weld = welded("3003", "H14", "1100", Arc.TIG);
    StripBend bent =
        StripBend.bend(
            ProfileSlices.flush(weld.profile(), 1, ProfileSlices.End.MIDDLE, 0.05).orElseThrow(),
            BendCoupon.of(BendSettings.DEFAULT));
    double kink = bent.kinkFactor();
    return List.of(
        new Comparison(OTHER, "kink factor", Double.NaN, kink, 3, Double.POSITIVE_INFINITY));
  }

  /** A textbook's peaks, with the tolerances of the equation they come from. */
  private void temperatures() {
    byRow.put(
        "K01", () -> List.of(peak(1.5, 1184, 0.01), peak(3.0, 976, 0.01), peak(5.9, 730, 0.015)));
  }

  private static Comparison peak(double outside, double celsius, double share) {
    double predicted = TemperatureChecks.steelSheet(outside * 1e-3);
    return Comparison.within(
        share, PEAK, outside + " mm outside the fusion line, °C", celsius, predicted);
  }

  private void scales() {
    byRow.put("E01", Predictions::hardnessPairs);
    byRow.put("E02", Predictions::yieldAgainstHardness);
    byRow.put(
        "R01",
        () ->
            List.of(
                efficiency("tungsten arc", 0.67, WeldingProcess.GTAW_DCEN),
                efficiency("consumable electrode", 0.84, WeldingProcess.GMAW)));
  }

  private static Comparison efficiency(String label, double published, WeldingProcess process) {
    boolean inside = published >= process.efficiencyLow() && published <= process.efficiencyHigh();
    return Comparison.fact(label + " " + published + " inside the default band", inside);
  }

  private static List<Comparison> hardnessPairs() {
    List<Comparison> all = new ArrayList<>();
    double[][] pairs = {{160, 189}, {120, 141}, {95, 111}, {70, 80}};
    for (double[] pair : pairs) {
      double predicted = HardnessScale.vickersFromBrinell(pair[0]).value();
      String label = "HB " + Math.round(pair[0]) + " in HV";
      all.add(new Comparison(OTHER, label, pair[1], predicted, pair[1] - 2, pair[1] + 2));
    }
    return all;
  }

  private static List<Comparison> yieldAgainstHardness() {
    List<Comparison> all = new ArrayList<>();
    for (String alloy : List.of("6061", "6063", "6082", "6005A")) {
      for (String temper : List.of("T4", "T6")) {
        Strength strength = Tempers.temper(alloy, temper);
        double relation = 3.0 * strength.hardness() - 48.1;
        String label = alloy + "-" + temper + " yield against the relation";
        all.add(Comparison.within(0.12, OTHER, label, relation, strength.yield() * MEGA));
      }
    }
    return all;
  }
}
