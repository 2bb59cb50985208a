package afterweld.cli.choice;

import afterweld.CaseSession;
import afterweld.charts.FillerChart;
import afterweld.charts.plot.Picture;
import afterweld.choice.filler.FillerComparison;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.command.Standing;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.FillerJson;
import afterweld.document.Notices;
import afterweld.document.ResultCautions;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Which filler suits the joint for what the case does with it, and what each would become. */
@Command(
    name = "fillers",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Every filler held against the joint, in the order of choice for what the case does with it:"
            + " weld metal at this dilution and over all, as welded and after heat treatment,"
            + " cracking, colour, service temperature.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld fillers cli/examples/fork-arm.yaml",
      "  afterweld fillers cli/examples/fork-arm.yaml --json"
    })
public final class FillersCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  public FillersCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.run(
        options.caseFile(), options.output(), "fillers", "comparing the fillers", this::answer);
  }

  private Answer answer(ReadCase read) {
    CaseSession session = read.session();
    WeldCase weldCase = read.caseFile().weld();
    UnitSystem units = options.units();
    Notices notices = session.notices(ResultCautions.FILLERS);
    if (session.ranksNoFiller()) {
      return none(weldCase, notices, Standing.of(session, units));
    }
    SectionProfile profile = session.profile();
    FillerComparison comparison = session.fillers();
    FillerTable table = new FillerTable(weldCase, profile.soundness(), comparison, notices, units);
    Standing standing = Standing.of(session, units);
    String json =
        FillerJson.of(weldCase, profile.soundness(), comparison, standing.metric(), notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    if (profile.soundness().comparesFillers()) {
      Picture picture = FillerChart.of(comparison, weldCase.title(), notices.cautions(), units);
      files.putAll(DrawnFiles.of(List.of(picture)));
    }
    return new Answer(
        table.text() + standing.text(),
        table.answer() + standing.brief(),
        json,
        files,
        status(standing, profile, comparison));
  }

  /** Done where the case's own filler is allowed and its weld meets what is asked. */
  private static int status(
      Standing standing, SectionProfile profile, FillerComparison comparison) {
    if (!comparison.ownAllowed() || !profile.soundness().sound()) {
      return ExitStatus.REQUIREMENT_OPEN;
    }
    return standing.exitStatus();
  }

  /** No filler makes a joint of such a weld; one without filler may lack nothing else. */
  private static Answer none(WeldCase weldCase, Notices notices, Standing standing) {
    String json = FillerJson.none(weldCase, standing.metric(), notices);
    String text =
        Paragraph.of(weldCase.title())
            + Paragraph.of("No filler is ranked: none makes a sound joint of this weld.");
    Map<String, byte[]> files = Map.of("result.json", json.getBytes(StandardCharsets.UTF_8));
    return new Answer(
        text + standing.text(), text + standing.brief(), json, files, ExitStatus.REQUIREMENT_OPEN);
  }
}
