package afterweld.charts;

import afterweld.charts.plot.Dash;
import afterweld.charts.plot.Ink;
import afterweld.charts.plot.LineLook;
import afterweld.charts.plot.MarkerShape;
import java.util.List;

/**
 * How the states of a section are drawn, the same in every chart.
 *
 * <p>The three main states lie on top of each other where the weld changed nothing, so each is
 * narrower than the one below it: a broad pale line before welding, a full line as welded, a dashed
 * line after heat treatment. The states between are thin.
 */
final class StateLooks {
  private static final LineLook BEFORE = LineLook.plain(Ink.STONE, 9, Dash.SOLID);
  private static final LineLook AS_WELDED =
      new LineLook(Ink.EMBER, 5, Dash.SOLID, MarkerShape.SQUARE);
  private static final LineLook AFTER =
      new LineLook(Ink.DEEP_BLUE, 4.5f, Dash.LONG, MarkerShape.CIRCLE);
  private static final List<LineLook> STAGES =
      List.of(
          LineLook.plain(Ink.LAGOON, 2.6f, Dash.LONG_DOT),
          LineLook.plain(Ink.PLUM, 2.6f, Dash.SHORT),
          LineLook.plain(Ink.OCHRE, 3.2f, Dash.DOTS),
          LineLook.plain(Ink.PINE, 2.2f, Dash.WIDE),
          LineLook.plain(Ink.ROSE, 2.6f, Dash.LONG_TWO_DOTS),
          new LineLook(Ink.LAGOON, 2, Dash.SOLID, MarkerShape.TRIANGLE),
          new LineLook(Ink.PLUM, 2, Dash.SOLID, MarkerShape.DIAMOND));

  private StateLooks() {}

  /** Whether the state is one of the three that carry the story. */
  static boolean main(int state, int states) {
    return state < 2 || state == states - 1;
  }

  /** The look of the state with that place in the profile's list. */
  static LineLook of(int state, int states) {
    if (state == 0) {
      return BEFORE;
    }
    if (state == 1) {
      return AS_WELDED;
    }
    return state == states - 1 ? AFTER : STAGES.get((state - 2) % STAGES.size());
  }
}
