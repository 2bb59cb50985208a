package afterweld.section;

import afterweld.section.heat.CaseHeat;
import afterweld.section.heat.MeltDown;
import afterweld.strength.Strength;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.thermal.StationTimeline;
import afterweld.thermal.WeldCourse.Place;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import afterweld.weld.WeldCase;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/**
 * How a weld that starts and ends differs along its way: the peak temperature of the whole part,
 * the section as welded near the start, half way and near the end, and what another fall of the
 * current would change. Power is taken as proportional to the current.
 *
 * @param ring whether the weld meets its start
 * @param stated the sections with the current of the case
 * @param other the sections with the same current half way and another fall: constant where the
 *     case takes the current back, else so that the bead gets no wider from half way on; empty
 *     where the end gets no hotter, and where a long seam is followed in part only
 */
public record AlongWeld(boolean ring, Sections stated, Optional<Sections> other) {
  /** Share of the current from which on it need not fall (assumed). */
  private static final double NO_NEED = 0.98;

  /** Narrowest over widest of a bead that is called even [assumed]. */
  private static final double EVEN = 0.8;

  private static final List<Place> PLACES = List.of(Place.START, Place.MIDDLE, Place.END);

  /**
   * Sections of a weld.
   *
   * @param endCurrent current at the end over that at the start
   * @param passes heat of each pass at the start
   * @param peaks of the whole part
   * @param places start, half way, end
   */
  public record Sections(
      double endCurrent, List<PassHeat> passes, PeakMap peaks, List<AtPlace> places) {
    /** Copies the lists. */
    public Sections {
      passes = List.copyOf(passes);
      places = List.copyOf(places);
    }

    /** Whether no bead forms at its start. */
    public boolean startsCold() {
      return places.get(0).beadWidth() < MeltDown.NO_BEAD;
    }

    /** Whether no bead is left at its end. */
    public boolean endsCold() {
      return end().beadWidth() < MeltDown.NO_BEAD;
    }

    /** Whether its narrowest bead is nearly as wide as its widest. */
    public boolean even() {
      DoubleSummaryStatistics beads =
          places.stream().mapToDouble(AtPlace::beadWidth).summaryStatistics();
      return beads.getMin() >= EVEN * beads.getMax();
    }

    /** The last pass, as it starts. */
    public Pass lastPass() {
      return passes.get(passes.size() - 1).pass();
    }

    /** The section near the end. */
    public AtPlace end() {
      return places.get(places.size() - 1);
    }
  }

  /**
   * A section of the weld.
   *
   * @param place where
   * @param fromStart m from the start of the weld
   * @param beadWidth of the last pass on the arc side, m
   * @param left heat of the left side there
   * @param right heat of the right side there
   * @param profile before welding and as welded, with few stations and without the bands of default
   *     inputs; of the other fall of the current at the end only
   */
  public record AtPlace(
      Place place,
      double fromStart,
      double beadWidth,
      StationTimeline left,
      StationTimeline right,
      Optional<SectionProfile> profile) {
    private static final int AS_WELDED = 1;

    /**
     * Distance between the outer edges of what got hot enough to lose strength, m.
     *
     * @param section of the same weld: its thresholds hold where the place has no profile
     */
    public double softened(SectionProfile section) {
      Softening softening = profile.orElse(section).softening();
      return reach(left, softening.left(), softening.right())
          + reach(right, softening.right(), softening.left());
    }

    /**
     * A leg that softened to its end knows no threshold: the other side's is taken if it is lower.
     */
    private static double reach(
        StationTimeline heat, Softening.OfSide own, Softening.OfSide other) {
      if (!own.any()) {
        return 0;
      }
      boolean lower = own.throughout() && other.threshold() && other.from() < own.from();
      return heat.reach(lower ? other.from() : own.from());
    }

    /** The lowest predicted value as welded; NaN where the place has no profile. */
    public double lowest(ToDoubleFunction<Strength> quantity) {
      return profile.map(section -> lowest(section, quantity)).orElse(Double.NaN);
    }

    /** The same of a profile; NaN where none is predicted. */
    public static double lowest(SectionProfile profile, ToDoubleFunction<Strength> quantity) {
      return profile.stations().stream()
          .map(station -> station.estimates().get(AS_WELDED).middle())
          .mapToDouble(quantity)
          .filter(Double::isFinite)
          .min()
          .orElse(Double.NaN);
    }
  }

  /** The name of a place on this weld. */
  public String label(Place place) {
    return ring ? Ring.label(place) : Seam.label(place);
  }

  /**
   * The weld of a case along its way; empty where it has no start and end that count, or was not
   * followed in time.
   *
   * @param its heat of the weld, when it is wanted
   * @throws HeatInputException if the passes cannot make this weld
   */
  static Optional<AlongWeld> of(WeldCase weldCase, Supplier<CaseHeat> its) {
    if (!weldCase.course().ends()) {
      return Optional.empty();
    }
    CaseHeat heat = its.get();
    return heat.peaks().map(peaks -> of(weldCase.withAfterWeld(List.of()), heat));
  }

  private static AlongWeld of(WeldCase asWelded, CaseHeat heat) {
    CompletableFuture<Optional<Sections>> other =
        CompletableFuture.supplyAsync(() -> other(asWelded, heat));
    Sections stated = sections(asWelded, heat, asWelded.course().endPower(), PLACES);
    return new AlongWeld(asWelded.course().ring(), stated, other.join());
  }

  private static Optional<Sections> other(WeldCase asWelded, CaseHeat heat) {
    boolean constant = asWelded.course().endPower() == 1;
    if (heat.peaks().orElseThrow().length() < asWelded.course().length()) {
      return Optional.empty();
    }
    try {
      double share = constant ? heat.evenEndCurrent() : 1;
      return constant && share > NO_NEED
          ? Optional.empty()
          : Optional.of(sections(asWelded, heat.withEndCurrent(share), share, List.of(Place.END)));
    } catch (HeatInputException burnsThrough) {
      return Optional.empty();
    }
  }

  /** Sections, with profiles at some of the places. */
  private static Sections sections(
      WeldCase asWelded, CaseHeat heat, double endCurrent, List<Place> computed) {
    List<AtPlace> places =
        PLACES.stream()
            .map(place -> section(asWelded, heat, place, computed.contains(place)))
            .toList();
    return new Sections(endCurrent, heat.heats(), heat.peaks().orElseThrow(), places);
  }

  private static AtPlace section(WeldCase asWelded, CaseHeat heat, Place place, boolean computed) {
    CaseHeat there = heat.at(place);
    Optional<SectionProfile> profile =
        computed ? Optional.of(thin(asWelded, there)) : Optional.empty();
    return new AtPlace(
        place,
        heat.peaks().orElseThrow().fromStart(place),
        heat.beadWidth(place),
        there.left(),
        there.right(),
        profile);
  }

  private static SectionProfile thin(WeldCase asWelded, CaseHeat there) {
    WeldMemory memory = WeldMemory.of(there);
    return new SectionSimulation(asWelded, false, StationDensity.THIN, memory, () -> false)
        .profile();
  }
}
