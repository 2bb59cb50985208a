package afterweld.charts.report;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** A page template of the resources, filled and escaped; self-contained with the shared style. */
final class HtmlTemplate {
  private final Template template;

  HtmlTemplate(String name) {
    this.template = Mustache.compiler().escapeHTML(true).compile(resource(name));
  }

  /** The page with its values filled in. */
  String filled(Map<String, Object> values) {
    Map<String, Object> all = new HashMap<>(values);
    all.put("style", resource("style.css"));
    return template.execute(all);
  }

  private static String resource(String name) {
    try (InputStream in = HtmlTemplate.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("template " + name + " cannot be read", e);
    }
  }
}
