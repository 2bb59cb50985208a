package afterweld.cli;

import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Version;
import java.util.concurrent.Callable;
import picocli.AutoComplete.GenerateCompletion;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What {@code afterweld} says when no command is named. */
@Command(
    name = "afterweld",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    subcommands = GenerateCompletion.class,
    synopsisSubcommandLabel = "COMMAND",
    description =
        "What strength is left across an aluminium weld, and how much of it a heat treatment after"
            + " welding brings back.",
    optionListHeading = "%nOptions:%n",
    commandListHeading = "%nCommands:%n",
    exitCodeListHeading = "%nExit status:%n",
    exitCodeList = {
      "0:done; what the case requires is met, or it requires nothing",
      "1:done; a requirement is not surely met",
      "2:the input is at fault; nothing was computed or written",
      "3:an internal error"
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld profile cli/examples/fork-arm.yaml",
      "  afterweld profile cli/examples/fork-arm.yaml --units us --out results",
      "  afterweld materials",
      "  afterweld materials 6061",
      "  source <(afterweld generate-completion)    completion for bash and zsh"
    })
final class RootCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    CommandLine line = spec.commandLine();
    line.usage(line.getErr());
    return ExitStatus.INPUT_FAULT;
  }
}
