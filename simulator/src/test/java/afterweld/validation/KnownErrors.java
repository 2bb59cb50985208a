package afterweld.validation;

import afterweld.material.Composition;
import afterweld.section.ErrorBand;
import afterweld.strength.ModelError.Residuals;
import afterweld.strength.Strength;
import afterweld.thermal.TemperatureChecks;
import afterweld.validation.Comparison.Measure;
import afterweld.validation.TestWeld.Arc;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Where the model is known to be wrong and what would be worth measuring, in words. The numbers are
 * put in from the rows and from the code: {@code {W07 TIG tensile}} is that comparison, {@code
 * {name}} a number computed for the text.
 */
final class KnownErrors {
  private static final Pattern PLACE = Pattern.compile("\\{([^}]+)}");
  private static final int WIDTH = 118;
  private static final double MEGA = 1e-6;

  private static final String BANDS =
      """

      ## How wide the error bands are

      Every strength and hardness is shown with a band that is meant to hold nine true values of ten. For yield and
      tensile strength its width is Student's factor for as few published values, times the scatter (rms) of the test
      rows. One published value that stands for both arcs counts once in that factor. Left out are 3003 with 1100, for
      which no model is made, 5083 with 5183, which prompted the law of its weld metal, and rows on annealed metal,
      whose strength is an input. How the metals compare, 10 to 15 to 20, is assumed, and so is the band of hardness:
      too few values are known.

      | quantity | deviations | published values | T6, fully treated | other tempers, heat-affected zone | weld metal |
      | --- | --- | --- | --- | --- | --- |
      | yield | {values yield} |
      | tensile strength | {values tensile} |
      | hardness (assumed) | {values hardness} |
      """;

