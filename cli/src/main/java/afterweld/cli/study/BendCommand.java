package afterweld.cli.study;

import afterweld.charts.BendChart;
import afterweld.charts.plot.Picture;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.command.Standing;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.BendCsv;
import afterweld.document.BendJson;
import afterweld.document.ResultCautions;
import afterweld.joint.bend.BendReport;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** What a strip across the weld does in a bend, against an unwelded one. */
@Command(
    name = "bend",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "A strip across the weld in a bend, in every state: moment, curvature, kink, outer strain and"
            + " springback against the unwelded strip, by end couples and over an edge.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld bend cli/examples/fork-arm.yaml",
      "  afterweld bend cli/examples/cover-strip.json --units us"
    })
public final class BendCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  public BendCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.run(
        options.caseFile(), options.output(), "bend", "bending the strip", this::answer);
  }

  private Answer answer(ReadCase read) {
    UnitSystem units = options.units();
    SectionProfile profile = read.session().profile();
    BendReport report = read.session().bend();
    BendTable table = new BendTable(profile, report, units);
    String json = new BendJson(profile, report, read.session().objections()).text();
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    if (!report.states().isEmpty()) {
      files.put(
          "bend.csv",
          new BendCsv(profile.states(), report, units).text().getBytes(StandardCharsets.UTF_8));
      draw(files, profile, report);
    }
    return new Answer(
        table.text(), table.answer(), json, files, Standing.of(read.session(), units).exitStatus());
  }

  private void draw(Map<String, byte[]> files, SectionProfile profile, BendReport report) {
    List<Picture> pictures =
        BendChart.of(
            report,
            profile.states(),
            profile.weldCase().title(),
            ResultCautions.bend(profile),
            options.units());
    files.putAll(DrawnFiles.of(pictures));
  }
}
