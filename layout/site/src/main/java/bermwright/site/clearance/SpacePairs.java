// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.finding.Sentence;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Wall;
import bermwright.site.space.Apart;
import bermwright.site.space.Convex;
import bermwright.site.space.Corners;
import bermwright.site.space.GroundBelow;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.LinePath;
import bermwright.site.space.RigInSpace;
import bermwright.site.space.SweepInSpace;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What falls, hangs and can fall or whip of one hull, against another hull, its gear and walls, in space. */
final class SpacePairs {
    static final double TOUCH = 1e-4;
    private static final double FALL_ZONE_HEIGHTS = 1.5;
    private static final double SNAP_BACK_HALF_ANGLE = Math.toRadians(15);
    private static final double SNAP_BACK_LENGTHS = 2;
    private static final double WALL_PIECE = 5;
    private final Plan plan;
    private final GroundBelow ground;
    private final StatesInTime states;

    SpacePairs(Plan plan, GroundBelow ground) {
        this.plan = plan;
        this.ground = ground;
        this.states = new StatesInTime(new StatedOrder(plan));
    }

    /** The worst of one rule so far. */
    static final class Worst {
        private final double limit;
        private final double spread;
        private SweepInSpace.Nearest nearest;
        private Convex body;
        private String mine;
        private String theirs;
        private LinePath line;

        Worst(double limit, double spread) {
            this.limit = Math.max(limit, 10 * TOUCH);
            this.spread = spread;
        }

        /** What was found, against another limit. */
        Worst(double limit, Worst found) {
            this(limit, found.spread);
            this.nearest = found.nearest;
            this.body = found.body;
            this.mine = found.mine;
            this.theirs = found.theirs;
            this.line = found.line;
        }

        double reach() {
            return nearest == null ? limit + spread : Math.min(limit + spread, nearest.apart().distance());
        }

        void take(Optional<SweepInSpace.Nearest> found, LinePath of, String part, String other, Convex there) {
            if (found.isPresent() && found.get().apart().distance() < limit + spread - TOUCH && (nearest == null
                    || found.get().apart().distance() < nearest.apart().distance())) {
                nearest = found.get();
                line = of;
                mine = part;
                theirs = other;
                body = there;
            }
        }
    }

    /** Compares two hulls, each while it is lowered with the other as it then may be. */
    List<Finding> compare(HullInSpace one, HullInSpace other) {
        List<Finding> findings = new ArrayList<>();
        lowered(findings, one, other, states.of(other, one.hull().id()));
        lowered(findings, other, one, states.of(one, other.hull().id()));
        linesCross(findings, one, other);
        sweepsCross(findings, one, other);
        return findings;
    }

    /** What meets another hull in given states while one is lowered. */
    void lowered(List<Finding> findings, HullInSpace falls, HullInSpace other, List<StatesInTime.State> there) {
        if (falls.hull().arrival() != Hull.Arrival.LOWERED) {
            return;
        }
        double spread = falls.hull().landingDispersion() + other.hull().landingDispersion();
        String id = falls.hull().id();
        Worst sweep = new Worst(falls.falling().margin(), spread);
        Worst lines = new Worst(GroundInSpace.LINE_AIR, spread);
        Worst gear = new Worst(falls.falling().margin(), 0);
        SweepInSpace swept = new SweepInSpace(falls.falling());
        for (StatesInTime.State state : there) {
            sweep.take(swept.nearest(state.body(), sweep.reach()), null, "sweep of " + id, state.words(),
                    state.body());
            for (LinePath line : falls.rig().lines()) {
                lines.take(SweepInSpace.nearest(falls.rig(), line, state.body(), falls.falling().wander(),
                        lines.reach()), line, line.part() + " of " + id, state.words(), state.body());
            }
            double tilt = state.isUp() ? 0 : other.falling().restTilt();
            for (LinePath line : rigged(other, tilt)) {
                Convex sheet = line.sheet(tilt, 0);
                gear.take(swept.nearest(sheet, gear.reach()), null, "sweep of " + id,
                        line.part() + " of " + state.words(), sheet);
            }
            danger(findings, falls, state);
        }
        add(findings, PairingRule.SWEEP_OVER_HULL, falls, sweep, other.hull().id());
        add(findings, PairingRule.LINE_OVER_HULL, falls, lines, other.hull().id());
        add(findings, PairingRule.SWEEP_THROUGH_LINE, falls, gear, other.hull().id());
    }

    private static List<LinePath> rigged(HullInSpace hull, double tilt) {
        return hull.rig().lines().stream().filter(l -> tilt >= l.from() && tilt <= l.to()).toList();
    }

    private void linesCross(List<Finding> findings, HullInSpace one, HullInSpace other) {
        Worst first = new Worst(GroundInSpace.LINE_AIR, 0);
        cross(first, one, other);
        Worst then = new Worst(first.reach(), 0);
        cross(then, other, one);
        if (then.nearest == null) {
            add(findings, PairingRule.LINES_CROSS, one, first, other.hull().id());
        } else {
            add(findings, PairingRule.LINES_CROSS, other, new Worst(GroundInSpace.LINE_AIR, then),
                    one.hull().id());
        }
    }

