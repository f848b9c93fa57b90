// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.exchange.LayerLook;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.Shape;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The table of symbols: what each kind of thing on a map is called, what it means and how it looks, on the drawings of
 * the report and on the map of the editor, in the order in which things are laid over one another.
 */
public enum MapStyle {
    /** Where nothing harmful may reach a pad's traffic. */
    STAND_OFF("stand-off of a landing pad", "Traffic on the pad throws soil as far as this.",
            Look.line(Ink.DARK_GREY, 1.2, "2 5")),
    /** An area nothing may touch. */
    KEEP_OUT("keep-out", "Nothing may touch this area: no hull, sweep, line, anchor or soil.",
            Look.area(Ink.RED, 1.8, "", Patterns.CROSSED)),
    /** Where soil is taken. */
    BORROW("borrow ground", "Soil is taken here, down to its greatest depth and with its own side slopes.",
            Look.area(Ink.GREEN, 1.6, "10 3 2 3", Patterns.DOTTED)),
    /** Where soil waits. */
    STOCKPILE("stockpile", "Soil waits here.",
            Look.area(Ink.GREEN, 1.2, "3 3", Patterns.UPRIGHT)),
    /** Ground shaped before the work. */
    PREPARATION("shaped ground", "This ground is shaped before a hull is laid down.",
            Look.area(Ink.PURPLE, 1.4, "5 3", Patterns.LEVEL)),
    /** A way kept free. */
    CORRIDOR("corridor", "A way of this width stays free and no steeper than its greatest grade.",
            Look.area(Ink.BLUE, 1.1, "7 3", Patterns.LEVEL)),
    /** A way soil is hauled along. */
    HAUL_WAY("haul way", "Haulers take this way from borrow ground to cover.",
            Look.line(Ink.GREEN, 2.4, "9 5")),
    /** A way people walk to shelter. */
    FOOT_WAY("way on foot to shelter", "People outside take this way to the nearest storm shelter.",
            Look.line(Ink.PURPLE, 2.2, "3 4")),
    /** Where jets reach the ground. */
    PLUME("reach of jets", "Jets of the thrusters blow here; it is kept clear while a hull is laid down.",
            Look.line(Ink.RED, 1.2, "1 4")),
    /** The soil in front of an anchor that holds it. */
    ANCHOR_SOIL("soil that holds an anchor", "This soil holds the anchor; nobody digs here or piles soil off it.",
            Look.line(Ink.BROWN, 1.0, "2 2")),
    /** Where a falling pole may lie. */
    FALL_ZONE("fall zone of a pole", "A pole that buckles or loses its stay comes down inside this ring.",
            Look.line(Ink.DARK_GREY, 1.1, "6 2 1 2")),
    /** Where a parting line may lash. */
    SNAP_BACK("snap-back zone", "A loaded line that parts whips through this zone; nobody stands here.",
            Look.area(Ink.RED, 1.1, "4 3", Patterns.FALLING)),
    /** Something where it was in an earlier plan. */
    BEFORE("as it was before", "Here it stood in the earlier plan.",
            Look.line(Ink.DARK_GREY, 1.8, "4 4")),
    /** All that a falling body can pass over. */
    SWEEP("lowering sweep", "The body can pass over all of this on its way down, with wander and margin.",
            Look.area(Ink.ORANGE, 2.0, "12 4", Patterns.RISING)),
    /** Where a hull may land. */
    DISPERSION("landing dispersion", "The hull may land anywhere in this ring; every distance holds for all of it.",
            Look.line(Ink.BLACK, 0.9, "1 3")),
    /** Foot of a cover. */
    COVER_TOE("toe of the cover", "Soil reaches as far as this line; nothing that must stay free may be inside.",
            Look.line(Ink.BROWN, 2.2, "").tinted(0.2)),
    /** A pad. */
    PAD("landing pad", "Landers come down here; nothing else stands on it.",
            Look.filled(Ink.BLACK, 1.4, "", "#ffffff99")),
    /** A wall. */
    WALL("wall", "Holds the soil of a cover back.",
            Look.line(Ink.BLACK, 4, "").tinted(0.3)),
    /** A tunnel. */
    TUNNEL("tunnel", "Joins two hatches.",
            Look.filled(Ink.BLACK, 1.2, "", "#ffffffcc")),
    /** A hull once it lies. */
    LYING_HULL("hull lying", "Footprint once it lies; the notch is its base end.",
            Look.filled(Ink.BLACK, 2.2, "", "#ffffffcc")),
    /** The strip that is kept free of soil around something in a cover. */
    KEPT_CLEAR("strip kept clear of soil", "The cover leaves this strip around what passes through it free of soil.",
            Look.area(Ink.BLUE, 1.2, "3 2", Patterns.RISING)),
    /** A radiator, cable, feed-through, thermal keep-out or shaft. */
    PASS_THROUGH("passes through the cover", "A radiator, cable, feed-through, shaft or skin that stays free of soil.",
            Look.filled(Ink.BLUE, 1.6, "", "#ffffffcc")),
    /** A hull while it stands. */
    STANDING_HULL("hull standing", "Footprint while it stands.",
            Look.filled(Ink.BLACK, 1.6, "5 3", "#ffffff66")),
    /** A lowering line. */
    LOWERING_LINE("lowering line", "A line under load; nothing may touch it and nobody stands in it.",
            Look.line(Ink.BLUE, 2.0, "").tinted(0.3)),
    /** A stay. */
    STAY("stay", "Holds a pole's head back; nothing may touch it and nobody stands in it.",
            Look.line(Ink.DARK_GREY, 1.6, "8 3").tinted(0.2)),
    /** The line that pulls the hull over. */
    PULL_OVER("pull-over line", "Pulls the hull over its pivot; nothing may touch it and nobody stands in it.",
            Look.line(Ink.PURPLE, 2.0, "4 2").tinted(0.3)),
    /** The line a hull turns over. */
    PIVOT("pivot line", "The line the hull turns over.",
            Look.line(Ink.RED, 3.0, "")),
    /** Foot of a pole. */
    POLE_FOOT("pole foot", "Foot of a pole, which hands its thrust to the ground.",
            Look.symbol(Ink.BLACK, Symbol.SQUARE)),
    /** A winch. */
    WINCH("winch", "Pays the lines out; somebody stands here.",
            Look.symbol(Ink.BLUE, Symbol.TRIANGLE)),
    /** An anchor. */
    ANCHOR("anchor", "Its outline on the ground.",
            Look.symbol(Ink.BLACK, Symbol.CROSS)),
    /** A hatch. */
    HATCH("hatch", "The way out of a hull; it stays clear.",
            Look.symbol(Ink.RED, Symbol.DIAMOND)),
    /** Where people stay. */
    STATION("crew station", "People stay here; dose is worked out for this place.",
            Look.symbol(Ink.BLUE, Symbol.DOT)),
    /** A point to be set out. */
    SETTING_OUT("point to set out", "A point to be marked on the ground before the work.",
            Look.symbol(Ink.PURPLE, Symbol.RING));

