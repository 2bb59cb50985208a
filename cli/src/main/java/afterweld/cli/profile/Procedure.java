package afterweld.cli.profile;

import afterweld.cli.terminal.Paragraph;
import afterweld.material.Composition;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.weld.FillerChoice;
import afterweld.weld.Joint;
import afterweld.weld.PassWords;
import afterweld.weld.Side;
import afterweld.weld.WeldCase;
import afterweld.weldmetal.WeldMetal;
import afterweld.weldmetal.WeldPool;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.stream.Collectors;

/** What was welded and with how much heat, in lines for a person. */
public final class Procedure {
  private final SectionProfile profile;
  private final WeldCase weld;
  private final UnitSystem units;

  public Procedure(SectionProfile profile, UnitSystem units) {
    this.profile = profile;
    this.weld = profile.weldCase();
    this.units = units;
  }

  /** Title and joint. */
  public String head() {
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
    PassWords words = new PassWords(units);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < profile.passes().size(); i++) {
      text.append(Paragraph.of("pass " + (i + 1) + ": " + words.of(profile.passes().get(i), i)));
    }
    return text.toString();
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
