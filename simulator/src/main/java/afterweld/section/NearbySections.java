package afterweld.section;

import afterweld.section.heat.CaseHeat;
import afterweld.thermal.HeatInputException;
import afterweld.thermal.shell.ShellVariants;
import afterweld.weld.WeldCase;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Sections of cases that differ little from one, for studies that need many of them: at fewer
 * stations, with no runs at the ends of defaults, in the temperature field of that one case (a
 * transient field on a coarser net).
 */
public final class NearbySections {
  private final CaseHeat heat;
  private final Optional<ShellVariants> variants;

  /** Sections near that of a case whose heat is known. */
  NearbySections(CaseHeat heat) {
    this.heat = heat;
    this.variants = heat.variants();
  }

  /**
   * The section of a case that differs from the first one in composition, filler, speed, heat,
   * width or heat treatment.
   *
   * @throws HeatInputException if its passes cannot make the weld
   */
  public SectionProfile of(WeldCase other) {
    WeldMemory memory = WeldMemory.of(heat.of(other, variants));
    return new SectionSimulation(other, false, StationDensity.THIN, memory, () -> false).profile();
  }

  /** The preview of such a case's section. */
  SectionProfile preview(WeldCase other, BooleanSupplier outdated) {
    WeldMemory memory = WeldMemory.of(heat.of(other, variants));
    return new SectionSimulation(other, false, StationDensity.FULL, memory, outdated).preview();
  }
}
