package afterweld.cli.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.Fixtures;
import java.time.Duration;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** When a waiting person is told, and when not. */
class ProgressTest {
  private static final Duration SHORT = Duration.ofMillis(20);
  private static final Duration LONG = Duration.ofMinutes(1);

  private final Fixtures.Memory memory = new Fixtures.Memory();

  private String after(boolean terminal, boolean quiet, Duration patience) {
    Supplier<String> work = () -> untilSaid(terminal && !quiet && patience.equals(SHORT));
    assertEquals(
        "done",
        Progress.during(memory.streams(terminal), () -> "computing", quiet, patience, work));
    return memory.err();
  }

  /** Work that lasts until something was said, or for a moment where nothing should be. */
  private String untilSaid(boolean expected) {
    long end = System.nanoTime() + Duration.ofSeconds(expected ? 30 : 0).toNanos();
    long least = System.nanoTime() + SHORT.multipliedBy(4).toNanos();
    while (System.nanoTime() < least || (System.nanoTime() < end && memory.err().isEmpty())) {
      Thread.onSpinWait();
    }
    return "done";
  }

  @Test
  void longWorkIsToldAndWiped() {
    String text = after(true, false, SHORT);
    assertTrue(text.startsWith("\rcomputing, 0 s"), text);
    assertTrue(text.endsWith("\r" + " ".repeat("computing, 0 s".length()) + "\r"), text);
  }

  @Test
  void shortWorkIsNot() {
    assertEquals("", after(true, false, LONG));
  }

  @Test
  void aFileIsNotTold() {
    assertEquals("", after(false, false, SHORT));
  }

  @Test
  void quietIsQuiet() {
    assertEquals("", after(true, true, SHORT));
  }
}
