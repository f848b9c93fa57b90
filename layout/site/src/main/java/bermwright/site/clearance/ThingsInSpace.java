// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stockpile;
import bermwright.site.plan.Tunnel;
import bermwright.site.space.Apart;
import bermwright.site.space.Convex;
import bermwright.site.space.Corners;
import bermwright.site.space.GroundBelow;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.LinePath;
import bermwright.site.space.Revolved;
import bermwright.site.space.SweepInSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Keep-outs, stockpiles and tunnels against what falls, hangs and lies over them, in space; and how high lines hang
 * over corridors.
 *
 * <p>A keep-out stands as high as the plan says, else without end. A stockpile stands no higher than its soil can: half
 * the width of its area at the stable slope.
 */
final class ThingsInSpace {
    private static final double ENDLESS = 500;
    private static final double BELOW = 20;
    private static final double SAMPLE = 2;
    private static final int TUNNEL_CORNERS = 12;
    private static final double LINE_STEP = 1;
    private static final double TILT_STEP = Math.toRadians(5);

    private final Plan plan;
    private final GroundBelow ground;
    private final SpacePairs pairs;
    private final List<Thing> areas = new ArrayList<>();

    ThingsInSpace(Plan plan, GroundBelow ground, SpacePairs pairs) {
        this.plan = plan;
        this.ground = ground;
        this.pairs = pairs;
        for (KeepOut keepOut : plan.keepOuts()) {
            areas.add(new Thing(keepOut.id(), "keep-out " + keepOut.id() + " (" + keepOut.kind()
                    + (keepOut.height().isPresent() ? ")" : ", whose height the plan does not state)"),
                    prisms(keepOut.area(), keepOut.height().orElse(ENDLESS)), PairingRule.KEEP_OUT,
                    PairingRule.KEEP_OUT));
        }
        for (Stockpile pile : plan.stockpiles()) {
            double height = ground.metres().length(Outlined.halfWidth(pile.area()))
                    * Math.tan(plan.ground().regolith().stableSlope());
            areas.add(new Thing(pile.id(), "stockpile " + pile.id(), prisms(pile.area(), height),
                    PairingRule.SWEEP_OVER_COVER, PairingRule.LINE_NEAR_STOCKPILE));
        }
    }

    /** Something on the site in convex pieces. */
    private record Thing(String id, String words, List<Convex> pieces, PairingRule sweepRule, PairingRule lineRule) {
    }

    /** An area from below the ground up to a height over it. */
    private List<Convex> prisms(Ring area, double height) {
        List<Convex> pieces = new ArrayList<>();
        for (List<Point> triangle : Outlined.triangles(area)) {
            List<Vec3> feet = triangle.stream().map(p -> onGround(ground.metres().at(p, 0))).toList();
            double lift = lift(feet);
            List<Vec3> corners = new ArrayList<>();
            for (Vec3 foot : feet) {
                corners.add(foot.minus(Vec3.UP.times(BELOW)));
                corners.add(foot.plus(Vec3.UP.times(height + lift)));
            }
            pieces.add(new Corners(corners));
        }
        return pieces;
    }

    private Vec3 onGround(Vec3 place) {
        double height = ground.height(place);
        return new Vec3(place.x(), place.y(), Double.isFinite(height) ? height : 0);
    }

    /** How far the ground inside a triangle stands over the plane of its corners. */
    private double lift(List<Vec3> feet) {
        Vec3 a = feet.get(0);
        Vec3 ab = feet.get(1).minus(a);
        Vec3 ac = feet.get(2).minus(a);
        int steps = (int) Math.max(1, Math.min(60, Math.ceil(Math.max(ab.norm(), ac.norm()) / SAMPLE)));
        double most = 0;
        for (int i = 0; i <= steps; i++) {
            for (int j = 0; j <= steps - i; j++) {
                Vec3 at = a.plus(ab.times((double) i / steps)).plus(ac.times((double) j / steps));
                double over = ground.height(at) - at.z();
                most = over > most ? over : most;
            }
        }
        return most;
    }

    /** One hull on its way down against all keep-outs and stockpiles. */
    List<Finding> areas(HullInSpace falls) {
        List<Finding> findings = new ArrayList<>();
        if (falls.hull().arrival() == Hull.Arrival.LOWERED) {
            areas.forEach(thing -> falling(findings, falls, thing));
        }
        return findings;
    }

