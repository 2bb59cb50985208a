package afterweld.material;

import afterweld.quantity.Check;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * An alloy of the library, base or filler: immutable, SI units and kelvin.
 *
 * @param name designation, such as {@code 6061}
 * @param family which model computes it
 * @param uses whether it is sold as a base, as a filler or both
 * @param composition composition that the model uses
 * @param limits composition limits, for the elements that have them
 * @param solidus K
 * @param liquidus K
 * @param density kg/m³
 * @param latentHeat heat of fusion, J/kg
 * @param conductivityByTemper thermal conductivity at 20 °C, W/(m K), per temper name ({@code all}
 *     when the source does not tell tempers apart)
 * @param conductivitySlope relative rise of the conductivity per kelvin above 20 °C, 1/K
 * @param tempers the tempers it is supplied in; empty for a filler
 * @param schedule standard treatment after welding, where the trade has one
 * @param facts every line of the data files about it, with its source
 */
public record Alloy(
    String name,
    Family family,
    List<Use> uses,
    Composition composition,
    Map<Element, Limit> limits,
    double solidus,
    double liquidus,
    double density,
    double latentHeat,
    Map<String, Double> conductivityByTemper,
    double conductivitySlope,
    List<Temper> tempers,
    Optional<StandardSchedule> schedule,
    List<Fact> facts) {
  private static final Set<String> WITH_BERYLLIUM = Set.of("4011", "A357");

  /** Copies what could change; maps are kept sorted, so that whoever lists them does it alike. */
  public Alloy {
    Check.said("name of an alloy", name);
    Check.within("solidus", solidus, 0, liquidus, "K");
    Check.positive("density", density, "kg/m³");
    uses = List.copyOf(uses);
    limits = Collections.unmodifiableMap(new TreeMap<>(limits));
    conductivityByTemper = Collections.unmodifiableMap(new TreeMap<>(conductivityByTemper));
    tempers = List.copyOf(tempers);
    facts = List.copyOf(facts);
  }

  /** Which model computes the metal. */
  public enum Family {
    /** 6xxx: hardened by precipitates of magnesium and silicon. */
    WROUGHT_HEAT_TREATABLE,
    /** 3xx castings: the same, with eutectic silicon. */
    CAST_HEAT_TREATABLE,
    /** 1xxx, 3xxx, 5xxx: hardened by cold work only. */
    WORK_HARDENED,
    /** Sold as filler only; weld metal is computed from its composition. */
    FILLER_ONLY;

    /** Whether precipitates harden it. */
    public boolean heatTreatable() {
      return this == WROUGHT_HEAT_TREATABLE || this == CAST_HEAT_TREATABLE;
    }
  }

  /** What the alloy is sold as. */
  public enum Use {
    BASE,
    FILLER
  }

  /**
   * Composition limits of one element, wt%.
   *
   * @param min 0 where the standard gives only a maximum
   * @param max largest share
   */
  public record Limit(double min, double max) {
    /** Refuses what it cannot be. */
    public Limit {
      Check.within("minimum", min, 0, 100, "wt%");
      Check.within("maximum", max, min, 100, "wt%");
    }
  }

  /**
   * The schedule that makes the alloy's T6 from any condition.
   *
   * @param solutionTemperature K
   * @param soak s
   * @param ageTemperature K
   * @param ageTime s
   * @param source where it comes from
   */
  public record StandardSchedule(
      double solutionTemperature,
      double soak,
      double ageTemperature,
      double ageTime,
      Source source) {
    /** Refuses what it cannot be. */
    public StandardSchedule {
      Check.positive("solution temperature", solutionTemperature, "K");
      Check.positive("soak", soak, "s");
      Check.positive("ageing temperature", ageTemperature, "K");
      Check.positive("ageing time", ageTime, "s");
    }
  }

  /** The temper of that name or alias ({@code T651} means {@code T6}), if the alloy has it. */
  public Optional<Temper> temper(String temperName) {
    String resolved = TemperNames.resolve(temperName);
    return tempers.stream().filter(temper -> temper.name().equals(resolved)).findFirst();
  }

  /** The most of an element that it may hold, wt%: its limit, else what it holds. */
  public double most(Element element) {
    Limit limit = limits.get(element);
    return limit == null ? composition.of(element) : limit.max();
  }

  /**
   * An alloy of the same family, melting range, tempers and schedule that holds other shares: a
   * works' own variant. Limits and facts of the data files are not its own, so it has none.
   *
   * @param otherName its own, which the filler guides and the codes do not know
   * @throws IllegalArgumentException of a work-hardened base, whose softening is known by its name,
   *     and of one that holds beryllium, which is warned of by its name
   */
  public Alloy like(String otherName, Composition metal) {
    if (holdsBeryllium()) {
      throw new IllegalArgumentException(
          name + " holds beryllium, and only its own name warns of the fume");
    }
    if (family == Family.WORK_HARDENED && uses.contains(Use.BASE)) {
      throw new IllegalArgumentException(
          "how "
              + name
              + " softens is known by that name alone; state its composition in the case");
    }
    return new Alloy(
        otherName,
        family,
        uses,
        metal,
        Map.of(),
        solidus,
        liquidus,
        density,
        latentHeat,
        conductivityByTemper,
        conductivitySlope,
        tempers,
        schedule,
        List.of());
  }

  /**
   * Whether precipitates harden it, so that a heat treatment after welding can bring strength back.
   */
  public boolean heatTreatable() {
    return family.heatTreatable();
  }

  /** Whether it holds beryllium, the fume of which harms. */
  public boolean holdsBeryllium() {
    return WITH_BERYLLIUM.contains(name);
  }

  /** Whether it is a casting alloy. */
  public boolean casting() {
    return family == Family.CAST_HEAT_TREATABLE;
  }
}
