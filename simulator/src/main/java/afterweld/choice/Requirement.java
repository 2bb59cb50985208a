package afterweld.choice;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the drawing asks of the finished joint. SI units and kelvin.
 *
 * @param yield joint proof stress over the gauge, flush, Pa
 * @param tensile joint tensile strength, flush, Pa
 * @param hardness lowest station averaged over one thickness, HV
 * @param anodizedMatch whether the weld must match the base in colour after anodizing
 * @param serviceTemperature K
 */
public record Requirement(
    OptionalDouble yield,
    OptionalDouble tensile,
    OptionalDouble hardness,
    Optional<Boolean> anodizedMatch,
    OptionalDouble serviceTemperature) {
  /** Nothing asked. */
  public static final Requirement NONE =
      new Requirement(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty());

  /** Strength and hardness alone. */
  public Requirement strengths() {
    return new Requirement(yield, tensile, hardness, Optional.empty(), OptionalDouble.empty());
  }
}
