package afterweld.cli.study;

import afterweld.charts.AgeingChart;
import afterweld.charts.plot.Picture;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.AgeingJson;
import afterweld.document.ResultCautions;
import afterweld.quantity.UnitSystem;
import afterweld.study.AgeingStudy;
import afterweld.study.JointAgeing;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Hardness against ageing time, and where the case's schedule sits on it. */
@Command(
    name = "ageing",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Hardness and yield of base and weld metal against ageing time at several temperatures, the"
            + " window of the schedule, what it makes of the joint, and what a paint oven does.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld ageing cli/examples/fork-arm.yaml",
      "  afterweld ageing cli/examples/arm-t4-age.yaml --units us"
    })
public final class AgeingCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  public AgeingCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.run(
        options.caseFile(), options.output(), "ageing", "ageing the metals", this::answer);
  }

  private Answer answer(ReadCase read) {
    WeldCase weldCase = read.caseFile().weld();
    UnitSystem units = options.units();
    List<String> cautions = read.session().cautions(ResultCautions.AGEING);
    AgeingStudy study = read.session().ageing();
    JointAgeing joint = read.session().jointAgeing();
    AgeingTable table = new AgeingTable(weldCase, study, joint, cautions, units);
    String json =
        AgeingJson.of(
            weldCase,
            study,
            joint,
            cautions,
            read.session().soundness(),
            read.session().objections());
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    if (!study.curves().isEmpty()) {
      Picture picture = AgeingChart.of(study, weldCase.title(), cautions, units);
      files.putAll(DrawnFiles.of(List.of(picture)));
    }
    return new Answer(
        table.text(), table.answer(), json, files, ExitStatus.of(joint.asWritten().judgement()));
  }
}
