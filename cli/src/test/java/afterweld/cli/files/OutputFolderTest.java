package afterweld.cli.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.DiskFault;
import afterweld.cli.terminal.InputFault;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whole or not at all, and never into what belongs to somebody else. */
class OutputFolderTest {
  @TempDir Path root;
  private Path caseFile;
  private Path otherCase;
  private Path folder;

  @BeforeEach
  void cases() throws IOException {
    caseFile = Files.writeString(root.resolve("a.yaml"), "a");
    otherCase = Files.writeString(root.resolve("b.yaml"), "b");
    folder = root.resolve("deep").resolve("results");
  }

  private void write(Path whose, String... names) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (String name : names) {
      files.put(
          name,
          (whose.getFileName() + " " + name).getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }
    OutputFolder.claim(folder, whose).write(files);
  }

  private static List<String> names(Path directory) throws IOException {
    try (Stream<Path> files = Files.list(directory)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static String refusal(org.junit.jupiter.api.function.Executable attempt) {
    return assertThrows(InputFault.class, attempt).getMessage();
  }

  @Test
  void aNewFolderIsMadeWithAllFilesAndNothingElse() throws IOException {
    write(caseFile, "x.json", "y.csv");
    assertEquals(List.of("afterweld-files.txt", "x.json", "y.csv"), names(folder));
    assertEquals(List.of("results"), names(folder.getParent()));
    assertEquals("a.yaml x.json", Files.readString(folder.resolve("x.json")));
  }

  @Test
  void claimingWritesNothing() {
    OutputFolder.claim(folder, caseFile);
    assertFalse(Files.exists(folder.getParent()));
  }

  @Test
  void theSameCaseReplacesItsFilesRemovesStaleOnesAndKeepsForeignOnes() throws IOException {
    write(caseFile, "x.json", "old.png");
    Files.writeString(folder.resolve("notes.txt"), "mine");
    write(caseFile, "x.json", "new.png");
    assertEquals(List.of("afterweld-files.txt", "new.png", "notes.txt", "x.json"), names(folder));
    assertEquals("mine", Files.readString(folder.resolve("notes.txt")));
  }

  @Test
  void writingTwiceGivesTheSameBytes() throws IOException {
    write(caseFile, "x.json");
    byte[] mark = Files.readAllBytes(folder.resolve(FolderMark.NAME));
    write(caseFile, "x.json");
    assertArrayEquals(mark, Files.readAllBytes(folder.resolve(FolderMark.NAME)));
    assertFalse(
        new String(mark, java.nio.charset.StandardCharsets.UTF_8).contains(root.toString()));
  }

  @Test
  void anotherCaseIsRefusedAndNothingChanges() throws IOException {
    write(caseFile, "x.json");
    String text = refusal(() -> write(otherCase, "z.json"));
    assertTrue(text.contains("another case (../../a.yaml"), text);
    assertEquals(List.of("afterweld-files.txt", "x.json"), names(folder));
  }

  @Test
  void theSameCaseByAnotherPathIsTheSameCase() throws IOException {
    write(caseFile, "x.json");
    Path link = Files.createSymbolicLink(root.resolve("link"), root);
    OutputFolder.claim(
            link.resolve("deep").resolve("results"),
            root.resolve("deep").resolve("..").resolve("a.yaml"))
        .write(Map.of("x.json", new byte[] {7}));
    assertArrayEquals(new byte[] {7}, Files.readAllBytes(folder.resolve("x.json")));
  }

  @Test
  void aFolderOfSomebodyElseIsRefused() throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve("photo.jpg"), "mine");
    assertTrue(refusal(() -> write(caseFile, "x.json")).contains("not results of a case"));
    assertEquals(List.of("photo.jpg"), names(folder));
  }

  @Test
  void aMarkOfAnotherProgramIsNoMark() throws IOException {
    Files.createDirectories(folder);
    Files.writeString(folder.resolve(FolderMark.NAME), "hello\n");
    assertTrue(refusal(() -> write(caseFile, "x.json")).contains("not results of a case"));
  }

  @Test
  void anEmptyFolderIsTaken() throws IOException {
    Files.createDirectories(folder);
    write(caseFile, "x.json");
    assertEquals(List.of("afterweld-files.txt", "x.json"), names(folder));
  }

  @Test
  void aDraftOfAKilledRunIsNotInTheWay() throws IOException {
    Files.createDirectories(folder.resolve(".afterweld-1-2"));
    write(caseFile, "x.json");
    assertTrue(Files.exists(folder.resolve("x.json")));
  }

  @Test
  void aForeignFileOfTheSameNameIsNeverOverwritten() throws IOException {
    write(caseFile, "x.json");
    Files.writeString(folder.resolve("report.html"), "mine");
    assertTrue(refusal(() -> write(caseFile, "x.json", "report.html")).contains("in the way"));
    assertEquals("mine", Files.readString(folder.resolve("report.html")));
  }

  @Test
  void aMarkCannotMakeItDeleteOutsideTheFolder() throws IOException {
    write(caseFile, "x.json");
    Path mark = folder.resolve(FolderMark.NAME);
    Files.writeString(mark, Files.readString(mark) + "../../b.yaml\n" + otherCase + "\n");
    write(caseFile, "y.json");
    assertTrue(Files.exists(otherCase));
    assertEquals(List.of("afterweld-files.txt", "y.json"), names(folder));
  }

  @Test
  void aFileInPlaceOfTheFolderIsRefused() throws IOException {
    Files.createDirectories(folder.getParent());
    Files.writeString(folder, "a file");
    assertTrue(refusal(() -> write(caseFile, "x.json")).contains("is a file"));
  }

  @Test
  void aFileOnTheWayFailsInOneSentenceAndLeavesNothing() throws IOException {
    Files.writeString(root.resolve("deep"), "a file");
    String text = refusal(() -> write(caseFile, "x.json"));
    assertTrue(text.endsWith("; nothing was written"), text);
    assertEquals(List.of("a.yaml", "b.yaml", "deep"), names(root));
  }

  @Test
  void aFailureHalfWayLeavesNothing() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("x.json", new byte[] {1});
    files.put("no/such/folder.png", new byte[] {2});
    OutputFolder output = OutputFolder.claim(folder, caseFile);
    refusal(() -> output.write(files));
    assertEquals(List.of("a.yaml", "b.yaml"), names(root));
  }

  @Test
  void theReasonIsInPlainWords() {
    assertEquals(
        "the disk is full",
        DiskFault.reason(new FileSystemException("x", null, "No space left on device")));
    assertEquals("permission denied", DiskFault.reason(new AccessDeniedException("x")));
    assertEquals("the disk refused", DiskFault.reason(new IOException()));
    assertEquals("the disk is full", DiskFault.reason(new IOException("No space left on device")));
  }
}
