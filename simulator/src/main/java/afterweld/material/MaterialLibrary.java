package afterweld.material;

import afterweld.material.Alloy.Use;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The alloys, tempers and fillers the simulator knows, read once from the data files beside this
 * class. Immutable; what it hands out is in SI units and kelvin.
 *
 * <p>Names are understood as the trade writes them: case does not matter, {@code A356.0} is {@code
 * A356}, and a leading {@code AA}, {@code EN AW-} or {@code ER} does no harm.
 */
public final class MaterialLibrary {
  private static final List<String> ALLOY_FILES =
      List.of("alloys.csv", "composition.csv", "thermal.csv", "tempers.csv", "schedules.csv");
  private static final String GUIDANCE_FILE = "filler_selection.csv";

  private final Map<String, Alloy> bases = new LinkedHashMap<>();
  private final Map<String, Alloy> fillers = new LinkedHashMap<>();
  private final Map<String, FillerGuidance> guidance = new LinkedHashMap<>();

  private MaterialLibrary(List<DataRow> alloyRows, List<DataRow> guidanceRows) {
    requireNoneTwice(alloyRows);
    requireNoneTwice(guidanceRows);
    Map<String, Alloy> alloys = new LinkedHashMap<>();
    Sheet.bySubject(alloyRows, DataRow::alloy)
        .forEach((name, sheet) -> alloys.put(name, AlloyReader.read(sheet)));
    alloyRows.stream()
        .filter(row -> row.property().equals("sold as"))
        .forEach(row -> sold(row.qualifier()).put(row.alloy(), alloys.get(row.alloy())));
    Sheet.bySubject(guidanceRows, row -> pair(row.alloy(), row.qualifier()))
        .forEach((pair, sheet) -> guidance.put(pair, FillerGuidance.of(sheet)));
  }

  private Map<String, Alloy> sold(String use) {
    return Names.constant(Use.class, use) == Use.BASE ? bases : fillers;
  }

  private static void requireNoneTwice(List<DataRow> rows) {
    Set<String> seen = new HashSet<>();
    for (DataRow row : rows) {
      if (!seen.add(row.key())) {
        throw new IllegalStateException("stated twice in the data files: " + row.key());
      }
    }
  }

  /** The library that comes with the simulator. */
  public static MaterialLibrary standard() {
    return Standard.LIBRARY;
  }

  /**
   * A library of the given lines.
   *
   * @throws IllegalStateException if a needed value is missing, is stated twice or has another unit
   * @throws IllegalArgumentException if a source is blank or a status or name is unknown
   */
  static MaterialLibrary of(List<DataRow> alloyRows, List<DataRow> guidanceRows) {
    return new MaterialLibrary(alloyRows, guidanceRows);
  }

  /**
   * This library with one alloy more, or with another in place of the one of that name: as a base,
   * a filler or both, as it is sold. The filler guides know the alloys of {@link #standard} only.
   */
  public MaterialLibrary with(Alloy alloy) {
    MaterialLibrary other = new MaterialLibrary(List.of(), List.of());
    other.bases.putAll(bases);
    other.fillers.putAll(fillers);
    other.guidance.putAll(guidance);
    if (alloy.uses().contains(Use.BASE)) {
      other.bases.put(alloy.name(), alloy);
    }
    if (alloy.uses().contains(Use.FILLER)) {
      other.fillers.put(alloy.name(), alloy);
    }
    return other;
  }

  static Stream<DataRow> alloyRows() {
    return ALLOY_FILES.stream().flatMap(file -> DataFile.read(file).stream());
  }

  static Stream<DataRow> guidanceRows() {
    return DataFile.read(GUIDANCE_FILE).stream();
  }

  /** The base alloy of that name, if the library has it. */
  public Optional<Alloy> base(String name) {
    return Optional.ofNullable(bases.get(Names.alloy(name)));
  }

  /** The filler of that name, if the library has it. */
  public Optional<Alloy> filler(String name) {
    return Optional.ofNullable(fillers.get(Names.alloy(name)));
  }

  /** All base alloys, in the order of the data file. */
  public List<Alloy> bases() {
    return List.copyOf(bases.values());
  }

  /** All fillers, in the order of the data file. */
  public List<Alloy> fillers() {
    return List.copyOf(fillers.values());
  }

  /** What the filler guides say about that filler on that base; empty if they leave it out. */
  public Optional<FillerGuidance> guidance(String base, String filler) {
    return Optional.ofNullable(guidance.get(pair(Names.alloy(base), Names.alloy(filler))));
  }

  private static String pair(String base, String filler) {
    return base + " with " + filler;
  }

  private static final class Standard {
    private static final MaterialLibrary LIBRARY =
        of(alloyRows().toList(), guidanceRows().toList());
  }
}
