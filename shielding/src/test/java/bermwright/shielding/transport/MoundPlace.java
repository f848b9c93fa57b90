// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * A long cylinder that lies on level ground under its least cover: an arc around it and flanks of one slope. The
 * section of the mound is the space under its tangents.
 *
 * @param radius radius of the cylinder, which is the room (g/cm2)
 * @param cover  cover on it (g/cm2)
 * @param slope  slope of the flanks (rad)
 */
record MoundPlace(double radius, double cover, double slope) implements ChanceWalk.Place {
    private static final int TANGENTS = 24;
    private static final double FLOOR = 260;
    private static final double COUNTED = 0.5;

    /** Distance from a point, up to which it lies under a tangent; positive inside. */
    private double under(int tangent, double y, double z) {
        double turn = slope * (2.0 * tangent / TANGENTS - 1);
        return radius + cover - y * Math.sin(turn) - (z - radius) * Math.cos(turn);
    }

    private boolean isInMound(double y, double z) {
        for (int i = 0; i <= TANGENTS; i++) {
            if (under(i, y, z) < 0) {
                return false;
            }
        }
        return true;
    }

    private boolean isRoom(double y, double z) {
        return y * y + (z - radius) * (z - radius) < radius * radius;
    }

    @Override
    public boolean isSoil(double x, double y, double z) {
        return !isRoom(y, z) && (z <= 0 || z <= 2 * radius + cover && isInMound(y, z));
    }

    @Override
    public boolean isGone(double x, double y, double z) {
        return z > 2 * radius + cover;
    }

    @Override
    public boolean isCounted(double x, double y, double z) {
        double r = COUNTED * radius;
        return y * y + (z - radius) * (z - radius) < r * r;
    }

    /** From the ring of soil around the room; farther ones hardly reach it. */
    @Override
    public double[] point(double a, double b, double c) {
        double r = Math.sqrt(radius * radius + a * ((radius + FLOOR) * (radius + FLOOR) - radius * radius));
        return new double[] {0, r * Math.cos(2 * Math.PI * b), radius + r * Math.sin(2 * Math.PI * b)};
    }

    @Override
    public double volumes() {
        return ((radius + FLOOR) * (radius + FLOOR) / (radius * radius) - 1) / (COUNTED * COUNTED);
    }

    @Override
    public double soilToSky(double[] at, double[] u) {
        if (u[2] <= 0) {
            return Double.POSITIVE_INFINITY;
        }
        double ground = at[2] < 0 ? -at[2] / u[2] : 0;
        double[] mound = inMound(at, u, ground);
        double room = inRoom(at, u);
        return ground + Math.max(0, mound[1] - mound[0]) - room;
    }

    /** Where a ray goes in and out of the mound above the level ground. */
    private double[] inMound(double[] at, double[] u, double from) {
        double in = from;
        double out = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= TANGENTS; i++) {
            double here = under(i, at[1], at[2]);
            double change = under(i, at[1] + u[1], at[2] + u[2]) - here;
            if (change < 0) {
                out = Math.min(out, -here / change);
            } else if (here < 0) {
                in = change > 0 ? Math.max(in, -here / change) : Double.POSITIVE_INFINITY;
            }
        }
        return new double[] {in, out};
    }

    private double inRoom(double[] at, double[] u) {
        double z = at[2] - radius;
        double across = u[1] * u[1] + u[2] * u[2];
        double along = at[1] * u[1] + z * u[2];
        double square = along * along - across * (at[1] * at[1] + z * z - radius * radius);
        if (square <= 0) {
            return 0;
        }
        double root = Math.sqrt(square);
        return Math.max(0, (-along + root) / across) - Math.max(0, (-along - root) / across);
    }

    /** Adds what a station in the middle of the room sees to walls of the room, in even steps of the half sky. */
    void look(NeutronEnclosure.Walls walls) {
        double[] at = {0, 0, radius};
        int steps = 100;
        for (int i = 0; i < steps; i++) {
            for (int k = 0; k < steps; k++) {
                double z = (i + 0.5) / steps;
                double turn = 2 * Math.PI * (k + 0.5) / steps;
                double r = Math.sqrt(1 - z * z);
                double[] u = {r * Math.cos(turn), r * Math.sin(turn), z};
                double soil = soilToSky(at, u);
                walls.add(soil * fall(at, u), soil, 1 / fall(at, u), 1.0 / steps / steps);
            }
        }
    }

    /** Cosine between a ray and the normal of the tangent through which it leaves, in the ray's vertical plane. */
    private double fall(double[] at, double[] u) {
        double out = Double.POSITIVE_INFINITY;
        double cosine = 0;
        for (int i = 0; i <= TANGENTS; i++) {
            double here = under(i, at[1], at[2]);
            double change = under(i, at[1] + u[1], at[2] + u[2]) - here;
            if (change < 0 && -here / change < out) {
                out = -here / change;
                double turn = slope * (2.0 * i / TANGENTS - 1);
                double ahead = Math.sin(turn) * u[1] / Math.hypot(u[0], u[1]);
                cosine = -change / Math.hypot(ahead, Math.cos(turn));
            }
        }
        return cosine;
    }
}
