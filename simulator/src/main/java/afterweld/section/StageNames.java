package afterweld.section;

import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.Anneal;
import afterweld.thermal.furnace.FurnaceStep.NaturalAge;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Names of the states that a profile shows, in their order. */
final class StageNames {
  static final String BEFORE_WELDING = "before welding";
  static final String AS_WELDED = "as welded";
  static final String NATURAL_AGEING = "natural ageing";
  static final String AFTER_HEAT_TREATMENT = "after heat treatment";

  private StageNames() {}

  /** Names of the states after each furnace step; the last is after the whole treatment. */
  static List<String> of(List<FurnaceStep> steps) {
    List<String> names = new ArrayList<>();
    Map<String, Integer> seen = new HashMap<>();
    for (FurnaceStep step : steps) {
      String name = name(step);
      int count = seen.merge(name, 1, Integer::sum);
      names.add(count == 1 ? name : name + " " + count);
    }
    if (!names.isEmpty()) {
      names.set(names.size() - 1, AFTER_HEAT_TREATMENT);
    }
    return names;
  }

  private static String name(FurnaceStep step) {
    return "after " + step(step);
  }

  /** What a step is called. */
  static String step(FurnaceStep step) {
    if (step instanceof SolutionTreat) {
      return "solution treatment";
    }
    if (step instanceof NaturalAge) {
      return NATURAL_AGEING;
    }
    if (step instanceof Age) {
      return "ageing";
    }
    return step instanceof Anneal ? "annealing" : "quench";
  }
}
