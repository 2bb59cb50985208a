package afterweld;

import afterweld.casefile.CaseFile;
import afterweld.casefile.TraverseReader;
import afterweld.choice.CaseObjections;
import afterweld.choice.FurnaceSheet;
import afterweld.choice.RequirementCheck;
import afterweld.choice.RouteStudy;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.choice.filler.FillerComparison;
import afterweld.document.AgeingJson;
import afterweld.document.BendJson;
import afterweld.document.FillerJson;
import afterweld.document.Notices;
import afterweld.document.ProfileJson;
import afterweld.document.ResultCautions;
import afterweld.document.RouteJson;
import afterweld.document.SpreadJson;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.bend.BendReport;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.Cautions;
import afterweld.section.SectionProfile;
import afterweld.section.WeldSession;
import afterweld.section.soundness.Soundness;
import afterweld.study.AgeingStudy;
import afterweld.study.GridStudy;
import afterweld.study.HardnessTraverse;
import afterweld.study.JointAgeing;
import afterweld.study.SpreadRunner;
import afterweld.study.SpreadSettings;
import afterweld.study.SpreadStudy;
import afterweld.study.TraverseFit;
import afterweld.thermal.HeatInputException;
import afterweld.weld.WeldCase;
import java.util.List;
import java.util.Optional;

/**
 * The questions that can be asked about one case, each answered once for every command and every
 * program. Answers are immutable, in SI units and kelvin; JSON texts are metric, with the keys of
 * the command of that name.
 */
public final class CaseSession {
  private final WeldSession kept;
  private final CaseFile asked;

  private CaseSession(WeldSession kept, CaseFile asked) {
    this.kept = kept;
    this.asked = asked;
  }

  /**
   * A session whose heat nobody has tried: what needs it throws {@link
   * afterweld.thermal.HeatInputException} where the passes cannot make the weld.
   *
   * @param kept where what is computed of welds is kept
   */
  public static CaseSession of(WeldSession kept, CaseFile asked) {
    return new CaseSession(kept, asked);
  }

  /** The case. */
  public CaseFile caseFile() {
    return asked;
  }

  private WeldCase weld() {
    return asked.weld();
  }

  /** Whether the weld is a joint, and what would help it. */
  public Soundness soundness() {
    return kept.soundness(weld());
  }

  /** What stands against filler and heat treatment. */
  public List<Objection> objections() {
    return CaseObjections.of(weld(), asked.requirement());
  }

  /** Before welding, as welded and after heat treatment: stations, zones, weld metal, warnings. */
  public SectionProfile profile() {
    return withPressure(kept.profile(weld()));
  }

  /** The same with a state after every step of the heat treatment. */
  public SectionProfile profileOfEveryStage() {
    return withPressure(kept.profileOfEveryStage(weld()));
  }

  private SectionProfile withPressure(SectionProfile profile) {
    return underPressure() ? profile.underPressure() : profile;
  }

  /** Whether it is about a ring or a tube. */
  public boolean underPressure() {
    return weld().ring().isPresent() || asked.joint().tube().isPresent();
  }

  /** The weld along its way; empty where it has no start and end that count. */
  public Optional<AlongWeld> along() {
    return kept.along(weld());
  }

  /** What the joint carries in every state. */
  public JointReport joint() {
    return JointReport.of(profile(), asked.joint());
  }

  /**
   * How the case as written stands against what it requires.
   *
   * @param units of the numbers in its reasons
   */
  public Judgement judgement(UnitSystem units) {
    SectionProfile profile = profile();
    JointStrength finished = JointReport.finished(profile, asked.joint().gauge());
    return RequirementCheck.of(profile, finished, asked.requirement()).judgement(units);
  }

  /** Every filler of the library held against the joint; strengths only where it is one. */
  public FillerComparison fillers() {
    FillerComparison comparison = FillerComparison.of(kept, weld(), asked.requirement());
    return profile().soundness().comparesFillers() ? comparison : comparison.withoutStrengths();
  }

  /** Whether the weld lacks more than another filler could give it, so that none is ranked. */
  public boolean ranksNoFiller() {
    Soundness soundness = soundness();
    return soundness.notSound()
        && !soundness.comparesFillers()
        && weld().filler().alloy().isPresent();
  }

  /** Weld before or after heat treatment: every route of the case, judged and ranked. */
  public RouteStudy routes() {
    return RouteStudy.of(kept, weld(), asked.joint(), asked.requirement(), asked.routes());
  }

  /**
   * The furnace sheet; empty where the case names no treatment and its bases answer to none.
   *
   * @param first the system of units that leads
   */
  public Optional<FurnaceSheet> sheet(UnitSystem first) {
    return FurnaceSheet.of(weld(), asked.requirement(), first, kept::profile);
  }

