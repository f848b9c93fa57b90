// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import java.util.Arrays;

/**
 * Invented ground of any size that looks like the Moon's, worked out wherever heights are asked for: self-affine
 * relief of all lengths, craters strewn by their measured numbers with measured shapes, and boulders. The same seed
 * gives the same ground, to the last bit, however it is cut into blocks.
 *
 * <p>Crater numbers follow the steady state of old surfaces, {@code N(>= D) = 0.079 D^-2} in a square metre, D in
 * metres (from memory), times a share; shapes and debris those of {@link FreshCrater}, worn by an even draw. Boulder
 * numbers follow a power of the diameter, {@code N(>= D) = a D^-b}. It stands for no place.
 *
 * @see "Trask (1966), Size and spatial distribution of craters estimated from Ranger photographs, JPL Technical Report
 *     32-800"
 */
public final class MadeGround implements HeightSource {
    private static final double STEADY_STATE = 0.079;
    /** A crater's rim reaches this many rim radii. */
    private static final double REACH_IN_RADII = 6;
    /** The mean over a cell of the squares of the four weights of {@link #smooth}: 0.78355 each way. */
    private static final double LEFT_BY_SMOOTHING = 0.61395;
    private static final double LARGEST_CRATER = 15_000;

    /**
     * What the ground is like.
     *
     * @param relief         root mean square of the relief without craters (m), zero or more
     * @param longest        longest wave of that relief (m), positive
     * @param hurst          Hurst exponent (1), 0 to 1; from 0.7 to 0.95 for the Moon (from memory)
     * @param craterShare    share of the steady state of craters (1), zero or more
     * @param largestCrater  largest rim diameter (m), above 4 cells, at most 15 km
     * @param boulders       boulders of a metre and more in a square metre (1/m2), zero or more
     * @param boulderPower   power b of their numbers (1), 1 to 6
     */
    public record Recipe(double relief, double longest, double hurst, double craterShare, double largestCrater,
            double boulders, double boulderPower) {
        /** Ground like a highland plain: rolling, cratered to half the steady state, few boulders. */
        public static final Recipe HIGHLAND = new Recipe(30, 4000, 0.8, 0.5, 1000, 2e-4, 3);

        /** Refuses what cannot be. */
        public Recipe {
            Require.notNegative("relief", relief, "m");
            Require.positive("longest wave", longest, "m");
            Require.within("Hurst exponent", hurst, 0, 1, "1");
            Require.within("share of the steady state of craters", craterShare, 0, 10, "1");
            Require.positive("largest crater", largestCrater, "m");
            Require.within("largest crater", largestCrater, 0, LARGEST_CRATER, "m");
            Require.within("boulders", boulders, 0, 1, "1/m2");
            Require.within("power of the boulders' numbers", boulderPower, 1, 6, "1");
        }
    }

    private final GridFrame frame;
    private final Recipe recipe;
    private final long seed;

    /**
     * Ground by a recipe and a seed.
     *
     * @param frame  where the nodes lie, of any size
     * @param recipe what the ground is like
     * @param seed   the seed
     */
    public MadeGround(GridFrame frame, Recipe recipe, long seed) {
        this.frame = frame;
        this.recipe = recipe;
        this.seed = LatticeNoise.mix(seed);
    }

    @Override
    public GridFrame frame() {
        return frame;
    }

    @Override
    public double metreScale() {
        return 1;
    }

    @Override
    public void read(NodeRange block, double[] into) {
        Require.that(block.isIn(frame) && into.length >= block.nodes(), "the block leaves the ground, or the array is"
                + " too short for it.");
        Arrays.fill(into, 0, (int) block.nodes(), 0);
        addRelief(block, into);
        double smallest = 4 * frame.spacing();
        int octave = 0;
        for (double top = recipe.largestCrater; top > smallest; top /= 2, octave++) {
            addCraters(block, into, Math.max(smallest, top / 2), top, octave);
        }
        addBoulders(block, into);
    }

    /** Waves of half the length and 2^-H of the height each, down to two cells. */
    private void addRelief(NodeRange block, double[] into) {
        int octaves = (int) Math.max(1, Math.floor(StrictMath.log(recipe.longest / frame.spacing())
                / StrictMath.log(2)));
        double ratio = StrictMath.pow(2, -recipe.hurst);
        double squares = 0;
        for (int o = 0; o < octaves; o++) {
            squares += StrictMath.pow(ratio, 2 * o);
        }
        // Mean square of the noise: a number even between -1 and 1 has 1/3; smoothed between nodes, it
        // keeps 0.614 of it.
        double height = recipe.relief / Math.sqrt(squares * LEFT_BY_SMOOTHING / 3);
        double length = recipe.longest;
        for (int o = 0; o < octaves && recipe.relief > 0; o++) {
            addWaves(block, into, length, height, seed + 101 * o);
            length /= 2;
            height *= ratio;
        }
    }

