package afterweld.casefile;

import static afterweld.casefile.Reading.PLAIN;
import static afterweld.casefile.Reading.assertFaults;
import static afterweld.casefile.Reading.plainWith;
import static afterweld.casefile.Reading.treatment;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults in the heat treatment after welding. */
class HeatTreatmentFaultsTest {
  private static final String STEPS =
      "expected a list of steps, each with one key: solution_treat, quench, natural_age, age,"
          + " anneal";
  private static final String DISSOLVE = "  - solution_treat: {temperature: 530 °C, soak: 1 h}\n";

  private static String solution(String temperature) {
    return "  - solution_treat: {temperature: " + temperature + ", soak: 1 h}\n  - quench: {}\n";
  }

  @Test
  void aSolutionTreatmentWithoutAQuenchAfterItIsAFault() {
    assertFaults(
        treatment(DISSOLVE),
        "^solution_treat",
        "solution_treat: expected a quench as the next step");
    assertFaults(
        treatment(DISSOLVE + "  - natural_age: 2 h\n  - quench: {}\n"),
        "^solution_treat",
        "solution_treat: expected a quench as the next step",
        "^quench",
        "quench: expected a solution_treat as the step before");
  }

  @Test
  void aMistypedQuenchIsOneFaultNotTwo() {
    assertFaults(
        treatment(DISSOLVE + "  - qench: {}\n"),
        "^qench",
        "unknown step 'qench'; " + STEPS + "; did you mean 'quench'?");
  }

  @Test
  void everyStepHasExactlyOneKey() {
    assertFaults(
        treatment(
            """
              - {natural_age: 1 h, age: {temperature: 170 °C, time: 8 h}}
              - rest
              - {}
            """),
        "^{natural_age",
        "after_weld: found 2 keys in one step; " + STEPS,
        "^rest",
        "after_weld: found 'rest'; " + STEPS,
        "^{}",
        "after_weld: found 0 keys in one step; " + STEPS);
    assertFaults(
        PLAIN + "after_weld: age\n", "after_weld: ^age", "after_weld: found 'age'; " + STEPS);
  }

  @Test
  void aStepWithoutItsKeysIsAFault() {
    assertFaults(
        treatment(
            """
              - age:
              - anneal: {hold: 2 h}
              - natural_age: 2
            """),
        "- age:^",
        "age: found nothing; expected temperature and time, and ramp or overage where they matter",
        "^anneal",
        "anneal has no temperature; expected a temperature from 50 to 650 °C (units: °C, °F, K)",
        "^anneal",
        "anneal has no time; expected a time from 0.001 to 1000 h (units: s, min, h, days)",
        "^hold",
        "unknown key 'hold'; known here: temperature, time, cooling",
        "natural_age: ^2",
        "natural_age: found '2', a number without a unit; expected a time above 0, up to 3650 days"
            + " (units: s, min, h, days)");
  }

  /** 30 % of 6061 in 4643 has Mg 0.44 and Si 3.05: Al-Mg2Si-Si eutectic, 557 °C (from memory). */
  @Test
  void aSolutionTreatmentStaysElevenKelvinUnderTheWeldMetal() {
    assertFaults(
        treatment(solution("547 °C")),
        "^547 °C",
        "temperature: found 547 °C (1017 °F); expected at most 546 °C (1016 °F): the weld metal as"
            + " deposited begins to melt at 557 °C (1035 °F), less 6 °C (10 °F) for the furnace"
            + " and a margin of 5 °C (9 °F)");
    assertFaults(treatment(solution("546 °C")));
  }

  /** Solidus of 6061: 582 °C (Aluminum Association, from memory). */
  @Test
  void aSolutionTreatmentStaysElevenKelvinUnderTheBase() {
    String none = plainWith("{alloy: \"4643\", dilution: 30 %}", "none") + "after_weld:\n";
    assertFaults(
        none + solution("572 °C"),
        "^572 °C",
        "temperature: found 572 °C (1062 °F); expected at most 571 °C (1061 °F): the base metal"
            + " begins to melt at 582 °C (1080 °F), less 6 °C (10 °F) for the furnace and a"
            + " margin of 5 °C (9 °F)");
    assertFaults(none + solution("571 °C"));
  }

