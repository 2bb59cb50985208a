package afterweld.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A temporary folder that holds all files of a run before they are moved into place. */
final class Draft {
  private static final String PREFIX = ".afterweld-";

  private final Deque<Path> createdParents = new ArrayDeque<>();
  private final Path folder;

  /**
   * A draft inside a folder, which is made if it does not exist. Nothing is on the disk yet.
   *
   * @param parent folder on the file system that the files shall end on
   */
  Draft(Path parent) {
    String unique = ProcessHandle.current().pid() + "-" + Long.toHexString(System.nanoTime());
    this.folder = parent.resolve(PREFIX + unique);
  }

  /** Whether a path is the draft of a run that was killed. */
  static boolean leftOver(Path path) {
    return path.getFileName().toString().startsWith(PREFIX);
  }

  /** Writes every file. */
  void write(Map<String, byte[]> files) throws IOException {
    createParents();
    Files.createDirectory(folder);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
  }

  private void createParents() throws IOException {
    List<Path> missing = new ArrayList<>();
    for (Path path = folder.getParent(); !Files.exists(path); path = path.getParent()) {
      missing.add(0, path);
    }
    for (Path path : missing) {
      Files.createDirectory(path);
      createdParents.push(path);
    }
  }

  /** Takes one file out again. */
  void remove(String name) throws IOException {
    Files.delete(folder.resolve(name));
  }

  /** Turns the whole draft into a folder that does not exist yet. */
  void become(Path target) throws IOException {
    Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
  }

  /** Moves one of its files into a folder, in place of a file of that name. */
  void move(String name, Path target) throws IOException {
    Files.move(
        folder.resolve(name),
        target,
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  /** Removes what is left of it, and the folders made for it that are empty. */
  void discard() {
    try (Stream<Path> left = Files.list(folder)) {
      left.forEach(Draft::delete);
    } catch (IOException neverMade) {
      delete(folder);
    }
    delete(folder);
    createdParents.forEach(Draft::delete);
  }

  /** A folder that is not empty, or is gone already, needs no deleting. */
  private static boolean delete(Path path) {
    try {
      return Files.deleteIfExists(path);
    } catch (IOException stays) {
      return false;
    }
  }
}
