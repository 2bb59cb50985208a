package afterweld.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.section.Cases;
import afterweld.strength.Strength;
import java.util.List;
import org.junit.jupiter.api.Test;

class AgeingStudyTest {
  private static final AgeingStudy STUDY =
      AgeingStudy.of(Cases.butt("6061", "T6").then(Cases.fullTreatment("6061")).weldCase());

  private static int peak(AgeingStudy.Curve curve) {
    List<Strength> strengths = curve.strengths();
    int best = 0;
    for (int i = 1; i < strengths.size(); i++) {
      best = strengths.get(i).yield() > strengths.get(best).yield() ? i : best;
    }
    return best;
  }

  @Test
  void hotterAgesFasterAndPeaksNoHigherThanAFewPercent() {
    // Ageing curves of 6061 (handbooks): the peak comes sooner at higher temperature.
    List<AgeingStudy.Curve> base =
        STUDY.curves().stream().filter(curve -> curve.metal().equals("left")).toList();
    assertEquals(5, base.size());
    for (int i = 1; i < base.size(); i++) {
      assertTrue(peak(base.get(i)) <= peak(base.get(i - 1)), "curve " + i);
    }
  }

  @Test
  void theScheduleReachesNearlyThePeak() {
    AgeingStudy.Window window = STUDY.windows().get(0);
    // 177 °C for 8 h makes T6; the model has it slightly underaged.
    double share = window.scheduled() / window.peak();
    assertTrue(share > 0.93 && share <= 1, "share " + share);
    assertTrue(window.from() < window.to());
  }

  @Test
  void aHotterPaintOvenCostsMore() {
    List<AgeingStudy.Paint> base =
        STUDY.paint().stream().filter(paint -> paint.metal().equals("left")).toList();
    assertTrue(base.get(3).share() < base.get(0).share());
    assertTrue(base.get(3).share() > 0.85, "half an hour at 220 °C leaves most");
  }

  @Test
  void workHardenedMetalDoesNotAnswer() {
    AgeingStudy none = AgeingStudy.of(Cases.butt("5083", "H116").weldCase());
    assertTrue(none.schedule().isEmpty() && none.curves().isEmpty());
  }
}
