// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a kind of thing looks on the plan drawing, in the order in which things are laid over one another. */
public enum MapStyle {
    /** Where nothing harmful may reach a pad's traffic. */
    STAND_OFF("stand-off of a landing pad", Look.line(Ink.DARK_GREY, 1.2, "2 5")),
    /** An area nothing may touch. */
    KEEP_OUT("keep-out", Look.area(Ink.RED, 1.8, "", Patterns.CROSSED)),
    /** Where soil is taken. */
    BORROW("borrow ground", Look.area(Ink.GREEN, 1.6, "10 3 2 3", Patterns.DOTTED)),
    /** Where soil waits. */
    STOCKPILE("stockpile", Look.area(Ink.GREEN, 1.2, "3 3", Patterns.UPRIGHT)),
    /** Ground shaped before the work. */
    PREPARATION("shaped ground", Look.area(Ink.PURPLE, 1.4, "5 3", Patterns.LEVEL)),
    /** A way kept free. */
    CORRIDOR("corridor", Look.area(Ink.BLUE, 1.1, "7 3", Patterns.LEVEL)),
    /** A way soil is hauled along. */
    HAUL_WAY("haul way", Look.line(Ink.GREEN, 2.4, "9 5")),
    /** A way people walk to shelter. */
    FOOT_WAY("way on foot to shelter", Look.line(Ink.PURPLE, 2.2, "3 4")),
    /** Where jets reach the ground. */
    PLUME("reach of jets", Look.line(Ink.RED, 1.2, "1 4")),
    /** The soil in front of an anchor that holds it. */
    ANCHOR_SOIL("soil that holds an anchor", Look.line("#7a4a00", 1.0, "2 2")),
    /** Where a falling pole may lie. */
    FALL_ZONE("fall zone of a pole", Look.line(Ink.DARK_GREY, 1.1, "6 2 1 2")),
    /** Where a parting line may lash. */
    SNAP_BACK("snap-back zone", Look.area(Ink.RED, 1.1, "4 3", Patterns.FALLING)),
    /** Something where it was in an earlier plan. */
    BEFORE("as it was before", Look.line(Ink.DARK_GREY, 1.8, "4 4")),
    /** All that a falling body can pass over. */
    SWEEP("lowering sweep", Look.area(Ink.ORANGE, 2.0, "12 4", Patterns.RISING)),
    /** Where a hull may land. */
    DISPERSION("landing dispersion", Look.line(Ink.BLACK, 0.9, "1 3")),
    /** Foot of a cover. */
    COVER_TOE("toe of the cover", Look.line("#7a4a00", 2.2, "")),
    /** A pad. */
    PAD("landing pad", Look.filled(Ink.BLACK, 1.4, "", "#ffffff99")),
    /** A wall. */
    WALL("wall", Look.line(Ink.BLACK, 4, "")),
    /** A tunnel. */
    TUNNEL("tunnel", Look.filled(Ink.BLACK, 1.2, "", "#ffffffcc")),
    /** A hull once it lies. */
    LYING_HULL("hull lying", Look.filled(Ink.BLACK, 2.2, "", "#ffffffcc")),
    /** The strip that is kept free of soil around something in a cover. */
    KEPT_CLEAR("strip kept clear of soil", Look.area(Ink.BLUE, 1.2, "3 2", Patterns.RISING)),
    /** A radiator, cable, feed-through, thermal keep-out or shaft. */
    PASS_THROUGH("passes through the cover", Look.filled(Ink.BLUE, 1.6, "", "#ffffffcc")),
    /** A hull while it stands. */
    STANDING_HULL("hull standing", Look.filled(Ink.BLACK, 1.6, "5 3", "#ffffff66")),
    /** A lowering line. */
    LOWERING_LINE("lowering line", Look.line(Ink.BLUE, 2.0, "")),
    /** A stay. */
    STAY("stay", Look.line(Ink.DARK_GREY, 1.6, "8 3")),
    /** The line that pulls the hull over. */
    PULL_OVER("pull-over line", Look.line(Ink.PURPLE, 2.0, "4 2")),
    /** The line a hull turns over. */
    PIVOT("pivot line", Look.line(Ink.RED, 3.0, "")),
    /** Foot of a pole. */
    POLE_FOOT("pole foot", Look.symbol(Ink.BLACK, Symbol.SQUARE)),
    /** A winch. */
    WINCH("winch", Look.symbol(Ink.BLUE, Symbol.TRIANGLE)),
    /** An anchor. */
    ANCHOR("anchor", Look.symbol(Ink.BLACK, Symbol.CROSS)),
    /** A hatch. */
    HATCH("hatch", Look.symbol(Ink.RED, Symbol.DIAMOND)),
    /** Where people stay. */
    STATION("crew station", Look.symbol(Ink.BLUE, Symbol.DOT)),
    /** A point to be set out. */
    SETTING_OUT("point to set out", Look.symbol(Ink.PURPLE, Symbol.RING));

