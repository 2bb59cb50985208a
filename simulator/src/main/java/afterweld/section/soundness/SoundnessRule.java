package afterweld.section.soundness;

import static afterweld.quantity.BothUnits.length;

import afterweld.quantity.BothUnits;
import afterweld.section.heat.Groove;
import afterweld.section.heat.MeltDown;
import afterweld.section.heat.RootFusion;
import afterweld.thermal.PassHeat;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.PoolMetals;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The one rule on whether a weld is a joint, by areas: its root is fused ({@link RootFusion}), its
 * groove is filled ({@link Groove}, {@link Deposit}), it stays up and melts all that it should
 * ({@link MeltDown}, {@link ColdSide}). A bead that melts only part of a plate, and plates over 12
 * mm in several passes, are not computed: one line across cannot stand for their section. Weld
 * metal that is brittle whatever its shape ({@link BrittleMix}) makes no joint either.
 *
 * <p>Filled: the deposit is at least 0.95 of the groove; estimates count up to 1.25 times. A
 * tungsten arc counts as filled as far as its pools can hold the metal. Sources: common practice;
 * the shares are assumed.
 */
public final class SoundnessRule {
  private static final double FILLED = 0.95;
  private static final double THICKEST_IN_PASSES = 12e-3 + 1e-9;

  private final WeldCase weldCase;
  private final List<PassHeat> heats;
  private final Groove groove;
  private final Deposit deposit;
  private final RootFusion root;
  private final boolean startsCold;
  private final Optional<RootFusion> openAtEnd;

  SoundnessRule(WeldCase weldCase, List<PassHeat> heats) {
    this(weldCase, heats, Optional.empty(), Optional.empty());
  }

  /**
   * The rule of a case.
   *
   * @param inSection the root where the section is taken, if it differs from that of the heats
   * @param atEnd the root where the current has fallen, if it does
   */
  public SoundnessRule(
      WeldCase weldCase,
      List<PassHeat> heats,
      Optional<RootFusion> inSection,
      Optional<RootFusion> atEnd) {
    this.weldCase = weldCase;
    this.heats = heats;
    this.groove = Groove.of(weldCase);
    this.deposit = Deposit.of(weldCase, heats);
    this.root = inSection.orElseGet(() -> RootFusion.of(groove, heats));
    this.startsCold = inSection.filter(start -> !start.through()).isPresent();
    this.openAtEnd = atEnd.filter(end -> hasRoot() && !end.through());
  }

  /** Whether the root is open where the section is taken, at the start on cold metal. */
  boolean startsCold() {
    return startsCold;
  }

  /** Whether the current falls so far that the root stays open at the end. */
  boolean endsOpen() {
    return fusedThrough() && openAtEnd.isPresent();
  }

  private boolean fillet() {
    return weldCase.preparation() == Preparation.FILLET;
  }

  private boolean bead() {
    return weldCase.joint() == Joint.BEAD;
  }

  private boolean hasRoot() {
    return !fillet() && !bead();
  }

  /** Whether nothing of the root stays open. */
  public boolean fusedThrough() {
    return !hasRoot() || root.through();
  }

  /** Whether the groove has the metal it takes. */
  boolean filled() {
    return !hasRoot() || !groove.open() || deposit.most() >= FILLED * groove.area();
  }

  /** Whether the rule of depth calls the root fused and the section has an edge that is not. */
  boolean edgeStaysCold(MeltDown molten) {
    return hasRoot() && fusedThrough() && !molten.startsCold() && molten.unmolten().isPresent();
  }

  Groove groove() {
    return groove;
  }

  Deposit deposit() {
    return deposit;
  }

  /**
   * How the weld stands.
   *
   * @param molten how far each side is molten and hot
   * @param strongest tensile strength of the strongest metal of the section, Pa; NaN if not known
   * @param advised whether remedies are looked for, which takes time
   */
  public Soundness of(MeltDown molten, double strongest, boolean advised) {
    List<String> reasons = unsound(molten, strongest);
    PoolMetals metals = PoolMetals.of(weldCase);
    if (reasons.isEmpty()) {
      return BrittleMix.forms(metals) ? brittle(metals) : computed();
    }
    if (BrittleMix.forms(metals)) {
      reasons.add(BrittleMix.reason(metals));
    }
    return new Soundness(
        Soundness.State.NOT_SOUND,
        reasons,
        advised ? new SoundnessRemedies(weldCase, heats, this, molten).all() : List.of(),
        fusedThrough() ? OptionalDouble.empty() : OptionalDouble.of(root.fusedShare()));
  }

