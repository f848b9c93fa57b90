// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * A body on its pivot on given ground: where its points stand at a tilt, and how strongly it tips.
 *
 * <p>Tilt is measured from the ground's normal: 0 standing, pi/2 lying. A point at s along the axis and n off it
 * stands at x = s sin t + (n - d) cos t, z = s cos t - (n - d) sin t with d the pivot's distance ahead of the axis.
 * Valid for a rigid body on a pivot that neither slides nor sinks; sinkage is looked at apart.
 *
 * @param body   the body
 * @param pivot  what it turns about
 * @param ground the ground
 */
public record TippingBody(Body body, Pivot pivot, Ground ground) {
    /** Refuses missing parts. */
    public TippingBody {
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(pivot, "pivot");
        Objects.requireNonNull(ground, "ground");
    }

    /**
     * How far the pivot line stands ahead of the axis.
     *
     * @return the distance (m), positive
     */
    public double pivotAhead() {
        return pivot.ahead(body.outline().radius());
    }

    /**
     * Where a point of the body stands.
     *
     * @param along   s from the base plane along the axis (m)
     * @param offAxis n off the axis, positive to the lay-down side (m)
     * @param tilt    tilt (rad)
     * @return its place in the lay-down plane
     */
    public PlanePoint point(double along, double offAxis, double tilt) {
        double sin = Math.sin(tilt);
        double cos = Math.cos(tilt);
        double off = offAxis - pivotAhead();
        return new PlanePoint(along * sin + off * cos, along * cos - off * sin);
    }

    /**
     * Where the centre of mass stands.
     *
     * @param tilt tilt (rad)
     * @return its place in the lay-down plane
     */
    public PlanePoint centreOfMass(double tilt) {
        return point(body.centre().along(), body.centre().offAxis(), tilt);
    }

    /**
     * The distance of the centre of mass from the pivot line.
     *
     * @return the distance (m), positive
     */
    public double centreRadius() {
        return Math.hypot(body.centre().along(), pivotAhead() - body.centre().offAxis());
    }

    /**
     * The angle alpha = atan((d - n) / s) by which the centre of mass stands behind the pivot line.
     *
     * @return the angle (rad), below zero where the centre of mass stands ahead of the pivot already
     */
    public double centreAngle() {
        return Math.atan((pivotAhead() - body.centre().offAxis()) / body.centre().along());
    }

    /**
     * The tilt at which the centre of mass stands over the pivot line, alpha less the slope along.
     *
     * @return the tilt (rad); zero or less where the body falls while standing
     */
    public double balanceTilt() {
        return centreAngle() - ground.slopeAlong();
    }

    /**
     * The tilt at which the hull lies: a quarter turn, and more by atan((d - r) / L) where the pivot stands ahead of
     * the rim, for then the far end comes down first and the base stays on its legs.
     *
     * @return the tilt (rad), at least pi/2
     */
    public double restTilt() {
        double lift = pivotAhead() - body.outline().radius();
        return Math.PI / 2 + Math.atan(Math.max(0, lift) / body.outline().length());
    }

    /**
     * The body's weight.
     *
     * @return the weight (N), positive
     */
    public double weight() {
        return body.mass() * ground.gravity();
    }

    /**
     * The tipping moment about the pivot line, W (x cos d + z sin d) with d the slope along; positive towards lying.
     *
     * @param tilt tilt (rad)
     * @return the moment (N m)
     */
    public double tippingMoment(double tilt) {
        return weight() * centreRadius() * Math.sin(tilt - balanceTilt());
    }

    /**
     * The moment of inertia about the pivot line.
     *
     * @return the moment of inertia (kg m2), positive
     */
    public double inertiaAboutPivot() {
        double radius = centreRadius();
        return body.inertiaAboutCentre() + body.mass() * radius * radius;
    }

    /**
     * The height through which the centre of mass falls between two tilts.
     *
     * @param from first tilt (rad)
     * @param to   second tilt (rad)
     * @return the fall (m), negative where it rises
     */
    public double fall(double from, double to) {
        return centreRadius() * (Math.cos(from - balanceTilt()) - Math.cos(to - balanceTilt()));
    }

    /**
     * This body turned about another line, on the same ground.
     *
     * @param changed the changed body
     * @return the changed whole
     */
    public TippingBody with(Body changed) {
        return new TippingBody(changed, pivot, ground);
    }

    /**
     * Checks a tilt.
     *
     * @param tilt tilt (rad)
     * @return the tilt
     * @throws IllegalArgumentException if it is outside 0 to the rest tilt
     */
    public double checkedTilt(double tilt) {
        return Require.within("tilt", tilt, 0, restTilt() + 1e-9, "rad");
    }
}
