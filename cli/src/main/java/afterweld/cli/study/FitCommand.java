package afterweld.cli.study;

import afterweld.CaseSession;
import afterweld.casefile.TraverseReader;
import afterweld.casefile.text.Fault;
import afterweld.charts.TraverseChart;
import afterweld.charts.plot.Picture;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.files.CaseInput;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.FitCsv;
import afterweld.document.FitJson;
import afterweld.document.Notices;
import afterweld.document.ResultCautions;
import afterweld.quantity.UnitSystem;
import afterweld.study.HardnessTraverse;
import afterweld.study.RobustFit;
import afterweld.study.TraverseFit;
import afterweld.study.UnpredictedPoints;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A measured hardness traverse against a case. */
@Command(
    name = "fit",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "A measured hardness traverse against a case: both in one picture, arc efficiency, base"
            + " hardness and centre with their ranges, and the case with the efficiency put in.",
    footerHeading = "%nExamples:%n",
    footer = {"  afterweld fit cli/examples/fork-arm.yaml cli/examples/fork-arm-traverse.csv"})
public final class FitCommand implements Callable<Integer> {
  private final CaseDesk desk;
  private final FittedCases fittedCases;

  @Mixin private CaseOptions options;

  @Option(
      names = "--after-heat-treatment",
      description = "The traverse was measured after the heat treatment, not as welded.")
  private boolean afterHeatTreatment;

  @Parameters(
      index = "1",
      paramLabel = "TRAVERSE",
      description =
          "CSV with a head: distance_mm or distance_in, HV, HB or HRB, and sd if it is known.")
  private Path traverseFile;

  public FitCommand(Streams streams, CaseSource cases, FittedCases fittedCases) {
    this.desk = new CaseDesk(streams, cases);
    this.fittedCases = fittedCases;
  }

  @Override
  public Integer call() {
    return desk.runHeaded(
        options.caseFile(), options.output(), "fit", () -> "fitting the traverse", this::headed);
  }

  /** A weld that is no joint has hardness all the same: whether one was fitted decides. */
  private Answer headed(ReadCase read) {
    Answer answer = answer(read);
    Answer first = answer.against(read.session().objections()).on(read.session().soundness());
    return new Answer(
        first.text(), first.brief(), first.json(), first.files(), answer.exitStatus());
  }

  private Answer answer(ReadCase read) {
    WeldCase weld = read.caseFile().weld();
    if (afterHeatTreatment && weld.afterWeld().isEmpty()) {
      throw new InputFault(
          "--after-heat-treatment: the case names no heat treatment after welding; write it as"
              + " 'after_weld', or leave the option out");
    }
    TraverseFit fit = fit(read.session());
    UnitSystem units = options.units();
    Notices notices = read.session().notices(ResultCautions.FIT).after("fit", fit.warnings());
    FitTable table = new FitTable(weld, fit, afterHeatTreatment, notices, units);
    String json = FitJson.of(weld, fit, notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("fit.txt", table.text().getBytes(StandardCharsets.UTF_8));
    files.put("fit.csv", FitCsv.of(fit, units).getBytes(StandardCharsets.UTF_8));
    fit.fit()
        .map(found -> fitted(table, fit, found.estimates().get(0)))
        .ifPresent(text -> files.put(fittedName(), text.getBytes(StandardCharsets.UTF_8)));
    Picture picture =
        TraverseChart.of(fit, weld.title(), String.join(" ", notices.cautions()), units);
    files.putAll(DrawnFiles.of(List.of(picture)));
    return new Answer(table.text(), table.answer(), json, files, status(fit));
  }

  private static int status(TraverseFit fit) {
    return fit.fit().isPresent() ? ExitStatus.DONE : ExitStatus.REQUIREMENT_OPEN;
  }

  private TraverseFit fit(CaseSession session) {
    HardnessTraverse traverse = traverse(session);
    try {
      return afterHeatTreatment ? session.fitTreated(traverse) : session.fit(traverse);
    } catch (UnpredictedPoints unpredicted) {
      throw new InputFault(traverseFile + ": " + unpredicted.getMessage());
    }
  }

  private HardnessTraverse traverse(CaseSession session) {
    TraverseReader reading =
        session.readTraverse(traverseFile.toString(), new CaseInput(traverseFile).content());
    return reading
        .traverse()
        .orElseThrow(() -> new InputFault(reading.faults().stream().map(Fault::toString).toList()));
  }

  private String fittedName() {
    boolean json = options.caseFile().toString().endsWith(".json");
    return new CaseInput(options.caseFile()).name() + "-fitted" + (json ? ".json" : ".yaml");
  }

  private String fitted(FitTable table, TraverseFit fit, RobustFit.Estimate efficiency) {
    byte[] content = new CaseInput(options.caseFile()).content();
    List<String> remarks = table.remarks(String.valueOf(traverseFile.getFileName()));
    OptionalDouble half =
        fit.misfit().isPresent()
            ? OptionalDouble.empty()
            : OptionalDouble.of(efficiency.halfWidth() / efficiency.value());
    return fittedCases.of(
        options.caseFile().toString(), content, fit.efficiencies(), half, remarks);
  }
}
