package afterweld.cli.library;

import afterweld.casefile.Choices;
import afterweld.cli.terminal.InputFault;
import afterweld.cli.terminal.Paragraph;
import afterweld.quantity.UnitSystem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * A commented case to begin from.
 *
 * @param name what it is asked for by
 * @param purpose one line
 */
public record Starter(String name, String purpose) {
  /** All of them. */
  public static final List<Starter> ALL =
      List.of(
          new Starter("butt-plate", "two plates in two passes, solution treated and aged after it"),
          new Starter("tube-on-flange", "a fillet round a tube, left as welded"),
          new Starter("casting-repair", "a cavity ground out, filled and heat treated again"),
          new Starter("strip", "thin work-hardened sheet, left as welded, with a bend"));

  /**
   * The text of the case. Each system has its own, in the sizes its shops buy and set: half an inch
   * is not 12 mm.
   */
  public byte[] content(UnitSystem units) {
    String file = name + (units == UnitSystem.US ? "-us" : "") + ".yaml";
    try (InputStream in = Starter.class.getResourceAsStream("starters/" + file)) {
      if (in == null) {
        throw new IllegalStateException("starter " + file + " is missing from the class path");
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("starter " + file + " cannot be read", e);
    }
  }

  /** The one of that name. */
  public static Starter named(String wanted) {
    Choices<Starter> known = Choices.of(ALL, Starter::name);
    return known
        .find(wanted)
        .orElseThrow(
            () ->
                new InputFault(
                    "no starter '"
                        + Paragraph.printable(wanted)
                        + "'"
                        + known.hint(wanted)
                        + " ('afterweld starter' lists them all)"));
  }
}
