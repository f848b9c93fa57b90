// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything on the site as outlines, in projected metres: what checks compare and what pages and editor draw.
 *
 * <p>Sizes in a plan are true metres; they are brought onto the plan with the ground's metre scale. Outlines lie on
 * whole millimetres. The standing body is drawn as on level ground; only the sweep follows the lean of the ground.
 */
public final class SiteShapes {
    private final Plan plan;
    private final Optional<ElevationGrid> ground;
    private final Map<String, List<Ring>> coverToes;
    private final List<HullShapes> hulls;
    private final List<Shape> site;

    private SiteShapes(Plan plan, Optional<ElevationGrid> ground, Map<String, List<Ring>> coverToes,
            Optional<SiteShapes> before) {
        this.plan = plan;
        this.ground = ground;
        this.coverToes = Map.copyOf(coverToes);
        Map<Hull, HullShapes> byHull = new IdentityHashMap<>();
        before.ifPresent(b -> b.keeping(plan, coverToes).forEach(h -> byHull.put(h.hull(), h)));
        this.hulls = plan.hulls().stream().map(h -> byHull.containsKey(h) ? byHull.get(h) : shapes(h)).toList();
        this.site = before.filter(b -> b.hasSameSite(plan)).map(b -> b.site).orElseGet(() -> site(plan));
    }

    /**
     * The outlines of a plan.
     *
     * @param plan      the plan
     * @param ground    the ground; without it sizes are taken as projected metres and the ground as level
     * @param coverToes toes of the covers by hull id; hulls without a known toe are left out
     * @return the outlines
     */
    public static SiteShapes of(Plan plan, Optional<ElevationGrid> ground, Map<String, List<Ring>> coverToes) {
        return new SiteShapes(plan, ground, coverToes, Optional.empty());
    }

    /**
     * The outlines of a changed plan on the same ground; hulls that are the very same objects keep theirs, so that
     * dragging one hull of many costs one hull.
     *
     * @param changed the changed plan
     * @param toes    toes of the covers by hull id, as they are now; a hull kept keeps its earlier toe
     * @return the outlines
     */
    public SiteShapes withPlan(Plan changed, Map<String, List<Ring>> toes) {
        return new SiteShapes(changed, ground, toes, Optional.of(this));
    }

    private List<HullShapes> keeping(Plan changed, Map<String, List<Ring>> toes) {
        boolean sameSoil = changed.ground().regolith().frictionAngle() == plan.ground().regolith().frictionAngle();
        return hulls.stream().filter(h -> sameSoil && sameToes(coverToes, toes, h.hull().id())).toList();
    }

    /** Whether what belongs to no hull is the same; tunnels follow the hulls. */
    private boolean hasSameSite(Plan changed) {
        return changed.tunnels().isEmpty() && plan.withHulls(List.of()).equals(changed.withHulls(List.of()));
    }

    private static boolean sameToes(Map<String, List<Ring>> before, Map<String, List<Ring>> now, String hull) {
        return before.getOrDefault(hull, List.of()).equals(now.getOrDefault(hull, List.of()));
    }

    /**
     * The plan they were made from.
     *
     * @return the plan
     */
    public Plan plan() {
        return plan;
    }

    /**
     * The hulls' outlines.
     *
     * @return one entry for each hull, in the plan's order
     */
    public List<HullShapes> hulls() {
        return hulls;
    }

    /**
     * The outlines of one hull.
     *
     * @param id the hull's id
     * @return its outlines, empty where no hull has that id
     */
    public Optional<HullShapes> hull(String id) {
        return hulls.stream().filter(h -> h.hull().id().equals(id)).findFirst();
    }

    /**
     * Everything that belongs to no hull.
     *
     * @return keep-outs, corridors, pads, walls, tunnels, borrow grounds, stockpiles and preparations
     */
    public List<Shape> site() {
        return site;
    }

    /**
     * All outlines.
     *
     * @return those of the site, then those of the hulls
     */
    public List<Shape> all() {
        return Stream.concat(site.stream(), hulls.stream().flatMap(h -> h.shapes().stream())).toList();
    }

    /**
     * True metres against those of the plan.
     *
     * @return those of the ground; the same where there is none
     */
    public TrueMetres metres() {
        return ground.map(ElevationGrid::metres).orElse(TrueMetres.SAME);
    }

