// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hull;

/**
 * A hull's body: a convex outline turned about an axis. A dome is cut into twelve frusta inside it, less than a
 * hundredth of its radius off.
 */
public final class Revolved implements Convex {
    private static final int DOME_STEPS = 12;
    private final Vec3 base;
    private final Vec3 axis;
    private final double[] along;
    private final double[] radius;

    private Revolved(Vec3 base, Vec3 axis, double[] along, double[] radius) {
        this.base = base;
        this.axis = axis;
        this.along = along;
        this.radius = radius;
    }

    /**
     * The body of a hull.
     *
     * @param hull the hull
     * @param base middle of its base plane
     * @param axis unit direction from base to far end
     * @return the body
     */
    public static Revolved of(Hull hull, Vec3 base, Vec3 axis) {
        double[] ends = new double[2 * (DOME_STEPS + 1)];
        double[] radii = new double[ends.length];
        for (int i = 0; i <= DOME_STEPS; i++) {
            double share = 1 - Math.cos(Math.PI / 2 * i / DOME_STEPS);
            ends[i] = hull.baseEnd().depth() * share;
            ends[ends.length - 1 - i] = hull.length() - hull.farEnd().depth() * share;
        }
        for (int i = 0; i < ends.length; i++) {
            radii[i] = BodyProfile.radiusAt(hull, ends[i]);
        }
        return new Revolved(base, axis, ends, radii);
    }

    /** The same body elsewhere. */
    Revolved moved(Vec3 toBase, Vec3 toAxis) {
        return new Revolved(toBase, toAxis, along, radius);
    }

    /**
     * Middle of the base plane.
     *
     * @return the place
     */
    public Vec3 base() {
        return base;
    }

    /**
     * A point on the axis.
     *
     * @param s distance from the base plane (m)
     * @return the place
     */
    public Vec3 onAxis(double s) {
        return base.plus(axis.times(s));
    }

    @Override
    public Vec3 farthest(Vec3 direction) {
        double up = direction.dot(axis);
        Vec3 across = direction.minus(axis.times(up));
        double aside = across.norm();
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < along.length; i++) {
            double reached = along[i] * up + radius[i] * aside;
            if (reached > most) {
                most = reached;
                best = i;
            }
        }
        Vec3 point = onAxis(along[best]);
        return aside > 1e-12 ? point.plus(across.times(radius[best] / aside)) : point;
    }

    @Override
    public Vec3 middle() {
        return onAxis(greatest(along) / 2);
    }

    @Override
    public double reach() {
        return Math.hypot(greatest(along) / 2, greatest(radius));
    }

    private static double greatest(double[] values) {
        double most = 0;
        for (double v : values) {
            most = Math.max(most, v);
        }
        return most;
    }
}
