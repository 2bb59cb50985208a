package afterweld.choice;

import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Remark;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.choice.answer.Verdict;
import afterweld.choice.filler.ColourMatch;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.quantity.Asked;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.Estimate;
import afterweld.section.SectionProfile;
import afterweld.section.soundness.Soundness;
import afterweld.weldmetal.CrackTendency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Holds a joint against what the drawing asks, in its last state: the one rule of judging, which
 * routes, fillers, the furnace sheet and every other command only pass on.
 *
 * <p>Yield is the proof stress of the joint over its gauge and tensile strength that of the joint,
 * both dressed flush; hardness is that of the softest place. Either end of the band of a joint is
 * the joint pulled with that end of every station. The chance of a joint is the lowest over the
 * strengths asked: they share one error of the model. Service temperature ({@link ServiceRule}) and
 * colour ({@link ColourMatch}) can only make the verdict worse. A weld that is not sound meets
 * nothing, not even a case that requires nothing. The throat of a fillet must carry what is asked
 * beside it ({@link ThroatRule}), and a tube must not yield at its pressure ({@link PressureRule}).
 * Nothing is claimed of the strengths while something stands against the case ({@link
 * CaseObjections}), unless they fall short anyhow.
 */
public final class RequirementCheck {
  private static final String CRACKING = "cracking";
  private static final String NO_HARDNESS = "not predicted at every station";
  private static final String NO_LOW_PROOF =
      "a proof stress is predicted, but at the low end of its band the joint reaches its maximum"
          + " before it, so that no chance can be given";

  private final SectionProfile profile;
  private final JointStrength joint;
  private final Requirement requirement;
  private final String against;
  private final Optional<StrengthFinding> throat;
  private final List<StrengthFinding> strengths;

  private RequirementCheck(
      SectionProfile profile,
      JointStrength joint,
      Requirement requirement,
      String against,
      Optional<StrengthFinding> throat) {
    this.profile = profile;
    this.joint = joint;
    this.requirement = requirement;
    this.against = against;
    this.throat = throat.filter(found -> against.isEmpty());
    this.strengths =
        Stream.of(
                requirement.asked(OutputQuantity.YIELD),
                requirement.asked(OutputQuantity.TENSILE),
                requirement.asked(OutputQuantity.HARDNESS))
            .flatMap(Optional::stream)
            .map(this::finding)
            .toList();
  }

  /**
   * Holds a joint against a requirement.
   *
   * @param profile the section
   * @param joint the finished joint, dressed flush in the last state of that section
   */
  public static RequirementCheck of(
      SectionProfile profile, JointStrength joint, Requirement requirement) {
    List<Objection> serious = CaseObjections.serious(profile.weldCase(), requirement.strengths());
    String against = CaseObjections.subjects(serious);
    Optional<StrengthFinding> throat = ThroatRule.finding(profile, requirement);
    return new RequirementCheck(profile, joint, requirement, against, throat);
  }

  /**
   * The same of a joint that came out a little otherwise than its case is written: what stands
   * against a case is a matter of how it is written.
   *
   * @param against what stands against the case as written, {@link #against}
   * @param throat what the throat of that joint carries, {@link ThroatRule#finding}
   */
  public static RequirementCheck of(
      SectionProfile profile,
      JointStrength joint,
      Requirement requirement,
      String against,
      Optional<StrengthFinding> throat) {
    return new RequirementCheck(profile, joint, requirement, against, throat);
  }

  /** What stands against the case, beside remarks. */
  List<Objection> objections() {
    return CaseObjections.serious(profile.weldCase(), requirement);
  }

  /**
   * What nothing is claimed of the strengths for, as a sentence names it; empty if they are
   * claimed. A filler that is wrong for the colour or for warm service alone leaves them be.
   */
  public String against() {
    return against;
  }

  /** The joint that is judged. */
  JointStrength joint() {
    return joint;
  }

  /** Every strength asked, with what is predicted of it: yield, tensile strength, hardness. */
  public List<StrengthFinding> strengths() {
    return strengths;
  }

