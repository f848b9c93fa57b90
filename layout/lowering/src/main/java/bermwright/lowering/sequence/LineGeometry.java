// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.rig.Rig;

/**
 * The lowering lines between hull and head at one tilt.
 *
 * @param lug       where the lugs stand
 * @param direction direction from lug to head, of length one
 * @param length    distance from lug to head of the outermost line (m)
 * @param lever     lever of the lines about the pivot (m)
 * @param sideways  sine of the angle by which the outermost line leaves the lay-down plane outwards (1)
 */
record LineGeometry(PlanePoint lug, PlanePoint direction, double length, double lever, double sideways) {

    /** Where the lines lead: the pole head, or the winch where there are no poles. */
    static PlanePoint leadPoint(Rig rig) {
        return rig.poles().map(p -> p.head()).orElse(rig.lines().winch().at());
    }

    static LineGeometry at(TippingBody tipping, Rig rig, double tilt) {
        LoweringLines lines = rig.lines();
        PlanePoint lug = tipping.point(lines.lug().along(), lines.lug().offAxis(), tilt);
        PlanePoint lead = leadPoint(rig);
        PlanePoint direction = lug.directionTo(lead);
        double outwards = spread(rig) - lines.halfSpread();
        double length = Math.hypot(lug.distance(lead), outwards);
        return new LineGeometry(lug, direction, length, lug.lever(direction), outwards / length);
    }

    /** Tension of the hardest pulled line for a pull of all lines together in the plane (N). */
    double each(double total, int count) {
        return total / (count * Math.sqrt(1 - sideways * sideways));
    }

    /** Angle of the lines to the ground at the lug (rad). */
    double angle() {
        return Math.atan2(direction.z(), -direction.x());
    }

    private static double spread(Rig rig) {
        if (rig.lines().count() == 1) {
            return 0;
        }
        return rig.poles().map(p -> p.halfSpread()).orElse(rig.lines().halfSpread());
    }
}
