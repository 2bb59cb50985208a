package afterweld.choice;

import afterweld.material.Element;
import afterweld.material.FillerGuidance;
import afterweld.material.FillerGuidance.AnodizedMatch;
import afterweld.material.MaterialLibrary;
import afterweld.section.SectionProfile;
import afterweld.section.Side;
import afterweld.section.WeldCase;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether the weld matches its bases in colour after anodizing: by the filler guides of the trade,
 * the poorer of the two sides; where they have no word, a weld much richer in silicon than its base
 * turns grey (common practice, limit assumed) and any other needs a test piece.
 *
 * @param verdict met, open or not met
 * @param text a sentence
 */
record ColourMatch(Verdict verdict, String text) {
  private static final double GREY_SILICON = 1.5;

  static ColourMatch of(SectionProfile profile) {
    return guided(profile.weldCase()).map(ColourMatch::byGuide).orElseGet(() -> bySilicon(profile));
  }

  private static Optional<AnodizedMatch> guided(WeldCase weldCase) {
    return weldCase
        .filler()
        .alloy()
        .flatMap(
            filler ->
                Stream.of(weldCase.left(), weldCase.right())
                    .map(side -> guide(side, filler.name()))
                    .flatMap(Optional::stream)
                    .max(Comparator.comparingInt(ColourMatch::poorness)));
  }

  private static Optional<AnodizedMatch> guide(Side side, String filler) {
    return MaterialLibrary.standard()
        .guidance(side.alloy().name(), filler)
        .map(FillerGuidance::anodizedMatch);
  }

  private static int poorness(AnodizedMatch match) {
    return switch (match) {
      case YES -> 0;
      case FAIR -> 1;
      case NO -> 2;
    };
  }

  private static ColourMatch byGuide(AnodizedMatch match) {
    return switch (match) {
      case YES -> new ColourMatch(Verdict.MET, "the filler guides call it a match.");
      case FAIR -> new ColourMatch(Verdict.OPEN, "the guides call it fair: anodize a test piece.");
      case NO -> new ColourMatch(Verdict.NOT_MET, "the filler turns grey or dark.");
    };
  }

  private static ColourMatch bySilicon(SectionProfile profile) {
    WeldCase weld = profile.weldCase();
    double base =
        Math.max(
            weld.left().composition().of(Element.SI), weld.right().composition().of(Element.SI));
    boolean grey = profile.weldMetal().composition().of(Element.SI) > base + GREY_SILICON;
    return grey
        ? new ColourMatch(Verdict.NOT_MET, "a weld rich in silicon turns grey.")
        : new ColourMatch(Verdict.OPEN, "needs an anodized test piece.");
  }
}
