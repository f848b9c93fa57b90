// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;
import java.util.Arrays;

/**
 * Slow neutrons in a room with walls of soil: each piece of wall emits by its own cover and gives back a part of what
 * the room sends into it, until as many come out of the walls as go in.
 *
 * <p>The room is a half cylinder over a flat floor: the floor sees only the wall above, the wall sees the floor by 2/pi
 * and itself by the rest. Directions of a station above the horizontal stand for the wall, those below for the floor,
 * which is deep soil in which particles that came through the cover make neutrons. Emission is even over all
 * directions. Within a tenth to a fifth of walks by chance for a long cylinder in a mound, a sphere and a level cover.
 *
 * @see "Lamarsh (1966), Introduction to Nuclear Reactor Theory, ch. 5: albedo; Siegel and Howell (2002), Thermal
 *     Radiation Heat Transfer, ch. 6: an enclosure of diffusely emitting and reflecting walls"
 */
public final class NeutronEnclosure {
    /** Share of what the half cylinder emits that falls on its flat floor. */
    private static final double WALL_TO_FLOOR = 2 / Math.PI;
    /** Between two depths of the table, walls are straight lines in e^(-x/this) (g/cm2). */
    private static final double RELAXATION = 150;

    private final double[] depths;
    private final Intervals intervals;
    private final double[][] emitted;
    private final double[][][] albedo;
    private final double[][] floor;
    private final double[][] lit;
    private final double[][] deep;
    private final int groups;
    private final double[] fallen;

    /**
     * A room from its walls by thickness.
     *
     * @param depths  areal densities of walls (g/cm2), rising from 0, which is an opening
     * @param emitted current of each group that walls of those areal densities emit (1/m2); none of the opening
     * @param albedo  current of each group (last index) that they give back for one neutron of a group sent in; that of
     *                the opening is not asked, the deepest one is the floor's
     * @param floor   current of each group that the floor emits under a level cover of those areal densities (1/m2)
     * @param lit     by areal density and direction down, how much of the floor's is owed to it, over the mean (1)
     */
    NeutronEnclosure(double[] depths, double[][] emitted, double[][][] albedo, double[][] floor, double[][] lit) {
        this.depths = depths.clone();
        intervals = new Intervals(depths);
        this.emitted = emitted.clone();
        this.albedo = albedo.clone();
        this.floor = floor.clone();
        this.lit = lit.clone();
        deep = albedo[depths.length - 1];
        groups = deep.length;
        fallen = Arrays.stream(depths).map(x -> Math.exp(-x / RELAXATION)).toArray();
    }

    /**
     * All of it as numbers, to be kept on disk.
     *
     * @return the numbers, of which {@link #of} makes the same room again
     */
    public double[] numbers() {
        java.util.stream.DoubleStream.Builder all = java.util.stream.DoubleStream.builder();
        all.add(depths.length).add(groups);
        for (int k = 0; k < depths.length; k++) {
            all.add(depths[k]);
            for (int g = 0; g < groups; g++) {
                all.add(emitted[k][g]).add(floor[k][g]);
                for (int out = 0; k > 0 && out <= g; out++) {
                    all.add(albedo[k][g][out]);
                }
            }
            for (double direction : lit[k]) {
                all.add(direction);
            }
        }
        return all.build().toArray();
    }

    /**
     * A room from its numbers.
     *
     * @param numbers what {@link #numbers} gave
     * @return the room
     * @throws IllegalArgumentException if there are not as many numbers as they say themselves
     */
    public static NeutronEnclosure of(double[] numbers) {
        int count = (int) numbers[0];
        int groups = (int) numbers[1];
        Require.that(count > 1 && groups > 0 && numbers.length
                        == 2 + count * (1 + 2 * groups + Ordinates.DOWN) + (count - 1) * groups * (groups + 1) / 2,
                "%s numbers are not those of a room", numbers.length);
        double[] depths = new double[count];
        double[][] emitted = new double[count][groups];
        double[][] floor = new double[count][groups];
        double[][][] albedo = new double[count][groups][groups];
        double[][] lit = new double[count][Ordinates.DOWN];
        int next = 2;
        for (int k = 0; k < count; k++) {
            depths[k] = numbers[next++];
            for (int g = 0; g < groups; g++) {
                emitted[k][g] = numbers[next++];
                floor[k][g] = numbers[next++];
                for (int out = 0; k > 0 && out <= g; out++) {
                    albedo[k][g][out] = numbers[next++];
                }
            }
            for (int m = 0; m < Ordinates.DOWN; m++) {
                lit[k][m] = numbers[next++];
            }
        }
        return new NeutronEnclosure(depths, emitted, albedo, floor, lit);
    }

    /** What a station sees of the walls around it. */
    public final class Walls {
        private final double[] across = new double[depths.length];
        private final double[] below = new double[depths.length];

        private Walls() {
        }

        /**
         * Adds a direction above the horizontal.
         *
         * @param acrossGCm2 distance of the wall there from the outer face of its soil (g/cm2), zero or more; zero
         *                   where there is none
         * @param alongGCm2  soil along the ray (g/cm2), at least as much
         * @param slant      how much longer than thick the way through the wall is (1), 1 or more
         * @param skyShare   share of the directions above the horizontal (1); all together are 1
         */
        public void add(double acrossGCm2, double alongGCm2, double slant, double skyShare) {
            add(across, acrossGCm2, 0, skyShare);
            add(below, alongGCm2 / slant, slant, skyShare);
        }

