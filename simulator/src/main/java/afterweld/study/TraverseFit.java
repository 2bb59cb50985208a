package afterweld.study;

import afterweld.quantity.Check;
import afterweld.section.WeldSession;
import afterweld.study.HardnessTraverse.Point;
import afterweld.thermal.HeatInputException;
import afterweld.weld.WeldCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * A measured hardness traverse against a case: which arc efficiency, base hardness and zero of the
 * traverse bring the prediction closest, and how well each is known.
 *
 * <p>The base hardness scales the whole profile. What the traverse cannot tell stays fixed, with
 * the reason: the base where the outermost points are not as hard as the base is predicted, the
 * centre where only one side was measured, and one of any two values that move together
 * (correlation over 0.95 or condition number over 30). A fit that does not settle, or ends at the
 * limit of a value, gives nothing. A bead width in the case counts as one more measurement, give or
 * take 0.5 mm. Kinetics are never freed: without a thermocouple they cannot be told from the
 * efficiency.
 *
 * @param traverse what was measured
 * @param before prediction of the case as written, HV, at the points
 * @param after fitted prediction, HV, at the points
 * @param fit the fit; empty if nothing could be identified
 * @param refusals what was not fitted, and why
 * @param rmsBefore root mean square of the deviations before, HV
 * @param rmsAfter the same after, HV
 * @param heldOut root mean square deviation of every fifth point from a fit to the others, HV; NaN
 *     if there are too few or that fit does not settle
 * @param runs whether the residuals change sign as by chance
 * @param efficiencies fitted efficiency of every pass
 * @param curve the fitted profile for drawing
 * @param warnings what must be known before it is used
 */
