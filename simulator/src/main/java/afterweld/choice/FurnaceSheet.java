package afterweld.choice;

import afterweld.section.BothUnits;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.SectionSimulation;
import afterweld.section.Side;
import afterweld.section.Station;
import afterweld.section.WeldCase;
import afterweld.section.WeldPool;
import afterweld.section.Zone;
import afterweld.strength.HardnessScale;
import afterweld.strength.Strength;
import afterweld.thermal.FurnaceStep;
import afterweld.thermal.FurnaceStep.Age;
import afterweld.thermal.FurnaceStep.Quench;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The instruction for the furnace shop: what to do, within which limits, what to measure afterwards
 * and what a soft reading would mean.
 *
 * @param title of the case
 * @param ownSchedule whether the case names the schedule; the standard one else
 * @param lines the instruction, in the order of the work
 * @param expected hardness to expect, place by place
 * @param refusals why the schedule must not be run; empty if it may be
 */
public record FurnaceSheet(
    String title,
    boolean ownSchedule,
    List<Line> lines,
    List<Expected> expected,
    List<String> refusals) {
  private static final double TOLERANCE = 6;
  private static final double MELTING_MARGIN = 5;

  /** Copies the lists. */
  public FurnaceSheet {
    lines = List.copyOf(lines);
    expected = List.copyOf(expected);
    refusals = List.copyOf(refusals);
  }

  /**
   * One line of the instruction.
   *
   * @param what what it is about
   * @param text what to do, with limits and their sources
   */
  public record Line(String what, String text) {}

  /**
   * Hardness at one place after the treatment.
   *
   * @param place where
   * @param vickers best estimate, HV
   * @param acceptFrom lower end of the predicted band, HV
   * @param brinell the estimate in HB 500 kgf
   * @param rockwell the estimate in HRB where that scale is valid
   * @param softMeans what a reading under the band would mean
   */
  public record Expected(
      String place,
      double vickers,
      double acceptFrom,
      double brinell,
      Optional<Double> rockwell,
      String softMeans) {}

  /** The sheet of a case: empty if its bases do not answer to a hardening heat treatment. */
  public static Optional<FurnaceSheet> of(WeldCase weldCase) {
    boolean own = !weldCase.afterWeld().isEmpty();
    Optional<List<FurnaceStep>> steps =
        own ? Optional.of(weldCase.afterWeld()) : StandardTreatment.full(weldCase);
    return steps.map(list -> new Work(weldCase.withAfterWeld(list)).sheet(own));
  }

  private record Work(WeldCase weldCase) {
    FurnaceSheet sheet(boolean own) {
      List<String> refusals = refusals();
      List<Line> lines = new ArrayList<>();
      lines.add(new Line("Material", material()));
      lines.add(new Line("On arrival", arrival()));
      for (FurnaceStep step : weldCase.afterWeld()) {
        lines.addAll(lines(step));
      }
      lines.addAll(closing());
      List<Expected> expected = refusals.isEmpty() ? expected() : List.of();
      return new FurnaceSheet(weldCase.title(), own, lines, expected, refusals);
    }

    private String material() {
      return sides()
              .map(
                  side ->
                      side.alloy().name()
                          + "-"
                          + side.temper().name()
                          + ", "
                          + BothUnits.length(side.thickness()))
              .distinct()
              .reduce((one, other) -> one + " to " + other)
              .orElseThrow()
          + ", welded with "
          + weldCase.filler().alloy().map(filler -> filler.name()).orElse("no filler")
          + ".";
    }

    private Stream<Side> sides() {
      return Stream.of(weldCase.left(), weldCase.right());
    }

    private String arrival() {
      return "Welded, "
          + FurnaceWords.time(weldCase.naturalAge())
          + " at room temperature since. Clean and dry; closed cavities vented. Nothing wet or hollow"
          + " into a salt bath.";
    }

    private double thickest() {
      return sides().mapToDouble(Side::thickness).max().orElseThrow();
    }

    private double thinnest() {
      return sides().mapToDouble(Side::thickness).min().orElseThrow();
    }

    private double lowestSolidus() {
      return Math.min(weldMetalSolidus(), WeldPool.baseSolidus(weldCase.left(), weldCase.right()));
    }

    private double weldMetalSolidus() {
      return WeldPool.solidus(
          WeldPool.composition(weldCase, weldCase.filler().dilution()),
          WeldPool.baseSolidus(weldCase.left(), weldCase.right()));
    }

    private List<String> refusals() {
      List<String> refusals = new ArrayList<>();
      for (FurnaceStep step : weldCase.afterWeld()) {
        if (step instanceof SolutionTreat treat
            && treat.temperature() + TOLERANCE + MELTING_MARGIN >= lowestSolidus()) {
          refusals.add(
              String.format(
                  Locale.ROOT,
                  "Solution treatment at %s with its tolerance of 6 °C (11 °F) comes within 5 °C (9 °F) of the lowest"
                      + " solidus, %s: metal may melt.",
                  BothUnits.temperature(treat.temperature()),
                  BothUnits.temperature(lowestSolidus())));
        }
      }
      return refusals;
    }

    private List<Line> lines(FurnaceStep step) {
      if (step instanceof SolutionTreat treat) {
        return List.of(
            new Line(
                "Solution treatment",
                BothUnits.temperature(treat.temperature())
                    + " ± 6 °C (11 °F) (AMS 2770 practice, memory). Lowest solidus: base "
                    + BothUnits.temperature(WeldPool.baseSolidus(weldCase.left(), weldCase.right()))
                    + ", weld metal "
                    + BothUnits.temperature(weldMetalSolidus())
                    + " (memory)."),
            new Line("Soak", soak(treat)));
      }
      if (step instanceof Quench quench) {
        return List.of(
            new Line("Quench", quench(quench)),
            new Line(
                "Straightening",
                "Within 1 h of the quench, 8 h at most; stored at -18 °C (0 °F) it may wait longer (common"
                    + " practice)."));
      }
      if (step instanceof Age age) {
        return List.of(
            new Line(
                "Ageing",
                BothUnits.temperature(age.temperature())
                    + " ± 6 °C (11 °F) for "
                    + FurnaceWords.time(age.time())
                    + ", counted from when the coldest part is within 6 °C (11 °F) (AMS 2770 practice,"
                    + " memory)."));
      }
      String words = FurnaceWords.of(step);
      return List.of(
          new Line("Then", Character.toUpperCase(words.charAt(0)) + words.substring(1) + "."));
    }

    private String soak(SolutionTreat treat) {
      if (weldCase.left().alloy().casting() || weldCase.right().alloy().casting()) {
        return FurnaceWords.time(treat.soak()) + "; castings 6 to 12 h (common practice).";
      }
      return FurnaceWords.time(treat.soak())
          + " as ordered, counted from when the coldest part is within 6 °C (11 °F). At least "
          + FurnacePractice.of("soak in air", thickest()).text()
          + " in air, "
          + FurnacePractice.of("soak in salt", thickest()).text()
          + " in salt.";
    }

    private String quench(Quench quench) {
      FurnacePractice.Limit longest = FurnacePractice.of("longest quench delay", thinnest());
      boolean casting = weldCase.left().alloy().casting() || weldCase.right().alloy().casting();
      String medium =
          "Into "
              + quench.medium().label()
              + " of "
              + BothUnits.temperature(quench.temperature())
              + (casting
                  ? "; castings usually into water of 65 to 100 °C, 150 to 212 °F (common practice)"
                  : "; water at most 38 °C (100 °F) at the start, its rise under 11 °C (20 °F) (AMS 2770, memory)");
      String late =
          quench.delay() > longest.value() ? " The ordered delay is longer than that limit." : "";
      return medium
          + ". From door to full immersion within "
          + FurnaceWords.time(quench.delay())
          + "; limit by thickness "
          + longest.text()
          + "."
          + late;
    }

    private List<Line> closing() {
      return List.of(
          new Line(
              "Between quench and ageing",
              "Natural ageing before the furnace changes the result: keep to the time ordered."),
          new Line(
              "Measure",
              "Hardness on base, beside the weld and on the weld, dressed flush, indents at least three"
                  + " diagonals apart (ISO 6507-1, memory). Electrical conductivity as a check: 6061 O"
                  + " 47, T4 40, T6 43 % IACS (memory)."),
          new Line(
              "Mark as",
              "Heat treated by the user's furnace (T62-like), not as the mill's temper."),
          new Line(
              "Hazards",
              "Furnace, hot water and quench: follow local rules. The qualified procedure, the test"
                  + " coupon and the governing code decide."));
    }

    private List<Expected> expected() {
      SectionProfile profile = SectionSimulation.run(weldCase);
      int last = profile.states().size() - 1;
      List<Expected> all = new ArrayList<>();
      softest(profile, last, station -> station.zone() == Zone.BASE)
          .ifPresent(
              found ->
                  all.add(
                      expected(
                          "base metal",
                          found,
                          "the furnace or the quench missed: temperature, soak, delay or ageing")));
      softest(profile, last, station -> beside(station.zone()))
          .ifPresent(
              found ->
                  all.add(
                      expected(
                          "beside the weld",
                          found,
                          "the solution treatment did not dissolve what the weld coarsened, or the"
                              + " part was re-welded or heat straightened")));
      softest(profile, last, station -> station.zone() == Zone.FUSION)
          .ifPresent(
              found ->
                  all.add(
                      expected(
                          "weld metal",
                          found,
                          "wrong filler, or less dilution than thought: too little magnesium")));
      return all;
    }

    private static boolean beside(Zone zone) {
      return zone != Zone.BASE && zone != Zone.FUSION;
    }

    private static Optional<Estimate> softest(
        SectionProfile profile, int state, Predicate<Station> place) {
      return profile.stations().stream()
          .filter(place)
          .map(station -> station.estimates().get(state))
          .filter(estimate -> estimate.middle().predicted())
          .min(Comparator.comparingDouble(estimate -> estimate.middle().hardness()));
    }

    private static Expected expected(String place, Estimate estimate, String softMeans) {
      Strength middle = estimate.middle();
      var rockwell = HardnessScale.rockwellB(middle.hardness());
      return new Expected(
          place,
          middle.hardness(),
          estimate.low().hardness(),
          HardnessScale.brinell(middle.hardness()).value(),
          rockwell.isPresent() ? Optional.of(rockwell.getAsDouble()) : Optional.empty(),
          softMeans);
    }
  }
}
