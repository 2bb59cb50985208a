package afterweld.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;

/**
 * The folder that the files of one case go into, whole or not at all.
 *
 * <p>Every file is first written into a {@link Draft}; only when all are on the disk they are moved
 * into place, which cannot run out of space. A folder that holds anything but results of the same
 * case is never touched. What an earlier run left and this one does not write is removed; files of
 * the user's own stay.
 */
final class OutputFolder {
  private static final String INTERIM_MARK = "interim-" + FolderMark.NAME;

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
  static OutputFolder claim(Path folder, Path caseFile) {
    OutputFolder output = new OutputFolder(folder, caseFile);
    output.filesOfEarlierRun();
    return output;
  }

  /**
   * Writes all files. An interrupted run that has come to writing ends when all is written.
   *
   * @param files contents by plain file name
   * @throws InputFault if they cannot be written
   */
  void write(Map<String, byte[]> files) {
    ReentrantLock writing = new ReentrantLock();
    writing.lock();
    try {
      Interrupted.during(() -> writeWhole(files), writing::lock);
    } finally {
      writing.unlock();
    }
  }

  private void writeWhole(Map<String, byte[]> files) {
    Set<String> earlier = filesOfEarlierRun();
    refuseForeign(files.keySet(), earlier);
    boolean fresh = !exists(folder);
    Draft draft = new Draft(fresh ? folder.getParent() : folder);
    try {
      fill(draft, files, earlier);
      place(draft, files.keySet(), earlier, fresh);
    } finally {
      draft.discard();
    }
  }

  private void fill(Draft draft, Map<String, byte[]> files, Set<String> earlier) {
    Map<String, byte[]> all = new LinkedHashMap<>(files);
    all.put(FolderMark.NAME, mark(files.keySet()));
    Set<String> both = new LinkedHashSet<>(files.keySet());
    both.addAll(earlier);
    all.put(INTERIM_MARK, mark(both));
    try {
      draft.write(all);
    } catch (IOException cause) {
      throw new InputFault(
          "cannot write to " + folder + ": " + DiskFault.reason(cause) + "; nothing was written");
    }
  }

  private byte[] mark(Collection<String> names) {
    return new FolderMark(caseFile, List.copyOf(names)).content();
  }

  private void place(Draft draft, Set<String> names, Set<String> earlier, boolean fresh) {
    try {
      if (fresh) {
        draft.remove(INTERIM_MARK);
        draft.become(folder);
      } else {
        replace(draft, names, earlier);
      }
    } catch (IOException cause) {
      throw new InputFault(
          "cannot replace the files in "
              + folder
              + ": "
              + DiskFault.reason(cause)
              + "; close what has them open and run again");
    }
  }

  /** While files change places, the mark names old and new ones, so that none is ever orphaned. */
  private void replace(Draft draft, Set<String> names, Set<String> earlier) throws IOException {
    draft.move(INTERIM_MARK, folder.resolve(FolderMark.NAME));
    for (String name : names) {
      draft.move(name, folder.resolve(name));
    }
    for (String name : earlier) {
      if (!names.contains(name)) {
        Files.deleteIfExists(folder.resolve(name));
      }
    }
    draft.move(FolderMark.NAME, folder.resolve(FolderMark.NAME));
  }

  private Set<String> filesOfEarlierRun() {
    if (!exists(folder)) {
      return Set.of();
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
