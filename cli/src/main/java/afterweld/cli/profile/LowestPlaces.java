package afterweld.cli.profile;

import static afterweld.quantity.OutputQuantity.HARDNESS;
import static afterweld.quantity.OutputQuantity.TENSILE;
import static afterweld.quantity.OutputQuantity.YIELD;

import afterweld.cli.terminal.Paragraph;
import afterweld.document.Quantities;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The answer of the main command in sentences: where each state is lowest, and how low. */
final class LowestPlaces {
  /** From here on a share is easier to read as a multiple. */
  private static final double RAISED = 1.5;

  private final SectionProfile profile;
  private final UnitSystem units;

  LowestPlaces(SectionProfile profile, UnitSystem units) {
    this.profile = profile;
    this.units = units;
  }

  /** One paragraph per state. */
  String text() {
    return IntStream.range(0, profile.states().size())
        .mapToObj(state -> Paragraph.of(sentence(state)))
        .collect(Collectors.joining());
  }

  private String sentence(int state) {
    String head = profile.label(state) + ": ";
    return LowestPlace.of(profile, state, YIELD)
        .map(lowest -> head + described(lowest))
        .orElse(head + "not predicted");
  }

  private String described(LowestPlace lowest) {
    String elsewhere =
        Stream.of(TENSILE, HARDNESS)
            .map(quantity -> elsewhere(lowest, quantity))
            .flatMap(Optional::stream)
            .map(sentence -> "; " + sentence)
            .collect(Collectors.joining());
    return "lowest yield "
        + band(lowest, YIELD)
        + " "
        + lowest.words(units)
        + share(lowest)
        + "; there tensile strength "
        + band(lowest, TENSILE)
        + ", hardness "
        + band(lowest, HARDNESS)
        + elsewhere
        + unpredicted(lowest.state());
  }

  /** With the band of the lowest value of the line where this is the lowest, else alone. */
  private String band(LowestPlace place, OutputQuantity quantity) {
    return LowestPlace.of(profile, place.state(), quantity)
        .filter(lowest -> shown(lowest, quantity).equals(shown(place, quantity)))
        .map(lowest -> Quantities.withBand(quantity, units, lowest.lowestBand()))
        .orElse(shown(place, quantity) + " " + quantity.unit(units));
  }

  private static String share(LowestPlace lowest) {
    if (lowest.state() == 0) {
      return "";
    }
    double share = lowest.shareOfBefore();
    String before = lowest.before();
    return share > RAISED
        ? String.format(Locale.ROOT, ", %.1f times as much as %s", share, before)
        : ", " + Math.round(100 * share) + " % of " + before;
  }

  /** A quantity whose lowest place is another one, by more than the last digit shown. */
  private Optional<String> elsewhere(LowestPlace lowest, OutputQuantity quantity) {
    return LowestPlace.of(profile, lowest.state(), quantity)
        .filter(other -> !shown(other, quantity).equals(shown(lowest, quantity)))
        .map(
            other ->
                "lowest "
                    + quantity.title()
                    + " "
                    + band(other, quantity)
                    + " "
                    + other.words(units));
  }

  private String shown(LowestPlace place, OutputQuantity quantity) {
    return quantity.text(units, Quantities.of(place.estimate().middle(), quantity));
  }

  private String unpredicted(int state) {
    boolean missing =
        profile.stations().stream()
            .anyMatch(station -> !station.estimates().get(state).middle().predicted());
    return missing ? "; some stations are not predicted and not counted" : "";
  }
}
