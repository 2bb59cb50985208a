package afterweld.casefile;

import static afterweld.casefile.Dimension.HARDNESS;
import static afterweld.casefile.Dimension.STRESS;
import static afterweld.casefile.Dimension.TEMPERATURE;

import afterweld.choice.answer.Requirement;
import afterweld.quantity.OutputQuantity;
import afterweld.strength.HardnessScale;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code require}: what the drawing asks. */
final class RequirementReader {
  private static final Measure YIELD = Measure.above("yield", STRESS, 0, 1000, "MPa");
  private static final Measure TENSILE = Measure.above("tensile", STRESS, 0, 1000, "MPa");
  private static final Measure HARDNESS_ASKED = Measure.within("hardness", HARDNESS, 20, 250, "HV");
  private static final Measure SERVICE =
      Measure.within("service_temperature", TEMPERATURE, -270, 300, "°C");
  private static final Map<OutputQuantity, Measure> ASKED =
      Map.of(
          OutputQuantity.YIELD, YIELD,
          OutputQuantity.TENSILE, TENSILE,
          OutputQuantity.HARDNESS, HARDNESS_ASKED,
          OutputQuantity.PEAK_TEMPERATURE, SERVICE);
  private static final String EXPECTED =
      "keys yield, tensile, hardness, anodized_match, service_temperature";

  private final Notes notes;
  private final boolean casting;

  /**
   * A reader.
   *
   * @param casting whether a side of the joint is one
   */
  RequirementReader(Notes notes, boolean casting) {
    this.notes = notes;
    this.casting = casting;
  }

  Requirement read(Section top) {
    return top.inner("require", EXPECTED).map(this::asked).orElse(Requirement.NONE);
  }

  private Requirement asked(Section section) {
    OptionalDouble yield = section.quantity(YIELD);
    OptionalDouble tensile = section.quantity(TENSILE);
    OptionalDouble hardness = section.quantity(HARDNESS_ASKED);
    Optional<Boolean> match = section.truth("anodized_match");
    OptionalDouble service = section.quantity(SERVICE);
    if (tensile.isPresent() && Measure.exceeds(yield.orElse(0), tensile.getAsDouble())) {
      section.fault(
          YIELD.key(),
          "found "
              + YIELD.show(yield.getAsDouble())
              + "; expected at most the tensile strength asked for, "
              + TENSILE.show(tensile.getAsDouble()));
    }
    hardness.ifPresent(value -> noteScale(section, value));
    section.finish();
    return new Requirement(
        yield,
        tensile,
        hardness,
        match,
        service,
        Optional.empty(),
        Optional.empty(),
        written(section));
  }

  private static Map<OutputQuantity, String> written(Section section) {
    Map<OutputQuantity, String> texts = new EnumMap<>(OutputQuantity.class);
    ASKED.forEach(
        (quantity, measure) ->
            section.written(measure).ifPresent(text -> texts.put(quantity, text)));
    return texts;
  }

  private void noteScale(Section section, double vickers) {
    String asked = section.written(HARDNESS_ASKED).orElse("");
    String scale = asked.substring(asked.lastIndexOf(' ') + 1);
    if (casting && scale.equals("HRB")) {
      section.fault(
          HARDNESS_ASKED.key(), "found " + asked + "; expected " + HardnessScale.NO_CAST_ROCKWELL);
    } else if (scale.equals("HB") || scale.equals("HRB")) {
      notes.add(
          "hardness-converted",
          String.format(
              Locale.ROOT,
              "The hardness asked for, %s, is compared as %.0f HV (%s).",
              asked,
              vickers,
              scale.equals("HB")
                  ? "Brinell taken as 500 kgf, 10 mm ball"
                  : "by the table for wrought aluminium"));
    }
  }
}
