package afterweld.material;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every line of every data file, as it stands in the file. */
class DataFilesTest {
  private static final Set<String> NAMED =
      Set.of(
          "family",
          "sold as",
          "recipe",
          "service above 65 °C",
          "anodized colour match",
          "response to heat treatment",
          "note");
  private static final Set<String> SHARES =
      Set.of("Si+Fe", "Mn+Cr", "Al", "Be", "V", "Zr", "others each", "others total");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "alloys.csv",
        "composition.csv",
        "thermal.csv",
        "tempers.csv",
        "schedules.csv",
        "filler_selection.csv",
        "design_codes.csv"
      })
  void everyValueHasUnitOrNameSourceAndStatus(String file) throws IOException {
    List<Map<String, String>> rows = read(file);
    assertFalse(rows.isEmpty());
    assertAll(rows.stream().map(row -> () -> checkLine(row)));
  }

  private static void checkLine(Map<String, String> row) {
    assertFalse(row.get("value").isBlank(), () -> "no value: " + row);
    assertFalse(row.get("source").isBlank(), () -> "no source: " + row);
    Status.of(row.get("status"));
    boolean named = NAMED.contains(row.getOrDefault("property", ""));
    assertEquals(named, row.get("unit").isBlank(), () -> "unit or name: " + row);
    if (!named) {
      assertTrue(Double.isFinite(Double.parseDouble(row.get("value"))), () -> "number: " + row);
    }
    assertFalse(row.get("source").matches(".*(https?:|www\\.).*"), () -> "address: " + row);
    row.values().forEach(cell -> assertEquals(cell.strip(), cell, () -> "spaces: " + row));
  }

  @Test
  void noValueIsStatedTwice() throws IOException {
    Set<String> seen = new HashSet<>();
    List<String> twice = new ArrayList<>();
    for (Map<String, String> row : everyLongRow()) {
      String key = row.get("alloy") + "/" + row.get("property") + "/" + row.get("qualifier");
      if (!seen.add(key)) {
        twice.add(key);
      }
    }
    assertEquals(List.of(), twice);
  }

  @Test
  void noDesignValueIsStatedTwice() throws IOException {
    List<List<String>> keys =
        read("design_codes.csv").stream()
            .map(row -> List.copyOf(row.values()).subList(0, 9))
            .toList();
    assertEquals(keys.size(), Set.copyOf(keys).size());
  }

  @Test
  void everyPropertyHasOneUnitThroughout() throws IOException {
    Map<String, Set<String>> units =
        everyLongRow().stream()
            .collect(
                Collectors.groupingBy(
                    row -> row.get("property"),
                    Collectors.mapping(row -> row.get("unit"), Collectors.toSet())));
    units.forEach((property, used) -> assertEquals(1, used.size(), property + " in " + used));
  }

  @Test
  void compositionsNameKnownElements() throws IOException {
    Set<String> known = new HashSet<>(SHARES);
    for (Element element : Element.values()) {
      known.add(element.symbol());
    }
    for (Map<String, String> row : read("composition.csv")) {
      assertTrue(known.contains(row.get("qualifier")), row.toString());
    }
  }

  private static List<Map<String, String>> everyLongRow() throws IOException {
    List<Map<String, String>> rows = new ArrayList<>();
    for (String file :
        List.of(
            "alloys.csv",
            "composition.csv",
            "thermal.csv",
            "tempers.csv",
            "schedules.csv",
            "filler_selection.csv")) {
      rows.addAll(read(file));
    }
    return rows;
  }

  static List<Map<String, String>> read(String file) throws IOException {
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper()
            .readerFor(Map.class)
            .with(CsvSchema.emptySchema().withHeader())
            .readValues(MaterialLibrary.class.getResourceAsStream(file))) {
      return rows.readAll();
    }
  }
}
