package afterweld.cli.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Work ends where nobody waits for it, also work that does not ask. */
class TurnsTest {
  private static final int PATIENCE_S = 20;
  private static final long SHORT_NS = TimeUnit.MILLISECONDS.toNanos(100);

  private final CountDownLatch begun = new CountDownLatch(1);

  /** Never asks whether it is outdated. */
  private String deaf(BooleanSupplier unused) {
    begun.countDown();
    while (!Thread.currentThread().isInterrupted()) {
      Thread.onSpinWait();
    }
    throw new CancellationException("interrupted");
  }

  private CompletableFuture<Boolean> deafWork(Turns turns) {
    return CompletableFuture.supplyAsync(
        () -> {
          assertThrows(CancellationException.class, () -> turns.take("page", 1, false, this::deaf));
          return Thread.currentThread().isInterrupted();
        });
  }

  private static void assertEndedAndTheThreadIsFree(CompletableFuture<Boolean> interrupted)
      throws Exception {
    assertFalse(interrupted.get(PATIENCE_S, TimeUnit.SECONDS), "the next work would end too");
  }

  @Test
  void aLaterChangeEndsWorkThatDoesNotAsk() throws Exception {
    Turns turns = new Turns();
    CompletableFuture<Boolean> deaf = deafWork(turns);
    begun.await();
    assertEquals("later", turns.take("page", 2, false, unused -> "later"));
    assertEndedAndTheThreadIsFree(deaf);
    assertTrue(turns.ended("page", 1).getMessage().contains("later change"));
    assertTrue(turns.idle());
  }

  @Test
  void anotherPageEndsNothing() throws Exception {
    Turns turns = new Turns();
    CompletableFuture<Boolean> deaf = deafWork(turns);
    begun.await();
    turns.take("another page", 7, false, unused -> "later");
    assertFalse(deaf.isDone());
    turns.close();
    assertEndedAndTheThreadIsFree(deaf);
  }

  @Test
  void noWorkGoesOnForEver() throws Exception {
    Turns turns = new Turns(SHORT_NS, SHORT_NS);
    assertEndedAndTheThreadIsFree(deafWork(turns));
    assertEquals(Refusal.BUSY, turns.ended("page", 1).status());
  }

  @Test
  void aTurnThatIsOutdatedWhenItArrivesDoesNotBegin() {
    Turns turns = new Turns();
    turns.take("page", 2, false, unused -> "");
    Refusal refusal =
        assertThrows(Refusal.class, () -> turns.take("page", 1, false, unused -> "never"));
    assertEquals(Refusal.OUTDATED, refusal.status());
  }

  /** Takes seats that stay taken until the latch opens. */
  private static void sit(Turns turns, int pages, boolean isLong, CountDownLatch enough)
      throws Exception {
    CountDownLatch seated = new CountDownLatch(pages);
    Work sitting =
        unused -> {
          seated.countDown();
          return await(enough);
        };
    for (int page = 0; page < pages; page++) {
      String name = isLong + " page " + page;
      new Thread(() -> turns.take(name, 1, isLong, sitting)).start();
    }
    assertTrue(seated.await(PATIENCE_S, TimeUnit.SECONDS));
  }

  @Test
  void whoFindsNoSeatIsToldAfterAWhile() throws Exception {
    Turns turns = new Turns(TimeUnit.SECONDS.toNanos(PATIENCE_S), SHORT_NS);
    CountDownLatch enough = new CountDownLatch(1);
    sit(turns, 3, false, enough);
    Refusal refusal =
        assertThrows(Refusal.class, () -> turns.take("a fourth", 1, false, unused -> "never"));
    assertEquals(Refusal.BUSY, refusal.status());
    assertTrue(refusal.headers().containsKey("Retry-After"));
    enough.countDown();
  }

  @Test
  void longWorkLeavesASeatForShortWork() throws Exception {
    Turns turns = new Turns(TimeUnit.SECONDS.toNanos(PATIENCE_S), SHORT_NS);
    CountDownLatch enough = new CountDownLatch(1);
    sit(turns, 2, true, enough);
    assertEquals("at once", turns.take("short", 1, false, unused -> "at once"));
    assertThrows(Refusal.class, () -> turns.take("long", 1, true, unused -> "never"));
    assertEquals("again", turns.take("short", 2, false, unused -> "again"));
    enough.countDown();
  }

  @Test
  void whoWaitsForASeatIsSentAwayByItsOwnLaterChange() throws Exception {
    Turns turns = new Turns();
    CountDownLatch enough = new CountDownLatch(1);
    sit(turns, 2, true, enough);
    CompletableFuture<Refusal> waiting =
        CompletableFuture.supplyAsync(
            () ->
                assertThrows(Refusal.class, () -> turns.take("page", 1, true, unused -> "never")));
    Thread.sleep(100);
    turns.take("page", 2, false, unused -> "later");
    assertEquals(Refusal.OUTDATED, waiting.get(PATIENCE_S, TimeUnit.SECONDS).status());
    enough.countDown();
  }

  private interface Work extends Function<BooleanSupplier, Boolean> {}

  private static boolean await(CountDownLatch latch) {
    try {
      return latch.await(PATIENCE_S, TimeUnit.SECONDS);
    } catch (InterruptedException stopped) {
      return false;
    }
  }
}
