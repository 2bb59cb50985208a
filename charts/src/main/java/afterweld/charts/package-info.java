/**
 * Pictures of results, as PNG and as SVG.
 *
 * <p>A result becomes a list of pictures, and a picture becomes bytes or text; nothing is printed
 * and no file is written:
 *
 * <pre>{@code
 * List<Picture> pictures = ProfileCharts.of(profile, requirement, UnitSystem.METRIC);
 * for (Picture.Files drawn : Picture.drawAll(pictures)) {
 *   keep(drawn.name() + ".png", drawn.png());
 *   keep(drawn.name() + ".svg", drawn.svg());
 * }
 * }</pre>
 *
 * <p>From the outside in, a picture is a {@code Page} (title, case, legend, cautions) round one or
 * more {@code Plot}s (axes and what is drawn in them), in which {@code FreeSpace} finds room for
 * words. {@code Ink}, {@code LineLook}, {@code Dash} and {@code Typeface} are the style. A new
 * chart writes its own panel on top of {@code Plot}, as {@code SectionPanel} does, and hands a
 * {@code Picture} out.
 *
 * <p>Rules of the style: nothing is told by colour alone; every line differs from its neighbours by
 * width, dash or marker and in lightness; strength axes start at zero; the unit stands beside the
 * number; "not a design value" stands on every picture.
 */
package afterweld.charts;
