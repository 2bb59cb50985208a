package afterweld.section;

import afterweld.strength.Strength;
import afterweld.thermal.furnace.FurnaceHistory;
import afterweld.thermal.furnace.FurnaceStep;
import afterweld.weld.Side;
import java.util.List;

/** What the base of a side becomes in a furnace, without any weld. */
public final class BaseTrial {
  private BaseTrial() {}

  /** Strength after the last step. */
  public static Strength of(Side side, List<FurnaceStep> steps) {
    List<Strength> strengths =
        SectionMetal.base(side)
            .follow(
                new FurnaceHistory(side.alloy(), side.temper().name(), side.thickness()).of(steps));
    return strengths.get(strengths.size() - 1);
  }
}
