// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.foundation.Vec3;
import bermwright.lowering.body.Ground;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Where a hull on its bare rim comes to rest on a cross slope with nothing but its lowering lines, paid out alike.
 *
 * <p>The rim rolls on the ground without sliding; lines are springs of their stiffness. Moments about the point of
 * contact fall to nothing by Newton's steps while the cross slope is raised bit by bit; the place counts where it is
 * stable. What the sunk edge gives against rolling is left out, so the hull sways less than this.
 */
final class FreeSway {
    private static final int SLOPE_STEPS = 8;
    private static final int NEWTON_STEPS = 40;
    private static final double GREATEST_STEP = 0.15;
    /** Beyond this the hull has left its gear. */
    private static final double GREATEST_SWAY = Math.toRadians(45);
    /** Stretch of lines whose stiffness is not given, as a share of their length (1). */
    private static final double STIFF = 1e-3;
    private static final double NUDGE = 1e-6;
    private final TippingBody tipping;
    private final double radius;
    private final Vec3 centre;
    private final List<Spring> springs = new ArrayList<>();
    private final Pose start;

    /** A line as a spring from a point of the hull (along, off axis, left) to a head, and how far that is aside. */
    private record Spring(Vec3 lug, Vec3 head, Vec3 aside, double slackLength, double stiffness) {
    }

    /** What is raised bit by bit: the weight's part across, and how far the heads stand aside. */
    private record Load(Vec3 weight, double share) {
    }

    /** The hull in space: axis, the way to its lay-down side, where the rim touches, and which part of the rim. */
    private record Pose(Vec3 axis, Vec3 side, Vec3 contact, double rim) {
        Vec3 left() {
            return axis.cross(side);
        }
    }

    /** A hull at a tilt, with lines as they really lead; they are paid out as far as in its plane. */
    FreeSway(LoweringCase setup, TiltState state, LineSet lead) {
        this.tipping = setup.tipping();
        this.radius = tipping.body().outline().radius();
        this.centre = new Vec3(tipping.body().centre().along(), tipping.body().centre().offAxis(), 0);
        double sin = Math.sin(state.tilt());
        double cos = Math.cos(state.tilt());
        this.start = new Pose(new Vec3(sin, 0, cos), new Vec3(cos, 0, -sin), Vec3.ZERO, 0);
        LoweringLines lines = setup.rig().lines();
        double fall = setup.rig().poles().map(p -> p.head().distance(lines.winch().at())).orElse(0.0);
        LineSet set = LineSet.lowering(tipping, setup.rig(), state.tilt());
        Vec3 load = tipping.ground().withSlopeAcross(0).fall().times(tipping.weight());
        double moment = LineSet.at(tipping.centreOfMass(state.tilt()), 0).cross(load).y();
        double tension = -moment / set.common().moment().y();
        for (int i = 0; i < set.ends().size(); i++) {
            LineSet.End end = set.ends().get(i);
            double length = end.lead().minus(end.lug()).norm();
            double stiffness = lines.line().stiffness().orElse(tension / STIFF) / (length + fall);
            springs.add(new Spring(new Vec3(lines.lug().along(), lines.lug().offAxis(), end.lug().y()),
                    end.lead(), lead.ends().get(i).lead().minus(end.lead()), length - tension / stiffness, stiffness));
        }
    }

    CrossState.Sway at() {
        Ground ground = tipping.ground();
        Optional<Pose> reached = Optional.of(start);
        for (int i = 1; i <= SLOPE_STEPS; i++) {
            double share = (double) i / SLOPE_STEPS;
            Load load = new Load(ground.withSlopeAcross(ground.slopeAcross() * share).fall().times(tipping.weight()),
                    share);
            reached = reached.flatMap(p -> settled(p, load));
        }
        if (reached.isEmpty()) {
            return CrossState.Sway.NONE;
        }
        Pose pose = reached.get();
        double angle = Math.asin(Math.min(1, Math.abs(pose.axis.y())));
        double length = tipping.body().outline().length();
        return new CrossState.Sway(true, angle, Math.abs(place(pose, new Vec3(length, 0, 0)).y()), hardest(pose));
    }

