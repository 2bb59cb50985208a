package afterweld.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The cases of which the laws between commands are asked: written ones that once had two answers,
 * and generated ones. The default build takes a few of each, {@code -Plaws} all, and {@code
 * -Dafterweld.laws=PATTERN} those whose name the pattern matches whole.
 */
final class LawCases {
  private static final String ASKED = System.getProperty("afterweld.laws", "few");
  private static final boolean FEW = ASKED.equals("few");
  private static final int GENERATED = FEW ? 3 : 300;
  private static final long SEED = 6061;
  private static final List<String> TELLING =
      List.of("6 mm V, one MIG pass", "T4, aged only", "25 mm four passes, short soak");

  private LawCases() {}

  /**
   * A case with the name it is told by.
   *
   * @param name what it is
   * @param yaml its file
   */
  record Named(String name, String yaml) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Named> all() throws IOException {
    List<Named> all = new ArrayList<>(written());
    if (FEW) {
      all.removeIf(one -> !TELLING.contains(one.name()));
    }
    int number = 1;
    for (String yaml : GeneratedCases.yaml(GENERATED, SEED)) {
      all.add(new Named("generated " + number++, yaml));
    }
    if (!FEW && !ASKED.equals("all")) {
      all.removeIf(one -> !one.name().matches(ASKED));
    }
    return all.stream();
  }

  private static List<Named> written() throws IOException {
    try (var stream = LawCases.class.getResourceAsStream("cases.yaml")) {
      String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      return Arrays.stream(text.split("(?m)^--- # "))
          .filter(part -> !part.isBlank())
          .map(part -> part.split("\n", 2))
          .map(parts -> new Named(parts[0].strip(), parts[1]))
          .toList();
    }
  }
}
