// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.lowering.body.TippingBody;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import bermwright.regolith.Bearing;
import bermwright.regolith.Regolith;
import bermwright.regolith.Settlement;
import bermwright.regolith.SoilSensitivity;
import java.util.List;
import java.util.OptionalDouble;

/** The pivot on the ground by tilt. */
public final class PivotEdge {
    private static final double NEAR_FLAT = Math.toRadians(3);

    private PivotEdge() {
    }

    /** Whether the hull stands on an edge there: neither nearly standing nor nearly lying. */
    static boolean isWorkable(double tilt) {
        return tilt >= NEAR_FLAT && tilt <= Math.PI / 2 - NEAR_FLAT;
    }

    /**
     * The pivot on the ground at the tilts at which it stands on an edge.
     *
     * @param setup   the case
     * @param states forces by tilt
     * @return the pivot by tilt
     */
    public static List<EdgeState> states(LoweringCase setup, List<TiltState> states) {
        return states.stream().filter(s -> s.pivotUp() > 0 && isWorkable(s.tilt())).map(s -> state(setup, s)).toList();
    }

    private static EdgeState state(LoweringCase setup, TiltState s) {
        Pressed p = pressed(setup, s.tilt(), s.pivotUp(), s.pivotAlong());
        double mu = setup.tipping().ground().friction();
        double used = mu > 0 ? Math.abs(s.pivotAlong()) / (mu * s.pivotUp()) : Double.POSITIVE_INFINITY;
        return new EdgeState(s.tilt(), p.sinkage, p.area, p.pressure, p.bearing(setup, setup.soil()), used,
                s.holdNeeded(), side(setup.tipping()),
                SoilSensitivity.of(setup.soil(), ground -> p.bearing(setup, ground) / p.pressure));
    }

    /** How the ground is pressed under a force along its normal and along it (N). */
    static Pressed pressed(LoweringCase setup, double tilt, double up, double pivotAlong) {
        TippingBody tipping = setup.tipping();
        double mu = tipping.ground().friction();
        // An anchor takes what friction cannot: the ground under the edge feels no more than friction gives it.
        double along = Math.min(Math.abs(pivotAlong), mu * up);
        double lean = Math.atan2(Math.hypot(along, side(tipping)), up);
        OptionalDouble foot = tipping.pivot().footArea();
        if (foot.isEmpty()) {
            double radius = tipping.body().outline().radius();
            double sunk = Settlement.corner(up, radius, Settlement.LUNAR_STIFFNESS, tilt);
            double area = Settlement.cornerArea(sunk, radius, tilt);
            double chord = 2 * Math.sqrt(2 * radius * sunk / Math.sin(tilt));
            double width = Math.min(chord, area / chord);
            return new Pressed(sunk, area, up / area, new Bearing.Footing(width, Math.max(width, area / width), 0),
                    lean);
        }
        double area = foot.getAsDouble();
        double pressure = up / (2 * area);
        return new Pressed(Settlement.plate(pressure, Math.sqrt(area)), 2 * area, pressure,
                Bearing.Footing.square(area), lean);
    }

    /** What presses the ground where, and how slanting. */
    record Pressed(double sinkage, double area, double pressure, Bearing.Footing footing, double lean) {
        double bearing(LoweringCase setup, Regolith ground) {
            return Bearing.ultimate(footing, ground, setup.tipping().ground().gravity(), lean).sum();
        }
    }

    private static double side(TippingBody tipping) {
        return tipping.weight() * Math.sin(Math.abs(tipping.ground().slopeAcross()));
    }
}