  private static final String WRONG =
      """

      ## Where the model is known to be wrong, and by how much

      - **Weld metal without magnesium and silicon** (3003 with 1100): tensile strength {W07 TIG tensile} MPa, with
        the handbook's annealed sheet in place of a model; its row is not counted as a test.
      - **MIG welds of 6061-T6 with 4043, as welded**: proof {W01 MIG proof}, tensile {W01 MIG tensile} MPa; with TIG the
        proof is {W01 TIG proof} MPa. Why is not known: the published figures are means over welds whose speed is not told.
      - **Ageing at 160 to 177 °C is too slow.** 6061 after 8 h at 177 °C, which practice takes for the peak, has
        {peak share} of the highest yield the model reaches at that temperature, and reaches it after {peak hours} h.
      - **Long overageing is too fast.** 10 h at 260 °C leave 6061-T6 about 110 MPa by handbook curves (memory);
        predicted {overaged}. A short reheat costs too little instead: 90 min at 191 °C {A02 191 °C, 90 min: loss, %} of the yield,
        30 min at 204 °C {A02 204 °C, 30 min: loss, %}. A weld begins to soften T6 about 30 K too late.
      - **Dissolved Mg2Si.** The line of the stable phase lies above the handbook's on purpose, so that 6061 is just
        dissolved at 530 °C. In solution, wt%: at 595 °C {S01 Mg2Si in solution, wt%}, at 500 °C {S02 Mg2Si in solution, wt%}, at
        400 °C {S03 Mg2Si in solution, wt%}. Lean schedules that in truth leave Mg2Si undissolved look better than
        they are.
      - **Slow quenches.** The rate under which the aged yield falls by 5 %, in K/s: 6063 {Q02 rate under which the aged yield falls by 5 %, K/s}, 6005A
        {Q01 rate under which the aged yield falls by 5 %, K/s}. Both come out too forgiving; do not use the model to
        excuse a slow quench. Below 5 K/s the loss in 6061 and 6082 is probably shown too large, that in 6063 too small.
      - **T4 starts** come out strong: the lowest yield beside the weld is {T4 TIG} (TIG) and {T4 MIG} (MIG) of the
        plate's, where codes give 86 % (95 of 110 MPa).
      - **Castings.** A356-T61 comes out at {T11 hardness HB} HB, though its yield is close, {T11 yield} MPa:
        probably an indenter sees the eutectic silicon, and the model of hardness does not.
      - **Ageing without solution treatment.** The dip at 375 to 450 °C peak was never fitted to a measured strength,
        and how as-deposited weld metal answers is not known. Decisions take that weld metal as welded.
      - **Weld metal.** Dilution dominates. What 5356-type weld metal does in a furnace rests on a few hundredths of a
        percent of silicon; the program says so instead of relying on the number.
      - **Work-hardened metal.** The strength of the temper and of the annealed metal are inputs; only the way between
        is computed. As welded, 5083 with 5183 has a tensile strength of {W08 TIG tensile} MPa.
      - **Weld metal of magnesium fillers** is no weaker than annealed sheet of its magnesium and manganese: a line
        through nine annealed alloys misses them by 7 % rms in yield and 4 % in tensile strength, and published welds
        of five fillers, which are not in it, by 7 % and 3 %. Magnesium that burns off in the arc is not counted.
      - **Elongation** is a band and its middle is compared: after full treatment {W02 TIG elongation (middle of the band), %}, as
        welded with 5356 {W03 TIG elongation (middle of the band), %}, 5083 {W08 MIG elongation (middle of the band), %}. The part a neck adds is assumed.
      - **Temperatures.** A textbook's sheet of steel peaks at {K01 1.5 mm outside the fusion line, °C} °C 1.5 mm outside
        the fusion line. {peaks} Near the rim of a pool that only grazes the depth looked at, peak temperatures change
        over less than the pool's own error in depth: do not read single stations there. No thermocouple trace in
        aluminium is among the rows, so the arc efficiency of a case without a bead width is only as good as its band.

      ## What would be worth measuring

      In the order of what it would do for the bands above:

      1. **Tension tests of welds with their procedure written down** (amps, volts, speed, bead width, dilution). The
         bands of yield and tensile strength rest on {published} published values; with 20 the same scatter would make
         them {narrower} narrower, and a mean over unknown procedures would no longer count as an error of the model.
      2. **Hardness in HV or HB of treated plate and across welds**, ten values that nothing was fitted to: the band of
         hardness is assumed for want of them ({hardness values} test value).
      3. **Chemistry and strength of the bead at two dilutions**, as welded and after treatment: the widest band, that of
         weld metal, is twice that of treated plate by assumption only.
      4. **A hardness traverse of one 6061-T6 weld**, after a week, after ageing alone, after full treatment; a second in
         6063. It would give the dip after ageing alone its first measured value, and `fit` takes it as it is.
      5. **A thermocouple at 10 mm** in the same weld: it separates the arc efficiency from the speed of softening, which a
         traverse alone cannot.
      6. **6063 cooled at 0.3 to 30 K/s from solution and aged**: the quench is the furthest off of all.
      7. **Yield of 6061-T6 after 1, 10 and 100 h at 160 to 260 °C**: both ends of the ageing curves.
      8. **A macro-section of a bead that does not go through**, with width and depth: pools that graze a depth.
      """;

  private final Map<PublishedRow, List<Comparison>> results;
  private final Map<String, Supplier<String>> computed;

  KnownErrors(Map<PublishedRow, List<Comparison>> results) {
    this.results = results;
    Residuals yield = ModelErrorFile.residuals(Measure.YIELD);
    Residuals tensile = ModelErrorFile.residuals(Measure.TENSILE);
    Residuals hardness = ModelErrorFile.residuals(Measure.HARDNESS);
    this.computed =
        Map.ofEntries(
            Map.entry("values yield", () -> bands(yield)),
            Map.entry("values tensile", () -> bands(tensile)),
            Map.entry("values hardness", () -> bands(hardness)),
            Map.entry("published", () -> Integer.toString(yield.published())),
            Map.entry("hardness values", () -> Integer.toString(hardness.values())),
            Map.entry("narrower", () -> percent(1 - student(20) / student(yield.published()))),
            Map.entry("peak share", () -> percent(aged(8) / aged(peakHours()))),
            Map.entry("peak hours", () -> Integer.toString(peakHours())),
            Map.entry("overaged", KnownErrors::overaged),
            Map.entry("T4 TIG", () -> softenedT4(Arc.TIG)),
            Map.entry("T4 MIG", () -> softenedT4(Arc.MIG)),
            Map.entry("peaks", KnownErrors::peaks));
  }

  /** The three sections. */
  String text() {
    return filled(BANDS) + wrapped(filled(WRONG));
  }

