// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

/** What becomes of the soil at an end of a hull. */
public enum EndCover {
    /** Soil goes around the end. */
    COVERED,
    /** Kept clear: the soil stays behind the end and stands back at its own slope from the ground in front. */
    OPEN,
    /** A wall across the end holds the soil back; in front of it the ground stays bare. */
    HELD
}
