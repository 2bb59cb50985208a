package afterweld.casefile;

import static afterweld.casefile.Dimension.CONTENT;
import static afterweld.casefile.Dimension.LENGTH;

import afterweld.casefile.text.Names;
import afterweld.casefile.text.Quoted;
import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Temper;
import afterweld.weld.Side;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads {@code left} and {@code right}: alloy, temper, thickness, width, mill certificate. */
final class SideReader {
  /** The keys, for a side that is not there at all. */
  static final String EXPECTED = "keys alloy, temper, thickness (and width, composition if known)";

  private static final Measure THICKNESS = Measure.within("thickness", LENGTH, 0.5, 40, "mm");
  private static final Measure WIDTH = Measure.above("width", LENGTH, 0, 10_000, "mm");

  /** A narrower leg is no thin wall any more (assumed). */
  private static final double WIDTH_IN_THICKNESSES = 4;

  private static final String ALLOY = "alloy";
  private static final String TEMPER = "temper";
  private static final String COMPOSITION = "composition";

  private final Choices<Alloy> bases;
  private final Choices<Alloy> fillers;
  private final Notes notes;

  SideReader(Choices<Alloy> bases, Choices<Alloy> fillers, Notes notes) {
    this.bases = bases;
    this.fillers = fillers;
    this.notes = notes;
  }

  /**
   * A side as far as it could be read, so that other faults can still be found.
   *
   * @param alloy empty if faulty
   * @param temper empty if faulty
   * @param thickness m, NaN if faulty
   * @param width m, empty if wide or faulty
   * @param composition empty if faulty
   * @param certified elements that a certificate states
   */
  record Draft(
      Optional<Alloy> alloy,
      Optional<Temper> temper,
      double thickness,
      OptionalDouble width,
      Optional<Composition> composition,
      Set<Element> certified) {
    /** Nothing could be read. */
    static final Draft UNKNOWN =
        new Draft(
            Optional.empty(),
            Optional.empty(),
            Double.NaN,
            OptionalDouble.empty(),
            Optional.empty(),
            Set.of());

    /** The side, once nothing of it is faulty. */
    Side complete() {
      return new Side(
          alloy.orElseThrow(),
          temper.orElseThrow(),
          thickness,
          width,
          composition.orElseThrow(),
          certified);
    }
  }

  /** The side that must name its alloy and temper. */
  Draft left(Section section) {
    Optional<Alloy> alloy = alloy(section);
    if (!section.has(ALLOY)) {
      section.missing(ALLOY, bases.expected());
    }
    return read(section, alloy, temper(section, alloy));
  }

  /** The other side; without an alloy of its own it has the alloy and the temper of the left. */
  Draft right(Section section, Draft left) {
    if (section.has(ALLOY)) {
      return left(section);
    }
    section.node(ALLOY);
    Optional<Temper> temper =
        section.has(TEMPER) ? temper(section, left.alloy()) : sameTemper(section, left);
    return read(section, left.alloy(), temper);
  }

  private static Optional<Temper> sameTemper(Section section, Draft left) {
    section.node(TEMPER);
    return left.temper();
  }

  private Draft read(Section section, Optional<Alloy> alloy, Optional<Temper> temper) {
    double thickness = section.required(THICKNESS);
    OptionalDouble width = width(section, thickness);
    Map<Element, Double> certificate = new EnumMap<>(Element.class);
    section
        .inner(COMPOSITION, "elements with their content, such as {Mg: 0.95 %, Si: 0.6 %}")
        .ifPresent(contents -> certificate.putAll(certificate(contents)));
    Optional<Composition> composition = composition(section, alloy, certificate);
    section.finish();
    return new Draft(alloy, temper, thickness, width, composition, certificate.keySet());
  }

  private Optional<Alloy> alloy(Section section) {
    Optional<String> name = section.text(ALLOY, bases.expected());
    Optional<Alloy> alloy = name.flatMap(bases::find);
    if (name.isPresent() && alloy.isEmpty()) {
      section.fault(ALLOY, unknownAlloy(name.get()));
    }
    return alloy;
  }