  /** Chance that all strengths asked are met, 0 to 1; empty if none is asked or one unknown. */
  public OptionalDouble chance() {
    return strengths.stream().allMatch(StrengthFinding::predicted)
        ? carrying().flatMapToDouble(found -> found.chance().stream()).min()
        : OptionalDouble.empty();
  }

  /** The strengths of the metal, and of the throat where it is judged. */
  private Stream<StrengthFinding> carrying() {
    return Stream.concat(strengths.stream(), throat.stream());
  }

  /** Smallest {@link StrengthFinding#margin}; 1 where no strength is asked. */
  double margin(double deviations) {
    return carrying().mapToDouble(found -> found.margin(deviations)).min().orElse(1);
  }

  /** Whether the strengths asked are met, whatever else is asked. */
  public boolean meetsStrengths() {
    return strengthVerdict() == Verdict.MET;
  }

  /** What keeps it from being met whatever its strength, a few words each. */
  public List<String> beyondStrength() {
    Stream<String> lowering =
        remarks().stream().filter(remark -> remark.verdict() != Verdict.MET).map(Remark::head);
    return Stream.concat(Stream.of(against).filter(said -> !said.isEmpty()), lowering).toList();
  }

  /** How the strengths alone stand; met where none is asked, never where the weld is not sound. */
  Verdict strengthVerdict() {
    return profile.soundness().notSound()
        ? Verdict.NOT_MET
        : strengths.stream().map(StrengthFinding::verdict).reduce(Verdict.MET, Verdict::and);
  }

  /**
   * All that is asked, taken together.
   *
   * @param units what the reasons are written in
   */
  public Judgement judgement(UnitSystem units) {
    Soundness soundness = profile.soundness();
    List<Remark> remarks = remarks();
    if (soundness.notSound()) {
      return new Judgement(
          Verdict.NOT_MET,
          OptionalDouble.empty(),
          List.of("Not met, since the joint is " + soundness.note()));
    }
    if (strengths.isEmpty() && remarks.isEmpty()) {
      return Judgement.NOTHING_ASKED;
    }
    List<String> reasons =
        new ArrayList<>(strengths.stream().map(found -> found.sentence(units)).toList());
    if (soundness.sound() && strengths.stream().anyMatch(this::says)) {
      reasons.add(basis(units));
    }
    remarks.forEach(remark -> reasons.add(remark.sentence()));
    Verdict verdict = remarks.stream().map(Remark::verdict).reduce(strengthVerdict(), Verdict::and);
    boolean beside = remarks.stream().anyMatch(this::besideTheStrength);
    return new Judgement(verdict, chance(), reasons, beside);
  }

  /** A throat that is judged has its part in the chance. */
  private boolean besideTheStrength(Remark remark) {
    return remark.verdict() != Verdict.MET
        && (throat.isEmpty() || !throat().equals(Optional.of(remark)));
  }

  /** All that may lower a verdict beside the strengths, by its name among a route's constraints. */
  Map<String, Remark> named() {
    Map<String, Remark> named = new LinkedHashMap<>();
    mayCrack().ifPresent(remark -> named.put(CRACKING, remark));
    throat().ifPresent(remark -> named.put("fillet", remark));
    PressureRule.of(profile, requirement).ifPresent(remark -> named.put("pressure", remark));
    service().ifPresent(remark -> named.put("service temperature", remark));
    colour().ifPresent(remark -> named.put("colour after anodizing", remark));
    return named;
  }

  /** What is asked or must be said: nobody who asks for no strength is told of cracking. */
  private List<Remark> remarks() {
    Map<String, Remark> named = named();
    if (strengths.isEmpty()) {
      named.remove(CRACKING);
    }
    return List.copyOf(named.values());
  }

  /** The answer on the service temperature, if one is asked. */
  private Optional<Remark> service() {
    return requirement.serviceTemperature().stream()
        .mapToObj(asked -> ServiceRule.of(profile, asked))
        .findFirst();
  }

  /** The answer on the colour after anodizing, if a match is asked. */
  private Optional<Remark> colour() {
    return requirement
        .anodizedMatch()
        .filter(asked -> asked)
        .map(asked -> ColourMatch.of(profile))
        .map(match -> new Remark("Colour after anodizing", match.verdict(), match.text()));
  }