  private static Soundness brittle(PoolMetals metals) {
    return new Soundness(
        Soundness.State.BRITTLE,
        List.of(BrittleMix.reason(metals)),
        List.of(BrittleMix.remedy(metals)),
        OptionalDouble.empty());
  }

  private List<String> unsound(MeltDown molten, double strongest) {
    List<String> reasons = new ArrayList<>();
    if (!fusedThrough()) {
      reasons.add(openRoot());
      if (Double.isFinite(strongest)) {
        reasons.add(atMost(strongest));
      }
    }
    if (edgeStaysCold(molten)) {
      molten.unmolten().ifPresent(reasons::add);
    }
    if (endsOpen()) {
      reasons.add(openEnd(molten.end(), openAtEnd.orElseThrow()));
    }
    if (!filled()) {
      reasons.add(openGroove());
    }
    reasons.addAll(molten.reasons());
    ColdSide.reason(weldCase, heats).ifPresent(reasons::add);
    return reasons;
  }

  private Soundness computed() {
    List<String> reasons = new ArrayList<>();
    if (bead() && !root.through()) {
      reasons.add(
          "The bead melts "
              + length(root.reached())
              + " of "
              + length(root.thickness())
              + ": the strength of the whole section cannot be read off one line across it. Zones and"
              + " hardness hold for the depth of that line; the metal under the bead is softest at the"
              + " surface.");
    }
    if (groove.thickness() > THICKEST_IN_PASSES && (heats.size() > 1 || fillet())) {
      reasons.add(
          "A joint in plate over 12 mm (0.47 in) "
              + (fillet() ? "that is not fused through" : "in several passes")
              + " differs from face to back: no strength is computed for it. Zones and cycles are"
              + " those of one depth.");
    }
    return reasons.isEmpty()
        ? Soundness.SOUND
        : new Soundness(
            Soundness.State.NOT_COMPUTED,
            reasons,
            List.of("A coupon of the procedure tells its strength."),
            OptionalDouble.empty());
  }

  private String openRoot() {
    String rule = heats.get(0).pass().penetration().isPresent() ? "" : ", by rule";
    if (!groove.open()) {
      return "Not fused through: the pool reaches "
          + length(root.reached())
          + " deep"
          + rule
          + ", of "
          + length(root.thickness())
          + ".";
    }
    return "The root is not fused: of the "
        + groove.preparation().label()
        + "'s root face of "
        + length(root.needed())
        + " the first pass melts "
        + length(root.reached())
        + rule
        + ".";
  }

  private static String openEnd(String end, RootFusion root) {
    return "Not fused through at the "
        + end
        + ", where the current has fallen: the pool melts "
        + length(root.reached())
        + " of the "
        + length(root.needed())
        + " that it must, by rule.";
  }

  private String atMost(double strongest) {
    return "It carries at most "
        + BothUnits.stress(strongest * root.fusedShare())
        + " on the fused "
        + length(root.fusedShare() * root.thickness())
        + " of "
        + length(root.thickness())
        + ", without the notch that the rest is.";
  }

  private String openGroove() {
    String takes =
        "The groove is not filled: a "
            + groove.preparation().label()
            + " in "
            + length(groove.thickness())
            + " takes "
            + BothUnits.area(groove.area());
    return switch (deposit.kind()) {
      case NO_FILLER -> takes + ", and there is no filler.";
      case STATED -> takes + ", the passes lay down " + BothUnits.area(deposit.area()) + ".";
      case WIRE_BY_CURRENT ->
          takes
              + "; by current and speed the passes lay down about "
              + BothUnits.area(deposit.area())
              + ", too little even if it were a quarter more.";
      case POOLS ->
          takes
              + "; the pools of all passes hold no more than about "
              + BothUnits.area(deposit.most())
              + ".";
    };
  }

  /** What a reader of a sound weld must know of how it was judged. */
  public List<Warning> warnings() {
    List<Warning> warnings = new ArrayList<>();
    if (hasRoot() && root.through() && !root.certain()) {
      warnings.add(
          new Warning(
              "root-not-reached",
              "Up to a tenth of the thickness may be unfused: of "
                  + length(root.needed())
                  + " the pool reaches "
                  + length(root.reached())
                  + ". Look at the root on a macro section."));
    }
    if (filled() && hasRoot() && groove.open() && deposit.area() < FILLED * groove.area()) {
      warnings.add(
          new Warning(
              "deposit-scaled",
              "The deposit, about "
                  + BothUnits.area(deposit.area())
                  + " by current and speed, was taken up to a quarter higher so that it fills the"
                  + " groove of "
                  + BothUnits.area(groove.area())
                  + ": weigh the wire, or state filler deposit_area."));
    }
    return warnings;
  }
}
