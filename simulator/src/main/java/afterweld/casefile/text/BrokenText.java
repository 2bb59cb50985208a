package afterweld.casefile.text;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/**
 * What is wrong with a text that is no YAML or no JSON, in the words of somebody who writes one.
 * The parsers' own words name their settings and the insides of their languages; none of them is
 * passed on.
 */
final class BrokenText {
  private static final String CLOSED_EARLY =
      "the text ends before its last bracket, brace or quote is closed";
  private static final String OTHERWISE =
      "the text cannot be followed here; look for a bracket, quote, comma or colon too many or too"
          + " few";

  /** What a parser says, and what is said in its place; {@code $1} is what it found. */
  private record Words(Pattern theirs, String ours) {
    Words(String theirs, String ours) {
      this(Pattern.compile(theirs), ours);
    }
  }

  private static final List<Words> JSON =
      List.of(
          new Words("Non-standard token '(.{1,40}?)'", "found $1, which is no number"),
          new Words(
              "Unrecognized token '(.{1,40}?)'",
              "found $1 without quotes; expected a number, or a text in double quotes"),
          new Words(
              "Unexpected close marker '(.)'", "found a $1 that closes nothing opened before"),
          new Words("'/'.*comment", "found a /; expected no remarks, which JSON does not know"),
          new Words("plus sign", "found a plus sign; expected a number without it"),
          new Words(
              "numeric value|valid numeric|Leading zeroes",
              "found a number that is not written in full, such as 0.5 or -2e3"),
          new Words(
              "unquoted character",
              "found a tab or a line break inside quotes; expected a text on one line"),
          new Words(
              "escape",
              "found a backslash before something it does not go with; expected a text without"
                  + " backslashes"),
          new Words("expecting a colon", "expected a colon between the key and its value"),
          new Words("expecting comma", "expected a comma or a closing bracket or brace"),
          new Words("double-quote", "expected a key in double quotes"),
          new Words("expected a v", "expected a value: a number, or a text in double quotes"),
          new Words("too many faults", "$0"),
          new Words("keys and lists nested more than \\d+ deep", "$0"),
          new Words("end-of-input", CLOSED_EARLY));

  private static final List<Words> YAML =
      List.of(
          new Words("TAB", "found a tab before the text; expected blanks"),
          new Words("Expected a field name", "expected a plain key"),
          new Words(
              "mapping values are not allowed",
              "found a second colon in one line; put a text with a colon into quotes"),
          new Words(
              "keys are not allowed|entries are not allowed",
              "found a key or a list item where a value stands; begin it on a line of its own"),
          new Words("could not find expected ':'", "expected a colon and a blank behind the key"),
          new Words(
              "expected ',' or",
              "expected a comma or the closing bracket or brace of the list or keys before"),
          new Words(
              "block end>, but found '([,\\]}])'",
              "found a $1 that belongs to nothing opened before"),
          new Words(
              "block end",
              "found a line that begins farther left or right than the ones it" + " belongs to"),
          new Words(
              "cannot start any token|node content|comment or a line break|chomping",
              "found a character that no value begins with; put the value into quotes"),
          new Words("escape", "found a backslash inside double quotes; use single quotes"),
          new Words("end of stream|document start", CLOSED_EARLY),
          new Words("too many faults", "$0"),
          new Words("keys and lists nested more than \\d+ deep", "$0"));

  private BrokenText() {}

  /** What is wrong, in one line. */
  static String words(JsonProcessingException broken, boolean json) {
    if (broken instanceof JsonEOFException) {
      return CLOSED_EARLY;
    }
    String theirs =
        broken.getCause() instanceof MarkedYAMLException yaml
            ? String.valueOf(yaml.getProblem())
            : String.valueOf(broken.getOriginalMessage());
    return ours(theirs, json ? JSON : YAML);
  }

  private static String ours(String theirs, List<Words> known) {
    for (Words words : known) {
      Matcher found = words.theirs().matcher(theirs);
      if (found.find()) {
        String first = found.groupCount() > 0 ? Quoted.of(found.group(1)) : "";
        return words.ours().replace("$0", found.group()).replace("$1", first);
      }
    }
    return OTHERWISE;
  }
}