  /**
   * Weld metal on 6061: with copper from the filler 521 °C, with silicon and magnesium 557 °C, with
   * silicon alone 574 °C (all from memory); with hardly any filler the base's 582 °C.
   */
  @ParameterizedTest
  @CsvSource({"4145, 30 %, 510", "4043, 40 %, 546", "4043, 5 %, 563", "4643, 95 %, 571"})
  void theWeldMetalDecidesByItsEutectic(String filler, String dilution, int highest) {
    String weld = PLAIN.replace("4643", filler).replace("30 %", dilution) + "after_weld:\n";
    assertFaults(weld + solution(highest + " °C"));
    assertEquals(1, Reading.yaml(weld + solution(highest + 1 + " °C")).faults().size());
  }

  @Test
  void anAnnealDoesNotMeltTheJointEither() {
    assertFaults(
        treatment("  - anneal: {temperature: 560 °C, time: 1 h}\n"),
        "^560 °C",
        "temperature: found 560 °C (1040 °F); expected at most 546 °C (1016 °F): the weld metal as"
            + " deposited begins to melt at 557 °C (1035 °F), less 6 °C (10 °F) for the furnace"
            + " and a margin of 5 °C (9 °F)");
  }

  @Test
  void ageingFrom260CelsiusOnMustBeMeant() {
    String expected =
        "; expected an ageing temperature under 260 °C (500 °F), or overage: true beside it if"
            + " softening is meant";
    assertFaults(
        treatment("  - age: {temperature: 500 °F, time: 1 h}\n"),
        "^500 °F",
        "temperature: found 260 °C (500 °F)" + expected);
    assertFaults(
        treatment("  - age: {temperature: 300 °C, time: 1 h, overage: false}\n"),
        "^300 °C",
        "temperature: found 300 °C (572 °F)" + expected);
    assertFaults(treatment("  - age: {temperature: 300 °C, time: 1 h, overage: true}\n"));
    assertFaults(treatment("  - age: {temperature: 259 °C, time: 1 h}\n"));
  }

  @Test
  void timesAndRatesHaveTheirRange() {
    assertFaults(
        treatment(
            """
              - solution_treat: {temperature: 530 °C, soak: 0 h}
              - quench: {rate: 6000 K/s}
              - age: {temperature: 170 °C, time: 60 days}
            """),
        "^0 h}",
        "soak: found '0 h'; expected a time from 0.001 to 1000 h",
        "^6000 K/s",
        "rate: found '6000 K/s'; expected a rate of temperature from 0.005 to 5000 K/s",
        "^60 days",
        "time: found '60 days' (1440 h); expected a time from 0.001 to 1000 h");
  }

  @Test
  void theQuenchIsChecked() {
    assertFaults(
        treatment(DISSOLVE + "  - quench: {medium: watre, temperature: 120 °C, delay: 8}\n"),
        "^watre",
        "medium: found 'watre'; expected one of water, polymer, spray, forced-air, still-air,"
            + " boiling-water; did you mean 'water'?",
        "^120 °C",
        "temperature: found '120 °C'; expected a temperature from 0 to 100 °C",
        "delay: ^8",
        "delay: found '8', a number without a unit; expected a time from 0 to 3600 s (units: s, min,"
            + " h, days)");
    assertFaults(
        treatment(DISSOLVE + "  - quench: {rate: 3 K/s, medium: water}\n"),
        "^medium",
        "medium: found together with rate, which says it all; expected one of them");
  }

  @Test
  void aRampIsATimeOrARate() {
    assertFaults(
        treatment("  - age: {temperature: 170 °C, time: 8 h, ramp: slow}\n"),
        "^slow",
        "ramp: found 'slow'; expected a time from 0.001 to 1000 h (units: s, min, h, days), or a"
            + " rate of temperature from 0.02 to 6000 K/min (units: K/s, K/min, K/h, °F/s, °F/min,"
            + " °F/h)");
  }

  /** Rule of the trade: fillers with over 3 % Mg take part in no full treatment. */
  @Test
  void aFillerWithMuchMagnesiumIsRefusedBeforeASolutionFurnace() {
    String rich = PLAIN.replace("4643", "5356") + "after_weld:\n" + solution("530 °C");
    List<String> faults = Reading.lines(Reading.yaml(rich));
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(faults.get(0).contains("5356 has more than 3 % Mg"), faults.get(0));
    assertFaults(PLAIN.replace("4643", "5356") + "after_weld:\n" + AGE);
  }

  private static final String AGE = "  - age: {temperature: 177 °C, time: 8 h}\n";
}
