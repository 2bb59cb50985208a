package afterweld.cli;

import afterweld.casefile.CaseFile;
import afterweld.joint.JointReport;
import afterweld.section.SectionProfile;
import afterweld.thermal.HeatInputException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The main job: from a case to its section, on the terminal and in a folder. */
@Command(
    name = "profile",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description =
        "Zones, hardness, yield and tensile strength across the weld: before welding, as welded and"
            + " after heat treatment.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  afterweld profile cli/examples/fork-arm.yaml",
      "  afterweld profile cli/examples/fork-arm.yaml --units us --out results",
      "  afterweld profile cli/examples/fork-arm.yaml --json"
    })
final class ProfileCommand implements Callable<Integer> {
  private final Streams streams;
  private final CaseSource cases;
  private final Simulation simulation;
  private final Pictures pictures;

  @Mixin private OutputOptions output;
  @Mixin private UnitsOption unitsOption;

  @Parameters(paramLabel = "CASE", description = "Case file, YAML or JSON.")
  private Path caseFile;

  @Option(
      names = "--stages",
      description = "Show the states between the steps of the heat treatment too.")
  private boolean stages;

  ProfileCommand(Streams streams, CaseSource cases, Simulation simulation, Pictures pictures) {
    this.streams = streams;
    this.cases = cases;
    this.simulation = simulation;
    this.pictures = pictures;
  }

  @Override
  public Integer call() {
    CaseInput input = new CaseInput(caseFile);
    ReadCase read = cases.read(caseFile.toString(), input.content());
    Path target = output.folderFor(input);
    OutputFolder folder = OutputFolder.claim(target, caseFile);
    ProfileResult result = compute(read);
    Map<String, byte[]> files = waitFor("drawing the charts", () -> result.files(pictures));
    folder.write(files);
    print(result, target, files.keySet());
    return result.exitStatus();
  }

  private ProfileResult compute(ReadCase read) {
    SectionProfile profile = waitFor("computing the section", () -> section(read));
    CaseFile asked = read.caseFile();
    JointReport joint = JointReport.of(profile, asked.joint());
    return new ProfileResult(profile, joint, asked.requirement(), unitsOption.units());
  }

  private SectionProfile section(ReadCase read) {
    try {
      return simulation.of(read.caseFile().weld(), stages);
    } catch (HeatInputException fault) {
      String pointer = "/passes/" + fault.pass() + "/" + fault.field();
      throw new InputFault(read.placed().apply(pointer, fault.getMessage()));
    }
  }

  private <T> T waitFor(String what, Supplier<T> work) {
    return Progress.during(streams, what, output.quiet(), work);
  }

  private void print(ProfileResult result, Path target, Set<String> names) {
    PrintWriter out = streams.out();
    if (output.json()) {
      out.print(result.json());
    } else if (output.quiet()) {
      out.print(result.table().answer());
    } else {
      out.print(result.table().text());
      out.println();
      out.print(Paragraph.of("Written to " + target + ": " + String.join(", ", names)));
    }
  }
}
