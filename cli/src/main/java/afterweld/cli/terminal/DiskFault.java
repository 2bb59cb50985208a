package afterweld.cli.terminal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;

/** Says in a few words why the disk refused. */
public final class DiskFault {
  private DiskFault() {}

  /** The reason without path or class name. */
  public static String reason(IOException cause) {
    if (cause instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (cause instanceof NoSuchFileException) {
      return "a folder on the way to it does not exist";
    }
    if (cause instanceof NotDirectoryException || cause instanceof FileAlreadyExistsException) {
      return "a file is in the way";
    }
    return plain(systemText(cause));
  }

  private static String systemText(IOException cause) {
    String text =
        cause instanceof FileSystemException named ? named.getReason() : cause.getMessage();
    return text == null ? "" : text.toLowerCase(Locale.ROOT);
  }

  private static String plain(String systemText) {
    if (systemText.contains("no space") || systemText.contains("not enough space")) {
      return "the disk is full";
    }
    return systemText.isBlank() ? "the disk refused" : systemText;
  }
}
