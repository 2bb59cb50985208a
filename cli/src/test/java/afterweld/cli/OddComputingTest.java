package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.cli.terminal.Streams;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever a valid case asks, every command answers it or says in a sentence why not, within a time
 * that grows with its work, and no output holds a number that is none. Many more with {@code
 * -Pfuzz}.
 */
class OddComputingTest {
  private static final boolean FULL = Boolean.getBoolean("afterweld.fuzz");
  private static final long SEED = Long.getLong("afterweld.fuzz.seed", 13);
  private static final int FIRST = Integer.getInteger("afterweld.fuzz.from", 0);
  private static final int CASES = Integer.getInteger("afterweld.fuzz.cases", FULL ? 5000 : 8);

  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("profile", "--stages"),
          List.of("routes"),
          List.of("fillers"),
          List.of("ageing"),
          List.of("bend"),
          List.of("sheet"),
          List.of("spread", "--runs", "10"),
          List.of("fit", "examples/fork-arm-traverse.csv"));

  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|-?Infinity)\\b");

  /** A pass, or the way of an arc that is followed, takes this long at most on a busy machine. */
  private static final double SECONDS_PER_PIECE = 20;

  @TempDir Path folder;
  private int told;

  @Test
  void everyCommandAnswersGeneratedCases() throws IOException {
    List<String> texts = GeneratedCases.yaml(CASES, SEED);
    List<String> wrong = new ArrayList<>();
    for (int i = FIRST; i < texts.size(); i++) {
      for (List<String> command : FULL ? COMMANDS : COMMANDS.subList(i % 8, i % 8 + 1)) {
        look(texts.get(i), command, wrong);
      }
      tell(i, wrong);
    }
    assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n\n", wrong));
  }

  /** How far a long run has come, for those who wait for it. */
  private void tell(int number, List<String> wrong) {
    if (FULL && number % 20 == 19) {
      System.out.println("case " + (number + 1) + " computed, wrong so far: " + wrong.size());
      wrong.stream().skip(told).forEach(System.out::println);
      told = wrong.size();
    }
  }

  @Test
  void casesThatOnceFailedAreAnswered() throws IOException {
    List<String> wrong = new ArrayList<>();
    for (String text : Texts.documents("odd-computed.yaml")) {
      look(text, COMMANDS.get(0), wrong);
      if (text.contains("not predicted")) {
        look(text, List.of("fillers"), wrong);
      }
    }
    assertTrue(wrong.isEmpty(), () -> wrong.size() + " wrong:\n" + String.join("\n\n", wrong));
  }

  private void look(String text, List<String> command, List<String> wrong) throws IOException {
    Path caseFile = Files.writeString(folder.resolve("case.yaml"), text);
    Path out = folder.resolve("out-" + command.get(0));
    List<String> line = new ArrayList<>(command);
    line.add(1, caseFile.toString());
    line.addAll(List.of("--out", out.toString()));
    Fixtures.Memory memory = new Fixtures.Memory();
    Streams streams = memory.streams(false);
    long start = System.nanoTime();
    int status = Welded.program(streams).run(line.toArray(String[]::new));
    double seconds = (System.nanoTime() - start) / 1e9;
    List<String> found = new ArrayList<>();
    if (status < 0 || status > 2 || memory.err().contains("internal error")) {
      found.add("status " + status + ": " + memory.err());
    }
    if (seconds > SECONDS_PER_PIECE * pieces(text, command)) {
      found.add(String.format(Locale.ROOT, "took %.0f s", seconds));
    }
    noNumber("printed", memory.out() + memory.err()).ifPresent(found::add);
    found.addAll(inFiles(out));
    found.forEach(what -> wrong.add(String.join(" ", command) + ": " + what + "\n" + text));
  }

  /** How much there is to compute: passes, followed ways, repetitions. */
  private static int pieces(String text, List<String> command) {
    int passes = text.split("process:", -1).length - 1;
    int followed =
        text.contains("ring:") || text.contains("seam:") || text.contains("width:") ? 4 : 1;
    return (1 + passes) * followed * (command.get(0).equals("spread") ? 3 : 1);
  }

  private static Optional<String> noNumber(String where, String text) {
    Matcher found = NO_NUMBER.matcher(text);
    return found.find()
        ? Optional.of(where + " " + text.substring(Math.max(0, found.start() - 80), found.end()))
        : Optional.empty();
  }

  private static List<String> inFiles(Path out) throws IOException {
    List<String> found = new ArrayList<>();
    if (Files.isDirectory(out)) {
      try (Stream<Path> files = Files.list(out)) {
        for (Path file : files.toList()) {
          if (!file.toString().endsWith(".png")) {
            noNumber(file.getFileName().toString(), Files.readString(file, StandardCharsets.UTF_8))
                .ifPresent(found::add);
          }
          Files.delete(file);
        }
      }
      Files.delete(out);
    }
    return found;
  }
}
