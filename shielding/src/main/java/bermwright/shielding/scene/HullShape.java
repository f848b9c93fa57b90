// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import java.util.List;
import java.util.Objects;

/**
 * A thin-skinned cylinder with two ends, in its own axes; a convex body, so a ray crosses its skin at most twice.
 *
 * @param length  length over both ends (m), at least the depths of both ends
 * @param radius  radius of the barrel (m), positive
 * @param baseEnd the end at the base
 * @param farEnd  the end away from the base
 * @param skin    areal density of the skin, all layers (kg/m2), zero or more
 * @param inner   what stands against the skin inside over parts of it
 */
public record HullShape(double length, double radius, HullEnd baseEnd, HullEnd farEnd, double skin,
        List<InnerWall> inner) {
    /** How near to the edge of a flat end a place counts as being on the barrel (m). */
    private static final double SKIN_SLACK = 1e-6;

    /** Refuses a hull shorter than its ends. */
    public HullShape {
        Require.positive("hull length", length, "m");
        Require.positive("hull radius", radius, "m");
        Objects.requireNonNull(baseEnd, "baseEnd");
        Objects.requireNonNull(farEnd, "farEnd");
        Require.notNegative("areal density of the skin", skin, "kg/m2");
        inner = List.copyOf(inner);
        Require.that(baseEnd.depth() + farEnd.depth() <= length,
                "the ends are %s m deep together; accepted: at most the length, %s m",
                baseEnd.depth() + farEnd.depth(), length);
    }

    /**
     * A hull with nothing against its skin.
     *
     * @param length  length over both ends (m), at least the depths of both ends
     * @param radius  radius of the barrel (m), positive
     * @param baseEnd the end at the base
     * @param farEnd  the end away from the base
     * @param skin    areal density of the skin, all layers (kg/m2), zero or more
     */
    public HullShape(double length, double radius, HullEnd baseEnd, HullEnd farEnd, double skin) {
        this(length, radius, baseEnd, farEnd, skin, List.of());
    }

    /**
     * The skin and what stands against it at a place of the skin in the hull's own axes.
     *
     * @param along  distance from the base plane (m)
     * @param across distance to the left of the axis (m)
     * @param up     distance from the axis towards the crown (m)
     * @return areal density square to the skin, counted as skin (kg/m2)
     */
    public double skinAt(double along, double across, double up) {
        double sum = skin;
        for (InnerWall wall : inner) {
            sum += wall.holds(along, across, up) ? wall.arealDensity() : 0;
        }
        return sum;
    }

    /**
     * The same where a ray crosses the skin.
     *
     * @param ray      the ray in the hull's own axes
     * @param distance where on it (m)
     * @return areal density square to the skin, counted as skin (kg/m2)
     */
    public double skinAt(LocalRay ray, double distance) {
        return inner.isEmpty() ? skin : skinAt(ray.along + distance * ray.alongStep,
                ray.across + distance * ray.acrossStep, ray.up + distance * ray.upStep);
    }

    /**
     * Where the barrel begins.
     *
     * @return distance from the base plane (m)
     */
    public double barrelStart() {
        return baseEnd.depth();
    }

    /**
     * Where the barrel ends.
     *
     * @return distance from the base plane (m)
     */
    public double barrelEnd() {
        return length - farEnd.depth();
    }

    /**
     * The radius at a distance along the axis.
     *
     * @param along distance from the base plane (m)
     * @return the radius (m); 0 outside the hull
     */
    public double radiusAt(double along) {
        if (!(along >= 0 && along <= length)) {
            return 0;
        }
        return Math.min(baseEnd.radiusAt(along, radius), farEnd.radiusAt(length - along, radius));
    }

    /**
     * The volume enclosed.
     *
     * @return the volume (m3)
     */
    public double volume() {
        return Math.PI * radius * radius * (barrelEnd() - barrelStart() + endShare(baseEnd) + endShare(farEnd));
    }

    /**
     * Where a ray crosses the skin.
     *
     * @param ray  the ray in the hull's own axes
     * @param into takes the answer; its slants are 1 / |cos| of the angle to the skin's normal
     * @return true where the ray's line meets the hull at all
     */
    public boolean cross(LocalRay ray, HullCrossing into) {
        into.clear();
        double quadratic = ray.acrossStep * ray.acrossStep + ray.upStep * ray.upStep;
        double half = ray.across * ray.acrossStep + ray.up * ray.upStep;
        double rest = ray.across * ray.across + ray.up * ray.up - radius * radius;
        double slack = 1e-9 * length;
        if (quadratic > 1e-18) {
            double root = half * half - quadratic * rest;
            if (root < 0) {
                return false;
            }
            root = Math.sqrt(root);
            double slant = 1 / Math.max(1e-6, root / radius);
            barrel(ray, (-half - root) / quadratic, slant, slack, into);
            barrel(ray, (-half + root) / quadratic, slant, slack, into);
        }
        end(ray, baseEnd, false, into);
        end(ray, farEnd, true, into);
        return into.isMet();
    }

    /**
     * Where a ray that starts inside comes out; quicker than {@link #cross}, whose entry is then behind the ray.
     *
     * @param ray  the ray in the hull's own axes, starting inside the skin
     * @param into takes where it leaves and at what slant
     * @return true where the way out was found
     */
    public boolean leave(LocalRay ray, HullCrossing into) {
        double quadratic = ray.acrossStep * ray.acrossStep + ray.upStep * ray.upStep;
        if (quadratic > 1e-18) {
            double half = ray.across * ray.acrossStep + ray.up * ray.upStep;
            double rest = ray.across * ray.across + ray.up * ray.up - radius * radius;
            double root = Math.sqrt(Math.max(0, half * half - quadratic * rest));
            double distance = (root - half) / quadratic;
            double along = ray.along + distance * ray.alongStep;
            if (along >= barrelStart() && along <= barrelEnd()) {
                into.clear();
                into.leaveAt(distance, skin > 0 || !inner.isEmpty() ? radius / Math.max(1e-6 * radius, root) : 1);
                return true;
            }
        }
        return cross(ray, into);
    }

    /**
     * The direction away from the hull, square to its skin, at a place on the skin.
     *
     * @param place a place on the skin in the hull's own axes: along the axis, to the left, to the crown (m)
     * @return the unit direction in the same axes
     */
    public Vec3 outward(Vec3 place) {
        double across = Math.hypot(place.y(), place.z());
        boolean base = place.x() <= barrelStart() + SKIN_SLACK && (baseEnd.depth() > 0 || across < radius - SKIN_SLACK);
        boolean far = place.x() >= barrelEnd() - SKIN_SLACK && (farEnd.depth() > 0 || across < radius - SKIN_SLACK);
        double along = base ? -slope(baseEnd, place.x()) : far ? slope(farEnd, length - place.x()) : 0;
        if (Math.abs(along) > 1) {
            return new Vec3(Math.signum(along), 0, 0);
        }
        double rest = across > 0 ? Math.sqrt(1 - along * along) / across : 0;
        return new Vec3(along, rest * place.y(), rest * place.z()).direction();
    }

    /** Part along the axis of the normal of an end, outwards from its tip; 2 for a flat one. */
    private double slope(HullEnd end, double inwards) {
        if (end.shape() == HullEnd.Shape.FLAT) {
            return 2;
        }
        if (end.shape() == HullEnd.Shape.CONE) {
            return radius / Math.hypot(radius, end.depth());
        }
        double in = Math.max(0, Math.min(end.depth(), inwards));
        double axial = (end.depth() - in) / (end.depth() * end.depth());
        double radial = end.radiusAt(in, radius) / (radius * radius);
        return axial / Math.hypot(axial, radial);
    }

    private void barrel(LocalRay ray, double distance, double slant, double slack, HullCrossing into) {
        double along = ray.along + distance * ray.alongStep;
        if (along >= barrelStart() - slack && along <= barrelEnd() + slack) {
            into.meet(distance, slant);
        }
    }

    private void end(LocalRay ray, HullEnd end, boolean far, HullCrossing into) {
        double sign = far ? -1 : 1;
        double inwards = far ? length - ray.along : ray.along;
        double step = sign * ray.alongStep;
        if (end.shape() == HullEnd.Shape.FLAT) {
            if (Math.abs(step) > 1e-15) {
                double distance = -inwards / step;
                double a = ray.across + distance * ray.acrossStep;
                double u = ray.up + distance * ray.upStep;
                if (a * a + u * u <= radius * radius * (1 + 1e-12)) {
                    into.meet(distance, 1 / Math.abs(step));
                }
            }
            return;
        }
        double k = radius / end.depth();
        double shift = end.shape() == HullEnd.Shape.DOME ? inwards - end.depth() : inwards;
        double q = end.shape() == HullEnd.Shape.DOME ? k * k : -k * k;
        double constant = end.shape() == HullEnd.Shape.DOME ? radius * radius : 0;
        double a = ray.acrossStep * ray.acrossStep + ray.upStep * ray.upStep + q * step * step;
        double b = ray.across * ray.acrossStep + ray.up * ray.upStep + q * shift * step;
        double c = ray.across * ray.across + ray.up * ray.up + q * shift * shift - constant;
        if (Math.abs(a) < 1e-14) {
            if (Math.abs(b) > 1e-15) {
                quadric(ray, end, new double[] {-c / (2 * b), inwards, step, shift, q}, into);
            }
            return;
        }
        double root = b * b - a * c;
        if (root < 0) {
            return;
        }
        root = Math.sqrt(root);
        quadric(ray, end, new double[] {(-b - root) / a, inwards, step, shift, q}, into);
        quadric(ray, end, new double[] {(-b + root) / a, inwards, step, shift, q}, into);
    }

    private static void quadric(LocalRay ray, HullEnd end, double[] root, HullCrossing into) {
        double distance = root[0];
        double inwards = root[1] + distance * root[2];
        if (inwards < -1e-9 || inwards > end.depth() * (1 + 1e-9)) {
            return;
        }
        double a = ray.across + distance * ray.acrossStep;
        double u = ray.up + distance * ray.upStep;
        double w = root[4] * (root[3] + distance * root[2]);
        double norm = Math.sqrt(a * a + u * u + w * w);
        double cos = Math.abs(a * ray.acrossStep + u * ray.upStep + w * root[2]) / Math.max(norm, 1e-12);
        into.meet(distance, 1 / Math.max(1e-6, cos));
    }

    private static double endShare(HullEnd end) {
        return end.depth() * (end.shape() == HullEnd.Shape.CONE ? 1.0 / 3 : 2.0 / 3);
    }
}
