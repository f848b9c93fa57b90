// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import java.time.Duration;
import java.time.Instant;

/**
 * Where the sun stands over the Moon: the place on the Moon that has it overhead.
 *
 * <p>The Moon's mean spin and inclination without its physical libration, the sun's apparent longitude, the Moon's to
 * a degree: right to some 0.05 degree from 1900 to 2100. The difference between atomic and civil time, about a minute,
 * counts for 0.01 degree and is left out.
 *
 * @param latitude  latitude of the place (rad), -0.028 to 0.028
 * @param longitude longitude of the place, positive to the east (rad), -pi to pi
 * @see "Meeus (1998), Astronomical algorithms, 2nd edition, chapters 25, 47 and 53"
 */
public record SunPlace(double latitude, double longitude) {
    /** Half of the sun's disc as seen from the Moon (rad), 0.267 degree. */
    public static final double HALF_DISC = Math.toRadians(0.2666);
    /** Inclination of the Moon's equator to the ecliptic (rad), IAU. */
    private static final double INCLINATION = Math.toRadians(1.54242);
    private static final Instant J2000 = Instant.parse("2000-01-01T12:00:00Z");
    private static final double DAYS_OF_A_CENTURY = 36_525;
    private static final double KILOMETRES_OF_THE_SUN = 149_597_870.7;
    private static final double KILOMETRES_OF_THE_MOON = 385_000.56;

    /**
     * Where the sun stands at a time.
     *
     * @param time the time, from 1900 to 2100
     * @return the place
     */
    public static SunPlace at(Instant time) {
        double t = Duration.between(J2000, time).toMillis() / 86_400_000.0 / DAYS_OF_A_CENTURY;
        Require.within("time from the year 2000", t, -1, 1, "centuries");
        // Mean elements in degrees: the Moon's longitude, elongation, both anomalies, latitude's argument, node.
        double moon = 218.3164477 + 481_267.88123421 * t - 0.0015786 * t * t;
        double elongation = Math.toRadians(297.8501921 + 445_267.1114034 * t - 0.0018819 * t * t);
        double sunAnomaly = Math.toRadians(357.5291092 + 35_999.0502909 * t - 0.0001536 * t * t);
        double moonAnomaly = Math.toRadians(134.9633964 + 477_198.8675055 * t + 0.0087414 * t * t);
        double argument = Math.toRadians(93.2720950 + 483_202.0175233 * t - 0.0036539 * t * t);
        double node = Math.toRadians(125.0445479 - 1934.1362891 * t + 0.0020754 * t * t);
        double longitude = Math.toRadians(moon + 6.288774 * Math.sin(moonAnomaly)
                + 1.274027 * Math.sin(2 * elongation - moonAnomaly) + 0.658314 * Math.sin(2 * elongation)
                + 0.213618 * Math.sin(2 * moonAnomaly) - 0.185116 * Math.sin(sunAnomaly)
                - 0.114332 * Math.sin(2 * argument));
        double latitude = Math.toRadians(5.128122 * Math.sin(argument) + 0.280602 * Math.sin(moonAnomaly + argument)
                + 0.277693 * Math.sin(moonAnomaly - argument));
        double distance = KILOMETRES_OF_THE_MOON - 20_905.355 * Math.cos(moonAnomaly)
                - 3_699.111 * Math.cos(2 * elongation - moonAnomaly) - 2_955.968 * Math.cos(2 * elongation);
        double sun = Math.toRadians(280.46646 + 36_000.76983 * t + 0.0003032 * t * t
                + (1.914602 - 0.004817 * t) * Math.sin(sunAnomaly) + 0.019993 * Math.sin(2 * sunAnomaly) - 0.00569);
        double sunDistance = KILOMETRES_OF_THE_SUN * (1.000140 - 0.016708 * Math.cos(sunAnomaly));
        // The sun as the Moon's middle sees it.
        double ratio = distance / sunDistance;
        double seen = sun + Math.PI + ratio * Math.cos(latitude) * Math.sin(sun - longitude);
        double seenLatitude = latitude * ratio;
        double w = seen - node;
        double a = Math.atan2(Math.sin(w) * Math.cos(seenLatitude) * Math.cos(INCLINATION)
                - Math.sin(seenLatitude) * Math.sin(INCLINATION), Math.cos(w) * Math.cos(seenLatitude));
        double b = Math.asin(-Math.sin(w) * Math.cos(seenLatitude) * Math.sin(INCLINATION)
                - Math.sin(seenLatitude) * Math.cos(INCLINATION));
        return new SunPlace(b, Math.IEEEremainder(a - argument, 2 * Math.PI));
    }

    /**
     * How high the middle of the sun stands over the level horizon of a place.
     *
     * @param placeLatitude  latitude (rad), -pi/2 to pi/2
     * @param placeLongitude longitude, positive to the east (rad)
     * @return the elevation (rad), -pi/2 to pi/2
     */
    public double elevation(double placeLatitude, double placeLongitude) {
        double hour = longitude - placeLongitude;
        return Math.asin(Math.sin(placeLatitude) * Math.sin(latitude)
                + Math.cos(placeLatitude) * Math.cos(latitude) * Math.cos(hour));
    }

    /**
     * The direction in which the sun stands from a place.
     *
     * @param placeLatitude  latitude (rad), -pi/2 to pi/2
     * @param placeLongitude longitude, positive to the east (rad)
     * @return clockwise from true north (rad), -pi to pi
     */
    public double bearing(double placeLatitude, double placeLongitude) {
        double hour = longitude - placeLongitude;
        return Math.atan2(Math.sin(hour) * Math.cos(latitude), Math.cos(placeLatitude) * Math.sin(latitude)
                - Math.sin(placeLatitude) * Math.cos(latitude) * Math.cos(hour));
    }
}
