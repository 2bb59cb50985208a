package afterweld.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A result as it must read when the joint is seen from the other side: left and right exchanged in
 * keys and words, distances with the other sign, what runs from left to right in the other order.
 */
final class MirroredJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Set<String> SIGNED =
      Set.of("distance_mm", "from_mm", "to_mm", "softened_band_mm");
  private static final Set<String> ALONG_THE_LINE = Set.of("stations", "zones");
  private static final Pattern SIDE =
      Pattern.compile("\\b(left|right)\\b(?! alone| to the engineer)");
  private static final double SHARE = 0.002;
  private static final double ROUNDING = 0.0101;

  private final List<String> differences = new ArrayList<>();

  private MirroredJson() {}

  /** Where one result is not the mirror image of the other, as sentences; empty where it is. */
  static List<String> differences(JsonNode one, JsonNode other) {
    MirroredJson compared = new MirroredJson();
    compared.compare("", turned("", one), other);
    return compared.differences;
  }

  private static JsonNode turned(String key, JsonNode node) {
    if (node.isObject()) {
      return turnedObject(node);
    }
    if (node.isArray()) {
      List<JsonNode> all = new ArrayList<>();
      node.forEach(element -> all.add(turned(key, element)));
      if (ALONG_THE_LINE.contains(key) || SIGNED.contains(key)) {
        Collections.reverse(all);
      }
      return NODES.arrayNode().addAll(all);
    }
    if (node.isTextual()) {
      return TextNode.valueOf(exchanged(node.asText()));
    }
    return node.isNumber() && SIGNED.contains(key) ? DoubleNode.valueOf(-node.asDouble()) : node;
  }

  private static ObjectNode turnedObject(JsonNode node) {
    ObjectNode turned = NODES.objectNode();
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      turned.set(exchangedKey(entry.getKey()), turned(entry.getKey(), entry.getValue()));
    }
    if (turned.has("from_mm") && turned.has("to_mm")) {
      JsonNode from = turned.get("from_mm");
      turned.set("from_mm", turned.get("to_mm"));
      turned.set("to_mm", from);
    }
    return turned;
  }

  /** A share that is left has no side. */
  private static String exchangedKey(String key) {
    return key.equals("yield_share_left")
        ? key
        : exchanged(key.replace('_', ' ')).replace(' ', '_');
  }

  private static String exchanged(String text) {
    return SIDE.matcher(text).replaceAll(found -> found.group().equals("left") ? "right" : "left");
  }

  private void compare(String path, JsonNode one, JsonNode other) {
    if (one.isObject() && other.isObject()) {
      Set<String> keys = new TreeSet<>();
      one.fieldNames().forEachRemaining(keys::add);
      other.fieldNames().forEachRemaining(keys::add);
      keys.forEach(key -> compare(path + "/" + key, one.path(key), other.path(key)));
    } else if (one.isArray() && other.isArray()) {
      compareLists(path, (ArrayNode) one, (ArrayNode) other);
    } else if (!same(one, other)) {
      differences.add(path + ": " + one + " and " + other);
    }
  }

  private void compareLists(String path, ArrayNode one, ArrayNode other) {
    if (one.size() != other.size()) {
      differences.add(path + ": " + one.size() + " and " + other.size());
      return;
    }
    boolean line = ALONG_THE_LINE.contains(path.substring(path.lastIndexOf('/') + 1));
    Iterator<JsonNode> here = (line ? list(one) : sorted(one)).iterator();
    Iterator<JsonNode> there = (line ? list(other) : sorted(other)).iterator();
    for (int i = 0; here.hasNext(); i++) {
      JsonNode element = here.next();
      JsonNode image = there.next();
      if (!onTheButtPlane(element)) {
        compare(path + "/" + i, element, image);
      }
    }
  }

  /** What lies there counts as left, turned round as well. */
  private static boolean onTheButtPlane(JsonNode element) {
    return element.path("distance_mm").asDouble(1) == 0;
  }

  private static List<JsonNode> list(JsonNode array) {
    List<JsonNode> all = new ArrayList<>();
    array.forEach(all::add);
    return all;
  }

  /** What is named by words is told side by side, in the order of the words. */
  private static List<JsonNode> sorted(JsonNode array) {
    List<JsonNode> all = list(array);
    all.sort(Comparator.comparing(MirroredJson::allWords));
    return all;
  }

  private static String allWords(JsonNode node) {
    if (node.isTextual()) {
      return words(node.asText());
    }
    return node.isNumber() || node.isArray()
        ? ""
        : list(node).stream().map(MirroredJson::allWords).collect(Collectors.joining(" "));
  }

  private static boolean same(JsonNode one, JsonNode other) {
    if (one.isNumber() && other.isNumber()) {
      double value = one.asDouble();
      return Math.abs(value - other.asDouble()) <= SHARE * Math.abs(value) + ROUNDING;
    }
    boolean texts = one.isTextual() && other.isTextual();
    return texts ? words(one.asText()).equals(words(other.asText())) : one.equals(other);
  }

  /** "6061 to 6082" is "6082 to 6061". */
  private static String words(String text) {
    return Arrays.stream(text.split("[\\s,]+")).sorted().collect(Collectors.joining(" "));
  }
}
