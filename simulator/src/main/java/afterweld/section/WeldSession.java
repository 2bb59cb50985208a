package afterweld.section;

import afterweld.material.MaterialLibrary;
import afterweld.section.heat.Kept;
import afterweld.section.heat.SolvedShells;
import afterweld.section.soundness.Soundness;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.PassHeat;
import afterweld.thermal.PeakMap;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The one place where what was computed of welds is kept for whoever asks next: fields of small
 * parts, heat, stations as welded and whole profiles, each by all that it depends on, the last few
 * of them. The commands on a case, its studies and the classroom share one, so that nothing is
 * computed twice on the way to a picture. What comes out does not depend on what is kept; failures
 * are not. May be used by several threads at once.
 *
 * <pre>{@code
 * WeldSession session = new WeldSession();
 * SectionProfile profile = session.profile(weldCase);
 * SectionProfile aged = session.profile(weldCase.withAfterWeld(steps));   // not welded again
 * }</pre>
 */
public final class WeldSession {
  private static final int MOST_WELDS = 12;
  private static final int MOST_PROFILES = 12;

  private final MaterialLibrary library;
  private final SolvedShells solved = new SolvedShells();
  private final Kept<WeldCase, SectionRun> welds = new Kept<>(MOST_WELDS);
  private final Kept<WeldCase, SectionProfile> profiles = new Kept<>(MOST_PROFILES);
  private final Kept<WeldCase, Soundness> soundness = new Kept<>(MOST_PROFILES);

  /** A session with the fillers that come with the simulator. */
  public WeldSession() {
    this(MaterialLibrary.standard());
  }

  /**
   * A session that keeps nothing yet.
   *
   * @param library whose fillers are compared
   */
  public WeldSession(MaterialLibrary library) {
    this.library = library;
  }

  /** Whose fillers are compared. */
  public MaterialLibrary library() {
    return library;
  }

  /**
   * The profile before welding, as welded and after heat treatment.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public SectionProfile profile(WeldCase weldCase) {
    return profiles
        .find(weldCase)
        .orElseGet(() -> profiles.keep(weldCase, weld(weldCase).profile(weldCase, () -> false)));
  }

  /**
   * The same with a state after every step of the heat treatment.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public SectionProfile profileOfEveryStage(WeldCase weldCase) {
    return weld(weldCase).everyStage(weldCase);
  }

  /**
   * The profile before welding, as welded and after heat treatment at fewer stations and with no
   * runs at the ends of defaults: for studies that repeat it many times.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public SectionProfile thinProfile(WeldCase weldCase) {
    return weld(weldCase).thin(weldCase);
  }

  /**
   * Whether the weld of a case is a joint, from its heat and few of its stations.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public Soundness soundness(WeldCase weldCase) {
    return soundness
        .find(weldCase)
        .orElseGet(
            () ->
                soundness.keep(
                    weldCase, weld(weldCase).preview(weldCase, () -> false).soundness()));
  }

  /**
   * The heat of the passes alone.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public List<PassHeat> heats(WeldCase weldCase) {
    return weld(weldCase).heat().heats();
  }

  /**
   * Peak temperatures of the whole part; empty where the steady field of wide plates is used.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public Optional<PeakMap> peaks(WeldCase weldCase) {
    return weld(weldCase).heat().peaks();
  }

  /**
   * The weld of a case along its way; empty where it has no start and end that count, or was not
   * followed in time.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public Optional<AlongWeld> along(WeldCase weldCase) {
    return AlongWeld.of(weldCase, () -> weld(weldCase).heat());
  }

  /**
   * Other metals in the pool of a case's weld.
   *
   * @throws HeatInputException if the passes cannot make this weld
   */
  public WeldMetalTrial weldMetal(WeldCase weldCase) {
    return WeldMetalTrial.of(weldCase, weld(weldCase).heat());
  }

  /**
   * Sections near that of a case.
   *
   * @throws HeatInputException if its passes cannot make the weld
   */
  public NearbySections near(WeldCase weldCase) {
    return new NearbySections(weld(weldCase).heat());
  }

  /** The weld of a case, to be looked at again and again. */
  public SectionRun weld(WeldCase weldCase) {
    WeldCase alone = weldCase.weldAlone();
    return welds.find(alone).orElseGet(() -> welds.keep(alone, new SectionRun(alone, solved)));
  }

  /** The welds that are kept, the one that was asked for last first. */
  public Stream<SectionRun> welds() {
    return welds.values();
  }
}
