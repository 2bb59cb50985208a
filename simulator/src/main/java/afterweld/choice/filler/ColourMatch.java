package afterweld.choice.filler;

import afterweld.choice.answer.Verdict;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.FillerGuidance;
import afterweld.material.FillerGuidance.AnodizedMatch;
import afterweld.material.MaterialLibrary;
import afterweld.section.SectionProfile;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the weld matches its bases in colour after anodizing. Metal with more than about 2 %
 * silicon goes grey to black (common practice): so does a casting, which nothing matches, and weld
 * metal at its dilution. Otherwise by the filler guides of the trade, the poorer of the two sides,
 * and never better than the filler that the guides choose first for the colour of the pair; where
 * they have no word a test piece decides.
 *
 * @param verdict met, open or not met
 * @param text a sentence
 */
public record ColourMatch(Verdict verdict, String text) {
  private static final double GREY_SILICON = 2.0;
  private static final String GREY_FILLER =
      "a silicon filler is not taken where the colour must match: its weld metal goes grey.";
  private static final ColourMatch CASTING =
      new ColourMatch(
          Verdict.NOT_MET, "a silicon casting goes dark grey by itself, and no filler matches it.");

  /** Of the weld metal of a profile beside its two bases. */
  public static ColourMatch of(SectionProfile profile) {
    WeldCase weld = profile.weldCase();
    Composition metal = profile.weldMetal().composition();
    FillerMetal filler =
        weld.filler().alloy().map(FillerMetal::of).orElseGet(() -> FillerMetal.without(metal));
    return of(weld, metal, filler);
  }

  /**
   * The match of a weld metal.
   *
   * @param filler that is in it, if any
   */
  static ColourMatch of(WeldCase weld, Composition metal, FillerMetal filler) {
    return of(BaseMetal.of(weld.left()), BaseMetal.of(weld.right()), metal, filler);
  }

  /** What speaks against a filler by itself, at any dilution; empty if nothing does. */
  static Optional<String> against(BaseMetal left, BaseMetal right, FillerMetal filler) {
    Composition metal = filler.composition();
    ColourMatch match = of(left, right, metal, filler);
    if (match.verdict() != Verdict.NOT_MET) {
      return Optional.empty();
    }
    boolean itself = grey(metal) && !match.equals(CASTING);
    return Optional.of("Colour after anodizing: " + (itself ? GREY_FILLER : match.text()));
  }

  private static ColourMatch of(
      BaseMetal left, BaseMetal right, Composition metal, FillerMetal filler) {
    if (grey(left.metal()) || grey(right.metal())) {
      return CASTING;
    }
    if (grey(metal)) {
      return new ColourMatch(
          Verdict.NOT_MET, "weld metal with more than 2 % silicon goes grey to black.");
    }
    if (!filler.none() && grey(filler.composition())) {
      return new ColourMatch(Verdict.NOT_MET, GREY_FILLER);
    }
    ColourMatch own = byGuides(left, right, filler.name());
    return FillerPair.of(left.name(), right.name())
        .flatMap(FillerPair::anodized)
        .map(first -> byGuides(left, right, first))
        .filter(first -> first.verdict().compareTo(own.verdict()) > 0)
        .orElse(own);
  }

  private static ColourMatch byGuides(BaseMetal left, BaseMetal right, String filler) {
    return Stream.of(left, right)
        .flatMap(side -> guide(side, filler).stream())
        .max(Comparator.comparing(AnodizedMatch::ordinal))
        .map(ColourMatch::byGuide)
        .orElse(new ColourMatch(Verdict.OPEN, "needs an anodized test piece."));
  }

  static boolean grey(Composition metal) {
    return metal.of(Element.SI) > GREY_SILICON;
  }

  private static Optional<AnodizedMatch> guide(BaseMetal side, String filler) {
    return MaterialLibrary.standard()
        .guidance(side.name(), filler)
        .map(FillerGuidance::anodizedMatch);
  }

  private static ColourMatch byGuide(AnodizedMatch match) {
    return switch (match) {
      case YES -> new ColourMatch(Verdict.MET, "the filler guides call it a match.");
      case FAIR -> new ColourMatch(Verdict.OPEN, "the guides call it fair: anodize a test piece.");
      case NO -> new ColourMatch(Verdict.NOT_MET, "the filler turns grey or dark.");
    };
  }

  /** The word of a table: yes, no, or that a test piece decides. */
  String word() {
    return switch (verdict) {
      case MET -> "yes";
      case LIKELY, OPEN -> "test piece";
      case UNLIKELY, NOT_MET -> "no";
    };
  }
}
