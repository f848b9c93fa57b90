// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import bermwright.terrain.grid.TrueMetres;
import java.util.Optional;

/**
 * A hull in space: standing, on its way down and lying, and its gear.
 *
 * @param hull     the hull
 * @param falling  the hull on its way down
 * @param standing the body as it lands upright; empty where it lands on its side
 * @param lying    the body as it comes to lie; empty where it stays upright
 * @param rig      the gear
 */
public record HullInSpace(Hull hull, FallingHull falling, Optional<Revolved> standing, Optional<Revolved> lying,
        RigInSpace rig) {
    /**
     * A hull of a plan.
     *
     * @param hull    the hull
     * @param grid    the ground; level at height 0 without it
     * @param below   the same ground
     * @param gravity gravity (m/s2)
     * @param pull    what the lines pull
     * @return the hull; where its ground is not known, as if it were level at the height under its axis
     */
    public static HullInSpace of(Hull hull, Optional<ElevationGrid> grid, GroundBelow below, double gravity,
            RigInSpace.Pull pull) {
        TrueMetres metres = below.metres();
        Optional<FittedPlane> bed = grid.flatMap(g -> g.fittedPlane(hull.bed(metres)));
        Vec3 foot = metres.at(hull.baseCentre(), 0);
        double height = below.height(foot);
        double known = Double.isFinite(height) ? height : 0;
        Point line = hull.lyingBase(metres);
        boolean falls = hull.arrival() == Hull.Arrival.LOWERED;
        FallingHull falling = new FallingHull(hull, bed.map(b -> b.height(line)).orElse(known),
                bed.filter(b -> falls).map(FittedPlane::normal).orElse(Vec3.UP), metres);
        Optional<Revolved> standing = hull.arrival() == Hull.Arrival.LANDS_LYING ? Optional.empty()
                : Optional.of(falls ? falling.body(0, 0)
                        : Revolved.of(hull, foot.plus(Vec3.UP.times(known)), Vec3.UP));
        Optional<Revolved> lying = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT ? Optional.empty()
                : Optional.of(grid.flatMap(g -> LyingPose.of(hull, g)).map(p -> Revolved.of(hull,
                        metres.stretched(p.axisStart()), p.direction())).orElseGet(() -> level(hull, falling)));
        return new HullInSpace(hull, falling, standing, lying, RigInSpace.of(falling, below, gravity, pull));
    }

    private static Revolved level(Hull hull, FallingHull falling) {
        double lift = hull.radius() + hull.seat().cradleHeight() - hull.seat().sunk();
        return Revolved.of(hull, falling.at(0, 0, lift), falling.at(1, 0, lift).minus(falling.at(0, 0, lift)));
    }
}
