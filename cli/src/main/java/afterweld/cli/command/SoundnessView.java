package afterweld.cli.command;

import afterweld.cli.terminal.Paragraph;
import afterweld.section.soundness.Soundness;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Whether a weld is a joint, for people and for programs. */
public final class SoundnessView {
  private SoundnessView() {}

  /** What is read before all else; empty of a sound weld. */
  static String text(Soundness soundness) {
    if (soundness.sound()) {
      return "";
    }
    String head =
        soundness.notSound()
            ? "Not a sound joint: no strength is claimed"
            : "Not computed: no strength is given";
    return Paragraph.of(head) + list(soundness.reasons()) + helps(soundness.remedies());
  }

  private static String helps(List<String> remedies) {
    return remedies.isEmpty() ? "" : Paragraph.of("What would help") + list(remedies);
  }

  private static String list(List<String> sentences) {
    return sentences.stream()
        .map(sentence -> Paragraph.hanging("- ", sentence))
        .collect(Collectors.joining());
  }

  /** For a program: {@code sound} is null where nothing was computed. */
  public static Map<String, Object> json(Soundness soundness) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put(
        "sound",
        switch (soundness.state()) {
          case SOUND -> true;
          case NOT_SOUND, BRITTLE -> false;
          case NOT_COMPUTED -> null;
        });
    json.put("reasons", soundness.reasons());
    json.put("remedies", soundness.remedies());
    return json;
  }
}
