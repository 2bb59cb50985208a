package afterweld.metallurgy;

import static afterweld.metallurgy.PrecipitationParameters.SEEDS_FROM_CLUSTERS;
import static afterweld.metallurgy.PrecipitationParameters.SEEDS_FROM_NEEDLES;

import afterweld.thermal.TemperatureHistory;

/**
 * All parts of a precipitating metal marching through a history together. The order of the parts
 * within one step of time belongs to the model: nucleation from the old matrix, growth and
 * dissolution in the new one, then seeds, sites, coarsening, silicon, clusters.
 *
 * <p>Mutable and for one thread: lives only inside one call that follows a history.
 */
final class Precipitation {
  private static final double EXCHANGE_FLOOR = 0.1;
  private static final double EXCHANGE_WEIGHT = 8;

  private final Metal metal;
  private final SoluteBudget budget;
  private final StepControl control;
  private final MassBalance balance;
  private final NeedlePopulation needles;
  private final CoarsePopulations coarse;
  private double total;
  private double siliconPhase;
  private double clusters;
  private double spheroidisation;

  Precipitation(PrecipitateState state, NumericalSettings settings) {
    metal = state.metal();
    budget = metal.budget();
    PrecipitateState.Scalars scalars = state.scalars();
    control = new StepControl(settings, budget.hardening(), scalars.step());
    balance = new MassBalance(budget.most());
    needles = state.needlePopulation();
    coarse = state.coarsePopulations();
    total = scalars.total();
    siliconPhase = scalars.siliconPhase();
    clusters = scalars.clusters();
    spheroidisation = scalars.spheroidisation();
  }

  PrecipitateState state() {
    return new PrecipitateState(
        metal,
        needles.numbers(),
        coarse.quantities(),
        coarse.numbers(),
        new PrecipitateState.Scalars(
            total, siliconPhase, clusters, spheroidisation, control.next()));
  }

  void follow(TemperatureHistory history) {
    for (int i = 1; i < history.size(); i++) {
      double duration = history.time(i) - history.time(i - 1);
      if (duration > 0) {
        followPiece(duration, history.temperature(i - 1), history.temperature(i));
      }
    }
  }

  private void followPiece(double duration, double from, double to) {
    control.beginPiece(from, to);
    double rate = (to - from) / duration;
    double elapsed = 0;
    while (elapsed < duration) {
      double rest = duration - elapsed;
      double temperature = from + rate * elapsed;
      double step = control.stepWithin(rest, temperature, Math.abs(rate));
      if (advance(Interval.of(temperature + rate * step / 2, step))) {
        elapsed = step == rest ? duration : elapsed + step;
      }
    }
  }

  /** One step of time; false if it was too long and has been taken back. */
  private boolean advance(Interval step) {
    double totalBefore = total;
    double needlesBefore = needles.total();
    needles.remember();
    coarse.remember();
    NeedleNucleation nuclei = grow(step);
    double change =
        control.change(
            nuclei, needlesBefore, total - totalBefore, coarse.intermediateGain(), exchange(step));
    if (!control.accepts(change, step.duration())) {
      takeBack(totalBefore);
      return false;
    }
    followUp(step, matrix());
    return true;
  }

  private double matrix() {
    return budget.concentration(total, siliconPhase);
  }

  private double exchange(Interval step) {
    double thereToExchange = total + EXCHANGE_FLOOR * budget.hardening();
    return needles.grossExchange(step.growth(), matrix()) / (EXCHANGE_WEIGHT * thereToExchange);
  }

  private void takeBack(double totalBefore) {
    needles.restore();
    coarse.restore();
    total = totalBefore;
  }

  /** Nucleation from the old matrix, then growth and dissolution in the new one. */
  private NeedleNucleation grow(Interval step) {
    double growth = step.growth();
    double oldMatrix = matrix();
    NeedleNucleation nuclei = NeedleNucleation.in(metal.classes(), step, oldMatrix, clusters);
    needles.add(nuclei);
    needles.setTemperature(step.temperature());
    coarse.prepare(step);
    needles.sharpen(growth, oldMatrix);
    total = balance.solve(q -> grown(growth, budget.concentration(q, siliconPhase)), total);
    needles.accept();
    coarse.accept();
    return nuclei;
  }

  private double grown(double growth, double c) {
    return needles.afterTransport(growth, c) + coarse.afterGrowth(c);
  }

  private void followUp(Interval step, double matrix) {
    coarse.seed(SEEDS_FROM_NEEDLES.value() * needles.dissolved(step.growth(), matrix));
    coarse.loseSites(step, matrix);
    coarse.coarsen(step, matrix);
    siliconPhase = SiliconPhase.after(step, budget, metal.cast(), siliconPhase, total);
    double before = clusters;
    clusters = Clusters.after(step, before);
    coarse.seed(SEEDS_FROM_CLUSTERS.value() * Math.max(0, before - clusters));
    spheroidisation = Spheroidisation.after(step, spheroidisation);
  }
}
