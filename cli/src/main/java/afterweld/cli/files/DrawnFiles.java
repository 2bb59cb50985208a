package afterweld.cli.files;

import afterweld.charts.plot.Picture;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pictures as files for the output folder: each as PNG and as SVG. */
public final class DrawnFiles {
  private DrawnFiles() {}

  /** The files by name. */
  public static Map<String, byte[]> of(List<Picture> pictures) {
    return ofDrawn(Picture.drawAll(pictures));
  }

  /** The same of pictures that are drawn already. */
  public static Map<String, byte[]> ofDrawn(List<Picture.Files> drawn) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Picture.Files picture : drawn) {
      files.put(picture.name() + ".png", picture.png());
      files.put(picture.name() + ".svg", picture.svg().getBytes(StandardCharsets.UTF_8));
    }
    return files;
  }
}
