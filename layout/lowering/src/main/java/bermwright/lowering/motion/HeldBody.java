// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.Lug;
import java.util.Objects;

/**
 * A body held back by springy lines in the lay-down plane, all lines together.
 *
 * @param tipping   the body on its pivot
 * @param lug       where the lines are made fast
 * @param lead      where they lead: pole head or winch
 * @param stiffness EA of all lines together (N), positive
 * @param fall      length of line between lead and winch that stretches too (m), zero or more
 */
public record HeldBody(TippingBody tipping, Lug lug, PlanePoint lead, double stiffness, double fall) {
    /** Refuses lines without stiffness. */
    public HeldBody {
        Objects.requireNonNull(tipping, "tipping");
        Objects.requireNonNull(lug, "lug");
        Objects.requireNonNull(lead, "lead");
        Require.positive("line stiffness", stiffness, "N");
        Require.notNegative("length between head and winch", fall, "m");
    }

    /**
     * Distance from lug to lead.
     *
     * @param tilt tilt (rad)
     * @return the distance (m)
     */
    public double length(double tilt) {
        return at(tilt).distance(lead);
    }

    /**
     * Lever of the lines about the pivot; also the line paid out per radian.
     *
     * @param tilt tilt (rad)
     * @return the lever (m)
     */
    public double lever(double tilt) {
        PlanePoint p = at(tilt);
        return p.lever(p.directionTo(lead));
    }

    /**
     * Stiffness of the lines at a tilt, EA / (length + fall).
     *
     * @param tilt tilt (rad)
     * @return the stiffness (N/m)
     */
    public double spring(double tilt) {
        return stiffness / (length(tilt) + fall);
    }

    /**
     * Tension that holds the body still, all lines together.
     *
     * @param tilt tilt (rad)
     * @return the tension (N), negative before balance
     */
    public double stillTension(double tilt) {
        return tipping.tippingMoment(tilt) / lever(tilt);
    }

    /**
     * The mass the lines feel, inertia over lever squared.
     *
     * @param tilt tilt (rad)
     * @return the mass (kg)
     */
    public double feltMass(double tilt) {
        double a = lever(tilt);
        return tipping.inertiaAboutPivot() / (a * a);
    }

    private PlanePoint at(double tilt) {
        return tipping.point(lug.along(), lug.offAxis(), tilt);
    }
}
