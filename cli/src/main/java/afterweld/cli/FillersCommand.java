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
    FillerComparison comparison = FillerComparison.of(weldCase, read.caseFile().requirement());
    FillerTable table = new FillerTable(weldCase, comparison, notices, units);
    String json = FillerJson.of(weldCase, comparison, notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    Picture picture = FillerChart.of(comparison, weldCase.title(), notices.cautions(), units);
    files.putAll(DrawnFiles.of(List.of(picture)));
    return new Answer(table.text(), table.answer(), json, files, ExitStatus.DONE);
  }
}
