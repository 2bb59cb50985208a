package afterweld.metallurgy;

/**
 * The state of metal that cold work has hardened. Immutable.
 *
 * @param start yield above the annealed value before any softening, Pa
 * @param unrecovered what recovery has left of it, Pa
 * @param extent extent of recrystallization B; the recrystallized share is 1 - exp(-B²)
 */
public record StoredWorkState(double start, double unrecovered, double extent) implements State {
  /** Checks that recovery only takes away. */
  public StoredWorkState {
    if (!(start >= 0 && unrecovered >= 0 && unrecovered <= start && extent >= 0)) {
      throw new IllegalArgumentException(start + ", " + unrecovered + " Pa, B " + extent);
    }
  }

  /** Share of the metal that is recrystallized, 0 to 1. */
  public double recrystallized() {
    return 1 - Math.exp(-extent * extent);
  }

  /** Yield above the annealed value that is left, Pa. */
  public double hardening() {
    return unrecovered * (1 - recrystallized());
  }
}
