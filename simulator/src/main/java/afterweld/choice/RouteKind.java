package afterweld.choice;

import afterweld.choice.practice.StandardTreatment;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The ways to make a welded part of a heat-treatable alloy. A full treatment is solution treatment,
 * quench and ageing.
 */
enum RouteKind {
  LEAVE("weld as delivered and leave", Optional.empty(), Treatment.NONE, 1),
  AGE("weld as delivered, then age", Optional.empty(), Treatment.AGE, 2),
  T4_AGE("weld in T4, then age", Optional.of("T4"), Treatment.AGE, 2),
  T4_FULL("weld in T4, then full treatment", Optional.of("T4"), Treatment.FULL, 4),
  ANNEALED_FULL("weld annealed, then full treatment", Optional.of("O"), Treatment.FULL, 4),
  T6_FULL("weld in T6, then full treatment", Optional.of("T6"), Treatment.FULL, 4),
  OWN("the case's own schedule", Optional.empty(), Treatment.OWN, 0);

  private final String label;
  private final Optional<String> temper;
  private final Treatment treatment;
  private final int steps;

  RouteKind(String label, Optional<String> temper, Treatment treatment, int steps) {
    this.label = label;
    this.temper = temper;
    this.treatment = treatment;
    this.steps = steps;
  }

  private enum Treatment {
    NONE,
    AGE,
    FULL,
    OWN
  }

  /** The route that the case itself orders. */
  static RouteKind asWritten(WeldCase weldCase) {
    return weldCase.afterWeld().isEmpty() ? LEAVE : OWN;
  }

  String label() {
    return label;
  }

  /** Temper the parts are welded in; empty means as in the case. */
  Optional<String> temper() {
    return temper;
  }

  /**
   * Number of steps for the shop, a whole number that only orders routes: welding, each that a
   * furnace or a quench takes, and one more to get parts in another temper than they come in.
   */
  int steps(WeldCase weldCase) {
    if (this == OWN) {
      return 1 + (int) weldCase.afterWeld().stream().filter(RouteKind::byHand).count();
    }
    return steps + (anotherTemper(weldCase) ? 1 : 0);
  }

  private static boolean byHand(FurnaceStep step) {
    return !(step instanceof FurnaceStep.NaturalAge);
  }

  private boolean anotherTemper(WeldCase weldCase) {
    return Stream.of(weldCase.left(), weldCase.right())
        .filter(side -> side.alloy().heatTreatable())
        .anyMatch(side -> temper.filter(name -> !name.equals(side.temper().name())).isPresent());
  }

  /** The steps after welding; empty if the route does not exist for this case. */
  Optional<List<FurnaceStep>> treatment(WeldCase weldCase) {
    return switch (treatment) {
      case NONE -> Optional.of(List.of());
      case AGE -> StandardTreatment.ageOnly(weldCase);
      case FULL -> StandardTreatment.full(weldCase);
      case OWN ->
          weldCase.afterWeld().isEmpty() ? Optional.empty() : Optional.of(weldCase.afterWeld());
    };
  }
}
