/**
 * What pictures are drawn with: pages, axes, lines, areas, words and the files they end in; it
 * knows no result.
 *
 * <p>A {@link afterweld.charts.plot.Page} (title, case, legend, cautions) stands round one or more
 * {@link afterweld.charts.plot.Plot}s (axes and what is drawn in them), in which {@code FreeSpace}
 * finds room for words. {@code Ink}, {@code LineLook}, {@code Dash} and {@code Typeface} are the
 * style.
 *
 * <pre>{@code
 * Picture.Files drawn = Picture.drawAll(List.of(picture)).get(0);
 * drawn.png();   // bytes
 * }</pre>
 */
package afterweld.charts.plot;
