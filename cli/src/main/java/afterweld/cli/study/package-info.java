/**
 * The commands that ask many simulations or hold one against a test: {@code ageing}, {@code
 * spread}, {@code fit} and {@code bend}.
 *
 * <pre>
 * afterweld spread cli/examples/fork-arm.yaml --runs 200
 * </pre>
 */
package afterweld.cli.study;
