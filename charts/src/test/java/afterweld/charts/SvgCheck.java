package afterweld.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import afterweld.charts.plot.Picture;
import java.io.StringReader;
import java.util.HashSet;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a picture's SVG with an XML parser and looks at what must and must not be in it. */
public final class SvgCheck {
  private final String text;
  private final Document document;

  public SvgCheck(String text) throws Exception {
    this.text = text;
    this.document = parse(text);
  }

  private static Document parse(String text) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return strict(factory).newDocumentBuilder().parse(new InputSource(new StringReader(text)));
  }

  private static DocumentBuilderFactory strict(DocumentBuilderFactory factory)
      throws ParserConfigurationException {
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory;
  }

  public void accept(Picture picture) {
    hasTitleAndDescription(picture);
    idsAreItsOwn(picture);
    pointsNowhere();
  }

  private void hasTitleAndDescription(Picture picture) {
    Element root = document.getDocumentElement();
    assertEquals("svg", root.getLocalName());
    assertEquals("img", root.getAttribute("role"));
    assertEquals("0 0 1600 " + picture.height(), root.getAttribute("viewBox"));
    assertEquals(picture.title(), only("title").getTextContent());
    assertEquals(picture.description(), only("desc").getTextContent());
    assertEquals(
        only("title").getAttribute("id") + " " + only("desc").getAttribute("id"),
        root.getAttribute("aria-labelledby"));
  }

  private Element only(String tag) {
    NodeList found = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", tag);
    assertEquals(1, found.getLength(), tag);
    return (Element) found.item(0);
  }

  private void idsAreItsOwn(Picture picture) {
    Set<String> ids = new HashSet<>();
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      String id = ((Element) all.item(i)).getAttribute("id");
      assertTrue(id.isEmpty() || id.startsWith(picture.name() + "-"), id);
      assertTrue(id.isEmpty() || ids.add(id), id);
    }
  }

  private void pointsNowhere() {
    assertFalse(text.contains("<image"));
    assertFalse(text.contains("<script"));
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      NamedNodeMap attributes = all.item(i).getAttributes();
      for (int j = 0; j < attributes.getLength(); j++) {
        pointsInside(attributes.item(j).getNodeName(), attributes.item(j).getNodeValue());
      }
    }
  }

  private static void pointsInside(String name, String value) {
    if (!name.startsWith("xmlns")) {
      assertFalse(value.contains("http:") || value.contains("https:"), value);
      assertFalse(value.replace("url(#", "").contains("url("), value);
    }
  }
}
