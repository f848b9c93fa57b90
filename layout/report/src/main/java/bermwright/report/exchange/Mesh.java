// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A closed body of triangles, each anticlockwise seen from outside.
 *
 * @param points its corners (m)
 * @param faces  its triangles: three numbers of corners each
 */
public record Mesh(List<Vec3> points, List<Face> faces) {
    /** Copies the lists. */
    public Mesh {
        points = List.copyOf(points);
        faces = List.copyOf(faces);
    }

    /**
     * A triangle.
     *
     * @param a number of its first corner (1)
     * @param b number of its second corner (1)
     * @param c number of its third corner (1)
     */
    public record Face(int a, int b, int c) {
    }

    /**
     * What lies under a surface, down to a level.
     *
     * @param net     the net over a convex part of the ground, without holes
     * @param surface number of the surface over it (1)
     * @param bottom  the level (m), below all of the surface
     * @param inset   how far its sides stand inside those of the net, as a share of the way to the middle (1)
     * @return the body
     */
    public static Mesh under(Tin net, int surface, double bottom, double inset) {
        double east = 0;
        double north = 0;
        for (int i = 0; i < net.points(); i++) {
            east += net.east(i) / net.points();
            north += net.north(i) / net.points();
        }
        List<Vec3> points = new ArrayList<>();
        for (int i = 0; i < net.points(); i++) {
            points.add(new Vec3(net.east(i) + inset * (east - net.east(i)), net.north(i)
                    + inset * (north - net.north(i)), net.height(surface, i)));
        }
        List<Face> faces = new ArrayList<>();
        Map<Long, int[]> border = new TreeMap<>();
        for (int t = 0; t < net.triangles(); t++) {
            faces.add(new Face(net.corner(t, 0), net.corner(t, 1), net.corner(t, 2)));
            for (int k = 0; k < 3; k++) {
                int a = net.corner(t, k);
                int b = net.corner(t, (k + 1) % 3);
                if (border.remove((long) b << 32 | a) == null) {
                    border.put((long) a << 32 | b, new int[] {a, b});
                }
            }
        }
        int middle = points.size();
        points.add(new Vec3(east, north, bottom));
        Map<Integer, Integer> below = new HashMap<>();
        for (int[] edge : border.values()) {
            int[] foot = new int[2];
            for (int k = 0; k < 2; k++) {
                foot[k] = below.computeIfAbsent(edge[k], node -> {
                    points.add(new Vec3(points.get(node).x(), points.get(node).y(), bottom));
                    return points.size() - 1;
                });
            }
            faces.add(new Face(edge[0], foot[0], foot[1]));
            faces.add(new Face(edge[0], foot[1], edge[1]));
            faces.add(new Face(middle, foot[1], foot[0]));
        }
        return new Mesh(points, faces);
    }

    /**
     * A body of revolution.
     *
     * @param rings  the corners of each ring about the axis, from one end to the other, in turn about the axis
     * @param first  the tip at the first ring's side
     * @param last   the tip at the last ring's side
     * @return the body; rings run clockwise seen from the last tip
     */
    public static Mesh revolved(List<List<Vec3>> rings, Vec3 first, Vec3 last) {
        List<Vec3> points = new ArrayList<>();
        rings.forEach(points::addAll);
        int around = rings.get(0).size();
        int tip = points.size();
        points.add(first);
        points.add(last);
        List<Face> faces = new ArrayList<>();
        for (int k = 0; k < around; k++) {
            int next = (k + 1) % around;
            faces.add(new Face(tip, k, next));
            for (int ring = 0; ring + 1 < rings.size(); ring++) {
                int here = ring * around;
                int there = here + around;
                faces.add(new Face(here + k, there + k, there + next));
                faces.add(new Face(here + k, there + next, here + next));
            }
            int end = (rings.size() - 1) * around;
            faces.add(new Face(tip + 1, end + next, end + k));
        }
        return new Mesh(points, faces).outwards();
    }

    /** The same with all faces turned where they look inwards. */
    private Mesh outwards() {
        return volume() >= 0 ? this : new Mesh(points, faces.stream().map(f -> new Face(f.a, f.c, f.b)).toList());
    }

    /**
     * The volume enclosed.
     *
     * @return the volume (m3); negative where faces look inwards
     */
    public double volume() {
        Vec3 from = points.get(0);
        double sum = 0;
        for (Face f : faces) {
            sum += points.get(f.a).minus(from).dot(points.get(f.b).minus(from).cross(points.get(f.c).minus(from))) / 6;
        }
        return sum;
    }
}
