package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import afterweld.cli.files.FolderMark;
import afterweld.cli.files.OutputFolder;
import afterweld.cli.terminal.InputFault;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs that are killed at any moment, and folders that another run, a link or the disk stands in
 * front of: the folder is old or new, and the next run leaves nothing behind.
 */
class OddWritingTest {
  private static final boolean FULL = Boolean.getBoolean("afterweld.fuzz");
  private static final long SEED = Long.getLong("afterweld.fuzz.seed", 13);
  private static final int KILLS = Integer.getInteger("afterweld.fuzz.kills", FULL ? 900 : 6);
  private static final int COMMAND_KILLS =
      Integer.getInteger("afterweld.fuzz.commands", FULL ? 100 : 0);
  private static final List<String> COMMANDS =
      List.of("profile", "routes", "fillers", "ageing", "bend", "sheet", "spread");

  @TempDir Path root;
  private Path caseFile;
  private Path folder;

  @BeforeEach
  void begin() throws IOException {
    caseFile = Files.writeString(root.resolve("a.yaml"), "a");
    folder = root.resolve("results");
  }

  @Test
  void aKilledRunLeavesOldFilesOrNewOnes() throws Exception {
    Random random = new Random(SEED);
    int generation = 0;
    for (int i = 0; i < KILLS; i++) {
      Process process =
          java("WritingOverAndOver", folder.toString(), caseFile.toString(), "" + (generation + 1));
      while (!Files.exists(folder) && process.isAlive()) {
        Thread.sleep(10);
      }
      Thread.sleep(FULL ? 100 + random.nextInt(400) : 250 + random.nextInt(150));
      process.destroyForcibly().waitFor();
      generation = generationAfterRecovery(generation);
    }
    assertTrue(generation > 0, "no run came to writing");
    OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(generation + 1));
    assertEquals(List.of("a.yaml", "results"), names(root));
  }

  /** A folder that is old or new at once, or when its next run has completed the change. */
  private int generationAfterRecovery(int before) throws IOException {
    if (!Files.exists(folder)) {
      return before;
    }
    OutputFolder.claim(folder, caseFile);
    FolderMark mark = FolderMark.of(folder).orElseThrow();
    TreeSet<Integer> generations = new TreeSet<>();
    for (String name : mark.files()) {
      List<String> lines = Files.readAllLines(folder.resolve(name));
      assertEquals(400, lines.size(), name);
      lines.forEach(line -> generations.add(Integer.valueOf(line)));
    }
    assertEquals(1, generations.size(), () -> "mixed: " + generations);
    int now = generations.first();
    assertTrue(now >= before, "older than before");
    assertEquals(
        WritingOverAndOver.files(now).keySet().stream().sorted().toList(),
        mark.files().stream().sorted().toList());
    List<String> visible = names(folder).stream().filter(name -> !name.startsWith(".")).toList();
    assertEquals(mark.files().size() + 1, visible.size(), visible::toString);
    return now;
  }

  @Test
  void aKilledCommandLeavesNothingThatItsNextRunDoesNotPutRight() throws Exception {
    Random random = new Random(SEED);
    for (int i = 0; i < COMMAND_KILLS; i++) {
      String command = COMMANDS.get(i % COMMANDS.size());
      Process process =
          java("Main", command, "examples/autogenous-bead.yaml", "--out", folder.toString());
      if (!process.waitFor(300 + random.nextInt(3500), TimeUnit.MILLISECONDS)) {
        process.destroyForcibly().waitFor();
      }
      if (Files.exists(folder)) {
        OutputFolder.claim(folder, Path.of("examples/autogenous-bead.yaml"));
        for (String name : FolderMark.of(folder).orElseThrow().files()) {
          assertTrue(Files.size(folder.resolve(name)) > 0, name);
        }
      }
    }
    if (COMMAND_KILLS > 0) {
      java("Main", "profile", "examples/autogenous-bead.yaml", "--out", folder.toString())
          .waitFor();
      assertEquals(List.of("a.yaml", "results"), names(root));
      assertTrue(names(folder).stream().noneMatch(name -> name.startsWith(".")));
    }
  }

  @Test
  void aSwapThatWasCutShortIsCompletedByTheNextRun() throws IOException {
    OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(1));
    Path other = root.resolve("other");
    OutputFolder.claim(other, caseFile).write(WritingOverAndOver.files(2));
    Files.move(other, folder.resolve(".afterweld-ready"));
    Files.move(folder.resolve(".afterweld-ready/file-0.txt"), folder.resolve("new-0.txt"));
    Files.move(
        folder.resolve("new-0.txt"),
        folder.resolve("file-0.txt"),
        StandardCopyOption.REPLACE_EXISTING);
    assertEquals(2, generationAfterRecovery(1));
    assertFalse(names(folder).contains("odd.txt"));
    assertFalse(names(folder).contains(".afterweld-ready"));
  }

  @Test
  void aDraftThatWasCutShortGoesWithTheNextRun() throws IOException {
    OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(1));
    Files.createDirectories(folder.resolve(".afterweld-draft"));
    Files.writeString(folder.resolve(".afterweld-draft/file-0.txt"), "half");
    Files.writeString(root.resolve(".afterweld-results-lock"), "");
    assertEquals(1, generationAfterRecovery(1));
    OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(2));
    assertTrue(names(folder).stream().noneMatch(name -> name.startsWith(".")));
    assertEquals(List.of("a.yaml", "results"), names(root));
  }

  @Test
  void aSecondRunIsToldThatTheFirstIsWriting() throws IOException {
    OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(1));
    Path lock = root.resolve(".afterweld-results-lock");
    try (FileChannel held =
            FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock taken = held.lock()) {
      assertTrue(taken.isValid());
      OutputFolder output = OutputFolder.claim(folder, caseFile);
      Map<String, byte[]> files = WritingOverAndOver.files(2);
      InputFault fault = assertThrows(InputFault.class, () -> output.write(files));
      assertTrue(fault.getMessage().startsWith("another run is writing to "), fault::getMessage);
    }
    assertEquals(1, generationAfterRecovery(1));
  }

  @Test
  void twoRunsIntoOneFolderLeaveTheFilesOfOne() throws Exception {
    Process other = java("WritingOverAndOver", folder.toString(), caseFile.toString(), "1");
    try {
      for (int i = 0; i < 20; i++) {
        OutputFolder.claim(folder, caseFile).write(WritingOverAndOver.files(1_000_000 + i));
      }
      assertTrue(other.isAlive());
    } finally {
      other.destroyForcibly().waitFor();
    }
    generationAfterRecovery(1);
  }

  @Test
  void aLinkToAFolderIsFollowedAndOneToNothingIsRefused() throws IOException {
    Path link = Files.createSymbolicLink(root.resolve("link"), folder);
    InputFault fault = assertThrows(InputFault.class, () -> OutputFolder.claim(link, caseFile));
    assertTrue(fault.getMessage().contains("is a link to nothing"), fault::getMessage);
    Files.createDirectories(folder);
    OutputFolder.claim(link, caseFile).write(WritingOverAndOver.files(1));
    assertTrue(Files.isSymbolicLink(link));
    assertTrue(Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS));
    assertEquals(1, generationAfterRecovery(1));
  }

  /** A folder that is there and open needs no rights in the one around it. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void withoutRightsItIsSaidAndNothingChanges() throws IOException {
    Path closed = Files.createDirectory(root.resolve("closed"));
    Path open = Files.createDirectory(closed.resolve("open"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    assumeFalse(Files.isWritable(closed), "this user may write anywhere");
    folder = closed.resolve("new");
    OutputFolder output = OutputFolder.claim(folder, caseFile);
    Map<String, byte[]> files = WritingOverAndOver.files(1);
    InputFault fault = assertThrows(InputFault.class, () -> output.write(files));
    assertTrue(
        fault.getMessage().endsWith("permission denied; nothing was written"), fault::getMessage);
    OutputFolder.claim(open, caseFile).write(files);
    assertEquals(List.of("open"), names(closed));
    folder = open;
    assertEquals(1, generationAfterRecovery(1));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private static Process java(String main, String... arguments) throws IOException {
    List<String> line =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "afterweld.cli." + main));
    line.addAll(List.of(arguments));
    return new ProcessBuilder(line)
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
