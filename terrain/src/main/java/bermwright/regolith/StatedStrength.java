// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * The one strength that the owner of the ground states, and how well it is known.
 *
 * @param value          friction angle and cohesion as stated
 * @param frictionSpread one standard deviation of the friction angle (rad), zero or more
 * @param cohesionSpread one standard deviation of the cohesion (Pa), zero or more
 */
public record StatedStrength(Strength value, double frictionSpread, double cohesionSpread) {
    /** Refuses negative spreads. */
    public StatedStrength {
        Objects.requireNonNull(value, "value");
        Require.notNegative("spread of the friction angle", frictionSpread, "rad");
        Require.notNegative("spread of the cohesion", cohesionSpread, "Pa");
    }
}
