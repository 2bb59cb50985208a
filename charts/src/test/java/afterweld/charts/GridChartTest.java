package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Legend;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.quantity.UnitSystem;
import afterweld.study.Aim;
import afterweld.study.GridInput;
import afterweld.study.GridStudy;
import afterweld.study.GridStudy.Axis;
import afterweld.study.GridStudy.Band;
import afterweld.study.GridStudy.Node;
import afterweld.study.JointFigures;
import afterweld.study.JointPlace;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What is said beside a map, on maps that are made up. */
class GridChartTest {
  private static final List<Axis> AXES =
      List.of(new Axis(GridInput.CURRENT, 80, 120), new Axis(GridInput.PREHEAT, 293.15, 393.15));

  /** Tensile strength in MPa by place, with a band of a tenth either way; a width of 5 mm. */
  private static GridChart chart(IntToDoubleFunction yield, double width) {
    List<Node> nodes =
        IntStream.range(0, GridStudy.size(2))
            .mapToObj(i -> node(1e6 * yield.applyAsDouble(i), width))
            .toList();
    GridStudy study =
        new GridStudy(Aim.of(Requirement.NONE), AXES, nodes, JointPlace.none("none"), List.of());
    return new GridChart(study, UnitSystem.METRIC);
  }

  private static Node node(double tensile, double width) {
    JointPlace joint =
        Double.isNaN(tensile)
            ? JointPlace.none("not sound")
            : new JointPlace(
                tensile,
                0.9 * tensile,
                new JointFigures(tensile / 2, tensile, 70),
                Judgement.NOTHING_ASKED,
                "",
                List.of());
    return new Node(List.of(100.0, 300.0), joint, Band.NONE, width, 8e-3);
  }

  private static String said(GridChart chart) {
    return chart.even(chart.strength());
  }

  private static String words(GridChart chart) {
    return String.join(" ", chart.notes())
        + chart.legend().stream().map(Legend.Entry::name).toList();
  }

  @Test
  void aMapThatIsTheSameEverywhereClaimsNoShades() {
    GridChart even = chart(i -> 261.0, 5e-3);
    assertEquals("the same everywhere: 261 MPa", even.even(even.strength()));
    assertEquals(
        List.of("joint tensile strength", "width of the metal over 2 % below the base"),
        even.legend().stream().map(Legend.Entry::name).toList());
    assertEquals(
        "the same everywhere within 1 %: 261 MPa to 263 MPa",
        said(chart(i -> i % 2 == 0 ? 261.0 : 263, 5e-3)));
    assertEquals(
        "the same wherever there is a value: 261 MPa",
        said(chart(i -> i == 3 ? Double.NaN : 261.0, 5e-3)));
    assertEquals(
        "no metal over 2 % below the base",
        chart(i -> 261.0, 0).even(chart(i -> 261.0, 0).width()));
  }

  @Test
  void differencesInsideTheBandAreSaidToBe() {
    String inside = "inside the model's own error";
    assertTrue(words(chart(i -> 261 + 0.1 * i, 5e-3)).contains(inside));
    assertFalse(words(chart(i -> 261 + i, 5e-3)).contains(inside));
    assertFalse(words(chart(i -> 261.0, 5e-3)).contains(inside), "there are none to speak of");
    assertTrue(words(chart(i -> 261 + i, 5e-3)).contains("darker is stronger"));
  }

  /** After a full treatment it may be weld metal alone, which nothing softened. */
  @Test
  void theWidthIsCalledWhatItIs() {
    String words = words(chart(i -> 261 + i, 5e-3));
    assertFalse(words.contains("soften"), words);
    assertTrue(words.contains("base or weld, with a yield over 2 % below"), words);
  }
}
