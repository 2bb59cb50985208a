package afterweld.section;

/** The session that tests share, so that a weld which many of them look at is computed once. */
public final class Welded {
  public static final WeldSession SESSION = new WeldSession();

  private Welded() {}
}
