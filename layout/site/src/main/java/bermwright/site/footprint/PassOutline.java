// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Ring;
import bermwright.site.plan.Hull;
import bermwright.site.plan.PassThrough;
import java.util.ArrayList;
import java.util.List;

/** Outlines of what passes through a hull's cover, as seen from above. */
final class PassOutline {
    /** What stands on a side wall is drawn this wide outwards at least (m). */
    private static final double ON_EDGE = 0.3;
    /** Turns looked at around a thing. */
    private static final int TURNS = 9;

    private PassOutline() {
    }

    /** The things themselves and, where one is stated, the strip kept clear around each. */
    static List<Shape> of(Hull hull, LayDownFrame frame) {
        List<Shape> shapes = new ArrayList<>();
        hull.cover().ifPresent(cover -> cover.passThroughs().stream().filter(p -> p.along() <= hull.length())
                .forEach(thing -> {
                    String part = thing.kind().word() + " " + thing.id();
                    shapes.add(new Shape(ShapeKind.PASS_THROUGH, hull.id(), part, outline(hull, frame, thing, 0)));
                    thing.clear().ifPresent(clear -> shapes.add(new Shape(ShapeKind.KEPT_CLEAR, hull.id(), part,
                            outline(hull, frame, thing, clear))));
                }));
        return shapes;
    }

    private static Ring outline(Hull hull, LayDownFrame frame, PassThrough thing, double clear) {
        double turn = (thing.width() / 2 + clear) / hull.radius();
        double out = hull.radius() + Math.max(ON_EDGE, clear);
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            List<double[]> around = new ArrayList<>();
            for (int i = 0; i < 2 * TURNS; i++) {
                boolean inner = i < TURNS;
                double at = thing.around() + turn * (2.0 * (inner ? i : 2 * TURNS - 1 - i) / (TURNS - 1) - 1);
                double reach = inner ? hull.radius() : out;
                around.add(new double[] {-hull.pivotAhead() - reach * Math.cos(at), reach * Math.sin(at)});
            }
            return frame.ring(around);
        }
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < TURNS; i++) {
            double at = thing.around() + turn * (2.0 * i / (TURNS - 1) - 1);
            double left = Math.cos(at) > 0 ? hull.radius() * Math.sin(at) : Math.copySign(out, Math.sin(at));
            least = Math.min(least, left);
            greatest = Math.max(greatest, left);
        }
        double middle = (least + greatest) / 2;
        return frame.rectangle(thing.along(), middle, thing.length() + 2 * clear,
                Math.max(greatest - least, ON_EDGE));
    }
}
