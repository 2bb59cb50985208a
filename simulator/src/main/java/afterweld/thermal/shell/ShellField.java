package afterweld.thermal.shell;

import afterweld.thermal.SurfaceLoss;
import java.util.Arrays;

/**
 * The temperature of thin-walled parts around their weld while it changes: two-dimensional in every
 * leg, even through its thickness. Each cell keeps its heat
 *
 * <pre>
 * A dx dH/dt = flows along + flows across + source − loss,   H(T) with the heat of fusion
 * </pre>
 *
 * and a step solves for the change δ of temperature over all cells by alternating directions
 * (Douglas), with the sensible heat capacity C only:
 *
 * <pre>
 * R = dt (all flows, source, loss at the old temperatures)
 * (C − θ dt A_along) δ* = R,   (C − θ dt A_across) δ = C δ*,   A dx ΔH = C δ,   T = T(H)
 * </pre>
 *
 * <p>Heat is kept to rounding, whatever the step. With the heat of fusion inside C the scheme can
 * blow up; with it in H it does not. Mutable and for one thread. SI units and kelvin.
 *
 * <p>Source: J. Douglas, Numer. Math. 4 (1962) 41, in delta form.
 */
final class ShellField {
  private static final double THETA = 0.55;
  private static final double EMISSIVITY = 0.1;
  private static final double STEFAN_BOLTZMANN = 5.670374419e-8;

  private final ShellLines lines;
  private final double film;
  private final double emission;
  private final double ambient;
  private final boolean ring;
  private final int places;
  private final double spacing;
  private final double[][] temperature;
  private final double[][] heat;
  private final double[][] change;
  private final double[][] capacity;
  private final double[][] conductivity;
  private final double[][] across;
  private final double[][] pivot;
  private final ShellSweep sweep;
  private double lost;

  ShellField(ShellGrid grid, ShellLines lines, SurfaceLoss loss, double start) {
    this.lines = lines;
    this.film = loss.filmCoefficient();
    this.emission = loss.radiation() ? EMISSIVITY * STEFAN_BOLTZMANN : 0;
    this.ambient = loss.ambient();
    this.ring = grid.ring();
    this.places = grid.places();
    this.spacing = grid.spacing();
    this.temperature = net();
    this.heat = net();
    this.change = net();
    this.capacity = net();
    this.conductivity = net();
    this.across = net();
    this.pivot = net();
    this.sweep = new ShellSweep(places, ring);
    fill(start);
  }

  private double[][] net() {
    return new double[lines.count()][places];
  }

  /** A state to come back to. */
  static final class Snapshot {
    private final double[][] temperature;
    private final double[][] heat;
    private final double lost;

    private Snapshot(double[][] temperature, double[][] heat, double lost) {
      this.temperature = copy(temperature);
      this.heat = copy(heat);
      this.lost = lost;
    }
  }

  Snapshot snapshot() {
    return new Snapshot(temperature, heat, lost);
  }

  /** Brings every cell to one temperature, K. */
  void fill(double degrees) {
    for (int line = 0; line < lines.count(); line++) {
      Arrays.fill(temperature[line], degrees);
      Arrays.fill(heat[line], lines.metal(line).heat(degrees));
    }
  }

  void restore(Snapshot state) {
    for (int line = 0; line < lines.count(); line++) {
      System.arraycopy(state.temperature[line], 0, temperature[line], 0, places);
      System.arraycopy(state.heat[line], 0, heat[line], 0, places);
    }
    lost = state.lost;
  }

  private static double[][] copy(double[][] values) {
    return Arrays.stream(values).map(double[]::clone).toArray(double[][]::new);
  }

  /** Temperatures along one line, K; not to be changed. */
  double[] line(int line) {
    return temperature[line];
  }

  /** Heat content of the whole, J, from the lower end of the metals' tables. */
  double content() {
    double sum = 0;
    for (int line = 0; line < lines.count(); line++) {
      sum += lines.area(line) * spacing * Arrays.stream(heat[line]).sum();
    }
    return sum;
  }

  /** Heat given to the air so far, J. */
  double lost() {
    return lost;
  }

  /** Highest temperature, K; NaN if a cell has none. */
  double hottest() {
    double highest = 0;
    for (double[] line : temperature) {
      for (double value : line) {
        highest = value <= highest ? highest : value;
      }
    }
    return highest;
  }

  /** One step of time without a source. */
  void step(double dt) {
    step(dt, new double[places], new double[lines.count()]);
  }

