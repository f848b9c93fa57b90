// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Depth of soil over the skin of one hull, unrolled: along it from base to far end, around it from the crown.
 *
 * <p>Cells are the middles of equal steps along and around; the ends show their own skin. True depth is the nearest
 * way out to the surface in any direction; radial depth the way straight out of the skin; upright depth the way up.
 * Bare skin has depth 0. A flat end that looks up is no part of the unrolled skin; its depth counts in the least
 * depth, in the share below what is wanted and among the thin places all the same. Places looking down into the ground
 * have no radial way out: there it is not a number.
 */
public final class DepthMap {
    /** Sine of the rise from which on an end counts as looking up. */
    private static final double LOOKS_UP = 0.5;
    private static final int FACE_RINGS = 8;
    private static final int FACE_TURNS = 24;
    private final CoveredHull covered;
    private final int along;
    private final int around;
    private final double[] trueDepth;
    private final double[] radialDepth;
    private final double[] uprightDepth;
    private final List<Place> face = new ArrayList<>();

    private DepthMap(CoveredHull covered, int along, int around) {
        this.covered = covered;
        this.along = along;
        this.around = around;
        trueDepth = new double[along * around];
        radialDepth = new double[along * around];
        uprightDepth = new double[along * around];
    }

    /**
     * Measures the depth.
     *
     * @param covered the hull and the cover it was to have
     * @param surface the finished surface
     * @param along   cells along the hull (1), positive
     * @param around  cells around it (1), positive
     * @return the map
     */
    static DepthMap of(CoveredHull covered, ElevationGrid surface, int along, int around) {
        return of(covered, new SurfaceDistance(surface, covered.hull().middle().plan(), covered.faces()), along,
                around);
    }

    /** The same by distances to the surface. */
    static DepthMap of(CoveredHull covered, SurfaceDistance distance, int along, int around) {
        Require.that(along > 0 && around > 0, "a depth map of %s x %s cells; at least 1 x 1 is needed", along, around);
        DepthMap map = new DepthMap(covered, along, around);
        IntStream.range(0, along).parallel().forEach(i -> {
            for (int j = 0; j < around; j++) {
                map.measure(distance, i, j);
            }
        });
        map.face(distance, false);
        map.face(distance, true);
        return map;
    }

    /** The depth over a flat end that looks up, on rings of equal area. */
    private void face(SurfaceDistance distance, boolean far) {
        HullShape shape = covered.hull().shape();
        EndCover cover = far ? covered.far() : covered.base();
        double up = covered.hull().pose().axis().z() * (far ? 1 : -1);
        if (up < LOOKS_UP || cover != EndCover.COVERED
                || (far ? shape.farEnd() : shape.baseEnd()).shape() != HullEnd.Shape.FLAT) {
            return;
        }
        double s = far ? shape.length() : 0;
        double wanted = far ? covered.thickness().farEnd() : covered.thickness().baseEnd();
        double area = Math.PI * shape.radius() * shape.radius() / (FACE_RINGS * FACE_TURNS);
        for (int i = 0; i < FACE_RINGS; i++) {
            double r = shape.radius() * Math.sqrt((i + 0.5) / FACE_RINGS);
            for (int j = 0; j < FACE_TURNS; j++) {
                double around = ((j + 0.5) / FACE_TURNS * 2 - 1) * Math.PI;
                Vec3 place = covered.hull().pose().point(s, r * Math.sin(around), r * Math.cos(around));
                double above = distance.above(place);
                double depth = above <= 0 ? 0 : Double.isNaN(above) ? Double.NaN : distance.nearest(place, above);
                face.add(new Place(s, around, depth, wanted, area));
            }
        }
    }

    private void measure(SurfaceDistance distance, int i, int j) {
        int cell = i * around + j;
        double s = alongAt(i);
        double angle = aroundAt(j);
        Vec3 place = covered.hull().skin(s, angle);
        double up = distance.above(place);
        if (Double.isNaN(up)) {
            trueDepth[cell] = Double.NaN;
            radialDepth[cell] = Double.NaN;
            uprightDepth[cell] = Double.NaN;
            return;
        }
        uprightDepth[cell] = Math.max(0, up);
        trueDepth[cell] = up <= 0 ? 0 : distance.nearest(place, up);
        radialDepth[cell] = up <= 0 ? 0 : distance.along(place, normal(s, angle));
    }

