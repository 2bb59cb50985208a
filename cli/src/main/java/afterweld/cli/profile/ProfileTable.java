package afterweld.cli.profile;

import afterweld.choice.answer.Judgement;
import afterweld.cli.command.Standing;
import afterweld.cli.terminal.Paragraph;
import afterweld.document.Notices;
import afterweld.joint.JointReport;
import afterweld.quantity.OutputQuantity;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.SectionProfile;
import afterweld.section.Softening;
import afterweld.weld.Warning;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a person reads on the terminal after {@code profile}. */
final class ProfileTable {
  private final SectionProfile profile;
  private final JointReport joint;
  private final Judgement judgement;
  private final UnitSystem units;
  private final Optional<AlongWeld> along;

  ProfileTable(
      SectionProfile profile,
      JointReport joint,
      Judgement judgement,
      UnitSystem units,
      Optional<AlongWeld> along) {
    this.profile = profile;
    this.joint = joint;
    this.judgement = judgement;
    this.units = units;
    this.along = along;
  }

  /**
   * The whole of it, in lines of at most 80 columns unless there are very many states. The answer
   * comes last, where the eye is when the prompt is back.
   */
  String text() {
    ZoneTables zones = new ZoneTables(profile, units);
    Procedure procedure = new Procedure(profile, units);
    return procedure.head()
        + block("Weld metal and heat", procedure.weldMetal() + procedure.passes())
        + block("Zones as welded", zones.places() + softening())
        + block("Lowest in each zone" + ofMetalAlone() + ": " + zones.states(), zones.lowest())
        + block(
            "Along the weld",
            along.map(view -> new AlongWeldView(view, profile).table(units)).orElse(""))
        + block(
            JointReport.heading(profile.weldCase()),
            new JointTables(profile, joint, units).strengths())
        + block("Fillet and tube", list(joint.checks().sentences(units)))
        + block("Member along the weld", new JointTables(profile, joint, units).member())
        + block("Design codes for this weld", new JointTables(profile, joint, units).codes())
        + block("Warnings", list(warnings()))
        + block("Cautions", list(profile.cautions()))
        + block(
            "Lowest place; the band is that of the lowest, wherever it comes to lie",
            lowestPlaces())
        + block("Requirement: " + Standing.word(judgement), list(judgement.reasons()));
  }

  /** The answer only: the lowest places and the requirement. */
  String answer() {
    return lowestPlaces() + "requirement: " + Standing.word(judgement) + "\n";
  }

  private String ofMetalAlone() {
    return profile.soundness().sound() ? "" : ", of the metal at this depth and not of the joint";
  }

  /** Metal that is part of no joint has no lowest place that anybody could rely on. */
  private String lowestPlaces() {
    return profile.soundness().sound() ? new LowestPlaces(profile, units).text() : "";
  }

  private static String block(String head, String body) {
    return body.isEmpty() ? "" : "\n" + Paragraph.of(head) + body;
  }

  private static String list(List<String> sentences) {
    return sentences.stream()
        .map(sentence -> Paragraph.hanging("- ", sentence))
        .collect(Collectors.joining());
  }

  private List<String> warnings() {
    return Notices.of(profile, joint.warnings()).stream()
        .map(Warning::text)
        .filter(text -> !profile.cautions().contains(text))
        .toList();
  }

  private String softening() {
    Softening softening = profile.softening();
    if (softening.left().equals(softening.right())) {
      return softening("the base", softening.left());
    }
    return softening("the left base", softening.left())
        + softening("the right base", softening.right());
  }

  private String softening(String base, Softening.OfSide side) {
    if (!side.any()) {
      return "";
    }
    if (side.throughout()) {
      return Paragraph.of("All of " + base + " loses over 2 % of its yield.");
    }
    String peak =
        OutputQuantity.PEAK_TEMPERATURE.text(units, side.from()) + " " + units.temperatureUnit();
    return Paragraph.of(
        "T"
            + base.substring(1)
            + " loses over 2 % of its yield where the peak passes "
            + peak
            + ".");
  }
}
