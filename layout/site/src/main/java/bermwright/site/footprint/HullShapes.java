// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.site.plan.Hull;
import java.util.List;
import java.util.Optional;

/**
 * All outlines of one hull: the body standing and lying, its sweep, its gear and its dangers.
 *
 * @param hull   the hull
 * @param lean   how the ground under it leans it
 * @param shapes its outlines
 */
public record HullShapes(Hull hull, Lean lean, List<Shape> shapes) {
    /** Copies the outlines. */
    public HullShapes {
        shapes = List.copyOf(shapes);
    }

    /**
     * How far the ground's normal leans off the vertical.
     *
     * @param along  lean along the lay-down azimuth (rad), positive where the ground falls along it
     * @param left   lean to the left of it (rad), positive where the ground falls to the left
     */
    public record Lean(double along, double left) {
        /** Level ground, or ground that is not known. */
        public static final Lean NONE = new Lean(0, 0);
    }

    /**
     * The outlines of a kind.
     *
     * @param kind the kind
     * @return the outlines, empty where there are none
     */
    public List<Shape> of(ShapeKind kind) {
        return shapes.stream().filter(s -> s.kind() == kind).toList();
    }

    /**
     * The only outline of a kind.
     *
     * @param kind the kind
     * @return the first of that kind, empty where there is none
     */
    public Optional<Shape> first(ShapeKind kind) {
        return shapes.stream().filter(s -> s.kind() == kind).findFirst();
    }
}
