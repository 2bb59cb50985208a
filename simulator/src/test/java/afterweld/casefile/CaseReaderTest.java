package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.caseOf;
import static afterweld.casefile.Reading.replaced;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.casefile.text.Fault;
import afterweld.casefile.text.Place;
import afterweld.choice.RouteSettings;
import afterweld.choice.answer.Requirement;
import afterweld.joint.JointSettings;
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.JointSettings.BendSettings;
import afterweld.joint.JointSettings.Fillet;
import afterweld.joint.JointSettings.FilletLoad;
import afterweld.joint.JointSettings.Tube;
import afterweld.material.Element;
import afterweld.quantity.OutputQuantity;
import afterweld.study.SpreadSettings;
import afterweld.thermal.HeatFlow;
import afterweld.thermal.Pass;
import afterweld.thermal.WeldCourse;
import afterweld.thermal.WeldingProcess;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.thermal.furnace.QuenchMedium;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.Preparation;
import afterweld.weld.Ring;
import afterweld.weld.Seam;
import afterweld.weld.Warning;
import afterweld.weld.WeldCase;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases without a fault: values, defaults, notes, and that YAML and JSON mean the same. */
class CaseReaderTest {
  private static final double TIGHT = 1e-9;

  private static final String FORK_ARM =
      """
      title: Fork arm to base plate, observatory mount
      left:   {alloy: "6061", temper: T6, thickness: 6 mm}
      joint:  butt
      filler: {alloy: "4643", dilution: 30 %}
      passes:
        - {process: GTAW-AC, current: 180 A, voltage: 15 V, travel_speed: 5 in/min, preheat: 120 °F, bead_width: 11 mm}
      natural_age: 1 day
      after_weld:
        - solution_treat: {temperature: 985 °F, soak: 60 min}
        - quench: {medium: water, temperature: 25 °C, delay: 8 s}
        - natural_age: 2 h
        - age: {temperature: 350 °F, time: 8 h}
      require: {yield: 28 ksi, tensile: 36 ksi, hardness: 70 HB}
      """;

  private static final String FORK_ARM_JSON =
      """
      {
        "title": "Fork arm to base plate, observatory mount",
        "left": {"alloy": "6061", "temper": "T6", "thickness": "6 mm"},
        "joint": "butt",
        "filler": {"alloy": "4643", "dilution": "30 %"},
        "passes": [
          {"process": "GTAW-AC", "current": "180 A", "voltage": "15 V",
           "travel_speed": "5 in/min", "preheat": "120 °F", "bead_width": "11 mm"}
        ],
        "natural_age": "1 day",
        "after_weld": [
          {"solution_treat": {"temperature": "985 °F", "soak": "60 min"}},
          {"quench": {"medium": "water", "temperature": "25 °C", "delay": "8 s"}},
          {"natural_age": "2 h"},
          {"age": {"temperature": "350 °F", "time": "8 h"}}
        ],
        "require": {"yield": "28 ksi", "tensile": "36 ksi", "hardness": "70 HB"}
      }
      """;

  @Test
  void theForkArmIsReadInSiUnits() {
    WeldCase weld = caseOf(FORK_ARM).weld();
    assertEquals("Fork arm to base plate, observatory mount", weld.title());
    assertEquals(Metals.A6061, weld.left().alloy());
    assertEquals("T6", weld.left().temper().name());
    assertEquals(0.006, weld.left().thickness(), TIGHT);
    assertEquals(weld.left(), weld.right());
    assertEquals(Joint.BUTT, weld.joint());
    assertEquals(Preparation.SINGLE_V, weld.preparation());
    assertEquals(
        new FillerChoice(Optional.of(Metals.F4643), 0.3, 0.3, 0.3, true, 0.5), weld.filler());
    assertEquals(OptionalDouble.of(0.15 * 0.011), weld.reinforcement());
    assertEquals(0.003, weld.depth(), TIGHT);
    assertEquals(293.15, weld.ambient(), TIGHT);
    assertEquals(86_400, weld.naturalAge(), TIGHT);
  }

