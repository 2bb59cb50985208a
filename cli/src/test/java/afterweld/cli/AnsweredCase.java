package afterweld.cli;

import afterweld.cli.terminal.ExitStatus;
import afterweld.cli.terminal.Streams;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One case and what the commands answer to it, each asked once. */
final class AnsweredCase {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final CaseEdit content;
  private final Path folder;
  private final Path file;
  private final Map<List<String>, Run> runs = new LinkedHashMap<>();

  AnsweredCase(CaseEdit content, Path folder) {
    this.content = content;
    this.folder = folder;
    this.file = folder.resolve("case.yaml");
    try {
      Files.createDirectories(folder);
      Files.writeString(file, content.text());
    } catch (IOException cause) {
      throw new UncheckedIOException(cause);
    }
  }

  /**
   * What one command answered.
   *
   * @param status exit status
   * @param out console
   * @param err messages
   * @param files what it wrote, by name
   */
  record Run(int status, String out, String err, Map<String, String> files) {
    /** Whether it answered at all, and did not refuse the input. */
    boolean answered() {
      return status == ExitStatus.DONE || status == ExitStatus.REQUIREMENT_OPEN;
    }

    /** Its result; fails where there is none. */
    JsonNode json() {
      try {
        return JSON.readTree(files.get("result.json"));
      } catch (IOException cause) {
        throw new UncheckedIOException(cause);
      }
    }
  }

  CaseEdit content() {
    return content;
  }

  Path file() {
    return file;
  }

  /** What a command answers, with more options behind the case. */
  Run run(String command, String... options) {
    List<String> asked = new ArrayList<>(List.of(command));
    asked.addAll(List.of(options));
    return runs.computeIfAbsent(asked, this::ran);
  }

  private Run ran(List<String> asked) {
    Path into = folder.resolve("out-" + runs.size());
    List<String> arguments = new ArrayList<>(asked);
    arguments.add(1, file.toString());
    arguments.addAll(List.of("--out", into.toString()));
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    int status = Welded.program(streams).run(arguments.toArray(String[]::new));
    return new Run(status, memory.out(), memory.err(), files(into));
  }

  private Map<String, String> files(Path into) {
    Map<String, String> files = new LinkedHashMap<>();
    if (!Files.isDirectory(into)) {
      return files;
    }
    try (Stream<Path> found = Files.list(into)) {
      for (Path one : found.sorted().toList()) {
        if (!one.toString().endsWith(".png")) {
          files.put(one.getFileName().toString(), Files.readString(one, StandardCharsets.UTF_8));
        }
      }
      return files;
    } catch (IOException cause) {
      throw new UncheckedIOException(cause);
    }
  }

  /**
   * The joint dressed flush in the last state over the gauge of the case, 50 mm where it names
   * none, as {@code profile} has it.
   */
  JsonNode finishedJoint() {
    JsonNode joint = run("profile").json().get("joint");
    double gauge = joint.get(0).get("gauge_mm").asDouble();
    JsonNode found = null;
    for (JsonNode one : joint) {
      if (one.get("bead").asText().equals("flush") && one.get("gauge_mm").asDouble() == gauge) {
        found = one;
      }
    }
    return Optional.ofNullable(found).orElseThrow();
  }
}
