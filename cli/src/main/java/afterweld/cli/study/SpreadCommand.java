package afterweld.cli.study;

import afterweld.NotAWeldException;
import afterweld.casefile.CaseFile;
import afterweld.casefile.GridReader;
import afterweld.charts.GridChart;
import afterweld.charts.SpreadCharts;
import afterweld.charts.plot.Picture;
import afterweld.choice.answer.Judgement;
import afterweld.cli.command.Answer;
import afterweld.cli.command.CaseDesk;
import afterweld.cli.command.CaseOptions;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.ReadCase;
import afterweld.cli.files.DrawnFiles;
import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.RunCount;
import afterweld.cli.terminal.Streams;
import afterweld.cli.terminal.Version;
import afterweld.document.GridCsv;
import afterweld.document.GridJson;
import afterweld.document.Notices;
import afterweld.document.ResultCautions;
import afterweld.document.SpreadJson;
import afterweld.quantity.UnitSystem;
import afterweld.study.GridStudy;
import afterweld.study.SpreadSettings;
import afterweld.study.SpreadStudy;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** How sure one can be of the joint, and what it depends on. */
@Command(
    name = "spread",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "The uncertainty: many joints simulated with inputs drawn from their spreads; bands along"
            + " the section, the chance of meeting the requirement, what matters most.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld spread cli/examples/fork-arm.yaml",
      "  afterweld spread cli/examples/fork-arm.yaml --runs 1000 --seed 7",
      "  afterweld spread cli/examples/fork-arm.yaml --grid travel_speed=2..4mm/s,preheat=20..150C"
    })
public final class SpreadCommand implements Callable<Integer> {
  private static final int FEWEST_RUNS = 10;
  private static final int MOST_RUNS = 100_000;

  private final CaseDesk desk;

  @Mixin private CaseOptions options;

  @Option(
      names = "--runs",
      paramLabel = "N",
      description = "Joints to simulate: 200 for a first look, 1000 for a report.")
  private Integer runs;

  @Option(names = "--seed", paramLabel = "S", description = "Seed of the draws.")
  private Long seed;

  @Option(
      names = "--grid",
      paramLabel = "INPUTS",
      description =
          "In place of the runs, a map over one or two inputs: travel_speed, preheat, current,"
              + " voltage, dilution, natural_age, solution_temperature, quench_delay,"
              + " ageing_temperature, ageing_time.")
  private String grid;

  public SpreadCommand(Streams streams, CaseSource cases) {
    this.desk = new CaseDesk(streams, cases);
  }

  @Override
  public Integer call() {
    if (runs != null && (runs < FEWEST_RUNS || runs > MOST_RUNS)) {
      throw new InputFault(
          "--runs " + runs + ": expected " + FEWEST_RUNS + " to " + MOST_RUNS + " joints");
    }
    if (grid != null && (runs != null || seed != null)) {
      throw new InputFault(
          "--grid draws nothing at random: expected no --runs and no --seed with it");
    }
    RunCount count = new RunCount(grid == null ? "joint" : "place");
    return desk.run(
        options.caseFile(),
        options.output(),
        "spread",
        count,
        read -> grid == null ? answer(read, count) : map(read, count));
  }

  private Answer answer(ReadCase read, RunCount count) {
    CaseFile asked = read.caseFile();
    if (!read.session().soundness().sound()) {
      return none(read);
    }
    UnitSystem units = options.units();
    SpreadSettings settings = settings(asked.spread());
    count.begin(settings.runs().orElse(SpreadStudy.USUAL_RUNS));
    SpreadStudy study = spread(read, settings, count);
    Notices notices = read.session().notices(ResultCautions.SPREAD);
    SpreadTable table = new SpreadTable(asked.weld(), asked.joint().gauge(), study, notices, units);
    String json = SpreadJson.of(asked.weld(), study, notices);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("spread.txt", table.text().getBytes(StandardCharsets.UTF_8));
    files.putAll(
        DrawnFiles.of(
            SpreadCharts.of(
                study, asked.weld().title(), String.join(" ", notices.cautions()), units)));
    int status = ExitStatus.of(study.judgement(units));
    return new Answer(table.text(), table.answer(), json, files, status);
  }

  private static SpreadStudy spread(ReadCase read, SpreadSettings settings, RunCount count) {
    try {
      return read.session().spread(settings, count);
    } catch (NotAWeldException fault) {
      throw read.fault(fault.pass(), fault.field(), fault.getMessage());
    }
  }

  /** A weld that is no joint has no spread of its strength. */
  private static Answer none(ReadCase read) {
    WeldCase weldCase = read.caseFile().weld();
    Judgement judgement = read.session().judgement(UnitSystem.METRIC);
    String json =
        SpreadJson.none(weldCase, judgement, read.session().notices(ResultCautions.SPREAD));
    String text =
        Paragraph.of(weldCase.title())
            + Paragraph.of(
                "No joints were simulated. 'afterweld profile' says what the weld lacks, and what"
                    + " would help if anything does.");
    Map<String, byte[]> files = Map.of("result.json", json.getBytes(StandardCharsets.UTF_8));
    return new Answer(text, text, json, files, ExitStatus.of(judgement));
  }

  private Answer map(ReadCase read, RunCount count) {
    CaseFile asked = read.caseFile();
    GridReader reading = GridReader.read(grid, asked.weld());
    if (!reading.faults().isEmpty()) {
      throw new InputFault(reading.faults().stream().map(fault -> "--grid: " + fault).toList());
    }
    count.begin(GridStudy.size(reading.axes().size()));
    GridStudy study = read.session().grid(reading.axes(), count);
    Notices notices = read.session().notices(ResultCautions.MAP);
    GridTable shown = new GridTable(asked.weld(), study, notices, options.units());
    String json = new GridJson(asked.weld(), study, notices).text();
    String csv = new GridCsv(study, options.units()).text();
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json.getBytes(StandardCharsets.UTF_8));
    files.put("map.csv", csv.getBytes(StandardCharsets.UTF_8));
    Picture picture =
        GridChart.of(
            study, asked.weld().title(), String.join(" ", notices.cautions()), options.units());
    files.putAll(DrawnFiles.of(List.of(picture)));
    return new Answer(
        shown.text(), shown.answer(), json, files, ExitStatus.of(study.asWritten().judgement()));
  }

  private SpreadSettings settings(SpreadSettings ofCase) {
    return new SpreadSettings(
        runs == null ? ofCase.runs() : OptionalInt.of(runs),
        seed == null ? ofCase.seed() : OptionalLong.of(seed),
        ofCase.dilution(),
        ofCase.beadWidth(),
        ofCase.arcEfficiency(),
        ofCase.travelSpeed(),
        ofCase.furnaceTemperature(),
        ofCase.soak(),
        ofCase.quenchDelay(),
        ofCase.ageingTime(),
        ofCase.composition());
  }
}
