package afterweld.choice.schedule;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.choice.practice.FurnacePractice;
import afterweld.choice.practice.StandardTreatment;
import afterweld.material.Alloy;
import afterweld.material.ClassPathTable;
import afterweld.quantity.BothUnits;
import afterweld.quantity.Check;
import afterweld.quantity.UnitSystem;
import afterweld.thermal.furnace.FurnaceStep.Furnace;
import afterweld.weld.Side;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The limits of practice for one joint in one furnace: of two parts the one that asks for more
 * decides, so that a shop gets one figure for each step.
 *
 * <p>Soak and quench delay by thickness for wrought metal, 6 to 12 h and 45 s for castings. Water
 * of at most 38 °C for wrought metal, 65 to 100 °C for castings, 60 to 70 °C where both hang on one
 * weld: hot enough to spare the casting, and wrought metal loses little by it. Sources stand in the
 * tables beside this class and in the sentences.
 */
public final class FurnaceLimits {
  private static final double HOUR = 3600;
  private static final double SHORT_CAST_SOAK = 6 * HOUR;
  private static final double LONG_CAST_SOAK = 12 * HOUR;
  private static final List<Map<String, String>> RATES =
      ClassPathTable.rows(FurnaceLimits.class, "quench_rates.csv");

  private final FurnaceOrder order;
  private final UnitSystem units;

  /** For the metals of an order; the texts begin with these units. */
  public FurnaceLimits(FurnaceOrder order, UnitSystem units) {
    this.order = order;
    this.units = units;
  }

  /**
   * A limit.
   *
   * @param value SI
   * @param text the limit in words, with its source
   */
  public record Limit(double value, String text) {
    /** Refuses what it cannot be. */
    public Limit {
      Check.finite("limit", value, "");
      Check.said("limit", text);
    }
  }

  /**
   * A range of water temperature.
   *
   * @param low K
   * @param high K
   */
  public record Water(double low, double high, String text) {
    /** Refuses what it cannot be. */
    public Water {
      Check.positive("water temperature", low, "K");
      Check.rising("water temperature", low, high);
    }
  }

  private Stream<Side> hardening() {
    return order.sides().filter(side -> side.alloy().heatTreatable());
  }

  private Optional<Side> thickest() {
    return hardening()
        .filter(side -> !side.alloy().casting())
        .max(Comparator.comparingDouble(Side::thickness));
  }

  private boolean casting() {
    return hardening().anyMatch(side -> side.alloy().casting());
  }

  /** The least soak; empty where no part hardens. */
  public Optional<Limit> leastSoak(Furnace furnace) {
    Optional<Limit> wrought = thickest().map(side -> wroughtSoak(side, furnace));
    if (!casting()) {
      return wrought;
    }
    Limit cast =
        new Limit(SHORT_CAST_SOAK, "6 h, and 12 h at most, for castings (common practice)");
    return wrought.filter(limit -> limit.value() > cast.value()).or(() -> Optional.of(cast));
  }

  private Limit wroughtSoak(Side side, Furnace furnace) {
    String rule = furnace == Furnace.SALT ? "soak in salt" : "soak in air";
    FurnacePractice.Limit limit = FurnacePractice.of(rule, side.thickness());
    boolean unequal = order.weldCase().left().thickness() != order.weldCase().right().thickness();
    String governs =
        (unequal ? " for the thicker part, " : " for ") + BothUnits.length(side.thickness(), units);
    return new Limit(60 * limit.value(), limit.words() + governs + " (" + limit.source() + ")");
  }

  /** The longest soak, s: castings have one. */
  OptionalDouble longestSoak() {
    return casting() ? OptionalDouble.of(LONG_CAST_SOAK) : OptionalDouble.empty();
  }

  /** The longest time from the furnace to the bath: that of the part that allows least. */
  public Optional<Limit> longestDelay() {
    return hardening()
        .map(FurnaceLimits::delay)
        .min(Comparator.comparingDouble(FurnacePractice.Limit::value))
        .map(limit -> new Limit(limit.value(), limit.text()));
  }

  private static FurnacePractice.Limit delay(Side side) {
    return side.alloy().casting()
        ? FurnacePractice.of("longest quench delay of castings", side.thickness())
        : FurnacePractice.of("longest quench delay", side.thickness());
  }

  /** The water that serves every part; empty where no part hardens. */
  public Optional<Water> water() {
    boolean wrought = thickest().isPresent();
    if (wrought && casting()) {
      return Optional.of(
          water(
              60,
              70,
              " for a casting and wrought metal in one quench (assumed: between the usual of both)"));
    }
    if (casting()) {
      return Optional.of(water(65, 100, " for castings (common practice)"));
    }
    return wrought
        ? Optional.of(
            new Water(
                ZERO_CELSIUS,
                38 + ZERO_CELSIUS,
                "at most "
                    + BothUnits.temperature(38 + ZERO_CELSIUS, units)
                    + " at the start, its rise under "
                    + BothUnits.difference(11, units)
                    + " (AMS 2770, memory)"))
        : Optional.empty();
  }

  private Water water(double low, double high, String whose) {
    return new Water(
        low + ZERO_CELSIUS,
        high + ZERO_CELSIUS,
        BothUnits.temperature(low + ZERO_CELSIUS, units)
            + " to "
            + BothUnits.temperature(high + ZERO_CELSIUS, units)
            + whose);
  }

  /** The usual schedule of the joint; empty where no part hardens. */
  public Optional<Alloy.StandardSchedule> usual() {
    return StandardTreatment.schedule(order.weldCase());
  }

  /** The slowest cooling between 450 and 250 °C that leaves an alloy hardenable, K/s, if known. */
  static Optional<Limit> slowestQuench(Alloy alloy) {
    return RATES.stream()
        .filter(row -> row.get("alloy").equals(alloy.name()))
        .findFirst()
        .map(
            row ->
                new Limit(
                    Double.parseDouble(row.get("value")),
                    row.get("source") + ", " + row.get("status")));
  }
}
