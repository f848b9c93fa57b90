// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

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
            NodeList items = SafeXml.parsed(xml.getBytes(StandardCharsets.UTF_8),
                    TiffTag.name(GeoTiffReader.GDAL_METADATA), trouble).getElementsByTagName("Item");
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
            throw trouble.badValue("scale in GDAL_METADATA (tag 42112)", 0, "other than 0");
        }
        return new GdalMetadata(scale, offset, unit);
    }

    private static double number(String field, String text, FileTrouble trouble) {
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below, together with values that are not finite
        }
        throw trouble.badValue(field + " in GDAL_METADATA (tag 42112)", "\"" + text + "\"", "a number");
    }
}
