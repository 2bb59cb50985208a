package afterweld.document;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * {@link LinkedHashMap}s, lists, texts, truth values, whole numbers and {@link JsonNumber}s as JSON
 * text.
 */
public final class JsonText {
  private static final DefaultPrettyPrinter LAYOUT =
      new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));

  private final JsonGenerator generator;

  private JsonText(JsonGenerator generator) {
    this.generator = generator;
  }

  /** The JSON text, ending in a line break. */
  public static String of(Map<String, ?> root) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
      generator.setPrettyPrinter(LAYOUT.createInstance());
      new JsonText(generator).write(root);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text + "\n";
  }

  private void write(Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      writeObject(map);
    } else if (value instanceof Iterable<?> list) {
      writeArray(list);
    } else if (value instanceof JsonNumber number) {
      generator.writeRawValue(number.toString());
    } else if (value instanceof Long whole) {
      generator.writeNumber(whole);
    } else if (value instanceof Boolean truth) {
      generator.writeBoolean(truth);
    } else if (value == null) {
      generator.writeNull();
    } else if (value instanceof Number) {
      throw new IllegalArgumentException("a number without decimals: " + value);
    } else {
      generator.writeString(value.toString());
    }
  }

  private void writeObject(Map<?, ?> map) throws IOException {
    if (map.size() > 1 && !(map instanceof LinkedHashMap)) {
      throw new IllegalArgumentException(
          "keys in no order, another with each run: " + map.keySet());
    }
    generator.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      generator.writeFieldName(entry.getKey().toString());
      write(entry.getValue());
    }
    generator.writeEndObject();
  }

  private void writeArray(Iterable<?> list) throws IOException {
    generator.writeStartArray();
    for (Object item : list) {
      write(item);
    }
    generator.writeEndArray();
  }
}
