package afterweld.charts.report;

import afterweld.charts.Picture;
import afterweld.choice.FillerAnswer;
import afterweld.choice.FillerComparison;
import afterweld.choice.FillerOption;
import afterweld.choice.Judgement;
import afterweld.choice.Objection;
import afterweld.choice.RouteResult;
import afterweld.choice.RouteStudy;
import afterweld.joint.CrossWeldTension;
import afterweld.joint.DesignCodeValue;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.MemberReport;
import afterweld.joint.SliceLine;
import afterweld.joint.SoftenedReach;
import afterweld.section.BothUnits;
import afterweld.section.OutputQuantity;
import afterweld.section.PassWords;
import afterweld.section.Preparation;
import afterweld.section.SectionProfile;
import afterweld.section.Side;
import afterweld.section.Soundness;
import afterweld.section.Station;
import afterweld.section.UnitSystem;
import afterweld.section.Warning;
import afterweld.section.WeldMetalTrial;
import afterweld.section.Zone;
import afterweld.section.ZoneSpan;
import afterweld.strength.Strength;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The report of a profile: what an engineer hands to a customer. The answer comes first, then the
 * pictures and the joint, then all that is needed to judge them.
 */
public final class ProfileReport {
  private static final String TEMPERATURE = "temperature";
  private static final double NEWTON_PER_KIP = 4448.2216152605;

  private final SectionProfile profile;
  private final JointReport joint;
  private final Judgement judgement;
  private final List<Objection> objections;
  private final UnitSystem units;

  /** A report in one system of units. */
  public ProfileReport(
      SectionProfile profile,
      JointReport joint,
      Judgement judgement,
      List<Objection> objections,
      UnitSystem units) {
    this.profile = profile;
    this.joint = joint;
    this.judgement = judgement;
    this.objections = List.copyOf(objections);
    this.units = units;
  }

  /**
   * The page.
   *
   * @param pictures drawn pictures of the profile, in the order they are shown
   * @param fillers comparison of fillers and its picture, if it is to be in the report
   * @param routes routes, if they are to be in the report
   */
  public String page(
      List<Picture.Files> pictures, Optional<FillerPart> fillers, Optional<RouteStudy> routes) {
    Map<String, Object> values = new HashMap<>();
    values.put("title", profile.weldCase().title());
    values.put("subject", subject());
    putObjections(values);
    values.put("answers", answers());
    values.put("verdict", judgement.asked() ? judgement.verdict().label() : "none asked");
    values.put("reasons", judgement.reasons());
    values.put("pictures", shown(pictures, name -> !name.equals(TEMPERATURE)));
    values.put("temperatures", shown(pictures, TEMPERATURE::equals));
    values.put("stress", units.stressUnit());
    values.put("length", units.lengthUnit());
    values.put("temperature", units.temperatureUnit());
    values.put("states", profile.labels());
    values.put("hasJoint", profile.soundness().sound());
    values.put("joint", joint.strengths().stream().map(this::jointRow).toList());
    values.put("gauge", BothUnits.gauge(joint.finished().gauge()));
    values.put("hasTwoInches", !joint.overTwoInches().isEmpty());
    List<String> checks = joint.checks().sentences(units);
    values.put("hasChecks", !checks.isEmpty());
    values.put("checks", checks);
    values.put("zones", profile.zones().stream().map(this::zoneRow).toList());
    values.put("weldMetal", weldMetal());
    values.put("passes", passes());
    values.put("hasCodes", !joint.codes().isEmpty());
    values.put("codes", joint.codes().stream().map(this::codeRow).toList());
    putMember(values);
    values.put("codesNote", joint.codesNote());
    values.put(
        "softened",
        SoftenedReach.of(profile, joint.codes()).stream().map(SoftenedReach::sentence).toList());
    values.put("warnings", warnings());
    values.put("cautions", profile.cautions());
    values.put("count", profile.stations().size());
    values.put("stations", profile.stations().stream().map(this::stationRow).toList());
    putFillers(values, fillers);
    putRoutes(values, routes);
    return new HtmlTemplate("report.html").filled(values);
  }

  private void putObjections(Map<String, Object> values) {
    values.put("hasObjections", !texts(false).isEmpty());
    values.put("objections", texts(false));
    values.put("hasNotes", !texts(true).isEmpty());
    values.put("notes", texts(true));
  }

  private List<String> texts(boolean noted) {
    return objections.stream()
        .filter(one -> noted == (one.severity() == Objection.Severity.NOTED))
        .map(Objection::text)
        .toList();
  }

