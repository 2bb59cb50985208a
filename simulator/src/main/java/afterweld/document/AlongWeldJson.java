package afterweld.document;

import static afterweld.document.JsonNumber.megapascal;

import afterweld.section.AlongWeld;
import afterweld.section.AlongWeld.AtPlace;
import afterweld.section.AlongWeld.Sections;
import afterweld.section.SectionProfile;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** How a weld differs along its way. */
public final class AlongWeldJson {
  private AlongWeldJson() {}

  /**
   * The places with the current of the case, and those with another fall of it.
   *
   * @param section of the same weld
   */
  public static List<Map<String, Object>> of(AlongWeld along, SectionProfile section) {
    List<Map<String, Object>> places = new ArrayList<>();
    Stream.concat(Stream.of(along.stated()), along.other().stream())
        .forEach(
            sections ->
                sections.places().forEach(at -> places.add(place(along, sections, at, section))));
    return places;
  }

  private static Map<String, Object> place(
      AlongWeld along, Sections sections, AtPlace at, SectionProfile section) {
    double start = sections.lastPass().current();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("place", along.label(at.place()));
    json.put("from_start_mm", new JsonNumber(at.fromStart() * 1e3, 1));
    json.put("start_current_A", new JsonNumber(start, 1));
    json.put("end_current_A", new JsonNumber(start * sections.endCurrent(), 1));
    json.put("bead_width_mm", new JsonNumber(at.beadWidth() * 1e3, 2));
    json.put("softened_mm", new JsonNumber(at.softened(section) * 1e3, 1));
    json.put("lowest_yield_MPa", megapascal(at.lowest(Strength::yield)));
    json.put("lowest_hardness_HV", new JsonNumber(at.lowest(Strength::hardness), 1));
    return json;
  }
}
