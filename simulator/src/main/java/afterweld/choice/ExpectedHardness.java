package afterweld.choice;

import afterweld.choice.FurnaceSheet.Expected;
import afterweld.choice.FurnaceSheet.Recheck;
import afterweld.choice.schedule.FurnaceOrder;
import afterweld.quantity.Asked;
import afterweld.quantity.UnitSystem;
import afterweld.section.AgedOnly;
import afterweld.section.Estimate;
import afterweld.section.OverageingLimit;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.WaitBeforeAgeing;
import afterweld.section.Zone;
import afterweld.strength.HardnessScale;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What the hardness tester should read after the treatment, and what a soft reading would mean. */
final class ExpectedHardness {
  /** Warnings of a profile that a furnace shop must read; the others are about the weld. */
  private static final Set<String> ABOUT_THE_TREATMENT =
      Set.of(
          "age-only-uncertain",
          AgedOnly.CODE,
          OverageingLimit.CODE,
          "filler-not-for-heat-treatment",
          "treatment-anneals",
          "hardened-by-work",
          "cold-solution-treatment",
          "composition-extrapolated",
          "not-predicted",
          "quench-rate",
          "quench-late",
          WaitBeforeAgeing.CODE);

  private static final int AS_WELDED = 1;
  private static final String NOT_AGED = ", or an ageing missed or too short";
  private static final String NOT_ANNEALED = "not annealed: the furnace too cold or too short";
  private static final String UNTOLD =
      "other metal than named; a part that was not annealed reads about the same here: the other"
          + " places tell";
  private static final String COOLED_FAST = ", or the cooling too fast";

  /** Less than this of the hardness no reading tells apart; assumed. */
  private static final double TELLING_GAIN = 0.1;

  /** Half of the last figure shown, HV (rounding). */
  private static final double READ_AS_EQUAL = 0.5;

  private final FurnaceOrder order;
  private final SectionProfile profile;
  private final Optional<Asked> asked;

  private ExpectedHardness(FurnaceOrder order, SectionProfile profile, Optional<Asked> asked) {
    this.order = order;
    this.profile = profile;
    this.asked = asked;
  }

  /**
   * What to expect of a section.
   *
   * @param asked the hardness that the drawing asks of every place, if it does
   */
  static ExpectedHardness of(FurnaceOrder order, SectionProfile profile, Optional<Asked> asked) {
    return new ExpectedHardness(order, profile, asked);
  }

  /** What the prediction warns of. */
  List<String> warnings() {
    return profile.warnings().stream()
        .filter(warning -> ABOUT_THE_TREATMENT.contains(warning.code()))
        .map(Warning::text)
        .distinct()
        .toList();
  }

  /** A place each: every base, beside the weld, the weld metal; none that is not predicted. */
  List<Expected> places() {
    List<Expected> places = new ArrayList<>();
    Side left = order.weldCase().left();
    Side right = order.weldCase().right();
    if (left.equals(right)) {
      addBase(places, "base metal", base(), left);
    } else {
      addBase(places, name(left, "left"), base().and(side(-1)), left);
      addBase(places, name(right, "right"), base().and(side(1)), right);
    }
    add(places, "beside the weld", ExpectedHardness::beside, besideMeans());
    add(places, "weld metal", at -> at.zone() == Zone.FUSION, weldMeans());
    return places;
  }

  private static String name(Side side, String where) {
    return "base metal " + side.alloy().name() + " (" + where + ")";
  }

  private static Predicate<Station> base() {
    return station -> station.zone() == Zone.BASE;
  }

  private static Predicate<Station> side(int sign) {
    return station -> sign * station.distance() > 0;
  }

  private static boolean beside(Station station) {
    return station.zone() != Zone.BASE && station.zone() != Zone.FUSION;
  }

  private String baseMeans(Side side) {
    if (!side.alloy().heatTreatable() || (!order.dissolves() && !order.ages())) {
      return "other metal or another temper than named, or a furnace that was too hot or too long";
    }
    if (order.dissolves()) {
      String ageing = order.ages() ? ", delay or ageing" : " or delay";
      return "the furnace or the quench missed: temperature, soak" + ageing;
    }
    return "another temper than named, or "
        + (order.bakes() ? "a bake" : "an ageing")
        + " too hot or too long";
  }

  private String besideMeans() {
    return order.dissolves()
        ? "the solution treatment did not dissolve what the weld coarsened, or the part was re-welded"
            + " or heat straightened"
        : "more heat than the procedure states went in, or the part was re-welded or heat"
            + " straightened";
  }

  private String weldMeans() {
    return order.ages() && !order.bakes()
        ? "wrong filler, or less dilution than thought: too little magnesium"
        : "wrong filler, or porous metal";
  }