  @Test
  void thePassOfTheForkArmIsReadInSiUnits() {
    Pass pass = caseOf(FORK_ARM).weld().passes().get(0);
    assertEquals(WeldingProcess.GTAW_AC, pass.process());
    assertEquals(2700, pass.arcPower(), TIGHT);
    assertEquals(5 * 0.0254 / 60, pass.travelSpeed(), TIGHT);
    assertEquals(273.15 + (120 - 32) / 1.8, pass.startTemperature(), TIGHT);
    assertEquals(0.011, pass.beadWidth().orElseThrow(), TIGHT);
    assertEquals(OptionalDouble.empty(), pass.efficiency());
    assertEquals(OptionalDouble.empty(), pass.penetration());
    assertEquals(OptionalDouble.empty(), pass.pause());
    assertEquals(0, pass.offset(), TIGHT);
  }

  @Test
  void theTreatmentOfTheForkArmKeepsItsOrder() {
    List<FurnaceStep> steps = caseOf(FORK_ARM).weld().afterWeld();
    assertEquals(4, steps.size());
    FurnaceStep.SolutionTreat solution = (FurnaceStep.SolutionTreat) steps.get(0);
    assertEquals(273.15 + (985 - 32) / 1.8, solution.temperature(), TIGHT);
    assertEquals(3600, solution.soak(), TIGHT);
    assertEquals(FurnaceStep.Furnace.AIR, solution.furnace());
    assertEquals(new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 8), steps.get(1));
    assertEquals(new FurnaceStep.NaturalAge(7200), steps.get(2));
    FurnaceStep.Age age = (FurnaceStep.Age) steps.get(3);
    assertEquals(273.15 + (350 - 32) / 1.8, age.temperature(), TIGHT);
    assertEquals(8 * 3600, age.time(), TIGHT);
    assertEquals(FurnaceStep.Ramp.BY_FURNACE, age.ramp());
    assertFalse(age.overage());
  }

  /** 28 and 36 ksi by 6.894757 MPa (NIST SP 811); 70 HB is 80 HV (ASTM E140, from memory). */
  @Test
  void theRequirementOfTheForkArmIsConverted() {
    Requirement asked = caseOf(FORK_ARM).requirement();
    assertEquals(193.053e6, asked.yield().orElseThrow(), 1e3);
    assertEquals(248.211e6, asked.tensile().orElseThrow(), 1e3);
    assertEquals(80, asked.hardness().orElseThrow(), 1);
    assertEquals(Optional.empty(), asked.anodizedMatch());
  }

  @Test
  void theRequirementOfTheForkArmIsKeptAsItIsWritten() {
    Requirement asked = caseOf(FORK_ARM).requirement();
    assertEquals("28 ksi", asked.asked(OutputQuantity.YIELD).orElseThrow().written());
    assertEquals("36 ksi", asked.asked(OutputQuantity.TENSILE).orElseThrow().written());
    assertEquals("70 HB", asked.asked(OutputQuantity.HARDNESS).orElseThrow().written());
    assertEquals(Optional.empty(), asked.asked(OutputQuantity.PEAK_TEMPERATURE));
  }

  @Test
  void aRequirementWithoutABlankOrWithAnotherNameOfItsUnitIsWrittenTidily() {
    Requirement asked =
        caseOf(PLAIN + "require: {yield: 24KSI, service_temperature: 150F}\n").requirement();
    assertEquals("24 ksi", asked.asked(OutputQuantity.YIELD).orElseThrow().written());
    assertEquals("150 °F", asked.asked(OutputQuantity.PEAK_TEMPERATURE).orElseThrow().written());
  }

  @Test
  void yamlAndJsonGiveTheSameCase() {
    CaseReading json = Reading.json(FORK_ARM_JSON);
    assertEquals(List.of(), json.faults());
    assertEquals(caseOf(FORK_ARM), json.caseFile().orElseThrow());
  }

  @Test
  void metricAndUsFilesGiveTheSameCase() {
    String metric = replaced(replaced(PLAIN, "6 mm", "6.35 mm"), "5 in/min", "127 mm/min");
    WeldCase fromMetric = caseOf(metric).weld();
    WeldCase fromUs = caseOf(replaced(PLAIN, "6 mm", "1/4 in")).weld();
    assertEquals(fromMetric.left().thickness(), fromUs.left().thickness(), 1e-15);
    double speed = fromMetric.passes().get(0).travelSpeed();
    assertEquals(speed, fromUs.passes().get(0).travelSpeed(), 1e-15);
  }

  /** 1/4 in and 6.35 mm differ in the last digit; that must not make a limit fail. */
  @Test
  void aLimitInInchesIsMetByTheSameLengthInMillimetres() {
    String inches =
        replaced(replaced(PLAIN, "6 mm", "6.35 mm"), "in/min}", "in/min, penetration: 1/4 in}");
    caseOf(inches + "depth: 0.25 in\nbend: {length: 1 in}\n");
    String millimetres =
        replaced(replaced(PLAIN, "6 mm", "1/4 in"), "in/min}", "in/min, penetration: 6.35 mm}");
    assertEquals(0.00635, caseOf(millimetres + "depth: 6.35 mm\n").weld().depth(), 1e-15);
  }

  @Test
  void windowsLineEndsAndAByteOrderMarkChangeNothing() {
    byte[] bytes = ("\uFEFF" + FORK_ARM.replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
    CaseReading reading = Reading.bytes("case.yaml", bytes);
    assertEquals(Optional.of(caseOf(FORK_ARM)), reading.caseFile());
  }

  @Test
  void whatTheCaseDoesNotSayIsFilledInByRule() {
    CaseFile plain = caseOf(PLAIN);
    WeldCase weld = plain.weld();
    assertEquals(Joint.BUTT, weld.joint());
    assertEquals(30 * 86_400, weld.naturalAge(), TIGHT);
    assertEquals(293.15, weld.passes().get(0).startTemperature(), TIGHT);
    assertEquals(OptionalDouble.empty(), weld.reinforcement());
    assertEquals(Optional.empty(), weld.ring());
    assertEquals(List.of(), weld.afterWeld());
    assertEquals(Requirement.NONE, plain.requirement());
    assertEquals(RouteSettings.DEFAULT, plain.routes());
    assertEquals(JointSettings.DEFAULT, plain.joint());
    assertEquals(SpreadSettings.DEFAULT, plain.spread());
  }

  @Test
  void theTitleIsTheFileNameWithoutFolders() {
    byte[] bytes = replaced(PLAIN, "title: Plate\n", "").getBytes(StandardCharsets.UTF_8);
    CaseReading reading = Reading.bytes("jobs/mount/arm.yaml", bytes);
    assertEquals("arm.yaml", reading.caseFile().orElseThrow().weld().title());
  }

  @ParameterizedTest
  @CsvSource({
    "butt, 4 mm, SQUARE",
    "butt, 4.1 mm, SINGLE_V",
    "butt, 12 mm, SINGLE_V",
    "butt, 12.1 mm, DOUBLE_V",
    "corner, 3 mm, SQUARE",
    "lap, 3 mm, FILLET",
    "tee, 12 mm, FILLET",
    "socket, 4 mm, FILLET"
  })
  void thePreparationFollowsJointAndThickness(String joint, String thickness, Preparation rule) {
    String text = replaced(PLAIN, "6 mm", thickness) + "joint: " + joint + "\n";
    WeldCase weld = caseOf(text).weld();
    assertEquals(rule, weld.preparation());
    assertTrue(codes(weld).contains("preparation-by-rule"));
  }

  /** The edge that is welded is the thinner part's: the thicker one is tapered down to it. */
  @Test
  void theThinnerPartIsPrepared() {
    String sides = "right: {alloy: \"6061\", temper: T6, thickness: 12.7 mm}\njoint: butt\n";
    assertEquals(
        Preparation.SQUARE, caseOf(replaced(PLAIN, "6 mm", "3.2 mm") + sides).weld().preparation());
  }

  @Test
  void nothingIsSaidOfThePreparationOfABeadOnPlate() {
    WeldCase weld = caseOf(replaced(PLAIN, "6 mm", "12 mm") + "joint: bead\n").weld();
    assertFalse(codes(weld).contains("preparation-by-rule"));
  }

  /** The middle values of common practice, by preparation, process and number of passes. */
  @ParameterizedTest
  @CsvSource({
    "square, GTAW-AC, 1, 0.70",
    "square, GMAW, 2, 0.60",
    "single-v, GTAW-DCEN, 1, 0.40",
    "single-v, GMAW-pulsed, 3, 0.35333333333",
    "double-v, GMAW, 2, 0.39",
    "fillet, GTAW-AC, 1, 0.32",
    "fillet, GMAW, 3, 0.30"
  })
  void theDilutionFollowsPreparationAndProcess(
      String preparation, String process, int passes, double dilution) {
    String joint = preparation.equals("fillet") ? "tee" : "butt";
    String written = PLAIN.replace("GTAW-AC", process);
    String pass = written.lines().reduce((first, last) -> last).orElseThrow() + "\n";
    String text =
        replaced(written, ", dilution: 30 %", "")
            + pass.repeat(passes - 1)
            + "joint: "
            + joint
            + "\npreparation: "
            + preparation
            + "\n";
    FillerChoice filler = caseOf(text).weld().filler();
    assertEquals(dilution, filler.dilution(), 1e-9);
    assertEquals(dilution - 0.15, filler.dilutionLow(), 1e-9);
    assertEquals(dilution + 0.15, filler.dilutionHigh(), 1e-9);
    assertFalse(filler.dilutionGiven());
  }

  @Test
  void areasOfAMacroGiveTheDilution() {
    String areas = "melted_area: 12 mm², deposit_area: 0.28 cm2, from_left: 70 %";
    FillerChoice filler = caseOf(replaced(PLAIN, "dilution: 30 %", areas)).weld().filler();
    assertEquals(0.3, filler.dilution(), 1e-12);
    assertEquals(0.7, filler.fromLeft(), 1e-12);
    assertTrue(filler.dilutionGiven());
  }

  @Test
  void withoutFillerTheWeldMetalIsTheBase() {
    String none = replaced(PLAIN, "{alloy: \"4643\", dilution: 30 %}", "none");
    WeldCase weld = caseOf(none).weld();
    assertEquals(new FillerChoice(Optional.empty(), 1, 1, 1, true, 0.5), weld.filler());
    assertTrue(codes(weld).contains("dilution-above-60"));
    String shared =
        replaced(PLAIN, "alloy: \"4643\", dilution: 30 %", "alloy: none, from_left: 60 %");
    assertEquals(0.6, caseOf(shared).weld().filler().fromLeft(), 1e-12);
  }

  @Test
  void aCertificateOverridesOnlyWhatItNames() {
    String certificate = "6 mm, composition: {Mg: 0.9 %, Fe: 0.3 wt%}";
    WeldCase weld = caseOf(replaced(PLAIN, "6 mm", certificate)).weld();
    assertEquals(0.9, weld.left().composition().of(Element.MG), TIGHT);
    assertEquals(0.3, weld.left().composition().of(Element.FE), TIGHT);
    assertEquals(0.6, weld.left().composition().of(Element.SI), TIGHT);
    assertEquals(1.0, weld.left().alloy().composition().of(Element.MG), TIGHT);
    assertFalse(codes(weld).contains("certificate-outside-limits"));
    assertEquals(Set.of(Element.MG, Element.FE), weld.left().certified());
  }

  @Test
  void aCertificateOutsideTheLimitsIsNoted() {
    WeldCase weld = caseOf(replaced(PLAIN, "6 mm", "6 mm, composition: {Mg: 1.3 %}")).weld();
    assertTrue(
        weld.notes()
            .contains(
                new Warning(
                    "certificate-outside-limits",
                    "The certificate gives Mg 1.3 %; 6061 has 0.8 to 1.2 %.")));
  }

  @ParameterizedTest
  @CsvSource({"6061, T651", "AA6061, t6", "EN AW-6061, T62", "6061, T6511"})
  void otherNamesOfAlloyAndTemperAreKnown(String alloy, String temper) {
    String text = replaced(replaced(PLAIN, "\"6061\"", alloy), "T6", temper);
    WeldCase weld = caseOf(text).weld();
    assertEquals(Metals.A6061, weld.left().alloy());
    assertEquals("T6", weld.left().temper().name());
    assertEquals(!temper.equals("t6"), codes(weld).contains("temper-alias"));
  }

  @Test
  void aCastingAndItsFillerMayBeWrittenInFull() {
    String text = replaced(replaced(PLAIN, "\"6061\"", "A356.0"), "\"4643\"", "ER4043");
    WeldCase weld = caseOf(text).weld();
    assertEquals(Metals.A356, weld.left().alloy());
    assertEquals(Optional.of(Metals.F4043), weld.filler().alloy());
  }

  @Test
  void theRightSideTakesAlloyAndTemperOfTheLeftUnlessItNamesThem() {
    WeldCase same = caseOf(PLAIN + "right: {thickness: 3 mm, width: 1 in}\n").weld();
    assertEquals(Metals.A6061, same.right().alloy());
    assertEquals("T6", same.right().temper().name());
    assertEquals(0.0254, same.right().width().orElseThrow(), TIGHT);
    assertEquals(0.0015, same.depth(), TIGHT);
    WeldCase other = caseOf(PLAIN + "right: {alloy: A356, temper: T6, thickness: 8 mm}\n").weld();
    assertEquals(Metals.A356, other.right().alloy());
    assertTrue(codes(other).contains("from-left-by-default"));
  }

  @Test
  void laterPassesStartAtInterpass() {
    String second =
        "  - {process: GMAW, current: 200 A, voltage: 22 V, travel_speed: 8 mm/s, offset: -2 mm,"
            + " pause: 5 min, efficiency: 0.75, penetration: 4 mm}\n"
            + "  - {process: GMAW, current: 200 A, voltage: 22 V, travel_speed: 8 mm/s,"
            + " interpass: 100 °C}\n";
    WeldCase weld = caseOf(PLAIN + second).weld();
    Pass middle = weld.passes().get(1);
    assertEquals(339.15, middle.startTemperature(), TIGHT);
    assertEquals(-0.002, middle.offset(), TIGHT);
    assertEquals(300, middle.pause().orElseThrow(), TIGHT);
    assertEquals(0.75, middle.efficiency().orElseThrow(), TIGHT);
    assertEquals(0.004, middle.penetration().orElseThrow(), TIGHT);
    assertEquals(373.15, weld.passes().get(2).startTemperature(), TIGHT);
    assertTrue(codes(weld).contains("interpass-by-default"));
  }

  @Test
  void theReinforcementFollowsTheWidestBeadUpToThreeMillimetres() {
    String wide = replaced(PLAIN, "in/min}", "in/min, bead_width: 24 mm}");
    assertEquals(OptionalDouble.of(0.003), caseOf(wide).weld().reinforcement());
    assertEquals(
        OptionalDouble.of(0.002), caseOf(wide + "reinforcement: 2 mm\n").weld().reinforcement());
  }

  @Test
  void stepsOfEveryKindAreRead() {
    String text =
        PLAIN
            + """
            after_weld:
              - anneal: {temperature: 413 °C, time: 2 h}
              - solution_treat: {temperature: 530 °C, soak: 1 h, furnace: salt}
              - quench: {rate: 120 K/s}
              - age: {temperature: 163 °C, time: 12 h, ramp: 90 min}
              - age: {temperature: 500 °F, time: 1 h, ramp: 100 °F/h, overage: true}
              - solution_treat: {temperature: 530 °C, soak: 1 h}
              - quench: {medium: Boiling Water}
            """;
    List<FurnaceStep> steps = caseOf(text).weld().afterWeld();
    FurnaceStep.Anneal anneal = (FurnaceStep.Anneal) steps.get(0);
    assertEquals(28.0 / 3600, anneal.cooling(), TIGHT);
    assertEquals(FurnaceStep.Furnace.SALT, ((FurnaceStep.SolutionTreat) steps.get(1)).furnace());
    assertEquals(new FurnaceStep.QuenchAtRate(120), steps.get(2));
    assertEquals(new FurnaceStep.NaturalAge(7200), steps.get(3));
    FurnaceStep.Ramp byTime = ((FurnaceStep.Age) steps.get(4)).ramp();
    assertEquals(new FurnaceStep.Ramp(OptionalDouble.of(5400), OptionalDouble.empty()), byTime);
    FurnaceStep.Age overage = (FurnaceStep.Age) steps.get(5);
    assertEquals(100 / 1.8 / 3600, overage.ramp().rate().orElseThrow(), TIGHT);
    assertTrue(overage.overage());
    assertEquals(new FurnaceStep.Quench(QuenchMedium.BOILING_WATER, 373.15, 7), steps.get(7));
    assertEquals(new FurnaceStep.NaturalAge(30 * 86_400), steps.get(8));
  }

  @Test
  void aQuenchThatSaysNothingIsWaterOf25CelsiusAfter7Seconds() {
    String text =
        PLAIN
            + """
            after_weld:
              - solution_treat: {temperature: 530 °C, soak: 1 h}
              - quench: {}
            """;
    WeldCase weld = caseOf(text).weld();
    assertEquals(new FurnaceStep.Quench(QuenchMedium.WATER, 298.15, 7), weld.afterWeld().get(1));
    assertEquals(86_400, weld.naturalAge(), TIGHT);
    assertTrue(
        weld.notes()
            .contains(
                new Warning(
                    "quench-by-default", "Quench: water at 25 °C (77 °F) after a delay of 7 s.")));
  }

  @Test
  void aColdSolutionTreatmentIsNoted() {
    String text =
        PLAIN
            + """
            after_weld:
              - solution_treat: {temperature: 470 °C, soak: 1 h}
              - quench: {}
            """;
    List<String> codes = codes(caseOf(text).weld());
    assertTrue(codes.contains("cold-solution-treatment"));
  }

  @Test
  void ringAndTraverseAreRead() {
    String text =
        PLAIN + "ring: {diameter: 2 in, position: lap end}\ndepth: 1 mm\nambient: 50 °F\n";
    WeldCase weld = caseOf(text).weld();
    assertEquals(Optional.of(new Ring(0.0508, WeldCourse.Place.END)), weld.ring());
    assertEquals(0.001, weld.depth(), TIGHT);
    assertEquals(283.15, weld.ambient(), TIGHT);
    WeldCase worst = caseOf(PLAIN + "ring: {diameter: 60 mm}\n").weld();
    assertEquals(WeldCourse.Place.WORST, worst.ring().orElseThrow().position());
    assertEquals(Optional.empty(), worst.heatFlow());
    WeldCase flat = caseOf(PLAIN + "ring: {diameter: 60 mm}\nheat_flow: plate\n").weld();
    assertEquals(Optional.of(HeatFlow.PLATE), flat.heatFlow());
    WeldCase tapered = caseOf(PLAIN + "ring: {diameter: 60 mm, end_current: 80 %}\n").weld();
    assertEquals(0.8, tapered.ring().orElseThrow().endCurrent(), TIGHT);
  }

  @Test
  void aSeamIsRead() {
    String seam = "seam: {length: 4 in, beyond: 30 mm, position: middle, end_current: 75 %}\n";
    assertEquals(
        Optional.of(new Seam(0.1016, 0.03, WeldCourse.Place.MIDDLE, 0.75)),
        caseOf(PLAIN + seam).weld().seam());
    assertEquals(
        Optional.of(new Seam(0.05, 0, WeldCourse.Place.WORST, 1)),
        caseOf(PLAIN + "seam: {length: 50 mm}\n").weld().seam());
    String both = PLAIN + "ring: {diameter: 60 mm}\nseam: {length: 50 mm}\n";
    String together = Reading.lines(Reading.yaml(both)).get(0);
    assertTrue(together.contains("found together with ring"), together);
    String elsewhere = PLAIN + "seam: {length: 50 mm, position: half lap}\n";
    String wrong = Reading.lines(Reading.yaml(elsewhere)).get(0);
    assertTrue(wrong.contains("worst, start, middle, end"), wrong);
  }

  @Test
  void whatTheDrawingAsksIsRead() {
    String text = PLAIN + "require: {anodized_match: true, service_temperature: 150 °F}\n";
    Requirement asked = caseOf(text).requirement();
    assertEquals(Optional.of(true), asked.anodizedMatch());
    assertEquals(273.15 + (150 - 32) / 1.8, asked.serviceTemperature().orElseThrow(), TIGHT);
  }

  @Test
  void whatTheShopCanDoIsRead() {
    String text =
        PLAIN
            + """
            routes:
              furnace: {length: 6 ft, width: 1 m, height: 30 in}
              part: {length: 1 m, width: 40 cm, height: 12 mm}
              tank: {length: 2 m, width: 1 m, height: 1 m}
              distortion_allowance: 2 mm
              expected_movement: 1/16 in
              tempers_available: [T4, T651]
              target: 0.9
              order: [strength_margin, furnace hours]
            """;
    RouteSettings routes = caseOf(text).routes();
    RouteSettings.Box furnace = routes.furnace().orElseThrow();
    assertEquals(1.8288, furnace.length(), TIGHT);
    assertEquals(0.762, furnace.height(), TIGHT);
    assertTrue(routes.tank().orElseThrow().holds(routes.part().orElseThrow()));
    assertEquals(0.0015875, routes.expectedMovement().orElseThrow(), TIGHT);
    assertEquals(List.of("T4", "T6"), routes.tempersAvailable());
    assertEquals(0.9, routes.target().orElseThrow(), TIGHT);
    assertEquals(List.of("strength margin", "furnace hours"), routes.order());
  }

  @Test
  void jointAndSpreadSettingsAreRead() {
    String text =
        PLAIN
            + """
            gauge: 2 in
            bend: {angle: 120 deg, length: 200 mm, width: 1 in, load: edge}
            fillet: {leg: 6 mm, second_leg: 9 mm, length: 100 mm, load: across}
            tube: {diameter: 200 mm, pressure: 100 psi}
            member: {width: 6 in}
            spread: {runs: 500, seed: 42, dilution: 10 %, bead_width: 0.5 mm, travel_speed: 10 %,
                     furnace_temperature: 10 °F, quench_delay: 4 s, ageing_time: 10 %, composition: 5 %}
            """;
    CaseFile file = caseOf(text);
    assertEquals(0.0508, file.joint().gauge(), TIGHT);
    assertEquals(
        new BendSettings(Math.toRadians(120), 0.2, 0.0254, BendLoad.EDGE), file.joint().bend());
    assertEquals(
        Optional.of(new Fillet(0.006, 0.009, 0.1, FilletLoad.ACROSS)), file.joint().fillet());
    assertEquals(0.1524, file.joint().member().orElseThrow().width(), TIGHT);
    assertEquals(Optional.of(new Tube(0.2, 6.894757293168361e5)), file.joint().tube());
    assertEquals(OptionalInt.of(500), file.spread().runs());
    assertEquals(OptionalLong.of(42), file.spread().seed());
    assertEquals(0.1, file.spread().dilution().orElseThrow(), TIGHT);
    assertEquals(10 / 1.8, file.spread().furnaceTemperature().orElseThrow(), TIGHT);
    assertEquals(0.05, file.spread().composition().orElseThrow(), TIGHT);
  }

  @Test
  void aFaultFoundLaterIsPutWhereTheKeyStands() {
    CaseReading reading = Reading.yaml(FORK_ARM);
    Fault fault = reading.positions().fault("/passes/0/bead_width", "this heat melts no such bead");
    assertEquals("case.yaml:6:108: this heat melts no such bead", fault.toString());
    assertEquals(new Place(2, 1), reading.positions().place("/left"));
    assertEquals(new Place(2, 48), reading.positions().place("/left/thickness"));
    assertEquals(
        new Place(10, 42), reading.positions().place("/after_weld/1/quench/temperature/x"));
    assertEquals(new Place(6, 5), reading.positions().place("/passes/0/efficiency"));
    assertEquals(Place.START, reading.positions().place("/ring/diameter"));
  }

  private static List<String> codes(WeldCase weld) {
    return weld.notes().stream().map(Warning::code).toList();
  }
}
