package afterweld.charts.plot;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;

/**
 * A finished drawing that can be had as pixels and as SVG: the same strokes either way, and the
 * same bytes for the same result. Immutable; drawn anew at every call; safe to use from several
 * threads.
 */
public final class Picture {
  private final String name;
  private final Page page;
  private final String description;
  private final Body body;

  /** What is drawn inside the page. */
  public interface Body {
    /** Draws into a room, in points. */
    void draw(Graphics2D g, Rectangle2D room);
  }

  /**
   * A picture.
   *
   * @param name short name for files and ids: lower case letters and hyphens
   * @param page what stands round the plots
   * @param description what the picture shows, in sentences
   * @param body the plots
   */
  public Picture(String name, Page page, String description, Body body) {
    this.name = name;
    this.page = page;
    this.description = description;
    this.body = body;
  }

  /** A picture in both forms, drawn once. */
  public static final class Files {
    private final String name;
    private final byte[] png;
    private final String svg;

    private Files(Picture picture) {
      this.name = picture.name();
      this.png = picture.png();
      this.svg = picture.svg();
    }

    /** Short name for files. */
    public String name() {
      return name;
    }

    /** The bytes of a PNG file. */
    public byte[] png() {
      return png.clone();
    }

    /** The text of an SVG file. */
    public String svg() {
      return svg;
    }
  }

  /**
   * Draws an empty plot for nothing: the typeface and the drawing classes take longer to load than
   * a picture takes to draw, so this is worth starting while something else is computed.
   */
  public static void prepare() {
    Page page = new Page(400, "-", "-", new Legend(List.of()), List.of("-"), List.of());
    Axis axis = new Axis("-", 0, 1);
    new Files(new Picture("blank", page, "-", (g, room) -> new Plot(g, room, axis, axis)));
  }

  /** Draws pictures in both forms, on as many threads as there are processors; in given order. */
  public static List<Files> drawAll(List<Picture> pictures) {
    return pictures.parallelStream().map(Files::new).toList();
  }

  /** Short name for files, such as {@code hardness}. */
  public String name() {
    return name;
  }

  /** Heading, such as {@code Hardness across the weld}. */
  public String title() {
    return page.title();
  }

  /** What it shows, in sentences, for readers who cannot see it. */
  public String description() {
    return description;
  }

  /** Width, pixels. */
  public int width() {
    return Page.WIDTH;
  }

  /** Height, pixels. */
  public int height() {
    return page.height();
  }

  /** The bytes of a PNG file, 160 dots per inch, without a date. */
  public byte[] png() {
    BufferedImage image = new BufferedImage(width(), height(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    draw(g);
    g.dispose();
    return PngFile.of(image);
  }

  /**
   * An SVG element with a title and a description: the whole text of a file, and fit to stand in a
   * page beside other pictures, since its ids begin with its name.
   */
  public String svg() {
    return new SvgFile(name, title(), description, width(), height()).of(this::draw);
  }

  private void draw(Graphics2D g) {
    body.draw(g, page.draw(g));
  }
}
