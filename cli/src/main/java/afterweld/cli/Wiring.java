package afterweld.cli;

import afterweld.CaseSession;
import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.casefile.FittedCase;
import afterweld.casefile.text.Fault;
import afterweld.casefile.text.Positions;
import afterweld.charts.AlongWeldChart;
import afterweld.charts.FillerChart;
import afterweld.charts.ProfileCharts;
import afterweld.charts.plot.Picture;
import afterweld.charts.report.ProfileReport;
import afterweld.charts.report.ProfileReport.FillerPart;
import afterweld.choice.CaseObjections;
import afterweld.choice.filler.FillerComparison;
import afterweld.cli.choice.FillersCommand;
import afterweld.cli.choice.RoutesCommand;
import afterweld.cli.choice.SheetCommand;
import afterweld.cli.command.ReadCase;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.library.MaterialsCommand;
import afterweld.cli.library.StarterCommand;
import afterweld.cli.profile.ProfileCommand;
import afterweld.cli.profile.ProfileResult;
import afterweld.cli.study.AgeingCommand;
import afterweld.cli.study.BendCommand;
import afterweld.cli.study.FitCommand;
import afterweld.cli.study.SpreadCommand;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Streams;
import afterweld.document.ResultCautions;
import afterweld.material.Alloy;
import afterweld.material.MaterialLibrary;
import afterweld.section.SectionProfile;
import afterweld.section.WeldSession;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;

/** Which parts of the simulator and of the charts the commands work with. */
final class Wiring {
  private final WeldSession session;

  private Wiring(WeldSession session) {
    this.session = session;
  }

  /**
   * All commands, ready to run.
   *
   * @param session where what they compute is kept for the next one
   */
  static List<Object> commands(Streams streams, WeldSession session) {
    return new Wiring(session).commands(streams);
  }

  private List<Object> commands(Streams streams) {
    return List.of(
        new ProfileCommand(streams, this::read, Wiring::simulate, this::draw),
        new RoutesCommand(streams, this::read),
        new SheetCommand(streams, this::read),
        new BendCommand(streams, this::read),
        new FillersCommand(streams, this::read),
        new AgeingCommand(streams, this::read),
        new ClassroomCommand(streams),
        new SpreadCommand(streams, this::read),
        new FitCommand(streams, this::read, this::fitted),
        new MaterialsCommand(streams, Wiring::alloys),
        new StarterCommand(streams));
  }

  /** Reads a case, and meanwhile gets ready to draw: every run that reads one goes on to that. */
  private ReadCase read(String fileName, byte[] content) {
    CompletableFuture<Void> unused = CompletableFuture.runAsync(Picture::prepare);
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReading reading =
        new CaseReader(library.bases(), library.fillers()).read(fileName, content);
    return reading
        .caseFile()
        .map(
            read ->
                new ReadCase(
                    CaseSession.of(session, read),
                    (pointer, message) -> reading.positions().fault(pointer, message).toString()))
        .orElseThrow(() -> new InputFault(reading.faults().stream().map(Fault::toString).toList()));
  }

  /** Checks on the way that the new case reads as meant: a wrong one is never written. */
  private String fitted(
      String fileName,
      byte[] content,
      List<Double> efficiencies,
      OptionalDouble half,
      List<String> remarks) {
    MaterialLibrary library = MaterialLibrary.standard();
    CaseReader reader = new CaseReader(library.bases(), library.fillers());
    String text = new String(content, StandardCharsets.UTF_8);
    Positions positions = reader.read(fileName, content).positions();
    String fitted = FittedCase.of(text, positions, efficiencies, half, remarks);
    WeldCase again = read(fileName, fitted.getBytes(StandardCharsets.UTF_8)).caseFile().weld();
    for (int i = 0; i < efficiencies.size(); i++) {
      double written = again.passes().get(i).efficiency().orElse(Double.NaN);
      if (!(Math.abs(written - efficiencies.get(i)) < 1e-4)) {
        throw new IllegalStateException("pass " + i + " has efficiency " + written);
      }
    }
    return fitted;
  }

  private static SectionProfile simulate(CaseSession asked, boolean stages) {
    return stages ? asked.profileOfEveryStage() : asked.profile();
  }

  private Map<String, byte[]> draw(ProfileResult result) {
    CompletableFuture<Optional<FillerPart>> fillers =
        CompletableFuture.supplyAsync(() -> fillers(result));
    List<Picture.Files> drawn =
        new ArrayList<>(
            Picture.drawAll(
                ProfileCharts.of(result.profile(), result.requirement(), result.units())));
    List<Picture> along =
        result.along().stream().map(view -> AlongWeldChart.of(view, result.units())).toList();
    drawn.addAll(Picture.drawAll(along));
    Map<String, byte[]> files = DrawnFiles.ofDrawn(drawn);
    String report =
        new ProfileReport(
                result.profile(),
                result.joint(),
                result.judgement(result.units()),
                CaseObjections.of(result.profile().weldCase(), result.requirement()),
                result.units())
            .page(drawn, fillers.join(), result.routes());
    files.put("report.html", report.getBytes(StandardCharsets.UTF_8));
    return files;
  }

  /** The case's own filler explained, or all of them where the routes are asked for. */
  private Optional<FillerPart> fillers(ProfileResult result) {
    WeldCase weldCase = result.profile().weldCase();
    if (weldCase.filler().alloy().isEmpty()) {
      return Optional.empty();
    }
    FillerComparison comparison =
        result.routes().isPresent()
            ? FillerComparison.of(session, weldCase, result.requirement())
            : FillerComparison.ofOwnFiller(session, weldCase, result.requirement());
    Picture picture =
        FillerChart.of(
            comparison, weldCase.title(), List.of(ResultCautions.FILLERS), result.units());
    return Optional.of(new FillerPart(comparison, Picture.drawAll(List.of(picture)).get(0)));
  }

  private static List<Alloy> alloys() {
    MaterialLibrary library = MaterialLibrary.standard();
    return Stream.concat(library.bases().stream(), library.fillers().stream()).distinct().toList();
  }
}
