// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.body.TippingBody;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.TiltState;
import bermwright.regolith.Bearing;
import bermwright.regolith.Regolith;
import bermwright.regolith.Settlement;
import bermwright.regolith.SoilSensitivity;
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
        // An anchor takes what friction cannot: the ground under the edge feels no more than friction gives it.
        double along = Math.min(Math.abs(s.pivotAlong()), mu * s.pivotUp());
        double lean = Math.atan2(Math.hypot(along, side(tipping)), s.pivotUp());
        OptionalDouble foot = tipping.pivot().footArea();
        if (foot.isEmpty()) {
            double radius = tipping.body().outline().radius();
            double sunk = Settlement.corner(s.pivotUp(), radius, Settlement.LUNAR_STIFFNESS, s.tilt());
            double area = Settlement.cornerArea(sunk, radius, s.tilt());
            double chord = 2 * Math.sqrt(2 * radius * sunk / Math.sin(s.tilt()));
            double width = Math.min(chord, area / chord);
            Bearing.Footing footing = new Bearing.Footing(width, Math.max(width, area / width), 0);
            return state(what, new Pressed(s, sunk, area, s.pivotUp() / area, footing, lean));
        }
        double area = foot.getAsDouble();
        double pressure = s.pivotUp() / (2 * area);
        return state(what, new Pressed(s, Settlement.plate(pressure, Math.sqrt(area)), 2 * area, pressure,
                Bearing.Footing.square(area), lean));
    }

    /** What presses the ground where, and how slanting. */
    private record Pressed(TiltState state, double sinkage, double area, double pressure, Bearing.Footing footing,
            double lean) {
    }

    private static EdgeState state(LoweringCase what, Pressed p) {
        TiltState s = p.state;
        double mu = what.tipping().ground().friction();
        double used = mu > 0 ? Math.abs(s.pivotAlong()) / (mu * s.pivotUp()) : Double.POSITIVE_INFINITY;
        return new EdgeState(s.tilt(), p.sinkage, p.area, p.pressure, bearing(what, what.soil(), p), used,
                s.holdNeeded(), side(what.tipping()),
                SoilSensitivity.of(what.soil(), ground -> bearing(what, ground, p) / p.pressure));
    }

    private static double bearing(LoweringCase what, Regolith ground, Pressed p) {
        return Bearing.ultimate(p.footing, ground, what.tipping().ground().gravity(), p.lean).sum();
    }

    private static double side(TippingBody tipping) {
        return tipping.weight() * Math.sin(Math.abs(tipping.ground().slopeAcross()));
    }
}
