package afterweld.material;

import afterweld.material.Alloy.Family;
import afterweld.material.Alloy.Limit;
import afterweld.material.Alloy.StandardSchedule;
import afterweld.material.Alloy.Use;
import afterweld.material.Temper.Handbook;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Makes an alloy from its data sheet; a needed value that is missing is a fault. */
final class AlloyReader {
  private static final List<String> TEMPER_PROPERTIES =
      List.of("recipe", "yield", "tensile", "minimum yield", "minimum tensile");

  private final Sheet sheet;
  private final Family family;

  private AlloyReader(Sheet sheet) {
    this.sheet = sheet;
    this.family = sheet.need("family").as(Family.class);
  }

  static Alloy read(Sheet sheet) {
    return new AlloyReader(sheet).alloy();
  }

  private Alloy alloy() {
    return new Alloy(
        sheet.subject(),
        family,
        sheet.some("sold as").stream().map(AlloyReader::use).toList(),
        composition(),
        limits(),
        sheet.need("solidus").in(DataUnit.CELSIUS),
        sheet.need("liquidus").in(DataUnit.CELSIUS),
        sheet.need("density").in(DataUnit.GRAM_PER_CUBIC_CENTIMETRE),
        sheet.need("latent heat").in(DataUnit.KILOJOULE_PER_KILOGRAM),
        conductivity(),
        sheet.need("conductivity slope").in(DataUnit.PER_KELVIN),
        tempers(),
        schedule(),
        sheet.facts());
  }

  private static Use use(DataRow row) {
    return Names.constant(Use.class, row.qualifier());
  }

  /** Every element is stated, absent ones as 0: a blank is never taken for zero. */
  private Composition composition() {
    Map<Element, Double> shares = new EnumMap<>(Element.class);
    for (Element element : Element.values()) {
      double share = sheet.need("model", element.symbol()).in(DataUnit.WEIGHT_PERCENT);
      shares.put(element, share);
    }
    return Composition.of(shares);
  }

  private Map<Element, Limit> limits() {
    Map<Element, Limit> limits = new EnumMap<>(Element.class);
    for (Element element : Element.values()) {
      limit(element).ifPresent(limit -> limits.put(element, limit));
    }
    return limits;
  }

  private Optional<Limit> limit(Element element) {
    Optional<DataRow> min = sheet.find("minimum", element.symbol());
    Optional<DataRow> max = sheet.find("maximum", element.symbol());
    if (min.isEmpty() && max.isEmpty()) {
      return Optional.empty();
    }
    double least = min.map(row -> row.in(DataUnit.WEIGHT_PERCENT)).orElse(0.0);
    double most = sheet.need("maximum", element.symbol()).in(DataUnit.WEIGHT_PERCENT);
    return Optional.of(new Limit(least, most));
  }

  private Map<String, Double> conductivity() {
    return sheet.some("conductivity").stream()
        .collect(
            Collectors.toMap(DataRow::qualifier, row -> row.in(DataUnit.WATT_PER_METRE_KELVIN)));
  }

  private List<Temper> tempers() {
    return sheet.rows().stream()
        .filter(row -> TEMPER_PROPERTIES.contains(row.property()))
        .map(DataRow::qualifier)
        .distinct()
        .map(this::temper)
        .toList();
  }

  /**
   * A heat-treatable temper is what its recipe makes of it; any other is what the handbook says.
   */
  private Temper temper(String name) {
    Optional<Handbook> handbook = handbook("", name).or(() -> handbook("minimum ", name));
    if (family.heatTreatable()) {
      DataRow recipe = sheet.need("recipe", name);
      TemperRecipe read = RecipeNotation.read(recipe.value());
      return new Temper(name, Optional.of(read), handbook, recipe.origin());
    }
    Source source = handbook.orElseThrow(() -> sheet.missing("yield", name)).source();
    return new Temper(name, Optional.empty(), handbook, source);
  }

  private Optional<Handbook> handbook(String kind, String temper) {
    boolean stated =
        Stream.of("yield", "tensile").anyMatch(part -> sheet.find(kind + part, temper).isPresent());
    if (!stated) {
      return Optional.empty();
    }
    DataRow yield = sheet.need(kind + "yield", temper);
    DataRow tensile = sheet.need(kind + "tensile", temper);
    return Optional.of(handbook(yield, tensile, !kind.isEmpty()));
  }

  private static Handbook handbook(DataRow yield, DataRow tensile, boolean minimum) {
    return new Handbook(
        yield.in(DataUnit.MEGAPASCAL),
        tensile.in(DataUnit.MEGAPASCAL),
        minimum,
        origin(yield, tensile));
  }

  private Optional<StandardSchedule> schedule() {
    return family.heatTreatable() ? Optional.of(statedSchedule()) : Optional.empty();
  }

  private StandardSchedule statedSchedule() {
    DataRow solution = sheet.need("solution temperature");
    DataRow soak = sheet.need("soak");
    DataRow age = sheet.need("age temperature");
    DataRow ageTime = sheet.need("age time");
    return new StandardSchedule(
        solution.in(DataUnit.CELSIUS),
        soak.in(DataUnit.HOUR),
        age.in(DataUnit.CELSIUS),
        ageTime.in(DataUnit.HOUR),
        origin(solution, soak, age, ageTime));
  }

  /** The sources of several lines as one, with the weakest of their statuses. */
  private static Source origin(DataRow... rows) {
    String text =
        Arrays.stream(rows).map(DataRow::source).distinct().collect(Collectors.joining("; "));
    Stream<Status> statuses = Arrays.stream(rows).map(row -> row.origin().status());
    return new Source(text, statuses.max(Status::compareTo).orElseThrow());
  }
}