  /**
   * The part on fillers.
   *
   * @param comparison the fillers
   * @param picture what shows it
   */
  public record FillerPart(FillerComparison comparison, Picture.Files picture) {}

  private static List<Map<String, String>> shown(
      List<Picture.Files> pictures, Predicate<String> which) {
    return pictures.stream()
        .filter(files -> which.test(files.name()))
        .map(ProfileReport::picture)
        .toList();
  }

  private static Map<String, String> picture(Picture.Files files) {
    return Map.of("svg", files.svg(), "caption", caption(files.name()));
  }

  private static String caption(String name) {
    return switch (name) {
      case "hardness" -> "Hardness before and after; the numbers are in the tables below.";
      case "strength" -> "Yield and tensile strength; the numbers are in the tables below.";
      case "along-weld" ->
          "Peak temperature along the weld, and the hardness at its start, half way and at its end.";
      case "fillers" -> "Yield of the weld metal against dilution.";
      default -> "Peak temperatures and thermal cycles; the numbers are in the tables below.";
    };
  }

  private String subject() {
    String left = side(profile.weldCase().left());
    String right = side(profile.weldCase().right());
    return (left.equals(right) ? left : left + " to " + right)
        + ", filler "
        + profile.weldMetal().filler()
        + " at "
        + Math.round(100 * profile.weldMetal().dilution())
        + " % dilution.";
  }

  private String side(Side side) {
    return side.alloy().name()
        + "-"
        + side.temper().name()
        + " "
        + text(OutputQuantity.DISTANCE, side.thickness());
  }

  /** The answer in sentences: as welded, after heat treatment, and what decides. */
  private List<String> answers() {
    if (!profile.soundness().sound()) {
      return withheld(profile.soundness());
    }
    List<String> answers = new ArrayList<>();
    for (JointStrength strength : joint.strengths()) {
      boolean told = strength.state() == 1 || strength.state() == profile.states().size() - 1;
      if (told && strength.bead() == JointStrength.Bead.FLUSH) {
        answers.add(answer(strength));
      }
    }
    answers.add(
        judgement.asked()
            ? "What the drawing asks is " + verdictInWords() + "."
            : "The case asks for no strength.");
    return answers;
  }

  private static List<String> withheld(Soundness soundness) {
    List<String> answers = new ArrayList<>();
    answers.add(
        soundness.notSound()
            ? "Not a sound joint: no strength is claimed."
            : "Not computed: no strength is given.");
    answers.addAll(soundness.reasons());
    if (!soundness.remedies().isEmpty()) {
      answers.add("What would help: " + String.join(" ", soundness.remedies()));
    }
    return answers;
  }

  private String verdictInWords() {
    String label = judgement.verdict().label();
    boolean decides = judgement.met().isEmpty() && texts(false).isEmpty();
    return decides ? label + ": a test coupon decides" : label;
  }

  private String answer(JointStrength strength) {
    String state = profile.label(strength.state());
    String head = Character.toUpperCase(state.charAt(0)) + state.substring(1);
    return strength
        .middle()
        .map(
            pull ->
                head
                    + (profile.weldCase().preparation() == Preparation.FILLET
                        ? " the metal across the weld carries "
                        : " the joint carries ")
                    + text(OutputQuantity.TENSILE, pull.tensile())
                    + (pull.proof().isPresent()
                        ? " (proof " + text(OutputQuantity.YIELD, pull.proof().getAsDouble()) + ")"
                        : "")
                    + ", "
                    + efficiency(pull)
                    + " of its base, and fails in the "
                    + metals(strength)
                    + ".")
        .orElse(head + ": " + JointStrength.NOT_PREDICTED + ".");
  }

  private static String metals(JointStrength strength) {
    return strength.failsIn().stream()
        .map(ProfileReport::metal)
        .collect(Collectors.joining(" or the "));
  }

  private static String metal(String zone) {
    if (zone.equals(Zone.FUSION.label())) {
      return "weld metal";
    }
    return zone.equals(Zone.BASE.label()) ? "base metal" : zone + " zone";
  }

  private String text(OutputQuantity quantity, double si) {
    return quantity.text(units, si) + " " + quantity.unit(units);
  }

