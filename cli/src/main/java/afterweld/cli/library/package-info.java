/**
 * What the program knows without a case: {@code materials}, and {@code starter} with a first case
 * to begin from.
 *
 * <pre>
 * afterweld materials 6061
 * </pre>
 */
package afterweld.cli.library;