  /** Bends of a strip cut across the weld. */
  public BendReport bend() {
    return BendReport.of(profile(), asked.joint().bend());
  }

  /** What ageing makes of the metals of the joint. */
  public AgeingStudy ageing() {
    return AgeingStudy.of(kept, weld());
  }

  /** What other ageing would make of the joint. */
  public JointAgeing jointAgeing() {
    return JointAgeing.of(kept, weld(), asked.joint().gauge(), asked.requirement());
  }

  /**
   * Many joints with inputs drawn from the spreads of the case.
   *
   * @throws NotAWeldException if no draw makes a weld
   */
  public SpreadStudy spread() throws NotAWeldException {
    return spread(asked.spread(), () -> {});
  }

  /**
   * The same with other spreads, and told of its progress.
   *
   * @param done called after every joint, from any thread
   * @throws NotAWeldException if no draw makes a weld
   */
  public SpreadStudy spread(SpreadSettings settings, Runnable done) throws NotAWeldException {
    try {
      return SpreadRunner.run(
          kept, weld(), asked.joint().gauge(), asked.requirement(), settings, done);
    } catch (HeatInputException fault) {
      throw new NotAWeldException(fault);
    }
  }

  /**
   * A map over one or two inputs.
   *
   * @param done called after every place, from any thread
   */
  public GridStudy grid(List<GridStudy.Axis> axes, Runnable done) {
    return GridStudy.of(kept, weld(), asked.joint().gauge(), asked.requirement(), axes, done);
  }

  /**
   * A traverse of this weld from a CSV file, or what is wrong with the file.
   *
   * @param file its name
   * @param content UTF-8, with a head such as {@code distance_mm,HV}
   */
  public TraverseReader readTraverse(String file, byte[] content) {
    return TraverseReader.read(file, content, weld().hasCasting());
  }

  /**
   * A traverse measured as welded, held against the case.
   *
   * @throws afterweld.study.UnpredictedPoints if no hardness is predicted where it was measured
   */
  public TraverseFit fit(HardnessTraverse asWelded) {
    return TraverseFit.of(kept, weld().withAfterWeld(List.of()), asWelded);
  }

  /**
   * A traverse measured after the heat treatment, held against the case.
   *
   * @throws afterweld.study.UnpredictedPoints if no hardness is predicted where it was measured
   */
  public TraverseFit fitTreated(HardnessTraverse treated) {
    return TraverseFit.of(kept, weld(), treated);
  }

  /**
   * What stands beside the numbers of an answer.
   *
   * @param own caution of the answer, of {@link ResultCautions}
   */
  public Notices notices(String own) {
    return new Notices(
        soundness(), objections(), Notices.of(kept.thinProfile(weld())), cautions(own));
  }

  /** The cautions of an answer: its own, and the one on pressure where it matters. */
  public List<String> cautions(String own) {
    return underPressure() ? List.of(own, Cautions.PRESSURE) : List.of(own);
  }

  /** The result of {@code profile}. */
  public String profileJson() {
    SectionProfile profile = profile();
    return new ProfileJson(profile, joint(), judgement(UnitSystem.METRIC), objections(), along())
        .text();
  }

  /** The result of {@code fillers}. */
  public String fillersJson() {
    Judgement judgement = judgement(UnitSystem.METRIC);
    Notices notices = notices(ResultCautions.FILLERS);
    return ranksNoFiller()
        ? FillerJson.none(weld(), judgement, notices)
        : FillerJson.of(weld(), profile().soundness(), fillers(), judgement, notices);
  }

  /** The result of {@code routes}. */
  public String routesJson() {
    return RouteJson.of(weld(), routes(), notices(ResultCautions.ROUTES));
  }

  /**
   * The result of {@code spread}.
   *
   * @throws NotAWeldException if no draw makes a weld
   */
  public String spreadJson() throws NotAWeldException {
    Notices notices = notices(ResultCautions.SPREAD);
    return soundness().sound()
        ? SpreadJson.of(weld(), spread(), notices)
        : SpreadJson.none(weld(), judgement(UnitSystem.METRIC), notices);
  }

  /** The result of {@code bend}. */
  public String bendJson() {
    return new BendJson(profile(), bend(), objections()).text();
  }

  /** The result of {@code ageing}. */
  public String ageingJson() {
    return AgeingJson.of(
        weld(),
        ageing(),
        jointAgeing(),
        cautions(ResultCautions.AGEING),
        soundness(),
        objections());
  }
}
