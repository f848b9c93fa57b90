// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapStyle;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The outlines of a site as things on the plan drawing, also for the editor. */
public final class SiteMap {
    private static final Set<ShapeKind> BODIES = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.SWEEP,
            ShapeKind.COVER_TOE, ShapeKind.PASS_THROUGH, ShapeKind.KEPT_CLEAR);

    private static final Set<ShapeKind> STAYING = EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.WALL,
            ShapeKind.TUNNEL, ShapeKind.KEEP_OUT, ShapeKind.PAD, ShapeKind.BORROW);

    private SiteMap() {
    }

    /**
     * Everything on the site.
     *
     * @param shapes the outlines
     * @return the things to draw
     */
    public static List<MapItem> items(SiteShapes shapes) {
        List<MapItem> items = new ArrayList<>();
        add(shapes.all(), false, items);
        shapes.hulls().forEach(hull -> points(shapes, hull.hull(), false, items));
        return items;
    }

    /**
     * One hull with all its gear in words, and what else lies around it without its gear.
     *
     * @param shapes the outlines
     * @param of     the hull
     * @return the things to draw
     */
    public static List<MapItem> items(SiteShapes shapes, HullShapes of) {
        List<MapItem> items = new ArrayList<>();
        add(shapes.site(), false, items);
        for (HullShapes hull : shapes.hulls()) {
            boolean here = hull.hull().id().equals(of.hull().id());
            add(hull.shapes().stream().filter(s -> here || BODIES.contains(s.kind())).toList(), here, items);
            points(shapes, hull.hull(), here, items);
        }
        return items;
    }

    /**
     * What stands or lies there for good: hulls, covers, walls, tunnels, keep-outs, pads and borrow grounds.
     *
     * @param shapes the outlines
     * @return the things to draw
     */
    static List<MapItem> standing(SiteShapes shapes) {
        List<MapItem> items = new ArrayList<>();
        add(shapes.all().stream().filter(s -> STAYING.contains(s.kind())).toList(), false, items);
        shapes.hulls().forEach(hull -> points(shapes, hull.hull(), false, items));
        return items;
    }

    /**
     * A hull where it lies, and the toe of its cover.
     *
     * @param of the hull
     * @return the things to draw
     */
    static List<MapItem> bodies(HullShapes of) {
        List<MapItem> items = new ArrayList<>();
        add(of.shapes().stream().filter(s -> s.kind() == ShapeKind.LYING || s.kind() == ShapeKind.COVER_TOE).toList(),
                false, items);
        return items;
    }

    /** Each outline with its words; a way of many stretches and an anchor under its winch are named once. */
    private static void add(List<Shape> shapes, boolean detailed, List<MapItem> items) {
        Set<String> named = new HashSet<>();
        for (Shape shape : shapes) {
            String label = label(shape, detailed);
            boolean winchAnchor = shape.kind() == ShapeKind.ANCHOR && shapes.stream().anyMatch(other ->
                    other.kind() == ShapeKind.WINCH && other.part().equals(shape.part()));
            boolean again = !named.add(shape.kind() + "/" + label);
            items.add(new MapItem.Area(MapStyle.of(shape), winchAnchor || again ? "" : label, shape.outline()));
        }
    }

    private static void points(SiteShapes shapes, Hull hull, boolean detailed, List<MapItem> items) {
        TrueMetres metres = shapes.metres();
        if (hull.arrival() == Hull.Arrival.LOWERED) {
            double half = metres.onPlan(hull.radius());
            Point pivot = hull.lyingBase(metres);
            items.add(new MapItem.Line(MapStyle.PIVOT, "", List.of(pivot.moved(hull.layDownAzimuth(), 0, half),
                    pivot.moved(hull.layDownAzimuth(), 0, -half))));
        }
        for (Hatch hatch : hull.hatches()) {
            HatchPlace.of(shapes.plan(), HatchName.of(hull, hatch).toString(), metres).ifPresent(place ->
                    items.add(new MapItem.Spot(MapStyle.HATCH, detailed ? "hatch " + hatch.id() : "", place)));
        }
        if (detailed && hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
            hull.stations().forEach(s -> items.add(new MapItem.Spot(MapStyle.STATION, s.id(), hull.lyingAt(metres,
                    s.along(), s.across()))));
        }
    }

    private static String label(Shape shape, boolean detailed) {
        return switch (shape.kind()) {
            case LYING -> "hull " + shape.subject();
            case KEEP_OUT, PAD, CORRIDOR, BORROW, STOCKPILE, PREPARATION, TUNNEL, WALL -> shape.subject();
            case PASS_THROUGH -> detailed ? shape.part() : "";
            case ANCHOR, WINCH, POLE_FOOT -> detailed ? shape.kind().word() + ", " + shape.part() : "";
            default -> "";
        };
    }

    /**
     * The places around which a sheet of one hull is drawn: the hull, its sweep and its gear, without far plumes.
     *
     * @param hull the hull's outlines
     * @return the places
     */
    public static List<Point> around(HullShapes hull) {
        return hull.shapes().stream().filter(s -> s.kind() != ShapeKind.LANDING_PLUME
                && s.kind() != ShapeKind.THRUSTER_PLUME && s.kind() != ShapeKind.SNAP_BACK
                && s.kind() != ShapeKind.POLE_FALL_ZONE).flatMap(s -> s.outline().corners().stream()).toList();
    }
}
