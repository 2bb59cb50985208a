package afterweld.cli.profile;

import afterweld.casefile.CaseFile;
import afterweld.choice.RouteStudy;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.command.Simulation;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.joint.JointReport;
import afterweld.section.AlongWeld;
import afterweld.section.SectionProfile;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The main job: from a case to its section, on the terminal and in a folder. */
@Command(
    name = "profile",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Zones, hardness, yield and tensile strength across the weld: before welding, as welded and"
            + " after heat treatment.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld profile cli/examples/fork-arm.yaml",
      "  afterweld profile cli/examples/fork-arm.yaml --units us --out results",
      "  afterweld profile cli/examples/fork-arm.yaml --json"
    })
public final class ProfileCommand implements Callable<Integer> {
  private final CaseDesk desk;
  private final Simulation simulation;
  private final Pictures pictures;

  @Mixin private CaseOptions options;

  @Option(
      names = "--stages",
      description = "Show the states between the steps of the heat treatment too.")
  private boolean stages;

  @Option(names = "--routes", description = "Put the routes and all fillers into the report too.")
  private boolean withRoutes;

  public ProfileCommand(
      Streams streams, CaseSource cases, Simulation simulation, Pictures pictures) {
    this.desk = new CaseDesk(streams, cases);
    this.simulation = simulation;
    this.pictures = pictures;
  }

  @Override
  public Integer call() {
    return desk.runHeaded(
        options.caseFile(),
        options.output(),
        "",
        () -> "computing the section and drawing it",
        this::answer);
  }

  private Optional<RouteStudy> routes(ReadCase read) {
    return withRoutes ? Optional.of(read.session().routes()) : Optional.empty();
  }

  private Answer answer(ReadCase read) {
    CaseFile asked = read.caseFile();
    CompletableFuture<Optional<AlongWeld>> along =
        CompletableFuture.supplyAsync(read.session()::along);
    SectionProfile profile = simulation.of(read.session(), stages);
    JointReport joint = JointReport.of(profile, asked.joint());
    ProfileResult result =
        new ProfileResult(
            profile, joint, asked.requirement(), options.units(), routes(read), along::join);
    return result.answer(pictures).against(read.session().objections()).on(profile.soundness());
  }
}
