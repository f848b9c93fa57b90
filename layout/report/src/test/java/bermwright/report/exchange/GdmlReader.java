// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Reads scenes in GDML, written from the format's user's guide and not from the writer: what a ray crosses, by the
 * rules of transport programs, with every overlap of bodies found on its way.
 */
public final class GdmlReader {
    private final Map<String, Vec3> places = new HashMap<>();
    private final Map<String, Double> densities = new HashMap<>();
    private final Map<String, Element> solids = new HashMap<>();
    private final Map<String, double[][]> meshes = new HashMap<>();
    private final Map<String, Element> volumes = new HashMap<>();
    private final String world;
    private double overlap;

    /** Reads a file. */
    public GdmlReader(Path file) throws Exception {
        Element root = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
                .getDocumentElement();
        for (Element place : children(child(root, "define"))) {
            if (!"m".equals(place.getAttribute("unit"))) {
                throw new AssertionError("unit " + place.getAttribute("unit"));
            }
            places.put(place.getAttribute("name"), new Vec3(Double.parseDouble(place.getAttribute("x")),
                    Double.parseDouble(place.getAttribute("y")), Double.parseDouble(place.getAttribute("z"))));
        }
        for (Element material : children(child(root, "materials"))) {
            if (material.getTagName().equals("material")) {
                Element d = child(material, "D");
                densities.put(material.getAttribute("name"), 1000 * Double.parseDouble(d.getAttribute("value")));
                double shares = children(material).stream().filter(e -> e.getTagName().equals("fraction"))
                        .mapToDouble(e -> Double.parseDouble(e.getAttribute("n"))).sum();
                if (shares != 0 && Math.abs(shares - 1) > 1e-6) {
                    throw new AssertionError(material.getAttribute("name") + ": shares " + shares);
                }
            }
        }
        children(child(root, "solids")).forEach(s -> solids.put(s.getAttribute("name"), s));
        children(child(root, "structure")).forEach(v -> volumes.put(v.getAttribute("name"), v));
        world = child(child(root, "setup"), "world").getAttribute("ref");
    }

