package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The POSIX start script, with a Java and a Maven that only write down what they were told. */
@DisabledOnOs(OS.WINDOWS)
class StartScriptTest {
  private static final String FAKE_JAVA =
      """
      #!/bin/sh
      if [ "$1" = -version ]; then
        echo 'openjdk version "%s" 2021-10-19' >&2
        exit 0
      fi
      for argument; do
        printf '<%%s>' "$argument" >>"$LOG"
        case $argument in
          -XX:ArchiveClassesAtExit=*) training=yes; archive=${argument#*=} ;;
        esac
      done
      echo >>"$LOG"
      if [ -n "${training:-}" ]; then
        echo noise; echo noise >&2
        [ -n "${NO_ARCHIVE:-}" ] || echo classes >"$archive"
        exit 134
      fi
      case "$*" in
        *VerifySharedSpaces*) exit "${UNFIT:-0}" ;;
      esac
      exit "${STATUS:-0}"
      """;

  private static final String FAKE_MAVEN =
      """
      #!/bin/sh
      echo "mvn $*" >>"$LOG"
      echo 'maven speaks'
      sleep 0.2
      [ -z "${BROKEN:-}" ] || exit 1
      mkdir -p cli/target
      echo jar >cli/target/afterweld.jar
      """;

  private static final List<String> TOOLS =
      List.of(
          "cat",
          "dirname",
          "find",
          "head",
          "mkdir",
          "mv",
          "readlink",
          "rm",
          "sed",
          "sleep",
          "touch");

  @TempDir Path root;
  private Path house;
  private Path script;
  private Path bin;
  private Path log;
  private final Map<String, String> environment = new HashMap<>();

  @BeforeEach
  void buildHouse() throws IOException {
    house = root.resolve("a house");
    script = house.resolve("cli").resolve("afterweld");
    for (String module : List.of("simulator", "charts", "cli")) {
      Files.createDirectories(house.resolve(module).resolve("src").resolve("main"));
      Files.writeString(house.resolve(module).resolve("pom.xml"), "<project/>");
    }
    Files.writeString(house.resolve("pom.xml"), "<project/>");
    Files.copy(Path.of("afterweld"), script);
    bin = Files.createDirectories(root.resolve("bin"));
    log = root.resolve("log");
    for (String tool : TOOLS) {
      program(bin.resolve(tool), "#!/bin/sh\nexec " + find(tool) + " \"$@\"\n");
    }
    program(bin.resolve("java"), FAKE_JAVA.formatted("17.0.1"));
    program(bin.resolve("mvn"), FAKE_MAVEN);
    environment.put("PATH", bin.toString());
    environment.put("LOG", log.toString());
  }

  private static Path find(String tool) {
    Path path = Path.of("/bin", tool);
    return Files.exists(path) ? path : Path.of("/usr/bin", tool);
  }

