package afterweld.choice.filler;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What the filler guides of the trade take a filler for, whatever the joint: by its rows in {@link
 * FillerPair} and by the rules for magnesium and silicon. What it does at one joint's dilution is
 * the business of {@link FillerComparison}.
 *
 * @param lines sentences, each for one purpose; empty for metal that is not sold as filler
 */
public record FillerUse(List<String> lines) {
  private static final String BY_THE_CASE =
      "How strong and how prone to cracks its weld metal is depends on the bases and the dilution:"
          + " 'afterweld fillers' says it for a case.";

  /** Copies the list. */
  public FillerUse {
    lines = List.copyOf(lines);
  }

  /** The use of a metal of the library. */
  public static FillerUse of(Alloy alloy) {
    if (!alloy.uses().contains(Alloy.Use.FILLER)) {
      return new FillerUse(List.of());
    }
    List<String> lines = new ArrayList<>();
    lines.add(welded(alloy.name()));
    lines.add(treated(alloy));
    lines.add(warm(alloy.composition()));
    lines.add(anodized(alloy));
    String not = bases(pair -> pair.not().contains(alloy.name()));
    if (!not.isEmpty()) {
      lines.add("Not for: " + not + ".");
    }
    lines.add(BY_THE_CASE);
    return new FillerUse(lines);
  }

  private static String welded(String filler) {
    String first =
        bases(pair -> pair.welded().stream().findFirst().filter(filler::equals).isPresent());
    String also = bases(pair -> pair.welded().indexOf(filler) > 0);
    return chosen("Left as welded", first, also);
  }

  private static String treated(Alloy alloy) {
    if (MagnesiumRule.rich(alloy.composition())) {
      return "Full heat treatment after welding: none. " + MagnesiumRule.NO_FULL_TREATMENT;
    }
    String filler = alloy.name();
    String first =
        bases(pair -> pair.treated().stream().findFirst().filter(filler::equals).isPresent());
    String also = bases(pair -> pair.treated().indexOf(filler) > 0);
    return chosen("Full heat treatment after welding", first, also);
  }

  private static String chosen(String purpose, String first, String also) {
    if (first.isEmpty() && also.isEmpty()) {
      return purpose + ": the guides used here choose it for no pair of bases.";
    }
    String lead = first.isEmpty() ? "" : "first choice for " + first;
    String rest = also.isEmpty() ? "" : "also suits " + also;
    return purpose + ": " + lead + (lead.isEmpty() || rest.isEmpty() ? "" : "; ") + rest + ".";
  }

  private static String warm(Composition metal) {
    return MagnesiumRule.rich(metal)
        ? "Warm service: not above " + MagnesiumRule.LIMIT + ", it has more than 3 % Mg."
        : "Warm service: no more than 3 % Mg, so the limit of "
            + MagnesiumRule.LIMIT
            + " does not come from it.";
  }

  private static String anodized(Alloy alloy) {
    if (ColourMatch.grey(alloy.composition())) {
      return "Colour after anodizing: more than 2 % silicon, its weld metal goes grey to black.";
    }
    String first = bases(pair -> pair.anodized().filter(alloy.name()::equals).isPresent());
    return "Colour after anodizing: "
        + (first.isEmpty() ? "a test piece decides." : "first choice for " + first + ".");
  }

  private static String bases(Predicate<FillerPair> chosen) {
    Stream<String> rows = FillerPair.all().stream().filter(chosen).map(FillerPair::bases);
    return String.join(", ", rows.toList());
  }
}
