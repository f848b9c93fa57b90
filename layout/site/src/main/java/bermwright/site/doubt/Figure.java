// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * A main figure whose distribution is worked out.
 *
 * @param id      its name for files, such as {@code dose-A-bunks}
 * @param name    its name for people
 * @param unit    unit, as people write it; 1 for a pure number
 * @param limit   its limit, in that unit; empty where it has none
 * @param isLeast true where it must not fall below the limit, false where it must not rise above
 */
public record Figure(String id, String name, String unit, OptionalDouble limit, boolean isLeast) {
    /** Refuses missing parts. */
    public Figure {
        Objects.requireNonNull(limit, "limit");
    }

    /**
     * Whether it is on what people get or on the shell round them.
     *
     * @return true for doses and shells, false for ground, gear, soil and hours
     */
    public boolean isOnPeople() {
        return unit.startsWith("mSv") || unit.startsWith("mGy") || id.startsWith("shell-");
    }

    /**
     * Whether a value keeps the limit.
     *
     * @param value the value, in the figure's unit
     * @return true where there is no limit
     */
    public boolean keeps(double value) {
        return limit.isEmpty() || (isLeast ? value >= limit.getAsDouble() : value <= limit.getAsDouble());
    }
}
