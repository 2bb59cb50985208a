package afterweld;

import afterweld.casefile.CaseFile;
import afterweld.casefile.CaseReader;
import afterweld.casefile.CaseReading;
import afterweld.choice.RouteSettings;
import afterweld.choice.answer.Requirement;
import afterweld.joint.JointSettings;
import afterweld.material.MaterialLibrary;
import afterweld.section.WeldSession;
import afterweld.study.SpreadSettings;
import afterweld.thermal.HeatInputException;
import afterweld.weld.WeldCase;

/**
 * Where a program begins: reads cases and opens a session on each.
 *
 * <pre>{@code
 * Afterweld afterweld = Afterweld.of(MaterialLibrary.standard());
 * CaseReading reading = afterweld.read("bracket.yaml", Files.readAllBytes(file));
 * CaseSession session = afterweld.session(reading.caseFile().orElseThrow());
 * double tensile = session.joint().finished().tensile().orElseThrow();   // Pa
 * }</pre>
 *
 * <p>Immutable but for what it keeps of the last few welds, which never changes an answer. May be
 * used by several threads at once. Quantities are SI and kelvin, hardness is HV.
 */
public final class Afterweld {
  private final MaterialLibrary library;
  private final WeldSession kept;

  private Afterweld(MaterialLibrary library) {
    this.library = library;
    this.kept = new WeldSession(library);
  }

  /**
   * Reads and computes with the alloys of a library.
   *
   * @param library {@link MaterialLibrary#standard}, or that {@linkplain MaterialLibrary#with with}
   *     alloys of one's own
   */
  public static Afterweld of(MaterialLibrary library) {
    return new Afterweld(library);
  }

  /**
   * Reads a case file. Never throws on what the file contains: its faults are in the reading.
   *
   * @param file its name; one that ends in {@code .json} is read as JSON, every other one as YAML
   * @param content UTF-8, at most 256 000 bytes
   */
  public CaseReading read(String file, byte[] content) {
    return new CaseReader(library.bases(), library.fillers()).read(file, content);
  }

  /**
   * A session on a case. Computes the heat of its passes, which takes seconds where a part is small
   * enough to be followed in time.
   *
   * @throws NotAWeldException if its numbers cannot make a weld
   */
  public CaseSession session(CaseFile caseFile) throws NotAWeldException {
    try {
      kept.heats(caseFile.weld());
    } catch (HeatInputException fault) {
      throw new NotAWeldException(fault);
    }
    return CaseSession.of(kept, caseFile);
  }

  /**
   * A session on a weld of which nothing is required, with the usual settings.
   *
   * @throws NotAWeldException if its numbers cannot make a weld
   */
  public CaseSession session(WeldCase weld) throws NotAWeldException {
    return session(
        new CaseFile(
            weld,
            Requirement.NONE,
            RouteSettings.DEFAULT,
            JointSettings.DEFAULT,
            SpreadSettings.DEFAULT));
  }
}
