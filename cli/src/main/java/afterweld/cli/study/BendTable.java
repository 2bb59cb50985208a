package afterweld.cli.study;

import afterweld.cli.profile.Procedure;
import afterweld.cli.terminal.Paragraph;
import afterweld.cli.terminal.TextTable;
import afterweld.document.Notices;
import afterweld.document.ResultCautions;
import afterweld.joint.JointSettings.BendLoad;
import afterweld.joint.bend.BendOutlook;
import afterweld.joint.bend.BendReport;
import afterweld.joint.bend.BentState;
import afterweld.joint.bend.GuidedBend;
import afterweld.joint.bend.StripBend;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code bend}. */
final class BendTable {
  private static final String MEANING =
      "Radius of the middle of the strip: at its flatter end and at its sharpest place. Kink: the"
          + " sharpest curvature over the mean, 1 for an even bend. Strain: of the outer surface."
          + " Sharpest radius, kink and strain are averaged over one thickness. Back: springback.";

  private static final double NEWTON_METRE_PER_INCH_POUND = 0.1129848290276167;

  private final SectionProfile profile;
  private final BendReport report;
  private final UnitSystem units;

  BendTable(SectionProfile profile, BendReport report, UnitSystem units) {
    this.profile = profile;
    this.report = report;
    this.units = units;
  }

  /** The whole of it. */
  String text() {
    return new Procedure(profile, units).head()
        + Paragraph.of(strip())
        + report.loads().stream().map(this::table).collect(Collectors.joining())
        + "\n"
        + Paragraph.of(MEANING)
        + Paragraph.of(BendReport.EDGE_NOTE)
        + "\n"
        + guided()
        + "\n"
        + Paragraph.of("Warnings and assumptions")
        + Notices.of(profile, report.warnings()).stream()
            .map(warning -> Paragraph.hanging("- ", warning.text()))
            .collect(Collectors.joining())
        + "\n"
        + Paragraph.of(ResultCautions.bend(profile))
        + "\n"
        + answer();
  }

  private String strip() {
    return String.format(
        Locale.ROOT,
        "Strip %s long, %s wide, %s thick, bead dressed flush, bent to %.0f degrees under load.",
        length(report.strip().length()),
        length(report.strip().width()),
        length(report.thickness()),
        Math.toDegrees(report.strip().angle()));
  }

  private String table(BendLoad load) {
    TextTable table =
        new TextTable(
            load == BendLoad.COUPLES ? "by end couples" : "over an edge",
            " " + momentUnit(),
            " radius " + units.lengthUnit(),
            " sharpest",
            " kink",
            " strain %",
            " back deg");
    for (int i = 0; i < profile.states().size(); i++) {
      table.row(cells(profile.label(i), report.state(i).map(bent -> bent.by(load))));
    }
    return "\n" + table.text();
  }

  private String[] cells(String state, Optional<StripBend> bent) {
    if (bent.isEmpty()) {
      return new String[] {state, "–", "–", "–", "–", "–", "–"};
    }
    StripBend bend = bent.get();
    return new String[] {
      state,
      moment(bend.moment()),
      radius(bend.endCurvature()),
      radius(bend.averagedPeakCurvature()),
      decimal(bend.averagedKinkFactor()),
      decimal(100 * bend.averagedOuterStrain()),
      decimal(Math.toDegrees(bend.springback()))
    };
  }

  private String momentUnit() {
    return units == UnitSystem.METRIC ? "N m" : "in lbf";
  }

  private String moment(double newtonMetre) {
    return decimal(
        units == UnitSystem.METRIC ? newtonMetre : newtonMetre / NEWTON_METRE_PER_INCH_POUND);
  }

  /** The flat end of a strip bent over an edge carries no moment: it has no radius. */
  private String radius(double perMetre) {
    double radius = units.length(1 / perMetre);
    boolean straight = radius > 100 * units.length(report.strip().length());
    return straight
        ? "straight"
        : String.format(Locale.ROOT, units == UnitSystem.METRIC ? "%.1f" : "%.2f", radius);
  }

  private String length(double metres) {
    return OutputQuantity.DISTANCE.text(units, metres) + " " + units.lengthUnit();
  }

  private static String decimal(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  private String guided() {
    return Paragraph.of(report.asks())
        + report.states().stream()
            .map(bent -> Paragraph.hanging("- ", stretch(bent)))
            .collect(Collectors.joining())
        + Paragraph.of(GuidedBend.PLUNGER_NOTE)
        + Paragraph.of(BendReport.DUCTILITY_NOTE)
        + Paragraph.of(BendReport.forming(profile.weldCase()));
  }

  private String stretch(BentState bent) {
    return profile.label(bent.state())
        + ": "
        + bent.stretch().map(this::stretch).orElse(bent.noStretch() + "; no former is worked out.");
  }

  private String stretch(BentState.Stretch stretch) {
    String sharpest =
        stretch.sharpest().equals(stretch.least())
            ? ""
            : "; "
                + percent(stretch.sharpest().strain())
                + " where the bend is sharpest ("
                + stretch.sharpest().zone()
                + ")";
    double former = GuidedBend.smallestFormer(report.specimen(), stretch.least().strain());
    return "the metal stretches evenly by at least "
        + percent(stretch.least().strain())
        + " ("
        + stretch.least().zone()
        + ")"
        + sharpest
        + ". A wrapped bend of "
        + length(report.specimen())
        + " thickness asks no more from a former of "
        + length(former)
        + " on.";
  }

  /** The answer only. */
  String answer() {
    if (report.states().isEmpty()) {
      return Paragraph.of("No state of this joint could be bent; the warnings say why.");
    }
    return report.states().stream()
            .map(bent -> Paragraph.of(answer(bent)))
            .collect(Collectors.joining())
        + report.warnings().stream()
            .filter(warning -> warning.code().equals(BendReport.NOT_BENT))
            .map(warning -> Paragraph.of(warning.text()))
            .collect(Collectors.joining())
        + report.outlooks().stream()
            .map(outlook -> Paragraph.of(outlook(outlook)))
            .collect(Collectors.joining());
  }

  private String outlook(BendOutlook outlook) {
    return "Guided bend, "
        + profile.states().get(outlook.state())
        + ", if the weld is sound: "
        + outlook.text()
        + ".";
  }

  private String answer(BentState bent) {
    StripBend bend = bent.couples();
    return profile.label(bent.state())
        + ", by end couples: "
        + moment(bend.moment())
        + " "
        + momentUnit()
        + ", kink factor "
        + decimal(bend.averagedKinkFactor())
        + ", half of the angle within "
        + length(bend.halfAngleWithin())
        + " of the weld centre, outer strain "
        + percent(bend.averagedOuterStrain())
        + ", springs back "
        + decimal(Math.toDegrees(bend.springback()))
        + " degrees.";
  }
}