  /**
   * Whether the throat of a fillet carries the strengths asked, where it lowers the verdict; empty
   * where no strength is claimed.
   */
  private Optional<Remark> throat() {
    return against.isEmpty() ? ThroatRule.of(profile, requirement, throat) : Optional.empty();
  }

  /** The strength of sound metal says little where metal of this kind cracks as it freezes. */
  private Optional<Remark> mayCrack() {
    return profile.weldMetal().crackTendency() == CrackTendency.HIGH
        ? Optional.of(
            new Remark(
                "Cracking high",
                Verdict.OPEN,
                "met only by a weld that is free of cracks; a coupon without cracks decides."))
        : Optional.empty();
  }

  /** Whether a finding speaks of the joint, and not of what stands against it. */
  private boolean says(StrengthFinding finding) {
    return against.isEmpty() || finding.predicted();
  }

  private String basis(UnitSystem units) {
    String stands =
        "Yield and tensile strength are those of "
            + JointReport.pulled(profile.weldCase())
            + " over a gauge of "
            + BothUnits.gauge(joint.gauge())
            + " "
            + profile.label(lastState());
    return stands
        + lowestYield(units)
        + (requirement.hardness().isPresent() ? " Hardness is that of the softest place." : "")
        + (joint.decidingNote().isEmpty() ? "" : " " + joint.decidingNote());
  }

  private String lowestYield(UnitSystem units) {
    OutputQuantity yield = OutputQuantity.YIELD;
    return Double.isFinite(joint.lowestYield())
        ? "; the lowest local yield is "
            + yield.text(units, joint.lowestYield())
            + " "
            + yield.unit(units)
            + "."
        : ".";
  }

  /** What stands against a case keeps a strength from being claimed, never from falling short. */
  private StrengthFinding finding(Asked asked) {
    StrengthFinding predicted = predicted(asked);
    if (against.isEmpty()) {
      return predicted;
    }
    return predicted.verdict().compareTo(Verdict.OPEN) > 0
        ? predicted.unclaimed()
        : StrengthFinding.unclaimed(asked, against);
  }

  private StrengthFinding predicted(Asked asked) {
    return switch (asked.quantity()) {
      case YIELD -> proof(asked);
      case TENSILE -> tensile(asked);
      default -> hardness(asked);
    };
  }

  private StrengthFinding proof(Asked asked) {
    boolean onlyBetter = joint.decidingYield().isPresent() && joint.decidingYieldLow().isEmpty();
    return finding(
        asked,
        joint.decidingYieldLow(),
        joint.decidingYield(),
        joint.decidingYieldHigh(),
        onlyBetter ? NO_LOW_PROOF : joint.proofNote());
  }

  private StrengthFinding tensile(Asked asked) {
    return finding(
        asked, tensile(joint.low()), tensile(joint.middle()), tensile(joint.high()), joint.note());
  }

  private static StrengthFinding finding(
      Asked asked, OptionalDouble low, OptionalDouble middle, OptionalDouble high, String unknown) {
    return new StrengthFinding(
        asked,
        low.orElse(Double.NaN),
        middle.orElse(Double.NaN),
        high.orElse(Double.NaN),
        unknown,
        true);
  }

  private StrengthFinding hardness(Asked asked) {
    return new StrengthFinding(
        asked,
        lowestHardness(section -> LowestHardness.of(section, Estimate::low)),
        lowestHardness(section -> LowestHardness.of(section, Estimate::middle)),
        lowestHardness(LowestHardness::high),
        joint.withheld().isEmpty() ? NO_HARDNESS : joint.note(),
        true);
  }

  private double lowestHardness(ToDoubleFunction<SectionProfile> end) {
    return joint.withheld().isEmpty() ? end.applyAsDouble(profile) : Double.NaN;
  }

  private static OptionalDouble tensile(Optional<CrossWeldTension> pulled) {
    return pulled.map(pull -> OptionalDouble.of(pull.tensile())).orElse(OptionalDouble.empty());
  }

  private int lastState() {
    return profile.states().size() - 1;
  }
}
