package afterweld.joint;

import afterweld.weld.Warning;
import java.util.List;

/**
 * How much harder neighbours may hold up a narrow soft band, as an upper estimate only: never for
 * acceptance. Without it a joint's strength is the lower estimate.
 *
 * <p>With h the full width of the soft band, w the strip's width, t its thickness, {@code c =
 * 2/sqrt 3}:
 *
 * <pre>
 * sheet, sides can't shrink:  m = 1 up to w/h = 1.43,  c - (c - 1) 1.43 h/w beyond
 * plate, band thinner than t: m = c up to t/h = 1,     c (3 + t/h)/4 beyond
 * proof x m,  tensile x m^(1+n);  h = length with proof at most m x the lowest proof
 * </pre>
 *
 * The sheet's m holds up to t/h = 1; beyond, the plate's if w/h is over 3, else the smaller of the
 * two (assumed). Nothing is raised above what the metal next to the band carries.
 *
 * <p>Known error: against a rigid-plastic finite-element upper bound the formulae lie within 2.1 %,
 * at w/h of 2 to 3 above it by 1.2 to 1.4 %. The power 1 + n is derived for a full lateral block
 * and used between by analogy. Not tested against coupons. Source: sheet, Schwalbe et al., EFAM
 * ETM-MM 96, GKSS 98/E/6, without crack (from memory); plate, Hill 1950 and Prandtl (from memory).
 *
 * @param band h, m
 * @param factor m
 * @param line the line with the band's strengths raised
 * @param warnings says that this is an upper estimate
 */
public record PlasticConstraint(
    double band, double factor, SliceLine line, List<Warning> warnings) {
  /** c, the factor of a full lateral block in plane strain. */
  static final double LATERAL_BLOCK = 2 / Math.sqrt(3);

  private static final double SHEET_FROM = 1.43;
  private static final double WIDE_STRIP = 3;
  private static final int ROUNDS = 20;
  private static final Warning UPPER_ONLY =
      new Warning(
          "upper-estimate",
          "strength with the soft band held by its harder neighbours: an upper estimate, not for"
              + " acceptance");

  /** Copies the list. */
  public PlasticConstraint {
    warnings = List.copyOf(warnings);
  }

  /**
   * The upper estimate for a strip.
   *
   * @param line the joint
   * @param width of the strip, m
   * @param modulus Young's modulus, Pa
   */
  public static PlasticConstraint upperEstimate(SliceLine line, double width, double modulus) {
    double lowest = lowestProof(line);
    double thickness = weakestThickness(line, lowest);
    double factor = 1;
    double band = band(line, lowest);
    for (int round = 0; round < ROUNDS && !coversAll(line, band); round++) {
      double next = factor(width, thickness, band);
      if (next == factor) {
        break;
      }
      factor = next;
      band = band(line, factor * lowest);
    }
    if (coversAll(line, band)) {
      return new PlasticConstraint(band, 1, line, List.of(UPPER_ONLY));
    }
    SliceLine raised = new RaisedBand(line, factor, factor * lowest, modulus).line();
    return new PlasticConstraint(band, factor, raised, List.of(UPPER_ONLY));
  }

  /** m of a sheet for a strip w/h times as wide as its soft band. */
  public static double sheet(double widthOverBand) {
    return widthOverBand <= SHEET_FROM
        ? 1
        : LATERAL_BLOCK - (LATERAL_BLOCK - 1) * SHEET_FROM / widthOverBand;
  }

  /** m of a plate t/h times as thick as its soft band is wide, in plane strain. */
  public static double plate(double thicknessOverBand) {
    return LATERAL_BLOCK * (thicknessOverBand <= 1 ? 1 : (3 + thicknessOverBand) / 4);
  }

  /** m for a strip: width, thickness and soft band in m. */
  public static double factor(double width, double thickness, double band) {
    double sheet = sheet(width / band);
    if (thickness <= band) {
      return sheet;
    }
    double plate = plate(thickness / band);
    return width > WIDE_STRIP * band ? plate : Math.min(sheet, plate);
  }

  /** What m makes of a tensile strength, for a metal of uniform strain n. */
  public static double tensileFactor(double factor, double uniformStrain) {
    return Math.pow(factor, 1 + uniformStrain);
  }

  /** Without harder metal beside it nothing holds the band. */
  private static boolean coversAll(SliceLine line, double band) {
    return band >= (line.to() - line.from()) * (1 - 1e-9);
  }

  private static double lowestProof(SliceLine line) {
    return line.slices().stream().mapToDouble(s -> s.metal().proof()).min().orElseThrow();
  }

  private static double weakestThickness(SliceLine line, double lowest) {
    return line.slices().stream()
        .filter(s -> s.metal().proof() <= lowest)
        .mapToDouble(Slice::thickness)
        .findFirst()
        .orElseThrow();
  }

  private static double band(SliceLine line, double proof) {
    return line.slices().stream()
        .filter(s -> s.metal().proof() <= proof)
        .mapToDouble(Slice::length)
        .sum();
  }
}
