package afterweld.cli.terminal;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** A stream that remembers why it failed, which a {@link java.io.PrintWriter} does not. */
final class WatchedOutput extends FilterOutputStream {
  private Optional<IOException> failure = Optional.empty();

  WatchedOutput(OutputStream target) {
    super(target);
  }

  @Override
  public void write(int octet) throws IOException {
    write(new byte[] {(byte) octet}, 0, 1);
  }

  @Override
  public void write(byte[] octets, int from, int length) throws IOException {
    try {
      out.write(octets, from, length);
    } catch (IOException cause) {
      failure = failure.or(() -> Optional.of(cause));
      throw cause;
    }
  }

  /** The reason in words; empty if all went well or if the reader simply had enough. */
  Optional<String> fault() {
    return failure.filter(cause -> !hungUp(cause)).map(DiskFault::reason);
  }

  private static boolean hungUp(IOException cause) {
    String text = String.valueOf(cause.getMessage()).toLowerCase(Locale.ROOT);
    return text.contains("broken pipe") || text.contains("pipe is being closed");
  }
}
