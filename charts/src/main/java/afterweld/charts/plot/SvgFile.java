package afterweld.charts.plot;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.io.StringWriter;
import java.util.function.Consumer;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGGraphics2DIOException;
import org.apache.batik.svggen.SVGIDGenerator;
import org.apache.batik.svggen.SVGSyntax;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes a drawing as SVG: letters as outlines, a title and a description for readers who cannot
 * see it, ids that begin with the picture's name and nothing that points outside.
 *
 * @param name begins every id
 * @param title short
 * @param description sentences
 * @param width user units
 * @param height user units
 */
record SvgFile(String name, String title, String description, int width, int height) {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private static final String NOT_XML =
      "[^\\t\\n\\r\\x20-\\x{D7FF}\\x{E000}-\\x{FFFD}\\x{10000}-\\x{10FFFF}]";
  private static final String FIXED_ID = SVGSyntax.ID_PREFIX_GENERIC_DEFS;

  /** The text of the file. */
  String of(Consumer<Graphics2D> drawing) {
    Document document =
        GenericDOMImplementation.getDOMImplementation().createDocument(NAMESPACE, "svg", null);
    SVGGraphics2D g = new SVGGraphics2D(context(document), true);
    g.setSVGCanvasSize(new Dimension(width, height));
    drawing.accept(g);
    return write(g, described(g.getRoot(), document));
  }

  private SVGGeneratorContext context(Document document) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setPrecision(2);
    context.setComment(null);
    context.setIDGenerator(new NamedIds(name));
    return context;
  }

  private Element described(Element root, Document document) {
    shorten(root);
    root.setAttribute("viewBox", "0 0 " + width + " " + height);
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", name + "-title " + name + "-description");
    Element titled = words(document, "title", name + "-title", title);
    root.insertBefore(titled, root.getFirstChild());
    Element desc = words(document, "desc", name + "-description", description);
    root.insertBefore(desc, titled.getNextSibling());
    return root;
  }

  /** Shortens all paths and names what Batik gives a fixed id. */
  private void shorten(Element root) {
    for (Node node = root.getFirstChild(); node != null; node = node.getNextSibling()) {
      if (node instanceof Element element) {
        if (element.getTagName().equals("path")) {
          element.setAttribute("d", ShortPath.of(element.getAttribute("d")));
        }
        if (element.getAttribute("id").equals(FIXED_ID)) {
          element.setAttribute("id", name + "-" + FIXED_ID);
        }
        shorten(element);
      }
    }
  }

  private static Element words(Document document, String tag, String id, String text) {
    Element element = document.createElementNS(NAMESPACE, tag);
    element.setAttribute("id", id);
    element.appendChild(document.createTextNode(text.replaceAll(NOT_XML, "")));
    return element;
  }

  private static String write(SVGGraphics2D g, Element root) {
    StringWriter out = new StringWriter();
    try {
      g.stream(root, out, true, false);
    } catch (SVGGraphics2DIOException e) {
      throw new IllegalStateException("the drawing cannot be written as SVG", e);
    }
    String text = out.toString();
    return text.substring(text.indexOf("<svg"));
  }

  /** Ids that stay apart when several pictures stand in one page. */
  private static final class NamedIds extends SVGIDGenerator {
    private final String name;

    NamedIds(String name) {
      this.name = name;
    }

    @Override
    public String generateID(String prefix) {
      return name + "-" + super.generateID(prefix);
    }
  }
}
