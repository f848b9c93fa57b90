// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import java.util.Locale;

/** What an outline on the site stands for. */
public enum ShapeKind {
    /** The hull standing. */
    STANDING,
    /** The hull lying. */
    LYING,
    /** Everything the falling body can pass over, with its sideways wander and its margin. */
    SWEEP,
    /** Where the hull may come to stand, given its landing dispersion. */
    LANDING,
    /** What a lowering or pull-over line passes over. */
    LINE,
    /** A stay. */
    STAY,
    /** The foot of a pole. */
    POLE_FOOT,
    /** What a falling pole can reach. */
    POLE_FALL_ZONE,
    /** An anchor. */
    ANCHOR,
    /** The soil in front of an anchor that holds it. */
    ANCHOR_SOIL,
    /** A winch. */
    WINCH,
    /** Where a parting line can strike. */
    SNAP_BACK,
    /** Ground under the jets of side thrusters. */
    THRUSTER_PLUME,
    /** Ground that a landing hull's jets reach. */
    LANDING_PLUME,
    /** Toe of a cover. */
    COVER_TOE,
    /** Something that passes through a cover: a radiator, a cable, a shaft. */
    PASS_THROUGH,
    /** The strip around it that soil and everything else is kept off. */
    KEPT_CLEAR,
    /** A tunnel. */
    TUNNEL,
    /** A wall. */
    WALL,
    /** A way kept free, one stretch of it. */
    CORRIDOR,
    /** An area nothing may touch. */
    KEEP_OUT,
    /** A landing pad. */
    PAD,
    /** The ground that a pad's traffic harms. */
    PAD_STAND_OFF,
    /** Ground that is shaped before the work. */
    PREPARATION,
    /** Where soil is taken. */
    BORROW,
    /** Where soil waits. */
    STOCKPILE;

    /**
     * The words used in legends and pages.
     *
     * @return the words in lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