    private HullShapes shapes(Hull hull) {
        LayDownFrame frame = LayDownFrame.of(hull, metres());
        List<Shape> shapes = new ArrayList<>();
        Ring standing = LayDownFrame.bodyCircle(hull.baseCentre(), metres().onPlan(hull.radius()));
        Ring lying = BodyOutline.lying(hull, frame);
        HullShapes.Lean lean = HullShapes.Lean.NONE;
        if (hull.arrival() != Hull.Arrival.LANDS_LYING) {
            shapes.add(new Shape(ShapeKind.STANDING, hull.id(), "", standing));
        }
        if (hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
            shapes.add(new Shape(ShapeKind.LYING, hull.id(), "", lying));
        }
        if (hull.arrival() == Hull.Arrival.LOWERED) {
            lean = lean(hull, hull.bed(metres()));
            shapes.add(new Shape(ShapeKind.SWEEP, hull.id(), "", BodyOutline.sweep(hull, frame, lean)));
        }
        if (hull.landingDispersion() > 0) {
            shapes.add(new Shape(ShapeKind.LANDING, hull.id(), "", LayDownFrame.circle(hull.baseCentre(),
                    metres().onPlan(hull.landingDispersion() + hull.radius()))));
        }
        shapes.addAll(GearOutline.of(hull, frame, plan.ground().regolith().frictionAngle()));
        shapes.addAll(PassOutline.of(hull, frame));
        for (Ring toe : coverToes.getOrDefault(hull.id(), List.of())) {
            shapes.add(new Shape(ShapeKind.COVER_TOE, hull.id(), "", toe));
        }
        return new HullShapes(hull, lean, shapes);
    }

    private HullShapes.Lean lean(Hull hull, Ring bed) {
        if (ground.isEmpty() || ground.get().isMissing(bed)) {
            return HullShapes.Lean.NONE;
        }
        Optional<FittedPlane> plane = ground.get().fittedPlane(bed);
        return plane.map(p -> new HullShapes.Lean(p.slopeAlong(hull.layDownAzimuth()),
                p.slopeAcross(hull.layDownAzimuth()))).orElse(HullShapes.Lean.NONE);
    }

    private List<Shape> site(Plan from) {
        List<Shape> shapes = new ArrayList<>();
        from.keepOuts().forEach(k -> shapes.add(new Shape(ShapeKind.KEEP_OUT, k.id(), k.kind(), k.area())));
        from.corridors().forEach(c -> corridor(shapes, c));
        from.landingPads().forEach(p -> {
            shapes.add(new Shape(ShapeKind.PAD, p.id(), "", LayDownFrame.circle(p.centre(),
                    metres().onPlan(p.radius()))));
            if (p.standOff() > 0) {
                shapes.add(new Shape(ShapeKind.PAD_STAND_OFF, p.id(), "", LayDownFrame.circle(p.centre(),
                        metres().onPlan(p.standOff()))));
            }
        });
        from.walls().forEach(w -> wall(shapes, w));
        from.tunnels().forEach(t -> tunnel(shapes, from, t));
        from.preparations().forEach(p -> shapes.add(new Shape(ShapeKind.PREPARATION, p.id(), p.kind().word(),
                p.area())));
        from.borrowGrounds().forEach(b -> shapes.add(new Shape(ShapeKind.BORROW, b.id(), "", b.area())));
        from.stockpiles().forEach(s -> shapes.add(new Shape(ShapeKind.STOCKPILE, s.id(), "", s.area())));
        return List.copyOf(shapes);
    }

    private void corridor(List<Shape> shapes, Corridor corridor) {
        stretches(shapes, ShapeKind.CORRIDOR, corridor.id(), corridor.line(), corridor.width() / 2);
    }

    private void wall(List<Shape> shapes, Wall wall) {
        stretches(shapes, ShapeKind.WALL, wall.id(), wall.line(), wall.thickness() / 2);
    }

    private void stretches(List<Shape> shapes, ShapeKind kind, String id, List<Point> line, double half) {
        for (int i = 0; i + 1 < line.size(); i++) {
            String part = line.size() > 2 ? "stretch " + (i + 1) : "";
            shapes.add(new Shape(kind, id, part,
                    PlanGeometry.widenedHull(line.subList(i, i + 2), metres().onPlan(half))));
        }
    }

    private void tunnel(List<Shape> shapes, Plan from, Tunnel tunnel) {
        Optional<Point> start = HatchPlace.of(from, tunnel.from(), metres());
        Optional<Point> end = HatchPlace.of(from, tunnel.to(), metres());
        if (start.isPresent() && end.isPresent() && start.get().distance(end.get()) > 0) {
            stretches(shapes, ShapeKind.TUNNEL, tunnel.id(), List.of(start.get(), end.get()), tunnel.diameter() / 2);
        }
    }
}
