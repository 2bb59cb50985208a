package afterweld.metallurgy;

/**
 * One step of time: short enough that temperature and diffusivity are one number each.
 *
 * @param temperature in its middle, K
 * @param duration s
 * @param diffusivity m²/s
 */
record Interval(double temperature, double duration, double diffusivity) {

  static Interval of(double temperature, double duration) {
    return new Interval(temperature, duration, Diffusion.diffusivity(temperature));
  }

  /**
   * {@code 3 D dt / q_p}: what a particle's cubed radius gains per radius and concentration, m².
   */
  double growth() {
    return 3 * diffusivity * duration / SoluteBudget.PURE_PRECIPITATE;
  }
}
