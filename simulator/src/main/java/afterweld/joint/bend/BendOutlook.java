package afterweld.joint.bend;

import afterweld.quantity.BothUnits;
import afterweld.section.Zone;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * What the computed strip says about a guided bend of it in one state, for a sound weld. Only metal
 * that stretches evenly as far as the test asks is called likely to pass: a bend does not neck, so
 * where it asks more nothing is known, and the test decides. Nor is anything known of metal whose
 * stretch is not predicted.
 *
 * @param state place in the profile's list of states
 * @param wrapped outlook in a wrap-around jig, where every place gets the same radius
 * @param plunged outlook under a plunger, where the soft band takes more than its share
 * @param text a sentence for people, without the name of the state
 */
public record BendOutlook(int state, Word wrapped, Word plunged, String text) {
  /** How it looks. */
  public enum Word {
    LIKELY("likely to pass"),
    OPEN("open");

    private final String label;

    Word(String label) {
      this.label = label;
    }

    /** The words used in results. */
    public String label() {
      return label;
    }

    private static Word of(double asked, double stretch) {
      return asked <= stretch ? LIKELY : OPEN;
    }
  }

  /**
   * The outlook of one state.
   *
   * @param thickness of the plate, m
   */
  static BendOutlook of(BendTest test, BentState bent, double thickness) {
    SpecimenBend specimen = SpecimenBend.of(test, bent.line(), thickness);
    if (bent.stretch().isEmpty()) {
      return unknown(bent, specimen);
    }
    double asked = specimen.asked();
    double plunger = specimen.kink() * asked;
    Word wrapped = Word.of(asked, specimen.least().strain());
    Word plunged = Word.of(plunger, specimen.sharpest().strain());
    String text =
        String.format(
            Locale.ROOT,
            "in a wrap-around jig %s: the test asks %.1f %% of the outer surface, every metal round"
                + " the former stretches evenly by at least %.1f %% (%s). Under a plunger %s: the sharpest"
                + " place (%s) takes about %.1f times its share, %.1f %%, and stretches evenly by %.1f"
                + " %%",
            wrapped.label(),
            100 * asked,
            100 * specimen.least().strain(),
            metal(specimen.least().zone()),
            plunged.label(),
            metal(specimen.sharpest().zone()),
            specimen.kink(),
            100 * plunger,
            100 * specimen.sharpest().strain());
    return new BendOutlook(bent.state(), wrapped, plunged, text);
  }

  private static BendOutlook unknown(BentState bent, SpecimenBend specimen) {
    String text =
        String.format(
            Locale.ROOT,
            "%s in a wrap-around jig and under a plunger: the test asks %.1f %% of the outer surface,"
                + " about %.1f times that at the sharpest place under a plunger; %s",
            Word.OPEN.label(),
            100 * specimen.asked(),
            specimen.kink(),
            bent.noStretch());
    return new BendOutlook(bent.state(), Word.OPEN, Word.OPEN, text);
  }

  private static String metal(String zone) {
    return zone.equals(Zone.FUSION.label()) ? "weld metal" : zone;
  }

  /** What the test of a weld asks, in words. */
  static String asks(BendTest test, double thickness) {
    boolean cut = test.specimen().isPresent() && test.specimen().getAsDouble() < thickness;
    return String.format(
        Locale.ROOT,
        "%s, %s: a former of %s thicknesses%s, %s (%s: %s)",
        test.code(),
        test.metals(),
        new BigDecimal(test.formerThicknesses())
            .setScale(2, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString(),
        cut ? " of a specimen cut to " + BothUnits.length(test.specimen().getAsDouble()) : "",
        BothUnits.length(test.formerDiameter(thickness)),
        test.source(),
        test.status());
  }
}