    /** The stable place near a pose; absent where there is none. */
    private Optional<Pose> settled(Pose from, Load load) {
        Pose pose = from;
        double enough = 1e-9 * tipping.weight() * tipping.centreRadius();
        for (int i = 0; i < NEWTON_STEPS; i++) {
            Vec3 moment = moment(pose, load);
            RealMatrix slope = slope(pose, load);
            if (moment.norm() < enough) {
                return Optional.of(pose).filter(p -> isStable(slope));
            }
            LUDecomposition split = new LUDecomposition(slope);
            if (!split.getSolver().isNonSingular()) {
                return Optional.empty();
            }
            double[] step = split.getSolver().solve(new ArrayRealVector(new double[] {-moment.x(), -moment.y(),
                    -moment.z()}, false)).toArray();
            Vec3 turn = new Vec3(step[0], step[1], step[2]);
            pose = turned(pose, turn.times(Math.min(1, GREATEST_STEP / turn.norm())));
            if (!(Math.abs(pose.axis.y()) < Math.sin(GREATEST_SWAY))) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** How the moment changes with a small turn about each axis. */
    private RealMatrix slope(Pose pose, Load load) {
        RealMatrix slope = new Array2DRowRealMatrix(3, 3);
        Vec3[] axes = {new Vec3(NUDGE, 0, 0), new Vec3(0, NUDGE, 0), new Vec3(0, 0, NUDGE)};
        for (int j = 0; j < 3; j++) {
            Vec3 change = moment(turned(pose, axes[j]), load).minus(moment(turned(pose, axes[j].times(-1)), load))
                    .times(1 / (2 * NUDGE));
            slope.setColumn(j, new double[] {change.x(), change.y(), change.z()});
        }
        return slope;
    }

    private static boolean isStable(RealMatrix slope) {
        RealMatrix even = slope.add(slope.transpose()).scalarMultiply(-0.5);
        for (double value : new EigenDecomposition(even).getRealEigenvalues()) {
            if (!(value > 0)) {
                return false;
            }
        }
        return true;
    }

    /** Moment of weight and lines about the point of contact. */
    private Vec3 moment(Pose pose, Load load) {
        Vec3 sum = place(pose, centre).minus(pose.contact).cross(load.weight);
        for (Spring s : springs) {
            Vec3 lug = place(pose, s.lug);
            Vec3 way = s.head.plus(s.aside.times(load.share)).minus(lug);
            double tension = Math.max(0, s.stiffness * (way.norm() - s.slackLength));
            sum = sum.plus(lug.minus(pose.contact).cross(way.direction().times(tension)));
        }
        return sum;
    }

    private double hardest(Pose pose) {
        return springs.stream().mapToDouble(s -> s.stiffness * (s.head.plus(s.aside)
                .minus(place(pose, s.lug)).norm() - s.slackLength)).max().orElse(0);
    }

    /** A point of the hull given along, off axis and left. */
    private Vec3 place(Pose pose, Vec3 body) {
        Vec3 base = pose.contact.minus(rimWay(pose, pose.rim).times(radius));
        return base.plus(pose.axis.times(body.x())).plus(pose.side.times(body.y())).plus(pose.left().times(body.z()));
    }

    private static Vec3 rimWay(Pose pose, double rim) {
        return pose.side.times(Math.cos(rim)).plus(pose.left().times(Math.sin(rim)));
    }

    /** The hull turned about its point of contact, which rolls on along the rim to what is then its lowest point. */
    private Pose turned(Pose pose, Vec3 turn) {
        double angle = turn.norm();
        if (!(angle > 0)) {
            return pose;
        }
        Rotation rotation = new Rotation(new Vector3D(turn.x(), turn.y(), turn.z()), angle,
                RotationConvention.VECTOR_OPERATOR);
        Pose there = new Pose(applied(rotation, pose.axis), applied(rotation, pose.side), pose.contact, pose.rim);
        double lowest = Math.atan2(-there.left().z(), -there.side.z());
        Vec3 tangent = there.left().times(Math.cos(lowest)).minus(there.side.times(Math.sin(lowest)));
        double rolled = Math.IEEEremainder(lowest - pose.rim, 2 * Math.PI);
        Vec3 contact = pose.contact.plus(tangent.times(radius * rolled));
        return new Pose(there.axis, there.side, new Vec3(contact.x(), contact.y(), 0), lowest);
    }

    private static Vec3 applied(Rotation rotation, Vec3 v) {
        Vector3D turned = rotation.applyTo(new Vector3D(v.x(), v.y(), v.z()));
        return new Vec3(turned.getX(), turned.getY(), turned.getZ());
    }
}
