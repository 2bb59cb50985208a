package afterweld.joint;

import afterweld.quantity.BothUnits;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What the reader of a cross-weld tension result must know. */
final class TensionWarnings {
  /** Offset of the middles, of the thinner part, that is no step (assumed). */
  private static final double SAME_THICKNESS = 0.02;

  private TensionWarnings() {}

  static void checkCovers(SliceLine line, double gauge) {
    if (line.from() > -gauge / 2 + 1e-9 || line.to() < gauge / 2 - 1e-9) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "gauge length %.1f mm: the profile reaches only from %.1f to %.1f mm",
              gauge * 1e3,
              line.from() * 1e3,
              line.to() * 1e3));
    }
  }

  static List<Warning> of(
      SliceLine line, TensionCoupon coupon, SeriesPull pull, CrossWeldTension.Failure failure) {
    List<Warning> warnings = new ArrayList<>(doubtfulMetals(line, pull));
    addShortGauge(warnings, line, coupon.gauge());
    addUndecided(warnings, failure);
    addStep(warnings, line);
    return warnings;
  }

  private static List<Warning> doubtfulMetals(SliceLine line, SeriesPull pull) {
    Map<String, Warning> first = new LinkedHashMap<>();
    for (int i = 0; i < line.slices().size(); i++) {
      line.slices()
          .get(i)
          .metal()
          .warnings(pull.law(i))
          .forEach(warning -> first.putIfAbsent(warning.code(), warning));
    }
    return List.copyOf(first.values());
  }

  private static void addShortGauge(List<Warning> warnings, SliceLine line, double gauge) {
    double soft = line.softBand().width();
    double needed = soft + 2 * line.referenceSection();
    if (soft > 0 && gauge < needed) {
      warnings.add(
          new Warning(
              "short-gauge",
              "the gauge length does not span the softened band with a thickness on each side: proof"
                  + " and elongation are those of the metal that lies in the gauge, and another"
                  + " gauge would read otherwise"));
    }
  }

  private static void addUndecided(List<Warning> warnings, CrossWeldTension.Failure failure) {
    if (failure.undecided()) {
      warnings.add(
          new Warning(
              "failure-undecided",
              "may break in the "
                  + String.join(" or the ", failure.zones())
                  + " zone: within 2 %"));
    }
  }

  private static void addStep(List<Warning> warnings, SliceLine line) {
    double thin = line.referenceSection();
    double eccentricity = Math.abs(line.left().thickness() - line.right().thickness()) / 2;
    if (2 * eccentricity > SAME_THICKNESS * thin) {
      warnings.add(
          new Warning(
              "eccentric-pull",
              String.format(
                  Locale.ROOT,
                  "unequal thickness: flush on one face the pull is %s off centre and adds up to"
                      + " %.1f times the nominal stress at the edge; not in these numbers",
                  BothUnits.length(eccentricity),
                  6 * eccentricity / thin)));
    }
  }
}