    private final String words;
    private final String rule;
    private final Look look;

    MapStyle(String words, String rule, Look look) {
        this.words = words;
        this.rule = rule;
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

    /** Stroke, fill and mark; the tint is the share of its colour laid over an area where a map shows the ground. */
    private record Look(String colour, double width, String dash, Optional<String> fill, Optional<Patterns> pattern,
            Optional<Symbol> mark, double tint) {
        static Look line(String colour, double width, String dash) {
            return new Look(colour, width, dash, Optional.empty(), Optional.empty(), Optional.empty(), 0.05);
        }

        static Look area(String colour, double width, String dash, Patterns pattern) {
            return new Look(colour, width, dash, Optional.empty(), Optional.of(pattern), Optional.empty(), 0.1);
        }

        static Look filled(String colour, double width, String dash, String fill) {
            return new Look(colour, width, dash, Optional.of(fill), Optional.empty(), Optional.empty(), 0.2);
        }

        static Look symbol(String colour, Symbol mark) {
            return new Look(colour, 1.6, "", Optional.empty(), Optional.empty(), Optional.of(mark), 0.3);
        }

        Look tinted(double share) {
            return new Look(colour, width, dash, fill, pattern, mark, share);
        }
    }

    /**
     * The symbol of an outline.
     *
     * @param shape the outline
     * @return the symbol
     */
    public static MapStyle of(Shape shape) {
        return switch (shape.kind()) {
            case STANDING -> STANDING_HULL;
            case LYING -> LYING_HULL;
            case SWEEP -> SWEEP;
            case LANDING -> DISPERSION;
            case LINE -> shape.role() == GearRole.PULL_OVER ? PULL_OVER : LOWERING_LINE;
            case STAY -> STAY;
            case POLE_FOOT -> POLE_FOOT;
            case POLE_FALL_ZONE -> FALL_ZONE;
            case ANCHOR -> ANCHOR;
            case ANCHOR_SOIL -> ANCHOR_SOIL;
            case WINCH -> WINCH;
            case SNAP_BACK -> SNAP_BACK;
            case THRUSTER_PLUME, LANDING_PLUME -> PLUME;
            case COVER_TOE -> COVER_TOE;
            case PASS_THROUGH -> PASS_THROUGH;
            case KEPT_CLEAR -> KEPT_CLEAR;
            case TUNNEL -> TUNNEL;
            case WALL -> WALL;
            case CORRIDOR -> CORRIDOR;
            case KEEP_OUT -> KEEP_OUT;
            case PAD -> PAD;
            case PAD_STAND_OFF -> STAND_OFF;
            case PREPARATION -> PREPARATION;
            case BORROW -> BORROW;
            case STOCKPILE -> STOCKPILE;
        };
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
     * Colour of its line, one of {@link Ink}.
     *
     * @return the colour, as {@code #rrggbb}
     */
    public String colour() {
        return look.colour;
    }

    /**
     * Width of its line.
     *
     * @return the width (px)
     */
    public double width() {
        return look.width;
    }

    /**
     * Lengths of the dashes and gaps of its line.
     *
     * @return the lengths (px), none for a whole line
     */
    public double[] dashes() {
        return look.dash.isEmpty() ? new double[0]
                : Arrays.stream(look.dash.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    /**
     * Its hatching.
     *
     * @return the hatching; empty where it has none
     */
    public Optional<Patterns> pattern() {
        return look.pattern;
    }

    /**
     * The share of its colour that is laid over its area where the ground is to be seen through it.
     *
     * @return the share (1), 0 to 1
     */
    public double tint() {
        return look.tint;
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
     * The same for other programs.
     *
     * @return colour, width, dashes and filling
     */
    public LayerLook look() {
        LayerLook.Fill fill = look.pattern.map(p -> LayerLook.Fill.valueOf(p.name())).orElse(look.fill.isPresent()
                ? LayerLook.Fill.WHITE : LayerLook.Fill.NONE);
        return new LayerLook(look.colour, look.width, look.dash, fill);
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
