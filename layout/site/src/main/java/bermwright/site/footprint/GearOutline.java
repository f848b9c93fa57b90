// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Ring;
import bermwright.lowering.rig.Anchor.Footing;
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Outlines of the gear that lays a hull down, and of what it endangers.
 *
 * <p>Common practice, no source: a line needs 1 m to either side, a winch or pole foot of unknown size stands on 3 m
 * by 3 m or 1.5 m by 1.5 m. A pole falls over 1.5 times its height (trade rule). A parted line strikes inside a cone
 * of 15 degrees to either side of its axis (from memory); a piece as long as the line swings past the point that
 * holds it by its own length, so the cone reaches twice the line's length. Published bulletins treat the whole area
 * as dangerous, and in vacuum a loose part can fly a kilometre: the outlines are the least, not the whole.
 */
final class GearOutline {
    static final double LINE_HALF_WIDTH = 1;
    static final double FALL_ZONE_HEIGHTS = 1.5;
    static final double SNAP_BACK_HALF_ANGLE = Math.toRadians(15);
    private static final double SNAP_BACK_LENGTHS = 2;
    private static final double WINCH_SIDE = 3;
    private static final double POLE_FOOT_SIDE = 1.5;

    private final Hull hull;
    private final LayDownFrame frame;
    private final double frictionAngle;
    private final GearPlaces places;
    private final List<Shape> shapes = new ArrayList<>();

    private GearOutline(Hull hull, LayDownFrame frame, double frictionAngle) {
        this.hull = hull;
        this.frame = frame;
        this.frictionAngle = frictionAngle;
        this.places = GearPlaces.of(hull);
    }

    static List<Shape> of(Hull hull, LayDownFrame frame, double frictionAngle) {
        GearOutline outline = new GearOutline(hull, frame, frictionAngle);
        hull.lowering().ifPresent(outline::gear);
        return outline.shapes;
    }

