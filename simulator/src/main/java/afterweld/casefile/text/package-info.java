/**
 * From bytes to a tree whose every node knows its line and column, and to {@link
 * afterweld.casefile.text.Fault}s that name a place, what was found and what was expected.
 *
 * <pre>{@code
 * Names.nearest("thicknes", List.of("thickness", "temper"));   // thickness
 * }</pre>
 */
package afterweld.casefile.text;
