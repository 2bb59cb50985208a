package afterweld.cli.files;

import afterweld.cli.terminal.DiskFault;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Interrupted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;

/**
 * The folder that the files of one case go into, whole or not at all.
 *
 * <p>Every file is first written into a {@link Draft}; only when all are on the disk they take
 * their places, which cannot run out of space. A folder that holds anything but results of the same
 * case is never touched, and only one run at a time writes to it. What an earlier run left and this
 * one does not write is removed; files of the user's own stay.
 */
public final class OutputFolder {
  private final Path folder;
  private final String caseFile;

  private OutputFolder(Path folder, Path caseFile) {
    this.folder = FolderMark.real(folder);
    this.caseFile = FolderMark.reference(this.folder, caseFile);
  }

  /**
   * Looks whether a folder may be used for a case, before anything is computed.
   *
   * @throws InputFault if it holds something else
   */
  public static OutputFolder claim(Path folder, Path caseFile) {
    OutputFolder output = new OutputFolder(folder, caseFile);
    output.finishEarlierRun();
    output.filesOfEarlierRun();
    return output;
  }

  /**
   * Writes all files. An interrupted run that has come to writing ends when all is written.
   *
   * @param files contents by plain file name
   * @throws InputFault if they cannot be written
   */
  public void write(Map<String, byte[]> files) {
    ReentrantLock writing = new ReentrantLock();
    writing.lock();
    try {
      Interrupted.during(() -> writeWhole(files), writing::lock);
    } finally {
      writing.unlock();
    }
  }

  private void writeWhole(Map<String, byte[]> files) {
    Deque<Path> made = new ArrayDeque<>();
    try {
      makeParents(made);
      alone(() -> writeAlone(files));
    } catch (IOException cause) {
      throw refused(cause);
    } finally {
      made.forEach(OutputFolder::deleteIfEmpty);
    }
  }

  /** Work on the disk. */
  private interface DiskWork {
    void run() throws IOException;
  }

  private void alone(DiskWork work) throws IOException {
    FolderLock lock = FolderLock.of(folder);
    try {
      work.run();
    } finally {
      lock.close();
    }
  }

  /** What a run that was killed while it changed files left to do. */
  private void finishEarlierRun() {
    if (Draft.unfinished(folder)) {
      try {
        alone(() -> Draft.finish(folder));
      } catch (IOException cause) {
        throw inTheWay(cause);
      }
    }
  }

  private InputFault inTheWay(IOException cause) {
    return new InputFault(
        "cannot replace the files in "
            + folder
            + ": "
            + DiskFault.reason(cause)
            + "; close what has them open and run again");
  }

  private void writeAlone(Map<String, byte[]> files) throws IOException {
    Draft.finish(folder);
    refuseForeign(files.keySet(), filesOfEarlierRun());
    Draft draft = new Draft(folder);
    fill(draft, files);
    try {
      draft.place();
    } catch (IOException cause) {
      throw inTheWay(cause);
    }
  }

  private void fill(Draft draft, Map<String, byte[]> files) throws IOException {
    Map<String, byte[]> all = new LinkedHashMap<>(files);
    all.put(FolderMark.NAME, new FolderMark(caseFile, List.copyOf(files.keySet())).content());
    try {
      draft.write(all);
    } catch (IOException cause) {
      draft.discard();
      throw cause;
    }
  }

  private InputFault refused(IOException cause) {
    return new InputFault(
        "cannot write to " + folder + ": " + DiskFault.reason(cause) + "; nothing was written");
  }

  private void makeParents(Deque<Path> made) throws IOException {
    List<Path> missing = new ArrayList<>();
    for (Path path = folder.getParent(); !Files.exists(path); path = path.getParent()) {
      missing.add(0, path);
    }
    for (Path path : missing) {
      Files.createDirectory(path);
      made.push(path);
    }
  }

  /** A folder that is not empty, or is gone already, needs no deleting. */
  private static void deleteIfEmpty(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException stays) {
      return;
    }
  }

  private Set<String> filesOfEarlierRun() {
    if (!exists(folder)) {
      return Set.of();
    }
    if (Files.isSymbolicLink(folder)) {
      throw new InputFault(folder + " is a link to nothing; name another folder with --out");
    }
    if (!Files.isDirectory(folder)) {
      throw new InputFault(folder + " is a file; name another folder with --out");
    }
    try {
      return filesOf(FolderMark.of(folder));
    } catch (IOException cause) {
      throw new InputFault("cannot read " + folder + ": " + DiskFault.reason(cause));
    }
  }

  private Set<String> filesOf(Optional<FolderMark> mark) throws IOException {
    if (mark.isEmpty() && !empty()) {
      throw new InputFault(
          folder + " holds files that are not results of a case; name another folder with --out");
    }
    if (mark.isPresent() && !mark.get().caseFile().equals(caseFile)) {
      throw new InputFault(
          folder
              + " holds the results of another case ("
              + mark.get().caseFile()
              + ", seen from there); name another folder with --out, or delete it");
    }
    return mark.map(known -> Set.copyOf(known.files())).orElse(Set.of());
  }

  private boolean empty() throws IOException {
    try (Stream<Path> content = Files.list(folder)) {
      return content.allMatch(Draft::leftOver);
    }
  }

  private void refuseForeign(Collection<String> names, Set<String> earlier) {
    for (String name : names) {
      if (!earlier.contains(name) && exists(folder.resolve(name))) {
        throw new InputFault(
            folder.resolve(name)
                + " was not written by afterweld and is in the way; move it or name another folder"
                + " with --out");
      }
    }
  }

  private static boolean exists(Path path) {
    return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
  }
}
