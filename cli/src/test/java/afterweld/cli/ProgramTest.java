package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.text.Fault;
import afterweld.choice.answer.Requirement;
import afterweld.cli.command.CaseSource;
import afterweld.cli.command.OutputOptions;
import afterweld.cli.command.Simulation;
import afterweld.cli.files.CaseInput;
import afterweld.cli.library.MaterialsCommand;
import afterweld.cli.profile.Pictures;
import afterweld.cli.profile.ProfileCommand;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Streams;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole runs in the process, with a hand-made section in place of the computed one. */
class ProgramTest {
  private static final Pictures PICTURES = result -> Map.of("hardness.png", new byte[] {1, 2, 3});

  @TempDir Path folder;
  private Path caseFile;
  private final Fixtures.Memory memory = new Fixtures.Memory();

  @BeforeEach
  void writeCase() throws IOException {
    caseFile = Files.writeString(folder.resolve("fork-arm.yaml"), "title: Fork arm\n");
  }

  private int run(CaseSource cases, Simulation simulation, String... arguments) {
    Streams streams = memory.streams(false);
    List<Object> commands =
        List.of(
            new ProfileCommand(streams, cases, simulation, PICTURES),
            new MaterialsCommand(
                streams, () -> List.of(Fixtures.alloy6061(), Fixtures.alloy4643())));
    return new Program(streams, commands).run(arguments);
  }

  private int run(Requirement requirement, String... arguments) {
    CaseSource cases = (name, content) -> Fixtures.caseFile(requirement);
    return run(cases, (weld, stages) -> Fixtures.profile(), arguments);
  }

  private int profile(Requirement requirement, String... more) {
    Stream<String> arguments =
        Stream.concat(
            Stream.of("profile", caseFile.toString(), "--out", out().toString()), Stream.of(more));
    return run(requirement, arguments.toArray(String[]::new));
  }

  private Path out() {
    return folder.resolve("results");
  }

  private String stdout() {
    return memory.out();
  }

  private String stderr() {
    return memory.err();
  }

  @Test
  void aRunShowsTheTableAndWritesEveryFile() throws IOException {
    assertEquals(0, profile(Requirement.NONE), stderr());
    assertTrue(stdout().contains("Lowest place"), stdout());
    String words = stdout().replaceAll("\\s+", " ");
    assertTrue(words.endsWith("result.json, profile.csv, hardness.png "), words);
    assertEquals("", stderr());
    try (Stream<Path> files = Files.list(out())) {
      assertEquals(
          List.of("afterweld-files.txt", "hardness.png", "profile.csv", "result.json"),
          files.map(file -> file.getFileName().toString()).sorted().toList());
    }
  }

  @ParameterizedTest
  @CsvSource({"190, 0", "220, 1", "300, 1"})
  void theStatusSaysHowTheRequirementStands(double asked, int status) {
    assertEquals(status, profile(Fixtures.yieldOf(asked)));
  }

  @Test
  void jsonIsTheOnlyThingOnStandardOutput() throws IOException {
    assertEquals(0, profile(Requirement.NONE, "--json"));
    assertEquals(
        "Fork arm to base plate", new ObjectMapper().readTree(stdout()).get("title").asText());
    assertEquals(stdout(), Files.readString(out().resolve("result.json")));
  }

  @Test
  void quietIsShort() {
    assertEquals(0, profile(Requirement.NONE, "--quiet"));
    assertTrue(stdout().lines().count() < 14, stdout());
    assertTrue(stdout().contains("after heat treatment: lowest yield"), stdout());
  }

  @Test
  void unitsReachTableAndCsv() throws IOException {
    assertEquals(0, profile(Requirement.NONE, "--units", "US"));
    assertTrue(stdout().contains("ksi"), stdout());
    assertTrue(Files.readString(out().resolve("profile.csv")).startsWith("distance_in,"));
  }

  @Test
  void stagesReachTheSimulation() {
    CaseSource cases = (name, content) -> Fixtures.caseFile(Requirement.NONE);
    Simulation simulation =
        (weld, stages) -> {
          assertTrue(stages);
          return Fixtures.profile();
        };
    String[] arguments = {"profile", "--stages", caseFile.toString(), "--out", out().toString()};
    assertEquals(0, run(cases, simulation, arguments));
  }

  @Test
  void theCaseIsReadAsBytesUnderTheNameTheUserGave() {
    CaseSource cases =
        (name, content) -> {
          assertEquals(caseFile.toString(), name);
          assertEquals("title: Fork arm\n", new String(content, StandardCharsets.UTF_8));
          return Fixtures.caseFile(Requirement.NONE);
        };
    String[] arguments = {"profile", caseFile.toString(), "--out", out().toString()};
    assertEquals(0, run(cases, (weld, stages) -> Fixtures.profile(), arguments));
  }

