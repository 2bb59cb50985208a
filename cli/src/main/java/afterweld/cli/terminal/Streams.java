package afterweld.cli.terminal;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** Where a run writes to. */
public final class Streams {
  /** The start script knows whether standard error is a terminal; Java 17 has no way to ask. */
  private static final String TERMINAL_PROPERTY = "afterweld.terminal";

  private final WatchedOutput watchedOut;
  private final PrintWriter out;
  private final PrintWriter err;
  private final boolean errIsTerminal;

  /**
   * Streams to the given targets.
   *
   * @param errIsTerminal whether a person watches standard error
   */
  public Streams(OutputStream out, OutputStream err, Charset charset, boolean errIsTerminal) {
    this.watchedOut = new WatchedOutput(out);
    this.out = new PrintWriter(new OutputStreamWriter(watchedOut, charset));
    this.err = new PrintWriter(new OutputStreamWriter(err, charset));
    this.errIsTerminal = errIsTerminal;
  }

  /** The streams of this process: UTF-8, but a Windows console in its own character set. */
  public static Streams ofProcess() {
    return new Streams(
        new FileOutputStream(FileDescriptor.out),
        new FileOutputStream(FileDescriptor.err),
        charset(),
        Boolean.getBoolean(TERMINAL_PROPERTY));
  }

  private static Charset charset() {
    boolean windows = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("win");
    Console console = windows ? System.console() : null;
    return console == null ? StandardCharsets.UTF_8 : console.charset();
  }

  /** Standard output. */
  public PrintWriter out() {
    return out;
  }

  /** Standard error. */
  public PrintWriter err() {
    return err;
  }

  /** Whether a person watches standard error. */
  boolean errIsTerminal() {
    return errIsTerminal;
  }

  /** Sends everything on its way and says why standard output did not take it, if so. */
  public Optional<String> flush() {
    out.flush();
    err.flush();
    return watchedOut.fault();
  }
}
