package afterweld.cli.choice;

import afterweld.casefile.CaseFile;
import afterweld.choice.RouteStudy;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.Notices;
import afterweld.document.ResultCautions;
import afterweld.document.RouteJson;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Weld before or after heat treatment. */
@Command(
    name = "routes",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Weld before or after heat treatment: every route the case allows, simulated in full, held"
            + " against its constraints and ranked with reasons.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld routes cli/examples/fork-arm.yaml",
      "  afterweld routes cli/examples/fork-arm.yaml --json"
    })
public final class RoutesCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  public RoutesCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.run(
        options.caseFile(), options.output(), "routes", "simulating the routes", this::answer);
  }

  /** Done where one route is clearly the choice, and it meets all that is required. */
  private static int exitStatus(RouteStudy study) {
    return study.clear() ? ExitStatus.DONE : ExitStatus.REQUIREMENT_OPEN;
  }

  private Answer answer(ReadCase read) {
    CaseFile asked = read.caseFile();
    RouteStudy study = read.session().routes();
    Notices notices = read.session().notices(ResultCautions.ROUTES);
    RouteTable table = new RouteTable(asked.weld(), study, notices, options.units());
    String json = RouteJson.of(asked.weld(), study, notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("routes.txt", table.text().getBytes(StandardCharsets.UTF_8));
    return new Answer(table.text(), table.answer(), json, files, exitStatus(study));
  }
}
