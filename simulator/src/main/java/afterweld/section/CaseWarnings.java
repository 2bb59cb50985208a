package afterweld.section;

import afterweld.material.Alloy;
import afterweld.material.Composition;
import afterweld.material.Element;
import afterweld.material.Status;
import afterweld.strength.PlainStrength;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.FurnaceStep.Age;
import afterweld.thermal.furnace.FurnaceStep.SolutionTreat;
import afterweld.weld.CoatingBake;
import afterweld.weld.HotStart;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.BrittleMix;
import afterweld.weldmetal.CrackWarnings;
import afterweld.weldmetal.PoolMetals;
import afterweld.weldmetal.SiliconOnMagnesium;
import afterweld.weldmetal.WeldMetal;
import afterweld.weldmetal.WeldPool;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a reader must know about a case before believing its numbers: where the models are
 * extrapolated, where they are known to be wrong, what was assumed.
 */
final class CaseWarnings {
  private static final double MUCH_MAGNESIUM = 3.0;

  private final WeldCase weldCase;
  private final WeldMetal weldMetal;
  private final List<Warning> warnings = new ArrayList<>();

  private CaseWarnings(WeldCase weldCase, WeldMetal weldMetal) {
    this.weldCase = weldCase;
    this.weldMetal = weldMetal;
  }

  /** All that can be said before anything is computed, after what the reader of the case noted. */
  static List<Warning> of(WeldCase weldCase, WeldMetal weldMetal) {
    CaseWarnings all = new CaseWarnings(weldCase, weldMetal);
    all.warnings.addAll(weldCase.notes());
    all.aboutBase(weldCase.left(), "left");
    if (!weldCase.right().equals(weldCase.left())) {
      all.aboutBase(weldCase.right(), "right");
    }
    all.aboutWeldMetal();
    all.aboutProcedure();
    all.aboutPause();
    all.aboutHotMagnesium();
    all.aboutTreatment();
    return all.warnings;
  }

  private void add(String code, String text) {
    warnings.add(new Warning(code, text));
  }

  private void aboutBase(Side side, String name) {
    String what = side.alloy().name() + "-" + side.temper().name() + " (" + name + ")";
    if (side.temper().source().status() == Status.ASSUMED) {
      add("temper-assumed", what + ": how this temper is made is assumed, not published.");
    }
    if (side.temper().name().equals("T4")) {
      add(
          "t4-optimistic",
          what
              + ": the predicted heat-affected zone of a T4 start is optimistic; codes give 95 of"
              + " 110 MPa (14 of 16 ksi) proof for 6061-T4, 86 %.");
    }
    if (!side.alloy().heatTreatable()) {
      aboutHardenedByWork(what);
    }
    if (side.alloy().family() == Alloy.Family.WROUGHT_HEAT_TREATABLE
        && outsideCalibration(side.composition())) {
      add(
          "composition-extrapolated",
          what
              + ": magnesium outside 0.4 to 1.2 wt% or silicon outside 0.4 to 1.3 wt%: outside"
              + " the range the model was calibrated on.");
    }
  }

  private void aboutHardenedByWork(String what) {
    add(
        "hardened-by-work",
        what
            + ": the strengths of the temper and of the annealed metal are handbook values; only"
            + " the softening between them is computed, within 25 °C (45 °F) of peak temperature.");
    if (!weldCase.afterWeld().isEmpty()) {
      add(
          "treatment-anneals",
          what
              + ": no heat treatment brings back strength that came from cold work; the one after"
              + " welding anneals or does nothing.");
    }
  }

  private static boolean outsideCalibration(Composition composition) {
    double magnesium = composition.of(Element.MG);
    double silicon = composition.of(Element.SI);
    return magnesium < 0.4 || magnesium > 1.2 || silicon < 0.4 || silicon > 1.3;
  }

