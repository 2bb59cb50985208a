package afterweld.cli;

import afterweld.charts.report.SheetPage;
import afterweld.choice.FurnaceSheet;
import afterweld.section.Cautions;
import afterweld.section.WeldCase;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The instruction for the furnace shop. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "The instruction for the furnace shop: temperatures, tolerances, soak, delay, quench, ageing,"
            + " what to measure afterwards and what to expect.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld sheet cli/examples/fork-arm.yaml",
      "  afterweld sheet cli/examples/hub-casting.yaml --out hub"
    })
final class SheetCommand implements Callable<Integer> {
  private final CaseDesk desk;

  @Mixin private OutputOptions output;

  @Parameters(paramLabel = "CASE", description = "Case file, YAML or JSON.")
  private Path caseFile;

  SheetCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.run(caseFile, output, "sheet", "writing the sheet", this::answer);
  }

  private Answer answer(ReadCase read) {
    WeldCase weldCase = read.caseFile().weld();
    FurnaceSheet sheet =
        FurnaceSheet.of(weldCase)
            .orElseThrow(
                () ->
                    new InputFault(
                        "no base of this joint answers to a hardening heat treatment, and the case"
                            + " names none: there is nothing to tell a furnace shop"));
    if (!sheet.refusals().isEmpty()) {
      throw new InputFault(sheet.refusals());
    }
    List<String> cautions = read.underPressure() ? List.of(Cautions.PRESSURE) : List.of();
    String text = SheetText.of(sheet, cautions);
    String json = SheetText.json(sheet, cautions);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("sheet.txt", text.getBytes(StandardCharsets.UTF_8));
    files.put("sheet.html", SheetPage.of(sheet, cautions).getBytes(StandardCharsets.UTF_8));
    return new Answer(text, text, json, files, ExitStatus.DONE);
  }
}
