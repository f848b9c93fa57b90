// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing as XML and looks for what no drawing may hold. */
public final class DrawingXml {
    private DrawingXml() {
    }

    /** The drawing as a document; fails where it is no valid XML. */
    public static Document read(String xml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
        } catch (Exception e) {
            throw new AssertionError("not XML: " + e.getMessage() + "\n" + xml.substring(0, Math.min(400,
                    xml.length())),
                    e);
        }
    }

    /** All texts, in order. */
    public static List<String> texts(Document document) {
        NodeList nodes = document.getElementsByTagNameNS("*", "text");
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            texts.add(nodes.item(i).getTextContent());
        }
        return texts;
    }

    /** What is wrong: repeated ids, references to nothing, addresses outside the drawing, texts outside the paper. */
    public static List<String> troubles(Drawing drawing) {
        return troubles(drawing.file(), drawing.size());
    }

    /** The same of a file, with the size (px) of its paper. */
    public static List<String> troubles(String file, Dot paper) {
        Document document = read(file);
        List<String> troubles = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        Set<String> references = new HashSet<>();
        NodeList all = document.getElementsByTagName("*");
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            if (element.hasAttribute("id") && !ids.add(element.getAttribute("id"))) {
                troubles.add("id " + element.getAttribute("id") + " stands twice");
            }
            for (String key : List.of("fill", "clip-path")) {
                if (element.getAttribute(key).startsWith("url(#")) {
                    references.add(element.getAttribute(key).replaceAll("url\\(#|\\)", ""));
                }
            }
            if (element.hasAttribute("href") && !element.getAttribute("href").startsWith("data:image/png;base64,")) {
                troubles.add("address " + element.getAttribute("href"));
            }
            if ("text".equals(element.getTagName()) && !element.getAttribute("transform").startsWith("rotate(-90")) {
                place(paper, element, troubles);
            }
        }
        references.removeAll(ids);
        references.forEach(r -> troubles.add("reference to " + r + ", which is not there"));
        return troubles;
    }

    /** Words with a halo that cover each other, the middle of a circle. */
    public static List<String> covered(Document document) {
        List<String> troubles = new ArrayList<>();
        List<Words> words = new ArrayList<>();
        NodeList texts = document.getElementsByTagNameNS("*", "text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            if ("stroke".equals(text.getAttribute("paint-order")) && !text.hasAttribute("transform")) {
                Words here = Words.of(text);
                words.stream().filter(here::covers).forEach(other -> troubles.add(here + " lies over " + other));
                words.add(here);
            }
        }
        NodeList circles = document.getElementsByTagNameNS("*", "circle");
        for (int i = 0; i < circles.getLength(); i++) {
            Element circle = (Element) circles.item(i);
            Dot at = new Dot(Double.parseDouble(circle.getAttribute("cx")), Double.parseDouble(
                    circle.getAttribute("cy")));
            words.stream().filter(w -> w.holds(at)).forEach(w -> troubles.add(w + " lies over the circle at " + at));
        }
        return troubles;
    }

    /** Words where they stand on the paper. */
    private record Words(String text, double left, double right, double top, double bottom) {
        static Words of(Element text) {
            String written = text.getAttribute("font-size");
            double size = written.isEmpty() ? 12 : Double.parseDouble(written);
            double width = Svg.width(text.getTextContent(), size);
            double x = Double.parseDouble(text.getAttribute("x"));
            double left = switch (text.getAttribute("text-anchor")) {
                case "middle" -> x - width / 2;
                case "end" -> x - width;
                default -> x;
            };
            double y = Double.parseDouble(text.getAttribute("y"));
            return new Words(text.getTextContent(), left, left + width, y - 0.75 * size, y + 0.2 * size);
        }

        double size() {
            return (bottom - top) / 0.95;
        }

        boolean covers(Words other) {
            return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
        }

        boolean holds(Dot at) {
            return left < at.x() && at.x() < right && top < at.y() && at.y() < bottom;
        }
    }

    private static void place(Dot paper, Element text, List<String> troubles) {
        Words words = Words.of(text);
        double y = Double.parseDouble(text.getAttribute("y"));
        if (words.left < -2 || words.right > paper.x() + 2 || y < words.size() / 2
                || y > paper.y()) {
            troubles.add("text '%s' at %.0f..%.0f, %.0f lies outside the paper of %.0f x %.0f".formatted(
                    words.text, words.left, words.right, y, paper.x(), paper.y()));
        }
    }
}
