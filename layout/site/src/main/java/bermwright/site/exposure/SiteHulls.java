// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.shielding.cover.CoverThickness;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.EndCover;
import bermwright.shielding.cover.KeptClear;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.InnerWall;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Tunnel;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The hulls and tunnels of a plan as solids in true metres, where the ground under them is known. */
final class SiteHulls {
    /** How far a way out of an open end is kept free of every mound (m); our own planning figure. */
    private static final double LEAST_AHEAD = 0.1;
    private static final double CLEAR_AHEAD = 6;

    private final Plan plan;
    private final TrueMetres metres;
    private final ElevationGrid ground;
    private final Map<String, HullSolid> hulls = new LinkedHashMap<>();
    private final Map<String, HullSolid> tunnels = new LinkedHashMap<>();

    /** Places the hulls on the ground as it is when they come to lie, in the plan's projected frame. */
    SiteHulls(Plan plan, ElevationGrid prepared) {
        this.plan = plan;
        this.metres = prepared.metres();
        this.ground = metres.stretched(prepared);
        for (Hull hull : plan.hulls()) {
            pose(hull, prepared).ifPresent(pose -> hulls.put(hull.id(),
                    new HullSolid(hull.id(), shape(plan, hull), pose)));
        }
        for (Tunnel tunnel : plan.tunnels()) {
            tunnel(tunnel).ifPresent(solid -> tunnels.put(tunnel.id(), solid));
        }
    }

    private Optional<HullPose> pose(Hull hull, ElevationGrid prepared) {
        return hull.arrival() == Hull.Arrival.STAYS_UPRIGHT ? standing(hull) : lying(hull, prepared);
    }

    /**
     * The hull as it came down: on the ground before any work, where it is neither sunk nor lifted.
     *
     * @param hull    the hull
     * @param natural the ground before any work, in the plan's projected frame
     */
    Optional<HullPose> landed(Hull hull, ElevationGrid natural) {
        return hull.arrival() == Hull.Arrival.LANDS_LYING
                ? lying(hull.withSeat(Seat.usual(Seat.Kind.GROUND, 0, 0)), natural) : standing(hull);
    }

    private Optional<HullPose> lying(Hull hull, ElevationGrid on) {
        return LyingPose.of(hull, on).map(pose -> new HullPose(metres.stretched(pose.axisStart()),
                pose.direction(), pose.crown()));
    }

    /** The hull as it stood after landing, if the ground under it is known. */
    Optional<HullPose> standing(Hull hull) {
        Point foot = metres.stretched(hull.baseCentre());
        double height = ground.height(foot);
        return Double.isNaN(height) ? Optional.empty()
                : Optional.of(HullPose.upright(foot.at(height), hull.layDownAzimuth()));
    }

    static HullShape shape(Plan plan, Hull hull) {
        return new HullShape(hull.length(), hull.radius(), end(hull.baseEnd()), end(hull.farEnd()),
                hull.skinArealDensity(), hull.stowage().stream().map(s -> new InnerWall(s.fromAlong(), s.toAlong(),
                        s.fromAround(), s.toAround(), DoseSources.asSkin(plan, hull, s))).toList());
    }

    private static HullEnd end(Hull.End end) {
        return end.shape() == Hull.Shape.FLAT || !(end.depth() > 0) ? HullEnd.FLAT
                : end.shape() == Hull.Shape.DOME ? HullEnd.dome(end.depth()) : HullEnd.cone(end.depth());
    }

    private Optional<HullSolid> tunnel(Tunnel tunnel) {
        Optional<Vec3> from = mouth(tunnel.from());
        Optional<Vec3> to = mouth(tunnel.to());
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        Vec3 way = to.get().minus(from.get());
        if (!(way.norm() > 1e-3)) {
            return Optional.empty();
        }
        Vec3 axis = way.direction();
        Vec3 side = Math.abs(axis.z()) < 0.99 ? Vec3.UP : new Vec3(1, 0, 0);
        Vec3 crown = side.minus(axis.times(axis.dot(side))).direction();
        double skin = tunnel.skin().stream().mapToDouble(Hull.SkinLayer::arealDensity).sum();
        // A little into both hulls, so that no film of soil or skin stays between.
        double into = 0.05;
        return Optional.of(new HullSolid(tunnel.id(), new HullShape(way.norm() + 2 * into, tunnel.diameter() / 2,
                HullEnd.FLAT, HullEnd.FLAT, skin),
                new HullPose(from.get().minus(axis.times(into)), axis, crown)));
    }

    private Optional<Vec3> mouth(String name) {
        HatchName named = HatchName.of(name);
        return Optional.ofNullable(hulls.get(named.hull())).flatMap(solid -> named.hullIn(plan)
                .flatMap(h -> named.hatchOf(h).map(hatch -> middle(solid, h, hatch))));
    }

