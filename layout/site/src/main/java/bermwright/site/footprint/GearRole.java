// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

/** What a part of the lowering gear is for. */
public enum GearRole {
    /** No part of the gear. */
    NONE,
    /** Lines that lower the hull, their winches and anchors. */
    LOWERING,
    /** The line that pulls the hull over its balance, its winch and anchor. */
    PULL_OVER,
    /** Poles that lead the lines. */
    POLE,
    /** Stays of the poles and their anchors. */
    STAY,
    /** What holds the pivot; never set out before the landing. */
    PIVOT_HOLD
}
