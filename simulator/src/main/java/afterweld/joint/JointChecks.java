package afterweld.joint;

import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.Tube;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Zone;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * The checks a case asks for beside the pull across the weld: its fillet and its tube.
 *
 * @param fillet capacity with the code's weld-metal strength as welded
 * @param treatedFillet the same with eight tenths of the predicted strength after a solution
 *     treatment of the whole joint
 * @param tube information on the tube as welded
 * @param treatedTube the same after the heat treatment, if there is one
 * @param warnings why a check could not be made, and what its numbers mean
 */
public record JointChecks(
    Optional<FilletWeld> fillet,
    Optional<FilletWeld> treatedFillet,
    Optional<ThinCylinder> tube,
    Optional<ThinCylinder> treatedTube,
    List<Warning> warnings) {
  /** Of a weld of which nothing is claimed. */
  static final JointChecks NONE =
      new JointChecks(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());

  private static final int BEFORE = 0;
  private static final int AS_WELDED = 1;
  private static final double MEGA = 1e6;

  /** Copies the list. */
  public JointChecks {
    warnings = List.copyOf(warnings);
  }

  /** What they say, in sentences; what a tube's numbers are good for stands in the cautions. */
  public List<String> sentences(UnitSystem units) {
    return new CheckWords(this, units).sentences();
  }

  static JointChecks of(SectionProfile profile, JointSettings settings) {
    List<Warning> refused = new ArrayList<>();
    Optional<FilletWeld> fillet = Optional.empty();
    Optional<FilletWeld> treated = Optional.empty();
    Optional<ThinCylinder> tube = Optional.empty();
    Optional<ThinCylinder> treatedTube = Optional.empty();
    try {
      fillet = asWelded(profile, settings, refused);
      treated = treated(profile, settings, refused);
    } catch (IllegalArgumentException fault) {
      refused.add(new Warning("fillet-not-checked", "Fillet: " + fault.getMessage()));
    }
    try {
      tube = tube(profile, settings, AS_WELDED);
      int last = profile.states().size() - 1;
      treatedTube = last > AS_WELDED ? tube(profile, settings, last) : treatedTube;
    } catch (IllegalArgumentException fault) {
      refused.add(new Warning("tube-not-checked", "Tube: " + fault.getMessage()));
    }
    Stream.of(fillet, treated)
        .flatMap(Optional::stream)
        .flatMap(check -> check.warnings().stream())
        .distinct()
        .forEach(refused::add);
    tube.ifPresent(check -> refused.addAll(check.warnings()));
    return new JointChecks(fillet, treated, tube, treatedTube, refused);
  }

  /**
   * The fillet in the last state of a profile; empty where it cannot be computed, as where the code
   * has no strength of its weld metal.
   */
  public static Optional<FilletWeld> fillet(SectionProfile profile, Fillet fillet) {
    JointChecks checks = of(profile, asked(Optional.of(fillet), Optional.empty()));
    return checks.treatedFillet().or(checks::fillet);
  }

  /** A tube in the last state of a profile; empty where it cannot be computed. */
  public static Optional<ThinCylinder> tube(SectionProfile profile, Tube tube) {
    JointChecks checks = of(profile, asked(Optional.empty(), Optional.of(tube)));
    return checks.treatedTube().or(checks::tube);
  }

  private static JointSettings asked(Optional<Fillet> fillet, Optional<Tube> tube) {
    return new JointSettings(
        JointSettings.DEFAULT.gauge(), JointSettings.DEFAULT.bend(), fillet, tube);
  }

  private static Optional<FilletWeld> asWelded(
      SectionProfile profile, JointSettings settings, List<Warning> refused) {
    if (settings.fillet().isEmpty()) {
      return Optional.empty();
    }
    List<DesignCodeValue> codes = DesignCodes.of(profile.weldCase());
    OptionalDouble weldMetal = lowest(codes, "strength of weld metal");
    OptionalDouble zone = besideTheLeg(profile, lowest(codes, "tensile strength in the HAZ"));
    if (weldMetal.isEmpty() || zone.isEmpty()) {
      String missing =
          weldMetal.isEmpty()
              ? "no strength of this weld metal on this base is known here (EN 1999-1-1)"
              : "the strength of its softest metal is not computed";
      refused.add(
          new Warning(
              "fillet-not-checked", "Fillet as welded: no load is computed, as " + missing + "."));
      return Optional.empty();
    }
    return Optional.of(
        FilletWeld.of(settings.fillet().get(), weldMetal.getAsDouble(), zone.getAsDouble(), false));
  }

  private static Optional<FilletWeld> treated(
      SectionProfile profile, JointSettings settings, List<Warning> refused) {
    boolean solution =
        profile.weldCase().afterWeld().stream().anyMatch(SolutionTreat.class::isInstance);
    if (settings.fillet().isEmpty() || !solution) {
      return Optional.empty();
    }
    int last = profile.states().size() - 1;
    OptionalDouble tensile = weldTensile(profile, last);
    OptionalDouble zone = softestTensile(profile, last);
    if (tensile.isEmpty() || zone.isEmpty()) {
      refused.add(
          new Warning(
              "fillet-not-checked",
              "Fillet after the heat treatment: no strength of this weld metal is computed."));
      return Optional.empty();
    }
    OptionalDouble weldMetal = FilletWeld.heatTreatedStrength(tensile.getAsDouble(), true);
    return weldMetal.stream()
        .mapToObj(fw -> FilletWeld.of(settings.fillet().get(), fw, zone.getAsDouble(), false))
        .findFirst();
  }

  private static Optional<ThinCylinder> tube(
      SectionProfile profile, JointSettings settings, int state) {
    Optional<SliceLine> line = line(profile, settings, state);
    Optional<SliceLine> before = line(profile, settings, BEFORE);
    return line.isEmpty() || before.isEmpty()
        ? Optional.empty()
        : settings
            .tube()
            .map(tube -> ThinCylinder.of(tube, line.get(), before.get(), around(profile)));
  }

  /** Only a ring says that the weld goes round: any other may run along the tube. */
  private static boolean around(SectionProfile profile) {
    return profile.weldCase().ring().isPresent();
  }

  private static Optional<SliceLine> line(
      SectionProfile profile, JointSettings settings, int state) {
    return ProfileSlices.flush(profile, state, ProfileSlices.End.MIDDLE, settings.gauge());
  }

  /** Characteristic strength as welded in EN 1999-1-1, the lower of the sides, Pa. */
  private static OptionalDouble lowest(List<DesignCodeValue> codes, String item) {
    return codes.stream()
        .filter(value -> value.item().startsWith(item))
        .mapToDouble(value -> value.value() * MEGA)
        .min();
  }

  /** As welded no more than the code that the throat is taken from counts, where it has a value. */
  private static OptionalDouble besideTheLeg(SectionProfile profile, OptionalDouble code) {
    OptionalDouble predicted = softestTensile(profile, AS_WELDED);
    return predicted.isPresent() && code.isPresent()
        ? OptionalDouble.of(Math.min(predicted.getAsDouble(), code.getAsDouble()))
        : predicted;
  }

  /**
   * The softest outside the weld as a characteristic strength, Pa, as the code has one of the weld
   * metal; empty where one of them is not predicted.
   */
  private static OptionalDouble softestTensile(SectionProfile profile, int state) {
    OptionalDouble mean = lowestTensile(profile, state, zone -> zone != Zone.FUSION);
    return mean.isPresent()
        ? OptionalDouble.of(FilletWeld.PREDICTED_SHARE * mean.getAsDouble())
        : mean;
  }

  /** The softest of the weld metal, Pa; empty where it is not predicted. */
  private static OptionalDouble weldTensile(SectionProfile profile, int state) {
    return lowestTensile(profile, state, zone -> zone == Zone.FUSION);
  }

  private static OptionalDouble lowestTensile(
      SectionProfile profile, int state, Predicate<Zone> of) {
    OptionalDouble lowest =
        profile.stations().stream()
            .filter(station -> of.test(station.zone()))
            .mapToDouble(station -> station.estimates().get(state).middle().tensile())
            .min();
    return lowest.isPresent() && Double.isNaN(lowest.getAsDouble())
        ? OptionalDouble.empty()
        : lowest;
  }
}