        private void add(double[] weights, double x, double slant, double skyShare) {
            Require.notNegative("areal density", x, "g/cm2");
            int last = depths.length - 1;
            double cosine = slant > 0 ? 1 / slant : 0;
            int m = slant > 0 ? Ordinates.below(cosine) : -1;
            if (x >= depths[last]) {
                weights[last] += skyShare * light(last, m, cosine);
                return;
            }
            int k = intervals.at(x);
            double w = (fallen[k] - Math.exp(-x / RELAXATION)) / (fallen[k] - fallen[k + 1]);
            weights[k] += (1 - w) * skyShare * light(k, m, cosine);
            weights[k + 1] += w * skyShare * light(k + 1, m, cosine);
        }

        /**
         * Adds all that others hold.
         *
         * @param others walls of the same room
         * @param share  what each of their directions counts here (1), zero or more
         */
        public void add(Walls others, double share) {
            for (int k = 0; k < across.length; k++) {
                across[k] += others.across[k] * share;
                below[k] += others.below[k] * share;
            }
        }

        private double light(int k, int m, double cosine) {
            return m < 0 ? 1 : Math.max(0, Ordinates.between(lit[k], m, cosine));
        }

        /**
         * Neutrons at the station.
         *
         * @return fluence by group (1/m2)
         */
        public double[] fluence() {
            double[] wall = mean(emitted, across);
            double[][] back = back();
            return filled(wall, back, mean(floor, below), true);
        }

        /**
         * Neutrons at the station that come up from the floor, whatever they met before.
         *
         * @return fluence by group (1/m2)
         */
        public double[] up() {
            double[] all = fluence();
            double[] down = filled(mean(emitted, across), back(), mean(floor, below), false);
            for (int g = 0; g < groups; g++) {
                all[g] -= down[g];
            }
            return all;
        }

        private double[][] back() {
            double[][] back = new double[groups][groups];
            for (int k = 1; k < depths.length; k++) {
                for (int in = 0; across[k] > 0 && in < groups; in++) {
                    for (int out = 0; out <= in; out++) {
                        back[in][out] += across[k] * albedo[k][in][out];
                    }
                }
            }
            return back;
        }

        /**
         * Neutrons at the station that come up from the floor at the first time, without any that walls gave back.
         *
         * @return fluence by group (1/m2)
         */
        public double[] fromFloor() {
            double[] sum = mean(floor, below);
            for (int g = 0; g < groups; g++) {
                sum[g] *= 2;
            }
            return sum;
        }
    }

    /**
     * Begins with nothing around a station.
     *
     * @return walls to add directions to
     */
    public Walls walls() {
        return new Walls();
    }

    /**
     * Neutrons where walls of one areal density stand all around and no more come out of them than go in.
     *
     * @param depthGCm2 areal density (g/cm2), zero or more
     * @param out       current of each group that such a wall emits (1/m2)
     * @return fluence by group (1/m2)
     */
    double[] closed(double depthGCm2, double[] out) {
        Walls walls = walls();
        walls.add(depthGCm2, depthGCm2, 1, 1);
        double[][] back = walls.back();
        double[] current = out.clone();
        for (int g = groups - 1; g >= 0; g--) {
            for (int faster = g + 1; faster < groups; faster++) {
                current[g] += back[faster][g] * current[faster];
            }
            current[g] /= 1 - back[g][g];
        }
        double[] fluence = current.clone();
        for (int g = 0; g < groups; g++) {
            fluence[g] *= 4;
        }
        return fluence;
    }

    /**
     * Neutrons in the midst of a medium that goes on below, under a level layer of it: layer and floor face each other.
     *
     * @param depthGCm2 areal density of the layer (g/cm2), zero or more
     * @return fluence by group (1/m2)
     */
    public double[] midst(double depthGCm2) {
        Walls walls = walls();
        walls.add(walls.across, depthGCm2, 0, 1);
        double[][] back = walls.back();
        double[] above = mean(emitted, walls.across);
        double[] below = mean(floor, walls.across);
        double[] fluence = new double[groups];
        for (int g = groups - 1; g >= 0; g--) {
            double down = (above[g] + back[g][g] * below[g]) / (1 - back[g][g] * deep[g][g]);
            double up = below[g] + deep[g][g] * down;
            for (int slower = 0; slower < g; slower++) {
                above[slower] += back[g][slower] * up;
                below[slower] += deep[g][slower] * down;
            }
            fluence[g] = 2 * (down + up);
        }
        return fluence;
    }

    private double[] mean(double[][] table, double[] weights) {
        double[] sum = new double[groups];
        for (int k = 0; k < weights.length; k++) {
            for (int g = 0; weights[k] > 0 && g < groups; g++) {
                sum[g] += weights[k] * table[k][g];
            }
        }
        return sum;
    }

    /** Balance of the room, group by group from the fastest: what leaves wall and floor, and both seen by half. */
    private double[] filled(double[] wall, double[][] back, double[] ground, boolean whole) {
        double[] onWall = new double[groups];
        double[] onFloor = new double[groups];
        double[] fluence = new double[groups];
        for (int g = groups - 1; g >= 0; g--) {
            double fromWall = wall[g];
            double fromFloor = ground[g];
            for (int faster = g + 1; faster < groups; faster++) {
                fromWall += back[faster][g] * onWall[faster];
                fromFloor += deep[faster][g] * onFloor[faster];
            }
            // fromWall + own (f (fromFloor + deep out) + (1 - f) out) = out
            double own = back[g][g];
            double out = (fromWall + own * WALL_TO_FLOOR * fromFloor)
                    / (1 - own * (WALL_TO_FLOOR * deep[g][g] + 1 - WALL_TO_FLOOR));
            double up = fromFloor + deep[g][g] * out;
            onWall[g] = WALL_TO_FLOOR * up + (1 - WALL_TO_FLOOR) * out;
            onFloor[g] = out;
            fluence[g] = 2 * (whole ? out + up : out);
        }
        return fluence;
    }
}
