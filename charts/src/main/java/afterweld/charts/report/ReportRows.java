package afterweld.charts.report;

import afterweld.choice.RouteResult;
import afterweld.choice.filler.FillerOption;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.DesignCodeValue;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.MemberReport;
import afterweld.joint.SliceLine;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.Station;
import afterweld.section.WeldMetalTrial;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rows of the report's tables, in one system of units: texts by the names of the template. */
final class ReportRows {
  private final SectionProfile profile;
  private final JointReport joint;
  private final UnitSystem units;

  ReportRows(SectionProfile profile, JointReport joint, UnitSystem units) {
    this.profile = profile;
    this.joint = joint;
    this.units = units;
  }

  static String metals(JointStrength strength) {
    return strength.failsIn().stream()
        .map(ReportRows::metal)
        .collect(Collectors.joining(" or the "));
  }

  private static String metal(String zone) {
    if (zone.equals(Zone.FUSION.label())) {
      return "weld metal";
    }
    return zone.equals(Zone.BASE.label()) ? "base metal" : zone + " zone";
  }

  String text(OutputQuantity quantity, double si) {
    return quantity.text(units, si) + " " + quantity.unit(units);
  }

  Map<String, String> jointRow(JointStrength strength) {
    return Map.of(
        "state", profile.label(strength.state()),
        "bead", strength.bead().label(),
        "proof", stress(strength.proof()),
        "overTwoInches",
            joint.overTwoInches(strength).map(other -> stress(other.proof())).orElse("–"),
        "tensile", stress(strength.tensile()),
        "efficiency", strength.middle().map(ReportRows::efficiency).orElse("–"),
        "failsIn", strength.middle().isPresent() ? metals(strength) : "–",
        "elongation",
            strength
                .middle()
                .flatMap(CrossWeldTension::elongation)
                .map(ReportRows::elongation)
                .orElse("–"));
  }

  private String stress(OptionalDouble pascal) {
    return OutputQuantity.YIELD.text(units, pascal.orElse(Double.NaN));
  }

  static String efficiency(CrossWeldTension pull) {
    long left = Math.round(100 * pull.tensileEfficiency().left());
    long right = Math.round(100 * pull.tensileEfficiency().right());
    return left == right ? left + " %" : left + " % (left), " + right + " % (right)";
  }

  private static String elongation(SliceLine.Band band) {
    return String.format(Locale.ROOT, "%.0f to %.0f %%", 100 * band.low(), 100 * band.high());
  }

  Map<String, Object> zoneRow(ZoneSpan span) {
    return Map.of(
        "zone", span.zone().label(),
        "side", span.place().label(),
        "from", OutputQuantity.DISTANCE.text(units, span.from()),
        "to", OutputQuantity.DISTANCE.text(units, span.to()),
        "lowest",
            span.lowestHardness().stream()
                .map(value -> OutputQuantity.HARDNESS.text(units, value))
                .toList());
  }

  Map<String, String> codeRow(DesignCodeValue value) {
    return Map.of(
        "item", value.item(),
        "value", value.text(units),
        "status", source(value));
  }

  /** Where a code's value comes from; the code itself where the source does not name it. */
  private static String source(DesignCodeValue value) {
    return value.status().contains(value.code())
        ? value.status()
        : value.code() + " " + value.clause() + "; " + value.status();
  }

  Map<String, String> memberRow(MemberReport member, MemberReport.State state) {
    Optional<MemberReport.Codes> codes = member.codesFor(state);
    return Map.of(
        "state", profile.label(state.state()),
        "proof", force(state.proofForce()),
        "greatest", force(state.greatestForce()),
        "reach", OutputQuantity.DISTANCE.text(units, state.equivalentReach()),
        "en", codes.map(code -> force(code.en())).orElse("–"),
        "design", codes.map(code -> force(code.enDesign())).orElse("–"),
        "us", codes.map(code -> force(code.us())).orElse("–"));
  }

  private String force(double newton) {
    return String.format(Locale.ROOT, "%.1f", units.force(newton));
  }

  Map<String, Object> stationRow(Station station) {
    List<String> values = new ArrayList<>();
    station.estimates().forEach(estimate -> values.addAll(values(estimate.middle())));
    return Map.of(
        "distance", OutputQuantity.DISTANCE.text(units, station.distance()),
        "zone", station.zone().label(),
        "peak", OutputQuantity.PEAK_TEMPERATURE.text(units, station.peakTemperature()),
        "values", values);
  }

  private List<String> values(Strength strength) {
    return List.of(
        OutputQuantity.HARDNESS.text(units, strength.hardness()),
        OutputQuantity.YIELD.text(units, strength.yield()),
        OutputQuantity.TENSILE.text(units, strength.tensile()));
  }

  Map<String, String> fillerRow(FillerOption option) {
    return Map.of(
        "welded", yieldIn(option, WeldMetalTrial.Result::asWelded),
        "treated", yieldIn(option, WeldMetalTrial.Result::treated),
        "colour", option.anodizedMatch(),
        "ductility",
            option.ductility().isPresent() ? Integer.toString(option.ductility().getAsInt()) : "–",
        "filler", option.filler(),
        "use", option.allowed() ? "yes" : "no",
        "answer", option.answer().label(),
        "crack", option.crack().label(),
        "reasons", String.join(" ", option.sentences()));
  }

  private String yieldIn(FillerOption option, Function<WeldMetalTrial.Result, Strength> state) {
    return option
        .result()
        .map(result -> state.apply(result).yield())
        .filter(pascal -> !Double.isNaN(pascal))
        .map(pascal -> OutputQuantity.YIELD.text(units, pascal))
        .orElse("–");
  }

  Map<String, String> routeRow(RouteResult route) {
    return Map.of(
        "route", route.name(),
        "allowed", route.allowed() ? (route.open() ? "open" : "yes") : "no",
        "proof", stress(route.joint().proof()),
        "tensile", stress(route.joint().tensile()),
        "constraints",
            route.constraints().stream()
                .map(constraint -> constraint.name() + ": " + constraint.state().label())
                .collect(Collectors.joining("; ")));
  }
}
