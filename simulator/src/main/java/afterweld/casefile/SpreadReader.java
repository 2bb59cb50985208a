package afterweld.casefile;

import static afterweld.casefile.Dimension.LENGTH;
import static afterweld.casefile.Dimension.SHARE;
import static afterweld.casefile.Dimension.TEMPERATURE_DIFFERENCE;
import static afterweld.casefile.Dimension.TIME;

import afterweld.study.SpreadSettings;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** Reads {@code spread}: half-widths of the inputs, number of runs, seed. */
final class SpreadReader {
  private static final Measure DILUTION = Measure.within("dilution", SHARE, 0, 50, "%");
  private static final Measure BEAD = Measure.within("bead_width", LENGTH, 0, 5, "mm");
  private static final Measure EFFICIENCY = Measure.within("arc_efficiency", SHARE, 0, 50, "%");
  private static final Measure TRAVEL = Measure.within("travel_speed", SHARE, 0, 50, "%");
  private static final Measure FURNACE =
      Measure.within("furnace_temperature", TEMPERATURE_DIFFERENCE, 0, 50, "K");
  private static final Measure SOAK = Measure.within("soak", SHARE, 0, 100, "%");
  private static final Measure DELAY = Measure.within("quench_delay", TIME, 0, 600, "s");
  private static final Measure AGEING = Measure.within("ageing_time", SHARE, 0, 50, "%");
  private static final Measure COMPOSITION = Measure.within("composition", SHARE, 0, 50, "%");

  /** Fewer runs have no 5 % value (assumed). */
  private static final int FEWEST_RUNS = 10;

  /** More runs take longer than anybody waits (assumed). */
  private static final int MOST_RUNS = 100_000;

  /** Eighteen digits, which a long holds. */
  private static final long LARGEST_SEED = 999_999_999_999_999_999L;

  SpreadSettings read(Section top) {
    return top.inner("spread", "keys runs, seed and half-widths of the inputs")
        .map(SpreadReader::settings)
        .orElse(SpreadSettings.DEFAULT);
  }

  private static SpreadSettings settings(Section section) {
    OptionalLong runs = section.wholeNumber("runs", FEWEST_RUNS, MOST_RUNS);
    SpreadSettings settings =
        new SpreadSettings(
            runs.isPresent() ? OptionalInt.of((int) runs.getAsLong()) : OptionalInt.empty(),
            section.wholeNumber("seed", 0, LARGEST_SEED),
            section.quantity(DILUTION),
            section.quantity(BEAD),
            section.quantity(EFFICIENCY),
            section.quantity(TRAVEL),
            section.quantity(FURNACE),
            section.quantity(SOAK),
            section.quantity(DELAY),
            section.quantity(AGEING),
            section.quantity(COMPOSITION));
    section.finish();
    return settings;
  }
}
