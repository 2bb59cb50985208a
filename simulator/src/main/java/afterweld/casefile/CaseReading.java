package afterweld.casefile;

import afterweld.casefile.text.Fault;
import afterweld.casefile.text.Positions;
import java.util.List;
import java.util.Optional;

/**
 * What reading a case file gave: the case, or everything that is wrong with the file.
 *
 * @param caseFile the case; empty if there is a fault
 * @param faults all faults of the file in its order; empty if there is a case
 * @param positions where every key and value stands, for faults that show up later
 */
public record CaseReading(Optional<CaseFile> caseFile, List<Fault> faults, Positions positions) {
  /** Checks that there is either a case or a fault. */
  public CaseReading {
    faults = List.copyOf(faults);
    if (caseFile.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("a case and faults, or neither");
    }
  }
}
