// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.SplittableRandom;

/**
 * Neutrons of one group walking by chance through soil with a room in it: an answer that knows nothing of diffusion, of
 * walls or of albedo. Rays from the sky, thinned along straight lines, make the neutrons; each flies, scatters evenly
 * and is lost, one by one. Lengths are areal densities (g/cm2).
 */
final class ChanceWalk {
    /** Mean free path, and the length from which the diffusion length follows. */
    static final double MEAN_FREE_PATH = 12;
    static final double DIFFUSION = MEAN_FREE_PATH / 3;
    static final double DIFFUSION_LENGTH = 37;
    static final double LOSS = DIFFUSION / (DIFFUSION_LENGTH * DIFFUSION_LENGTH);
    /** Length over which rays from the sky are thinned. */
    static final double THINNING = 160;
    private static final double SCATTERED = 1 - LOSS * MEAN_FREE_PATH;

    private final Place place;
    private final SplittableRandom random;

    ChanceWalk(Place place, long seed) {
        this.place = place;
        random = new SplittableRandom(seed);
    }

    /** Soil with a room in it. */
    interface Place {
        /** Whether there is soil at a point. */
        boolean isSoil(double x, double y, double z);

        /** Whether a neutron there is gone for good. */
        boolean isGone(double x, double y, double z);

        /** Whether fluence is counted at a point of the room. */
        boolean isCounted(double x, double y, double z);

        /** A point of a region that holds all the soil that matters, for three even chances. */
        double[] point(double a, double b, double c);

        /** Volume of that region over the volume in which fluence is counted. */
        double volumes();

        /** Soil along a ray from a point to the sky, or infinity where it never gets there. */
        double soilToSky(double[] at, double[] towards);
    }

    /** Mean fluence and its chance error, for rays that would make one neutron a g/cm2 over the whole sphere. */
    double[] fluence(int starts) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < starts; i++) {
            double[] at = place.point(random.nextDouble(), random.nextDouble(), random.nextDouble());
            double one = 0;
            if (place.isSoil(at[0], at[1], at[2])) {
                double made = Math.exp(-place.soilToSky(at, even()) / THINNING);
                one = random.nextDouble() < made ? walk(at) : 0;
            }
            sum += one;
            squares += one * one;
        }
        double mean = sum / starts;
        double scale = place.volumes();
        return new double[] {mean * scale, Math.sqrt((squares / starts - mean * mean) / starts) * scale};
    }

    /** Way through the counted part of the room, by the collisions that would have been there. */
    private double walk(double[] start) {
        double x = start[0];
        double y = start[1];
        double z = start[2];
        double[] u = even();
        double way = 0;
        while (true) {
            double s = -MEAN_FREE_PATH * Math.log(1 - random.nextDouble());
            x += s * u[0];
            y += s * u[1];
            z += s * u[2];
            if (place.isSoil(x, y, z)) {
                if (random.nextDouble() > SCATTERED) {
                    return way;
                }
                u = even();
            } else if (place.isGone(x, y, z)) {
                return way;
            } else if (place.isCounted(x, y, z)) {
                way += MEAN_FREE_PATH;
            }
        }
    }

    private double[] even() {
        double z = 2 * random.nextDouble() - 1;
        double turn = 2 * Math.PI * random.nextDouble();
        double r = Math.sqrt(1 - z * z);
        return new double[] {r * Math.cos(turn), r * Math.sin(turn), z};
    }

    /** A room between level cover and floor, both without end. */
    record Level(double cover, double room) implements Place {
        private static final double FLOOR = 260;

        @Override
        public boolean isSoil(double x, double y, double z) {
            return z <= 0 && (z >= -cover || z <= -cover - room);
        }

        @Override
        public boolean isGone(double x, double y, double z) {
            return z > 0;
        }

        @Override
        public boolean isCounted(double x, double y, double z) {
            return z < -cover && z > -cover - room;
        }

        @Override
        public double[] point(double a, double b, double c) {
            double near = Math.min(cover, FLOOR);
            double z = cover - near + a * (near + FLOOR);
            return new double[] {0, 0, z < cover ? -z : -z - room};
        }

        @Override
        public double volumes() {
            return (Math.min(cover, FLOOR) + FLOOR) / room;
        }

        @Override
        public double soilToSky(double[] at, double[] u) {
            if (u[2] <= 0) {
                return Double.POSITIVE_INFINITY;
            }
            double soil = at[2] >= -cover ? -at[2] : -at[2] - room;
            return soil / u[2];
        }
    }

    /** A hollow sphere of soil in free space, lit from all sides. */
    record Sphere(double room, double wall) implements Place {
        @Override
        public boolean isSoil(double x, double y, double z) {
            double r = Math.sqrt(x * x + y * y + z * z);
            return r >= room && r <= room + wall;
        }

        @Override
        public boolean isGone(double x, double y, double z) {
            return x * x + y * y + z * z > (room + wall) * (room + wall);
        }

        @Override
        public boolean isCounted(double x, double y, double z) {
            return x * x + y * y + z * z < room * room;
        }

        @Override
        public double[] point(double a, double b, double c) {
            return new double[] {room * Math.cbrt(1 + a * volumes()), 0, 0};
        }

        @Override
        public double volumes() {
            return Math.pow(1 + Math.min(wall, 260) / room, 3) - 1;
        }

        @Override
        public double soilToSky(double[] at, double[] u) {
            double along = at[0] * u[0];
            double nearest = at[0] * at[0] - along * along;
            double out = Math.sqrt((room + wall) * (room + wall) - nearest) - along;
            double chord = along < 0 && nearest < room * room ? 2 * Math.sqrt(room * room - nearest) : 0;
            return out - chord;
        }
    }
}