  private String unknownAlloy(String name) {
    String why = fillers.find(name).isPresent() ? ", which is a filler" : "";
    return AlloyNames.uncomputed(name)
        .map(advice -> "found " + Quoted.of(name) + ", " + advice + ". Computed: " + bases.listed())
        .orElseGet(
            () -> "found " + Quoted.of(name) + why + "; expected " + bases.expectedInsteadOf(name));
  }

  private Optional<Temper> temper(Section section, Optional<Alloy> alloy) {
    List<String> names = alloy.map(SideReader::temperNames).orElse(List.of());
    String expected =
        alloy.isEmpty()
            ? "a temper such as T6"
            : "a temper of " + alloy.get().name() + ": " + String.join(", ", names);
    if (!section.has(TEMPER)) {
      section.missing(TEMPER, expected);
    }
    Optional<String> name = section.text(TEMPER, expected);
    Optional<Temper> temper =
        name.flatMap(written -> alloy.flatMap(metal -> metal.temper(written)));
    if (name.isPresent() && alloy.isPresent() && temper.isEmpty()) {
      String unknown = "; expected " + expected + Names.hint(name.get(), names);
      String why =
          TemperWords.notComputed(alloy.get(), name.get()).map(text -> ", " + text).orElse(unknown);
      section.fault(TEMPER, "found " + Quoted.of(name.get()) + why);
    }
    temper.ifPresent(known -> noteAlias(name.orElseThrow(), known));
    return temper;
  }

  private static List<String> temperNames(Alloy alloy) {
    return alloy.tempers().stream().map(Temper::name).toList();
  }

  private void noteAlias(String written, Temper temper) {
    if (!written.toUpperCase(Locale.ROOT).equals(temper.name())) {
      notes.add("temper-alias", TemperWords.computedAs(written, temper.name()));
    }
  }

  private static OptionalDouble width(Section section, double thickness) {
    OptionalDouble width = section.quantity(WIDTH);
    double least = WIDTH_IN_THICKNESSES * thickness;
    boolean known = width.isPresent() && !Double.isNaN(least);
    if (known && !Measure.exceeds(width.getAsDouble(), least)) {
      section.fault(
          WIDTH.key(),
          "found "
              + WIDTH.show(width.getAsDouble())
              + "; expected a leg from the weld centre longer than four thicknesses, "
              + WIDTH.show(least));
    }
    return width;
  }

  private Optional<Composition> composition(
      Section section, Optional<Alloy> alloy, Map<Element, Double> certificate) {
    if (alloy.isEmpty()) {
      return Optional.empty();
    }
    Map<Element, Double> contents = new EnumMap<>(Element.class);
    contents.putAll(alloy.get().composition().toMap());
    contents.putAll(certificate);
    double sum = contents.values().stream().mapToDouble(Double::doubleValue).sum();
    if (sum >= 100) {
      section.fault(COMPOSITION, "adds up to " + Math.round(sum) + " %; expected under 100 %");
    }
    if (!(sum < 100)) {
      return Optional.empty();
    }
    noteLimits(alloy.get(), certificate);
    return Optional.of(Composition.of(contents));
  }

  private static Map<Element, Double> certificate(Section section) {
    Map<Element, Double> contents = new EnumMap<>(Element.class);
    for (Element element : Element.values()) {
      Measure content = Measure.within(element.symbol(), CONTENT, 0, 100, "%");
      if (section.has(element.symbol())) {
        contents.put(element, section.quantityOr(content, Double.NaN));
      } else {
        section.node(element.symbol());
      }
    }
    section.finish();
    return contents;
  }

  private void noteLimits(Alloy alloy, Map<Element, Double> certificate) {
    certificate.forEach(
        (element, content) -> {
          Alloy.Limit limit = alloy.limits().get(element);
          if (limit != null && (content < limit.min() || content > limit.max())) {
            notes.add(
                "certificate-outside-limits",
                String.format(
                    Locale.ROOT,
                    "The certificate gives %s %s %%; %s has %s to %s %%.",
                    element.symbol(),
                    content,
                    alloy.name(),
                    limit.min(),
                    limit.max()));
          }
        });
  }
}
