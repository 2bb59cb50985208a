package afterweld.casefile.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * Takes a YAML or JSON text apart in one pass and keeps the place of every key and value.
 *
 * <p>Anchors, aliases and tags are faults: a case needs none, and an alias of an alias can make a
 * few lines grow beyond any memory.
 */
public final class TreeReader {
  /** The deepest key of a case file is the fourth; this leaves room for a slip. */
  private static final int DEEPEST = 12;

  private final JsonParser parser;
  private final FaultCollector faults;
  private final String[] lines;
  private final Set<Place> seen = new HashSet<>();
  private int depth;

  private TreeReader(JsonParser parser, String text, FaultCollector faults) {
    this.parser = parser;
    this.lines = text.split("\n", -1);
    this.faults = faults;
  }

  /** The file's root, or empty if there is none or the text is broken, which is then a fault. */
  public static Optional<Node> read(String file, String text, FaultCollector faults) {
    boolean json = file.toLowerCase(Locale.ROOT).endsWith(".json");
    JsonFactory format = json ? new JsonFactory() : new YAMLFactory();
    try (JsonParser parser = format.createParser(text)) {
      return new TreeReader(parser, text, faults).document();
    } catch (JsonProcessingException broken) {
      faults.add(
          placeOf(broken),
          (json ? "not valid JSON: " : "not valid YAML: ") + BrokenText.words(broken, json));
    } catch (IOException impossible) {
      throw new IllegalStateException("reading from memory failed", impossible);
    }
    return Optional.empty();
  }

  private Optional<Node> document() throws IOException {
    if (parser.nextToken() == null) {
      return Optional.empty();
    }
    Node root = node();
    if (parser.nextToken() != null) {
      faults.add(place(), "found a second document; expected one joint in one file");
    }
    return Optional.of(root);
  }

  private Node node() throws IOException {
    if (faults.full()) {
      throw new GivenUp("too many faults", parser.currentTokenLocation());
    }
    refuseReferences();
    return switch (parser.currentToken()) {
      case START_OBJECT -> mapping();
      case START_ARRAY -> sequence();
      default -> scalar();
    };
  }

  private Node.Mapping mapping() throws IOException {
    Place start = place();
    descend();
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      refuseReferences();
      String key = parser.currentName();
      Place keyPlace = place();
      parser.nextToken();
      keep(entries, key, new Node.Entry(keyPlace, node()));
    }
    depth--;
    return new Node.Mapping(start, entries);
  }

  private void keep(Map<String, Node.Entry> entries, String key, Node.Entry entry) {
    Node.Entry first = entries.putIfAbsent(key, entry);
    if (first != null) {
      faults.add(
          entry.key(),
          "found the key " + Quoted.of(key) + " again; the first is in line " + first.key().line());
    }
  }

  private Node.Sequence sequence() throws IOException {
    Place start = place();
    descend();
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(node());
    }
    depth--;
    return new Node.Sequence(start, items);
  }

  private void descend() throws IOException {
    depth++;
    if (depth > DEEPEST) {
      throw new GivenUp(
          "keys and lists nested more than " + DEEPEST + " deep", parser.currentTokenLocation());
    }
  }

  private Node.Scalar scalar() throws IOException {
    String text = parser.getText();
    Node.Kind kind =
        switch (parser.currentToken()) {
          case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> Node.Kind.NUMBER;
          case VALUE_TRUE -> Node.Kind.TRUE;
          case VALUE_FALSE -> Node.Kind.FALSE;
          case VALUE_NULL -> Node.Kind.NOTHING;
          default -> text.isBlank() ? Node.Kind.NOTHING : Node.Kind.TEXT;
        };
    return new Node.Scalar(place(), text, kind);
  }

  /** Tokens with an anchor or a tag begin at it; a block and its first key begin together. */
  private void refuseReferences() throws IOException {
    if (!(parser instanceof YAMLParser yaml) || !seen.add(place())) {
      return;
    }
    int first = firstCharacter(place());
    if (yaml.isCurrentAlias()) {
      refuse("the alias *" + yaml.getText());
    } else if (first == '&' || first == '!') {
      refuse(first == '&' ? "an anchor (&)" : "a tag (!)");
    }
  }

  private void refuse(String reference) {
    faults.add(place(), "found " + reference + "; write the value out without it");
  }

  private int firstCharacter(Place place) {
    String line = place.line() <= lines.length ? lines[place.line() - 1] : "";
    int length = line.codePointCount(0, line.length());
    return place.column() <= length
        ? line.codePointAt(line.offsetByCodePoints(0, place.column() - 1))
        : ' ';
  }

  private Place place() {
    return placeOf(parser.currentTokenLocation());
  }

  private static Place placeOf(JsonLocation location) {
    return new Place(Math.max(1, location.getLineNr()), Math.max(1, location.getColumnNr()));
  }

  private static Place placeOf(JsonProcessingException broken) {
    if (broken.getCause() instanceof MarkedYAMLException yaml && yaml.getProblemMark() != null) {
      return new Place(yaml.getProblemMark().getLine() + 1, yaml.getProblemMark().getColumn() + 1);
    }
    return broken.getLocation() == null ? Place.START : placeOf(broken.getLocation());
  }

  /** Stops the pass where going on would take long and tell nothing. */
  private static final class GivenUp extends JsonProcessingException {
    private GivenUp(String why, JsonLocation location) {
      super(why, location);
    }
  }
}
