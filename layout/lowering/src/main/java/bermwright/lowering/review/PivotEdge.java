// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.body.TippingBody;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.TiltState;
import bermwright.regolith.Bearing;
import bermwright.regolith.Settlement;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The pivot on the ground by tilt. */
final class PivotEdge {
    private static final double NEAR_FLAT = Math.toRadians(3);

    private PivotEdge() {
    }

    static List<EdgeState> states(LoweringCase what, LoweringResult result) {
        List<EdgeState> states = new ArrayList<>();
        for (TiltState s : result.tilts()) {
            if (s.pivotUp() > 0 && Reviews.onStep(s.tilt()) && s.tilt() >= NEAR_FLAT
                    && s.tilt() <= Math.PI / 2 - NEAR_FLAT) {
                states.add(state(what, s));
            }
        }
        return states;
    }

    private static EdgeState state(LoweringCase what, TiltState s) {
        TippingBody tipping = what.tipping();
        double mu = tipping.ground().friction();
        double side = tipping.weight() * Math.sin(Math.abs(tipping.ground().slopeAcross()));
        // An anchor takes what friction cannot: the ground under the edge feels no more than friction gives it.
        double along = Math.min(Math.abs(s.pivotAlong()), mu * s.pivotUp());
        double lean = Math.atan2(Math.hypot(along, side), s.pivotUp());
        double used = mu > 0 ? Math.abs(s.pivotAlong()) / (mu * s.pivotUp()) : Double.POSITIVE_INFINITY;
        OptionalDouble foot = tipping.pivot().footArea();
        if (foot.isEmpty()) {
            double radius = tipping.body().outline().radius();
            double sunk = Settlement.corner(s.pivotUp(), radius, Settlement.LUNAR_STIFFNESS, s.tilt());
            double area = Settlement.cornerArea(sunk, radius, s.tilt());
            double chord = 2 * Math.sqrt(2 * radius * sunk / Math.sin(s.tilt()));
            double width = Math.min(chord, area / chord);
            Bearing.Footing footing = new Bearing.Footing(width, Math.max(width, area / width), 0);
            return new EdgeState(s.tilt(), sunk, area, s.pivotUp() / area, bearing(what, footing, lean), used,
                    s.holdNeeded(), side);
        }
        double area = foot.getAsDouble();
        double pressure = s.pivotUp() / (2 * area);
        return new EdgeState(s.tilt(), Settlement.plate(pressure, Math.sqrt(area)), 2 * area, pressure,
                bearing(what, Bearing.Footing.square(area), lean), used, s.holdNeeded(), side);
    }

    private static double bearing(LoweringCase what, Bearing.Footing footing, double lean) {
        return Bearing.ultimate(footing, what.soil(), what.tipping().ground().gravity(), lean).sum();
    }
}
