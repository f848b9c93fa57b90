// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import java.util.Optional;

/** What the hand on the map does: pick and move, place something new, or measure. */
public enum MapTool {
    /** Picks and moves. */
    PICK("Pick", "Pick, move, turn and shift corners. Ctrl + click picks several; Shift + drag picks what lies in a"
            + " frame.", null, Shape.NONE),
    /** Places a hull. */
    HULL("Hull", "Press where its axis stands and drag the way it is laid down.", Part.Kind.HULL, Shape.WAY),
    /** Places a landing pad. */
    PAD("Pad", "Press at its centre and drag its radius.", Part.Kind.LANDING_PAD, Shape.ROUND),
    /** Draws an area nothing may touch. */
    KEEP_OUT("Keep-out", Shape.AREA_HELP, Part.Kind.KEEP_OUT, Shape.AREA),
    /** Draws ground to be shaped. */
    PREPARATION("Bench", Shape.AREA_HELP, Part.Kind.PREPARATION, Shape.AREA),
    /** Draws a borrow ground. */
    BORROW_GROUND("Borrow ground", Shape.AREA_HELP, Part.Kind.BORROW_GROUND, Shape.AREA),
    /** Draws a stockpile. */
    STOCKPILE("Stockpile", Shape.AREA_HELP, Part.Kind.STOCKPILE, Shape.AREA),
    /** Draws a corridor. */
    CORRIDOR("Corridor", Shape.LINE_HELP, Part.Kind.CORRIDOR, Shape.LINE),
    /** Draws a wall. */
    WALL("Wall", Shape.LINE_HELP, Part.Kind.WALL, Shape.LINE),
    /** Measures a way. */
    DISTANCE("Distance", Shape.LINE_HELP + " Length, azimuth, rise and slope are shown.", null, Shape.LINE),
    /** Measures an area. */
    AREA("Area", Shape.AREA_HELP + " Its area and edge are shown.", null, Shape.AREA),
    /** Cuts the site along a line. */
    SECTION("Section", Shape.LINE_HELP + " The ground, the soil and the hulls along it are drawn below.", null,
            Shape.LINE);

    /** How something is drawn. */
    enum Shape {
        /** Nothing is drawn. */
        NONE,
        /** A place and a way. */
        WAY,
        /** A centre and a radius. */
        ROUND,
        /** A line of two corners or more. */
        LINE,
        /** A ring of three corners or more. */
        AREA;

        private static final String LINE_HELP = "Drag from end to end, or click each corner; Enter or a double click"
                + " ends it.";
        private static final String AREA_HELP = "Drag a rectangle, or click each corner; Enter, a double click or a"
                + " click on the first corner ends it.";

        /** The fewest corners (1). */
        int fewest() {
            return this == AREA ? 3 : this == LINE ? 2 : 1;
        }
    }

    private final String word;
    private final String help;
    private final Part.Kind kind;
    private final Shape shape;

    MapTool(String word, String help, Part.Kind kind, Shape shape) {
        this.word = word;
        this.help = help;
        this.kind = kind;
        this.shape = shape;
    }

    /**
     * What people call it.
     *
     * @return the word
     */
    public String word() {
        return word;
    }

    /**
     * How it is used.
     *
     * @return a sentence or two
     */
    public String help() {
        return help;
    }

    /**
     * What it places.
     *
     * @return the kind of part; empty for what only picks or measures
     */
    public Optional<Part.Kind> kind() {
        return Optional.ofNullable(kind);
    }

    /** How it is drawn. */
    Shape shape() {
        return shape;
    }

    /**
     * Whether what it draws is closed.
     *
     * @return true for areas
     */
    public boolean isRing() {
        return shape == Shape.AREA;
    }

    /**
     * Whether it measures and changes nothing.
     *
     * @return true for distances, areas and sections
     */
    public boolean isMeasure() {
        return kind == null && this != PICK;
    }
}
