package afterweld.charts.plot;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The typeface of every chart: Manrope, from the resources beside its licence (SIL Open Font
 * License 1.1), so that a picture does not depend on the fonts of a machine.
 */
public final class Typeface {
  private static final Font PLAIN = load("Manrope-Medium.ttf");
  private static final Font BOLD = load("Manrope-Bold.ttf");

  private Typeface() {}

  /** The common weight, size in pixels. */
  public static Font plain(float size) {
    return PLAIN.deriveFont(size);
  }

  /** The heavy weight, size in pixels. */
  public static Font bold(float size) {
    return BOLD.deriveFont(size);
  }

  private static Font load(String name) {
    try (InputStream in = Typeface.class.getResourceAsStream("font/" + name)) {
      if (in == null) {
        throw new IllegalStateException("typeface " + name + " is missing from the class path");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException("typeface " + name + " cannot be read", e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("typeface " + name + " is damaged", e);
    }
  }
}
