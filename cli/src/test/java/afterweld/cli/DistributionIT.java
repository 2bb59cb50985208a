package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.ExitStatus;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code -Pdist} packs, as somebody without Java and without a network unpacks and starts it.
 * Needs {@code unzip}, and takes the network away where the system lets a user do so ({@code
 * unshare}).
 */
@DisabledOnOs(OS.WINDOWS)
class DistributionIT {
  @TempDir static Path folder;
  private static Path home;

  private record Ended(int status, String out) {}

  @BeforeAll
  static void unpack() throws Exception {
    Path there = Files.createDirectory(folder.resolve("a folder with spaces"));
    Ended unzip = run(folder, List.of("unzip", "-q", zip().toString(), "-d", there.toString()));
    assertEquals(0, unzip.status(), unzip.out());
    try (Stream<Path> unpacked = Files.list(there)) {
      home = unpacked.findFirst().orElseThrow();
    }
  }

  private static Path zip() throws IOException {
    try (Stream<Path> built = Files.list(Path.of("target").toAbsolutePath())) {
      return built.filter(file -> file.toString().endsWith(".zip")).findFirst().orElseThrow();
    }
  }

  @Test
  void itStartsWithItsOwnJavaAndWithoutNetwork() throws Exception {
    Ended version = start("--version");
    assertEquals(0, version.status(), version.out());
    assertTrue(version.out().contains("0.1.0"), version.out());
  }

  @Test
  void anExampleIsComputedDrawnAndReported() throws Exception {
    Path out = home.resolve("my answers");
    Ended profile =
        start(
            "profile", home.resolve("examples/fork-arm.yaml").toString(), "--out", out.toString());
    // A likely requirement leaves a coupon to decide.
    assertEquals(ExitStatus.REQUIREMENT_OPEN, profile.status(), profile.out());
    for (String file : List.of("result.json", "report.html", "profile.csv")) {
      assertTrue(Files.size(out.resolve(file)) > 100, file);
    }
    try (Stream<Path> files = Files.list(out)) {
      assertTrue(files.anyMatch(file -> file.toString().endsWith(".png")), "a picture");
    }
  }

  @Test
  void aFaultKeepsItsStatus() throws Exception {
    Ended wrong = start("profile", "missing.yaml");
    assertEquals(ExitStatus.INPUT_FAULT, wrong.status(), wrong.out());
  }

  private static Ended start(String... arguments) throws Exception {
    List<String> line = new ArrayList<>();
    List<String> alone = List.of("unshare", "--map-root-user", "--net");
    if (run(folder, Stream.concat(alone.stream(), Stream.of("true")).toList()).status() == 0) {
      line.addAll(alone);
    }
    line.add(home.resolve("afterweld").toString());
    line.addAll(List.of(arguments));
    return run(folder, line);
  }

  /** Without a Java of the machine's own in its surroundings. */
  private static Ended run(Path where, List<String> line) throws Exception {
    ProcessBuilder process = new ProcessBuilder(line).directory(where.toFile());
    Map<String, String> surroundings = process.environment();
    surroundings.keySet().removeIf(name -> name.startsWith("JAVA") || name.startsWith("JDK"));
    process.redirectErrorStream(true);
    try {
      Process started = process.start();
      String out = new String(started.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return new Ended(started.waitFor(), out);
    } catch (IOException missing) {
      return new Ended(-1, missing.getMessage());
    }
  }
}
