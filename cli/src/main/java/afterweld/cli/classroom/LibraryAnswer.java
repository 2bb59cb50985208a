package afterweld.cli.classroom;

import static afterweld.quantity.UnitSystem.METRIC;

import afterweld.material.Alloy;
import afterweld.material.Alloy.StandardSchedule;
import afterweld.material.MaterialLibrary;
import afterweld.material.Temper;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the page may choose from. */
final class LibraryAnswer {
  private final MaterialLibrary library;

  LibraryAnswer(MaterialLibrary library) {
    this.library = library;
  }

  /** Keys and values for JSON. */
  Map<String, Object> keys() {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("alloys", library.bases().stream().map(LibraryAnswer::alloy).toList());
    json.put("fillers", library.fillers().stream().map(Alloy::name).toList());
    return json;
  }

  private static Map<String, Object> alloy(Alloy alloy) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("name", alloy.name());
    List<String> tempers = alloy.tempers().stream().map(Temper::name).toList();
    json.put("tempers", tempers);
    alloy.schedule().ifPresent(schedule -> json.put("schedule", schedule(schedule)));
    return json;
  }

  private static Map<String, Object> schedule(StandardSchedule schedule) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("solution_C", METRIC.temperature(schedule.solutionTemperature()));
    json.put("soak_h", schedule.soak() / 3600);
    json.put("age_C", METRIC.temperature(schedule.ageTemperature()));
    json.put("age_h", schedule.ageTime() / 3600);
    return json;
  }
}
