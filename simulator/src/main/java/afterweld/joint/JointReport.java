package afterweld.joint;

import afterweld.joint.JointStrength.Bead;
import afterweld.material.Alloy;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.Zone;
import afterweld.strength.Strength;
import afterweld.thermal.PassHeat;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What the joint of a profile carries in every state, with the bead dressed flush and as deposited,
 * what the design codes give for the same weld, and what must be known about both.
 *
 * @param strengths flush and as deposited, state by state
 * @param overTwoInches the same over the gauge of US practice; empty where the case names a gauge
 * @param codes values of the design codes, never mixed with the predicted ones
 * @param checks of the fillet and the tube, if the case has them
 * @param member with the weld along it, if the case has one
 * @param warnings limits of what the numbers mean
 */
public record JointReport(
    List<JointStrength> strengths,
    List<JointStrength> overTwoInches,
    List<DesignCodeValue> codes,
    JointChecks checks,
    Optional<MemberReport> member,
    List<Warning> warnings) {

  /** The 2 in gauge of US practice, m (ASTM B557). */
  public static final double TWO_INCHES = 0.0508;

  private static final String CODES_NOTE =
      "Code values are characteristic minima, predicted values are means: do not put one in the"
          + " place of the other. Those of the heat-affected zone are as welded. Read: seen in the"
          + " source named. Memory: remembered and not looked up. Second-hand: quoted by somebody"
          + " else. Look a value up in the code before you use it. Which value governs when the joint is heat treated after welding is"
          + " left to the engineer and the code.";

  /** Metal within 2 % of the softest counts as as soft (assumed). */
  private static final double AS_SOFT = 0.98;

  private static final String NO_CODES =
      "No code value is known here for this weld: the tables at hand have none for castings and few"
          + " for rare tempers. Take it from the governing code.";

  /** The warning of a tie: a report names both zones anyway. */
  private static final String OF_FLAT_JOINTS = "eccentric-pull";

  private static final String SAID_BY_THE_RUNNER_UP = "failure-undecided";

  /** Copies the lists. */
  public JointReport {
    strengths = List.copyOf(strengths);
    overTwoInches = List.copyOf(overTwoInches);
    codes = List.copyOf(codes);
    warnings = List.copyOf(warnings);
  }

  /** The report on a profile. */
  public static JointReport of(SectionProfile profile, JointSettings settings) {
    List<JointStrength> strengths = strengths(profile, settings.gauge());
    boolean usualGauge = settings.gauge() == JointSettings.DEFAULT.gauge();
    boolean sound = profile.soundness().sound();
    JointChecks checks = sound ? JointChecks.of(profile, settings) : JointChecks.NONE;
    List<DesignCodeValue> codes = DesignCodes.of(profile.weldCase());
    Optional<MemberReport> member =
        settings
            .member()
            .filter(asked -> sound)
            .map(asked -> MemberReport.of(profile, asked.width(), codes));
    List<Warning> warnings =
        Stream.concat(
                warnings(profile.weldCase(), strengths, checks).stream(),
                member.stream().flatMap(report -> report.warnings().stream()))
            .toList();
    return new JointReport(
        strengths,
        usualGauge ? strengths(profile, TWO_INCHES) : List.of(),
        codes,
        checks,
        member,
        warnings);
  }

  /** The same joint over the 2 in gauge; empty where the case names a gauge. */
  public Optional<JointStrength> overTwoInches(JointStrength strength) {
    return overTwoInches.stream()
        .filter(other -> other.state() == strength.state() && other.bead() == strength.bead())
        .findFirst();
  }

  /** What the strengths are of: a fillet's are those of the metal, as nothing pulls it in line. */
  public static String heading(WeldCase weldCase) {
    return weldCase.preparation() == Preparation.FILLET
        ? "Metal across the weld, pulled in line"
        : "Joint, pulled across the weld";
  }

  /** What stands beside the code values, or why there are none. */
  public String codesNote() {
    return codes.isEmpty() ? NO_CODES : CODES_NOTE;
  }

  /** The joint dressed flush in the last state: what a requirement is judged on. */
  public JointStrength finished() {
    return strengths.get(strengths.size() - 2);
  }

  /**
   * The joint dressed flush in the last state of a profile, pulled over one gauge only.
   *
   * @param gauge m
   */
  public static JointStrength finished(SectionProfile profile, double gauge) {
    return strength(profile, gauge, profile.states().size() - 1, Bead.FLUSH);
  }

  private static List<JointStrength> strengths(SectionProfile profile, double gauge) {
    List<JointStrength> strengths = new ArrayList<>();
    for (int state = 0; state < profile.states().size(); state++) {
      strengths.add(strength(profile, gauge, state, Bead.FLUSH));
      strengths.add(strength(profile, gauge, state, Bead.AS_DEPOSITED));
    }
    return strengths;
  }

  private static JointStrength strength(
      SectionProfile profile, double gauge, int state, Bead bead) {
    if (!profile.soundness().sound()) {
      return JointStrength.withheld(state, bead, gauge, profile.soundness().note());
    }
    Optional<CrossWeldTension> middle =
        pulled(profile, gauge, state, bead, ProfileSlices.End.MIDDLE);
    boolean exact =
        profile.stations().stream()
            .map(station -> station.estimates().get(state))
            .allMatch(estimate -> estimate.low().equals(estimate.middle()));
    return new JointStrength(
        state,
        bead,
        gauge,
        middle,
        exact ? middle : pulled(profile, gauge, state, bead, ProfileSlices.End.LOW),
        exact ? middle : strongest(profile, gauge, state, bead),
        lowestYield(profile.stations(), state, Estimate::middle),
        lowestYield(profile.stations(), state, Estimate::low),
        profile
            .ofEachRun()
            .mapToDouble(run -> lowestYield(run.stations(), state, Estimate::high))
            .max()
            .orElseThrow(),
        softestInGauge(profile, gauge, state),
        "");
  }

  /** The strongest that one of the runs may be; empty if one is not predicted. */
  private static Optional<CrossWeldTension> strongest(
      SectionProfile profile, double gauge, int state, Bead bead) {
    List<Optional<CrossWeldTension>> all =
        profile
            .ofEachRun()
            .map(run -> pulled(run, gauge, state, bead, ProfileSlices.End.HIGH))
            .toList();
    return all.contains(Optional.<CrossWeldTension>empty())
        ? Optional.empty()
        : all.stream()
            .flatMap(Optional::stream)
            .max(Comparator.comparingDouble(CrossWeldTension::tensile));
  }

  private static Optional<CrossWeldTension> pulled(
      SectionProfile profile, double gauge, int state, Bead bead, ProfileSlices.End end) {
    return ProfileSlices.flush(profile, state, end, gauge)
        .map(line -> bead == Bead.FLUSH ? line : withBead(line, profile))
        .map(line -> CrossWeldTension.pull(line, TensionCoupon.over(gauge)))
        .map(pull -> cast(profile.weldCase()) ? pull.withoutElongation() : pull);
  }

  private static boolean cast(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .anyMatch(side -> side.alloy().family() == Alloy.Family.CAST_HEAT_TREATABLE);
  }

  private static SliceLine withBead(SliceLine line, SectionProfile profile) {
    return line.withReinforcement(reinforcement(profile), Zone.FUSION.label());
  }

  private static double reinforcement(SectionProfile profile) {
    double width =
        2 * profile.passes().stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow();
    return profile.weldCase().reinforcement().orElse(WeldCase.usualReinforcement(width));
  }

  private static double lowestYield(
      List<Station> stations, int state, Function<Estimate, Strength> end) {
    return stations.stream()
        .mapToDouble(station -> end.apply(station.estimates().get(state)).yield())
        .reduce(Math::min)
        .orElseThrow();
  }

  private static boolean softestInGauge(SectionProfile profile, double gauge, int state) {
    List<Station> inside =
        profile.stations().stream()
            .filter(station -> Math.abs(station.distance()) <= gauge / 2)
            .toList();
    double softest = lowestYield(profile.stations(), state, Estimate::middle);
    return !inside.isEmpty() && !(softest < AS_SOFT * lowestYield(inside, state, Estimate::middle));
  }

  private static List<Warning> warnings(
      WeldCase weldCase, List<JointStrength> strengths, JointChecks checks) {
    Stream<Warning> pulled =
        strengths.stream()
            .filter(strength -> strength.state() > 0)
            .flatMap(strength -> strength.middle().stream())
            .flatMap(pull -> pull.warnings().stream());
    return Stream.of(shape(weldCase).stream(), pulled, checks.warnings().stream())
        .flatMap(warnings -> warnings)
        .filter(warning -> !warning.code().equals(SAID_BY_THE_RUNNER_UP))
        .filter(warning -> inLine(weldCase) || !warning.code().equals(OF_FLAT_JOINTS))
        .map(JointReport::asSentence)
        .distinct()
        .toList();
  }

  /** What is pulled: of a fillet weld only the metal beside its throat, as if it lay in line. */
  public static String pulled(WeldCase weldCase) {
    return weldCase.preparation() == Preparation.FILLET
        ? "the metal across the weld, pulled in line"
        : "the joint, dressed flush, pulled";
  }

  /** Whether the two parts lie in one line. */
  private static boolean inLine(WeldCase weldCase) {
    return weldCase.joint() == Joint.BUTT || weldCase.joint() == Joint.BEAD;
  }

  private static Warning asSentence(Warning warning) {
    String text = warning.text();
    String end = text.endsWith(".") ? "" : ".";
    return new Warning(
        warning.code(), Character.toUpperCase(text.charAt(0)) + text.substring(1) + end);
  }

  private static Optional<Warning> shape(WeldCase weldCase) {
    boolean butt = inLine(weldCase);
    if (butt && weldCase.preparation() != Preparation.FILLET) {
      return Optional.empty();
    }
    return Optional.of(
        new Warning(
            "pulled-as-a-butt",
            "The joint is computed as if its two parts were pulled in line, with metal as strong as"
                + " at each distance: a fillet's throat and bending are not in it."));
  }
}
