package afterweld.charts.report;

import afterweld.charts.plot.Picture;
import afterweld.choice.RouteStudy;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Objection;
import afterweld.choice.filler.FillerAnswer;
import afterweld.choice.filler.FillerComparison;
import afterweld.joint.JointReport;
import afterweld.joint.JointStrength;
import afterweld.joint.MemberReport;
import afterweld.joint.SoftenedReach;
import afterweld.quantity.BothUnits;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.SectionProfile;
import afterweld.section.soundness.Soundness;
import afterweld.weld.PassWords;
import afterweld.weld.Preparation;
import afterweld.weld.Side;
import afterweld.weld.Warning;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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

  private final SectionProfile profile;
  private final JointReport joint;
  private final Judgement judgement;
  private final List<Objection> objections;
  private final UnitSystem units;
  private final ReportRows rows;

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
    this.rows = new ReportRows(profile, joint, units);
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
    values.put("jointHeading", JointReport.heading(profile.weldCase()));
    values.put("joint", joint.strengths().stream().map(rows::jointRow).toList());
    values.put("gauge", BothUnits.gauge(joint.finished().gauge()));
    values.put("hasTwoInches", !joint.overTwoInches().isEmpty());
    List<String> checks = joint.checks().sentences(units);
    values.put("hasChecks", !checks.isEmpty());
    values.put("checks", checks);
    values.put("zones", profile.zones().stream().map(rows::zoneRow).toList());
    values.put("weldMetal", weldMetal());
    values.put("passes", passes());
    values.put("hasCodes", !joint.codes().isEmpty());
    values.put("codes", joint.codes().stream().map(rows::codeRow).toList());
    putMember(values);
    values.put("codesNote", joint.codesNote());
    values.put(
        "softened",
        SoftenedReach.of(profile, joint.codes()).stream().map(SoftenedReach::sentence).toList());
    values.put("warnings", warnings());
    values.put("cautions", profile.cautions());
    values.put("count", profile.stations().size());
    values.put("stations", profile.stations().stream().map(rows::stationRow).toList());
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
        + rows.text(OutputQuantity.DISTANCE, side.thickness());
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
                    + rows.text(OutputQuantity.TENSILE, pull.tensile())
                    + (pull.proof().isPresent()
                        ? " (proof "
                            + rows.text(OutputQuantity.YIELD, pull.proof().getAsDouble())
                            + ")"
                        : "")
                    + ", "
                    + ReportRows.efficiency(pull)
                    + " of its base, and fails in the "
                    + ReportRows.metals(strength)
                    + ".")
        .orElse(head + ": " + JointStrength.NOT_PREDICTED + ".");
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
        + rows.text(OutputQuantity.PEAK_TEMPERATURE, profile.weldMetal().solidus())
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

  private void putMember(Map<String, Object> values) {
    values.put("hasMember", joint.member().isPresent());
    values.put("force", units.forceUnit());
    values.put("memberNote", MemberReport.NOTE);
    values.put(
        "memberWidth",
        joint.member().map(one -> rows.text(OutputQuantity.DISTANCE, one.width())).orElse(""));
    values.put(
        "member",
        joint.member().stream()
            .flatMap(one -> one.states().stream().map(state -> rows.memberRow(one, state)))
            .toList());
  }

  private List<String> warnings() {
    return Stream.concat(profile.warnings().stream(), joint.warnings().stream())
        .map(Warning::text)
        .filter(text -> !profile.cautions().contains(text))
        .toList();
  }

  private void putFillers(Map<String, Object> values, Optional<FillerPart> fillers) {
    values.put("hasFillers", fillers.isPresent());
    fillers.ifPresent(
        part -> {
          values.put("fillerSummary", String.join(" ", FillerAnswer.of(part.comparison(), units)));
          values.put("fillerPicture", List.of(picture(part.picture())));
          values.put("fillers", part.comparison().options().stream().map(rows::fillerRow).toList());
        });
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
                  .orElse("Choice: none."));
          values.put("why", study.why(units));
          values.put("routes", study.routes().stream().map(rows::routeRow).toList());
        });
  }
}