    /** Both falling, at whichever tilts. */
    private void sweepsCross(List<Finding> findings, HullInSpace one, HullInSpace other) {
        if (one.hull().arrival() == Hull.Arrival.LOWERED && other.hull().arrival() == Hull.Arrival.LOWERED) {
            Worst worst = new Worst(Math.max(one.falling().margin(), other.falling().margin()), 0);
            SweepInSpace.nearest(one.falling(), other.falling(), worst.reach()).ifPresent(n -> worst.take(
                    Optional.of(n.first()), null, "sweep of " + one.hull().id(), "sweep of " + other.hull().id()
                    + " at " + SpaceWords.tilt(n.otherTilt()), other.falling().body(n.otherTilt(), n.otherSwing())));
            add(findings, PairingRule.SWEEPS_CROSS, one, worst, other.hull().id());
        }
    }

    /** Lines of a hull on its way down, without its wander, against lines and poles of another that stands or lies. */
    private static void cross(Worst worst, HullInSpace falls, HullInSpace other) {
        for (LinePath line : falls.rig().lines()) {
            String mine = line.part() + " of " + falls.hull().id();
            for (double tilt : new double[] {0, other.falling().restTilt()}) {
                for (LinePath there : rigged(other, tilt)) {
                    Convex sheet = there.sheet(tilt, 0);
                    worst.take(SweepInSpace.nearest(falls.rig(), line, sheet, 0, worst.reach()), line, mine,
                            there.part() + " of " + other.hull().id(), sheet);
                }
            }
            for (RigInSpace.Pole pole : other.rig().poles()) {
                Convex mast = Corners.between(pole.foot(), pole.head());
                worst.take(SweepInSpace.nearest(falls.rig(), line, mast, 0, worst.reach()), line, mine,
                        pole.part() + " of " + other.hull().id(), mast);
            }
        }
    }

    /** What a falling pole or a parted line can reach of another hull. */
    private void danger(List<Finding> findings, HullInSpace falls, StatesInTime.State state) {
        RigInSpace.Pole worst = null;
        double least = Double.POSITIVE_INFINITY;
        double reach = 0;
        for (RigInSpace.Pole pole : falls.rig().poles()) {
            double far = FALL_ZONE_HEIGHTS * pole.head().minus(pole.foot()).norm();
            double distance = Apart.of(new Corners(List.of(pole.foot())), state.body()).distance();
            if (distance < far - TOUCH && distance < least) {
                worst = pole;
                least = distance;
                reach = far;
            }
        }
        if (worst != null) {
            findings.add(Finding.of(PairingRule.POLE_FALL_ZONE, Finding.Level.WARN, falls.hull().id(),
                    Finding.Figures.of(least, reach, "m"), ("The %s of hull %s stands %s m from %s and can fall as far"
                    + " as %s m.").formatted(worst.part(), falls.hull().id(), SitePairs.number(least), state.words(),
                    SitePairs.number(reach))).with(state.id()).at(place(worst.foot())));
        }
        for (LinePath line : falls.rig().lines()) {
            for (double tilt : line.tilts(Math.PI / 12)) {
                Vec3 loaded = line.moving().at(tilt, 0);
                Vec3 held = line.fixed().at(tilt, 0);
                if (isStruck(loaded, held, state.body()) || isStruck(held, loaded, state.body())) {
                    String text = "At %s the %s of hull %s, if it parts, can strike %s.".formatted(
                            SpaceWords.tilt(tilt), line.part(), falls.hull().id(), state.words());
                    findings.add(Finding.of(PairingRule.SNAP_BACK, Finding.Level.NOTE, falls.hull().id(),
                            Finding.Figures.NONE, text).with(state.id()).at(place(state.body().middle())));
                    return;
                }
            }
        }
    }

    /** Whether a body reaches into the cone about a line, twice as long as the line. */
    private static boolean isStruck(Vec3 from, Vec3 to, Convex body) {
        Vec3 axis = to.minus(from);
        double length = SNAP_BACK_LENGTHS * axis.norm();
        if (!(length > 0)) {
            return false;
        }
        Vec3 way = axis.direction();
        Convex cone = new Convex() {
            @Override
            public Vec3 farthest(Vec3 direction) {
                Vec3 across = direction.minus(way.times(direction.dot(way)));
                double aside = across.norm();
                Vec3 rim = from.plus(way.times(length));
                Vec3 edge = aside > 1e-12 ? rim.plus(across.times(length * Math.tan(SNAP_BACK_HALF_ANGLE) / aside))
                        : rim;
                return edge.dot(direction) > from.dot(direction) ? edge : from;
            }

            @Override
            public Vec3 middle() {
                return from.plus(way.times(length / 2));
            }

            @Override
            public double reach() {
                return length;
            }
        };
        return cone.middle().minus(body.middle()).norm() < cone.reach() + body.reach()
                && Apart.of(cone, body).distance() < TOUCH;
    }

