package afterweld.weld;

import static afterweld.quantity.UnitSystem.ZERO_CELSIUS;

import afterweld.thermal.Pass;

/**
 * How hot a part may be before a pass by the fabrication codes: 120 °C or 250 °F, whichever the
 * code writes (AWS D1.2 and EN 1999-1-1, 6.1.6.3, from memory). Who asks 250 °F is at the limit.
 */
public final class HotStart {
  /** 250 °F, K. */
  private static final double LIMIT = (250 - 32) / 1.8 + ZERO_CELSIUS;

  private static final double ROUNDING = 1e-3;

  private HotStart() {}

  /** Whether a pass of the case starts hotter than the codes go. */
  public static boolean beyondCodes(WeldCase weldCase) {
    return warmest(weldCase) > LIMIT + ROUNDING;
  }

  /** Whether a stated pause, and no temperature, decides how warm a later pass finds the metal. */
  public static boolean byPause(WeldCase weldCase) {
    return weldCase.passes().stream().skip(1).anyMatch(pass -> pass.pause().isPresent());
  }

  /** The hottest that a pass of the case starts at, K. */
  public static double warmest(WeldCase weldCase) {
    return weldCase.passes().stream().mapToDouble(Pass::startTemperature).max().orElseThrow();
  }
}
