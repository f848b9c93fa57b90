// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamReader;

/**
 * A reader of LandXML surfaces of our own, written from the published format (LandXML schema 1.2: Pnts and Faces of a
 * TIN, points as north, east, height); it shares nothing with the writer. No schema file could be had here.
 */
public final class LandXmlReader {
    /** Name, datum and stated level area of the surface. */
    public final Map<String, String> stated = new HashMap<>();
    /** North, east, height by the point's id. */
    public final Map<String, double[]> points = new HashMap<>();
    /** Ids of three points each. */
    public final List<String[]> faces = new ArrayList<>();

    /** Reads a file. */
    public static LandXmlReader read(Path file) throws Exception {
        LandXmlReader read = new LandXmlReader();
        try (InputStream in = Files.newInputStream(file)) {
            XMLStreamReader xml = XMLInputFactory.newFactory().createXMLStreamReader(in);
            while (xml.hasNext()) {
                if (xml.next() != XMLStreamConstants.START_ELEMENT) {
                    continue;
                }
                if (!"http://www.landxml.org/schema/LandXML-1.2".equals(xml.getNamespaceURI())) {
                    throw new AssertionError("element " + xml.getName() + " is in no LandXML namespace");
                }
                read.element(xml);
            }
        }
        return read;
    }

    private void element(XMLStreamReader xml) throws Exception {
        String name = xml.getLocalName();
        for (int i = 0; i < xml.getAttributeCount(); i++) {
            if (!name.equals("P")) {
                stated.put(name + "/" + xml.getAttributeLocalName(i), xml.getAttributeValue(i));
            }
        }
        if (name.equals("P")) {
            String id = xml.getAttributeValue(null, "id");
            String[] words = xml.getElementText().trim().split("\\s+");
            points.put(id, new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1]),
                Double.parseDouble(words[2])});
        } else if (name.equals("F")) {
            faces.add(xml.getElementText().trim().split("\\s+"));
        }
    }

    /** Level area of all faces; each runs anticlockwise seen from above, or its area counts as negative. */
    public double area() {
        return faces.stream().mapToDouble(this::area).sum();
    }

    private double area(String[] face) {
        double[] a = points.get(face[0]);
        double[] b = points.get(face[1]);
        double[] c = points.get(face[2]);
        return ((b[1] - a[1]) * (c[0] - a[0]) - (c[1] - a[1]) * (b[0] - a[0])) / 2;
    }

    /** Volume by which this surface stands above another over the same faces; where it is lower counts nothing. */
    public double above(LandXmlReader lower) {
        double volume = 0;
        for (String[] face : faces) {
            double sum = 0;
            for (String id : face) {
                sum += points.get(id)[2] - lower.points.get(id)[2];
            }
            volume += Math.max(0, sum / 3 * area(face));
        }
        return volume;
    }
}
