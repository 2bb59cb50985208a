package afterweld.weld;

/**
 * Something the reader of a result must know: a limit of validity, an assumption, an estimate
 * outside the calibrated range. It travels with the result to every table, chart and page.
 *
 * @param code short fixed name for programs, such as {@code ring-not-modelled}
 * @param text a sentence for people
 */
public record Warning(String code, String text) {}
