package afterweld.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Texts among the resources of this package. */
final class Texts {
  private Texts() {}

  /** The whole text. */
  static String resource(String name) throws IOException {
    try (InputStream file = Texts.class.getResourceAsStream(name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The texts that a resource holds, each under a line with three dashes and its name. */
  static List<String> documents(String name) throws IOException {
    return Arrays.stream(resource(name).split("(?m)^--- #.*\\n"))
        .filter(text -> !text.isBlank())
        .toList();
  }
}
