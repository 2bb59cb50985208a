package afterweld.casefile.text;

/** Text of a file as a message repeats it: in quotes, short, on one line. */
public final class Quoted {
  private static final int LONGEST = 40;

  private Quoted() {}

  /** The text in single quotes, cut after 40 characters, with line breaks and tabs as spaces. */
  public static String of(String text) {
    String line = shortened(text).replaceAll("[\\s\\p{Cntrl}]+", " ");
    return "'" + line + (text.length() > LONGEST ? "..." : "") + "'";
  }

  private static String shortened(String text) {
    if (text.length() <= LONGEST) {
      return text;
    }
    boolean splitsPair = Character.isHighSurrogate(text.charAt(LONGEST - 1));
    return text.substring(0, splitsPair ? LONGEST - 1 : LONGEST);
  }
}
