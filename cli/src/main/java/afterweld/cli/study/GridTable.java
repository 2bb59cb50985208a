package afterweld.cli.study;

import afterweld.cli.command.NoticesText;
import afterweld.cli.terminal.Paragraph;
import afterweld.document.Notices;
import afterweld.quantity.UnitSystem;
import afterweld.study.GridStudy;
import afterweld.weld.WeldCase;
import java.util.Locale;
import java.util.stream.Collectors;

/** A map over one or two inputs as a person reads it. */
final class GridTable {
  private final WeldCase weldCase;
  private final GridStudy study;
  private final Notices notices;
  private final UnitSystem units;

  GridTable(WeldCase weldCase, GridStudy study, Notices notices, UnitSystem units) {
    this.notices = notices;
    this.weldCase = weldCase;
    this.study = study;
    this.units = units;
  }

  /** What a person reads. */
  String text() {
    String over =
        study.inputs().stream().map(in -> in.label(units)).collect(Collectors.joining(" and "));
    return Paragraph.of(weldCase.title())
        + Paragraph.of(
            "Map over "
                + over
                + ", "
                + study.nodes().size()
                + " places; last state, dressed flush. The bead follows the inputs at the arc"
                + " efficiency of the case, "
                + efficiencies()
                + ": write that as efficiency, in place of bead_width, to have a place as a case.")
        + "\n"
        + NoticesText.of(notices)
        + "\n"
        + answer();
  }

  private String efficiencies() {
    return study.efficiencies().stream()
        .map(efficiency -> String.format(Locale.ROOT, "%.3f", efficiency))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** The answer only. */
  String answer() {
    return new GridAnswer(study, units).text();
  }
}
