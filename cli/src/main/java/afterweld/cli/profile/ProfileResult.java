package afterweld.cli.profile;

import afterweld.choice.CaseObjections;
import afterweld.choice.RequirementCheck;
import afterweld.choice.RouteStudy;
import afterweld.choice.answer.Judgement;
import afterweld.choice.answer.Requirement;
import afterweld.cli.command.Answer;
import afterweld.cli.terminal.ExitStatus;
import afterweld.document.ProfileCsv;
import afterweld.document.ProfileJson;
import afterweld.joint.JointReport;
import afterweld.quantity.UnitSystem;
import afterweld.section.AlongWeld;
import afterweld.section.SectionProfile;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A computed section with everything that is shown of it.
 *
 * @param profile the section
 * @param joint what the joint carries
 * @param requirement what the case asks
 * @param units for people; programs always get metric JSON
 * @param routes the routes, if they are to be in the report
 * @param alongWeld waits for the weld along its way, if it has a start and an end that count: the
 *     other pictures may be drawn before it is asked
 */
public record ProfileResult(
    SectionProfile profile,
    JointReport joint,
    Requirement requirement,
    UnitSystem units,
    Optional<RouteStudy> routes,
    Supplier<Optional<AlongWeld>> alongWeld) {

  ProfileResult(
      SectionProfile profile, JointReport joint, Requirement requirement, UnitSystem units) {
    this(profile, joint, requirement, units, Optional.empty(), Optional::empty);
  }

  /** The weld along its way, if it has a start and an end that count. */
  public Optional<AlongWeld> along() {
    return alongWeld.get();
  }

  /** The JSON text. */
  String json() {
    return new ProfileJson(
            profile,
            joint,
            judgement(UnitSystem.METRIC),
            CaseObjections.of(profile.weldCase(), requirement),
            along())
        .text();
  }

  /** The table for a person. */
  ProfileTable table() {
    return new ProfileTable(profile, joint, judgement(units), units, along());
  }

  /** The files for the output folder by name, the JSON first. */
  Map<String, byte[]> files(Pictures pictures) {
    Map<String, byte[]> drawn = pictures.of(this);
    Map<String, byte[]> files = new LinkedHashMap<>();
    files.put("result.json", json().getBytes(StandardCharsets.UTF_8));
    files.put(
        "profile.csv", new ProfileCsv(profile, units).text().getBytes(StandardCharsets.UTF_8));
    files.putAll(drawn);
    return files;
  }

  /** In every form it is shown in. */
  Answer answer(Pictures pictures) {
    Map<String, byte[]> files = files(pictures);
    ProfileTable table = table();
    return new Answer(table.text(), table.answer(), json(), files, exitStatus());
  }

  /** The {@link ExitStatus} that says how the requirement stands. */
  int exitStatus() {
    return ExitStatus.of(judgement(units));
  }

  /** How the requirement stands, its reasons in a system of units. */
  public Judgement judgement(UnitSystem system) {
    return RequirementCheck.of(profile, joint.finished(), requirement).judgement(system);
  }
}
