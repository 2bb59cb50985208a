package afterweld.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** A case file as a map of its keys, to be asked again with another value. */
final class CaseEdit {
  private static final ObjectMapper YAML = new ObjectMapper(new YAMLFactory());

  private static final Map<String, Pattern> STEPS =
      Map.of(
          "weld", Pattern.compile("weld in (\\S+)"),
          "wait", Pattern.compile("(.+) at room temperature"),
          "solution treat",
              Pattern.compile("solution treat at (\\S+ \\S+) \\(.+\\) for (\\S+ \\S+)"),
          "quench", Pattern.compile("quench (\\D+) of (\\S+ \\S+) \\(.+\\) within (\\S+ \\S+)"),
          "quench at a rate", Pattern.compile("quench at (\\S+) °C/s \\(.+\\)"),
          "anneal",
              Pattern.compile(
                  "anneal at (\\S+ \\S+) \\(.+?\\) for (\\S+ [^ ,]+)(?:, cooled at (\\S+) °C/h \\(.+)?"),
          "hold", Pattern.compile("hold at room temperature for (.+)"),
          "age",
              Pattern.compile(
                  "age at (\\S+ \\S+) \\(.+?\\) for (\\S+ [^ ,]+)"
                      + "(?:, heated (?:in|at) (\\S+) (\\S+)(?: \\(.+\\))?)?"));

  private static final Map<String, String> MEDIA =
      Map.of(
          "into water", "water",
          "into boiling water", "boiling-water",
          "into polymer", "polymer",
          "under a spray", "spray",
          "in moving air", "forced-air",
          "in still air", "still-air");

  private final Map<String, Object> keys;

  private CaseEdit(Map<String, Object> keys) {
    this.keys = keys;
  }

  static CaseEdit of(String yaml) {
    try {
      return new CaseEdit(YAML.readValue(yaml, new TypeReference<Map<String, Object>>() {}));
    } catch (JsonProcessingException cause) {
      throw new IllegalArgumentException(yaml, cause);
    }
  }

  String text() {
    try {
      return YAML.writeValueAsString(keys);
    } catch (JsonProcessingException cause) {
      throw new IllegalStateException(cause);
    }
  }

  Object get(String key) {
    return keys.get(key);
  }

  boolean has(String key) {
    return keys.containsKey(key);
  }

  /** Whether the treatment after the weld ends with a kind of step. */
  boolean endsWith(String step) {
    return keys.get("after_weld") instanceof List<?> steps
        && !steps.isEmpty()
        && steps.get(steps.size() - 1) instanceof Map<?, ?> last
        && last.containsKey(step);
  }

  /** How many steps of a kind the treatment after the weld has. */
  long steps(String step) {
    return keys.get("after_weld") instanceof List<?> steps
        ? steps.stream()
            .filter(one -> one instanceof Map<?, ?> map && map.containsKey(step))
            .count()
        : 0;
  }

  /** The same with a key at another value, or without it where the value is null. */
  CaseEdit with(String key, Object value) {
    Map<String, Object> changed = new LinkedHashMap<>(keys);
    if (value == null) {
      changed.remove(key);
    } else {
      changed.put(key, value);
    }
    return new CaseEdit(changed);
  }

  @SuppressWarnings("unchecked")
  private Map<String, Object> map(String key) {
    return new LinkedHashMap<>((Map<String, Object>) keys.get(key));
  }

  /** One more value asked of the joint. */
  CaseEdit requiring(String key, Object value) {
    Map<String, Object> asked = has("require") ? map("require") : new LinkedHashMap<>();
    asked.put(key, value);
    return with("require", asked);
  }

  /** Whether a route's first step welds metal as it is written: another temper melts otherwise. */
  boolean weldsAsWritten(String step) {
    return !step.startsWith("weld in ") || step.equals("weld in " + map("left").get("temper"));
  }

