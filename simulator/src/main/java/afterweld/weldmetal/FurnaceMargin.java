package afterweld.weldmetal;

import afterweld.thermal.furnace.FurnaceHistory;

/**
 * How near to melting a furnace may be set: its own uniformity and a margin of 5 K (assumed) below
 * the lowest solidus.
 */
public final class FurnaceMargin {
  /** Uniformity of a furnace at its set temperature, K either way. */
  public static final double TOLERANCE = FurnaceHistory.UNIFORMITY;

  /** Margin between the hottest place of the furnace and the lowest solidus, K. */
  public static final double MARGIN = 5;

  /** A temperature in whole °F, or in whole °C, is never more than this off the one meant, K. */
  private static final double ROUNDED = 0.3;

  private FurnaceMargin() {}

  /** Whether a furnace may be set so hot, K, with metal of that lowest solidus in it, K. */
  public static boolean allows(double temperature, double solidus) {
    return temperature <= highestSetting(solidus) + ROUNDED;
  }

  /**
   * The highest set temperature, K.
   *
   * @param solidus lowest of the metals in the furnace, K
   */
  public static double highestSetting(double solidus) {
    return solidus - TOLERANCE - MARGIN;
  }
}
