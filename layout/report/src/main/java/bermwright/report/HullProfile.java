// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullShape;
import java.util.ArrayList;
import java.util.List;

/** The outline of a hull along its axis, its skin moved inwards or outwards by the same everywhere. */
final class HullProfile {
    private HullProfile() {
    }

    /** Where a profile's two tips are on the axis (m). */
    static double[] tips(HullShape shape, double inwards) {
        return new double[] {tip(shape, shape.baseEnd(), inwards),
            shape.length() - tip(shape, shape.farEnd(), inwards)};
    }

    /** How far from an end of the hull the tip of its moved skin is. */
    private static double tip(HullShape shape, HullEnd end, double inwards) {
        return end.shape() == HullEnd.Shape.CONE ? inwards * Math.hypot(end.depth(), shape.radius()) / shape.radius()
                : inwards;
    }

    /** Distance from the base plane and radius of each ring (m), from the base to the far end. */
    static List<double[]> of(HullShape shape, double inwards, int steps) {
        List<double[]> rings = new ArrayList<>(end(shape, shape.baseEnd(), inwards, steps));
        List<double[]> far = end(shape, shape.farEnd(), inwards, steps);
        for (int i = far.size() - 1; i >= 0; i--) {
            rings.add(new double[] {shape.length() - far.get(i)[0], far.get(i)[1]});
        }
        return rings;
    }

    /** Rings of an end from its tip inwards, to where the barrel begins. */
    private static List<double[]> end(HullShape shape, HullEnd end, double inwards, int steps) {
        double radius = shape.radius() - inwards;
        List<double[]> rings = new ArrayList<>();
        if (end.shape() == HullEnd.Shape.FLAT) {
            rings.add(new double[] {inwards, radius});
        } else if (end.shape() == HullEnd.Shape.CONE) {
            double tip = tip(shape, end, inwards);
            // The moved cone meets the moved barrel where its radius is that of the barrel.
            rings.add(new double[] {tip + radius * end.depth() / shape.radius(), radius});
        } else {
            double depth = end.depth() - inwards;
            for (int i = 1; i <= steps; i++) {
                double turn = Math.PI / 2 * i / steps;
                rings.add(new double[] {inwards + depth * (1 - Math.cos(turn)), radius * Math.sin(turn)});
            }
        }
        return rings;
    }
}
