package afterweld.cli.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All files of a run, on the disk before one of them takes its place in the output folder.
 *
 * <p>A draft of a new folder lies beside it and becomes it in one step. A draft for a folder that
 * is there lies inside it; when it is whole it is renamed, which makes it valid, and then its files
 * take the places of the old ones. A run that is killed before leaves the old files, and one that
 * is killed while files take their places leaves a valid draft, which {@link #finish} completes:
 * the folder is old or new.
 */
final class Draft {
  private static final String PREFIX = ".afterweld-";
  private static final String VALID = PREFIX + "ready";

  private final Path target;
  private final Path folder;
  private final boolean fresh;

  /**
   * A draft for an output folder. Nothing is on the disk yet.
   *
   * @param target the output folder; its parent exists
   */
  Draft(Path target) {
    this.target = target;
    this.fresh = !Files.exists(target, LinkOption.NOFOLLOW_LINKS);
    this.folder = fresh ? hidden(target, "draft") : inside(target, "draft");
  }

  /** A hidden name beside an output folder. */
  static Path hidden(Path target, String kind) {
    return target.resolveSibling(PREFIX + target.getFileName() + "-" + kind);
  }

  /** A hidden name in an output folder. */
  static Path inside(Path target, String kind) {
    return target.resolve(PREFIX + kind);
  }

  /** Whether a path is what a killed run left. */
  static boolean leftOver(Path path) {
    return path.getFileName().toString().startsWith(PREFIX);
  }

  /** Whether a run was killed while its files took their places. */
  static boolean unfinished(Path target) {
    return Files.isDirectory(target.resolve(VALID), LinkOption.NOFOLLOW_LINKS);
  }

  /** Completes the swap of a run that was killed while its files took their places. */
  static void finish(Path target) throws IOException {
    if (unfinished(target)) {
      takePlaces(target.resolve(VALID), target);
    }
  }

  /** Writes every file, in place of what a killed run left. */
  void write(Map<String, byte[]> files) throws IOException {
    discard();
    Files.createDirectory(folder);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      write(folder.resolve(file.getKey()), file.getValue());
    }
    settle(folder);
  }

  private static void write(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(content);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  /** Has the names in a folder on the disk, where the system can do that. */
  private static void settle(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOfThisSystem) {
      return;
    }
  }

  /** Puts the files in their places. */
  void place() throws IOException {
    if (fresh) {
      Files.move(folder, target, StandardCopyOption.ATOMIC_MOVE);
      settle(target.getParent());
      return;
    }
    Files.move(folder, target.resolve(VALID), StandardCopyOption.ATOMIC_MOVE);
    settle(target);
    finish(target);
  }

  /** The old mark stays until all is done, so that doing it again does the same. */
  private static void takePlaces(Path valid, Path target) throws IOException {
    Optional<FolderMark> mark = FolderMark.of(valid);
    if (mark.isPresent()) {
      List<String> names = mark.get().files();
      for (String name : names) {
        move(valid.resolve(name), target.resolve(name));
      }
      for (String old : FolderMark.of(target).map(FolderMark::files).orElse(List.of())) {
        if (!names.contains(old)) {
          Files.deleteIfExists(target.resolve(old));
        }
      }
      move(valid.resolve(FolderMark.NAME), target.resolve(FolderMark.NAME));
      settle(target);
    }
    delete(valid);
  }

  private static void move(Path from, Path to) throws IOException {
    if (Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Removes what is not yet valid of it. */
  void discard() throws IOException {
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      delete(folder);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
