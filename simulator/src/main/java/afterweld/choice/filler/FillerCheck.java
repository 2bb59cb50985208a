package afterweld.choice.filler;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Subject;
import afterweld.choice.answer.Requirement;
import afterweld.choice.answer.Verdict;
import afterweld.material.Composition;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.CrackTendency;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What rules a filler, or a weld without one, out for what a case does with the weld and requires
 * of it: the rule by which the comparison of fillers allows one, and the objection that stands
 * before every other answer where it is the case's own. Sources: {@link UsualFillers}, {@link
 * MagnesiumRule}, {@link ColourMatch}, {@link WithoutFiller}.
 */
public final class FillerCheck {
  private FillerCheck() {}

  /**
   * What speaks against a filler, a sentence each; empty if nothing does.
   *
   * @param metal weld metal at the dilution of the case
   */
  static List<String> against(
      WeldCase weld,
      UsualFillers usual,
      FillerPurpose purpose,
      FillerMetal filler,
      Composition metal) {
    if (!filler.none()) {
      List<String> byGuides = usual.against(filler, purpose);
      PoolMetals pool = PoolMetals.of(weld).with(filler.composition());
      return byGuides.isEmpty() && BrittleMix.forms(pool)
          ? List.of(BrittleMix.reason(pool))
          : byGuides;
    }
    List<String> against = new ArrayList<>(WithoutFiller.against(weld, CrackTendency.of(metal)));
    ColourMatch colour = ColourMatch.of(weld, metal, filler);
    if (purpose.colour() && colour.verdict() == Verdict.NOT_MET) {
      against.add("Colour after anodizing: " + colour.text());
    }
    if (purpose.warm() && MagnesiumRule.rich(metal)) {
      against.add(MagnesiumRule.NOT_WARM);
    }
    return against;
  }

  /**
   * The objection to the case's own filler, or to its weld without one, or what is to be noted of
   * it; empty if it simply suits.
   */
  public static Optional<Objection> objection(WeldCase weld, Requirement requirement) {
    UsualFillers usual = UsualFillers.of(weld);
    FillerPurpose purpose = FillerPurpose.of(weld, requirement);
    Composition plate = WeldPool.composition(weld.withoutFiller(), 1);
    FillerMetal own =
        weld.filler().alloy().map(FillerMetal::of).orElseGet(() -> FillerMetal.without(plate));
    List<String> against = against(weld, usual, purpose, own, plate);
    if (against.isEmpty()) {
      return weld.filler()
          .alloy()
          .flatMap(alloy -> usual.richLot(alloy.composition()))
          .map(text -> new Objection(Objection.Severity.NOTED, Subject.FILLER, text));
    }
    String head =
        (own.none() ? "A weld without filler" : own.name())
            + " does not suit "
            + usual.bases()
            + ", "
            + purpose.label()
            + ". ";
    String text = head + String.join(" ", against) + FillerAdvice.instead(weld, purpose);
    return Optional.of(new Objection(Objection.Severity.OBJECTED, Subject.FILLER, text));
  }
}
