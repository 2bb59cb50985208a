package afterweld.thermal;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;

/**
 * How much of an arc's power enters the metal of a weld, and how wide it melts.
 *
 * <p>With a bead width W the weld is its own calorimeter, in closed form, because the rise is
 * linear in the power q:
 *
 * <pre>
 * q = [Φ(T_f) − Φ(T0) + β a ρ L] / F_peak(W/2, z = 0; q = 1),   efficiency = q / (volts · amps)
 * </pre>
 *
 * with Φ the heat potential, T_f the middle of the melting range and β the share of the heat of
 * fusion that is missing at the fusion line. Half a millimetre of half-width is 5 % of the power.
 * Unequal legs or metals count by thickness [assumed]. In a fillet the visible leg is not the
 * fusion width: give one from a macro-section or none.
 *
 * <p>Against ten fields with variable properties: power within 2.4 %. Without a width the
 * efficiency is the process's, with its band.
 */
public final class HeatInput {
  private static final double LOWEST_EFFICIENCY = 0.3;
  private static final double HIGHEST_EFFICIENCY = 0.9;

  /** Narrowest half width that counts as a bead, m. */
  public static final double NARROWEST_FUSION = 1e-3;

  /** What is said where nothing melts. */
  public static final String NO_BEAD = "this heat would not melt a bead";

  private static final double NARROWEST = 1e-4;

  /** How far advice goes: A, m/s, K [common practice]. */
  private static final double MOST_CURRENT = 450;

  private static final double SLOWEST = 1e-3;
  private static final double HOTTEST_PREHEAT = 150 + ZERO_CELSIUS;
  private static final int HALVINGS = 10;

  private final WeldLegs legs;
  private final SurfaceLoss loss;

  private HeatInput(WeldLegs legs, SurfaceLoss loss) {
    this.legs = legs;
    this.loss = loss;
  }

  /** Heat into the legs of a weld. */
  public static HeatInput into(WeldLegs legs, SurfaceLoss loss) {
    return new HeatInput(legs, loss);
  }

  /**
   * Heat of every pass of a procedure. A pass that says nothing of its heat takes the efficiency of
   * the last calibrated pass of the same process, else the default of the process.
   *
   * @throws HeatInputException if a pass cannot be
   */
  public List<PassHeat> of(List<Pass> passes) {
    Map<WeldingProcess, PassHeat> calibrated = new EnumMap<>(WeldingProcess.class);
    List<PassHeat> heats = new ArrayList<>();
    for (int i = 0; i < passes.size(); i++) {
      Pass pass = passes.get(i);
      PassHeat heat = inPlace(i, pass, calibrated.get(pass.process()));
      if (pass.beadWidth().isPresent()) {
        calibrated.put(pass.process(), heat);
      }
      heats.add(heat);
    }
    return List.copyOf(heats);
  }

  private PassHeat inPlace(int index, Pass pass, PassHeat before) {
    boolean says = pass.beadWidth().isPresent() || pass.efficiency().isPresent();
    try {
      return before != null && !says ? alike(pass, before) : of(pass);
    } catch (HeatInputException fault) {
      throw fault.inPass(index);
    }
  }

  /**
   * Heat of one pass on its own.
   *
   * @throws HeatInputException if a number is out of range, or if amps, volts, speed, width,
   *     thickness and joint do not fit together
   */
  public PassHeat of(Pass pass) {
    PassLimits.check(pass, legs);
    if (pass.beadWidth().isPresent()) {
      return calibrated(pass, pass.beadWidth().getAsDouble());
    }
    if (pass.efficiency().isPresent()) {
      double given = within(pass, pass.efficiency().getAsDouble(), () -> "");
      return melting(pass, given, given, given, OptionalDouble.empty());
    }
    WeldingProcess process = pass.process();
    return melting(
        pass,
        process.efficiency(),
        process.efficiencyLow(),
        process.efficiencyHigh(),
        OptionalDouble.empty());
  }

