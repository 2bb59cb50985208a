package afterweld.cli.profile;

import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.DesignCodeValue;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.MemberReport;
import afterweld.joint.SliceLine;
import afterweld.joint.SoftenedReach;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Zone;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The joint for a person: what it carries, what the codes give, what its fillet and tube say. */
final class JointTables {
  private static final String NO_ELONGATION = "no elongation is claimed of a casting";
  private final SectionProfile profile;
  private final JointReport joint;
  private final UnitSystem units;

  JointTables(SectionProfile profile, JointReport joint, UnitSystem units) {
    this.profile = profile;
    this.joint = joint;
    this.units = units;
  }

  /** A sentence for each state and bead after welding. */
  String strengths() {
    if (!profile.soundness().sound()) {
      return Paragraph.of(
          "No strength is given: the joint is " + profile.soundness().state().label() + ".");
    }
    return joint.strengths().stream()
        .filter(strength -> strength.state() > 0)
        .map(strength -> Paragraph.hanging("- ", sentence(strength)))
        .collect(Collectors.joining());
  }

  private String sentence(JointStrength strength) {
    String head = profile.label(strength.state()) + ", " + strength.bead().label() + ": ";
    return strength
        .middle()
        .map(pull -> head + sentence(strength, pull))
        .orElse(head + JointStrength.NOT_PREDICTED);
  }

  private String sentence(JointStrength strength, CrossWeldTension pull) {
    String proof =
        strength.proof().isPresent() ? "proof " + proofs(strength) : strength.proofNote();
    return proof
        + ", tensile "
        + stress(strength.tensile())
        + ", "
        + efficiency(pull)
        + "; fails in the "
        + strength.failsIn().stream()
            .map(JointTables::metal)
            .collect(Collectors.joining(" or the "))
        + "; "
        + pull.elongation().map(JointTables::elongation).orElse(NO_ELONGATION);
  }

  /** The proof stress over the gauge that the reader's units ask for, then over the other. */
  private String proofs(JointStrength strength) {
    return joint
        .overTwoInches(strength)
        .map(
            other ->
                units == UnitSystem.US
                    ? proof(other, "2 in") + " (" + proof(strength, "50 mm") + ")"
                    : proof(strength, "50 mm") + " (" + proof(other, "2 in") + ")")
        .orElseGet(() -> proof(strength, BothUnits.gauge(strength.gauge())));
  }

  private String proof(JointStrength strength, String gauge) {
    return stress(strength.proof()) + " over " + gauge;
  }

  private static String metal(String zone) {
    if (zone.equals(Zone.FUSION.label())) {
      return "weld metal";
    }
    return zone.equals(Zone.BASE.label()) ? "base metal" : zone + " zone";
  }

  private String stress(OptionalDouble pascal) {
    return OutputQuantity.YIELD.text(units, pascal.orElse(Double.NaN)) + " " + units.stressUnit();
  }

  private static String efficiency(CrossWeldTension pull) {
    long left = Math.round(100 * pull.tensileEfficiency().left());
    long right = Math.round(100 * pull.tensileEfficiency().right());
    return left == right
        ? left + " % of the base"
        : left + " % of the load of the left base, " + right + " % of the right";
  }

  private static String elongation(SliceLine.Band band) {
    return String.format(
        Locale.ROOT, "elongation %.0f to %.0f %%", 100 * band.low(), 100 * band.high());
  }

  /** What the codes give, a line each, and what to make of it. */
  String codes() {
    String lines =
        joint.codes().stream()
            .map(value -> Paragraph.hanging("- ", sentence(value)))
            .collect(Collectors.joining());
    return lines
        + SoftenedReach.of(profile, joint.codes()).stream()
            .map(reach -> Paragraph.of(reach.sentence()))
            .collect(Collectors.joining())
        + Paragraph.of(joint.codesNote());
  }

  private String sentence(DesignCodeValue value) {
    return value.item() + ": " + value.text(units) + " (" + value.status() + ")";
  }

  /** The member with the weld along it: predicted forces and the codes', state by state. */
  String member() {
    return joint.member().map(this::member).orElse("");
  }

  private String member(MemberReport member) {
    boolean metric = units == UnitSystem.METRIC;
    String force = metric ? "kN" : "kip";
    TextTable table =
        new TextTable(
            "in " + force,
            " proof*",
            " greatest*",
            " b_eq " + units.lengthUnit(),
            " EN",
            " EN/1.10",
            " US weighted");
    member.states().forEach(state -> table.row(cells(member, state)));
    return Paragraph.of("Plate " + length(member.width()) + " wide, pulled along the weld.")
        + table.text()
        + Paragraph.hanging("* ", MemberReport.NOTE)
        + Paragraph.of(
            "b_eq: width each side of the weld over which the lowest proof would do the same harm"
                + member
                    .codes()
                    .map(codes -> "; EN counts " + length(codes.reach()) + " each side.")
                    .orElse("."));
  }

  private String[] cells(MemberReport member, MemberReport.State state) {
    Optional<MemberReport.Codes> codes = member.codesFor(state);
    return new String[] {
      profile.label(state.state()),
      forceFigure(state.proofForce()),
      forceFigure(state.greatestForce()),
      OutputQuantity.DISTANCE.text(units, state.equivalentReach()),
      codes.map(code -> forceFigure(code.en())).orElse("–"),
      codes.map(code -> forceFigure(code.enDesign())).orElse("–"),
      codes.map(code -> forceFigure(code.us())).orElse("–")
    };
  }

  private String forceFigure(double newton) {
    return force(newton).split(" ", -1)[0];
  }

  private String length(double metres) {
    return OutputQuantity.DISTANCE.text(units, metres) + " " + units.lengthUnit();
  }

  private String force(double newton) {
    return String.format(Locale.ROOT, "%.1f %s", units.force(newton), units.forceUnit());
  }
}
