package afterweld.cli;

import afterweld.charts.FillerChart;
import afterweld.charts.Picture;
import afterweld.choice.FillerComparison;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Which filler suits the joint, and why one answers to heat treatment and another does not. */
@Command(
    name = "fillers",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Every filler held against the joint: weld metal at this dilution and over all, as welded and"
            + " after heat treatment, cracking, colour, service temperature.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld fillers cli/examples/fork-arm.yaml",
      "  afterweld fillers cli/examples/fork-arm.yaml --json"
    })
final class FillersCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  FillersCommand(Streams streams, CaseSource cases) {
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
    Notices notices = read.notices(FillerTable.CAUTION);
    if (notices.soundness().notSound() && weldCase.filler().alloy().isPresent()) {
      return none(weldCase, notices);
    }
    FillerComparison comparison = FillerComparison.of(weldCase, read.caseFile().requirement());
    FillerTable table = new FillerTable(weldCase, comparison, notices, units);
    String json = FillerJson.of(weldCase, comparison, notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    Picture picture = FillerChart.of(comparison, weldCase.title(), notices.cautions(), units);
    files.putAll(DrawnFiles.of(List.of(picture)));
    return new Answer(table.text(), table.answer(), json, files, ExitStatus.DONE);
  }

  /** No filler makes a joint of such a weld; one without filler may lack nothing else. */
  private static Answer none(WeldCase weldCase, Notices notices) {
    Map<String, Object> root = new LinkedHashMap<>();
    root.put("title", weldCase.title());
    root.put("fillers", List.of());
    notices.addTo(root);
    String json = JsonText.of(root);
    String text =
        Paragraph.of(weldCase.title())
            + Paragraph.of("No filler is ranked: none makes a sound joint of this weld.");
    Map<String, byte[]> files = Map.of("result.json", json.getBytes(StandardCharsets.UTF_8));
    return new Answer(text, text, json, files, ExitStatus.REQUIREMENT_OPEN);
  }
}
