/**
 * The commands that decide: {@code fillers}, {@code routes} and {@code sheet}.
 *
 * <pre>
 * afterweld routes cli/examples/fork-arm.yaml
 * </pre>
 */
package afterweld.cli.choice;
