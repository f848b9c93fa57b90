// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What places and ways on the map snap to: the axes of hulls, right angles, and a grid where it is switched on. What a
 * place snapped to is shown as a line; a free hand snaps to nothing.
 */
public final class Snapping {
    /** A way this close to a right angle or to another hull's axis snaps to it (rad). */
    private static final double ANGLE = Math.toRadians(3);
    private static final double QUARTER = Math.PI / 2;
    private static final double GUIDE = 400;

    private boolean isGrid;
    private double step = 5;

    /**
     * A place and what it snapped to.
     *
     * @param place  the place
     * @param guides lines to be shown
     */
    public record Snapped(Point place, List<MapHands.SnapLine> guides) {
        /** Copies the lines. */
        public Snapped {
            guides = List.copyOf(guides);
        }
    }

    /** The two corners before the one that is set, as far as there are any. */
    record Run(Optional<Point> before, Optional<Point> from) {
        static final Run NONE = new Run(Optional.empty(), Optional.empty());
    }

    /**
     * Switches the grid.
     *
     * @param isOn  whether places snap to it
     * @param metre its step (m), above 0
     */
    public void grid(boolean isOn, double metre) {
        isGrid = isOn;
        step = metre;
    }

    /** The place that a place snaps to. */
    Snapped place(Plan plan, Point place, MapHands.Feel feel, Run run) {
        return feel.isFree() ? new Snapped(place, List.of()) : run.from.flatMap(from -> square(place, from, run))
                .or(() -> onAxis(plan, place, feel, Set.of())).orElseGet(() -> new Snapped(onGrid(place), List.of()));
    }

    /** The place of a hull's base that is moved, in line with the axis of another that does not move with it. */
    Snapped base(Plan plan, Set<String> moving, Point place, MapHands.Feel feel) {
        return feel.isFree() ? new Snapped(place, List.of())
                : onAxis(plan, place, feel, moving).orElseGet(() -> new Snapped(onGrid(place), List.of()));
    }

    /** The way a hull is laid down, along or square to another hull's axis where it is close to that. */
    Optional<Azimuth> way(Plan plan, String hull, Azimuth way) {
        return plan.hulls().stream().filter(h -> !h.id().equals(hull)).map(h -> nearest(way, h.layDownAzimuth()))
                .filter(a -> Math.abs(turn(a, way)) < ANGLE)
                .min((a, b) -> Double.compare(Math.abs(turn(a, way)), Math.abs(turn(b, way))));
    }

    private Point onGrid(Point place) {
        return isGrid ? new Point(Math.rint(place.east() / step) * step, Math.rint(place.north() / step) * step)
                : place;
    }

    private Optional<Snapped> square(Point place, Point from, Run run) {
        if (place.distance(from) < 1e-6) {
            return Optional.empty();
        }
        Azimuth way = Azimuth.from(from, place);
        Azimuth base = run.before.filter(b -> b.distance(from) > 1e-6).map(b -> Azimuth.from(b, from))
                .orElse(new Azimuth(0));
        Azimuth square = nearest(way, base);
        if (Math.abs(turn(square, way)) > ANGLE) {
            return Optional.empty();
        }
        double along = place.distance(from) * Math.cos(turn(square, way));
        Point at = from.moved(square, isGrid ? Math.rint(along / step) * step : along, 0);
        return Optional.of(new Snapped(at, List.of(new MapHands.SnapLine(from, from.moved(square, along + GUIDE / 8,
                0)))));
    }

    private static Optional<Snapped> onAxis(Plan plan, Point place, MapHands.Feel feel, Set<String> except) {
        List<Snapped> found = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            if (except.contains(hull.id())) {
                continue;
            }
            for (double turn : new double[] {0, QUARTER}) {
                Azimuth axis = hull.layDownAzimuth().turned(turn);
                Point base = hull.baseCentre();
                double east = place.east() - base.east();
                double north = place.north() - base.north();
                double along = east * Math.sin(axis.radians()) + north * Math.cos(axis.radians());
                Point on = base.moved(axis, along, 0);
                if (Math.abs(along) < GUIDE && on.distance(place) <= feel.reach()) {
                    found.add(new Snapped(on, List.of(new MapHands.SnapLine(base, on))));
                }
            }
        }
        return found.stream().min((a, b) -> Double.compare(a.place.distance(place), b.place.distance(place)));
    }

    private static Azimuth nearest(Azimuth way, Azimuth base) {
        return base.turned(Math.rint(turn(way, base) / QUARTER) * QUARTER);
    }

    /** The turn from one way to another (rad), least. */
    private static double turn(Azimuth to, Azimuth from) {
        double turn = to.radians() - from.radians();
        return turn - 2 * Math.PI * Math.rint(turn / (2 * Math.PI));
    }
}
