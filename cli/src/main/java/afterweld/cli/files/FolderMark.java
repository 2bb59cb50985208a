package afterweld.cli.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The small file in an output folder that says which case its results belong to and which files the
 * program put there, so that a later run replaces those and no others.
 *
 * @param caseFile where the case lies, as seen from the folder
 * @param files names of the files
 */
public record FolderMark(String caseFile, List<String> files) {
  /** Name of the file. */
  public static final String NAME = "afterweld-files.txt";

  private static final String FIRST_LINE =
      "Files written by afterweld; the next run of the same case replaces them.";
  private static final String CASE_LINE = "case: ";

  /** Copies the list. */
  public FolderMark {
    files = List.copyOf(files);
  }

  /**
   * How a case file is named as seen from a folder.
   *
   * @param folder a {@link #real} path
   */
  static String reference(Path folder, Path caseFile) {
    Path to = real(caseFile);
    boolean reachable = folder.getRoot() != null && folder.getRoot().equals(to.getRoot());
    return (reachable ? folder.relativize(to) : to).toString().replace('\\', '/');
  }

  /** The absolute path with its links followed as far as it exists. */
  static Path real(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    Path parent = absolute.getParent();
    try {
      return absolute.toRealPath();
    } catch (IOException missing) {
      return parent == null ? absolute : real(parent).resolve(absolute.getFileName());
    }
  }

  /**
   * The mark of a folder, if it has one.
   *
   * @throws IOException if it cannot be read
   */
  public static Optional<FolderMark> of(Path folder) throws IOException {
    Path mark = folder.resolve(NAME);
    if (!Files.isRegularFile(mark, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    List<String> lines =
        new String(Files.readAllBytes(mark), StandardCharsets.UTF_8).lines().toList();
    if (lines.size() < 2
        || !lines.get(0).equals(FIRST_LINE)
        || !lines.get(1).startsWith(CASE_LINE)) {
      return Optional.empty();
    }
    String caseFile = lines.get(1).substring(CASE_LINE.length());
    List<String> files = lines.stream().skip(2).filter(FolderMark::plainName).toList();
    return Optional.of(new FolderMark(caseFile, files));
  }

  /** A name that cannot lead out of the folder, whatever was written into the mark. */
  private static boolean plainName(String name) {
    return !name.isBlank() && name.matches("[A-Za-z0-9][A-Za-z0-9._-]*");
  }

  /** The mark as it stands in its file. */
  byte[] content() {
    String head = FIRST_LINE + "\n" + CASE_LINE + caseFile + "\n";
    return (head + String.join("\n", files) + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
