package afterweld.charts.plot;

import java.awt.Color;

/**
 * The colours of every chart. They are opaque where they carry meaning, differ in lightness so that
 * a grey print tells them apart, and avoid pairs of red and green.
 */
public final class Ink {
  public static final Color PAPER = Color.WHITE;
  static final Color NOTHING = new Color(255, 255, 255, 0);
  public static final Color TEXT = new Color(0x1F2529);
  public static final Color SOFT_TEXT = new Color(0x4D565C);
  public static final Color AXIS = new Color(0x6B747A);
  static final Color GRID = new Color(0xE3E6E8);
  public static final Color LIMIT = new Color(0x111111);

  public static final Color STONE = new Color(0x9AA4AB);
  public static final Color EMBER = new Color(0xC24E0A);
  public static final Color DEEP_BLUE = new Color(0x0B3A66);
  public static final Color LAGOON = new Color(0x2C8C99);
  public static final Color PLUM = new Color(0x7A3E73);
  public static final Color OCHRE = new Color(0xA77B00);
  public static final Color ROSE = new Color(0xC0607F);
  public static final Color PINE = new Color(0x35594A);

  private static final double WORDS_LIGHTNESS = 75;
  private static final Color ZONE = new Color(0x6E5526);

  private Ink() {}

  /**
   * How light a colour looks in a grey print, 0 (black) to 255 (white): the weights of the luma of
   * television, ITU-R BT.601.
   */
  public static double lightness(Color color) {
    return 0.299 * color.getRed() + 0.587 * color.getGreen() + 0.114 * color.getBlue();
  }

  /** The colour for words that belong to a line of that colour: dark enough to read. */
  public static Color forWords(Color line) {
    double share = Math.min(1, WORDS_LIGHTNESS / lightness(line));
    return new Color(
        (int) (share * line.getRed()),
        (int) (share * line.getGreen()),
        (int) (share * line.getBlue()));
  }

  /** A colour thinned to a see-through tint; {@code share} from 0 (nothing) to 1 (solid). */
  public static Color tint(Color color, double share) {
    return new Color(
        color.getRed(), color.getGreen(), color.getBlue(), (int) Math.round(255 * share));
  }

  /** A colour on paper, opaque, so that neighbouring areas show no seam. */
  static Color over(Color color, double share) {
    return new Color(
        blended(color.getRed(), share),
        blended(color.getGreen(), share),
        blended(color.getBlue(), share));
  }

  private static int blended(int channel, double share) {
    return (int) Math.round(255 + share * (channel - 255));
  }

  /** The shade behind a zone. */
  public static Color zone(double share) {
    return tint(ZONE, share);
  }
}