  private static Path program(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
    return Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  /** What a run left behind. */
  private record Ran(int status, String out, String err) {}

  private Process start(Path started, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(started.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(root.toFile());
    builder.environment().clear();
    builder.environment().putAll(environment);
    return builder.start();
  }

  private static Ran end(Process process) throws Exception {
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "still running");
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    return new Ran(process.exitValue(), out, err);
  }

  private Ran run(String... arguments) throws Exception {
    return end(start(script, arguments));
  }

  private List<String> logged() throws IOException {
    return Files.exists(log) ? Files.readAllLines(log) : List.of();
  }

  private long builds() throws IOException {
    return logged().stream().filter(line -> line.startsWith("mvn ")).count();
  }

  private long trainings() throws IOException {
    return logged().stream().filter(line -> line.contains("ArchiveClassesAtExit")).count();
  }

  private String lastStart() throws IOException {
    List<String> lines = logged();
    return lines.get(lines.size() - 1);
  }

  private Path jar() {
    return house.resolve("cli").resolve("target").resolve("afterweld.jar");
  }

  private void setAge(Path file, int secondsAgo) throws IOException {
    Files.setLastModifiedTime(
        file, FileTime.fromMillis(System.currentTimeMillis() - 1000L * secondsAgo));
  }

  @Test
  void theFirstStartBuildsAndSaysSoInOneLine() throws Exception {
    Ran first = run("--help");
    assertEquals(0, first.status(), first.err());
    assertEquals("", first.out());
    assertEquals(
        List.of(
            "afterweld: building the program; the first time takes a minute or two",
            "maven speaks"),
        first.err().lines().toList());
    Ran second = run("--help");
    assertEquals("", second.err());
    assertEquals(1, builds());
    assertTrue(lastStart().endsWith("<-jar><" + jar().toRealPath() + "><--help>"), lastStart());
  }

  @Test
  void anArchiveIsMadeOnceForEachJarAndUsed() throws Exception {
    run();
    run();
    assertEquals(1, trainings());
    assertTrue(lastStart().contains("<-XX:SharedArchiveFile="), lastStart());
    assertTrue(lastStart().contains("<-Xshare:auto>"), lastStart());
    assertTrue(lastStart().contains("<-Xlog:disable>"), lastStart());
    setAge(house.resolve("cli").resolve("target").resolve("afterweld.jsa"), 60);
    run();
    assertEquals(2, trainings());
    assertEquals(1, builds());
  }

  @Test
  void withoutAnArchiveItRunsAllTheSameAndDoesNotTryAgain() throws Exception {
    environment.put("NO_ARCHIVE", "yes");
    assertEquals(0, run("x").status());
    assertEquals(0, run("x").status());
    assertEquals(1, trainings());
    assertFalse(lastStart().contains("SharedArchiveFile"), lastStart());
  }

  @Test
  void anArchiveThatDoesNotBearAFirstStartIsNeverUsed() throws Exception {
    environment.put("UNFIT", "134");
    assertEquals(0, run("x").status());
    assertEquals(0, run("x").status());
    assertEquals(1, trainings());
    assertFalse(lastStart().contains("SharedArchiveFile"), lastStart());
  }

  @Test
  void aNewerSourceIsBuilt() throws Exception {
    run();
    setAge(jar(), 60);
    Path source = house.resolve("simulator").resolve("src").resolve("main").resolve("A.java");
    Files.writeString(source, "class A {}");
    setAge(source, 30);
    run();
    assertEquals(2, builds());
    run();
    assertEquals(2, builds());
  }

  @Test
  void argumentsArriveUntouched() throws Exception {
    run("profile", "a b", "", "*", "$HOME", "it's", "\"q\"", "-n", "\\");
    String expected = "<profile><a b><><*><$HOME><it's><\"q\"><-n><\\>";
    assertTrue(lastStart().endsWith(expected), lastStart());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void theExitStatusIsPassedOn(int status) throws Exception {
    environment.put("STATUS", Integer.toString(status));
    assertEquals(status, run().status());
  }

  @Test
  void itIsFoundThroughLinks() throws Exception {
    Path links = Files.createDirectories(root.resolve("links"));
    Path first =
        Files.createSymbolicLink(links.resolve("one"), Path.of("../a house/cli/afterweld"));
    Path second = Files.createSymbolicLink(root.resolve("two"), first);
    assertEquals(0, end(start(second, "y")).status());
    assertTrue(lastStart().endsWith("<" + jar().toRealPath() + "><y>"), lastStart());
  }

  @Test
  void javaHomeIsHonoured() throws Exception {
    Path home = root.resolve("my java");
    program(
        home.resolve("bin").resolve("java"),
        FAKE_JAVA.formatted("21").replace("$LOG", "$LOG.home"));
    environment.put("JAVA_HOME", home.toString());
    assertEquals(0, run("z").status());
    assertTrue(Files.readString(root.resolve("log.home")).contains("<z>"));
  }

  @Test
  void anotherJavaGetsAnotherArchive() throws Exception {
    run();
    javaHomeIsHonoured();
    assertTrue(Files.readString(root.resolve("log.home")).contains("ArchiveClassesAtExit"));
  }

  private void assertRefused(Ran ran, String... words) {
    assertEquals(3, ran.status());
    assertEquals("", ran.out());
    assertEquals(1, ran.err().lines().count(), ran.err());
    for (String word : words) {
      assertTrue(ran.err().contains(word), ran.err());
    }
  }

  @Test
  void aWrongJavaHomeIsNamed() throws Exception {
    environment.put("JAVA_HOME", "/nowhere");
    assertRefused(run(), "/nowhere", "Java 17");
  }

  @Test
  void missingJavaSaysWhatToInstall() throws Exception {
    Files.delete(bin.resolve("java"));
    assertRefused(run(), "install a Java 17");
  }

  @ParameterizedTest
  @ValueSource(strings = {"11.0.2", "1.8.0_292"})
  void anOldJavaSaysWhatToInstall(String version) throws Exception {
    program(bin.resolve("java"), FAKE_JAVA.formatted(version));
    assertRefused(run(), "install a Java 17", "is Java " + version);
  }

  @Test
  void missingMavenSaysWhatToInstall() throws Exception {
    Files.delete(bin.resolve("mvn"));
    assertRefused(run(), "install Maven");
  }

  @Test
  void withoutSourcesMavenIsNotNeeded() throws Exception {
    run();
    Files.delete(bin.resolve("mvn"));
    Files.delete(house.resolve("pom.xml"));
    assertEquals(0, run("q").status());
  }

  @Test
  void aFailedBuildEndsTheRun() throws Exception {
    environment.put("BROKEN", "yes");
    Ran ran = run();
    assertEquals(3, ran.status());
    assertTrue(
        ran.err().endsWith("afterweld: the build failed; see the messages above\n"), ran.err());
    assertFalse(Files.exists(house.resolve("cli").resolve("target").resolve("afterweld.lock")));
  }

  @Test
  void twoStartsAtOnceBuildOnce() throws Exception {
    Process first = start(script, "one");
    Process second = start(script, "two");
    assertEquals(0, end(first).status());
    assertEquals(0, end(second).status());
    assertEquals(1, builds());
  }

  @Test
  void aLockOfAKilledBuildIsTakenOver() throws Exception {
    Process gone = new ProcessBuilder("true").start();
    gone.waitFor();
    Path lock = house.resolve("cli").resolve("target").resolve("afterweld.lock");
    Files.createDirectories(lock);
    Files.writeString(lock.resolve("process"), Long.toString(gone.pid()));
    assertEquals(0, run().status());
    assertEquals(1, builds());
  }
}
