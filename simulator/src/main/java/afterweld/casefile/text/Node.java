package afterweld.casefile.text;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A case file taken apart, every piece with its place; YAML and JSON give the same pieces. */
public sealed interface Node {
  /** Where it starts. */
  Place place();

  /** What it is, as a message says it. */
  String words();

  /** What a single value is. */
  enum Kind {
    TEXT,
    NUMBER,
    TRUE,
    FALSE,
    NOTHING
  }

  /**
   * A single value, as written.
   *
   * @param place where it starts
   * @param text as written, without quotes
   * @param kind what the file format takes it for
   */
  record Scalar(Place place, String text, Kind kind) implements Node {
    @Override
    public String words() {
      return kind == Kind.NOTHING ? "nothing" : Quoted.of(text);
    }
  }

  /**
   * Keys with values.
   *
   * @param place where it starts
   * @param entries in the order of the file
   */
  record Mapping(Place place, Map<String, Entry> entries) implements Node {
    /** Keeps the order of the file. */
    public Mapping {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }

    @Override
    public String words() {
      return "keys with values";
    }
  }

  /**
   * A list.
   *
   * @param place where it starts
   * @param items in the order of the file
   */
  record Sequence(Place place, List<Node> items) implements Node {
    /** Copies the items. */
    public Sequence {
      items = List.copyOf(items);
    }

    @Override
    public String words() {
      return "a list";
    }
  }

  /**
   * A value and the place of its key.
   *
   * @param key where the key stands
   * @param value what it holds
   */
  record Entry(Place key, Node value) {}
}