    /** Walls that stand while a hull is lowered; those that hold its own cover are built afterwards. */
    List<Finding> walls(HullInSpace falls, List<Wall> walls) {
        List<Finding> findings = new ArrayList<>();
        if (falls.hull().arrival() != Hull.Arrival.LOWERED) {
            return findings;
        }
        SweepInSpace swept = new SweepInSpace(falls.falling());
        for (Wall wall : walls) {
            Worst sweep = new Worst(falls.falling().margin(), 0);
            Worst lines = new Worst(GroundInSpace.LINE_AIR, 0);
            for (Convex piece : pieces(wall)) {
                sweep.take(swept.nearest(piece, sweep.reach()), null, "sweep of " + falls.hull().id(),
                        "wall " + wall.id(), piece);
                for (LinePath line : falls.rig().lines()) {
                    lines.take(SweepInSpace.nearest(falls.rig(), line, piece, falls.falling().wander(),
                            lines.reach()), line, line.part() + " of " + falls.hull().id(), "wall " + wall.id(), piece);
                }
            }
            add(findings, PairingRule.SWEEP_OVER_WALL, falls, sweep, wall.id());
            add(findings, PairingRule.LINE_NEAR_WALL, falls, lines, wall.id());
        }
        return findings;
    }

    /** A wall as boxes from the ground up; where the ground is not known, from the height of its bed. */
    private List<Convex> pieces(Wall wall) {
        List<Convex> pieces = new ArrayList<>();
        TrueMetres metres = ground.metres();
        for (int i = 0; i + 1 < wall.line().size(); i++) {
            Point a = wall.line().get(i);
            Point b = wall.line().get(i + 1);
            double length = metres.distance(a, b);
            int count = (int) Math.ceil(length / WALL_PIECE);
            Vec3 along = metres.at(new Point(b.east() - a.east(), b.north() - a.north()), 0);
            for (int k = 0; k < count; k++) {
                List<Vec3> corners = new ArrayList<>();
                for (int end = 0; end <= 1; end++) {
                    Vec3 on = metres.at(a, 0)
                            .plus(along.times((k + (double) end) / count));
                    Vec3 across = along.direction().cross(Vec3.UP).times(wall.thickness() / 2);
                    for (Vec3 foot : List.of(on.plus(across), on.minus(across))) {
                        double height = ground.height(foot);
                        double known = Double.isFinite(height) ? height : 0;
                        corners.add(foot.plus(Vec3.UP.times(known)));
                        corners.add(foot.plus(Vec3.UP.times(known + wall.height())));
                    }
                }
                pieces.add(new Corners(corners));
            }
        }
        return pieces;
    }

    /** Says the worst of a rule, where there is one; {@code others} are what else it is about. */
    void add(List<Finding> findings, PairingRule rule, HullInSpace falls, Worst worst, String... others) {
        if (worst.nearest == null) {
            return;
        }
        double distance = worst.nearest.apart().distance();
        boolean only = distance >= worst.limit - TOUCH;
        String at = SpaceWords.tilt(worst.nearest.tilt());
        String apart = distance > TOUCH ? "are %s m apart at %s".formatted(SitePairs.number(distance), at)
                : "meet at %s".formatted(at);
        String mine = Sentence.begin(worst.mine);
        String text = only ? ("%s and %s %s, but only %s m for some landings inside the dispersion; %s m required for"
                + " every landing (%s).").formatted(mine, worst.theirs, apart,
                SitePairs.number(Math.max(0, distance - worst.spread)), SitePairs.number(worst.limit), rule.id())
                : "%s and %s %s; %s m required in space.".formatted(mine, worst.theirs, apart,
                        SitePairs.number(worst.limit));
        text += height(worst);
        double measured = only ? Math.max(0, distance - worst.spread) : distance;
        String remedy = new Shift(falls, worst.line, worst.body, worst.nearest,
                worst.limit + (only ? worst.spread : 0)).words();
        findings.add(Finding.of(only ? PairingRule.LANDING_DISPERSION : rule, rule.entry().worst(),
                falls.hull().id(), Finding.Figures.of(measured, worst.limit, "m"), text)
                .with(only ? Stream.concat(Stream.of(others), Stream.of(rule.id())).toArray(String[]::new) : others)
                .at(place(worst.nearest.apart().there())).from(rule.entry().source())
                .todo((rule.entry().todo() + " " + remedy).strip()));
    }

    /** How high over the ground a line is where it comes nearest. */
    private String height(Worst worst) {
        Vec3 at = worst.nearest.apart().here();
        double over = at.z() - ground.height(at);
        return worst.line == null || !Double.isFinite(over) ? ""
                : " The line hangs %s m over the ground there.".formatted(SitePairs.number(Math.max(0, over)));
    }

    private Point place(Vec3 at) {
        return ground.metres().plan(at);
    }
}
