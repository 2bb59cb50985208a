package afterweld.choice;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointStrength;
import afterweld.section.BothUnits;
import afterweld.section.CrackTendency;
import afterweld.section.ErrorBand;
import afterweld.section.Estimate;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.UnitSystem;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Holds a section profile against what the drawing asks, in the last state.
 *
 * <p>Yield is the proof stress of the joint over its gauge and tensile strength that of the joint,
 * both dressed flush; without a joint (or where one is not predicted) both are judged on the lowest
 * station, as hardness always is, averaged over one thickness. The chance that a value is met is
 * that of a normal distribution of which the printed band holds nine values of ten; the low end of
 * a joint is the joint pulled with the low end of every station.
 *
 * <p>Service temperature: {@link MagnesiumRule}; above 100 °C strength at room temperature says
 * nothing, so the answer is open. Colour after anodizing: {@link ColourMatch}.
 */
public final class RequirementCheck {
  private static final double ROUNDING = 1e-9;
  private static final double HOT_SERVICE = 273.15 + 100;

  private final SectionProfile profile;
  private final Requirement requirement;
  private final UnitSystem units;
  private final Optional<JointStrength> joint;

  private RequirementCheck(
      SectionProfile profile,
      Optional<JointStrength> joint,
      Requirement requirement,
      UnitSystem units) {
    this.profile = profile;
    this.joint = joint.filter(pulled -> pulled.middle().isPresent());
    this.requirement = requirement;
    this.units = units;
  }

  /** A value and the low end of its band; NaN where not predicted. */
  private record Found(double low, double middle) {}

  /** One thing asked, and how it stands; a chance only where a strength is asked and predicted. */
  private record Finding(Verdict verdict, OptionalDouble chance, String reason) {
    Finding(Verdict verdict, String reason) {
      this(verdict, OptionalDouble.empty(), reason);
    }
  }

  /**
   * Judges a profile.
   *
   * @param joint the finished joint, dressed flush in the last state
   * @param units what the reasons are written in
   */
  public static Judgement judge(
      SectionProfile profile,
      Optional<JointStrength> joint,
      Requirement requirement,
      UnitSystem units) {
    return new RequirementCheck(profile, joint, requirement, units).judge();
  }

  private Judgement judge() {
    List<Finding> findings = new ArrayList<>(strengths());
    if (!findings.isEmpty()) {
      findings.add(new Finding(Verdict.MET, basis()));
      againstTreatment().ifPresent(findings::add);
      mayCrack().ifPresent(crack -> findings.add(0, crack));
    }
    requirement.serviceTemperature().ifPresent(asked -> findings.add(service(asked)));
    requirement.anodizedMatch().filter(asked -> asked).ifPresent(asked -> findings.add(colour()));
    if (findings.isEmpty()) {
      return Judgement.NOTHING_ASKED;
    }
    Verdict verdict = findings.stream().map(Finding::verdict).reduce(Verdict.MET, Verdict::and);
    OptionalDouble chance =
        findings.stream().flatMapToDouble(finding -> finding.chance().stream()).min();
    return new Judgement(verdict, chance, findings.stream().map(Finding::reason).toList());
  }

