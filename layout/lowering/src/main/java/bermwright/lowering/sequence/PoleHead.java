// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.rig.Poles;
import bermwright.lowering.rig.Rig;
import bermwright.lowering.rig.Stay;
import java.util.List;

/** The balance of one pole head: line from the hull, line to the winch, stays behind, and the pole under it. */
final class PoleHead {
    private final Poles poles;
    private final List<Stay> stays;
    private final PlanePoint axis;
    private final PlanePoint toWinch;
    private final PlanePoint stay;
    private final double linesPerPole;

    PoleHead(Rig rig, Poles poles) {
        this.poles = poles;
        this.stays = rig.stays();
        this.axis = poles.foot().directionTo(poles.head());
        PlanePoint winch = rig.lines().winch().at();
        this.toWinch = poles.head().directionTo(winch);
        this.stay = stayDirection();
        int lines = rig.lines().count();
        this.linesPerPole = (double) lines / poles.count(lines);
    }

    /** Forces with a tension at the lug, a share of it going on to the winch, and the pull outwards of one line. */
    HeadForces forces(PlanePoint toLug, double tension, double passedOn, double outwards) {
        double winchLine = tension * passedOn;
        double inPlane = Math.sqrt(Math.max(0, tension * tension - outwards * outwards));
        double x = linesPerPole * (inPlane * toLug.x() + winchLine * toWinch.x());
        double z = linesPerPole * (inPlane * toLug.z() + winchLine * toWinch.z());
        double across = x * axis.z() - z * axis.x();
        double down = -(x * axis.x() + z * axis.z());
        double stayAcross = stay.x() * axis.z() - stay.z() * axis.x();
        double stayPull = 0;
        if (!stays.isEmpty() && stayAcross != 0 && -across / stayAcross > 0) {
            stayPull = -across / stayAcross;
            down -= stayPull * (stay.x() * axis.x() + stay.z() * axis.z());
            across = 0;
        }
        return new HeadForces(down, stayPull, winchLine, across, linesPerPole * outwards);
    }

    /** The mean direction from the head down the stays, of length one. */
    private PlanePoint stayDirection() {
        double x = 0;
        double z = 0;
        for (Stay s : stays) {
            PlanePoint d = poles.head().directionTo(s.anchorAt());
            x += d.x();
            z += d.z();
        }
        return PlanePoint.PIVOT.directionTo(stays.isEmpty() ? new PlanePoint(0, -1) : new PlanePoint(x, z));
    }
}
