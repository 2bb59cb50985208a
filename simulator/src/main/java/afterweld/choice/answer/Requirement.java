package afterweld.choice.answer;

import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.Tube;
import afterweld.quantity.Asked;
import afterweld.quantity.Check;
import afterweld.quantity.OutputQuantity;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the drawing asks of the finished joint. SI units and kelvin.
 *
 * @param yield joint proof stress over the gauge, flush, Pa
 * @param tensile joint tensile strength, flush, Pa
 * @param hardness of the softest place, HV
 * @param anodizedMatch whether the weld must match the base in colour after anodizing
 * @param serviceTemperature K
 * @param fillet that the drawing calls for, if it does: its throat must carry the strengths too
 * @param tube whose pressure the joint holds, if it is one: it must not yield at it
 * @param written the values as they were written, such as {@code 24 ksi}, where known; a service
 *     temperature is {@link OutputQuantity#PEAK_TEMPERATURE}
 */
public record Requirement(
    OptionalDouble yield,
    OptionalDouble tensile,
    OptionalDouble hardness,
    Optional<Boolean> anodizedMatch,
    OptionalDouble serviceTemperature,
    Optional<Fillet> fillet,
    Optional<Tube> tube,
    Map<OutputQuantity, String> written) {
  /** Nothing asked. */
  public static final Requirement NONE =
      new Requirement(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty());

  /** Copies the texts. */
  public Requirement {
    Check.positive("required yield", yield, "Pa");
    Check.positive("required tensile strength", tensile, "Pa");
    Check.positive("required hardness", hardness, "HV");
    Check.positive("service temperature", serviceTemperature, "K");
    written = Map.copyOf(written);
  }

  /** Values that nobody wrote down. */
  public Requirement(
      OptionalDouble yield,
      OptionalDouble tensile,
      OptionalDouble hardness,
      Optional<Boolean> anodizedMatch,
      OptionalDouble serviceTemperature) {
    this(
        yield,
        tensile,
        hardness,
        anodizedMatch,
        serviceTemperature,
        Optional.empty(),
        Optional.empty(),
        Map.of());
  }

  /** Whether a strength or a hardness is asked. */
  public boolean asksStrength() {
    return yield.isPresent() || tensile.isPresent() || hardness.isPresent();
  }

  /** Strength and hardness alone. */
  public Requirement strengths() {
    return new Requirement(
        yield, tensile, hardness, Optional.empty(), OptionalDouble.empty(), fillet, tube, written);
  }

  /** The same of a joint with a fillet. */
  public Requirement with(Optional<Fillet> other) {
    return new Requirement(
        yield, tensile, hardness, anodizedMatch, serviceTemperature, other, tube, written);
  }

  /** The same of a tube under pressure. */
  public Requirement holding(Optional<Tube> other) {
    return new Requirement(
        yield, tensile, hardness, anodizedMatch, serviceTemperature, fillet, other, written);
  }

  /**
   * One of the values with its text, if it is asked.
   *
   * @param quantity yield, tensile strength or hardness; {@link OutputQuantity#PEAK_TEMPERATURE}
   *     for the service temperature
   */
  public Optional<Asked> asked(OutputQuantity quantity) {
    OptionalDouble value =
        switch (quantity) {
          case YIELD -> yield;
          case TENSILE -> tensile;
          case HARDNESS -> hardness;
          case PEAK_TEMPERATURE -> serviceTemperature;
          case DISTANCE -> OptionalDouble.empty();
        };
    if (value.isEmpty()) {
      return Optional.empty();
    }
    double si = value.getAsDouble();
    String text = written.get(quantity);
    return Optional.of(text == null ? Asked.of(quantity, si) : new Asked(quantity, si, text));
  }
}
