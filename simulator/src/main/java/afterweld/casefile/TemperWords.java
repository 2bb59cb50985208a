package afterweld.casefile;

import afterweld.material.Alloy;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is said of tempers that are known by name and computed as another one, or not at all. */
final class TemperWords {
  private static final Map<String, String> SAME =
      Map.of(
          "T42", "T42 is T4 by the user's own furnace",
          "T62", "T62 is T6 by the user's own furnace",
          "T61", "T61 is a T6 aged for more strength or less movement");

  private static final String AS_CAST =
      "its strength rests on how the casting froze, which is not known";

  /** Tempers of castings (ASTM B26 and B108, from memory) that there is no model for. */
  private static final Map<String, String> CAST =
      Map.of(
          "F",
          AS_CAST,
          "T4",
          "the model was checked on castings that are aged, not on this one",
          "T5",
          AS_CAST,
          "T51",
          AS_CAST,
          "T7",
          "the model was not checked on castings that are overaged on purpose",
          "T71",
          "the model was not checked on castings that are overaged on purpose");

  /** Tempers of 6xxx extrusions (EN 515 and EN 755-2, from memory) that there is no model for. */
  private static final Map<String, String> WROUGHT =
      Map.of(
          "T64", "it is aged short of T6 on purpose, to be formed",
          "T66", "it is a T6 made stronger than the standard one by a closer composition and press",
          "T7", "it is overaged on purpose");

  /** Tempers of work-hardening alloys (EN 515, from memory) without a value of its own here. */
  private static final Set<String> WORKED_A_LITTLE = Set.of("H111", "H112");

  private TemperWords() {}

  /** Under which temper a name is computed, in a sentence. */
  static String computedAs(String written, String known) {
    String why = SAME.get(written.toUpperCase(Locale.ROOT));
    return why == null
        ? "Temper " + written + " is computed as " + known + "."
        : why + ": computed as " + known + ".";
  }

  /** Why a temper that the trade has is not computed; empty for a name it does not have. */
  static Optional<String> notComputed(Alloy alloy, String written) {
    String temper = written.strip().toUpperCase(Locale.ROOT);
    if (!alloy.heatTreatable()) {
      return WORKED_A_LITTLE.contains(temper)
          ? Optional.of(workedALittle(alloy, temper))
          : Optional.empty();
    }
    String with =
        alloy.casting()
            ? "-T6 (T61 and T62 with it). Where a solution treatment follows the weld, T6 here gives"
                + " the same finished casting"
            : "-T6. Where a solution treatment follows the weld, T6 here gives the same finished part";
    return Optional.ofNullable((alloy.casting() ? CAST : WROUGHT).get(temper))
        .map(
            why ->
                "not computed for "
                    + alloy.name()
                    + "-"
                    + temper
                    + ", because "
                    + why
                    + "; computed is "
                    + alloy.name()
                    + with);
  }

  private static String workedALittle(Alloy alloy, String temper) {
    return "not computed for "
        + alloy.name()
        + "-"
        + temper
        + ", because it is worked a little and not to a strength that is controlled; nearest in"
        + " strength is O: state O, whose figures are not too high for its plate and extrusions";
  }
}
