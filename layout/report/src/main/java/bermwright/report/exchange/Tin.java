// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;
import java.util.List;

/**
 * Surfaces over one net of triangles: the nodes of a grid of which most are left out where the surfaces are straight.
 *
 * <p>The net begins with the corners of the grid and takes in the node that is farthest off, again and again, until no
 * left-out node of any surface is farther from its triangle than the tolerance there; the triangles are those of
 * Delaunay. What all left-out nodes are off is measured: {@link #greatestMiss}. Where a height is missing there is no
 * triangle.
 *
 * @see "Garland and Heckbert (1995), Fast polygonal approximation of terrains and height fields, CMU-CS-95-181,
 *      algorithm III"
 */
public final class Tin {
    private final double[] east;
    private final double[] north;
    private final double[][] heights;
    private final int[] corners;
    private final double[] greatestMisses;

    private Tin(double[] east, double[] north, double[][] heights, int[] corners,
            double[] greatestMisses) {
        this.east = east;
        this.north = north;
        this.heights = heights;
        this.corners = corners;
        this.greatestMisses = greatestMisses;
    }

    /**
     * A net over a square grid.
     *
     * @param frame     its nodes: as many rows as columns, a power of two and one more, 3 or more
     * @param surfaces  heights of each surface (m), rows x columns, row 0 southernmost, {@code NaN} where missing
     * @param detail    how closely they are followed
     * @return the net
     */
    public static Tin over(GridFrame frame, List<double[]> surfaces, Detail detail) {
        Require.that(frame.rows() == frame.columns() && Integer.bitCount(frame.rows() - 1) == 1,
                "a net over %s x %s nodes; accepted: a square of a power of two and one more", frame.rows(),
                frame.columns());
        GreedyTriangles net = new GreedyTriangles(frame.rows(), surfaces, detail);
        int[] nodes = net.corners();
        int[] number = new int[frame.size()];
        Arrays.fill(number, -1);
        int[] used = new int[frame.size()];
        int count = 0;
        int[] corners = new int[nodes.length];
        for (int i = 0; i < nodes.length; i++) {
            if (number[nodes[i]] < 0) {
                used[count] = nodes[i];
                number[nodes[i]] = count++;
            }
            corners[i] = number[nodes[i]];
        }
        double[] east = new double[count];
        double[] north = new double[count];
        double[][] heights = new double[surfaces.size()][count];
        for (int i = 0; i < count; i++) {
            east[i] = frame.east(used[i] % frame.columns());
            north[i] = frame.north(used[i] / frame.columns());
            for (int s = 0; s < heights.length; s++) {
                heights[s][i] = surfaces.get(s)[used[i]];
            }
        }
        return new Tin(east, north, heights, corners, net.greatestMisses());
    }

    /**
     * How far a left-out node is from its triangle at most, upright, over all surfaces, where something is built.
     *
     * @return the distance (m), zero or more
     */
    public double greatestMiss() {
        return greatestMisses[0];
    }

    /**
     * The same where nothing is built.
     *
     * @return the distance (m), zero or more
     */
    public double greatestMissElsewhere() {
        return greatestMisses[1];
    }

    /**
     * How many points.
     *
     * @return the number (1)
     */
    public int points() {
        return east.length;
    }

    /**
     * How many triangles.
     *
     * @return the number (1)
     */
    public int triangles() {
        return corners.length / 3;
    }

    /**
     * East of a point.
     *
     * @param point number of the point (1)
     * @return east (m)
     */
    public double east(int point) {
        return east[point];
    }

    /**
     * North of a point.
     *
     * @param point number of the point (1)
     * @return north (m)
     */
    public double north(int point) {
        return north[point];
    }

    /**
     * Height of a surface at a point.
     *
     * @param surface number of the surface (1)
     * @param point   number of the point (1)
     * @return height (m)
     */
    public double height(int surface, int point) {
        return heights[surface][point];
    }

    /**
     * A corner of a triangle; its three run anticlockwise seen from above.
     *
     * @param triangle number of the triangle (1)
     * @param corner   which corner (1), 0 to 2
     * @return number of the point (1)
     */
    public int corner(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }
}
