package afterweld.cli;

import afterweld.material.Composition;
import afterweld.section.FillerChoice;
import afterweld.section.Joint;
import afterweld.section.OutputQuantity;
import afterweld.section.SectionProfile;
import afterweld.section.Side;
import afterweld.section.UnitSystem;
import afterweld.section.WeldCase;
import afterweld.section.WeldMetal;
import afterweld.section.WeldPool;
import afterweld.thermal.Pass;
import afterweld.thermal.PassHeat;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** What was welded and with how much heat, in lines for a person. */
final class Procedure {
  private static final double KILO = 1e3;
  private static final double MILLIMETRES = 1e3;
  private static final double INCHES = 1 / 0.0254;
  private static final double MINUTE = 60;

  private final SectionProfile profile;
  private final WeldCase weld;
  private final UnitSystem units;

  Procedure(SectionProfile profile, UnitSystem units) {
    this.profile = profile;
    this.weld = profile.weldCase();
    this.units = units;
  }

  /** Title and joint. */
  String head() {
    String parts =
        weld.left().equals(weld.right())
            ? side(weld.left())
            : side(weld.left()) + " (left) and " + side(weld.right()) + " (right)";
    String traverse =
        "Traverse "
            + length(weld.depth())
            + " below the arc side; distances from the weld centre, negative on the left.";
    return Paragraph.printable(weld.title())
        + "\n"
        + Paragraph.of(parts + ", " + joint())
        + Paragraph.of(traverse);
  }

  /** A bead on plate prepares no edge. */
  private String joint() {
    String kind =
        weld.joint() == Joint.BEAD
            ? "bead on plate"
            : weld.joint().label() + " joint, " + weld.preparation().label();
    return kind
        + weld.ring().map(ring -> ", ring " + length(ring.diameter())).orElse("")
        + weld.seam().map(seam -> ", weld length " + length(seam.length())).orElse("");
  }

  private String side(Side side) {
    return side.alloy().name() + "-" + side.temper().name() + " " + length(side.thickness());
  }

  /** Filler, dilution and what the pool froze to. */
  String weldMetal() {
    WeldMetal metal = profile.weldMetal();
    String composition =
        "composition "
            + composition(metal.composition())
            + " wt%, "
            + (WeldPool.meltingPossibleFrom450(metal.composition()) ? "may melt from " : "solidus ")
            + temperature(metal.solidus())
            + "; cracking "
            + metal.crackTendency().label();
    return Paragraph.of("weld metal: " + filler(metal) + "; " + composition);
  }

  private String filler(WeldMetal metal) {
    FillerChoice choice = weld.filler();
    if (choice.alloy().isEmpty()) {
      return "no filler, the melted base alone";
    }
    String dilution = "filler " + metal.filler() + ", dilution " + percent(metal.dilution());
    return choice.dilutionGiven()
        ? dilution + " as stated"
        : dilution
            + " by common practice ("
            + percent(metal.dilutionLow())
            + " to "
            + percent(metal.dilutionHigh())
            + ")";
  }

  private static String composition(Composition composition) {
    return composition.toMap().entrySet().stream()
        .map(share -> share.getKey().symbol() + " " + rounded(share.getValue(), 2))
        .collect(Collectors.joining(", "));
  }

  /** The heat of every pass and where its efficiency comes from. */
  String passes() {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < profile.passes().size(); i++) {
      text.append(Paragraph.of("pass " + (i + 1) + ": " + pass(profile.passes().get(i), i)));
    }
    return text.toString();
  }

  private String pass(PassHeat heat, int number) {
    Pass pass = heat.pass();
    return pass.process().label()
        + " "
        + rounded(pass.current(), 0)
        + " A, "
        + rounded(pass.voltage(), 1)
        + " V, "
        + speed(pass.travelSpeed())
        + ", "
        + start(pass, number)
        + "; "
        + efficiency(heat)
        + "; heat into the metal "
        + heatInput(heat.netPower() / pass.travelSpeed());
  }

  private String start(Pass pass, int number) {
    String pause =
        pass.pause().isPresent()
            ? ", pause " + rounded(pass.pause().getAsDouble() / 60, 1) + " min"
            : "";
    return (number == 0 ? "preheat " : "interpass ") + temperature(pass.startTemperature()) + pause;
  }

  private String efficiency(PassHeat heat) {
    return "arc efficiency " + rounded(heat.efficiency(), 2) + efficiencyOrigin(heat);
  }

  private String efficiencyOrigin(PassHeat heat) {
    if (heat.calibratedBy().isPresent()) {
      boolean own = heat.pass().beadWidth().isPresent();
      String width = " from the bead width " + length(heat.calibratedBy().getAsDouble());
      return own ? width : width + " of an earlier pass";
    }
    if (heat.pass().efficiency().isPresent()) {
      return " as stated";
    }
    return ", the usual for the process ("
        + rounded(heat.efficiencyLow(), 2)
        + " to "
        + rounded(heat.efficiencyHigh(), 2)
        + "; a bead width would settle it)";
  }

  private String heatInput(double joulesPerMetre) {
    return units == UnitSystem.METRIC
        ? rounded(joulesPerMetre / KILO / MILLIMETRES, 2) + " kJ/mm"
        : rounded(joulesPerMetre / KILO / INCHES, 1) + " kJ/in";
  }

  private String speed(double metresPerSecond) {
    return units == UnitSystem.METRIC
        ? rounded(metresPerSecond * MILLIMETRES, 2) + " mm/s"
        : rounded(metresPerSecond * INCHES * MINUTE, 1) + " in/min";
  }

  private String length(double metres) {
    return OutputQuantity.DISTANCE.text(units, metres) + " " + units.lengthUnit();
  }

  private String temperature(double kelvin) {
    return OutputQuantity.PEAK_TEMPERATURE.text(units, kelvin) + " " + units.temperatureUnit();
  }

  private static String percent(double share) {
    return rounded(100 * share, 0) + " %";
  }

  private static String rounded(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }
}
