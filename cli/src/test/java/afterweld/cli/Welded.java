package afterweld.cli;

import afterweld.cli.terminal.Streams;
import afterweld.section.WeldSession;

/** The session that tests share, so that a weld which many of them look at is computed once. */
public final class Welded {
  public static final WeldSession SESSION = new WeldSession();

  private Welded() {}

  /** The whole program, with the shared session. */
  static Program program(Streams streams) {
    return new Program(streams, Wiring.commands(streams, SESSION));
  }
}
