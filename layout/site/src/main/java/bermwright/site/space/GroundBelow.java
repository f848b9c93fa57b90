// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.TrueMetres;
import java.util.Arrays;
import java.util.Optional;

/** The ground, or a surface on it, as something that bodies in space keep clear of. */
public final class GroundBelow {
    private static final int BLOCK = 8;
    private static final int DIRECTIONS = 16;
    private static final int RINGS = 4;
    private static final int HALVINGS = 7;
    private final Optional<ElevationGrid> grid;
    private final TrueMetres metres;
    private final double[] highest;
    private final int blocksAcross;

    private GroundBelow(Optional<ElevationGrid> grid, TrueMetres metres) {
        this.grid = grid;
        this.metres = metres;
        this.blocksAcross = grid.map(g -> (g.frame().columns() + BLOCK - 1) / BLOCK).orElse(0);
        this.highest = grid.map(this::blocks).orElse(new double[0]);
    }

    /**
     * Ground from an elevation grid.
     *
     * @param grid the grid; without one the ground is level at height 0, a projected metre a true one
     * @return the ground
     */
    public static GroundBelow of(Optional<ElevationGrid> grid) {
        return new GroundBelow(grid, grid.map(ElevationGrid::metres).orElse(TrueMetres.SAME));
    }

    /**
     * Level ground at height 0.
     *
     * @param metres true metres against those of the plan
     * @return the ground
     */
    public static GroundBelow level(TrueMetres metres) {
        return new GroundBelow(Optional.empty(), metres);
    }

    private double[] blocks(ElevationGrid from) {
        GridFrame frame = from.frame();
        double[] most = new double[blocksAcross * ((frame.rows() + BLOCK - 1) / BLOCK)];
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                double height = from.nodeHeight(row, column);
                int block = row / BLOCK * blocksAcross + column / BLOCK;
                if (height > most[block]) {
                    most[block] = height;
                }
            }
        }
        return most;
    }

    /**
     * True metres against those of the plan.
     *
     * @return those of the ground
     */
    public TrueMetres metres() {
        return metres;
    }

    /**
     * Distance between neighbouring heights.
     *
     * @return spacing (m), nothing for level ground
     */
    public double spacing() {
        return grid.map(ElevationGrid::trueSpacing).orElse(0.0);
    }

    /**
     * Height of the ground.
     *
     * @param place a place, of whatever height
     * @return height (m), {@code NaN} where it is not known
     */
    public double height(Vec3 place) {
        return height(place.x(), place.y());
    }

    private double height(double x, double y) {
        return grid.isEmpty() ? 0 : grid.get().height(metres.onPlan(x), metres.onPlan(y));
    }

    /**
     * A height that no ground near a place stands above.
     *
     * @param place the place
     * @param reach how far around it (m)
     * @return height (m); minus infinity where no ground is known
     */
    public double notAbove(Vec3 place, double reach) {
        if (grid.isEmpty()) {
            return 0;
        }
        GridFrame frame = grid.get().frame();
        double spacing = frame.spacing();
        double x = (metres.onPlan(place.x()) - frame.west()) / spacing;
        double y = (metres.onPlan(place.y()) - frame.south()) / spacing;
        double cells = metres.onPlan(reach) / spacing + 1;
        double most = Double.NEGATIVE_INFINITY;
        for (int row = block(y - cells, frame.rows()); row <= block(y + cells, frame.rows()); row++) {
            for (int column = block(x - cells, frame.columns()); column <= block(x + cells, frame.columns());
                    column++) {
                most = Math.max(most, highest[row * blocksAcross + column]);
            }
        }
        return most;
    }

    private static int block(double node, int count) {
        return Math.max(0, Math.min(count - 1, (int) Math.floor(node))) / BLOCK;
    }

    /**
     * How far a place is clear of the ground.
     *
     * @param place the place
     * @param reach how far to look around (m)
     * @return the least distance in space (m); how deep under the surface, negative, for a place inside the ground;
     *     the height over the ground where nothing is nearer within the reach; {@code NaN} over unknown ground
     */
    public double clear(Vec3 place, double reach) {
        double below = place.z() - height(place);
        if (!(below > 0) || below > 0 && place.z() - notAbove(place, reach) > reach) {
            return below;
        }
        double least = below;
        double bestX = place.x();
        double bestY = place.y();
        for (int ring = 1; ring <= RINGS; ring++) {
            double radius = Math.min(reach, below) * ring / RINGS;
            for (int k = 0; k < DIRECTIONS; k++) {
                double x = place.x() + radius * Math.cos(2 * Math.PI * k / DIRECTIONS);
                double y = place.y() + radius * Math.sin(2 * Math.PI * k / DIRECTIONS);
                double distance = distance(place, x, y);
                if (distance < least) {
                    least = distance;
                    bestX = x;
                    bestY = y;
                }
            }
        }
        return finer(place, bestX, bestY, Math.min(reach, below) / RINGS);
    }

    private double finer(Vec3 place, double fromX, double fromY, double first) {
        double x = fromX;
        double y = fromY;
        double least = distance(place, x, y);
        double step = first / 2;
        for (int i = 0; i < HALVINGS; i++, step /= 2) {
            double nextX = x;
            double nextY = y;
            for (int k = 0; k < 8; k++) {
                double tryX = x + step * Math.cos(Math.PI / 4 * k);
                double tryY = y + step * Math.sin(Math.PI / 4 * k);
                double distance = distance(place, tryX, tryY);
                if (distance < least) {
                    least = distance;
                    nextX = tryX;
                    nextY = tryY;
                }
            }
            x = nextX;
            y = nextY;
        }
        return least;
    }

    /** Distance from a place over the ground to the ground's column at another place. */
    private double distance(Vec3 place, double x, double y) {
        double up = Math.max(0, place.z() - height(x, y));
        double distance = Math.sqrt((x - place.x()) * (x - place.x()) + (y - place.y()) * (y - place.y()) + up * up);
        return Double.isNaN(distance) ? Double.POSITIVE_INFINITY : distance;
    }
}
