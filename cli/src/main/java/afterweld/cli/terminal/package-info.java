/**
 * What a command speaks through: streams, progress, tables and paragraphs of text, JSON text,
 * statuses and the faults a user can put right.
 *
 * <pre>{@code
 * Paragraph.of("A long sentence ...");   // broken at 80 columns
 * }</pre>
 */
package afterweld.cli.terminal;
