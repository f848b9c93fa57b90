// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.io.StringReader;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * What GDAL notes in a TIFF file about the first band: height = stored value times scale, plus offset.
 *
 * @param scale  height units in one stored unit (1), not zero
 * @param offset height of a stored zero, in height units
 * @param unit   the unit of the heights as written; absent where none is
 */
record GdalMetadata(double scale, double offset, Optional<String> unit) {
    static GdalMetadata of(String xml, FileTrouble trouble) {
        double scale = 1;
        double offset = 0;
        Optional<String> unit = Optional.empty();
        if (!xml.isBlank()) {
            NodeList items = parsed(xml, trouble).getElementsByTagName("Item");
            for (int i = 0; i < items.getLength(); i++) {
                Element item = (Element) items.item(i);
                if ("0".equals(item.getAttribute("sample"))) {
                    String text = item.getTextContent().strip();
                    switch (item.getAttribute("role")) {
                        case "scale" -> scale = number("scale", text, trouble);
                        case "offset" -> offset = number("offset", text, trouble);
                        case "unittype" -> unit = Optional.of(text);
                        default -> {
                        }
                    }
                }
            }
        }
        if (scale == 0) {
            throw trouble.badValue("scale", 0, "other than 0");
        }
        return new GdalMetadata(scale, offset, unit);
    }

    private static Document parsed(String xml, FileTrouble trouble) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            return builder.parse(new InputSource(new StringReader(xml)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw trouble.unreadable("its notes about scale and unit cannot be read (" + e.getMessage() + ")",
                    "whole XML in tag 42112", e);
        }
    }

    private static double number(String what, String text, FileTrouble trouble) {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below, together with values that are not finite
        }
        throw trouble.badValue(what, "\"" + text + "\"", "a number");
    }
}
