package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A long study that is interrupted at the keyboard. */
@DisabledOnOs(OS.WINDOWS)
class InterruptTest {
  private static final int INTERRUPTED = 130;

  @TempDir Path folder;

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void nothingIsLeftBehindAndTheTimeLeftWasTold() throws Exception {
    Path err = folder.resolve("err");
    Path out = folder.resolve("out");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dafterweld.terminal=true",
                "-cp",
                System.getProperty("java.class.path"),
                "afterweld.cli.Main",
                "spread",
                "examples/autogenous-bead.yaml",
                "--runs",
                "100000",
                "--out",
                out.toString())
            .redirectError(err.toFile())
            .redirectOutput(folder.resolve("stdout").toFile())
            .start();
    try {
      while (process.isAlive() && !Files.readString(err).contains(" s left")) {
        Thread.sleep(100);
      }
      new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
      process.waitFor();
    } finally {
      process.destroyForcibly();
    }
    String told = Files.readString(err);
    assertTrue(told.contains("simulating joint ") && told.contains(" of 100000"), told);
    assertTrue(told.endsWith("afterweld: stopped; nothing was written\n"), told);
    assertEquals(INTERRUPTED, process.exitValue());
    assertFalse(Files.exists(out));
    try (Stream<Path> left = Files.list(folder)) {
      assertEquals(2, left.count(), "its two streams and nothing else");
    }
  }
}