  /**
   * One step of time.
   *
   * @param dt s
   * @param along heat put into each place in this step, J
   * @param share of each line in it
   */
  void step(double dt, double[] along, double[] share) {
    for (int line = 0; line < lines.count(); line++) {
      gains(line, dt, along, share[line]);
    }
    for (int line = 1; line < lines.count(); line++) {
      flowAcross(line, lines.inner(line), dt);
    }
    for (int line = 0; line < lines.count(); line++) {
      double factor = THETA * dt * lines.area(line) / spacing;
      sweep.solve(capacity[line], conductivity[line], factor, change[line]);
    }
    solveAcross(THETA * dt);
    for (int line = 0; line < lines.count(); line++) {
      accept(line);
    }
  }

  /** What a line gains from the source and along itself and loses to the air, J. */
  private void gains(int line, double dt, double[] along, double share) {
    double[] gain = change[line];
    double[] degrees = temperature[line];
    double volume = lines.area(line) * spacing;
    lines.metal(line).properties(degrees, volume, capacity[line], conductivity[line]);
    double surface = 2 * lines.face(line) * spacing * dt;
    for (int i = 0; i < places; i++) {
      double given = surface * given(degrees[i]);
      lost += given;
      gain[i] = along[i] * share - given;
    }
    double factor = dt * lines.area(line) / spacing / 2;
    double[] conducting = conductivity[line];
    for (int i = ring ? 0 : 1; i < places; i++) {
      int before = i == 0 ? places - 1 : i - 1;
      double mean = conducting[before] + conducting[i];
      double flow = factor * mean * (degrees[i] - degrees[before]);
      gain[before] += flow;
      gain[i] -= flow;
    }
  }

  /** Heat that one face gives to the air, W/m². */
  private double given(double degrees) {
    double radiation = emission * (degrees * degrees + ambient * ambient) * (degrees + ambient);
    return (film + radiation) * (degrees - ambient);
  }

  private void flowAcross(int line, int inner, double dt) {
    double half = lines.conductance(line) / 2;
    double[] conducting = conductivity[line];
    double[] conductingInside = conductivity[inner];
    double[] link = across[line];
    double[] here = temperature[line];
    double[] inside = temperature[inner];
    double[] gain = change[line];
    double[] gainInside = change[inner];
    for (int i = 0; i < places; i++) {
      link[i] = half * (conductingInside[i] + conducting[i]);
      double flow = dt * link[i] * (inside[i] - here[i]);
      gain[i] += flow;
      gainInside[i] -= flow;
    }
  }

  /** Eliminates every leg from its outer end to the shared line, then goes back outwards. */
  private void solveAcross(double factor) {
    for (int line = 0; line < lines.count(); line++) {
      double[] own = capacity[line];
      double[] wanted = change[line];
      System.arraycopy(own, 0, pivot[line], 0, places);
      for (int i = 0; i < places; i++) {
        wanted[i] *= own[i];
      }
    }
    for (int line = lines.count() - 1; line > 0; line--) {
      eliminate(line, lines.inner(line), factor);
    }
    for (int i = 0; i < places; i++) {
      change[0][i] /= pivot[0][i];
    }
    for (int line = 1; line < lines.count(); line++) {
      back(line, lines.inner(line), factor);
    }
  }

  private void eliminate(int line, int inside, double factor) {
    double[] link = across[line];
    double[] own = pivot[line];
    double[] ownInside = pivot[inside];
    double[] wanted = change[line];
    double[] wantedInside = change[inside];
    for (int i = 0; i < places; i++) {
      double coupling = factor * link[i];
      own[i] += coupling;
      double share = coupling / own[i];
      ownInside[i] += coupling - share * coupling;
      wantedInside[i] += share * wanted[i];
    }
  }

  private void back(int line, int inside, double factor) {
    double[] link = across[line];
    double[] own = pivot[line];
    double[] found = change[line];
    double[] foundInside = change[inside];
    for (int i = 0; i < places; i++) {
      found[i] = (found[i] + factor * link[i] * foundInside[i]) / own[i];
    }
  }

  private void accept(int line) {
    ShellMetal metal = lines.metal(line);
    double perVolume = 1 / (lines.area(line) * spacing);
    double[] content = heat[line];
    double[] own = capacity[line];
    double[] found = change[line];
    double[] degrees = temperature[line];
    for (int i = 0; i < places; i++) {
      content[i] += own[i] * found[i] * perVolume;
      degrees[i] = metal.temperature(content[i], degrees[i]);
    }
  }
}
