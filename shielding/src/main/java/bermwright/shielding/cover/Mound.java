// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.shielding.scene.HullSolid;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A cover as it stands: the surface, its toe, and the soil placed. */
public final class Mound {
    /** How far the corners of a toe may be moved to leave most of them out (m). */
    private static final double TOE_WITHIN = 0.03;

    private final ElevationGrid ground;
    private final ElevationGrid finished;
    private final Part rough;
    private final List<Part> parts;
    private final List<CoveredHull> hulls;

    Mound(Part rough, List<Part> parts, List<CoveredHull> hulls) {
        this.rough = rough;
        this.parts = List.copyOf(parts);
        this.hulls = List.copyOf(hulls);
        ground = rough.ground.withPatches(parts.stream().map(Part::ground).toList());
        finished = rough.finished.withPatches(parts.stream().map(Part::finished).toList());
    }

    /**
     * A mound on the nodes of one grid.
     *
     * @param ground   ground under it
     * @param finished surface with it
     * @param asked    height asked for at each node (m)
     * @param owner    number of the hull that asks for the most there (1), -1 for none
     */
    record Part(ElevationGrid ground, ElevationGrid finished, double[] asked, int[] owner) {
        /** How far what is asked for stands above the ground at a node; negative infinity where none is. */
        double rise(int node) {
            int columns = ground.frame().columns();
            return asked[node] - ground.nodeHeight(node / columns, node % columns);
        }
    }

    /**
     * The ground under the mound, with finer patches where the mound stands.
     *
     * @return the ground
     */
    public ElevationGrid ground() {
        return ground;
    }

    /**
     * The surface with the mound on it, with finer patches where the mound stands.
     *
     * @return the surface, on the ground's grid and patches
     */
    public ElevationGrid finished() {
        return finished;
    }

    /**
     * The hulls under it.
     *
     * @return the hulls with their covers
     */
    public List<CoveredHull> hulls() {
        return hulls;
    }

    /**
     * The outlines where the mound meets the ground, holes in it included.
     *
     * @return closed outlines; those of a mound that runs off the grid close along its edge
     */
    public List<Ring> toes() {
        List<Ring> toes = new ArrayList<>();
        for (Part part : parts) {
            double[] rise = new double[part.asked.length];
            double least = -part.ground.frame().spacing();
            for (int i = 0; i < rise.length; i++) {
                double d = part.rise(i);
                rise[i] = Double.isNaN(d) ? least : Math.max(least, d);
            }
            ZeroLine.rings(part.ground.frame(), rise).forEach(r -> toes.add(FewerCorners.of(r, TOE_WITHIN)));
        }
        return toes;
    }

    /**
     * Whether the mound is still above the ground at the edge of the grid or beside a hole in it, so that its toe
     * never meets known ground.
     *
     * @return true where it does
     */
    public boolean runsOffTheGround() {
        return leavesTheGround().isPresent();
    }

    /**
     * A place where the mound runs off the grid or into a hole.
     *
     * @return the first such place from the south-west; empty where there is none
     */
    public Optional<Point> leavesTheGround() {
        GridFrame frame = ground.frame();
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                int at = row * frame.columns() + column;
                double h = ground.nodeHeight(row, column);
                boolean edge = row == 0 || column == 0 || row == frame.rows() - 1 || column == frame.columns() - 1;
                if (rough.asked[at] > h && edge || Double.isNaN(h) && rough.asked[at] > Double.NEGATIVE_INFINITY
                        && besideMound(row, column)) {
                    return Optional.of(new Point(frame.west() + column * frame.spacing(),
                            frame.south() + row * frame.spacing()));
                }
            }
        }
        return Optional.empty();
    }

    private boolean besideMound(int row, int column) {
        GridFrame frame = ground.frame();
        for (int r = Math.max(0, row - 1); r <= Math.min(frame.rows() - 1, row + 1); r++) {
            for (int c = Math.max(0, column - 1); c <= Math.min(frame.columns() - 1, column + 1); c++) {
                if (rough.asked[r * frame.columns() + c] > ground.nodeHeight(r, c)) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Soil placed: what lies between ground and mound, less what the hulls take up there.
     *
     * @return volume (m3), zero or more
     */
    public double placedVolume() {
        double volume = 0;
        for (Part part : parts) {
            volume += SoilVolume.between(part.ground, part.finished, node -> true);
        }
        for (CoveredHull hull : hulls) {
            volume -= takenUpBy(hull.hull());
        }
        return Math.max(0, volume);
    }

    /**
     * Soil placed for one hull: where mounds join, each node belongs to the hull that asks for the most there.
     *
     * @param hull number of the hull (1), in the order of {@link #hulls}
     * @return volume (m3), zero or more; those of all hulls together are {@link #placedVolume}
     */
    public double placedVolume(int hull) {
        double volume = 0;
        for (Part part : parts) {
            volume += SoilVolume.between(part.ground, part.finished, node -> part.owner[node] == hull);
        }
        return Math.max(0, volume - takenUpBy(hulls.get(hull).hull()));
    }

    /**
     * What one hull takes up between ground and mound.
     *
     * @param hull the hull
     * @return volume (m3), zero to the hull's own
     */
    public double takenUpBy(HullSolid hull) {
        return SoilVolume.hullBetween(hull, ground, finished);
    }

    /**
     * What a hull takes up between two surfaces.
     *
     * @param hull  the hull
     * @param lower the lower surface
     * @param upper the upper surface
     * @return volume (m3), zero to the hull's own
     */
    public static double takenUp(HullSolid hull, ElevationGrid lower, ElevationGrid upper) {
        return SoilVolume.hullBetween(hull, lower, upper);
    }

    /**
     * The volume by which one surface stands above another on the same grid; where it lies lower counts nothing.
     *
     * @param lower the lower surface
     * @param upper the upper surface
     * @return volume (m3), zero or more
     */
    public static double volumeBetween(ElevationGrid lower, ElevationGrid upper) {
        return SoilVolume.between(lower, upper);
    }
}
