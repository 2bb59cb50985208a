package afterweld.cli.classroom;

import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.material.Alloy;
import afterweld.thermal.Pass;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.WeldCase;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Where the page's controls stand for a case, whatever units it was written in: metric. */
final class ControlValues {
  private final WeldCase weldCase;

  ControlValues(WeldCase weldCase) {
    this.weldCase = weldCase;
  }

  /** Keys and values for JSON; a control that the case has nothing for is left out. */
  Map<String, Object> keys() {
    Pass pass = weldCase.passes().get(0);
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("alloy", weldCase.left().alloy().name());
    json.put("temper", weldCase.left().temper().name());
    json.put("thickness_mm", weldCase.left().thickness() * 1e3);
    json.put("right_thickness_mm", weldCase.right().thickness() * 1e3);
    weldCase.left().width().ifPresent(width -> json.put("left_width_mm", width * 1e3));
    weldCase.right().width().ifPresent(width -> json.put("right_width_mm", width * 1e3));
    json.put("current_A", pass.current());
    json.put("travel_speed_mm_s", pass.travelSpeed() * 1e3);
    json.put("preheat_C", METRIC.temperature(pass.startTemperature()));
    json.put("filler", weldCase.filler().alloy().map(Alloy::name).orElse("none"));
    json.put("dilution_percent", weldCase.filler().dilution() * 100);
    json.put("natural_age_h", weldCase.naturalAge() / 3600);
    treatment(json);
    return json;
  }

  private void treatment(Map<String, Object> json) {
    first(SolutionTreat.class)
        .ifPresent(
            step -> {
              json.put("solution_C", METRIC.temperature(step.temperature()));
              json.put("soak_h", step.soak() / 3600);
            });
    first(Age.class)
        .ifPresent(
            step -> {
              json.put("age_C", METRIC.temperature(step.temperature()));
              json.put("age_h", step.time() / 3600);
            });
  }

  private <T extends FurnaceStep> Optional<T> first(Class<T> kind) {
    return weldCase.afterWeld().stream().filter(kind::isInstance).map(kind::cast).findFirst();
  }
}