    /** The middle of a hatch, in true metres. */
    static Vec3 middle(HullSolid solid, Hull hull, Hatch hatch) {
        double up = Math.max(-hull.radius(), Math.min(hull.radius(),
                hatch.sill() + hatch.height() / 2 - hull.radius()));
        if (hatch.end() == Hatch.End.SIDE) {
            return solid.skin(Math.max(0, Math.min(hull.length(), hatch.along())), hatch.around());
        }
        return solid.pose().point(hatch.end() == Hatch.End.BASE ? 0 : hull.length(), 0, up);
    }

    /** The covers that the plan asks for, tunnels between covered hulls included. */
    List<CoveredHull> covered() {
        List<CoveredHull> covered = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            HullSolid solid = hulls.get(hull.id());
            if (solid != null && hull.cover().isPresent()) {
                covered.add(covered(solid, hull.cover().get()));
            }
        }
        for (Tunnel tunnel : plan.tunnels()) {
            HullSolid solid = tunnels.get(tunnel.id());
            double thickness = Math.min(thicknessOf(tunnel.from()), thicknessOf(tunnel.to()));
            if (solid != null && thickness > 0) {
                covered.add(CoveredHull.uniform(solid, thickness));
            }
        }
        return covered;
    }

    private double thicknessOf(String mouth) {
        return HatchName.of(mouth).hullIn(plan).flatMap(Hull::cover).map(CoverPlan::crownThickness).orElse(0.0);
    }

    static CoveredHull covered(HullSolid solid, CoverPlan cover) {
        return new CoveredHull(solid, new CoverThickness(cover.crownThickness(), cover.flankThickness(),
                cover.baseThickness(), cover.farThickness()), end(cover.baseEnd()), end(cover.farEnd()),
                cover.crownWidth());
    }

    private static EndCover end(CoverPlan.End end) {
        return end == CoverPlan.End.COVERED ? EndCover.COVERED
                : end == CoverPlan.End.OPEN ? EndCover.OPEN : EndCover.HELD;
    }

    /** Strips that no mound may close: ahead of hatches in open ends, and around what is to be kept clear. */
    List<KeptClear> keptClear(Set<String> closed) {
        List<KeptClear> strips = new ArrayList<>(new PassThroughs(plan, this).strips());
        for (Hull hull : plan.hulls()) {
            HullSolid solid = hulls.get(hull.id());
            if (solid == null || hull.cover().isEmpty() || closed.contains(hull.id())) {
                continue;
            }
            for (Hatch hatch : hull.hatches()) {
                if (isEndOpen(hull.cover().get(), hatch) && !isTunnelled(HatchName.of(hull, hatch).toString())) {
                    Point at = middle(solid, hull, hatch).plan();
                    double sign = hatch.end() == Hatch.End.BASE ? -1 : 1;
                    Vec3 axis = solid.pose().axis().times(sign * CLEAR_AHEAD);
                    if (Math.hypot(axis.x(), axis.y()) < LEAST_AHEAD) {
                        // The end of a hull that stands looks up or down: no way leads over the ground ahead of it.
                        continue;
                    }
                    strips.add(new KeptClear(at, new Point(at.east() + axis.x(), at.north() + axis.y()),
                            hatch.width()));
                }
            }
        }
        return strips;
    }

    private static boolean isEndOpen(CoverPlan cover, Hatch hatch) {
        return hatch.end() == Hatch.End.BASE && cover.baseEnd() == CoverPlan.End.OPEN
                || hatch.end() == Hatch.End.FAR && cover.farEnd() == CoverPlan.End.OPEN;
    }

    boolean isTunnelled(String mouth) {
        return plan.tunnels().stream().anyMatch(t -> t.from().equals(mouth) || t.to().equals(mouth));
    }

    Optional<HullSolid> hull(String id) {
        return Optional.ofNullable(hulls.get(id));
    }

    List<HullSolid> solids() {
        List<HullSolid> all = new ArrayList<>(hulls.values());
        all.addAll(tunnels.values());
        return all;
    }

    /** All solids and the open shafts and pipes that lead from them through a surface in true metres. */
    List<HullSolid> solidsUnder(ElevationGrid surface) {
        List<HullSolid> all = new ArrayList<>(solids());
        all.addAll(new PassThroughs(plan, this).voids(surface));
        return all;
    }

    /** Hulls alone, without tunnels. */
    List<HullSolid> hullSolids() {
        return List.copyOf(hulls.values());
    }

    ElevationGrid ground() {
        return ground;
    }

    TrueMetres metres() {
        return metres;
    }
}
