package afterweld.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import afterweld.cli.Fixtures;
import afterweld.document.Notices;
import afterweld.section.SectionProfile;
import afterweld.weld.Warning;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What may be wrong with the weld is read before what was filled in by rule. */
class NoticesOrderTest {
  @Test
  void whatMattersComesFirst() {
    SectionProfile profile = Fixtures.profile();
    List<String> codes = Notices.of(profile).stream().map(Warning::code).toList();
    int filledIn = codes.indexOf("preparation-assumed");
    List<String> sorted =
        codes.stream()
            .sorted(
                java.util.Comparator.comparing(
                    code -> code.endsWith("-assumed") || code.equals("error-band")))
            .toList();
    assertEquals(sorted, codes);
    assertEquals(codes.size() - 1, filledIn, codes.toString());
  }
}
