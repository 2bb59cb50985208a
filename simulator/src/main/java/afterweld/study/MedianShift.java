package afterweld.study;

import afterweld.quantity.Check;
import afterweld.weld.WeldCase;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * How far the middle of the joints that a shop welds lies from the joint as written, and which
 * inputs pull it there: each group of inputs drawn alone, the others held.
 *
 * @param predicted tensile strength of the joint as written, Pa
 * @param middle half of the joints are weaker, Pa
 * @param pulls the groups that alone move it a good part of the way, strongest first; empty where
 *     it hardly moves or none does
 */
public record MedianShift(double predicted, double middle, List<Pull> pulls) {
  /** A shift under this share is none (assumed). */
  public static final double NOTICED = 0.02;

  /** Part of the way that a group must move the middle by itself to be named; assumed. */
  private static final double WORTH_NAMING = 0.25;

  private static final int DRAWS = 9;

  /** Copies the list. */
  public MedianShift {
    Check.positive("tensile strength", predicted, "Pa");
    Check.positive("tensile strength", middle, "Pa");
    pulls = List.copyOf(pulls);
  }

  /**
   * What a group of inputs does on its own.
   *
   * @param input name of the group
   * @param shift of the middle, Pa
   */
  public record Pull(String input, double shift) {
    /** Refuses what it cannot be. */
    public Pull {
      Check.said("input", input);
      Check.finite("shift", shift, "Pa");
    }
  }

  /** Whether the middle lies noticeably off. */
  public boolean noticed() {
    return Math.abs(middle - predicted) > NOTICED * predicted;
  }

  /**
   * The same with what pulls.
   *
   * @param bare without
   * @param tensile strength of a drawn case, Pa; NaN if it makes no weld
   */
  static MedianShift of(
      MedianShift bare,
      WeldCase weldCase,
      List<UncertainInput> inputs,
      long seed,
      ToDoubleFunction<WeldCase> tensile) {
    if (!bare.noticed()) {
      return bare;
    }
    double[][] shares = LatinHypercube.shares(DRAWS, inputs.size(), seed);
    double held = tensile.applyAsDouble(weldCase);
    List<Pull> all =
        inputs.stream()
            .map(UncertainInput::group)
            .distinct()
            .map(group -> new Pull(group, alone(weldCase, inputs, group, shares, tensile) - held))
            .toList();
    return new MedianShift(bare.predicted, bare.middle, strongest(all, bare));
  }

  private static List<Pull> strongest(List<Pull> all, MedianShift bare) {
    double shift = bare.middle - bare.predicted;
    double sign = Math.signum(shift);
    return all.stream()
        .filter(pull -> sign * pull.shift() > WORTH_NAMING * Math.abs(shift))
        .sorted(Comparator.comparingDouble((Pull pull) -> sign * pull.shift()).reversed())
        .toList();
  }

  private static double alone(
      WeldCase weldCase,
      List<UncertainInput> inputs,
      String group,
      double[][] shares,
      ToDoubleFunction<WeldCase> tensile) {
    double[] values =
        IntStream.range(0, DRAWS)
            .parallel()
            .mapToObj(
                draw -> {
                  WeldCase drawn = weldCase;
                  for (int i = 0; i < inputs.size(); i++) {
                    if (inputs.get(i).group().equals(group)) {
                      drawn = inputs.get(i).at(drawn, shares[i][draw]);
                    }
                  }
                  return drawn;
                })
            .mapToDouble(tensile)
            .filter(Double::isFinite)
            .toArray();
    return Quantiles.of(values).p50();
  }
}
