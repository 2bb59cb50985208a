package afterweld.cli.command;

import afterweld.cli.terminal.Paragraph;
import afterweld.document.Notices;
import java.util.stream.Collectors;

/** Warnings and cautions as a person reads them. */
public final class NoticesText {
  private NoticesText() {}

  /** Warnings, if there are any, and cautions. */
  public static String of(Notices notices) {
    String list =
        notices.warnings().stream()
            .map(warning -> Paragraph.hanging("- ", warning.text()))
            .collect(Collectors.joining());
    return (list.isEmpty() ? "" : "Warnings\n" + list + "\n") + Paragraph.each(notices.cautions());
  }
}
