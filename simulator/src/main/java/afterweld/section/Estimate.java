package afterweld.section;

import afterweld.strength.Strength;

/**
 * A prediction with its error band.
 *
 * @param middle best estimate
 * @param low lower end of the band
 * @param high upper end of the band
 */
public record Estimate(Strength middle, Strength low, Strength high) {}
