package afterweld.thermal;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * The temperature one pass makes in one leg, on a line across the weld in one depth: peaks, widths
 * and cycles. SI units and kelvin; ξ is the distance ahead of the arc (negative behind it), y the
 * distance from the bead's centre into the leg.
 *
 * <p>The moving source's field in the heat potential, with the heat of fusion that is missing
 * beside the pool taken off: the rise at each y is scaled as a whole, so that its peak is right.
 *
 * <p>Against ten fields with variable properties and heat of fusion, at equal fusion width: peaks
 * from 200 to 585 °C within 3 K rms, 8 K at most. The weld is steady and long, the arc symmetric;
 * weave, filler, backing bars and clamps are not modelled.
 */
public final class PlateField {
  private static final double NARROWEST = 1e-4;
  private static final double WIDEST = 50;

  private final ConductionMaterial material;
  private final SurfaceLoss loss;
  private final LegGeometry leg;
  private final LegCorrection correction;
  private final MovingSource source;
  private final double power;
  private final double speed;
  private final double startTemperature;
  private final double startPotential;
  private final double fusionHalfWidth;
  private final MissingHeat missing;

  private PlateField(
      LegGeometry leg,
      LegCorrection correction,
      ConductionMaterial material,
      SurfaceLoss loss,
      Heat heat) {
    this.material = material;
    this.loss = loss;
    this.leg = leg;
    this.correction = correction;
    this.power = heat.power();
    this.speed = heat.speed();
    this.startTemperature = heat.startTemperature();
    this.startPotential = material.potential().at(startTemperature);
    this.source = source(leg, material, loss, speed);
    this.fusionHalfWidth = fusionLine(material.fusionTemperature());
    this.missing = fusionHalfWidth > 0 ? beside() : underPool(heat);
  }

  /**
   * The heat of a pass.
   *
   * @param power heat that enters the metal, W
   * @param speed travel speed, m/s
   * @param startTemperature of the metal before the pass, K
   */
  public record Heat(double power, double speed, double startTemperature) {
    /** Checks that all are positive. */
    public Heat {
      if (!(power > 0 && speed > 0 && startTemperature > 0)) {
        throw new IllegalArgumentException(power + " W, " + speed + " m/s, " + startTemperature);
      }
    }
  }

  /** The field in a plate that has the heat to itself. */
  public static PlateField of(
      LegGeometry leg, ConductionMaterial material, SurfaceLoss loss, Heat heat) {
    return new PlateField(leg, LegCorrection.NONE, material, loss, heat);
  }

  /**
   * The field in one of a weld's legs.
   *
   * @param index which leg
   * @param heat of the pass
   * @param depth of the line looked at below the arc side, m
   */
  public static PlateField of(
      WeldLegs legs, int index, PassHeat heat, SurfaceLoss loss, double depth) {
    Leg leg = legs.legs().get(index);
    Pass pass = heat.pass();
    double sourceDepth = SourceDepth.of(pass, leg.thickness(), heat.fusionHalfWidth());
    return new PlateField(
        legs.seenFrom(index, sourceDepth, depth, pass.offset()),
        legs.correction(index),
        leg.material(),
        loss,
        new Heat(heat.netPower(), pass.travelSpeed(), pass.startTemperature()));
  }

  static MovingSource source(
      LegGeometry leg, ConductionMaterial material, SurfaceLoss loss, double speed) {
    double term = loss.term(material.lossConductivity(), leg.lossThickness());
    return new MovingSource(leg, speed / (2 * material.diffusivity()), term);
  }

  private MissingHeat beside() {
    return MissingHeat.beside(fusionHalfWidth, belowSource(), material, speed);
  }

  private double belowSource() {
    return Math.max(0, leg.depth() - leg.sourceDepth());
  }

  private MissingHeat underPool(Heat heat) {
    if (leg.depth() == 0 || material.latentTerm() == 0) {
      return MissingHeat.NONE;
    }
    double surface =
        new PlateField(leg.atDepth(0), correction, material, loss, heat).fusionHalfWidth();
    return surface > 0
        ? MissingHeat.under(surface, leg.depth(), material, speed)
        : MissingHeat.NONE;
  }

  private double fusionLine(double temperature) {
    double needed = potentialRise(temperature);
    return outermost(
        y -> {
          double radius = Math.hypot(y, belowSource());
          return unitPeak(y) * power - MissingHeat.atFusionLine(radius, material, speed);
        },
        needed);
  }

