package afterweld.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Where a run writes to.
 *
 * @param out standard output
 * @param err standard error
 * @param errIsTerminal whether a person watches standard error
 */
record Streams(PrintWriter out, PrintWriter err, boolean errIsTerminal) {
  /** The start script knows whether standard error is a terminal; Java 17 has no way to ask. */
  private static final String TERMINAL_PROPERTY = "afterweld.terminal";

  /** The streams of this process: UTF-8, but a Windows console in its own character set. */
  static Streams ofProcess() {
    return new Streams(
        writer(FileDescriptor.out),
        writer(FileDescriptor.err),
        Boolean.getBoolean(TERMINAL_PROPERTY));
  }

  private static PrintWriter writer(FileDescriptor descriptor) {
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), charset()));
  }

  private static Charset charset() {
    boolean windows = System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("win");
    Console console = windows ? System.console() : null;
    return console == null ? StandardCharsets.UTF_8 : console.charset();
  }
}
