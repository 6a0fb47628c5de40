package goniograph.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The subset that Batik, browsers and librsvg draw alike (figure method, section 15). */
class SvgTest {
  private static final Set<String> ELEMENTS =
      Set.of("svg", "title", "desc", "g", "path", "circle", "rect", "clipPath");

  private static final Set<String> ATTRIBUTES =
      Set.of(
          "xmlns",
          "version",
          "role",
          "width",
          "height",
          "viewBox",
          "alt",
          "aria-labelledby",
          "id",
          "d",
          "fill",
          "fill-rule",
          "stroke",
          "stroke-width",
          "stroke-linecap",
          "stroke-linejoin",
          "stroke-dasharray",
          "transform",
          "clip-path");

  @Test
  void usesNothingOutsideTheSafeSubset() throws Exception {
    for (Style style : Style.values()) {
      NodeList all = parsed(svg(style, "x")).getElementsByTagName("*");
      for (int i = 0; i < all.getLength(); i++) {
        assertSafe((Element) all.item(i));
      }
    }
  }

  private static void assertSafe(Element element) {
    assertTrue(ELEMENTS.contains(element.getTagName()), element.getTagName());
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      var attribute = element.getAttributes().item(i);
      assertTrue(ATTRIBUTES.contains(attribute.getNodeName()), attribute.getNodeName());
      if (attribute.getNodeName().matches("fill|stroke")) {
        assertTrue(attribute.getNodeValue().matches("none|#[0-9A-F]{6}"), "" + attribute);
      }
    }
  }

  @Test
  void twoFiguresOnOnePageShareNoIds() throws Exception {
    List<String> first = ids(svg(Style.INK, "one"));
    List<String> second = ids(svg(Style.INK, "two"));
    Set<String> both = new HashSet<>(first);
    both.addAll(second);
    assertEquals(first.size() + second.size(), both.size());
    for (String reference : svg(Style.INK, "one").split("url\\(#", -1)) {
      assertTrue(reference.startsWith("<svg") || reference.startsWith("one-"), reference);
    }
  }

  @Test
  void titleAndDescriptionComeThroughWhole() throws Exception {
    Document svg =
        parsed(Figure.of(scene(), FigureOptions.STANDARD).svg("p", "A < B & \"C\"", "d"));
    assertEquals("A < B & \"C\"", svg.getElementsByTagName("title").item(0).getTextContent());
    assertEquals("img", svg.getDocumentElement().getAttribute("role"));
  }

  private static goniograph.pose.Scene scene() {
    return Poses.armRaise(Poses.SIDE, Poses.arrow("hand"), Poses.angle("shoulder"));
  }

  private static String svg(Style style, String prefix) {
    FigureOptions options =
        FigureOptions.STANDARD
            .in(style)
            .forTherapist()
            .lettered(Poses.SQUARES, (side, group) -> Optional.of("arm"));
    return Figure.of(scene(), options).svg(prefix, "title", "words");
  }

  private static List<String> ids(String svg) throws Exception {
    NodeList all = parsed(svg).getElementsByTagName("*");
    List<String> ids = new java.util.ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      if (all.item(i) instanceof Element element && element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
    }
    return ids;
  }

  private static Document parsed(String svg) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(svg)));
  }
}