    private Vec3 normal(double s, double angle) {
        HullShape shape = covered.hull().shape();
        double step = 1e-4 * shape.radius();
        double from = Math.max(0, s - step);
        double to = Math.min(shape.length(), s + step);
        double taper = -(shape.radiusAt(to) - shape.radiusAt(from)) / (to - from);
        return covered.hull().pose().axis().times(taper)
                .plus(covered.hull().pose().left().times(Math.sin(angle)))
                .plus(covered.hull().pose().crown().times(Math.cos(angle))).direction();
    }

    /**
     * Where a row of cells stands.
     *
     * @param i number of the row (1), from the base
     * @return distance from the base plane (m)
     */
    public double alongAt(int i) {
        return (i + 0.5) * covered.hull().shape().length() / along;
    }

    /**
     * Where a column of cells stands.
     *
     * @param j number of the column (1)
     * @return angle from the crown, positive to the left (rad), -pi to pi
     */
    public double aroundAt(int j) {
        return ((j + 0.5) / around * 2 - 1) * Math.PI;
    }

    /**
     * Cells along the hull.
     *
     * @return the number (1)
     */
    public int rows() {
        return along;
    }

    /**
     * Cells around the hull.
     *
     * @return the number (1)
     */
    public int columns() {
        return around;
    }

    /**
     * The nearest way out.
     *
     * @param i row (1)
     * @param j column (1)
     * @return depth (m), 0 on bare skin, not a number where the ground is unknown
     */
    public double trueDepth(int i, int j) {
        return trueDepth[i * around + j];
    }

    /**
     * The way straight out of the skin.
     *
     * @param i row (1)
     * @param j column (1)
     * @return depth (m), 0 on bare skin, not a number where that way never comes out
     */
    double radialDepth(int i, int j) {
        return radialDepth[i * around + j];
    }

    /**
     * The way straight up.
     *
     * @param i row (1)
     * @param j column (1)
     * @return depth (m), 0 on bare skin; on the underside it passes through the hull
     */
    public double uprightDepth(int i, int j) {
        return uprightDepth[i * around + j];
    }

    /**
     * A place on the skin and its depth.
     *
     * @param along  distance from the base plane (m)
     * @param around angle from the crown, positive to the left (rad)
     * @param depth  true depth (m)
     * @param wanted depth wanted there (m)
     * @param area   skin it stands for (m2)
     */
    public record Place(double along, double around, double depth, double wanted, double area) {
    }

    /**
     * The thinnest place among those that are to be covered: where some lie shallower than wanted the one that lacks
     * most, else the one with the least true depth. Places beside a wall, from which the way out leads through it,
     * count only where there are no others.
     *
     * @param slack depth by which a place may fall short (m), zero or more
     * @return the place; its depth is not a number where nothing is to be covered
     */
    public Place thinnest(double slack) {
        List<Place> wanted = new ArrayList<>(face);
        for (int cell = 0; cell < trueDepth.length; cell++) {
            wanted.add(place(cell));
        }
        wanted.removeIf(p -> !(p.wanted > 0));
        List<Place> judged = wanted.stream().filter(p -> !covered.isBesideWall(p.along, p.around)).toList();
        List<Place> of = judged.isEmpty() ? wanted : judged;
        Comparator<Place> lacksMost = Comparator.comparingDouble(p -> p.depth - p.wanted);
        Comparator<Place> leastDeep = Comparator.comparingDouble(p -> p.depth);
        return of.stream().filter(p -> Double.isNaN(p.depth)).findFirst()
                .or(() -> of.stream().filter(p -> p.depth < p.wanted - slack).min(lacksMost))
                .or(() -> of.stream().min(leastDeep)).orElse(new Place(0, 0, Double.NaN, 0, 0));
    }

    /**
     * The place with the least true depth among those that are to be covered, whatever is wanted there.
     *
     * @return the place; its depth is not a number where nothing is to be covered
     */
    Place least() {
        return thinnest(Double.POSITIVE_INFINITY);
    }

    /**
     * The share of the skin that is to be covered and lies shallower than wanted.
     *
     * @param slack depth by which a place may fall short (m), zero or more
     * @return share of the skin to be covered (1); 0 where nothing is to be covered
     */
    public double shareBelowWanted(double slack) {
        double below = 0;
        double all = 0;
        for (int cell = 0; cell < trueDepth.length; cell++) {
            Place here = place(cell);
            if (here.wanted > 0) {
                all += here.area;
                below += here.depth >= here.wanted - slack ? 0 : here.area;
            }
        }
        for (Place here : face) {
            all += here.wanted > 0 ? here.area : 0;
            below += here.wanted > 0 && !(here.depth >= here.wanted - slack) ? here.area : 0;
        }
        return all > 0 ? below / all : 0;
    }

