package afterweld.cli.choice;

import afterweld.CaseSession;
import afterweld.charts.report.SheetPage;
import afterweld.choice.FurnaceSheet;
import afterweld.choice.answer.Objection;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.command.Standing;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.ResultCautions;
import afterweld.document.SheetJson;
import afterweld.section.soundness.Soundness;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

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
      "  afterweld sheet cli/examples/hub-casting.yaml --units us --out hub"
    })
public final class SheetCommand implements Callable<Integer> {
  private static final String NOTHING_HARDENS =
      "No base of this joint answers to a hardening heat treatment, and the case names none: there"
          + " is nothing to tell a furnace shop. An anneal named in after_weld would have a sheet.";

  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  public SheetCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    return desk.runHeaded(
        options.caseFile(), options.output(), "sheet", () -> "writing the sheet", this::answer);
  }

  private Answer answer(ReadCase read) {
    CaseSession session = read.session();
    Soundness soundness = session.profile().soundness();
    Standing standing = Standing.of(session, options.units());
    if (soundness.notSound()) {
      return none(session, unsound(soundness), standing).atLeast(ExitStatus.REQUIREMENT_OPEN);
    }
    Optional<FurnaceSheet> sheet = session.sheet(options.units());
    if (sheet.isEmpty()) {
      return none(session, List.of(NOTHING_HARDENS), standing);
    }
    List<String> refusals = sheet.get().refusals();
    return refusals.isEmpty()
        ? answer(sheet.get(), session.cautions(ResultCautions.SHEET), standing)
        : none(session, refusedStandard(refusals), standing);
  }

  private static List<String> unsound(Soundness soundness) {
    List<String> reasons = new ArrayList<>();
    reasons.add("No furnace makes a joint of this weld: " + soundness.note());
    reasons.addAll(soundness.remedies());
    return reasons;
  }

  private static List<String> refusedStandard(List<String> refusals) {
    List<String> reasons = new ArrayList<>();
    reasons.add(
        "The case names no treatment, and the standard one of its base must not be run on this"
            + " weld:");
    reasons.addAll(refusals);
    reasons.add("Leave it as welded; 'afterweld fillers' compares the fillers.");
    return reasons;
  }

  private static Answer none(CaseSession session, List<String> reasons, Standing standing) {
    String title = session.caseFile().weld().title();
    String text = SheetText.none(title, reasons);
    List<Objection> objections = session.objections();
    String json =
        SheetJson.none(
            title, reasons, standing.metric(), session.profile().soundness(), objections);
    Map<String, byte[]> files = Map.of("result.json", json.getBytes(StandardCharsets.UTF_8));
    return new Answer(
            text + standing.text(), text + standing.brief(), json, files, standing.exitStatus())
        .against(objections);
  }

  /** The furnace shop gets no verdict on the joint: it stands in the answer, not in its files. */
  private static Answer answer(FurnaceSheet sheet, List<String> cautions, Standing standing) {
    String text = SheetText.of(sheet, cautions);
    String json = SheetJson.of(sheet, standing.metric(), cautions);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("sheet.txt", text.getBytes(StandardCharsets.UTF_8));
    files.put("sheet.html", SheetPage.of(sheet, cautions).getBytes(StandardCharsets.UTF_8));
    String asWelded = sheet.ownSchedule() ? "" : standing.asWelded();
    return new Answer(
            text + standing.text() + asWelded,
            text + standing.brief() + asWelded,
            json,
            files,
            standing.exitStatus())
        .against(sheet.objections())
        .on(sheet.soundness());
  }
}
