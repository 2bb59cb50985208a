/**
 * Pages to hand over: the report of a profile and the furnace sheet. Self-contained HTML that works
 * without a network and without scripts, prints, and reads on a phone.
 *
 * <pre>{@code
 * String page = SheetPage.of(FurnaceSheet.of(weldCase).orElseThrow());
 * }</pre>
 */
package afterweld.charts.report;
