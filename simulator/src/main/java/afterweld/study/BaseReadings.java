package afterweld.study;

import afterweld.section.Estimate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the outermost readings of a traverse say of the base. Softened metal may be as even as the
 * base: only the level tells them apart, within the band of the prediction and two standard
 * deviations of the measured mean.
 */
record BaseReadings(HardnessTraverse traverse, TraverseModel model) {
  private static final double DEVIATIONS = 2;

  /** Why neither end of the traverse shows the base; empty if one does. */
  Optional<String> astray() {
    List<HardnessTraverse.Level> levels = traverse.outerLevels();
    if (levels.isEmpty()) {
      return Optional.of(
          "the last three points agree within 8 HV on neither side, so the traverse does not"
              + " reach the base.");
    }
    return levels.stream().anyMatch(this::isBase)
        ? Optional.empty()
        : Optional.of(
            levels.stream()
                    .map(this::astray)
                    .collect(Collectors.joining(" and ", "the last three points agree on ", ""))
                + ". They lie in softened metal, or alloy or temper is another: the traverse does"
                + " not reach the base.");
  }

  private boolean isBase(HardnessTraverse.Level level) {
    Estimate base = model.base(level.left());
    double about = DEVIATIONS * level.deviation();
    return level.hardness() > base.low().hardness() - about
        && level.hardness() < base.high().hardness() + about;
  }

  private String astray(HardnessTraverse.Level level) {
    Estimate base = model.base(level.left());
    return String.format(
        Locale.ROOT,
        "%.0f HV on the %s, where the base is predicted at %.0f to %.0f HV",
        level.hardness(),
        side(level),
        base.low().hardness(),
        base.high().hardness());
  }

  /**
   * Where the base reads otherwise than the fitted line has it, which is drawn through all points.
   *
   * @param scale what the fit raises or lowers the predicted line by
   */
  List<String> offTheLine(double scale) {
    return traverse.outerLevels().stream()
        .filter(this::isBase)
        .filter(
            level ->
                Math.abs(level.hardness() - fitted(level, scale)) > DEVIATIONS * level.deviation())
        .map(level -> off(level, fitted(level, scale)))
        .toList();
  }

  private double fitted(HardnessTraverse.Level level, double scale) {
    return scale * model.base(level.left()).middle().hardness();
  }

  private static String off(HardnessTraverse.Level level, double fitted) {
    return String.format(
        Locale.ROOT,
        "The last three points on the %s read %.0f HV, the fitted line is at %.0f HV there: its"
            + " level is that of all points together. For the base go by those three.",
        side(level),
        level.hardness(),
        fitted);
  }

  private static String side(HardnessTraverse.Level level) {
    return level.left() ? "left" : "right";
  }
}