  private void add(
      List<Expected> places, String place, Predicate<Station> where, String softMeans) {
    softest(where).ifPresent(found -> places.add(expected(place, found, where, softMeans)));
  }

  private void addBase(List<Expected> places, String place, Predicate<Station> where, Side side) {
    farthest(where).ifPresent(at -> places.add(expected(place, at, where, baseMeans(side))));
  }

  /** Base metal that the weld did not reach: nearer to it the band is that of what it softened. */
  private Optional<Station> farthest(Predicate<Station> place) {
    return predicted(place)
        .max(Comparator.comparingDouble(station -> Math.abs(station.distance())));
  }

  private Optional<Station> softest(Predicate<Station> place) {
    return predicted(place).min(Comparator.comparingDouble(this::hardness));
  }

  private Stream<Station> predicted(Predicate<Station> place) {
    return profile.stations().stream()
        .filter(place)
        .filter(station -> atLast(station).middle().predicted());
  }

  /** Of places that a tester reads as equally soft the limit of the one that is surest known. */
  private double low(Station softest, Predicate<Station> where) {
    return predicted(where)
        .filter(station -> hardness(station) <= hardness(softest) + READ_AS_EQUAL)
        .mapToDouble(station -> atLast(station).low().hardness())
        .max()
        .orElseThrow();
  }

  private double hardness(Station station) {
    return atLast(station).middle().hardness();
  }

  private Estimate atLast(Station station) {
    return station.estimates().get(profile.states().size() - 1);
  }

  private Recheck recheck(Station station, Predicate<Station> where, String softMeans) {
    if (order.onlyAnneals()) {
      return annealed(station, where);
    }
    double low =
        station.zone() == Zone.BASE ? atLast(station).low().hardness() : low(station, where);
    Recheck soft =
        hardensByAgeing(station)
            ? new Recheck(false, findsUnaged(station, low), softMeans + NOT_AGED)
            : new Recheck(false, low, softMeans);
    return asked
        .filter(drawing -> drawing.value() > soft.limit())
        .map(drawing -> new Recheck(false, drawing.value(), underDrawing(drawing, soft)))
        .orElse(soft);
  }

  private static String underDrawing(Asked drawing, Recheck soft) {
    return "less than the "
        + drawing.text(UnitSystem.METRIC)
        + " of the drawing; under "
        + Math.round(soft.limit())
        + " HV "
        + soft.means();
  }

  /** Half way to metal that was not annealed where it would pass the high end of the band. */
  private Recheck annealed(Station station, Predicate<Station> where) {
    double high = atLast(station).high().hardness();
    double annealed = atLast(station).middle().hardness();
    double before =
        profile.stations().stream()
            .filter(where)
            .mapToDouble(ExpectedHardness::unaged)
            .min()
            .orElse(Double.NaN);
    if (!(before > (1 + TELLING_GAIN) * annealed)) {
      return new Recheck(true, high, UNTOLD);
    }
    double limit = before < high ? (annealed + before) / 2 : high;
    return new Recheck(true, limit, NOT_ANNEALED + (order.hardens() ? COOLED_FAST : ""));
  }

  /** Whether a part that missed its ageing is plainly softer there than it should be. */
  private boolean hardensByAgeing(Station station) {
    return order.ages()
        && !order.dissolves()
        && atLast(station).middle().hardness() > (1 + TELLING_GAIN) * unaged(station);
  }

  /**
   * Half way to such a part where it would pass the low end of the band: the reading is to find it.
   */
  private double findsUnaged(Station station, double low) {
    double unaged = unaged(station);
    return unaged > low ? (atLast(station).middle().hardness() + unaged) / 2 : low;
  }

  private static double unaged(Station station) {
    return station.estimates().get(AS_WELDED).middle().hardness();
  }

  private Expected expected(
      String place, Station station, Predicate<Station> where, String softMeans) {
    Estimate estimate = atLast(station);
    double vickers = estimate.middle().hardness();
    double shown = Math.rint(vickers);
    OptionalDouble rockwell =
        cast(station) ? OptionalDouble.empty() : HardnessScale.rockwellB(shown);
    return new Expected(
        place,
        vickers,
        HardnessScale.brinell(shown).value(),
        rockwell.isPresent() ? Optional.of(rockwell.getAsDouble()) : Optional.empty(),
        recheck(station, where, softMeans));
  }

  /** The table of Rockwell B holds for wrought metal alone. */
  private boolean cast(Station station) {
    if (station.zone() == Zone.FUSION) {
      return order.hasCasting();
    }
    Side here = station.distance() < 0 ? order.weldCase().left() : order.weldCase().right();
    return here.alloy().casting();
  }
}
