package afterweld.cli.files;

import afterweld.cli.terminal.DiskFault;
import afterweld.cli.terminal.InputFault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A case file on disk.
 *
 * @param path as the user gave it
 */
public record CaseInput(Path path) {
  /** A case is a page of text; anything this long is some other file. */
  private static final int LONGEST = 1 << 20;

  /** The file's name without its ending. */
  public String name() {
    Path last = path.toAbsolutePath().normalize().getFileName();
    String file = last == null ? "case" : last.toString();
    int dot = file.lastIndexOf('.');
    return dot > 0 ? file.substring(0, dot) : file;
  }

  /**
   * What is in it.
   *
   * @throws InputFault if it cannot be read
   */
  public byte[] content() {
    if (Files.isDirectory(path)) {
      throw new InputFault(path + " is a folder; a case is a YAML or JSON file");
    }
    try (InputStream file = Files.newInputStream(path)) {
      byte[] content = file.readNBytes(LONGEST + 1);
      if (content.length > LONGEST) {
        throw new InputFault(path + " is longer than 1 MiB; a case is a short YAML or JSON file");
      }
      return content;
    } catch (NoSuchFileException missing) {
      throw new InputFault("there is no file " + path);
    } catch (IOException cause) {
      throw new InputFault("cannot read " + path + ": " + DiskFault.reason(cause));
    }
  }
}
