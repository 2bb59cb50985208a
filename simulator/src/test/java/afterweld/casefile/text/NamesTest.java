package afterweld.casefile.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NamesTest {
  private static final List<String> KEYS =
      List.of("temperature", "time", "travel_speed", "current", "bead_width", "soak", "age");

  @ParameterizedTest
  @CsvSource({
    "temperatur, temperature",
    "temprature, temperature",
    "tiem, time",
    "Time, time",
    "speed, travel_speed",
    "curent, current",
    "bead width, bead_width",
    "sooak, soak",
    "agee, age"
  })
  void aSlipFindsItsKey(String slip, String key) {
    assertEquals(Optional.of(key), Names.nearest(slip, KEYS));
  }

  @ParameterizedTest
  @CsvSource({"filler", "x", "qqqqqqqq"})
  void somethingElseFindsNothing(String other) {
    assertEquals(Optional.empty(), Names.nearest(other, KEYS));
  }

  @Test
  void neighboursThatChangedPlacesAreOneSlip() {
    assertEquals(Optional.of("6061"), Names.nearest("6016", List.of("3003", "5083", "6061")));
  }

  @Property
  void oneLetterLeftOutIsAlwaysFound(
      @ForAll @AlphaChars @StringLength(min = 4, max = 20) String name,
      @ForAll @IntRange(max = 19) int position) {
    int cut = position % name.length();
    String slip = name.substring(0, cut) + name.substring(cut + 1);
    assertEquals(Optional.of(name), Names.nearest(slip, List.of("0123456789012345678", name)));
  }

  @Property
  void anyTextIsAnswered(@ForAll String text) {
    assertTrue(Names.nearest(text, KEYS).map(KEYS::contains).orElse(true));
  }
}
