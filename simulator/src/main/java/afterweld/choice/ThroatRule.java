package afterweld.choice;

import afterweld.choice.answer.Remark;
import afterweld.choice.answer.Requirement;
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
 * is a characteristic one: a mean is taken as it over {@link FilletWeld#PREDICTED_SHARE}.
 *
 * <p>Where the mean carries what is asked, a coupon decides, and so it does where one fillet on
 * each side of a plate would and a case does not say whether there is another. One on one side only
 * bends about its root: open, however much its throat carries; a tube has nowhere to bend to. A
 * fillet that is not stated is not judged: open. Neither is one loaded along: the pull across says
 * nothing of it.
 */
final class ThroatRule {
  private static final String HEAD = "Fillet";
  private static final String NOT_STATED =
      "these strengths are those of the metal beside it, pulled in line; state its leg, length and"
          + " load as 'fillet' to have its throat judged.";
  private static final String ALONG =
      "loaded along the weld: hold your load against what its throat carries; these strengths, pulled"
          + " across, do not tell.";
  private static final String ONE_SIDED =
      "on one side only and pulled across it bends about its root, which is not computed";
  private static final String STATE_BOTH =
      "; where the other side has one like it, state 'sides: both' in 'fillet'.";
  private static final String NOT_KNOWN =
      "no load on its throat is computed, and these strengths are those of the metal beside it,"
          + " pulled in line.";

  private ThroatRule() {}

  /** What it does to the verdict; empty where it leaves it be. */
  static Optional<Remark> of(SectionProfile profile, Requirement requirement) {
    Optional<Asked> asked =
        Stream.of(OutputQuantity.YIELD, OutputQuantity.TENSILE)
            .flatMap(quantity -> requirement.asked(quantity).stream())
            .max(Comparator.comparingDouble(Asked::value));
    if (asked.isEmpty() || profile.weldCase().preparation() != Preparation.FILLET) {
      return Optional.empty();
    }
    if (requirement.fillet().isEmpty()) {
      return Optional.of(open(NOT_STATED));
    }
    Fillet fillet = requirement.fillet().get();
    return fillet.load() == FilletLoad.ALONG
        ? Optional.of(open(ALONG))
        : JointChecks.fillet(profile, fillet)
            .map(weld -> held(profile, fillet, weld, asked.get()))
            .orElseGet(() -> Optional.of(open(NOT_KNOWN)));
  }

  private static Remark open(String why) {
    return new Remark(HEAD, Verdict.OPEN, why);
  }

  private static Optional<Remark> held(
      SectionProfile profile, Fillet fillet, FilletWeld weld, Asked asked) {
    WeldCase weldCase = profile.weldCase();
    double thinner = Math.min(weldCase.left().thickness(), weldCase.right().thickness());
    double one = weld.force() / (thinner * fillet.length());
    boolean round = weldCase.joint() == Joint.SOCKET || weldCase.ring().isPresent();
    boolean both = !round && fillet.sides().equals(Optional.of(FilletSides.BOTH));
    boolean perhapsBoth = !round && fillet.sides().isEmpty();
    if ((both ? 2 : 1) * one < asked.value()) {
      return Optional.of(falls(one, both, perhapsBoth, asked));
    }
    return round || both
        ? Optional.empty()
        : Optional.of(open(ONE_SIDED + (perhapsBoth ? STATE_BOTH : ".")));
  }

  private static Remark falls(double one, boolean both, boolean perhapsBoth, Asked asked) {
    double most = (both || perhapsBoth ? 2 : 1) * one / FilletWeld.PREDICTED_SHARE;
    return new Remark(
        HEAD,
        most >= asked.value() ? Verdict.OPEN : Verdict.NOT_MET,
        "one of this size carries "
            + BothUnits.stress(one)
            + " of the thinner part's section, pulled across"
            + (both || perhapsBoth ? ", one on each side " + BothUnits.stress(2 * one) : "")
            + "; "
            + asked.inBothUnits()
            + " is asked.");
  }
}
