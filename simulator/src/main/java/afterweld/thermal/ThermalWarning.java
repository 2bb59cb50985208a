package afterweld.thermal;

/**
 * Something the reader of a temperature must know.
 *
 * @param code short fixed name for programs
 * @param text a sentence for people
 */
public record ThermalWarning(String code, String text) {}
