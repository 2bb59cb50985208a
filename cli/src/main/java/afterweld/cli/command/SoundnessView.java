package afterweld.cli.command;

import afterweld.cli.terminal.Paragraph;
import afterweld.section.soundness.Soundness;
import java.util.List;
import java.util.stream.Collectors;

/** Whether a weld is a joint, for people. */
final class SoundnessView {
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
}
