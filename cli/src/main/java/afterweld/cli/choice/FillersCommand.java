package afterweld.cli.choice;

import afterweld.charts.FillerChart;
import afterweld.charts.plot.Picture;
import afterweld.choice.filler.FillerComparison;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.Notices;
import afterweld.cli.command.ReadCase;
import afterweld.cli.command.Standing;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.JsonText;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.soundness.Soundness;
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
    WeldCase weldCase = read.caseFile().weld();
    UnitSystem units = options.units();
    SectionProfile profile = read.session().profile(weldCase);
    Notices notices = read.notices(FillerTable.CAUTION);
    if (lacksMoreThanItsFiller(notices.soundness()) && weldCase.filler().alloy().isPresent()) {
      return none(weldCase, notices, Standing.of(read.caseFile(), profile, units));
    }
    FillerComparison comparison = compared(read, profile);
    FillerTable table = new FillerTable(weldCase, profile.soundness(), comparison, notices, units);
    Standing standing = Standing.of(read.caseFile(), profile, units);
    String json = FillerJson.of(weldCase, profile.soundness(), comparison, standing, notices);
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

  /** Weld metal of a joint that is not sound has no strength to compare. */
  private static FillerComparison compared(ReadCase read, SectionProfile profile) {
    FillerComparison comparison =
        FillerComparison.of(read.session(), read.caseFile().weld(), read.caseFile().requirement());
    return profile.soundness().comparesFillers() ? comparison : comparison.withoutStrengths();
  }

  private static boolean lacksMoreThanItsFiller(Soundness soundness) {
    return soundness.notSound() && !soundness.comparesFillers();
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
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("fillers", List.of());
    root.put("requirement", standing.json());
    notices.addTo(root);
    String json = JsonText.of(root);
    String text =
        Paragraph.of(weldCase.title())
            + Paragraph.of("No filler is ranked: none makes a sound joint of this weld.");
    Map<String, byte[]> files = Map.of("result.json", json.getBytes(StandardCharsets.UTF_8));
    return new Answer(
        text + standing.text(), text + standing.brief(), json, files, ExitStatus.REQUIREMENT_OPEN);
  }
}
