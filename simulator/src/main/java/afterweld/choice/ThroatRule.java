package afterweld.choice;

import afterweld.choice.answer.Remark;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.StrengthFinding;
import afterweld.choice.answer.Verdict;
import afterweld.joint.FilletWeld;
import afterweld.joint.JointChecks;
import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.FilletSides;
import afterweld.quantity.Asked;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether a fillet carries what is asked of the parts that it joins. The strengths of a section are
 * those of metal pulled in line; a fillet pulled across fails in its throat or beside its leg, at
 * the force of {@link FilletWeld} over the section of the thinner part along its length. That force
 * is a characteristic one, which nineteen of twenty carry: the low end of a band whose middle, the
 * mean, is taken as it over {@link FilletWeld#PREDICTED_SHARE}. So the fillet has a chance, as
 * every strength has.
 *
 * <p>Where one fillet on each side of a plate would carry what is asked and a case does not say
 * whether there is another, a coupon decides. One on one side only bends about its root: open,
 * however much its throat carries; a tube has nowhere to bend to. A fillet that is not stated is
 * not judged: open. Neither is one loaded along, of which the pull across says nothing, nor one
 * beside a groove weld.
 */
public final class ThroatRule {
  private static final String HEAD = "Fillet";
  private static final String NOT_STATED =
      "these strengths are those of the metal beside it, pulled in line; state its leg, length and"
          + " load as 'fillet' to have its throat judged.";
  private static final String ALONG =
      "loaded along the weld: hold your load against what its throat carries; these strengths, pulled"
          + " across, do not tell.";
  private static final String ALONG_NOT_KNOWN =
      "loaded along the weld, and no load on its throat is computed for this weld metal on this base:"
          + " these strengths, pulled across, do not tell.";
  private static final String ONE_SIDED =
      "on one side only and pulled across it bends about its root, which is not computed";
  private static final String STATE_BOTH =
      "; where the other side has one like it, state 'sides: both' in 'fillet'.";
  private static final String BESIDE_A_GROOVE =
      "how much of the pull it takes and how much the groove weld beside it is not computed.";
  private static final String NOT_KNOWN =
      "no load on its throat is computed, and these strengths are those of the metal beside it,"
          + " pulled in line.";

  private ThroatRule() {}

  /**
   * The stress in the thinner part that the throat carries, with its band, where it can be judged:
   * a stated fillet pulled across, round a tube or on both sides.
   */
  public static Optional<StrengthFinding> finding(SectionProfile profile, Requirement requirement) {
    boolean judged =
        requirement
            .fillet()
            .filter(fillet -> isFillet(profile) && fillet.load() == FilletLoad.ACROSS)
            .filter(fillet -> profile.weldCase().ofTubes() || both(profile, fillet))
            .isPresent();
    return judged
        ? asked(profile, requirement).flatMap(one -> finding(profile, requirement, one))
        : Optional.empty();
  }

  private static Optional<StrengthFinding> finding(
      SectionProfile profile, Requirement requirement, Asked asked) {
    Fillet fillet = requirement.fillet().orElseThrow();
    return JointChecks.fillet(profile, fillet)
        .map(weld -> (both(profile, fillet) ? 2 : 1) * stress(profile, fillet, weld))
        .map(
            low -> {
              double mean = low / FilletWeld.PREDICTED_SHARE;
              return new StrengthFinding(asked, low, mean, 2 * mean - low, "", true);
            });
  }

  /** What it does to the verdict; empty where there is no fillet or no strength is asked. */
  static Optional<Remark> of(
      SectionProfile profile, Requirement requirement, Optional<StrengthFinding> throat) {
    return asked(profile, requirement)
        .map(
            asked ->
                throat
                    .map(found -> judged(profile, requirement, found))
                    .orElseGet(() -> notJudged(profile, requirement, asked)));
  }

  private static Optional<Asked> asked(SectionProfile profile, Requirement requirement) {
    return Stream.of(OutputQuantity.YIELD, OutputQuantity.TENSILE)
        .filter(quantity -> isFillet(profile) || besideAGroove(profile, requirement))
        .flatMap(quantity -> requirement.asked(quantity).stream())
        .max(Comparator.comparingDouble(Asked::value));
  }

  private static Remark judged(
      SectionProfile profile, Requirement requirement, StrengthFinding found) {
    boolean both = both(profile, requirement.fillet().orElseThrow());
    return new Remark(
        HEAD,
        found.verdict(),
        carries((both ? 0.5 : 1) * found.low(), both, found.asked()) + found.chanceInBrackets());
  }

  private static Remark notJudged(SectionProfile profile, Requirement requirement, Asked asked) {
    if (requirement.fillet().isEmpty()) {
      return open(NOT_STATED);
    }
    if (!isFillet(profile)) {
      return open(BESIDE_A_GROOVE);
    }
    Fillet fillet = requirement.fillet().get();
    boolean along = fillet.load() == FilletLoad.ALONG;
    return JointChecks.fillet(profile, fillet)
        .map(weld -> along ? open(ALONG) : oneSided(fillet, stress(profile, fillet, weld), asked))
        .orElseGet(() -> open(along ? ALONG_NOT_KNOWN : NOT_KNOWN));
  }

  /** Stress in the thinner part at the force of one fillet, Pa. */
  private static double stress(SectionProfile profile, Fillet fillet, FilletWeld weld) {
    WeldCase weldCase = profile.weldCase();
    double thinner = Math.min(weldCase.left().thickness(), weldCase.right().thickness());
    return weld.force() / (thinner * fillet.length());
  }

  private static boolean isFillet(SectionProfile profile) {
    return profile.weldCase().preparation() == Preparation.FILLET;
  }

  /** A fillet that a case states on a joint that it prepares as a groove. */
  private static boolean besideAGroove(SectionProfile profile, Requirement requirement) {
    Joint joint = profile.weldCase().joint();
    return requirement.fillet().isPresent() && joint != Joint.BUTT && joint != Joint.BEAD;
  }

  private static boolean both(SectionProfile profile, Fillet fillet) {
    return !profile.weldCase().ofTubes() && fillet.sides().equals(Optional.of(FilletSides.BOTH));
  }

  private static Remark open(String why) {
    return new Remark(HEAD, Verdict.OPEN, why);
  }

  /** Of one that has, or may have, no other like it on the other side of the plate. */
  private static Remark oneSided(Fillet fillet, double one, Asked asked) {
    boolean perhapsBoth = fillet.sides().isEmpty();
    if (one >= asked.value()) {
      return open(ONE_SIDED + (perhapsBoth ? STATE_BOTH : "."));
    }
    double most = (perhapsBoth ? 2 : 1) * one / FilletWeld.PREDICTED_SHARE;
    return new Remark(
        HEAD,
        most >= asked.value() ? Verdict.OPEN : Verdict.NOT_MET,
        carries(one, perhapsBoth, asked) + ".");
  }

  private static String carries(double one, boolean alsoTwo, Asked asked) {
    return "one of this size carries "
        + BothUnits.stress(one)
        + " of the thinner part's section, pulled across"
        + (alsoTwo ? ", one on each side " + BothUnits.stress(2 * one) : "")
        + "; "
        + asked.inBothUnits()
        + " is asked";
  }
}