  /**
   * Heat of a pass at an efficiency, the bead following from it: for a band, a sweep, or a fit. Its
   * fusion half-width is 0 if it does not melt.
   */
  public PassHeat of(Pass pass, double efficiency) {
    double power = efficiency * pass.arcPower();
    return new PassHeat(
        pass,
        efficiency,
        efficiency,
        efficiency,
        false,
        power,
        fusionHalfWidth(pass, power),
        OptionalDouble.empty());
  }

  private PassHeat alike(Pass pass, PassHeat before) {
    PassLimits.check(pass, legs);
    double efficiency = before.efficiency();
    return melting(pass, efficiency, efficiency, efficiency, before.calibratedBy());
  }

  private PassHeat melting(
      Pass pass, double efficiency, double low, double high, OptionalDouble calibratedBy) {
    PassHeat heat = of(pass, efficiency);
    if (heat.fusionHalfWidth() < NARROWEST_FUSION) {
      throw new HeatInputException(
          "current",
          NO_BEAD
              + firstBead(pass, efficiency)
              + (low < high ? atUsual(efficiency, low, high) : ""));
    }
    if (2 * heat.fusionHalfWidth() > PassLimits.widest(legs)) {
      throw new HeatInputException(
          "current",
          String.format(
              Locale.ROOT,
              "this heat would melt a bead %.0f mm wide, more than any weld of this thickness",
              2e3 * heat.fusionHalfWidth()));
    }
    return new PassHeat(
        pass,
        efficiency,
        low,
        high,
        calibratedBy.isPresent(),
        heat.netPower(),
        heat.fusionHalfWidth(),
        calibratedBy);
  }

  private static String atUsual(double efficiency, double low, double high) {
    return String.format(
        Locale.ROOT,
        "; at the usual arc efficiency of %.2f (%.2f to %.2f): if yours does melt, give its"
            + " bead_width",
        efficiency,
        low,
        high);
  }

  /** What would melt one: the current, the speed or the preheat at which a bead begins. */
  private String firstBead(Pass pass, double efficiency) {
    double amperes = power(pass, 2 * NARROWEST_FUSION) / efficiency / pass.voltage();
    List<String> ways = new ArrayList<>();
    if (amperes <= MOST_CURRENT) {
      ways.add(fromCurrent(amperes));
    }
    bisected(pass.travelSpeed(), SLOWEST, speed -> melts(pass.withTravelSpeed(speed), efficiency))
        .ifPresent(
            speed ->
                ways.add(
                    "at about " + AdvisedSetting.speed(speed) + " or slower with this current"));
    bisected(
            pass.startTemperature(),
            HOTTEST_PREHEAT,
            kelvin -> melts(pass.withStartTemperature(kelvin), efficiency))
        .ifPresent(kelvin -> ways.add("preheated to about " + AdvisedSetting.preheat(kelvin)));
    return ways.isEmpty() ? "" : "; one begins " + String.join(", or ", ways);
  }

  /** From which current on a bead begins, in words. */
  public static String fromCurrent(double amperes) {
    return "from about " + AdvisedSetting.current(amperes) + " on at this speed";
  }

  private boolean melts(Pass pass, double efficiency) {
    return of(pass, efficiency).fusionHalfWidth() >= NARROWEST_FUSION;
  }

