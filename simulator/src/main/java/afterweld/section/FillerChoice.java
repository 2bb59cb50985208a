package afterweld.section;

import afterweld.material.Alloy;
import java.util.Optional;

/**
 * The filler and how much base metal it mixes with.
 *
 * @param alloy empty for a weld without filler
 * @param dilution share of melted base in the weld metal, 0 to 1 (1 without filler)
 * @param dilutionLow low end: equal to {@code dilution} when the case states it
 * @param dilutionHigh high end
 * @param dilutionGiven whether the case states the dilution
 * @param fromLeft share of the left side in the melted base, 0 to 1
 */
public record FillerChoice(
    Optional<Alloy> alloy,
    double dilution,
    double dilutionLow,
    double dilutionHigh,
    boolean dilutionGiven,
    double fromLeft) {}
