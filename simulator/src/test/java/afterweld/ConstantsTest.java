package afterweld;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every number of the physics and of the trade says where it is from, where it stands. */
class ConstantsTest {
  private static final Path SOURCES = Path.of("src/main/java/afterweld");

  /** Meshes, searches, tolerances and lengths of texts: they change no result that can be seen. */
  private static final Set<String> NUMERICS =
      Set.of(
          "joint/SliceLine",
          "joint/bend/BendSolver",
          "metallurgy/CoarsePhases",
          "metallurgy/Diffusion",
          "metallurgy/MassBalance",
          "metallurgy/NeedleClasses",
          "metallurgy/Precipitation",
          "metallurgy/SoluteBudget",
          "metallurgy/StepControl",
          "section/StationLine",
          "section/StationPlacement",
          "study/Share",
          "study/Slopes",
          "study/TraverseFit",
          "thermal/ChordCut",
          "thermal/LegCorrection",
          "thermal/NearestTemper",
          "thermal/StationPass",
          "thermal/furnace/LumpedPlate",
          "thermal/shell/ShellGrid",
          "thermal/shell/ShellMetal",
          "thermal/shell/ShellProcedure",
          "thermal/shell/ShellRun",
          "thermal/shell/ShellSection",
          "thermal/shell/ShellSource",
          "thermal/shell/ShellVariants");

  /** Units and roundings, which are what their names say. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "INCH\\w*|KSI|PSI|BAR|NEWTON_\\w+|ZERO_CELSIUS|HOUR|DAY|WEEK|MINUTE|MM|MEGA|KILO|MILLIMETRES"
              + "|INCHES\\w*|HAIR|ROUNDING|SAME_GAUGE|WHOLE_MILLIMETRES|BOILING");

  private static final Pattern SAID =
      Pattern.compile(
          "source|assumed|practice|from memory|EN 1999|ASTM|AMS|ISO|handbook|published|definition"
              + "|theory|standard|convention|numeric|rounding|by rule|set by hand|checked against",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern CLASS_TEXT =
      Pattern.compile(
          "/\\*\\*((?:(?!\\*/).)*)\\*/\\s*(?:public |final |abstract |sealed )*"
              + "(?:class|record|enum|interface)",
          Pattern.DOTALL);

  private static final Pattern CONSTANT =
      Pattern.compile(
          "(/\\*\\*(?:(?!\\*/).)*\\*/\\s*)?(?:public |private )?static final double(?:\\[\\])*"
              + " (\\w+) =\\s*([^;]*\\d[^;]*);",
          Pattern.DOTALL);

  @Test
  void everyNumberSaysWhereItIsFrom() throws IOException {
    List<String> silent = new ArrayList<>();
    Set<String> numerics = new TreeSet<>();
    int seen = 0;
    for (Path file : sources()) {
      String name = SOURCES.relativize(file).toString().replace(".java", "");
      String text = Files.readString(file);
      boolean said = said(CLASS_TEXT.matcher(text), 1);
      Matcher constant = CONSTANT.matcher(text);
      while (constant.find()) {
        seen++;
        String own = constant.group(1) == null ? "" : constant.group(1);
        if (said || SAID.matcher(own).find() || PLAIN.matcher(constant.group(2)).matches()) {
          continue;
        }
        if (NUMERICS.contains(name)) {
          numerics.add(name);
        } else {
          silent.add(name + "." + constant.group(2));
        }
      }
    }
    assertTrue(seen > 300, "constants found: " + seen);
    assertEquals(List.of(), silent);
    assertEquals(new TreeSet<>(NUMERICS), numerics, "no longer in need of an exception");
  }

  private static boolean said(Matcher text, int group) {
    return text.find() && SAID.matcher(text.group(group)).find();
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
  }
}
