// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Sentence;
import bermwright.report.map.MapStyle;
import bermwright.site.footprint.Shape;
import java.util.Arrays;

/** What the map draws, each by its entry in the table of symbols; those named first are drawn first. */
public enum FigureLook {
    /** Where a pad's traffic harms. */
    STAND_OFF(MapStyle.STAND_OFF),
    /** Where soil is taken. */
    BORROW(MapStyle.BORROW),
    /** Where soil waits. */
    STOCKPILE(MapStyle.STOCKPILE),
    /** Ground shaped before the work. */
    PREPARATION(MapStyle.PREPARATION),
    /** A way kept free. */
    CORRIDOR(MapStyle.CORRIDOR),
    /** The way of the haulers. */
    HAUL_WAY(MapStyle.HAUL_WAY),
    /** The way people take to a shelter. */
    FOOT_WAY(MapStyle.FOOT_WAY),
    /** A landing pad. */
    PAD(MapStyle.PAD),
    /** Outline of the cover on the ground. */
    COVER_TOE(MapStyle.COVER_TOE),
    /** An area nothing may touch. */
    KEEP_OUT(MapStyle.KEEP_OUT),
    /** Where jets blow. */
    PLUME(MapStyle.PLUME),
    /** Where a falling pole can come down. */
    FALL_ZONE(MapStyle.FALL_ZONE),
    /** The soil that holds an anchor. */
    ANCHOR_SOIL(MapStyle.ANCHOR_SOIL),
    /** Where a parted line whips. */
    SNAP_BACK(MapStyle.SNAP_BACK),
    /** What the falling body can pass over. */
    SWEEP(MapStyle.SWEEP),
    /** Where it may come down. */
    LANDING_SPREAD(MapStyle.DISPERSION),
    /** A hull while it stands. */
    STANDING(MapStyle.STANDING_HULL),
    /** A hull once it lies. */
    LYING(MapStyle.LYING_HULL),
    /** The strip that a cover keeps free around something. */
    KEPT_CLEAR(MapStyle.KEPT_CLEAR),
    /** Something on the skin or through the cover. */
    PASS_THROUGH(MapStyle.PASS_THROUGH),
    /** A wall. */
    WALL(MapStyle.WALL),
    /** A tunnel. */
    TUNNEL(MapStyle.TUNNEL),
    /** A line under load. */
    LINE(MapStyle.LOWERING_LINE),
    /** The line that pulls the hull over. */
    PULL_OVER(MapStyle.PULL_OVER),
    /** A stay. */
    STAY(MapStyle.STAY),
    /** A winch. */
    WINCH(MapStyle.WINCH),
    /** Outline of an anchor. */
    ANCHOR(MapStyle.ANCHOR),
    /** Outline of a pole's foot. */
    POLE_FOOT(MapStyle.POLE_FOOT),
    /** A pole's foot. */
    POLE_MARK(MapStyle.POLE_FOOT),
    /** An anchor of a kind that has no mark of its own. */
    ANCHOR_OTHER(MapStyle.ANCHOR, "Anchor, other", "An anchor without a mark of its own."),
    /** A plate anchor. */
    ANCHOR_PLATE(MapStyle.ANCHOR, "Anchor, plate", "A buried plate; soil ahead of it holds it."),
    /** A block anchor. */
    ANCHOR_BLOCK(MapStyle.ANCHOR, "Anchor, block", "A buried block."),
    /** A ballast anchor. */
    ANCHOR_BALLAST(MapStyle.ANCHOR, "Anchor, ballast", "A weight on the ground; friction holds it."),
    /** A screw anchor. */
    ANCHOR_SCREW(MapStyle.ANCHOR, "Anchor, screw", "Screw piles."),
    /** A pile anchor. */
    ANCHOR_PILE(MapStyle.ANCHOR, "Anchor, pile", "Driven piles."),
    /** A hatch. */
    HATCH(MapStyle.HATCH),
    /** A place where people stay. */
    STATION(MapStyle.STATION);

    private final MapStyle symbol;
    private final String word;
    private final String rule;

    FigureLook(MapStyle symbol) {
        this(symbol, Sentence.begin(symbol.words()), symbol.rule());
    }

    FigureLook(MapStyle symbol, String word, String rule) {
        this.symbol = symbol;
        this.word = word;
        this.rule = rule;
    }

    /**
     * The look of an outline.
     *
     * @param shape the outline
     * @return the look
     */
    static FigureLook of(Shape shape) {
        MapStyle symbol = MapStyle.of(shape);
        return Arrays.stream(values()).filter(l -> l.symbol == symbol).findFirst()
                .orElseThrow(() -> new AssertionError("a symbol that the map does not draw: " + symbol));
    }

    /**
     * Its entry in the table of symbols.
     *
     * @return the symbol
     */
    public MapStyle symbol() {
        return symbol;
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
