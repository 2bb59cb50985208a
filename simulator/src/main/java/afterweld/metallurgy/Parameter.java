package afterweld.metallurgy;

import afterweld.material.Source;

/**
 * One constant of a model, as it would stand in a table.
 *
 * @param symbol the letter used in the formulas
 * @param value in {@code unit}
 * @param unit as written; {@code -} for a pure number
 * @param source where the value comes from and how well it is supported
 */
public record Parameter(String symbol, double value, String unit, Source source) {}