    private void gear(LoweringGear gear) {
        if (hull.arrival() == Hull.Arrival.LOWERED) {
            if (gear.means() == LoweringGear.Means.LINES) {
                gear.lines().ifPresent(lines -> lines(gear, lines));
                gear.poles().ifPresent(this::poles);
                places.stays().forEach(stay -> stay(stay, gear));
            } else {
                gear.sideThrusters().ifPresent(this::thrusters);
            }
            places.pullOver().ifPresent(p -> pullOver(p, gear.pullOver().flatMap(LoweringGear.PullOver::anchor)));
            gear.pivotHold().ifPresent(hold -> anchor(hold.anchor(), GearRole.PIVOT_HOLD, "pivot hold",
                    new double[] {0, 0},
                    new double[] {1, 0}));
        }
        gear.landing().flatMap(l -> boxed(l.plumeStandOff())).ifPresent(radius -> add(ShapeKind.LANDING_PLUME,
                GearRole.NONE, "",
                LayDownFrame.circle(hull.baseCentre(), frame.metres().onPlan(radius + hull.landingDispersion()))));
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() && value.getAsDouble() > 0
                ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private void lines(LoweringGear gear, LoweringGear.Lines lines) {
        for (GearPlaces.LinePlace line : places.lines()) {
            double[] winch = at(line.winch());
            double[] head = at(line.lead());
            double[] lugDown = {lines.lugFromBase(), line.lugLeft()};
            List<double[]> passed = lugPath(gear, lines.lugFromBase(), lines.lugOffAxis(), line.lugLeft());
            passed.add(head);
            add(ShapeKind.LINE, GearRole.LOWERING, line.name(), frame.around(LINE_HALF_WIDTH, passed));
            snapBack(GearRole.LOWERING, line.name(), lugDown, head);
            if (!places.poles().isEmpty() && distance(head, winch) > 0) {
                add(ShapeKind.LINE, GearRole.LOWERING, line.name() + ", pole to winch",
                        frame.around(LINE_HALF_WIDTH, List.of(head, winch)));
                snapBack(GearRole.LOWERING, line.name() + ", pole to winch", head, winch);
            }
            add(ShapeKind.WINCH, GearRole.LOWERING, line.name(), frame.rectangle(winch[0], winch[1], WINCH_SIDE,
                    WINCH_SIDE));
            lines.winch().anchor().ifPresent(a -> anchor(a, GearRole.LOWERING, line.name(), winch, new double[] {1,
                    0}));
        }
    }

    private static double[] at(Spot spot) {
        return new double[] {spot.ahead(), spot.left()};
    }

    /** Places of a lug from standing to lying, swung to both sides by the wander. */
    private List<double[]> lugPath(LoweringGear gear, double s, double off, double left) {
        List<double[]> places = new ArrayList<>();
        places.add(new double[] {off - hull.pivotAhead(), left});
        for (double turn : new double[] {-gear.wander(), 0, gear.wander()}) {
            places.add(new double[] {s * Math.cos(turn) - left * Math.sin(turn),
                s * Math.sin(turn) + left * Math.cos(turn)});
        }
        return places;
    }

    private void poles(LoweringGear.Poles poles) {
        double side = poles.footArea().isPresent() ? Math.sqrt(poles.footArea().getAsDouble()) : POLE_FOOT_SIDE;
        for (GearPlaces.PolePlace pole : places.poles()) {
            Spot foot = pole.foot();
            add(ShapeKind.POLE_FOOT, GearRole.POLE, pole.name(), frame.rectangle(foot.ahead(), foot.left(), side,
                    side));
            add(ShapeKind.POLE_FALL_ZONE, GearRole.POLE, pole.name(),
                    frame.circle(foot.ahead(), foot.left(), FALL_ZONE_HEIGHTS * pole.height()));
        }
    }

    private void stay(GearPlaces.StayPlace stay, LoweringGear gear) {
        double[] head = at(places.poles().get(stay.pole()).foot());
        double[] foot = at(stay.anchor());
        add(ShapeKind.STAY, GearRole.STAY, stay.name(), frame.around(LINE_HALF_WIDTH, List.of(head, foot)));
        snapBack(GearRole.STAY, stay.name(), head, foot);
        gear.stays().get(stay.set()).anchor().ifPresent(a -> anchor(a, GearRole.STAY, stay.name(), foot, towards(foot,
                head)));
    }

    private void pullOver(GearPlaces.PullOverPlace pull, Optional<Anchor> anchor) {
        double[] foot = at(pull.winch());
        double[] lug = {-hull.pivotAhead(), 0};
        add(ShapeKind.LINE, GearRole.PULL_OVER, pull.name(), frame.around(LINE_HALF_WIDTH, List.of(lug, foot)));
        snapBack(GearRole.PULL_OVER, pull.name(), lug, foot);
        add(ShapeKind.WINCH, GearRole.PULL_OVER, pull.name(), frame.rectangle(foot[0], foot[1], WINCH_SIDE,
                WINCH_SIDE));
        anchor.ifPresent(a -> anchor(a, GearRole.PULL_OVER, pull.name(), foot, new double[] {-1, 0}));
    }

    private void thrusters(LoweringGear.SideThrusters thrusters) {
        double standing = hull.radius() - hull.pivotAhead();
        List<double[]> path = new ArrayList<>();
        path.add(new double[] {standing, 0});
        path.add(new double[] {thrusters.fromBase(), 0});
        if (thrusters.plumeRadius() > 0) {
            add(ShapeKind.THRUSTER_PLUME, GearRole.NONE, "", frame.around(thrusters.plumeRadius(), path));
        }
    }

    /** An anchor and, ahead of it in the direction of its pull, the wedge of soil that holds it. */
    private void anchor(Anchor anchor, GearRole role, String part, double[] at, double[] pull) {
        Footing footing = anchor.footing();
        double half = footing.along() / 2;
        double wedge = footing.wedgeDepth() * Math.tan(Math.PI / 4 + frictionAngle / 2);
        shapes.add(new Shape(ShapeKind.ANCHOR, hull.id(), part, oriented(at, pull, new double[] {-half, half},
                footing.across()), role, Optional.of(anchor)));
        if (wedge > 0) {
            add(ShapeKind.ANCHOR_SOIL, role, part, oriented(at, pull, new double[] {-half, half + wedge},
                    footing.across()));
        }
    }

    private Ring oriented(double[] at, double[] pull, double[] fromTo, double width) {
        double[] across = {-pull[1] * width / 2, pull[0] * width / 2};
        double[] back = {at[0] + pull[0] * fromTo[0], at[1] + pull[1] * fromTo[0]};
        double[] front = {at[0] + pull[0] * fromTo[1], at[1] + pull[1] * fromTo[1]};
        return frame.ring(new double[] {back[0] - across[0], back[1] - across[1]},
                new double[] {front[0] - across[0], front[1] - across[1]},
                new double[] {front[0] + across[0], front[1] + across[1]},
                new double[] {back[0] + across[0], back[1] + across[1]});
    }

    private void snapBack(GearRole role, String part, double[] loaded, double[] held) {
        double length = distance(loaded, held);
        if (length > 0) {
            add(ShapeKind.SNAP_BACK, role, part,
                    frame.sector(loaded, held, SNAP_BACK_HALF_ANGLE, SNAP_BACK_LENGTHS * length));
        }
    }

    private static double[] towards(double[] from, double[] to) {
        double length = distance(from, to);
        return length > 0 ? new double[] {(to[0] - from[0]) / length, (to[1] - from[1]) / length}
                : new double[] {1, 0};
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(b[0] - a[0], b[1] - a[1]);
    }

    private void add(ShapeKind kind, GearRole role, String part, Ring outline) {
        shapes.add(new Shape(kind, hull.id(), part, outline, role, Optional.empty()));
    }
}
