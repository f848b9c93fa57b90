// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.statics;

import bermwright.foundation.Require;
import bermwright.lowering.body.PlanePoint;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.GearPoints;
import bermwright.lowering.rig.PullOver;
import bermwright.lowering.rig.Rig;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The balance of a body on its pivot and its lines, held still at any tilt.
 *
 * <p>T = W (x cos d + z sin d) / lever; V = W cos d - T u_z; H = -T u_x - W sin d, with (x, z) the centre of mass, d
 * the slope along, u the line's direction. Straight weightless lines, a rigid body, a pivot that neither slides nor
 * sinks; sag, stretch, friction of sheaves and motion are looked at apart.
 */
public final class Statics {
    /** Least lever accepted as a share of the lug's distance from the pivot (1): the pull is then tenfold. */
    public static final double LEAST_LEVER_SHARE = 0.1;
    private final TippingBody tipping;
    private final Rig rig;
    private final GearPoints points;
    private final Optional<PoleHead> head;
    private final double balance;

    /**
     * The balance of a body in its rig.
     *
     * @param tipping the body on its pivot
     * @param rig     the rig
     */
    public Statics(TippingBody tipping, Rig rig) {
        this.tipping = Objects.requireNonNull(tipping, "tipping");
        this.rig = Objects.requireNonNull(rig, "rig");
        this.points = GearPoints.of(rig);
        this.head = rig.poles().map(p -> new PoleHead(points, p.count() - 1));
        this.balance = tipping.balanceTilt();
    }

    /**
     * The lever of the lowering lines about the pivot line.
     *
     * @param tilt tilt (rad), 0 up to the rest tilt
     * @return the lever (m); zero or less where the lines hold nothing
     */
    public double holdingLever(double tilt) {
        return LineGeometry.at(tipping, rig, points, tilt).lever();
    }

    /**
     * The least lever of the lowering lines that is accepted.
     *
     * @return the lever (m), positive
     */
    public double leastHoldingLever() {
        return LEAST_LEVER_SHARE * tipping.point(rig.lines().lug().along(), rig.lines().lug().offAxis(), 0).norm();
    }

    /**
     * The lever with which the pull-over line tips the body.
     *
     * @param tilt tilt (rad), 0 up to the rest tilt
     * @return the lever (m); zero or less where it pulls nothing over; absent without a pull-over line
     */
    public OptionalDouble pullOverLever(double tilt) {
        return rig.pullOver().map(p -> OptionalDouble.of(-lugOf(p, tilt).lever(lineOf(p, tilt))))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Every force at a tilt.
     *
     * @param tilt tilt (rad), 0 up to the rest tilt
     * @return the forces; absent where the line that should work there has no lever, or is missing
     */
    public Optional<TiltState> at(double tilt) {
        tipping.checkedTilt(tilt);
        double moment = tipping.tippingMoment(tilt);
        LineGeometry lines = LineGeometry.at(tipping, rig, points, tilt);
        if (tilt >= balance) {
            return lines.lever() > 0 ? Optional.of(held(tilt, moment / lines.lever(), lines)) : Optional.empty();
        }
        Optional<PullOver> over = rig.pullOver();
        if (over.isEmpty()) {
            return Optional.empty();
        }
        PlanePoint direction = lineOf(over.get(), tilt);
        double lever = -lugOf(over.get(), tilt).lever(direction);
        if (!(lever > 0)) {
            return Optional.empty();
        }
        return Optional.of(pulled(tilt, -moment / lever, direction, lines));
    }

    /**
     * The balance people do by hand, W s_cg / (s_lug sin phi), which leaves out the lug's height over the pivot.
     *
     * @param tilt tilt (rad), 0 up to the rest tilt
     * @return the pull along the lines together (N); absent where they do not rise from the lug
     */
    public OptionalDouble handBalance(double tilt) {
        return handAt(LineGeometry.at(tipping, rig, points, tilt).angle());
    }

    /**
     * The hand balance from its three numbers: the load on the line end by levers, W s_cg / s_lug, along a line at an
     * angle to the ground.
     *
     * @param load  load on the line end by levers (N), zero or more
     * @param angle the line's angle to the ground (rad), above 0 up to a right angle
     * @return the pull along the line (N)
     */
    public static double alongLine(double load, double angle) {
        Require.that(angle > 0 && angle <= Math.PI / 2, "line angle is %s rad; accepted: above 0 up to pi/2.", angle);
        return Require.notNegative("load", load, "N") / Math.sin(angle);
    }

    /**
     * The share of a weight that a prop at a distance takes by levers, w s_cg / s_prop.
     *
     * @param weight the weight, in any unit
     * @param centre distance of the centre of mass from the base (m), positive
     * @param prop   distance of the prop from the base (m), positive
     * @return the share on the prop, in the weight's unit
     */
    public static double byLevers(double weight, double centre, double prop) {
        return weight * centre / Require.positive("distance of the prop", prop, "m");
    }

    private OptionalDouble handAt(double angle) {
        if (!(angle > 0 && angle <= Math.PI / 2)) {
            return OptionalDouble.empty();
        }
        double load = byLevers(tipping.weight(), tipping.body().centre().along(), rig.lines().lug().along());
        return OptionalDouble.of(alongLine(load, angle));
    }

    private TiltState held(double tilt, double total, LineGeometry geometry) {
        double each = geometry.each(total);
        double[] alike = new double[rig.lines().count()];
        Arrays.fill(alike, each);
        HeadForces forces = head.map(h -> h.forces(geometry.paths(), alike, 1)).orElse(HeadForces.NONE);
        return state(new Working(tilt, total, geometry.direction(), geometry.lever()), geometry, each, forces);
    }

    private TiltState pulled(double tilt, double tension, PlanePoint direction, LineGeometry geometry) {
        double lever = -lugOf(rig.pullOver().orElseThrow(), tilt).lever(direction);
        return state(new Working(tilt, tension, direction, lever), geometry, -1, HeadForces.NONE);
    }

    /** The line at work: total pull along a direction in the plane. */
    private record Working(double tilt, double total, PlanePoint direction, double lever) {
    }

    private TiltState state(Working line, LineGeometry geometry, double each, HeadForces forces) {
        double slope = tipping.ground().slopeAlong();
        double weight = tipping.weight();
        double up = weight * Math.cos(slope) - line.total * line.direction.z();
        double along = -line.total * line.direction.x() - weight * Math.sin(slope);
        double hold = Math.max(0, rig.factors().pivotHold() * Math.abs(along) - tipping.ground().friction() * up);
        boolean lowering = each >= 0;
        return new TiltState(line.tilt, lowering ? line.total : 0, lowering ? each : 0,
                lowering ? handAt(geometry.angle()) : OptionalDouble.empty(), lowering ? 0 : line.total,
                up, along, hold, line.lever, geometry.angle(), geometry.length(), forces);
    }

    private PlanePoint lugOf(PullOver over, double tilt) {
        return tipping.point(over.lug().along(), over.lug().offAxis(), tilt);
    }

    private PlanePoint lineOf(PullOver over, double tilt) {
        return lugOf(over, tilt).directionTo(over.anchorAt());
    }
}
