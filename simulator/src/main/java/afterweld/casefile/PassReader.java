package afterweld.casefile;

import static afterweld.casefile.Dimension.CURRENT;
import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.RATIO;
import static afterweld.casefile.Dimension.SPEED;
import static afterweld.casefile.Dimension.TEMPERATURE;
import static afterweld.casefile.Dimension.TIME;
import static afterweld.casefile.Dimension.VOLTAGE;

import afterweld.casefile.text.FaultCollector;
import afterweld.casefile.text.Node;
import afterweld.quantity.BothUnits;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldingProcess;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads {@code passes}. */
final class PassReader {
  private static final Choices<WeldingProcess> PROCESSES =
      Choices.of(List.of(WeldingProcess.values()), WeldingProcess::label);
  private static final Measure AMPS = Measure.above("current", CURRENT, 0, 2000, "A");
  private static final Measure VOLTS = Measure.above("voltage", VOLTAGE, 0, 100, "V");
  private static final Measure TRAVEL = Measure.within("travel_speed", SPEED, 0.3, 40, "mm/s");
  private static final Measure PREHEAT = start("preheat");
  private static final Measure INTERPASS = start("interpass");
  private static final Measure BEAD = Measure.above("bead_width", LENGTH, 0, 820, "mm");
  private static final Measure PENETRATION = Measure.above("penetration", LENGTH, 0, 40, "mm");
  private static final Measure EFFICIENCY = Measure.within("efficiency", RATIO, 0.3, 0.9, "");
  private static final Measure OFFSET = Measure.within("offset", LENGTH, -100, 100, "mm");
  private static final Measure PAUSE = Measure.within("pause", TIME, 0, 24, "h");

  private static final String EXPECTED =
      "a list of passes, each with process, current, voltage and travel_speed";

  /** More passes than any weld of 40 mm plate takes (assumed). */
  private static final int MOST_PASSES = 50;

  /** Arc power, W, beyond any process here (assumed). */
  private static final double MOST_POWER = 20_000;

  /** Room temperature, K: 20 °C (convention). */
  private static final double USUAL_PREHEAT = 293.15;

  /**
   * Interpass temperature where nobody says, K: 150 °F, the usual limit for heat-treated metal
   * (common practice).
   */
  private static final double USUAL_INTERPASS = 339.15;

  private final Plates plates;
  private final Notes notes;

  PassReader(Plates plates, Notes notes) {
    this.plates = plates;
    this.notes = notes;
  }

  private static Measure start(String key) {
    return Measure.within(key, TEMPERATURE, 0, 600, "°C");
  }

  /** The passes in order; none if one of them is faulty. */
  List<Pass> read(Section top) {
    if (!top.has("passes")) {
      top.missing("passes", EXPECTED);
    }
    List<Node> items = top.list("passes", 1, MOST_PASSES, EXPECTED);
    List<Pass> passes = new ArrayList<>();
    for (int i = 0; i < items.size(); i++) {
      item(items.get(i), i, top.faults()).ifPresent(passes::add);
    }
    return passes.size() == items.size() ? passes : List.of();
  }

  private Optional<Pass> item(Node item, int index, FaultCollector faults) {
    if (item instanceof Node.Mapping mapping) {
      return pass(new Section("pass " + (index + 1), item.place(), mapping, faults), index == 0);
    }
    faults.add(item.place(), "passes: found " + item.words() + "; expected " + EXPECTED);
    return Optional.empty();
  }

  private Optional<Pass> pass(Section section, boolean first) {
    Optional<WeldingProcess> process = section.requiredChoice("process", PROCESSES);
    double current = section.required(AMPS);
    double voltage = section.required(VOLTS);
    double travelSpeed = section.required(TRAVEL);
    double start = startTemperature(section, first);
    OptionalDouble beadWidth = section.quantity(BEAD);
    OptionalDouble penetration = section.quantity(PENETRATION);
    OptionalDouble efficiency = section.quantity(EFFICIENCY);
    double offset = section.quantityOr(OFFSET, 0);
    OptionalDouble pause = pause(section, first);
    checkPower(section, current * voltage);
    checkBead(section, beadWidth, penetration);
    section.finish();
    if (!section.sound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Pass(
            process.orElseThrow(),
            current,
            voltage,
            travelSpeed,
            start,
            beadWidth,
            penetration,
            efficiency,
            offset,
            pause));
  }

  private double startTemperature(Section section, boolean first) {
    Measure measure = first ? PREHEAT : INTERPASS;
    Measure other = first ? INTERPASS : PREHEAT;
    double start = section.quantityOr(measure, first ? USUAL_PREHEAT : USUAL_INTERPASS);
    if (!first && !section.has(measure.key())) {
      notes.add(
          "interpass-by-default",
          section.has(PAUSE.key())
              ? "A pass without interpass starts at 66 °C (150 °F) where its pause lets the metal cool"
                  + " so far."
              : "A pass without interpass starts at 66 °C (150 °F).");
    }
    section.node(other.key());
    if (section.has(other.key())) {
      section.unwanted(
          other.key(),
          "expected " + measure.key() + " (preheat in the first pass, interpass in later ones)");
    }
    if (start >= plates.hottestStart()) {
      section.fault(
          measure.key(),
          "found "
              + BothUnits.temperature(start)
              + "; expected under 0.9 of the absolute solidus, "
              + BothUnits.temperature(plates.hottestStart()));
    }
    return start;
  }

  private static OptionalDouble pause(Section section, boolean first) {
    OptionalDouble pause = section.quantity(PAUSE);
    if (first && section.has(PAUSE.key())) {
      section.unwanted(PAUSE.key(), "expected only from the second pass on, as time before it");
    }
    return pause;
  }

  private static void checkPower(Section section, double power) {
    if (Measure.exceeds(power, MOST_POWER)) {
      section.fault(
          AMPS.key(),
          String.format(
              Locale.ROOT,
              "current times voltage is %.1f kW; expected at most %.0f kW",
              power / 1000,
              MOST_POWER / 1000));
    }
  }

  private void checkBead(Section section, OptionalDouble width, OptionalDouble penetration) {
    double widest = 20 * plates.thickest() + 0.020;
    if (Measure.exceeds(width.orElse(0), widest)) {
      section.fault(
          BEAD.key(),
          "found "
              + BEAD.show(width.getAsDouble())
              + "; expected at most 20 thicknesses and 20 mm, "
              + BEAD.show(widest));
    }
    if (Measure.exceeds(penetration.orElse(0), plates.thickest())) {
      section.fault(
          PENETRATION.key(),
          "found "
              + PENETRATION.show(penetration.getAsDouble())
              + "; expected at most the thickness, "
              + PENETRATION.show(plates.thickest()));
    }
    if (section.has(BEAD.key()) && section.has(EFFICIENCY.key())) {
      section.unwanted(
          EFFICIENCY.key(),
          "found together with bead_width, which sets the efficiency; expected one of the two");
    }
  }
}
