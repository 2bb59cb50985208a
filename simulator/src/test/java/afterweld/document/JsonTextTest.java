package afterweld.document;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class JsonTextTest {
  @Test
  void keysStandInTheOrderTheyWerePut() {
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("what", "soak");
    line.put("text", "60 min");
    String text = JsonText.of(line);
    assertTrue(text.indexOf("what") < text.indexOf("text"), text);
  }

  /** A map without order writes other bytes in another run. */
  @Test
  void refusesKeysInNoOrder() {
    Map<String, Object> root =
        Map.of("lines", List.of(new HashMap<>(Map.of("what", "soak", "text", "60 min"))));
    assertThrows(IllegalArgumentException.class, () -> JsonText.of(root));
  }
}
