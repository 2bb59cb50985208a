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
          assertThrows(CancellationException.class, () -> turns.take("page", 1, this::deaf));
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
    assertEquals("later", turns.take("page", 2, unused -> "later"));
    assertEndedAndTheThreadIsFree(deaf);
    assertTrue(turns.ended("page", 1).getMessage().contains("later change"));
    assertTrue(turns.idle());
  }

  @Test
  void anotherPageEndsNothing() throws Exception {
    Turns turns = new Turns();
    CompletableFuture<Boolean> deaf = deafWork(turns);
    begun.await();
    turns.take("another page", 7, unused -> "later");
    assertFalse(deaf.isDone());
    turns.close();
    assertEndedAndTheThreadIsFree(deaf);
  }

  @Test
  void noWorkGoesOnForEver() throws Exception {
    Turns turns = new Turns(TimeUnit.MILLISECONDS.toNanos(50));
    assertEndedAndTheThreadIsFree(deafWork(turns));
    assertEquals(Refusal.BUSY, turns.ended("page", 1).status());
  }

  @Test
  void aTurnThatIsOutdatedWhenItArrivesDoesNotBegin() {
    Turns turns = new Turns();
    turns.take("page", 2, unused -> "");
    Refusal refusal = assertThrows(Refusal.class, () -> turns.take("page", 1, unused -> "never"));
    assertEquals(Refusal.OUTDATED, refusal.status());
  }

  @Test
  void whoFindsNoSeatIsToldAfterAWhile() throws Exception {
    Turns turns = new Turns();
    CountDownLatch seated = new CountDownLatch(3);
    CountDownLatch enough = new CountDownLatch(1);
    Work sitting =
        unused -> {
          seated.countDown();
          return await(enough);
        };
    for (int page = 0; page < 3; page++) {
      String name = "page " + page;
      new Thread(() -> turns.take(name, 1, sitting)).start();
    }
    seated.await();
    Refusal refusal =
        assertThrows(Refusal.class, () -> turns.take("a fourth", 1, unused -> "never"));
    assertEquals(Refusal.BUSY, refusal.status());
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