  private double potentialRise(double temperature) {
    return material.potential().at(temperature) - startPotential;
  }

  /** Peak of the plain rise at y, W/m per W. */
  private double unitPeak(double y) {
    return source.rise(source.peakPlace(y), y) * factor(y);
  }

  private double factor(double y) {
    return correction.factor(speed / (2 * material.diffusivity()), y);
  }

  /** Largest y where a falling peak still has a rise of the heat potential. */
  private double outermost(DoubleUnaryOperator peak, double needed) {
    double edge = Math.min(WIDEST, leg.ownWidth());
    double inside = NARROWEST;
    if (peak.applyAsDouble(inside) < needed) {
      return 0;
    }
    double outside = 16 * NARROWEST;
    while (outside < edge && peak.applyAsDouble(outside) >= needed) {
      inside = outside;
      outside *= 2;
    }
    if (outside >= edge && peak.applyAsDouble(edge) >= needed) {
      return edge;
    }
    DoubleUnaryOperator excess =
        logarithm -> Math.log(peak.applyAsDouble(Math.exp(logarithm)) / needed);
    double last = Math.log(Math.min(outside, edge));
    return Math.exp(Root.between(excess, Math.log(inside), last, 1e-9));
  }

  /** The pass as the metal at y feels it. */
  StationPass station(double y) {
    double place = source.peakPlace(y);
    double plain = source.rise(place, y) * factor(y) * power;
    double scale = factor(y) * power * (1 - missing.at(y) / plain);
    return new StationPass(this, y, -place / speed, Math.max(scale, 0));
  }

  double unitRise(double xi, double y) {
    return source.rise(xi, y);
  }

  ConductionMaterial material() {
    return material;
  }

  SurfaceLoss loss() {
    return loss;
  }

  double speed() {
    return speed;
  }

  /** Temperature of the metal before the pass, K. */
  public double startTemperature() {
    return startTemperature;
  }

  /** Rate at which the warm body itself loses its heat, 1/s. */
  double bodyCooling() {
    return loss.term(material.lossConductivity(), leg.lossThickness()) * material.diffusivity();
  }

  /** Temperature at (ξ, y) while the start temperature holds, K. */
  public double temperature(double xi, double y) {
    return station(y).temperatureAhead(xi);
  }

  /** Highest temperature at y, K. */
  public double peakTemperature(double y) {
    return station(y).peakTemperature();
  }

  /** Whether y lies so near the arc that no temperature can be given there. */
  public boolean insideArc(double y) {
    return material.potential().insideArc(startPotential + unitPeak(y) * power - missing.at(y));
  }

  /** How far behind the arc the temperature at y is highest, m. */
  public double lag(double y) {
    return -source.peakPlace(y);
  }

  /** Distance of the fusion line from the bead's centre in this depth, m; 0 if not reached. */
  public double fusionHalfWidth() {
    return fusionHalfWidth;
  }

  /** Outer edge of the partially melted metal, m; 0 if not reached. */
  public double solidusEdge() {
    return isotherm(material.solidus());
  }

  /**
   * How far from the bead's centre a peak temperature reaches, m: 0 if nowhere, at most the width
   * of the leg.
   *
   * @param temperature K, above the start temperature
   */
  public double isotherm(double temperature) {
    if (!(temperature > startTemperature)) {
      throw new IllegalArgumentException(temperature + " K is not above the start temperature");
    }
    return outermost(y -> unitPeak(y) * power - missing.at(y), potentialRise(temperature));
  }

  /**
   * The thermal cycle at y, in straight pieces that stay within 1 K of it (0.5 K near the peak):
   * from where it has risen by 0.5 K until it has cooled.
   *
   * @param until temperature at which it ends, K
   * @param longest time after the arc has passed at which it ends at the latest, s
   */
  public TemperatureHistory cycle(double y, double until, double longest) {
    return station(y).cycle(until, longest);
  }

  /** Time to cool from one temperature to a lower one at y, s; empty if it does not happen. */
  public OptionalDouble coolingTime(double y, double from, double to) {
    return station(y).coolingTime(from, to);
  }

  /** Time spent above a temperature at y, s; 0 if never, empty if it does not end. */
  public OptionalDouble timeAbove(double y, double temperature) {
    return station(y).timeAbove(temperature);
  }
}