    private void falling(List<Finding> findings, HullInSpace falls, Thing thing) {
        boolean every = thing.sweepRule.entry().worst() == Finding.Level.REFUSE;
        double spread = every ? falls.hull().landingDispersion() : 0;
        SpacePairs.Worst sweep = new SpacePairs.Worst(falls.falling().margin(), spread);
        SpacePairs.Worst lines = new SpacePairs.Worst(GroundInSpace.LINE_AIR, spread);
        SweepInSpace swept = new SweepInSpace(falls.falling());
        for (Convex piece : thing.pieces) {
            sweep.take(swept.nearest(piece, sweep.reach()), null, "sweep of " + falls.hull().id(), thing.words, piece);
            for (LinePath line : falls.rig().lines()) {
                lines.take(SweepInSpace.nearest(falls.rig(), line, piece, falls.falling().wander(), lines.reach()),
                        line, line.part() + " of " + falls.hull().id(), thing.words, piece);
            }
        }
        pairs.add(findings, thing.sweepRule, falls, sweep, thing.id);
        pairs.add(findings, thing.lineRule, falls, lines, thing.id, "lines");
    }

    /** One hull, falling and as it stands and lies, against the tunnels that do not join it. */
    List<Finding> tunnels(HullInSpace one, Map<String, HullInSpace> hulls) {
        List<Finding> findings = new ArrayList<>();
        for (Tunnel tunnel : plan.tunnels()) {
            String id = one.hull().id();
            Optional<Vec3> from = mouth(tunnel.from(), hulls);
            Optional<Vec3> to = mouth(tunnel.to(), hulls);
            if (from.isEmpty() || to.isEmpty() || HatchName.of(tunnel.from()).hull().equals(id)
                    || HatchName.of(tunnel.to()).hull().equals(id)) {
                continue;
            }
            Thing thing = new Thing(tunnel.id(), "tunnel " + tunnel.id(),
                    List.of(tube(from.get(), to.get(), tunnel.diameter() / 2)), PairingRule.SWEEP_OVER_TUNNEL,
                    PairingRule.LINE_NEAR_TUNNEL);
            if (one.hull().arrival() == Hull.Arrival.LOWERED) {
                falling(findings, one, thing);
            }
            through(findings, one, thing);
        }
        return findings;
    }

    private void through(List<Finding> findings, HullInSpace one, Thing tunnel) {
        for (boolean up : new boolean[] {true, false}) {
            Optional<Revolved> body = up ? one.standing() : one.lying();
            if (body.isEmpty()) {
                continue;
            }
            Apart apart = Apart.of(tunnel.pieces.get(0), body.get());
            double spread = one.hull().landingDispersion();
            if (apart.distance() < SpacePairs.TOUCH) {
                findings.add(Finding.of(PairingRule.TUNNEL_THROUGH_HULL, Finding.Level.REFUSE, tunnel.id,
                        Finding.Figures.of(0, 0, "m"), String.format(Locale.ROOT, "Tunnel %s runs through %s hull %s.",
                        tunnel.id, up ? "standing" : "lying", one.hull().id())).with(one.hull().id())
                        .at(ground.metres().plan(apart.there()))
                        .from(PairingRule.TUNNEL_THROUGH_HULL.entry().source())
                        .todo(PairingRule.TUNNEL_THROUGH_HULL.entry().todo()));
                return;
            } else if (apart.distance() < spread) {
                findings.add(Finding.of(PairingRule.LANDING_DISPERSION, Finding.Level.REFUSE, tunnel.id,
                        Finding.Figures.of(apart.distance(), spread, "m"), String.format(Locale.ROOT, "Tunnel %s and %s"
                        + " hull %s are %s m apart and landings inside the dispersion can bring them %s m nearer"
                        + " (%s).", tunnel.id, up ? "standing" : "lying", one.hull().id(),
                        SitePairs.number(apart.distance()), SitePairs.number(spread),
                        PairingRule.TUNNEL_THROUGH_HULL.id())).with(one.hull().id(),
                        PairingRule.TUNNEL_THROUGH_HULL.id()).at(ground.metres().plan(apart.there())));
                return;
            }
        }
    }