    /**
     * Skin that is to be covered and lies bare.
     *
     * @param area   its area (m2)
     * @param share  its share of the skin to be covered (1)
     * @param length length of the hull on which some of it lies (m)
     * @param along  where one such place is, from the base plane (m); NaN where there is none
     * @param around the same, angle from the crown (rad); NaN where there is none
     */
    public record Bare(double area, double share, double length, double along, double around) {
    }

    /**
     * The skin that is to be covered and lies bare.
     *
     * @param depth depth up to which skin counts as bare (m), zero or more
     * @return the bare skin; what is not known counts as bare
     */
    public Bare bare(double depth) {
        double bare = 0;
        double all = 0;
        boolean[] rows = new boolean[along];
        Place first = new Place(Double.NaN, Double.NaN, 0, 0, 0);
        for (int cell = 0; cell < trueDepth.length; cell++) {
            Place here = place(cell);
            all += here.wanted > 0 ? here.area : 0;
            if (here.wanted > depth && !(here.depth > depth)) {
                bare += here.area;
                rows[cell / around] = true;
                first = Double.isNaN(first.along) ? here : first;
            }
        }
        for (Place here : face) {
            all += here.wanted > 0 ? here.area : 0;
            if (here.wanted > depth && !(here.depth > depth)) {
                bare += here.area;
                first = Double.isNaN(first.along) ? here : first;
            }
        }
        int bareRows = 0;
        for (boolean row : rows) {
            bareRows += row ? 1 : 0;
        }
        return new Bare(bare, all > 0 ? bare / all : 0, bareRows * covered.hull().shape().length() / along,
                first.along, first.around);
    }

    /**
     * Connected patches of skin that lie shallower than wanted, the worst place of each.
     *
     * @param slack depth by which a place may fall short (m), zero or more
     * @return the worst places with the area of their patch, the largest patch first
     */
    public List<Place> thinPlaces(double slack) {
        boolean[] seen = new boolean[trueDepth.length];
        List<Place> found = new ArrayList<>();
        for (int cell = 0; cell < seen.length; cell++) {
            if (!seen[cell] && isThin(cell, slack)) {
                found.add(patch(cell, slack, seen));
            }
        }
        List<Place> shallow = face.stream().filter(p -> p.wanted > 0 && !(p.depth >= p.wanted - slack)).toList();
        shallow.stream().min((a, b) -> Double.compare(a.depth - a.wanted, b.depth - b.wanted)).ifPresent(worst ->
                found.add(new Place(worst.along, worst.around, worst.depth, worst.wanted,
                        shallow.stream().mapToDouble(Place::area).sum())));
        found.sort((a, b) -> Double.compare(b.area, a.area));
        return found;
    }

    private Place patch(int start, double slack, boolean[] seen) {
        Deque<Integer> open = new ArrayDeque<>();
        open.add(start);
        seen[start] = true;
        Place worst = place(start);
        double area = 0;
        while (!open.isEmpty()) {
            int cell = open.poll();
            Place here = place(cell);
            area += here.area;
            if (here.wanted - here.depth > worst.wanted - worst.depth) {
                worst = here;
            }
            int i = cell / around;
            int j = cell % around;
            int[] beside = {i > 0 ? cell - around : -1, i + 1 < along ? cell + around : -1,
                i * around + (j + 1) % around, i * around + (j + around - 1) % around};
            for (int other : beside) {
                if (other >= 0 && !seen[other] && isThin(other, slack)) {
                    seen[other] = true;
                    open.add(other);
                }
            }
        }
        return new Place(worst.along, worst.around, worst.depth, worst.wanted, area);
    }

    private boolean isThin(int cell, double slack) {
        Place here = place(cell);
        return here.wanted > 0 && !(here.depth >= here.wanted - slack);
    }

    private Place place(int cell) {
        double s = alongAt(cell / around);
        double angle = aroundAt(cell % around);
        HullShape shape = covered.hull().shape();
        double area = shape.radiusAt(s) * 2 * Math.PI / around * shape.length() / along;
        return new Place(s, angle, trueDepth[cell], covered.wanted(s, angle), area);
    }
}
