/**
 * The command line: reads what the user names, hands it down, shows what comes back.
 *
 * <p>Nothing is computed here. A command gets what it works with through its constructor: a {@link
 * afterweld.cli.command.CaseSource} that reads a case, a {@link afterweld.cli.command.Simulation}
 * that computes a section, {@link afterweld.cli.profile.Pictures} that draw it. The result goes to
 * the terminal as a {@code afterweld.cli.profile.ProfileTable}, to programs as {@link
 * afterweld.document.ProfileJson}, and whole or not at all into an {@link
 * afterweld.cli.files.OutputFolder}. What the user can put right is an {@link
 * afterweld.cli.terminal.InputFault}; anything else that fails is told in one sentence.
 *
 * <p>Example, a whole run without a process:
 *
 * <pre>{@code
 * Program program = new Program(streams, List.of(new MaterialsCommand(streams, alloys)));
 * int status = program.run("materials", "6061");
 * }</pre>
 */
package afterweld.cli;
