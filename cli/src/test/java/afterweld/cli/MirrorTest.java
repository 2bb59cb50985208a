package afterweld.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Turned round, every output of every command is the mirror image of what it was. */
class MirrorTest {
  @TempDir Path folder;

  @Test
  void whatIsAgedOnlyIsMirrored() {
    mirrored(UnlikePlates.AGED, List.of("profile", "routes", "fillers", "ageing"));
  }

  @Test
  void whatIsFullyTreatedIsMirrored() {
    mirrored(UnlikePlates.TREATED, List.of("profile", "sheet", "bend"));
  }

  private void mirrored(String yaml, List<String> commands) {
    CaseEdit joint = CaseEdit.of(yaml);
    AnsweredCase here = new AnsweredCase(joint, folder.resolve("here"));
    AnsweredCase there = new AnsweredCase(joint.mirrored(), folder.resolve("there"));
    for (String command : commands) {
      assertTrue(here.run(command).answered(), command + here.run(command).err());
      JsonNode one = here.run(command).json();
      JsonNode other = there.run(command).json();
      assertEquals(List.of(), MirroredJson.differences(one, other), command);
    }
  }
}
