package afterweld.weld;

import afterweld.material.Alloy;
import afterweld.quantity.Check;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The filler and how much base metal it mixes with.
 *
 * @param alloy empty for a weld without filler
 * @param dilution share of melted base in the weld metal, 0 to 1 (1 without filler)
 * @param dilutionLow low end: equal to {@code dilution} when the case states it
 * @param dilutionHigh high end
 * @param dilutionGiven whether the case states the dilution
 * @param fromLeft share of the left side in the melted base, 0 to 1
 * @param depositArea section of the filler that all passes lay down, m², if the case states it
 */
public record FillerChoice(
    Optional<Alloy> alloy,
    double dilution,
    double dilutionLow,
    double dilutionHigh,
    boolean dilutionGiven,
    double fromLeft,
    OptionalDouble depositArea) {
  /** Refuses what it cannot be. */
  public FillerChoice {
    Check.rising("dilution", 0, dilutionLow, dilution, dilutionHigh, 1);
    Check.share("share of the left side", fromLeft);
    Check.positive("deposited area", depositArea, "m²");
  }

  /** A filler whose deposit nobody measured. */
  public FillerChoice(
      Optional<Alloy> alloy,
      double dilution,
      double dilutionLow,
      double dilutionHigh,
      boolean dilutionGiven,
      double fromLeft) {
    this(
        alloy,
        dilution,
        dilutionLow,
        dilutionHigh,
        dilutionGiven,
        fromLeft,
        OptionalDouble.empty());
  }

  /** The same filler with a measured deposit, m². */
  public FillerChoice depositing(double area) {
    return new FillerChoice(
        alloy,
        dilution,
        dilutionLow,
        dilutionHigh,
        dilutionGiven,
        fromLeft,
        OptionalDouble.of(area));
  }
}
