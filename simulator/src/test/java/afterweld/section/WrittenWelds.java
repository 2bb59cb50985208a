package afterweld.section;

import afterweld.casefile.CaseReader;
import afterweld.material.MaterialLibrary;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;

/** Welds as a welder writes them down. */
public final class WrittenWelds {
  private WrittenWelds() {}

  /**
   * A weld of 4043 unless a filler is named.
   *
   * @param more keys of the case, {@code left} among them
   * @param pass keys of a pass
   * @param passes how many alike
   */
  public static WeldCase of(String more, String pass, int passes) {
    String filler = more.contains("filler:") ? "" : "filler: {alloy: \"4043\"}\n";
    String text =
        "title: written\n" + more + filler + "passes:\n" + ("  - {" + pass + "}\n").repeat(passes);
    MaterialLibrary library = MaterialLibrary.standard();
    return new CaseReader(library.bases(), library.fillers())
        .read("written.yaml", text.getBytes(StandardCharsets.UTF_8))
        .caseFile()
        .orElseThrow()
        .weld();
  }
}
