package afterweld.metallurgy;

/**
 * How finely the precipitation model computes. The constants were fitted at {@link #DEFAULT}: other
 * settings show how far a result depends on them and are not meant for answers.
 *
 * @param needleClasses number of radii of the needle distribution, at least 10
 * @param tolerance largest share of the hardening solute that moves in one step of time, 0 to 0.1
 * @param temperatureStep largest change of temperature in one step of time above 120 °C, K; five
 *     times as much below
 */
public record NumericalSettings(int needleClasses, double tolerance, double temperatureStep) {
  /** 100 radii, 1 %, 3 K. */
  public static final NumericalSettings DEFAULT = new NumericalSettings(100, 0.01, 3);

  /** Checks that the model can compute with them. */
  public NumericalSettings {
    if (needleClasses < 10 || !(tolerance > 0 && tolerance <= 0.1) || !(temperatureStep > 0)) {
      throw new IllegalArgumentException(
          needleClasses + " classes, tolerance " + tolerance + ", " + temperatureStep + " K");
    }
  }
}
