// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/** How a thing on the map is to be drawn and what it means; those named first are drawn first. */
public enum FigureLook {
    /** Where a pad's traffic harms. */
    STAND_OFF("Stand-off of a landing pad", "Traffic on the pad throws soil as far as this."),
    /** Where soil is taken. */
    BORROW("Borrow ground", "Soil is taken here, down to its greatest depth and with its own side slopes."),
    /** Where soil waits. */
    STOCKPILE("Stockpile", "Soil waits here."),
    /** Ground shaped before the work. */
    PREPARATION("Preparation", "This ground is shaped before a hull is laid down."),
    /** A way kept free. */
    CORRIDOR("Corridor", "A way of this width stays free and no steeper than its greatest grade."),
    /** The way of the haulers. */
    HAUL_WAY("Haul way", "Haulers take this way from borrow ground to cover."),
    /** The way people take to a shelter. */
    FOOT_WAY("Way to shelter", "People outside take this way to the nearest storm shelter."),
    /** A landing pad. */
    PAD("Landing pad", "Landers come down here; nothing else stands on it."),
    /** Outline of the cover on the ground. */
    COVER_TOE("Cover toe", "Soil reaches as far as this line; nothing that must stay free may be inside."),
    /** An area nothing may touch. */
    KEEP_OUT("Keep-out", "Nothing may touch this area: no hull, sweep, line, anchor or soil."),
    /** Where jets blow. */
    PLUME("Under the jets", "Jets of the thrusters blow here; it is kept clear while a hull is laid down."),
    /** Where a falling pole can come down. */
    FALL_ZONE("Fall zone of a pole", "A pole that buckles or loses its stay comes down inside this ring."),
    /** The soil that holds an anchor. */
    ANCHOR_SOIL("Soil before an anchor", "This soil holds the anchor; nobody digs here or piles soil off it."),
    /** Where a parted line whips. */
    SNAP_BACK("Snap-back zone", "A loaded line that parts whips through this zone; nobody stands here."),
    /** What the falling body can pass over. */
    SWEEP("Lowering sweep", "The body can pass over all of this on its way down, with wander and margin."),
    /** Where it may come down. */
    LANDING_SPREAD("Landing spread", "The hull may land anywhere in this ring; every distance holds for all of it."),
    /** A hull while it stands. */
    STANDING("Hull standing", "Footprint while it stands."),
    /** A hull once it lies. */
    LYING("Hull lying", "Footprint once it lies; the notch is its base end."),
    /** The strip that a cover keeps free around something. */
    KEPT_CLEAR("Kept free of soil", "The cover leaves this strip around what passes through it free of soil."),
    /** Something on the skin or through the cover. */
    PASS_THROUGH("Passes through the cover", "A radiator, cable, feed-through, shaft or skin that stays free of soil."),
    /** A wall. */
    WALL("Wall", "Holds the soil of a cover back."),
    /** A tunnel. */
    TUNNEL("Tunnel", "Joins two hatches."),
    /** A line under load. */
    LINE("Line", "A line under load; nothing may touch it and nobody stands in it."),
    /** A stay. */
    STAY("Stay", "Holds a pole's head back; nothing may touch it and nobody stands in it."),
    /** A winch. */
    WINCH("Winch", "Pays the lines out; somebody stands here."),
    /** Outline of an anchor. */
    ANCHOR("Anchor", "Its outline on the ground."),
    /** Outline of a pole's foot. */
    POLE_FOOT("Pole foot", "Foot of a pole, which hands its thrust to the ground."),
    /** A pole's foot. */
    POLE_MARK("Pole foot", "Foot of a pole, which hands its thrust to the ground."),
    /** A plate anchor. */
    ANCHOR_PLATE("Anchor, plate", "A buried plate; soil ahead of it holds it."),
    /** A block anchor. */
    ANCHOR_BLOCK("Anchor, block", "A buried block."),
    /** A ballast anchor. */
    ANCHOR_BALLAST("Anchor, ballast", "A weight on the ground; friction holds it."),
    /** A screw anchor. */
    ANCHOR_SCREW("Anchor, screw", "Screw piles."),
    /** A pile anchor. */
    ANCHOR_PILE("Anchor, pile", "Driven piles."),
    /** A hatch. */
    HATCH("Hatch", "The way out of a hull; it stays clear."),
    /** A place where people stay. */
    STATION("Station", "People stay here; dose is worked out for this place.");

    private final String word;
    private final String rule;

    FigureLook(String word, String rule) {
        this.word = word;
        this.rule = rule;
    }

    /**
     * What people call it.
     *
     * @return the words
     */
    public String word() {
        return word;
    }

    /**
     * What it means and which rule goes with it.
     *
     * @return a sentence
     */
    public String rule() {
        return rule;
    }

    /**
     * Whether it is drawn as a mark of one size at a place.
     *
     * @return true for anchors, pole feet, hatches and stations
     */
    public boolean isMark() {
        return ordinal() >= POLE_MARK.ordinal();
    }

    /**
     * Whether it belongs to the gear of a hull, which a map can leave out.
     *
     * @return true for lines, poles, anchors and their zones
     */
    public boolean isGear() {
        return this == FALL_ZONE || this == SNAP_BACK || this == PLUME || this == ANCHOR_SOIL
                || ordinal() >= LINE.ordinal() && ordinal() <= ANCHOR_PILE.ordinal();
    }

    /**
     * Whether it is the thing itself and not a zone around it, so that a drag which starts there moves it.
     *
     * @return true for hulls, areas, ways, pads and walls
     */
    public boolean isBody() {
        return switch (this) {
            case STANDING, LYING, KEEP_OUT, CORRIDOR, PAD, PREPARATION, BORROW, STOCKPILE, WALL -> true;
            default -> false;
        };
    }
}