  /** The same joint welded and treated as the steps of a route say, in the words of the route. */
  CaseEdit following(List<String> steps) {
    Map<String, Object> left = map("left");
    List<Object> after = new ArrayList<>();
    CaseEdit done = this;
    for (String step : steps) {
      List<String> said = said(step);
      switch (said.get(0)) {
        case "weld" -> left.put("temper", said.get(1));
        case "wait" -> done = done.with("natural_age", said.get(1));
        case "solution treat" ->
            after.add(
                Map.of("solution_treat", Map.of("temperature", said.get(1), "soak", said.get(2))));
        case "quench" ->
            after.add(
                Map.of(
                    "quench",
                    Map.of(
                        "medium", MEDIA.get(said.get(1)),
                        "temperature", said.get(2),
                        "delay", said.get(3))));
        case "quench at a rate" ->
            after.add(Map.of("quench", Map.of("rate", said.get(1) + " K/s")));
        case "anneal" -> after.add(Map.of("anneal", annealed(said)));
        case "hold" -> after.add(Map.of("natural_age", said.get(1)));
        default -> after.add(Map.of("age", aged(said)));
      }
    }
    return done.with("left", left).with("after_weld", after.isEmpty() ? null : after);
  }

  private static Map<String, Object> aged(List<String> said) {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("temperature", said.get(1));
    keys.put("time", said.get(2));
    if (said.get(3) != null) {
      keys.put("ramp", said.get(3) + " " + said.get(4).replace("°C", "K"));
    }
    return keys;
  }

  private static Map<String, Object> annealed(List<String> said) {
    Map<String, Object> keys = new LinkedHashMap<>();
    keys.put("temperature", said.get(1));
    keys.put("time", said.get(2));
    if (said.get(3) != null) {
      keys.put("cooling", said.get(3) + " K/h");
    }
    return keys;
  }

  /** What a step of a route is, and its values. */
  private static List<String> said(String step) {
    for (Map.Entry<String, Pattern> one : STEPS.entrySet()) {
      Matcher found = one.getValue().matcher(step);
      if (found.matches()) {
        List<String> all = new ArrayList<>(List.of(one.getKey()));
        IntStream.rangeClosed(1, found.groupCount()).mapToObj(found::group).forEach(all::add);
        return all;
      }
    }
    throw new IllegalArgumentException(step);
  }

  /** Whether its sides can change places without another meaning. */
  boolean turnable() {
    Object joint = keys.get("joint");
    return joint == null || joint.equals("butt") || joint.equals("bead");
  }

  /** The same joint seen from the other side. */
  CaseEdit mirrored() {
    Object left = keys.get("left");
    Object right = keys.getOrDefault("right", left);
    CaseEdit turned = with("left", full(right, left)).with("right", left);
    if (keys.get("filler") instanceof Map<?, ?> && map("filler").containsKey("from_left")) {
      Map<String, Object> filler = map("filler");
      double share =
          Double.parseDouble(filler.get("from_left").toString().replace("%", "").strip());
      filler.put("from_left", (100 - share) + " %");
      turned = turned.with("filler", filler);
    }
    return turned.with("passes", passes().stream().map(CaseEdit::otherOffset).toList());
  }

  /** What a right side does not say of its metal it has from the left one. */
  private static Map<String, Object> full(Object right, Object left) {
    Map<String, Object> all = new LinkedHashMap<>();
    if (right instanceof Map<?, ?> own && left instanceof Map<?, ?> other) {
      own.forEach((key, value) -> all.put(key.toString(), value));
      if (!all.containsKey("alloy")) {
        all.put("alloy", other.get("alloy"));
        all.putIfAbsent("temper", other.get("temper"));
      }
    }
    return all;
  }

  @SuppressWarnings("unchecked")
  private List<Map<String, Object>> passes() {
    return (List<Map<String, Object>>) keys.get("passes");
  }

  private static Map<String, Object> otherOffset(Map<String, Object> pass) {
    if (!pass.containsKey("offset")) {
      return pass;
    }
    Map<String, Object> turned = new LinkedHashMap<>(pass);
    String offset = pass.get("offset").toString();
    turned.put("offset", offset.startsWith("-") ? offset.substring(1) : "-" + offset);
    return turned;
  }
}