    private void addWaves(NodeRange block, double[] into, double length, double height, long waveSeed) {
        for (int r = 0; r < block.rows(); r++) {
            double y = frame.north(block.firstRow() + r) / length;
            long j = (long) Math.floor(y);
            double v = smooth(y - j);
            long at = Long.MIN_VALUE;
            double west = 0;
            double east = 0;
            for (int c = 0; c < block.columns(); c++) {
                double x = frame.east(block.firstColumn() + c) / length;
                long i = (long) Math.floor(x);
                if (i != at) {
                    at = i;
                    west = (1 - v) * LatticeNoise.swing(waveSeed, i, j) + v * LatticeNoise.swing(waveSeed, i, j + 1);
                    east = (1 - v) * LatticeNoise.swing(waveSeed, i + 1, j)
                            + v * LatticeNoise.swing(waveSeed, i + 1, j + 1);
                }
                double u = smooth(x - i);
                into[r * block.columns() + c] += height * ((1 - u) * west + u * east);
            }
        }
    }

    /** From 0 to 1 with neither slope nor bend at either end. */
    private static double smooth(double t) {
        return t * t * t * (t * (t * 6 - 15) + 10);
    }

    /** Craters between two diameters, drawn in squares of the larger diameter. */
    private void addCraters(NodeRange block, double[] into, double from, double to, int octave) {
        double small = 1 / (from * from);
        double large = 1 / (to * to);
        double wanted = STEADY_STATE * recipe.craterShare * (small - large) * to * to;
        forSquares(block, to, REACH_IN_RADII / 2 * to, (i, j) -> {
            long place = LatticeNoise.mixed(seed + 7919L * (octave + 1), i, j);
            int count = (int) (wanted + LatticeNoise.share(place, 0));
            for (int k = 0; k < count; k++) {
                double diameter = 1 / Math.sqrt(large + LatticeNoise.share(place, 4 * k + 1) * (small - large));
                Point centre = new Point((i + LatticeNoise.share(place, 4 * k + 2)) * to,
                        (j + LatticeNoise.share(place, 4 * k + 3)) * to);
                double left = 0.05 + 0.95 * LatticeNoise.share(place, 4 * k + 4);
                Crater crater = Crater.worn(centre, diameter, left * left);
                stamp(block, into, centre, REACH_IN_RADII / 2 * diameter, crater::height);
            }
        });
    }

    /** Boulders of two cells and more: half balls flattened to 0.6 of their half diameter. */
    private void addBoulders(NodeRange block, double[] into) {
        double least = 2 * frame.spacing();
        double most = 16 * least;
        if (recipe.boulders == 0) {
            return;
        }
        double b = recipe.boulderPower;
        double many = StrictMath.pow(least, -b);
        double few = StrictMath.pow(most, -b);
        double square = 8 * most;
        double wanted = recipe.boulders * (many - few) * square * square;
        forSquares(block, square, most, (i, j) -> {
            long place = LatticeNoise.mixed(seed + 15_485_863L, i, j);
            int count = (int) Math.min(10_000, wanted + LatticeNoise.share(place, 0));
            for (int k = 0; k < count; k++) {
                double diameter = StrictMath.pow(few + LatticeNoise.share(place, 3 * k + 1) * (many - few), -1 / b);
                Point centre = new Point((i + LatticeNoise.share(place, 3 * k + 2)) * square,
                        (j + LatticeNoise.share(place, 3 * k + 3)) * square);
                double half = diameter / 2;
                stamp(block, into, centre, half, (east, north) -> {
                    double x = (east - centre.east()) / half;
                    double y = (north - centre.north()) / half;
                    return 0.6 * half * Math.sqrt(Math.max(0, 1 - x * x - y * y));
                });
            }
        });
    }

    /** Takes a square of a lattice by its column and row. */
    private interface Square {
        void at(long i, long j);
    }

    /** All squares whose things may reach into a block, from south to north and west to east. */
    private void forSquares(NodeRange block, double side, double reach, Square square) {
        long west = (long) Math.floor((frame.east(block.firstColumn()) - reach) / side);
        long east = (long) Math.floor((frame.east(block.firstColumn() + block.columns() - 1) + reach) / side);
        long south = (long) Math.floor((frame.north(block.firstRow()) - reach) / side);
        long north = (long) Math.floor((frame.north(block.firstRow() + block.rows() - 1) + reach) / side);
        for (long j = south; j <= north; j++) {
            for (long i = west; i <= east; i++) {
                square.at(i, j);
            }
        }
    }

    private interface Height {
        double at(double east, double north);
    }

    private void stamp(NodeRange block, double[] into, Point centre, double reach, Height height) {
        double s = frame.spacing();
        int firstColumn = (int) Math.max(0, Math.ceil((centre.east() - reach - frame.west()) / s)
                - block.firstColumn());
        int lastColumn = (int) Math.min(block.columns() - 1.0, Math.floor((centre.east() + reach - frame.west()) / s)
                - block.firstColumn());
        int firstRow = (int) Math.max(0, Math.ceil((centre.north() - reach - frame.south()) / s) - block.firstRow());
        int lastRow = (int) Math.min(block.rows() - 1.0, Math.floor((centre.north() + reach - frame.south()) / s)
                - block.firstRow());
        for (int r = firstRow; r <= lastRow; r++) {
            double north = frame.north(block.firstRow() + r);
            for (int c = firstColumn; c <= lastColumn; c++) {
                into[r * block.columns() + c] += height.at(frame.east(block.firstColumn() + c), north);
            }
        }
    }
}