    private final String words;
    private final Look look;

    MapStyle(String words, Look look) {
        this.words = words;
        this.look = look;
    }

    /** Marks for places. */
    enum Symbol {
        /** A filled dot. */
        DOT,
        /** A filled square. */
        SQUARE,
        /** An open triangle. */
        TRIANGLE,
        /** A cross in a ring. */
        CROSS,
        /** An open diamond. */
        DIAMOND,
        /** A small ring. */
        RING
    }

    /** Stroke, fill and mark. */
    private record Look(String colour, double width, String dash, Optional<String> fill, Optional<Patterns> pattern,
            Optional<Symbol> mark) {
        static Look line(String colour, double width, String dash) {
            return new Look(colour, width, dash, Optional.empty(), Optional.empty(), Optional.empty());
        }

        static Look area(String colour, double width, String dash, Patterns pattern) {
            return new Look(colour, width, dash, Optional.empty(), Optional.of(pattern), Optional.empty());
        }

        static Look filled(String colour, double width, String dash, String fill) {
            return new Look(colour, width, dash, Optional.of(fill), Optional.empty(), Optional.empty());
        }

        static Look symbol(String colour, Symbol mark) {
            return new Look(colour, 1.6, "", Optional.empty(), Optional.empty(), Optional.of(mark));
        }
    }

    /**
     * The words of the legend.
     *
     * @return the words
     */
    public String words() {
        return words;
    }

    /**
     * Defines what this style needs in a picture, once before it is used.
     *
     * @param svg the picture
     */
    void define(Svg svg) {
        look.pattern.ifPresent(p -> p.define(svg, name().toLowerCase(Locale.ROOT), look.colour, "none"));
    }

    /**
     * The attributes of an area or line in this style.
     *
     * @param svg    the picture
     * @param closed whether it is an area
     * @return names and values in turn
     */
    String[] attributes(Svg svg, boolean closed) {
        String fill = !closed ? "none" : look.pattern.isPresent()
                ? svg.reference(name().toLowerCase(Locale.ROOT)) : look.fill.orElse("none");
        return new String[] {"fill", fill, "stroke", look.colour, "stroke-width", Svg.number(look.width),
            "stroke-dasharray", look.dash.isEmpty() ? "none" : look.dash, "stroke-linejoin", "round"};
    }

    /**
     * Sets this style's mark on paper; nothing where the style is for areas and lines only.
     *
     * @param svg the picture
     * @param at  where (px)
     */
    void mark(Svg svg, Dot at) {
        double r = 4;
        String[] open = {"fill", "#ffffff", "stroke", look.colour, "stroke-width", "1.6"};
        String[] full = {"fill", look.colour, "stroke", "#ffffff", "stroke-width", "1"};
        switch (look.mark.orElse(Symbol.DOT)) {
            case SQUARE -> svg.box(new Dot(at.x() - r, at.y() - r), new Dot(2 * r, 2 * r), full);
            case TRIANGLE -> svg.outline(List.of(new Dot(at.x(), at.y() - r - 2), new Dot(at.x() + r + 1, at.y() + r),
                    new Dot(at.x() - r - 1, at.y() + r)), open);
            case DIAMOND -> svg.outline(List.of(new Dot(at.x(), at.y() - r - 1), new Dot(at.x() + r + 1, at.y()),
                    new Dot(at.x(), at.y() + r + 1), new Dot(at.x() - r - 1, at.y())), open);
            case CROSS -> {
                svg.circle(at, r + 1, open);
                svg.line(new Dot(at.x() - r, at.y() - r), new Dot(at.x() + r, at.y() + r), open);
                svg.line(new Dot(at.x() - r, at.y() + r), new Dot(at.x() + r, at.y() - r), open);
            }
            case RING -> svg.circle(at, 3, open);
            default -> svg.circle(at, r, full);
        }
    }

    /**
     * Whether this style is a mark at a place.
     *
     * @return true for marks, false for areas and lines
     */
    boolean isMark() {
        return look.mark.isPresent();
    }

    /**
     * Whether this style has an inside.
     *
     * @return true where its areas are filled or hatched
     */
    boolean isFilled() {
        return look.fill.isPresent() || look.pattern.isPresent();
    }
}
