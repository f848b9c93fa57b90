// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Vec3;
import java.util.Locale;

/** Tilts, directions and places of the checks in space, in words. */
final class SpaceWords {
    private static final String[] COMPASS = {"north", "north-east", "east", "south-east", "south", "south-west", "west",
        "north-west"};

    private SpaceWords() {
    }

    /** A tilt as people read it. */
    static String tilt(double radians) {
        return String.format(Locale.ROOT, "tilt %.0f deg", Math.toDegrees(radians));
    }

    /** The nearest of eight directions. */
    static String compass(double east, double north) {
        return COMPASS[Math.floorMod((int) Math.round(Math.atan2(east, north) / (Math.PI / 4)), 8)];
    }

    /** The unit vector of one of the eight directions. */
    static Vec3 direction(int eighth) {
        return new Vec3(Math.sin(eighth * Math.PI / 4), Math.cos(eighth * Math.PI / 4), 0);
    }
}
