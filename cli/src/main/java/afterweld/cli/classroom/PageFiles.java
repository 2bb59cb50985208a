package afterweld.cli.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The files of the page by their path; nothing else on this machine can be asked for. */
final class PageFiles {
  private static final String HTML = "text/html; charset=utf-8";
  private static final String CSS = "text/css; charset=utf-8";
  private static final String SCRIPT = "text/javascript; charset=utf-8";
  private static final String JSON = "application/json; charset=utf-8";
  private static final String SVG = "image/svg+xml";
  private static final String FONT = "font/ttf";

  private static final List<String> SCRIPTS =
      List.of(
          "app.js",
          "arranging.js",
          "asking.js",
          "bend.js",
          "case.js",
          "controls.js",
          "keeping.js",
          "kept.js",
          "labelling.js",
          "lessons.js",
          "naming.js",
          "numbers.js",
          "picture.js",
          "replay.js",
          "scale.js",
          "section.js",
          "svg.js",
          "temperatures.js",
          "units.js");

  private final Map<String, PageFile> files = new LinkedHashMap<>();

  PageFiles() {
    add("/", "index.html", HTML);
    add("/style.css", "style.css", CSS);
    add("/icon.svg", "icon.svg", SVG);
    add("/lessons.json", "lessons.json", JSON);
    for (String script : SCRIPTS) {
      add("/" + script, script, SCRIPT);
    }
    add("/medium.ttf", "/afterweld/charts/plot/font/Manrope-Medium.ttf", FONT);
    add("/bold.ttf", "/afterweld/charts/plot/font/Manrope-Bold.ttf", FONT);
  }

  private void add(String path, String resource, String type) {
    try (InputStream stream = PageFiles.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("a file of the page is missing: " + resource);
      }
      files.put(path, new PageFile(type, stream.readAllBytes()));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** The file at a path. */
  Optional<PageFile> at(String path) {
    return Optional.ofNullable(files.get(path));
  }
}
