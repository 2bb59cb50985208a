package afterweld.cli.command;

import afterweld.CaseSession;
import afterweld.section.SectionProfile;
import afterweld.thermal.HeatInputException;

/** Which section of a case is shown. */
@FunctionalInterface
public interface Simulation {
  /**
   * The section across the weld in every state.
   *
   * @param stages whether the states between the steps of the heat treatment are wanted too
   * @throws HeatInputException if the numbers of the case cannot be a weld
   */
  SectionProfile of(CaseSession session, boolean stages);
}
