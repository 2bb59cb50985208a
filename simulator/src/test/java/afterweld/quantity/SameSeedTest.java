package afterweld.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** The default build draws the same values every time. */
class SameSeedTest {
  private static final List<Integer> DRAWN = new ArrayList<>();
  private static final List<Integer> DRAWN_AGAIN = new ArrayList<>();

  @Property(tries = 20)
  void draws(@ForAll int value) {
    DRAWN.add(value);
  }

  @Property(tries = 20)
  void drawsAgain(@ForAll int value) {
    DRAWN_AGAIN.add(value);
  }

  @AfterContainer
  static void sameEveryTime() {
    if (!Boolean.getBoolean("afterweld.random")) {
      assertEquals(DRAWN, DRAWN_AGAIN);
    }
  }
}
