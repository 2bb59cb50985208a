package afterweld.metallurgy;

import static afterweld.metallurgy.CoarsePhases.EQUILIBRIUM;
import static afterweld.metallurgy.CoarsePhases.GROUP_COUNT;

import afterweld.material.Composition;
import java.util.Arrays;

/**
 * The state of an alloy that precipitates of magnesium and silicon harden. Immutable, made by a
 * {@link PrecipitationModel}.
 *
 * <p>Amounts of precipitate are formula units Mg2Si per atom of metal; {@link #volumeFraction}
 * turns them into volume.
 */
public final class PrecipitateState implements State {
  private final Metal metal;
  private final double[] needles;
  private final double[] coarse;
  private final double[] coarseNumbers;
  private final Scalars scalars;

  /**
   * What the state consists of beside its populations.
   *
   * @param total formula units in all precipitates, per atom
   * @param siliconPhase atoms per atom
   * @param clusters degree, 0 to 1
   * @param spheroidisation 0 to 1
   * @param step length of time that the next step of the computation would have, s
   */
  record Scalars(
      double total, double siliconPhase, double clusters, double spheroidisation, double step) {}

  PrecipitateState(
      Metal metal, double[] needles, double[] coarse, double[] coarseNumbers, Scalars scalars) {
    this.metal = metal;
    this.needles = needles;
    this.coarse = coarse;
    this.coarseNumbers = coarseNumbers;
    this.scalars = scalars;
  }

  Metal metal() {
    return metal;
  }

  Scalars scalars() {
    return scalars;
  }

  NeedlePopulation needlePopulation() {
    return new NeedlePopulation(metal.classes(), needles);
  }

  CoarsePopulations coarsePopulations() {
    return new CoarsePopulations(metal.budget(), coarse, coarseNumbers);
  }

  /** What the metal is made of. */
  public Composition composition() {
    return metal.budget().composition();
  }

  /** Whether the metal started as solidified, with eutectic silicon. */
  public boolean cast() {
    return metal.cast();
  }

  /** Magnesium in solution, wt%. */
  public double matrixMagnesium() {
    return metal.budget().matrixMagnesium(scalars.total());
  }

  /** Silicon in solution, wt%. */
  public double matrixSilicon() {
    return metal.budget().matrixSilicon(scalars.total(), scalars.siliconPhase());
  }

  /** Most formula units that could form, per atom. */
  public double hardeningSolute() {
    return metal.budget().hardening();
  }

  /** Formula units in the hardening needles (β″), per atom. */
  public double needleUnits() {
    return NeedlePopulation.formulaUnits(metal.classes(), needles);
  }

  /** Formula units in the intermediate phases (β′), per atom. */
  public double intermediateUnits() {
    return Arrays.stream(coarse, 0, GROUP_COUNT).sum();
  }

  /** Formula units in the equilibrium phase (β), per atom. */
  public double equilibriumUnits() {
    return coarse[EQUILIBRIUM];
  }

  /** Formula units in all precipitates, per atom. */
  public double totalUnits() {
    return scalars.total();
  }

  /** Silicon as a phase of its own, atoms per atom. */
  public double siliconPhase() {
    return scalars.siliconPhase();
  }

  /** Degree of clustering by natural ageing, 0 to 1. */
  public double clusterDegree() {
    return scalars.clusters();
  }

  /** How far the eutectic silicon is rounded, 0 to 1; 1 in wrought metal. */
  public double spheroidisation() {
    return scalars.spheroidisation();
  }

  /** Mean radius of the needles, m. */
  public double meanNeedleRadius() {
    return needles().meanRadius();
  }

  /** Number of needles, 1/m³. */
  public double needleNumberDensity() {
    return needles().numberDensity();
  }

  /** The needles by size. */
  public SizeDistribution needles() {
    return new SizeDistribution(metal.classes().radius, needles);
  }

  /** The groups of the intermediate phases, each with its mean radius. */
  public SizeDistribution intermediate() {
    return coarseDistribution(0, GROUP_COUNT);
  }

  /** The equilibrium phase with its mean radius. */
  public SizeDistribution equilibrium() {
    return coarseDistribution(EQUILIBRIUM, EQUILIBRIUM + 1);
  }

  private SizeDistribution coarseDistribution(int from, int to) {
    double[] radius = new double[to - from];
    for (int j = from; j < to; j++) {
      radius[j - from] = Math.cbrt(CoarsePhases.meanCube(coarse[j], coarseNumbers[j]));
    }
    return new SizeDistribution(radius, Arrays.copyOfRange(coarseNumbers, from, to));
  }

  /** Share of the volume that so many formula units per atom fill. */
  public static double volumeFraction(double formulaUnits) {
    return formulaUnits / SoluteBudget.PURE_PRECIPITATE;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PrecipitateState that
        && cast() == that.cast()
        && composition().equals(that.composition())
        && scalars.equals(that.scalars)
        && Arrays.equals(needles, that.needles)
        && Arrays.equals(coarse, that.coarse)
        && Arrays.equals(coarseNumbers, that.coarseNumbers);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(needles) + scalars.hashCode();
  }
}
