package afterweld.metallurgy;

import afterweld.material.Source;
import afterweld.material.Status;
import afterweld.quantity.UnitSystem;
import java.util.Map;

/**
 * How fast a work-hardened alloy recovers and recrystallizes.
 *
 * @param recoveryEnergy U, J/mol
 * @param recrystallizationEnergy Q, J/mol
 * @param halfTemperature at which half is recrystallized in an hour, K
 * @param referenceStress yield above the annealed value that the rate of recrystallization refers
 *     to, Pa
 * @param source where the constants come from
 */
public record SofteningKinetics(
    double recoveryEnergy,
    double recrystallizationEnergy,
    double halfTemperature,
    double referenceStress,
    Source source) {

  private static final Source BY_HAND =
      new Source(
          "set by hand on published annealing temperatures and activation energies (Vandermeer and"
              + " Hansen 2008; Bhaumik et al. 2007; annealing practice)",
          Status.ASSUMED);
  private static final Source LIKE_5083 = new Source("as 5083", Status.ASSUMED);
  private static final Source LIKE_5052 = new Source("as 5052", Status.ASSUMED);

  private static final Map<String, SofteningKinetics> BY_ALLOY =
      Map.of(
          "1100", of(185e3, 220e3, 272, 83e6, BY_HAND),
          "3003", of(195e3, 245e3, 306, 104e6, BY_HAND),
          "5052", of(185e3, 220e3, 272, 124e6, BY_HAND),
          "5083", of(180e3, 205e3, 264, 83e6, BY_HAND),
          "5086", of(180e3, 205e3, 264, 83e6, LIKE_5083),
          "5454", of(185e3, 220e3, 272, 124e6, LIKE_5052));

  private static SofteningKinetics of(
      double recovery, double recrystallization, double celsius, double stress, Source source) {
    return new SofteningKinetics(
        recovery, recrystallization, celsius + UnitSystem.ZERO_CELSIUS, stress, source);
  }

  /**
   * The kinetics of a library alloy.
   *
   * @throws IllegalArgumentException if the alloy is not work-hardened
   */
  public static SofteningKinetics of(String alloy) {
    SofteningKinetics kinetics = BY_ALLOY.get(alloy);
    if (kinetics == null) {
      throw new IllegalArgumentException("no softening kinetics of " + alloy);
    }
    return kinetics;
  }
}