  @Test
  void everyFaultOfACaseIsShownAndNothingIsWritten() {
    List<Fault> faults =
        List.of(
            new Fault("fork-arm.yaml", 3, 9, "6 (expected a length with its unit)"),
            new Fault("fork-arm.yaml", 7, 1, "unknown key"));
    CaseSource cases =
        (name, content) -> {
          throw new InputFault(faults.stream().map(Fault::toString).toList());
        };
    String[] arguments = {"profile", caseFile.toString(), "--out", out().toString()};
    assertEquals(2, run(cases, (weld, stages) -> Fixtures.profile(), arguments));
    assertEquals(2, stderr().lines().count(), stderr());
    assertTrue(stderr().contains("fork-arm.yaml:7:1: unknown key"), stderr());
    assertEquals("", stdout());
    assertFalse(Files.exists(out()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"missing.yaml", ".", "long.yaml"})
  void aCaseThatCannotBeReadIsTheUsersToPutRight(String name) throws IOException {
    Files.write(folder.resolve("long.yaml"), new byte[(1 << 20) + 1]);
    String path = folder.resolve(name).toString();
    assertEquals(2, run(Requirement.NONE, "profile", path));
    assertEquals(1, stderr().lines().count(), stderr());
    assertTrue(stderr().startsWith("afterweld: "), stderr());
  }

  @Test
  void aFolderOfAnotherKindIsRefusedBeforeAnythingIsComputed() throws IOException {
    Files.createDirectories(out());
    Files.writeString(out().resolve("holiday.txt"), "mine");
    CaseSource cases = (name, content) -> Fixtures.caseFile(Requirement.NONE);
    Simulation never =
        (weld, stages) -> {
          throw new AssertionError("computed in vain");
        };
    String[] arguments = {"profile", caseFile.toString(), "--out", out().toString()};
    assertEquals(2, run(cases, never, arguments));
    assertTrue(stderr().contains("--out"), stderr());
  }

  static List<Throwable> breakdowns() {
    return List.of(
        new IllegalStateException("secret"),
        new StackOverflowError(),
        new OutOfMemoryError(),
        new NoClassDefFoundError("x"));
  }

  @ParameterizedTest
  @MethodSource("breakdowns")
  void aBreakdownIsOneSentence(Throwable breakdown) {
    CaseSource cases =
        (name, content) -> {
          throw sneaky(breakdown);
        };
    String[] arguments = {"profile", caseFile.toString(), "--out", out().toString()};
    assertEquals(3, run(cases, (weld, stages) -> Fixtures.profile(), arguments));
    assertEquals(1, stderr().lines().count(), stderr());
    assertTrue(stderr().contains(breakdown.getClass().getSimpleName()), stderr());
    assertTrue(stderr().contains("please report"), stderr());
    assertFalse(Files.exists(out()));
  }

  private static RuntimeException sneaky(Throwable breakdown) {
    if (breakdown instanceof Error error) {
      throw error;
    }
    return (RuntimeException) breakdown;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "profile",
        "profile a b",
        "prfile x",
        "profile x --unit us",
        "profile x --units si",
        ""
      })
  void aMisspeltCommandLineIsToldInAFewLines(String line) {
    String[] arguments = line.isEmpty() ? new String[0] : line.split(" ", -1);
    assertEquals(2, run(Requirement.NONE, arguments));
    assertTrue(stderr().contains("afterweld"), stderr());
    assertFalse(stderr().contains("Exception"), stderr());
    assertEquals("", stdout());
  }

  @Test
  void aFileNameWithAnAtSignIsAFileName() {
    assertEquals(2, run(Requirement.NONE, "profile", "@" + caseFile));
    assertTrue(stderr().contains("there is no file @"), stderr());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "profile --help", "materials --help"})
  void helpShowsAnExample(String line) {
    assertEquals(0, run(Requirement.NONE, line.split(" ", -1)));
    assertTrue(stdout().contains("Example"), stdout());
    assertTrue(stdout().contains("  afterweld "), stdout());
    stdout().lines().forEach(text -> assertTrue(text.length() <= 80, text));
  }

  @Test
  void theVersionIsTheOneThatWasBuilt() {
    assertEquals(0, run(Requirement.NONE, "--version"));
    assertTrue(stdout().matches("afterweld \\d+\\.\\d+\\.\\d+\\s+"), stdout());
  }

  @Test
  void completionKnowsTheCommandsAndUnits() {
    assertEquals(0, run(Requirement.NONE, "generate-completion"));
    assertTrue(stdout().contains("materials"), "no command");
    assertTrue(stdout().contains("\"metric\" \"us\""), "no units");
  }

  @ParameterizedTest
  @CsvSource({"No space left on device, 2", "Broken pipe, 0"})
  void aFullDiskIsToldButNotAReaderThatHadEnough(String reason, int status) {
    OutputStream broken =
        new OutputStream() {
          @Override
          public void write(int octet) throws IOException {
            throw new IOException(reason);
          }
        };
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Streams streams = new Streams(broken, err, StandardCharsets.UTF_8, false);
    MaterialsCommand materials = new MaterialsCommand(streams, () -> List.of(Fixtures.alloy6061()));
    assertEquals(status, new Program(streams, List.of(materials)).run("materials"));
    String expected = status == 0 ? "" : "afterweld: cannot write the output: the disk is full";
    assertEquals(expected, err.toString(StandardCharsets.UTF_8).strip());
  }

  @Test
  void theDefaultFolderIsNamedAfterTheCase() {
    assertEquals("fork-arm", new CaseInput(caseFile).name());
    assertEquals("arm.v2", new CaseInput(Path.of("x", "arm.v2.yml")).name());
    assertEquals(".yaml", new CaseInput(Path.of(".yaml")).name());
    assertEquals(
        Path.of("afterweld-out", "fork-arm"),
        new OutputOptions().folderFor(new CaseInput(caseFile), ""));
    assertEquals(
        Path.of("afterweld-out", "fork-arm-fillers"),
        new OutputOptions().folderFor(new CaseInput(caseFile), "fillers"));
  }
}