  private static OptionalDouble bisected(double cold, double hot, DoublePredicate melts) {
    if (!melts.test(hot)) {
      return OptionalDouble.empty();
    }
    double not = cold;
    double does = hot;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (not + does) / 2;
      if (melts.test(middle)) {
        does = middle;
      } else {
        not = middle;
      }
    }
    return OptionalDouble.of(does);
  }

  /**
   * Heat of a pass on its own as a first guess: whatever efficiency comes out, whether it melts or
   * not.
   *
   * @throws HeatInputException if a number is out of range
   */
  public PassHeat estimate(Pass pass) {
    PassLimits.check(pass, legs);
    double efficiency =
        pass.beadWidth().isPresent()
            ? power(pass, pass.beadWidth().getAsDouble()) / pass.arcPower()
            : pass.efficiency().orElse(pass.process().efficiency());
    return of(pass, efficiency);
  }

  private double power(Pass pass, double width) {
    return needed(pass, width / 2) / perWatt(pass, width / 2, width / 2);
  }

  private PassHeat calibrated(Pass pass, double width) {
    double power = power(pass, width);
    double efficiency = within(pass, power / pass.arcPower(), () -> fitting(pass));
    return new PassHeat(
        pass, efficiency, efficiency, efficiency, true, power, width / 2, OptionalDouble.of(width));
  }

  /**
   * An efficiency that can be one.
   *
   * @param fitting the bead widths that could be, as the end of a sentence
   * @throws HeatInputException if it cannot
   */
  public static double within(Pass pass, double efficiency, Supplier<String> fitting) {
    if (efficiency >= LOWEST_EFFICIENCY && efficiency <= HIGHEST_EFFICIENCY) {
      return efficiency;
    }
    if (pass.beadWidth().isEmpty()) {
      throw HeatInputException.outside("efficiency", efficiency, "", "0.3 to 0.9");
    }
    throw new HeatInputException(
        "bead_width",
        String.format(
            Locale.ROOT,
            "a bead %.4g mm wide does not fit the amps, volts, speed, thickness and joint: it would"
                + " take an arc efficiency of %.2f (expected 0.3 to 0.9). Meant is the width that is"
                + " fused at the arc side, as a cut and etched section shows it, not the face of a"
                + " fillet%s",
            1e3 * pass.beadWidth().getAsDouble(),
            efficiency,
            fitting.get()));
  }

  /** The widths that the usual efficiencies of the process melt, rounded inwards. */
  private String fitting(Pass pass) {
    WeldingProcess process = pass.process();
    double narrow = 2e3 * of(pass, process.efficiencyLow()).fusionHalfWidth();
    double most = 1e3 * PassLimits.widest(legs);
    double wide = Math.min(most, 2e3 * of(pass, process.efficiencyHigh()).fusionHalfWidth());
    if (narrow > most) {
      return "; with these settings more melts than this thickness bears";
    }
    return wide < 2e3 * NARROWEST_FUSION
        ? "; with these settings hardly a bead is melted"
        : String.format(
            Locale.ROOT,
            "; with these settings %.1f to %.1f mm would fit",
            Math.ceil(10 * Math.max(narrow, 2e3 * NARROWEST_FUSION)) / 10,
            Math.floor(10 * wide) / 10);
  }

  /** Rise of the heat potential that a fusion line at y needs, by thickness over the legs, W. */
  private double needed(Pass pass, double y) {
    double sum = 0;
    for (Leg leg : legs.legs()) {
      ConductionMaterial metal = leg.material();
      double rise =
          metal.potential().at(metal.fusionTemperature())
              - metal.potential().at(pass.startTemperature());
      double missing = MissingHeat.atFusionLine(y, metal, pass.travelSpeed());
      sum += leg.thickness() * (rise + missing);
    }
    return sum;
  }

  /** Peak of that rise on the arc side at y per watt, the fusion line deciding the depth. */
  private double perWatt(Pass pass, double y, double fusionHalfWidth) {
    double sum = 0;
    for (int i = 0; i < legs.legs().size(); i++) {
      Leg leg = legs.legs().get(i);
      double depth = SourceDepth.of(pass, leg.thickness(), fusionHalfWidth);
      LegGeometry seen = legs.seenFrom(i, depth, 0, pass.offset());
      MovingSource source = PlateField.source(seen, leg.material(), loss, pass.travelSpeed());
      sum += leg.thickness() * source.rise(source.peakPlace(y), y);
    }
    return sum;
  }

  private double fusionHalfWidth(Pass pass, double power) {
    DoubleUnaryOperator excess =
        logarithm -> {
          double y = Math.exp(logarithm);
          return Math.log(power * perWatt(pass, y, y) / needed(pass, y));
        };
    double inside = Math.log(NARROWEST);
    if (excess.applyAsDouble(inside) < 0) {
      return 0;
    }
    double outside = Math.log(NARROWEST_FUSION);
    while (excess.applyAsDouble(outside) >= 0) {
      inside = outside;
      outside += Math.log(2);
    }
    return Math.exp(Root.between(excess, inside, outside, 1e-9));
  }

  /** What the reader of this heat must know. */
  public List<ThermalWarning> warnings(PassHeat heat) {
    return PassLimits.warnings(heat, legs);
  }
}