    /** The middle of a hatch in space, where its hull has come to lie or stands. */
    private Optional<Vec3> mouth(String name, Map<String, HullInSpace> hulls) {
        HatchName named = HatchName.of(name);
        HullInSpace in = hulls.get(named.hull());
        return in == null ? Optional.empty() : named.hatchOf(in.hull()).flatMap(hatch -> in.lying().or(in::standing)
                .map(body -> mouth(in.hull(), hatch, body)));
    }

    private static Vec3 mouth(Hull hull, Hatch hatch, Revolved body) {
        Azimuth way = hull.layDownAzimuth();
        Vec3 axis = body.onAxis(1).minus(body.base());
        Vec3 level = new Vec3(way.east(), way.north(), 0);
        Vec3 crown = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT ? level.times(-1)
                : Vec3.UP.minus(axis.times(axis.z())).direction();
        Vec3 left = crown.cross(axis);
        Vec3 on = body.onAxis(HatchPlace.along(hull, hatch));
        if (hatch.end() == Hatch.End.SIDE) {
            return on.plus(left.times(hull.radius() * Math.sin(hatch.around())))
                    .plus(crown.times(hull.radius() * Math.cos(hatch.around())));
        }
        double up = hatch.sill() + hatch.height() / 2 - hull.radius();
        return on.plus(crown.times(Math.max(-hull.radius(), Math.min(hull.radius(), up))));
    }

    /** A straight tube, its section a polygon around the circle. */
    private static Convex tube(Vec3 from, Vec3 to, double radius) {
        Vec3 way = to.minus(from).norm() > 0 ? to.minus(from).direction() : new Vec3(1, 0, 0);
        Vec3 side = Math.abs(way.z()) < 0.9 ? Vec3.UP.cross(way).direction() : new Vec3(1, 0, 0).cross(way).direction();
        Vec3 over = way.cross(side);
        List<Vec3> corners = new ArrayList<>();
        double out = radius / Math.cos(Math.PI / TUNNEL_CORNERS);
        for (int i = 0; i < TUNNEL_CORNERS; i++) {
            double turn = 2 * Math.PI * i / TUNNEL_CORNERS;
            Vec3 off = side.times(out * Math.cos(turn)).plus(over.times(out * Math.sin(turn)));
            corners.add(from.plus(off));
            corners.add(to.plus(off));
        }
        return new Corners(corners);
    }

    /** A finding on a corridor that gear closes, with how high the lines hang over it. */
    Finding withHeight(Finding found, Map<String, HullInSpace> hulls) {
        HullInSpace hull = hulls.get(found.subject());
        if (found.rule() != PairingRule.CORRIDOR_CLOSED || hull == null
                || hull.hull().arrival() != Hull.Arrival.LOWERED) {
            return found;
        }
        Optional<Corridor> way = plan.corridors().stream().filter(c -> found.parts().contains(c.id())).findFirst();
        return way.map(w -> lowest(w, hull).map(low -> new Finding(found.rule(), found.level(), found.subject(),
                found.parts(), found.figures(), found.place(), found.source(), found.text() + low, found.todo()))
                .orElse(found)).orElse(found);
    }

    /** The lowest place of a hull's lines over a corridor, in words; nothing where none hangs over it. */
    private Optional<String> lowest(Corridor way, HullInSpace hull) {
        double least = Double.POSITIVE_INFINITY;
        String where = "";
        for (LinePath line : hull.rig().lines()) {
            for (double tilt : line.tilts(TILT_STEP)) {
                int steps = (int) Math.max(1, Math.ceil(line.chord(tilt, 0) / LINE_STEP));
                for (int i = 0; i <= steps; i++) {
                    Vec3 at = line.point((double) i / steps, tilt, 0);
                    double over = at.z() - ground.height(at);
                    if (over < least && isOver(way, ground.metres().plan(at))) {
                        least = over;
                        where = String.format(Locale.ROOT, " Over the way the %s hangs %s m over the ground at the"
                                + " least, at %s.", line.part(), SitePairs.number(Math.max(0, over)),
                                SpaceWords.tilt(tilt));
                    }
                }
            }
        }
        return least < Double.POSITIVE_INFINITY ? Optional.of(where) : Optional.empty();
    }

    private boolean isOver(Corridor way, Point place) {
        for (int i = 0; i + 1 < way.line().size(); i++) {
            if (ground.metres().length(Outlined.distance(place, way.line().get(i), way.line().get(i + 1)))
                    <= way.width() / 2) {
                return true;
            }
        }
        return false;
    }
}
