package afterweld.casefile;

import static afterweld.casefile.Dimension.AREA;
import static afterweld.casefile.Dimension.SHARE;

import afterweld.casefile.text.Node;
import afterweld.casefile.text.Quoted;
import afterweld.material.Alloy;
import afterweld.thermal.Pass;
import afterweld.weld.FillerChoice;
import afterweld.weld.Preparation;
import afterweld.weld.UsualDilution;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads {@code filler}: which one, and how much base metal it mixes with. */
final class FillerReader {
  static final String FILLER = "filler";
  private static final String ALLOY = "alloy";
  static final String NONE = "none";
  private static final Measure DILUTION = Measure.within("dilution", SHARE, 0, 100, "%");
  private static final Measure MELTED = Measure.above("melted_area", AREA, 0, 10_000, "mm²");
  private static final Measure DEPOSIT = Measure.above("deposit_area", AREA, 0, 10_000, "mm²");
  private static final Measure FROM_LEFT = Measure.within("from_left", SHARE, 0, 100, "%");

  /** Share of the melted base that is of the left side where nobody says (assumed). */
  private static final double USUAL_FROM_LEFT = 0.5;

  /** Dilution up to which weld metal was checked against published welds. */
  private static final double CALIBRATED_UP_TO = 0.6;

  private final Choices<Alloy> fillers;
  private final Plates plates;
  private final Notes notes;

  FillerReader(Choices<Alloy> fillers, Plates plates, Notes notes) {
    this.fillers = fillers;
    this.plates = plates;
    this.notes = notes;
  }

  /** The filler; empty if it is missing or faulty. */
  Optional<FillerChoice> read(Section top, Preparation preparation, List<Pass> passes) {
    if (!top.has(FILLER)) {
      top.missing(FILLER, expected());
    }
    Optional<Node> node = top.node(FILLER);
    if (node.isPresent() && node.get() instanceof Node.Mapping mapping) {
      return mixed(
          new Section(FILLER, top.placeOf(FILLER), mapping, top.faults()), preparation, passes);
    }
    Optional<String> word = top.text(FILLER, expected());
    if (word.filter(NONE::equalsIgnoreCase).isPresent()) {
      return Optional.of(withoutFiller(fromLeftByDefault()));
    }
    word.ifPresent(
        text -> top.fault(FILLER, "found " + Quoted.of(text) + "; expected " + expected()));
    return Optional.empty();
  }

  private String expected() {
    List<String> suitable =
        SuitableFillers.of(plates.left().alloy(), plates.right().alloy(), fillers.names());
    return "none, or alloy with dilution, or alloy with melted_area and deposit_area; suitable"
        + " fillers: "
        + String.join(", ", suitable);
  }

  private Optional<FillerChoice> mixed(
      Section section, Preparation preparation, List<Pass> passes) {
    boolean none =
        section.node(ALLOY).orElse(null) instanceof Node.Scalar scalar
            && scalar.text().equalsIgnoreCase(NONE);
    Optional<Alloy> alloy = none ? Optional.empty() : section.requiredChoice(ALLOY, fillers);
    double fromLeft = fromLeft(section);
    Optional<Double> given = none ? refused(section) : givenDilution(section);
    section.finish();
    if (!section.sound()) {
      return Optional.empty();
    }
    if (none) {
      return Optional.of(withoutFiller(fromLeft));
    }
    double usual = UsualDilution.of(preparation, passes);
    if (given.isEmpty() && Double.isNaN(usual)) {
      return Optional.empty();
    }
    FillerChoice choice =
        given
            .map(share -> new FillerChoice(alloy, share, share, share, true, fromLeft))
            .orElseGet(() -> byRule(alloy, usual, fromLeft));
    noteExtrapolation(choice);
    return Optional.of(
        section.has(DEPOSIT.key())
            ? choice.depositing(section.quantityOr(DEPOSIT, Double.NaN))
            : choice);
  }

  private FillerChoice withoutFiller(double fromLeft) {
    FillerChoice choice = new FillerChoice(Optional.empty(), 1, 1, 1, true, fromLeft);
    noteExtrapolation(choice);
    return choice;
  }

  private double fromLeft(Section section) {
    double share = section.quantityOr(FROM_LEFT, Double.NaN);
    return section.has(FROM_LEFT.key()) ? share : fromLeftByDefault();
  }

  private double fromLeftByDefault() {
    boolean different =
        plates.left().alloy().isPresent()
            && plates.right().alloy().isPresent()
            && !plates.left().alloy().equals(plates.right().alloy());
    if (different) {
      notes.add("from-left-by-default", "Half of the melted base is taken from the left side.");
    }
    return USUAL_FROM_LEFT;
  }

  private static Optional<Double> refused(Section section) {
    for (Measure measure : List.of(DILUTION, MELTED, DEPOSIT)) {
      section.node(measure.key());
      if (section.has(measure.key())) {
        section.unwanted(
            measure.key(), "found without a filler; expected a filler alloy beside it");
      }
    }
    return Optional.empty();
  }

  private static Optional<Double> givenDilution(Section section) {
    boolean areas = section.has(MELTED.key()) || section.has(DEPOSIT.key());
    if (areas && section.has(DILUTION.key())) {
      section.unwanted(
          DILUTION.key(),
          "found together with areas, which give the dilution; expected one of them");
    }
    double dilution = section.quantityOr(DILUTION, Double.NaN);
    double melted = areas ? section.required(MELTED) : section.quantityOr(MELTED, Double.NaN);
    double deposit = areas ? section.required(DEPOSIT) : section.quantityOr(DEPOSIT, Double.NaN);
    double share = areas ? melted / (melted + deposit) : dilution;
    return Double.isNaN(share) ? Optional.empty() : Optional.of(share);
  }

  private FillerChoice byRule(Optional<Alloy> alloy, double usual, double fromLeft) {
    double low = Math.max(0, usual - UsualDilution.BAND);
    double high = Math.min(1, usual + UsualDilution.BAND);
    notes.add(
        "dilution-by-default",
        String.format(
            Locale.ROOT,
            "No dilution given: %.0f %% by joint and process, from %.0f to %.0f %%; a macro"
                + " section tells better.",
            100 * usual,
            100 * low,
            100 * high));
    return new FillerChoice(alloy, usual, low, high, false, fromLeft);
  }

  private void noteExtrapolation(FillerChoice choice) {
    if (choice.dilution() > CALIBRATED_UP_TO) {
      notes.add(
          "dilution-above-60",
          String.format(
              Locale.ROOT,
              "The weld metal is %.0f %% base metal; above 60 %% its properties are extrapolated.",
              100 * choice.dilution()));
    }
  }
}
