package afterweld.cli;

import afterweld.cli.files.OutputFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A process that writes one generation of files after the other into a folder until it is killed.
 */
final class WritingOverAndOver {
  private WritingOverAndOver() {}

  /** Takes the folder, the case file and the number of the first generation. */
  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    Path caseFile = Path.of(arguments[1]);
    for (int generation = Integer.parseInt(arguments[2]); ; generation++) {
      OutputFolder.claim(folder, caseFile).write(files(generation));
    }
  }

  /** Files that say which generation they are of; every other generation has one of its own. */
  static Map<String, byte[]> files(int generation) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    byte[] content = (generation + "\n").repeat(400).getBytes(StandardCharsets.UTF_8);
    for (int i = 0; i < 6; i++) {
      files.put("file-" + i + ".txt", content);
    }
    files.put(generation % 2 == 0 ? "even.txt" : "odd.txt", content);
    return files;
  }
}
