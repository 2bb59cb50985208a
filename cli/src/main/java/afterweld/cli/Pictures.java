package afterweld.cli;

import afterweld.choice.Requirement;
import afterweld.section.SectionProfile;
import afterweld.section.UnitSystem;
import java.util.Map;

/** Draws a section. */
@FunctionalInterface
interface Pictures {
  /** Files by name, such as {@code hardness.png} or {@code report.html}. */
  Map<String, byte[]> of(SectionProfile profile, Requirement requirement, UnitSystem units);
}
