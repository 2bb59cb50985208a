package afterweld.cli.command;

import afterweld.choice.answer.Objection;
import afterweld.choice.answer.Objection.Severity;
import afterweld.cli.terminal.ExitStatus;
import afterweld.section.soundness.Soundness;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a command found, in every form it is shown in.
 *
 * @param text for a person, the answer last
 * @param brief the answer only
 * @param json for a program
 * @param files by name, {@code result.json} among them
 * @param exitStatus how it stands
 */
public record Answer(
    String text, String brief, String json, Map<String, byte[]> files, int exitStatus) {

  /**
   * The same with what stands against the filler or the heat treatment before everything else that
   * is read. A case that is objected to is not done with.
   */
  public Answer against(List<Objection> objections) {
    boolean objected = objections.stream().anyMatch(one -> one.severity() != Severity.NOTED);
    int status = objected ? Math.max(exitStatus, ExitStatus.REQUIREMENT_OPEN) : exitStatus;
    return headed(ObjectionList.text(objections), status);
  }

  /** The same with what keeps the weld from being a joint first; such a weld is not done with. */
  public Answer on(Soundness soundness) {
    int status =
        soundness.notSound() ? Math.max(exitStatus, ExitStatus.REQUIREMENT_OPEN) : exitStatus;
    return headed(SoundnessView.text(soundness), status);
  }

  /** The same with an exit status of at least that. */
  public Answer atLeast(int status) {
    return new Answer(text, brief, json, files, Math.max(exitStatus, status));
  }

  private Answer headed(String head, int status) {
    if (head.isEmpty()) {
      return this;
    }
    Map<String, byte[]> headed = new LinkedHashMap<>(files);
    headed.replaceAll((name, content) -> name.endsWith(".txt") ? before(head, content) : content);
    return new Answer(head + "\n" + text, head + brief, json, headed, status);
  }

  private static byte[] before(String head, byte[] content) {
    String text = head + "\n" + new String(content, StandardCharsets.UTF_8);
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
