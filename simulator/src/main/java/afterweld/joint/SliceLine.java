package afterweld.joint;

import afterweld.quantity.Check;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The line across the weld cut into slices that touch, from left to right. Beyond its ends the base
 * goes on unchanged.
 *
 * @param slices at least one
 * @param leftBase metal that the left side is held against: its base before the weld changed it
 * @param rightBase the same on the right
 */
public record SliceLine(List<Slice> slices, SliceMetal leftBase, SliceMetal rightBase) {
  /** Longest slice unless another length is asked for, m (numerics). */
  public static final double LONGEST_SLICE = 0.5e-3;

  /** Share of the base's proof stress below which metal counts as softened (definition). */
  static final double SOFT_BELOW = 0.98;

  private static final int FEWEST_STATIONS = 5;
  private static final double GAP = 1e-9;

  /** A line whose ends are base. */
  public SliceLine(List<Slice> slices) {
    this(slices, first(slices).metal(), slices.get(slices.size() - 1).metal());
  }

  private static Slice first(List<Slice> slices) {
    if (slices.isEmpty()) {
      throw new IllegalArgumentException("a line needs a slice");
    }
    return slices.get(0);
  }

  /** Copies the list; refuses an empty line and slices that don't touch. */
  public SliceLine {
    slices = List.copyOf(slices);
    first(slices);
    for (int i = 1; i < slices.size(); i++) {
      if (Math.abs(slices.get(i).from() - slices.get(i - 1).to()) > GAP) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "slices don't touch at %.4f mm: order them from left to right without a gap",
                slices.get(i).from() * 1e3));
      }
    }
  }

  /** One unwelded metal over a length (m) centred on 0. */
  public static SliceLine uniform(double length, double thickness, String zone, SliceMetal metal) {
    return new SliceLine(List.of(Slice.sound(-length / 2, length / 2, thickness, zone, metal)));
  }

  /** Slices of at most {@link #LONGEST_SLICE} through a line of stations. */
  public static SliceLine through(List<StrengthStation> stations) {
    return through(stations, LONGEST_SLICE);
  }

  /**
   * Slices through a line of stations, with faces at every station and halfway between two stations
   * of different zones. Inside a zone everything runs straight from station to station; across a
   * change of zone each keeps its last station's values, so weld metal isn't smeared into its
   * neighbours. The thickness is that of the stations: give the plate's, and the result is the
   * joint with its bead dressed flush.
   *
   * @param stations at least 5, by increasing distance
   * @param longest longest slice, m
   * @throws IllegalArgumentException if there are too few stations or they are out of order
   */
  public static SliceLine through(List<StrengthStation> stations, double longest) {
    Check.positive("longest slice", longest, "m");
    checkOrder(stations);
    List<Slice> slices = new ArrayList<>();
    for (int i = 1; i < stations.size(); i++) {
      StrengthStation left = stations.get(i - 1);
      StrengthStation right = stations.get(i);
      if (left.zone().equals(right.zone())) {
        addRamp(slices, left, right, longest);
      } else {
        double middle = 0.5 * (left.distance() + right.distance());
        addPlateau(slices, left, left.distance(), middle, longest);
        addPlateau(slices, right, middle, right.distance(), longest);
      }
    }
    return new SliceLine(slices);
  }

  private static void checkOrder(List<StrengthStation> stations) {
    if (stations.size() < FEWEST_STATIONS) {
      throw new IllegalArgumentException(
          stations.size() + " stations: at least " + FEWEST_STATIONS + " make a profile");
    }
    for (int i = 1; i < stations.size(); i++) {
      if (!(stations.get(i).distance() > stations.get(i - 1).distance())) {
        throw new IllegalArgumentException(
            String.format(
                Locale.ROOT,
                "station at %.4f mm: distances must increase",
                stations.get(i).distance() * 1e3));
      }
    }
  }

  private static void addRamp(
      List<Slice> slices, StrengthStation left, StrengthStation right, double longest) {
    double length = right.distance() - left.distance();
    int pieces = pieces(length, longest);
    for (int k = 0; k < pieces; k++) {
      double share = (k + 0.5) / pieces;
      slices.add(
          Slice.sound(
              left.distance() + length * k / pieces,
              left.distance() + length * (k + 1) / pieces,
              left.thickness() + share * (right.thickness() - left.thickness()),
              left.zone(),
              left.metal().towards(right.metal(), share)));
    }
  }

  private static void addPlateau(
      List<Slice> slices, StrengthStation station, double from, double to, double longest) {
    Slice whole = Slice.sound(from, to, station.thickness(), station.zone(), station.metal());
    addPieces(slices, whole, longest);
  }

  private static void addPieces(List<Slice> slices, Slice whole, double longest) {
    int pieces = pieces(whole.length(), longest);
    for (int k = 0; k < pieces; k++) {
      slices.add(
          whole.between(
              whole.from() + whole.length() * k / pieces,
              whole.from() + whole.length() * (k + 1) / pieces));
    }
  }

  private static int pieces(double length, double longest) {
    return Math.max(1, (int) Math.ceil(length / longest - 1e-6));
  }

  /**
   * The joint as deposited: the bead's height over the whole of one zone. The real cap is lower at
   * its toes, so this is the upper side of what the bead adds.
   *
   * @param height of the bead above flush, m, at least 0
   * @param fusionZone name of the zone the bead lies on
   */
  public SliceLine withReinforcement(double height, String fusionZone) {
    Check.within("reinforcement", height, 0, Double.MAX_VALUE, "m");
    return with(
        slices.stream().map(s -> s.zone().equals(fusionZone) ? s.thicker(height) : s).toList());
  }

  /** The same line under one name: what was not welded yet has no zones. */
  SliceLine all(String zone) {
    return with(slices.stream().map(slice -> slice.inZone(zone)).toList());
  }

  /** The line of a specimen that is cut down to a thickness, m; no slice gets thicker. */
  public SliceLine cutTo(double most) {
    return with(slices.stream().map(slice -> slice.cutTo(most)).toList());
  }

  /** The same line with no slice longer than given, m. */
  public SliceLine refined(double longest) {
    List<Slice> fine = new ArrayList<>();
    slices.forEach(slice -> addPieces(fine, slice, longest));
    return with(fine);
  }

  /** The line cut, or the base on both ends continued, to a length (m) centred on the weld. */
  public SliceLine over(double length) {
    double end = Check.positive("length", length, "m") / 2;
    List<Slice> kept = new ArrayList<>();
    if (from() > -end + GAP) {
      kept.add(left().between(-end, from()));
    }
    for (Slice slice : slices) {
      if (slice.overlap(-end, end) > 0) {
        kept.add(slice.between(Math.max(slice.from(), -end), Math.min(slice.to(), end)));
      }
    }
    if (to() < end - GAP) {
      kept.add(right().between(to(), end));
    }
    return with(kept);
  }

  /**
   * The same line held against other bases, where they are stronger than its ends: metal that was
   * softened from end to end is not its own measure.
   */
  public SliceLine against(SliceMetal left, SliceMetal right) {
    return new SliceLine(slices, stronger(left().metal(), left), stronger(right().metal(), right));
  }

  private static SliceMetal stronger(SliceMetal here, SliceMetal before) {
    return before.tensile() > here.tensile() ? before : here;
  }

  private SliceLine with(List<Slice> others) {
    return new SliceLine(others, leftBase, rightBase);
  }

  /** Left end, m from the weld centre. */
  public double from() {
    return left().from();
  }

  /** Right end, m from the weld centre. */
  public double to() {
    return right().to();
  }

  /** Outermost slice on the left: the base there. */
  public Slice left() {
    return slices.get(0);
  }

  /** Outermost slice on the right: the base there. */
  public Slice right() {
    return slices.get(slices.size() - 1);
  }

  /** Section that stresses refer to, per metre of width: the thinner end, m. */
  public double referenceSection() {
    return Math.min(left().thickness(), right().thickness());
  }

  /**
   * From the first to the last slice whose proof stress is more than 2 % below the base of its
   * side, m from the weld centre; two equal places if there is none.
   */
  public Band softBand() {
    double low = Double.NaN;
    double high = Double.NaN;
    for (Slice slice : slices) {
      SliceMetal base = slice.centre() < 0 ? leftBase : rightBase;
      if (slice.metal().proof() < SOFT_BELOW * base.proof()) {
        low = Double.isNaN(low) ? slice.from() : low;
        high = slice.to();
      }
    }
    return Double.isNaN(low) ? new Band(0, 0) : new Band(low, high);
  }

  /**
   * Two ends that belong together.
   *
   * @param low lower end
   * @param high upper end
   */
  public record Band(double low, double high) {
    /** Refuses what it cannot be. */
    public Band {
      Check.rising("band", low, high);
    }

    /** High less low. */
    public double width() {
      return high - low;
    }
  }
}