    private static List<Element> children(Element of) {
        List<Element> found = new ArrayList<>();
        for (Node n = of.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element e) {
                found.add(e);
            }
        }
        return found;
    }

    private static Element child(Element of, String name) {
        return children(of).stream().filter(e -> e.getTagName().equals(name)).findFirst().orElseThrow(() ->
                new AssertionError(of.getTagName() + " without " + name));
    }

    /** Names of all volumes. */
    public List<String> volumes() {
        return volumes.keySet().stream().sorted().toList();
    }

    /** The place of a named position (m). */
    public Vec3 place(String name) {
        return places.get(name);
    }

    /** The volume of a tessellated solid (m3). */
    public double room(String solid) {
        double sum = 0;
        for (double[] t : mesh(solid)) {
            sum += (t[0] * (t[4] * t[8] - t[5] * t[7]) - t[1] * (t[3] * t[8] - t[5] * t[6])
                    + t[2] * (t[3] * t[7] - t[4] * t[6])) / 6;
        }
        return sum;
    }

    /** How far bodies overlapped or stood out of what they are in, on all rays so far (m). */
    public double overlap() {
        return overlap;
    }

    /** Mass on the way from a place to the end of the world (kg/m2). */
    public double mass(Vec3 from, Vec3 direction) {
        return mass(world, from, direction.direction(), intervals(solidOf(world), from, direction.direction()));
    }

    private String solidOf(String volume) {
        return child(volumes.get(volume), "solidref").getAttribute("ref");
    }

    private double mass(String volume, Vec3 from, Vec3 direction, double[] own) {
        double density = densities.get(child(volumes.get(volume), "materialref").getAttribute("ref"));
        double mass = density * length(own);
        double[] taken = {};
        for (Element placed : children(volumes.get(volume))) {
            if (placed.getTagName().equals("physvol")) {
                String inner = child(placed, "volumeref").getAttribute("ref");
                Vec3 start = children(placed).stream().filter(e -> e.getTagName().equals("positionref")).findFirst()
                        .map(e -> from.minus(places.get(e.getAttribute("ref")))).orElse(from);
                double[] there = intervals(solidOf(inner), start, direction);
                overlap += length(minus(there, own)) + length(there) - length(minus(there, taken));
                taken = joined(taken, there);
                mass += mass(inner, start, direction, there) - density * length(there);
            }
        }
        return mass;
    }

    private static double length(double[] intervals) {
        double sum = 0;
        for (int i = 0; i < intervals.length; i += 2) {
            sum += intervals[i + 1] - intervals[i];
        }
        return sum;
    }

    private static double[] joined(double[] a, double[] b) {
        double[] all = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, all, a.length, b.length);
        return all;
    }

    private static double[] minus(double[] a, double[] b) {
        double[] left = a;
        for (int k = 0; k < b.length; k += 2) {
            List<Double> kept = new ArrayList<>();
            for (int i = 0; i < left.length; i += 2) {
                if (Math.min(left[i + 1], b[k]) > left[i]) {
                    kept.addAll(List.of(left[i], Math.min(left[i + 1], b[k])));
                }
                if (left[i + 1] > Math.max(left[i], b[k + 1])) {
                    kept.addAll(List.of(Math.max(left[i], b[k + 1]), left[i + 1]));
                }
            }
            left = kept.stream().mapToDouble(Double::doubleValue).toArray();
        }
        return left;
    }

    /** Where a ray is inside a solid, ahead of where it starts. */
    private double[] intervals(String solid, Vec3 from, Vec3 way) {
        Element of = solids.get(solid);
        switch (of.getTagName()) {
            case "tessellated":
                return crossings(mesh(solid), from, way);
            case "subtraction":
                return minus(intervals(child(of, "first").getAttribute("ref"), from, way),
                        intervals(child(of, "second").getAttribute("ref"), from, way));
            case "orb": {
                double r = Double.parseDouble(of.getAttribute("r"));
                double b = from.dot(way);
                double root = b * b - from.dot(from) + r * r;
                return root <= 0 || -b + Math.sqrt(root) <= 0 ? new double[0]
                        : new double[] {Math.max(0, -b - Math.sqrt(root)), -b + Math.sqrt(root)};
            }
            case "box": {
                double out = Double.POSITIVE_INFINITY;
                double[] p = {from.x(), from.y(), from.z()};
                double[] d = {way.x(), way.y(), way.z()};
                for (int i = 0; i < 3; i++) {
                    double half = Double.parseDouble(of.getAttribute("xyz".substring(i, i + 1))) / 2;
                    out = d[i] == 0 ? out : Math.min(out, (Math.signum(d[i]) * half - p[i]) / d[i]);
                }
                return new double[] {0, out};
            }
            default:
                throw new AssertionError(of.getTagName());
        }
    }

    private double[][] mesh(String solid) {
        return meshes.computeIfAbsent(solid, s -> children(solids.get(s)).stream().map(t -> {
            double[] corners = new double[9];
            for (int k = 0; k < 3; k++) {
                Vec3 p = places.get(t.getAttribute("vertex" + (k + 1)));
                corners[3 * k] = p.x();
                corners[3 * k + 1] = p.y();
                corners[3 * k + 2] = p.z();
            }
            return corners;
        }).toArray(double[][]::new));
    }

    private static double[] crossings(double[][] mesh, Vec3 from, Vec3 way) {
        double[] found = new double[16];
        int count = 0;
        for (double[] t : mesh) {
            Vec3 a = new Vec3(t[3] - t[0], t[4] - t[1], t[5] - t[2]);
            Vec3 b = new Vec3(t[6] - t[0], t[7] - t[1], t[8] - t[2]);
            Vec3 p = way.cross(b);
            double det = a.dot(p);
            Vec3 s = new Vec3(from.x() - t[0], from.y() - t[1], from.z() - t[2]);
            double u = s.dot(p) / det;
            if (det != 0 && u >= 0 && u <= 1) {
                Vec3 q = s.cross(a);
                double v = way.dot(q) / det;
                double distance = b.dot(q) / det;
                if (v >= 0 && u + v <= 1 && distance > 0) {
                    found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
                    found[count++] = distance;
                }
            }
        }
        double[] sorted = Arrays.copyOf(found, count);
        Arrays.sort(sorted);
        if (count % 2 == 1) {
            double[] inside = new double[count + 1];
            System.arraycopy(sorted, 0, inside, 1, count);
            return inside;
        }
        return sorted;
    }
}