public record TraverseFit(
    HardnessTraverse traverse,
    List<Double> before,
    List<Double> after,
    Optional<RobustFit> fit,
    List<String> refusals,
    double rmsBefore,
    double rmsAfter,
    double heldOut,
    RunsTest runs,
    List<Double> efficiencies,
    List<CurvePoint> curve,
    List<String> warnings) {
  /** Name of the arc efficiency. */
  public static final String EFFICIENCY = "arc efficiency";

  /** Name of the base hardness. */
  public static final String BASE = "base hardness";

  /** Name of the distance of the traverse's zero from the weld centre. */
  public static final String OFFSET = "centre offset";

  /** An efficiency that is told no better is not told (assumed). */
  private static final double USELESS = 0.10;

  /** Step of the efficiency in the search (numerics). */
  private static final double EFFICIENCY_STEP = 0.05;

  /** Variance over that of the indents from which on the line has another shape (assumed). */
  private static final double MISFIT = 2;

  /**
   * Mean square of a level line's readings about their mean, in variances of an indent, at most.
   */
  private static final double LEVEL = 1.5;

  private static final double WEEK = 7 * 86400.0;
  private static final int HOLD_OUT = 5;
  private static final int CURVE_POINTS = 161;

  /** Step of the Jacobian in steps of the parameters: finer would see the stations one by one. */
  private static final double DIFFERENCE = 0.05;

  /** Copies the lists. */
  public TraverseFit {
    before = List.copyOf(before);
    after = List.copyOf(after);
    refusals = List.copyOf(refusals);
    efficiencies = List.copyOf(efficiencies);
    curve = List.copyOf(curve);
    warnings = List.copyOf(warnings);
  }

  /**
   * One place of the two profiles.
   *
   * @param distance m from the traverse's own zero
   * @param before HV as written; NaN where not predicted
   * @param after HV as fitted; NaN where not predicted
   */
  public record CurvePoint(double distance, double before, double after) {
    /** Refuses what it cannot be. */
    public CurvePoint {
      Check.finite("distance", distance, "m");
    }
  }

  /**
   * Fits a case whose last state is the one measured.
   *
   * @param session where welds that were computed are kept
   * @throws HeatInputException if the case makes no weld
   * @throws IllegalArgumentException if the traverse has faults
   * @throws UnpredictedPoints if it crosses metal whose hardness is not predicted
   */
  public static TraverseFit of(WeldSession session, WeldCase weldCase, HardnessTraverse traverse) {
    if (!traverse.faults().isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", traverse.faults()));
    }
    TraverseModel model = new TraverseModel(session, weldCase);
    List<Point> points = traverse.points();
    double[] hardness = model.hardness(model.ownEfficiency(), Work.distances(points));
    List<Point> without =
        IntStream.range(0, points.size())
            .filter(k -> Double.isNaN(hardness[k]))
            .mapToObj(points::get)
            .toList();
    if (!without.isEmpty()) {
      throw new UnpredictedPoints(without, points.size());
    }
    return new Work(weldCase, traverse, model).fit();
  }

  /** Why the ranges of the fit are not to be trusted; empty if they are, or nothing is fitted. */
  public Optional<String> misfit() {
    return misfit(fit);
  }

  private static Optional<String> misfit(Optional<RobustFit> fit) {
    return fit.map(RobustFit::s2)
        .filter(s2 -> s2 > MISFIT)
        .map(
            s2 ->
                String.format(
                    Locale.ROOT,
                    "The points lie %.1f times as far from the fitted line as indents scatter:"
                        + " the prediction has another shape here, do not trust the ranges.",
                    Math.sqrt(s2)));
  }

  private record Work(WeldCase weldCase, HardnessTraverse traverse, TraverseModel model) {

    TraverseFit fit() {
      List<String> refusals = new ArrayList<>();
      List<FitParameter> free = free(refusals);
      RobustFit fit = fitted(free, traverse.points());
      while (free.size() > 1 && EntangledValues.in(fit)) {
        EntangledValues values = EntangledValues.of(fit);
        if (values.fixed() == 0) {
          break;
        }
        free.remove(values.fixed());
        refusals.add(values.words());
        fit = fitted(free, traverse.points());
      }
      Optional<String> objection = objection(free, fit);
      refusals.addAll(
          objection.map(List::of).orElse(readings().offTheLine(scale(free, fit.values()))));
      return result(objection.isEmpty() ? Optional.of(fit) : Optional.empty(), free, refusals);
    }

    /** Why nothing is taken from a fit; empty if it holds. */
    private Optional<String> objection(List<FitParameter> free, RobustFit fit) {
      if (level()) {
        return Optional.of(
            "The traverse is level within what indents scatter: it shows no softened zone, and"
                + " nothing is taken from it.");
      }
      if (!fit.settled()) {
        return Optional.of("The fit did not settle: nothing is taken from it.");
      }
      if (fit.estimates().get(0).deviation() > USELESS || !toldByPoints(free, fit)) {
        return Optional.of(
            "The traverse does not tell the arc efficiency: does it cross the softened zone?");
      }
      return fit.estimates().stream()
          .filter(RobustFit.Estimate::atLimit)
          .findFirst()
          .map(Work::limitWords);
    }

    private static String limitWords(RobustFit.Estimate one) {
      FitParameter parameter = one.parameter();
      boolean high = one.value() - parameter.low() > parameter.high() - one.value();
      return FitParameter.capital(parameter.name())
          + " is at its limit, "
          + parameter.words(high ? parameter.high() : parameter.low())
          + ": nothing is taken from this fit. Do alloy, temper, thickness,"
          + " current, travel speed and the traverse's zero belong to this weld?";
    }

    /** Whether all points are one hardness as far as indents can tell. */
    private boolean level() {
      List<Point> points = traverse.points();
      double mean = points.stream().mapToDouble(Point::hardness).average().orElseThrow();
      double squares =
          points.stream()
              .mapToDouble(point -> Math.pow((point.hardness() - mean) / point.deviation(), 2))
              .average()
              .orElseThrow();
      return squares < LEVEL;
    }

    /** Whether the points tell the efficiency by themselves: a bead width alone is no traverse. */
    private boolean toldByPoints(List<FitParameter> free, RobustFit fit) {
      double[] places = distances(traverse.points());
      double[] values = fit.values();
      double[] up = values.clone();
      double[] down = values.clone();
      up[0] = Math.min(free.get(0).high(), up[0] + EFFICIENCY_STEP);
      down[0] = Math.max(free.get(0).low(), down[0] - EFFICIENCY_STEP);
      values[0] = (up[0] + down[0]) / 2;
      double[] changes =
          Slopes.onBothSides(
              predicted(free, down, places),
              predicted(free, values, places),
              predicted(free, up, places));
      double squares = 0;
      for (int k = 0; k < changes.length; k++) {
        squares += Math.pow(2 * changes[k] / traverse.points().get(k).deviation(), 2);
      }
      return (up[0] - down[0]) / Math.sqrt(squares) <= USELESS;
    }

    private List<FitParameter> free(List<String> refusals) {
      double own = model.ownEfficiency();
      double low = Math.min(model.lowestEfficiency(), own - 0.02);
      double high = Math.max(TraverseModel.HIGHEST_EFFICIENCY, own + 0.02);
      List<FitParameter> free = new ArrayList<>();
      free.add(new FitParameter(EFFICIENCY, "", own, low, high, 0.1));
      double base = model.baseHardness(own);
      Optional<String> astray = readings().astray();
      if (astray.isEmpty()) {
        free.add(new FitParameter(BASE, "HV", base, 0.6 * base, 1.5 * base, 10));
      } else {
        refusals.add("Base hardness stays as predicted: " + astray.get());
      }
      if (traverse.twoSided()) {
        free.add(new FitParameter(OFFSET, "m", 0, -5e-3, 5e-3, 1e-3));
      } else {
        refusals.add("The centre stays at 0: the traverse lies on one side of it.");
      }
      return free;
    }

    private RobustFit fitted(List<FitParameter> free, List<Point> points) {
      List<FitParameter> fixed = List.copyOf(free);
      UnaryOperator<double[]> residuals = values -> residuals(fixed, values, points);
      return RobustFit.of(fixed, residuals, DIFFERENCE);
    }

    private double[] residuals(List<FitParameter> free, double[] values, List<Point> points) {
      double[] predicted = predicted(free, values, distances(points));
      int extra = model.measuredWidth().isPresent() ? 1 : 0;
      double[] residuals = new double[points.size() + extra];
      for (int k = 0; k < points.size(); k++) {
        residuals[k] = (predicted[k] - points.get(k).hardness()) / points.get(k).deviation();
      }
      if (extra == 1) {
        double width = model.measuredWidth().getAsDouble();
        residuals[points.size()] = (model.beadWidth(values[0]) - width) / 0.5e-3;
      }
      return residuals;
    }

    private static double[] distances(List<Point> points) {
      return points.stream().mapToDouble(Point::distance).toArray();
    }

    private double[] predicted(List<FitParameter> free, double[] values, double[] distances) {
      double scale = scale(free, values);
      double offset = value(free, values, OFFSET, 0);
      double[] places = Arrays.stream(distances).map(distance -> distance - offset).toArray();
      return Arrays.stream(model.hardness(values[0], places)).map(hv -> scale * hv).toArray();
    }

    /** What the base hardness raises or lowers the whole line by. */
    private double scale(List<FitParameter> free, double[] values) {
      double own = model.baseHardness(values[0]);
      return value(free, values, BASE, own) / own;
    }

    private BaseReadings readings() {
      return new BaseReadings(traverse, model);
    }

    private static double value(
        List<FitParameter> free, double[] values, String name, double otherwise) {
      return IntStream.range(0, free.size())
          .filter(i -> free.get(i).name().equals(name))
          .mapToDouble(i -> values[i])
          .findFirst()
          .orElse(otherwise);
    }

    private TraverseFit result(
        Optional<RobustFit> fit, List<FitParameter> free, List<String> refusals) {
      double[] places = distances(traverse.points());
      double[] before = model.hardness(model.ownEfficiency(), places);
      double[] after = fit.map(found -> predicted(free, found.values(), places)).orElse(before);
      double efficiency = fit.map(found -> found.values()[0]).orElse(model.ownEfficiency());
      return new TraverseFit(
          traverse,
          Arrays.stream(before).boxed().toList(),
          Arrays.stream(after).boxed().toList(),
          fit,
          refusals,
          rms(traverse.points(), before),
          rms(traverse.points(), after),
          fit.isPresent() ? heldOut(free) : Double.NaN,
          RunsTest.of(differences(after)),
          model.efficiencies(efficiency),
          curve(free, fit),
          warnings(fit));
    }

    private double[] differences(double[] predicted) {
      return IntStream.range(0, predicted.length)
          .mapToDouble(k -> traverse.points().get(k).hardness() - predicted[k])
          .toArray();
    }

    private static double rms(List<Point> points, double[] predicted) {
      double squares = 0;
      for (int k = 0; k < predicted.length; k++) {
        squares += Math.pow(points.get(k).hardness() - predicted[k], 2) / predicted.length;
      }
      return Math.sqrt(squares);
    }

    private double heldOut(List<FitParameter> free) {
      List<Point> kept = new ArrayList<>();
      List<Point> out = new ArrayList<>();
      for (int k = 0; k < traverse.points().size(); k++) {
        (k % HOLD_OUT == HOLD_OUT / 2 ? out : kept).add(traverse.points().get(k));
      }
      if (kept.size() <= free.size() + 1) {
        return Double.NaN;
      }
      RobustFit others = fitted(free, kept);
      return others.settled()
          ? rms(out, predicted(free, others.values(), distances(out)))
          : Double.NaN;
    }

    private List<CurvePoint> curve(List<FitParameter> free, Optional<RobustFit> fit) {
      List<Point> points = traverse.points();
      double from = points.get(0).distance();
      double to = points.get(points.size() - 1).distance();
      double[] places =
          IntStream.range(0, CURVE_POINTS)
              .mapToDouble(i -> from + (to - from) * i / (CURVE_POINTS - 1))
              .toArray();
      double[] before = model.hardness(model.ownEfficiency(), places);
      double[] after = fit.map(found -> predicted(free, found.values(), places)).orElse(before);
      return IntStream.range(0, CURVE_POINTS)
          .mapToObj(i -> new CurvePoint(places[i], before[i], after[i]))
          .toList();
    }

    private List<String> warnings(Optional<RobustFit> fit) {
      List<String> warnings = new ArrayList<>();
      misfit(fit).ifPresent(warnings::add);
      boolean ages =
          weldCase.left().alloy().heatTreatable() || weldCase.right().alloy().heatTreatable();
      if (ages && weldCase.afterWeld().isEmpty() && weldCase.naturalAge() < WEEK) {
        warnings.add(
            "Hardness of a heat-treatable alloy settles in about a week after welding: natural_age"
                + " must say when the traverse was measured.");
      }
      warnings.add(
          "The fitted arc efficiency holds for this alloy, process and thickness and for heat inputs within 25 %"
              + " of this one.");
      return warnings;
    }
  }
}