  private void aboutWeldMetal() {
    if (!SectionMetal.predicted(weldMetal.composition())) {
      add(
          "not-predicted",
          "The weld metal has more than 0.5 wt% copper: its strength is not predicted.");
    }
    PoolMetals metals = PoolMetals.of(weldCase);
    if (SiliconOnMagnesium.holdsFor(metals) && !BrittleMix.forms(metals)) {
      warnings.add(SiliconOnMagnesium.warning());
    }
    if (PlainStrength.holdsFor(weldMetal.composition())) {
      add(
          "plain-weld-metal",
          "The weld metal holds nothing that hardens it: taken as soft as annealed 1100 and 3003, by"
              + " handbook values; no heat treatment changes it.");
    }
    warnings.addAll(CrackWarnings.of(weldCase, weldMetal));
  }

  private boolean treatableBase() {
    return weldCase.left().alloy().heatTreatable() || weldCase.right().alloy().heatTreatable();
  }

  private void aboutProcedure() {
    if (HotStart.beyondCodes(weldCase) && treatableBase()) {
      add(
          "hot-start",
          "Preheat or interpass above 120 °C (250 °F): a heat-treatable base overages while it waits"
              + " for the next pass, and EN 1999-1-1 gives no width of its softened zone.");
    }
  }

  private void aboutPause() {
    if (HotStart.byPause(weldCase)) {
      add(
          "interpass-by-pause",
          "A pause between passes is stated, so how warm the next pass finds the metal is not held"
              + " against the 120 °C (250 °F) that codes keep it under, and no code's width of the"
              + " softened zone is given, which goes by it: measure the interpass temperature.");
    }
  }

  /**
   * Fabrication codes keep such metal under 120 °C (AWS D1.2, from memory); a naval guide keeps
   * 5086 and 5456 out of 65 to 200 °C (second-hand).
   */
  private void aboutHotMagnesium() {
    Stream<Alloy> metals =
        Stream.concat(
            Stream.of(weldCase.left().alloy(), weldCase.right().alloy()),
            weldCase.filler().alloy().stream());
    boolean rich = metals.anyMatch(alloy -> alloy.composition().of(Element.MG) > MUCH_MAGNESIUM);
    if (HotStart.beyondCodes(weldCase) && rich) {
      add(
          "hot-start-magnesium",
          "Preheat or interpass above 120 °C (250 °F) on metal with more than 3 % Mg: time at 65 °C"
              + " (150 °F) to 200 °C (390 °F) lines its grain boundaries with what corrodes under"
              + " stress. Codes keep it under 120 °C (250 °F).");
    }
  }

  private void aboutTreatment() {
    List<FurnaceStep> steps = weldCase.afterWeld();
    boolean solution = steps.stream().anyMatch(SolutionTreat.class::isInstance);
    boolean age = steps.stream().anyMatch(Age.class::isInstance);
    if (age && !solution) {
      add(
          "age-only-uncertain",
          "Ageing without solution treatment: the depth of the soft dip is the least certain"
              + " number of the model.");
    }
    CoolAgeing.warning(weldCase).ifPresent(warnings::add);
    CoolAgeing.ofCastings(weldCase).ifPresent(warnings::add);
    WaitBeforeAgeing.warning(weldCase).ifPresent(warnings::add);
    boolean muchMagnesium =
        weldCase
            .filler()
            .alloy()
            .filter(alloy -> alloy.composition().of(Element.MG) > MUCH_MAGNESIUM)
            .isPresent();
    if (muchMagnesium && (solution || age) && !CoatingBake.is(weldCase)) {
      add(
          "filler-not-for-heat-treatment",
          weldMetal.filler()
              + " has more than 3 % Mg and is not meant for heat treatment after welding: do not"
              + " rely on the weld-metal strength shown after it.");
    }
    if (solution && WeldPool.meltingPossibleFrom450(weldMetal.composition())) {
      add(
          "weld-metal-may-melt",
          "The weld metal has 2.5 % Mg or more: it may begin to melt from 450 °C (840 °F) on in the"
              + " solution furnace. The strengths are those of metal that does not; the treatment"
              + " is not one to order.");
    }
  }
}