  private Map<String, String> jointRow(JointStrength strength) {
    return Map.of(
        "state", profile.label(strength.state()),
        "bead", strength.bead().label(),
        "proof", stress(strength.proof()),
        "overTwoInches",
            joint.overTwoInches(strength).map(other -> stress(other.proof())).orElse("–"),
        "tensile", stress(strength.tensile()),
        "efficiency", strength.middle().map(ProfileReport::efficiency).orElse("–"),
        "failsIn", strength.middle().isPresent() ? metals(strength) : "–",
        "elongation",
            strength
                .middle()
                .flatMap(CrossWeldTension::elongation)
                .map(ProfileReport::elongation)
                .orElse("–"));
  }

  private String stress(OptionalDouble pascal) {
    return OutputQuantity.YIELD.text(units, pascal.orElse(Double.NaN));
  }

  private static String efficiency(CrossWeldTension pull) {
    long left = Math.round(100 * pull.tensileEfficiency().left());
    long right = Math.round(100 * pull.tensileEfficiency().right());
    return left == right ? left + " %" : left + " % (left), " + right + " % (right)";
  }

  private static String elongation(SliceLine.Band band) {
    return String.format(Locale.ROOT, "%.0f to %.0f %%", 100 * band.low(), 100 * band.high());
  }

  private Map<String, Object> zoneRow(ZoneSpan span) {
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

  private String weldMetal() {
    String composition =
        profile.weldMetal().composition().toMap().entrySet().stream()
            .map(
                entry ->
                    String.format(
                        Locale.ROOT, "%s %.2f", entry.getKey().symbol(), entry.getValue()))
            .collect(Collectors.joining(", "));
    return "Filler "
        + profile.weldMetal().filler()
        + ", dilution "
        + Math.round(100 * profile.weldMetal().dilution())
        + " % ("
        + Math.round(100 * profile.weldMetal().dilutionLow())
        + " to "
        + Math.round(100 * profile.weldMetal().dilutionHigh())
        + " %). Composition in wt%: "
        + composition
        + ". It begins to melt at "
        + text(OutputQuantity.PEAK_TEMPERATURE, profile.weldMetal().solidus())
        + ". Cracking: "
        + profile.weldMetal().crackTendency().label()
        + ".";
  }

  private List<String> passes() {
    PassWords words = new PassWords(units);
    return IntStream.range(0, profile.passes().size())
        .mapToObj(i -> words.of(profile.passes().get(i), i) + ".")
        .toList();
  }

  private Map<String, String> codeRow(DesignCodeValue value) {
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

  private void putMember(Map<String, Object> values) {
    values.put("hasMember", joint.member().isPresent());
    values.put("force", units == UnitSystem.METRIC ? "kN" : "kip");
    values.put("memberNote", MemberReport.NOTE);
    values.put(
        "memberWidth",
        joint.member().map(one -> text(OutputQuantity.DISTANCE, one.width())).orElse(""));
    values.put(
        "member",
        joint.member().stream()
            .flatMap(one -> one.states().stream().map(state -> memberRow(one, state)))
            .toList());
  }

  private Map<String, String> memberRow(MemberReport member, MemberReport.State state) {
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
    return String.format(
        Locale.ROOT, "%.1f", newton / (units == UnitSystem.METRIC ? 1e3 : NEWTON_PER_KIP));
  }

  private List<String> warnings() {
    return Stream.concat(profile.warnings().stream(), joint.warnings().stream())
        .map(Warning::text)
        .filter(text -> !profile.cautions().contains(text))
        .toList();
  }

  private Map<String, Object> stationRow(Station station) {
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

  private void putFillers(Map<String, Object> values, Optional<FillerPart> fillers) {
    values.put("hasFillers", fillers.isPresent());
    fillers.ifPresent(
        part -> {
          values.put("fillerSummary", String.join(" ", FillerAnswer.of(part.comparison(), units)));
          values.put("fillerPicture", List.of(picture(part.picture())));
          values.put("fillers", part.comparison().options().stream().map(this::fillerRow).toList());
        });
  }

  private Map<String, String> fillerRow(FillerOption option) {
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

  private void putRoutes(Map<String, Object> values, Optional<RouteStudy> routes) {
    values.put("hasRoutes", routes.isPresent());
    routes.ifPresent(
        study -> {
          values.put(
              "choice",
              study
                  .choice()
                  .map(name -> "Choice: " + name + (study.clear() ? " (clear)" : " (not clear)"))
                  .orElse("No route meets what is asked."));
          values.put("why", study.why(units));
          values.put("routes", study.routes().stream().map(this::routeRow).toList());
        });
  }

  private Map<String, String> routeRow(RouteResult route) {
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
