package afterweld.material;

/**
 * One line of the library as it stands in the data files, for people to read: what it is, its value
 * in the unit of the trade, and where it comes from.
 *
 * @param property what is stated, such as {@code solidus}
 * @param qualifier what it is stated for, such as a temper or an element; empty if nothing
 * @param value the value as written in the data file
 * @param unit unit of the value; empty for names and ratios
 * @param source where it comes from
 */
public record Fact(String property, String qualifier, String value, String unit, Source source) {}
