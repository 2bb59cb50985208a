/**
 * The command {@code profile}: the section across the weld as table, JSON, CSV, report and
 * pictures. {@code ProfileResult} is one answer, the others write it.
 *
 * <pre>
 * afterweld profile cli/examples/fork-arm.yaml
 * </pre>
 */
package afterweld.cli.profile;
