package afterweld.cli;

import java.util.Map;

/** Draws a computed section and writes its report. */
@FunctionalInterface
interface Pictures {
  /** Files by name, such as {@code hardness.png} or {@code report.html}. */
  Map<String, byte[]> of(ProfileResult result);
}
