// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import bermwright.foundation.Vec3;
import bermwright.lowering.rig.GearPoints;
import java.util.List;

/**
 * The balance of one pole head in space: lines from the hull, lines to the winches, stays behind, the pole under it.
 *
 * <p>The pole is hinged at its foot. Its stays, pulled alike, take what pulls the head square to the pole in the
 * lay-down plane; what is left across that plane, the splay of lines and stays, is for the tie or strut between the
 * heads.
 */
public final class PoleHead {
    private final int pole;
    private final Vec3 axis;
    private final Vec3 square;
    private final Vec3 stays;
    private final GearPoints points;

    /**
     * The head of a pole.
     *
     * @param points where the gear stands
     * @param pole   number of the pole, from 0 on the right
     */
    public PoleHead(GearPoints points, int pole) {
        this.points = points;
        this.pole = pole;
        GearPoints.PolePoints at = points.poles().get(pole);
        this.axis = at.head().minus(at.foot()).direction();
        this.square = new Vec3(axis.z(), 0, -axis.x());
        this.stays = points.staysOf(pole).stream().map(s -> s.anchor().minus(s.head()).direction())
                .reduce(Vec3.ZERO, Vec3::plus);
    }

    /**
     * The forces at the head.
     *
     * @param lines    every line of the rig at the tilt
     * @param tensions tension of each line between lug and head (N)
     * @param passedOn share of it that goes on behind the head (1)
     * @return the forces
     */
    public HeadForces forces(List<GearPoints.LinePath> lines, double[] tensions, double passedOn) {
        Vec3 pull = Vec3.ZERO;
        double behind = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (points.reeving().poleOf(i) == pole) {
                GearPoints.LinePath line = lines.get(i);
                pull = pull.plus(line.pull().times(-tensions[i]));
                double winchLine = tensions[i] * passedOn;
                Vec3 on = line.winch().minus(line.lead());
                if (on.norm() > 0) {
                    pull = pull.plus(on.direction().times(winchLine));
                }
                behind = Math.max(behind, winchLine);
            }
        }
        double across = pull.dot(square);
        double held = stays.dot(square);
        double stay = held < 0 && across > 0 || held > 0 && across < 0 ? -across / held : 0;
        Vec3 all = pull.plus(stays.times(stay));
        return new HeadForces(-all.dot(axis), stay, behind, stay > 0 ? 0 : across, all.y());
    }
}
