package afterweld.cli.classroom;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** JSON in and out: strict about what comes in, every digit of what goes out. */
final class Json {
  private static final int DEEPEST = 40;
  private static final JsonMapper MAPPER = mapper();

  private Json() {}

  private static JsonMapper mapper() {
    JsonMapper mapper =
        JsonMapper.builder()
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    mapper
        .getFactory()
        .setStreamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build());
    return mapper;
  }

  /**
   * What a request holds.
   *
   * @throws Refusal if it is not a JSON object
   */
  static JsonNode object(byte[] body) {
    try {
      JsonNode root = MAPPER.readTree(body);
      if (root != null && root.isObject()) {
        return root;
      }
      throw new Refusal(Refusal.BAD_REQUEST, "Expected a JSON object.");
    } catch (JsonProcessingException broken) {
      throw new Refusal(Refusal.BAD_REQUEST, "The request is not JSON: " + fault(broken) + ".");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** What is wrong, without advice to the programmer of a parser. */
  private static String fault(JsonProcessingException broken) {
    return broken.getOriginalMessage().split("[:(]", 2)[0].strip();
  }

  /** Maps, lists, texts, numbers and trees as JSON. */
  static byte[] bytes(Object value) {
    try {
      return MAPPER.writeValueAsBytes(value);
    } catch (JsonProcessingException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** A number, or null where there is none. */
  static Double number(double value) {
    return Double.isFinite(value) ? value : null;
  }

  /** Numbers, null where there is none. */
  static List<Double> numbers(DoubleStream values) {
    List<Double> all = new ArrayList<>();
    values.forEach(value -> all.add(number(value)));
    return all;
  }
}
