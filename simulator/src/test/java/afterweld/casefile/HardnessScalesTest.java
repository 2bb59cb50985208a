package afterweld.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Hardness in the scales of a shop; 60 HRB is 117 HV (ASTM E140, from memory). */
class HardnessScalesTest {
  private static final Measure ASKED =
      Measure.within("hardness", Dimension.HARDNESS, 20, 250, "HV");

  private static TraverseReader traverse(String head, String... rows) {
    String text = head + "\n" + String.join("\n", rows) + "\n";
    return TraverseReader.read("t.csv", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void rockwellIsReadByTheTableForWroughtMetal() {
    assertEquals(117, ASKED.read("60 HRB").value(), 0.5);
    assertEquals("60 HRB", ASKED.tidy("60hrb"));
  }

  @Test
  void outsideTheTableIsAFaultThatNamesItsEnds() {
    String problem = ASKED.read("20 HRB").problem();
    assertTrue(problem.contains("'20 HRB'") && problem.contains("from 28 to 91"), problem);
    assertTrue(problem.contains("none is known for castings"), problem);
  }

  @Test
  void aWebsterReadingIsRefusedWithWhatToDo() {
    for (String text : new String[] {"15 Webster", "15 HW", "15 webster b"}) {
      String problem = ASKED.read(text).problem();
      assertTrue(problem.contains("no table turns Webster readings into HV"), problem);
    }
  }

  @Test
  void aScaleWrittenAnotherWayInTheHeadIsAFaultWithTheNearestName() {
    TraverseReader read = traverse("h v,distance_mm", "60,1");
    assertTrue(read.faults().get(0).toString().contains("did you mean 'hv'?"));
  }

  @Test
  void aTraverseMayBeInRockwell() {
    TraverseReader read =
        traverse(
            "distance_mm,HRB",
            "-20,60",
            "-15,60",
            "-10,40",
            "-5,35",
            "0,30",
            "5,36",
            "10,42",
            "15,58");
    assertEquals(java.util.List.of(), read.faults());
    assertEquals(117, read.traverse().orElseThrow().points().get(0).hardness(), 0.5);
  }

  @Test
  void aTraverseOutsideTheTableOrFromAWebsterGaugeSaysSo() {
    String soft = traverse("distance_mm,HRB", "-20,60", "-15,20").faults().get(0).toString();
    assertTrue(soft.contains("from 28 to 91"), soft);
    String webster = traverse("distance_mm,Webster", "-20,15").faults().get(0).toString();
    assertTrue(webster.contains("no table turns Webster readings"), webster);
  }
}
