package afterweld.cli.profile;

import java.util.Map;

/** Draws a computed section and writes its report. */
@FunctionalInterface
public interface Pictures {
  /** Files by name, such as {@code hardness.png} or {@code report.html}. */
  Map<String, byte[]> of(ProfileResult result);
}