  private List<Finding> strengths() {
    return Stream.of(
            strength(OutputQuantity.YIELD, requirement.yield(), Strength::yield),
            strength(OutputQuantity.TENSILE, requirement.tensile(), Strength::tensile),
            strength(OutputQuantity.HARDNESS, requirement.hardness(), Strength::hardness))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The strength of sound metal says little where metal of this kind cracks as it freezes. */
  private Optional<Finding> mayCrack() {
    return profile.weldMetal().crackTendency() == CrackTendency.HIGH
        ? Optional.of(
            new Finding(
                Verdict.OPEN,
                "Cracking high: met only by a weld that is free of cracks; a coupon without cracks"
                    + " decides."))
        : Optional.empty();
  }

  /** A treatment that something stands against proves nothing. */
  private Optional<Finding> againstTreatment() {
    return ScheduleCheck.passes(profile.weldCase())
        ? Optional.empty()
        : Optional.of(
            new Finding(
                Verdict.OPEN,
                "Something stands against the heat treatment as it is ordered: open until that is"
                    + " put right."));
  }

  private String basis() {
    if (joint.isPresent()) {
      return basisOfJoint(joint.get()) + gaugeMissesSoftest(joint.get());
    }
    return "Judged on the lowest station, averaged over one thickness, "
        + profile.label(lastState())
        + "; the joint model is not applied, so the stronger metal inside a gauge length does not"
        + " count.";
  }

  private static String gaugeMissesSoftest(JointStrength pulled) {
    return pulled.softestInGauge()
        ? ""
        : " The softest metal lies outside the gauge: the lowest local yield decides.";
  }

  private String basisOfJoint(JointStrength pulled) {
    return "Yield and tensile strength are those of the joint, dressed flush, pulled over a gauge"
        + " of "
        + BothUnits.gauge(pulled.gauge())
        + " "
        + profile.label(lastState())
        + "; the lowest local yield is "
        + with(OutputQuantity.YIELD, pulled.lowestYield())
        + "."
        + (requirement.hardness().isPresent()
            ? " Hardness is the lowest station, averaged over one thickness."
            : "");
  }

  private Optional<Finding> strength(
      OutputQuantity quantity, OptionalDouble asked, ToDoubleFunction<Strength> value) {
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    double wanted = asked.getAsDouble();
    Found found = found(quantity, value);
    double chance = chance(found.low(), found.middle(), wanted);
    Verdict verdict = Verdict.of(chance);
    String asks = quantity.title() + ": " + beside(quantity, wanted, found.middle()) + " asked, ";
    return Optional.of(
        new Finding(
            verdict,
            Double.isNaN(chance) ? OptionalDouble.empty() : OptionalDouble.of(chance),
            capital(asks) + words(quantity, found, wanted) + ": " + answer(verdict)));
  }

  private String words(OutputQuantity quantity, Found found, double wanted) {
    if (Double.isNaN(found.middle())) {
      return joint.map(JointStrength::proofNote).orElse("not predicted at every station");
    }
    return beside(quantity, found.middle(), wanted)
        + " predicted, low end "
        + beside(quantity, found.low(), wanted);
  }

  /** A value so that it can be told from the one it is held against. */
  private String beside(OutputQuantity quantity, double si, double other) {
    return quantity.textBeside(units, si, other) + " " + quantity.unit(units);
  }

  private Found found(OutputQuantity quantity, ToDoubleFunction<Strength> value) {
    if (joint.isPresent() && quantity != OutputQuantity.HARDNESS) {
      return quantity == OutputQuantity.TENSILE
          ? new Found(tensile(joint.get().low()), tensile(joint.get().middle()))
          : new Found(
              joint.get().decidingYieldLow().orElse(Double.NaN),
              joint.get().decidingYield().orElse(Double.NaN));
    }
    LowestAverage lowest = new LowestAverage(profile, lastState());
    return new Found(lowest.of(Estimate::low, value), lowest.of(Estimate::middle, value));
  }

  private static double tensile(Optional<CrossWeldTension> pulled) {
    return pulled.map(CrossWeldTension::tensile).orElse(Double.NaN);
  }

  private static double chance(double low, double middle, double asked) {
    if (Double.isNaN(low) || Double.isNaN(middle)) {
      return Double.NaN;
    }
    double deviation = (middle - low) / ErrorBand.DEVIATIONS;
    if (deviation <= 0) {
      return middle >= asked ? 1 : 0;
    }
    double chance =
        new NormalDistribution(0, 1).cumulativeProbability((middle - asked) / deviation);
    return low * (1 + ROUNDING) >= asked ? Math.max(Verdict.MET.from(), chance) : chance;
  }

  private static String answer(Verdict verdict) {
    return verdict.met().isPresent()
        ? verdict.label() + "."
        : verdict.label() + ", a coupon decides.";
  }

  private Finding service(double asked) {
    String head = "Service at " + with(OutputQuantity.PEAK_TEMPERATURE, asked) + ": ";
    String limit = with(OutputQuantity.PEAK_TEMPERATURE, MagnesiumRule.WARM_SERVICE);
    if (asked <= MagnesiumRule.WARM_SERVICE) {
      return new Finding(Verdict.MET, head + "met, not above " + limit + ".");
    }
    if (MagnesiumRule.anyRich(profile)) {
      String why = "not met, metal with more than 3 % Mg is not for service above ";
      return new Finding(Verdict.NOT_MET, head + why + limit + ".");
    }
    if (asked > HOT_SERVICE) {
      String why = "open, strength is predicted for room temperature only; needs a test coupon.";
      return new Finding(Verdict.OPEN, head + why);
    }
    return new Finding(Verdict.MET, head + "met, no metal of the joint has more than 3 % Mg.");
  }

  private Finding colour() {
    ColourMatch match = ColourMatch.of(profile);
    return new Finding(
        match.verdict(),
        "Colour after anodizing: " + match.verdict().label() + ", " + match.text());
  }

  private int lastState() {
    return profile.states().size() - 1;
  }

  private String with(OutputQuantity quantity, double si) {
    return quantity.text(units, si) + " " + quantity.unit(units);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
