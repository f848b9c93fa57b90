// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

/**
 * A direction on the ground, clockwise from grid north.
 *
 * @param radians clockwise from grid north (rad), 0 up to but not including 2 pi; other finite values are wound in
 */
public record Azimuth(double radians) {
    private static final double TURN = 2 * Math.PI;

    /** Winds the angle into one turn. */
    public Azimuth {
        Require.finite("azimuth", radians, "rad");
        // A remainder takes as long as all the rest of looking along an azimuth that has a few rays.
        if (!(radians >= 0 && radians < TURN)) {
            radians = radians % TURN;
            if (radians < 0) {
                radians += TURN;
            }
            if (radians >= TURN) {
                radians = 0;
            }
        }
    }

    /**
     * An azimuth from degrees.
     *
     * @param degrees clockwise from grid north, in degrees
     * @return the azimuth
     */
    public static Azimuth ofDegrees(double degrees) {
        return new Azimuth(Math.toRadians(degrees));
    }

    /**
     * The azimuth of the way from one place to another.
     *
     * @param from start
     * @param to   end, another place than the start
     * @return the azimuth
     * @throws IllegalArgumentException if both are the same place
     */
    public static Azimuth from(Point from, Point to) {
        Require.positive("distance between the two places", from.distance(to), "m");
        return new Azimuth(Math.atan2(to.east() - from.east(), to.north() - from.north()));
    }

    /**
     * The azimuth in degrees.
     *
     * @return clockwise from grid north, in degrees, 0 up to 360
     */
    public double degrees() {
        return Math.toDegrees(radians);
    }

    /**
     * The east part of the unit direction, sin a.
     *
     * @return the east part (1), -1 to 1
     */
    public double east() {
        return Math.sin(radians);
    }

    /**
     * The north part of the unit direction, cos a.
     *
     * @return the north part (1), -1 to 1
     */
    public double north() {
        return Math.cos(radians);
    }

    /**
     * This azimuth turned.
     *
     * @param turn clockwise turn (rad)
     * @return the turned azimuth
     */
    public Azimuth turned(double turn) {
        return new Azimuth(radians + turn);
    }
}
