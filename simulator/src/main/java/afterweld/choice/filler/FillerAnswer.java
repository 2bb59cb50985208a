package afterweld.choice.filler;

import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.weldmetal.CrackTendency;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a comparison of fillers comes to, in sentences that every writer passes on. */
public final class FillerAnswer {
  private final FillerComparison comparison;
  private final UnitSystem units;
  private final List<String> suitable;

  private FillerAnswer(FillerComparison comparison, UnitSystem units) {
    this.comparison = comparison;
    this.units = units;
    this.suitable = comparison.usual().suitable(comparison.purpose());
  }

  /** The sentences, the choice first. */
  public static List<String> of(FillerComparison comparison, UnitSystem units) {
    return new FillerAnswer(comparison, units).sentences();
  }

  private List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(suitable.isEmpty() ? nothing() : choice());
    own().ifPresent(sentences::add);
    strongest().ifPresent(sentences::add);
    note().ifPresent(sentences::add);
    return sentences;
  }

  private String head() {
    return comparison.usual().bases() + ", " + comparison.purpose().label() + ": ";
  }

  private String nothing() {
    return head()
        + "no filler suits."
        + comparison
            .usual()
            .pair()
            .filter(pair -> pair.suiting().isEmpty())
            .map(pair -> " The filler guides: " + pair.why() + ".")
            .orElse("");
  }

  private String choice() {
    List<String> ranked = ranked();
    Map<Boolean, List<String>> rest =
        ranked.stream().skip(1).collect(Collectors.partitioningBy(comparison.usual()::onlyRated));
    String also = rest.get(false).isEmpty() ? "" : ", then " + String.join(", ", rest.get(false));
    String rated =
        rest.get(true).isEmpty()
            ? ""
            : " Usable too, since the guides rate them well on these bases: "
                + String.join(", ", rest.get(true))
                + ".";
    String first = suitable.get(0);
    String cracks =
        ranked.get(0).equals(first)
            ? ""
            : " Their first choice, " + first + ", lies in the crack-prone range at this dilution.";
    return head() + ranked.get(0) + also + ". " + source() + cracks + rated;
  }

  /** The guides' order, with what would crack at this dilution behind the rest. */
  private List<String> ranked() {
    List<String> ranked = new ArrayList<>(suitable);
    ranked.sort((one, other) -> Boolean.compare(cracks(one), cracks(other)));
    return ranked;
  }

  private boolean cracks(String filler) {
    return comparison
        .option(filler)
        .filter(option -> option.crack() == CrackTendency.HIGH)
        .isPresent();
  }

  private String source() {
    return comparison.usual().derived()
        ? "The order is derived from the filler guides' for "
            + comparison.usual().pair().orElseThrow().bases()
            + ", the nearest relatives."
        : "The order is that of the filler guides for this purpose.";
  }

  private Optional<String> own() {
    return comparison.choice().alloy().isEmpty() || comparison.ownAllowed()
        ? Optional.empty()
        : Optional.of(
            "The case's own filler, "
                + comparison.choice().alloy().get().name()
                + ", is ruled out: see why above.");
  }

  /** Which one is the strongest, where that is another than the first. */
  private Optional<String> strongest() {
    List<String> best = comparison.bestOverBand();
    Optional<FillerOption> strongest =
        comparison.option(best.get(1)).filter(FillerOption::hasFiller);
    if (suitable.size() < 2 || strongest.isEmpty() || comparison.options().size() < 2) {
      return Optional.empty();
    }
    Optional<FillerOption> first = comparison.option(ranked().get(0));
    if (first.filter(one -> judged(one) > judged(strongest.get())).isPresent()) {
      return Optional.empty();
    }
    String sentence =
        "The strongest weld metal "
            + comparison.judgedState()
            + " at this dilution is that of "
            + best.get(1)
            + ", "
            + yieldOf(strongest.get())
            + " yield";
    boolean same = best.get(1).equals(ranked().get(0));
    return Optional.of(
        sentence + (same ? "" : first.map(this::against).orElse("")) + overBand(best) + ".");
  }

  private String overBand(List<String> best) {
    return comparison.clearOverBand()
        ? ""
        : "; "
            + best.get(0)
            + " at the low end of the dilution's band and "
            + best.get(2)
            + " at the high end: measure the dilution on a macro section";
  }

  private String against(FillerOption first) {
    return Double.isNaN(judged(first))
        ? ""
        : " against " + yieldOf(first) + " of " + first.filler();
  }

  private double judged(FillerOption option) {
    return comparison.judgedYield(option, comparison.choice().dilution());
  }

  private String yieldOf(FillerOption option) {
    return OutputQuantity.YIELD.text(units, judged(option)) + " " + units.stressUnit();
  }

  /** What the guides note on a pair beside its fillers. */
  private Optional<String> note() {
    return comparison
        .usual()
        .pair()
        .filter(
            pair -> !comparison.usual().derived() && pair.not().isEmpty() && !pair.why().isEmpty())
        .filter(pair -> !comparison.purpose().equals(FillerPurpose.WELDED))
        .map(pair -> "The filler guides on this pair: " + pair.why() + ".");
  }
}
