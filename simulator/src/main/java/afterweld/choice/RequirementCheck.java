package afterweld.choice;

import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointStrength;
import afterweld.section.BothUnits;
import afterweld.section.Estimate;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.UnitSystem;
import afterweld.section.WeldPool;
import afterweld.strength.Strength;
import afterweld.thermal.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Holds a section profile against what the drawing asks, in the last state.
 *
 * <p>Yield is the proof stress of the joint over its gauge and tensile strength that of the joint,
 * both dressed flush; without a joint (or where one is not predicted) both are judged on the lowest
 * station, as hardness always is, averaged over one thickness. Met: the low end of the error band
 * is not below the asked value; the low end of a joint is the joint pulled with the low end of
 * every station. Not met: the best estimate is below it. Between, or where nothing is predicted:
 * unclear, a test coupon decides.
 *
 * <p>Service temperature: {@link MagnesiumRule}; above 100 °C strength at room temperature says
 * nothing, so the answer is unclear. Colour after anodizing: {@link ColourMatch}.
 */
public final class RequirementCheck {
  private static final double HOT_SERVICE = 273.15 + 100;
  private static final String WELD_METAL_NOT_AGED =
      " Aged without solution treatment: the weld metal is taken no stronger than as welded, since"
          + " its answer to ageing is not verified.";

  private final SectionProfile profile;
  private final Requirement requirement;
  private final UnitSystem units;
  private final Optional<JointStrength> joint;

  private RequirementCheck(
      SectionProfile profile,
      Optional<JointStrength> joint,
      Requirement requirement,
      UnitSystem units) {
    this.profile = AgedOnly.cautious(profile);
    this.joint = joint.filter(pulled -> pulled.middle().isPresent());
    this.requirement = requirement;
    this.units = units;
  }

  /** A value and the low end of its band; NaN where not predicted. */
  private record Found(double low, double middle) {}

  /** One thing asked, and how it stands. */
  private record Finding(Verdict verdict, String reason) {}

  /**
   * Judges a profile.
   *
   * @param joint the finished joint, dressed flush in the last state; where the case only ages
   *     after welding that of {@link AgedOnly#cautious}
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
      mayMelt().ifPresent(findings::add);
    }
    requirement.serviceTemperature().ifPresent(asked -> findings.add(service(asked)));
    requirement.anodizedMatch().filter(asked -> asked).ifPresent(asked -> findings.add(colour()));
    if (findings.isEmpty()) {
      return Judgement.NOTHING_ASKED;
    }
    Verdict verdict = findings.stream().map(Finding::verdict).reduce(Verdict.MET, Verdict::and);
    return new Judgement(verdict, findings.stream().map(Finding::reason).toList());
  }

  private List<Finding> strengths() {
    return Stream.of(
            strength(OutputQuantity.YIELD, requirement.yield(), Strength::yield),
            strength(OutputQuantity.TENSILE, requirement.tensile(), Strength::tensile),
            strength(OutputQuantity.HARDNESS, requirement.hardness(), Strength::hardness))
        .flatMap(Optional::stream)
        .toList();
  }

  /** A treatment that may melt the weld metal proves nothing. */
  private Optional<Finding> mayMelt() {
    boolean solution =
        profile.weldCase().afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
    return solution && WeldPool.meltingPossibleFrom450(profile.weldMetal().composition())
        ? Optional.of(
            new Finding(
                Verdict.UNCLEAR,
                "The weld metal may begin to melt in the solution furnace, and these strengths are"
                    + " those of metal that does not: unclear, not a treatment to order."))
        : Optional.empty();
  }

  private String basis() {
    if (joint.isPresent()) {
      return basisOfJoint(joint.get())
          + gaugeMissesSoftest(joint.get())
          + (AgedOnly.is(profile.weldCase().afterWeld()) ? WELD_METAL_NOT_AGED : "");
    }
    return "Judged on the lowest station, averaged over one thickness, "
        + profile.states().get(lastState())
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
        + BothUnits.length(pulled.gauge())
        + " "
        + profile.states().get(lastState())
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
    Verdict verdict = compare(found.low(), found.middle(), wanted);
    String asks = quantity.title() + ": " + beside(quantity, wanted, found.middle()) + " asked, ";
    return Optional.of(
        new Finding(
            verdict, capital(asks) + words(quantity, found, wanted) + ": " + answer(verdict)));
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

  private static Verdict compare(double low, double middle, double asked) {
    if (middle < asked) {
      return Verdict.NOT_MET;
    }
    return low >= asked ? Verdict.MET : Verdict.UNCLEAR;
  }

  private static String answer(Verdict verdict) {
    return verdict == Verdict.UNCLEAR ? "unclear, needs a test coupon." : verdict.label() + ".";
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
      String why = "unclear, strength is predicted for room temperature only; needs a test coupon.";
      return new Finding(Verdict.UNCLEAR, head + why);
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
