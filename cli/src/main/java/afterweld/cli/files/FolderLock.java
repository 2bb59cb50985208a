package afterweld.cli.files;

import afterweld.cli.terminal.InputFault;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Keeps a second run out of an output folder while one writes to it: a hidden locked file beside
 * the folder, or in it where that is not allowed, which goes with the run. One left by a killed run
 * is not locked and is no hindrance.
 */
final class FolderLock implements AutoCloseable {
  private static final long PATIENCE_MILLIS = 5000;
  private static final long LOOK_AGAIN_MILLIS = 20;
  private static final int LONGEST = 1 << 16;

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Locks a folder; waits a little for a run that is writing.
   *
   * @throws InputFault if the other run goes on
   * @throws IOException if the disk refuses
   */
  static FolderLock of(Path folder) throws IOException {
    long end = System.nanoTime() + PATIENCE_MILLIS * 1_000_000;
    Optional<FolderLock> lock = attempt(folder);
    while (lock.isEmpty() && System.nanoTime() < end) {
      pause();
      lock = attempt(folder);
    }
    return lock.orElseThrow(
        () ->
            new InputFault(
                "another run is writing to "
                    + folder
                    + "; wait for it and run again, or name another folder with --out"));
  }

  private static Optional<FolderLock> attempt(Path folder) throws IOException {
    Path beside = Draft.hidden(folder, "lock");
    boolean inside = Files.exists(folder) && !Files.isWritable(beside.getParent());
    Path file = inside ? Draft.inside(folder, "lock") : beside;
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    FolderLock lock = new FolderLock(file, channel);
    if (lock.taken()) {
      return Optional.of(lock);
    }
    channel.close();
    return Optional.empty();
  }

  private boolean taken() throws IOException {
    try {
      return channel.tryLock() != null && ours();
    } catch (OverlappingFileLockException ofThisProcess) {
      return false;
    }
  }

  /**
   * A file that its owner removed before it let go can still be locked, and keeps nobody out. It is
   * known by its length, which is drawn: to open the file again, and close it, would unlock it.
   */
  private boolean ours() throws IOException {
    channel.truncate(0);
    channel.write(ByteBuffer.wrap(new byte[1]), ThreadLocalRandom.current().nextInt(LONGEST));
    try {
      return Files.size(file) == channel.size();
    } catch (FileSystemException removed) {
      return false;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(LOOK_AGAIN_MILLIS);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(file);
    channel.close();
  }
}
