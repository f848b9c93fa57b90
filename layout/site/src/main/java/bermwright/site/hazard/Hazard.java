// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import java.util.Locale;

/** What a cover is judged for. */
public enum Hazard {
    /** Cosmic rays and the event, against the plan's limits. */
    RADIATION,
    /** A meteoroid that perforates the hull. */
    METEOROIDS,
    /** Soil thrown by landings on the pads. */
    THROWN_SOIL,
    /** The heat and cold of the lunar day. */
    HEAT,
    /** A quake that makes the mound slide. */
    MOONQUAKE;

    /**
     * The word used in files and pages.
     *
     * @return the word in lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
