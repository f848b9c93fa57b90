// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.OptionalDouble;

/** What the hull turns about while it is laid down. */
public sealed interface Pivot {
    /**
     * How far the pivot line stands ahead of the hull's axis, d_p.
     *
     * @param radius the hull's radius (m), positive
     * @return the distance (m), positive
     */
    double ahead(double radius);

    /**
     * Half the distance between the outermost points of the pivot line on the ground.
     *
     * @return the half-width (m); zero for a point contact, which has no stiffness in roll
     */
    double halfWidth();

    /**
     * Area on the ground of each of the two shoes or feet it turns on.
     *
     * @return the area (m2), positive; absent for the bare rim, whose area follows from how deep it sinks
     */
    default OptionalDouble footArea() {
        return OptionalDouble.empty();
    }

    /** The bare rim of the base: a point contact on the lay-down side. */
    record Rim() implements Pivot {
        @Override
        public double ahead(double radius) {
            return Require.positive("hull radius", radius, "m");
        }

        @Override
        public double halfWidth() {
            return 0;
        }
    }

    /**
     * Two shoes under the rim.
     *
     * @param aheadOfAxis how far the line through both shoes stands ahead of the axis (m), positive
     * @param halfSpread  half the distance between them (m), positive
     * @param area        area of each on the ground (m2), positive
     */
    record Shoes(double aheadOfAxis, double halfSpread, double area) implements Pivot {
        /** Refuses shoes behind the axis or without spread. */
        public Shoes {
            Require.positive("shoes ahead of the axis", aheadOfAxis, "m");
            Require.positive("half-spread of the shoes", halfSpread, "m");
            Require.positive("area of a shoe", area, "m2");
        }

        @Override
        public OptionalDouble footArea() {
            return OptionalDouble.of(area);
        }

        @Override
        public double ahead(double radius) {
            return aheadOfAxis;
        }

        @Override
        public double halfWidth() {
            return halfSpread;
        }
    }

    /**
     * Equal legs with two leading: the pivot line stands at footprint radius x cos(pi/count).
     *
     * @param count           number of legs (1), at least 3
     * @param footprintRadius radius of the circle through the feet (m), positive
     * @param area            area of each foot on the ground (m2), positive
     */
    record Legs(int count, double footprintRadius, double area) implements Pivot {
        /** Refuses fewer than three legs. */
        public Legs {
            Require.atLeast("number of legs", count, 3, "1");
            Require.positive("footprint radius", footprintRadius, "m");
            Require.positive("area of a foot", area, "m2");
        }

        @Override
        public OptionalDouble footArea() {
            return OptionalDouble.of(area);
        }

        @Override
        public double ahead(double radius) {
            return footprintRadius * Math.cos(Math.PI / count);
        }

        @Override
        public double halfWidth() {
            return footprintRadius * Math.sin(Math.PI / count);
        }
    }
}
