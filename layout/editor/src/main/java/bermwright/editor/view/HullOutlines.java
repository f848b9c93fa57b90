// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.MapCamera;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Point2D;

/** Where lying hulls are on the screen, so that marks stand beside them and not over them. */
final class HullOutlines {
    private final Plan plan;
    private final Map<String, Outline> outlines = new LinkedHashMap<>();

    /** A hull's box on the screen: middle, unit vector along it, half its length and half its width (pixels). */
    private record Outline(Point2D middle, Point2D along, double half, double wide) {
        private Point2D across() {
            return new Point2D(-along.getY(), along.getX());
        }

        /** How far a spot stands off the axis, and whether it is between the ends. */
        private boolean isOver(Point2D spot, double rim) {
            Point2D off = spot.subtract(middle);
            return Math.abs(off.dotProduct(along)) < half + rim && Math.abs(off.dotProduct(across())) < wide + rim;
        }

        private Point2D outside(Point2D spot, double rim) {
            if (!isOver(spot, rim)) {
                return spot;
            }
            double side = spot.subtract(middle).dotProduct(across());
            double out = (side < 0 ? -1 : 1) * (wide + rim) - side;
            return spot.add(across().multiply(out * 1.001));
        }
    }

    HullOutlines(Plan plan, MapCamera camera) {
        this.plan = plan;
        for (Hull hull : plan.hulls()) {
            Point2D base = at(camera, hull.lyingBase(TrueMetres.SAME));
            Point2D far = at(camera, hull.lyingAt(TrueMetres.SAME, hull.length(), 0));
            outlines.put(hull.id(), new Outline(base.midpoint(far), far.subtract(base).normalize(),
                    base.distance(far) / 2, hull.diameter() / 2 / camera.metresPerPixel()));
        }
    }

    private static Point2D at(MapCamera camera, Point place) {
        return new Point2D(camera.x(place.east()), camera.y(place.north()));
    }

    /** The hull that a finding's subject belongs to. */
    Optional<String> owner(String subject) {
        return Part.bySubject(plan, subject).filter(p -> p.kind() == Part.Kind.HULL).map(Part::id)
                .filter(outlines::containsKey);
    }

    /** How long a hull is on the screen (pixels). */
    double length(String id) {
        return 2 * outlines.get(id).half();
    }

    Point2D middle(String id) {
        return outlines.get(id).middle();
    }

    /** A spot beside the middle of a hull, on its upper side on the screen. */
    Point2D beside(String id, double off) {
        Outline outline = outlines.get(id);
        Point2D across = outline.across();
        double up = across.getY() > 0 ? -1 : 1;
        return outline.middle().add(across.multiply(up * (outline.wide() + off)));
    }

    /** Whether a mark at a spot would stand over a hull. */
    boolean isOver(Point2D spot, double rim) {
        return outlines.values().stream().anyMatch(o -> o.isOver(spot, rim));
    }

    /** The nearest spot beside the hull that a spot is over; the spot itself where it is over none. */
    Point2D outside(Point2D spot, double rim) {
        Point2D clear = spot;
        for (Outline outline : outlines.values()) {
            clear = outline.outside(clear, rim);
        }
        return clear;
    }
}
