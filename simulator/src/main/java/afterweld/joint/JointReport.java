package afterweld.joint;

import afterweld.joint.JointStrength.Bead;
import afterweld.section.Joint;
import afterweld.section.Preparation;
import afterweld.section.SectionProfile;
import afterweld.section.Warning;
import afterweld.section.WeldCase;
import afterweld.section.Zone;
import afterweld.thermal.PassHeat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the joint of a profile carries in every state, with the bead dressed flush and as deposited,
 * what the design codes give for the same weld, and what must be known about both.
 *
 * @param strengths flush and as deposited, state by state
 * @param codes values of the design codes, never mixed with the predicted ones
 * @param checks of the fillet and the tube, if the case has them
 * @param member with the weld along it, if the case has one
 * @param warnings limits of what the numbers mean
 */
public record JointReport(
    List<JointStrength> strengths,
    List<DesignCodeValue> codes,
    JointChecks checks,
    Optional<MemberReport> member,
    List<Warning> warnings) {

  /** What stands beside the code values. */
  public static final String CODES_NOTE =
      "Code values are characteristic minima, predicted values are means: do not put one in the"
          + " place of the other. Which value governs when the joint is heat treated after welding is"
          + " left to the engineer and the code.";

  /** The warning of a tie: a report names both zones anyway. */
  private static final String SAID_BY_THE_RUNNER_UP = "failure-undecided";

  /** Copies the lists. */
  public JointReport {
    strengths = List.copyOf(strengths);
    codes = List.copyOf(codes);
    warnings = List.copyOf(warnings);
  }

  /** The report on a profile. */
  public static JointReport of(SectionProfile profile, JointSettings settings) {
    List<JointStrength> strengths = new ArrayList<>();
    for (int state = 0; state < profile.states().size(); state++) {
      strengths.add(strength(profile, settings, state, Bead.FLUSH));
      strengths.add(strength(profile, settings, state, Bead.AS_DEPOSITED));
    }
    JointChecks checks = JointChecks.of(profile, settings);
    List<DesignCodeValue> codes = DesignCodes.of(profile.weldCase());
    Optional<MemberReport> member =
        settings.member().map(asked -> MemberReport.of(profile, asked.width(), codes));
    List<Warning> warnings =
        Stream.concat(
                warnings(profile.weldCase(), strengths, checks).stream(),
                member.stream().flatMap(report -> report.warnings().stream()))
            .toList();
    return new JointReport(strengths, codes, checks, member, warnings);
  }

  /** The joint dressed flush in the last state: what a requirement is judged on. */
  public JointStrength finished() {
    return strengths.get(strengths.size() - 2);
  }

  private static JointStrength strength(
      SectionProfile profile, JointSettings settings, int state, Bead bead) {
    return new JointStrength(
        state,
        bead,
        settings.gauge(),
        pulled(profile, settings, state, bead, ProfileSlices.End.MIDDLE),
        pulled(profile, settings, state, bead, ProfileSlices.End.LOW),
        lowestYield(profile, state));
  }

  private static Optional<CrossWeldTension> pulled(
      SectionProfile profile, JointSettings settings, int state, Bead bead, ProfileSlices.End end) {
    return ProfileSlices.flush(profile, state, end, settings.gauge())
        .map(line -> bead == Bead.FLUSH ? line : withBead(line, profile))
        .map(line -> CrossWeldTension.pull(line, TensionCoupon.over(settings.gauge())));
  }

  private static SliceLine withBead(SliceLine line, SectionProfile profile) {
    return line.withReinforcement(reinforcement(profile), Zone.FUSION.label());
  }

  private static double reinforcement(SectionProfile profile) {
    double width =
        2 * profile.passes().stream().mapToDouble(PassHeat::fusionHalfWidth).max().orElseThrow();
    return profile.weldCase().reinforcement().orElse(WeldCase.usualReinforcement(width));
  }

  private static double lowestYield(SectionProfile profile, int state) {
    return profile.stations().stream()
        .mapToDouble(station -> station.estimates().get(state).middle().yield())
        .reduce(Math::min)
        .orElseThrow();
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
        .map(JointReport::asSentence)
        .distinct()
        .toList();
  }

  private static Warning asSentence(Warning warning) {
    String text = warning.text();
    String end = text.endsWith(".") ? "" : ".";
    return new Warning(
        warning.code(), Character.toUpperCase(text.charAt(0)) + text.substring(1) + end);
  }

  private static Optional<Warning> shape(WeldCase weldCase) {
    boolean butt = weldCase.joint() == Joint.BUTT || weldCase.joint() == Joint.BEAD;
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