  /** Numbers put in make lines uneven: every point of a list is broken into lines anew. */
  private static String wrapped(String words) {
    StringBuilder text = new StringBuilder();
    for (String point : words.split("\n(?=\n|- |\\d+\\. |[A-Z#])", -1)) {
      text.append('\n').append(wrappedPoint(point));
    }
    return text.substring(1) + "\n";
  }

  private static String wrappedPoint(String point) {
    String lead = point.matches("(?s)(- |\\d+\\. ).*") ? point.replaceAll("(?s) .*", "") : "";
    String indent = lead.isEmpty() ? "" : " ".repeat(lead.length() + 1);
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (String word : point.strip().split("\\s+", -1)) {
      boolean full = column > 0 && column + 1 + word.length() > WIDTH;
      text.append(column == 0 ? "" : full ? "\n" + indent : " ").append(word);
      column = full ? indent.length() + word.length() : column + 1 + word.length();
    }
    return point.startsWith("\n") ? "\n" + text : text.toString();
  }

  private String filled(String words) {
    return PLACE
        .matcher(words)
        .replaceAll(place -> Matcher.quoteReplacement(number(place.group(1))));
  }

  private String number(String name) {
    Supplier<String> own = computed.get(name);
    if (own != null) {
      return own.get();
    }
    String row = name.substring(0, 3);
    String label = name.substring(4);
    return results.entrySet().stream()
        .filter(entry -> entry.getKey().id().equals(row))
        .flatMap(entry -> entry.getValue().stream())
        .filter(one -> one.label().equals(label))
        .findFirst()
        .map(KnownErrors::both)
        .orElseThrow(() -> new IllegalStateException("no number for " + name));
  }

  private static String both(Comparison one) {
    String published = Comparison.digits(one.published());
    String predicted = Comparison.digits(one.predicted());
    return one.label().endsWith("%")
        ? predicted + " % (published " + published + " %)"
        : String.format(
            Locale.ROOT, "%s (published %s, %+.0f %%)", predicted, published, one.errorPercent());
  }

  private static String bands(Residuals residuals) {
    double factor = 100 * residuals.bandFactor();
    return String.format(
        Locale.ROOT,
        "%d | %d | ±%.0f %% | ±%.0f %% | ±%.0f %%",
        residuals.values(),
        residuals.published(),
        ErrorBand.TREATED.assumed() * factor,
        ErrorBand.AFFECTED.assumed() * factor,
        ErrorBand.WELD_METAL.assumed() * factor);
  }

  private static double student(int values) {
    return new TDistribution(null, values).inverseCumulativeProbability(0.95);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }

  private static double aged(double hours) {
    Composition composition = Tempers.alloy("6061").composition();
    return Tempers.yieldOf(composition, Tempers.aged(Tempers.quenched(530, 300), 177, hours));
  }

  /** Whole hours to the highest yield at 177 °C. */
  private static int peakHours() {
    int best = 8;
    for (int hours : new int[] {10, 12, 14, 16, 20, 24, 28, 32, 40, 48}) {
      best = aged(hours) > aged(best) ? hours : best;
    }
    return best;
  }

  private static String overaged() {
    Strength peak = Tempers.temper("6061", "T6");
    double left = Tempers.leftAfterReheat(260, 10) * peak.yield() * MEGA;
    return String.format(Locale.ROOT, "%.0f MPa", left);
  }

  private static String softenedT4(Arc arc) {
    TestWeld weld = TestWeld.asWelded("6061", "T4", "4043", 0.4, arc);
    return percent(weld.softest().yield() / weld.base().yield());
  }

  private static String peaks() {
    List<TemperatureChecks.Peak> all = TemperatureChecks.sections();
    double squares = 0;
    double worst = 0;
    for (TemperatureChecks.Peak peak : all) {
      double off = peak.computed() - peak.reference();
      squares += off * off / all.size();
      worst = Math.max(worst, Math.abs(off));
    }
    return String.format(
        Locale.ROOT,
        "The equations are solved right: %d peak temperatures computed a second time from the same"
            + " equations differ by %.2f °C rms, %.2f °C at most. That tells nothing of whether the"
            + " equations suit a weld.",
        all.size(),
        Math.sqrt(squares),
        worst);
  }
}
