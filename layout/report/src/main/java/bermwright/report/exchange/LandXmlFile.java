// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Writes a triangulated surface as LandXML 1.2 for machine control and survey programs.
 *
 * <p>Points are north, east, height, as that format has them, in projected metres. The date is fixed, so that the same
 * plan gives the same file.
 *
 * @see "LandXML schema 1.2 (2008): LandXML, Units, CoordinateSystem, Surfaces, Definition, Pnts, Faces; from memory"
 */
public final class LandXmlFile {
    private static final int DECIMALS = 4;
    private static final int HEIGHT_DECIMALS = 3;

    private LandXmlFile() {
    }

    /**
     * Writes the file.
     *
     * @param file    where to, ending in {@code .xml}
     * @param surface the surface
     * @param frame   the reference system
     * @param datum   what heights are counted from, in a sentence
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, TinSurface surface, SiteFrame frame, String datum) throws IOException {
        Tin net = surface.net();
        Measures measures = Measures.of(surface);
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            out.write("""
                    <?xml version="1.0" encoding="UTF-8"?>
                    <LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" \
                    xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" xsi:schemaLocation=\
                    "http://www.landxml.org/schema/LandXML-1.2 \
                    http://www.landxml.org/schema/LandXML-1.2/LandXML-1.2.xsd" \
                    version="1.2" date="2000-01-01" time="00:00:00" language="English" readOnly="false">
                    <Units><Metric areaUnit="squareMeter" linearUnit="meter" volumeUnit="cubicMeter" \
                    temperatureUnit="celsius" pressureUnit="milliBars" diameterUnit="meter" \
                    angularUnit="decimal degrees" directionUnit="decimal degrees"/></Units>
                    """);
            out.write("<CoordinateSystem name=\"" + marked(frame.name()) + "\" horizontalCoordinateSystemName=\""
                    + marked(frame.authority() + (frame.code().isEmpty() ? "" : ":") + frame.code())
                    + "\" ogcWktCode=\"" + marked(frame.wellKnown()) + "\" verticalDatum=\"" + marked(datum)
                    + "\" desc=\"projected metres on the Moon; one is " + Decimals.of(frame.metreScale(), 8)
                    + " true metres here\"/>\n<Project name=\"Bermwright\"/>\n"
                    + "<Application name=\"Bermwright\"/>\n<Surfaces>\n<Surface name=\"" + surface.name()
                    + "\" desc=\"" + marked(surface.about()) + "\">\n<Definition surfType=\"TIN\" area2DSurf=\""
                    + Decimals.of(measures.level, 3) + "\" area3DSurf=\"" + Decimals.of(measures.sloping, 3)
                    + "\" elevMax=\"" + Decimals.of(measures.highest, DECIMALS) + "\" elevMin=\""
                    + Decimals.of(measures.lowest, DECIMALS) + "\">\n<Pnts>\n");
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < net.points(); i++) {
                line.setLength(0);
                Decimals.appendTrimmed(line.append("<P id=\"").append(i + 1).append("\">"), net.north(i), DECIMALS);
                Decimals.appendTrimmed(line.append(' '), net.east(i), DECIMALS);
                Decimals.appendTrimmed(line.append(' '), surface.height(i), HEIGHT_DECIMALS);
                out.write(line.append("</P>\n").toString());
            }
            out.write("</Pnts>\n<Faces>\n");
            for (int i = 0; i < net.triangles(); i++) {
                out.write("<F>" + (net.corner(i, 0) + 1) + " " + (net.corner(i, 1) + 1) + " " + (net.corner(i, 2) + 1)
                        + "</F>\n");
            }
            out.write("</Faces>\n</Definition>\n</Surface>\n</Surfaces>\n</LandXML>\n");
        }
    }

    /** Words as they stand in an attribute. */
    static String marked(String words) {
        return words.replaceAll("[\\x00-\\x1F]", " ").replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** Areas in projected square metres and heights of a surface. */
    private record Measures(double level, double sloping, double lowest, double highest) {
        static Measures of(TinSurface s) {
            Tin net = s.net();
            double level = 0;
            double sloping = 0;
            double lowest = net.points() == 0 ? 0 : Double.POSITIVE_INFINITY;
            double highest = net.points() == 0 ? 0 : Double.NEGATIVE_INFINITY;
            for (int i = 0; i < net.points(); i++) {
                lowest = Math.min(lowest, s.height(i));
                highest = Math.max(highest, s.height(i));
            }
            for (int i = 0; i < net.triangles(); i++) {
                int a = net.corner(i, 0);
                int b = net.corner(i, 1);
                int c = net.corner(i, 2);
                double[] p = {net.east(b) - net.east(a), net.north(b) - net.north(a), s.height(b) - s.height(a)};
                double[] q = {net.east(c) - net.east(a), net.north(c) - net.north(a), s.height(c) - s.height(a)};
                double up = p[0] * q[1] - p[1] * q[0];
                level += up / 2;
                sloping += Math.hypot(up, Math.hypot(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2])) / 2;
            }
            return new Measures(level, sloping, lowest, highest);
        }
    }
}
