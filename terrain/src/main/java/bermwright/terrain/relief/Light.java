// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;

/**
 * A far light over the ground.
 *
 * @param from      the direction it stands in
 * @param elevation angle over the horizon (rad), 0 to pi/2
 */
public record Light(Azimuth from, double elevation) {
    /** The light maps are mostly drawn with: from the north-west, half way up. */
    public static final Light OF_MAPS = new Light(Azimuth.ofDegrees(315), Math.toRadians(45));

    /** Refuses lights below the horizon. */
    public Light {
        Require.within("elevation of the light", elevation, 0, Math.PI / 2, "rad");
    }
}
