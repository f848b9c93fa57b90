// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.site.footprint.HatchPlace;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Tunnel;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Distances, overlaps, sweeps and the ground under the hulls, answered in findings.
 *
 * <p>An instance remembers what it found, so that after a change only the changed hulls are looked at again on the
 * ground; a drag can be followed frame by frame. Instances never change and are safe to share between threads.
 */
public final class Clearance {
    /** Highest thing under a belly that needs no care (m): obstacle height for wheeled traffic, from memory. */
    public static final double BELLY_ALLOWANCE = 0.3;
    /** Steepest ground on which gear is set by hand (rad): regarded safe for suited crew, secondary source. */
    public static final double GEAR_SLOPE = Math.toRadians(15);

    private final Optional<ElevationGrid> ground;
    private final Plan plan;
    private final Map<Object, OutlinedGroup> groups = new IdentityHashMap<>();
    private final Map<HullShapes, List<Finding>> onGround = new IdentityHashMap<>();
    private final Map<Pair, List<Finding>> apart = new HashMap<>();
    private final SpaceOfSite space;
    private final List<Finding> findings;

    private record Pair(OutlinedGroup first, OutlinedGroup second) {
    }

    private Clearance(SiteShapes shapes, Optional<ElevationGrid> ground, Map<String, ElevationGrid> mounds,
            Optional<Clearance> before) {
        this.ground = ground;
        this.plan = shapes.plan();
        Optional<Clearance> known = before.filter(b -> b.isOnSameSite(shapes.plan()));
        this.space = new SpaceOfSite(shapes, ground, mounds, known.map(k -> k.space));
        List<Finding> all = new ArrayList<>(withoutGround(shapes));
        for (HullShapes hull : shapes.hulls()) {
            ground.ifPresent(g -> onGround.put(hull, known.map(k -> k.onGround.get(hull))
                    .orElseGet(() -> HullGround.check(plan, hull, g))));
            all.addAll(onGround.getOrDefault(hull, List.of()));
        }
        all.addAll(space.findings());
        ground.ifPresent(g -> all.addAll(CorridorGrade.check(plan, g)));
        List<OutlinedGroup> parts = new ArrayList<>();
        parts.add(group(shapes.site(), shapes.site(), known));
        shapes.hulls().forEach(h -> parts.add(group(h, h.shapes(), known)));
        SitePairs pairs = new SitePairs(plan, shapes.metres(), space.mounds());
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i; j < parts.size(); j++) {
                Pair pair = new Pair(parts.get(i), parts.get(j));
                apart.put(pair, known.map(k -> k.apart.get(pair))
                        .orElseGet(() -> space.withHeights(pairs.compare(pair.first, pair.second))));
                all.addAll(apart.get(pair));
            }
            all.addAll(pairs.pads(parts.get(i)));
            all.addAll(crossing(parts.get(i)));
        }
        this.findings = Numbered.worstFirst(all);
    }

    private OutlinedGroup group(Object owner, List<Shape> shapes, Optional<Clearance> known) {
        OutlinedGroup group = known.map(k -> k.groups.get(owner)).orElseGet(() -> new OutlinedGroup(shapes));
        groups.put(owner, group);
        return group;
    }

    /**
     * Checks a site and remembers how.
     *
     * @param shapes outlines of the site
     * @param ground the ground as it is at that moment; without it nothing about the ground is said
     * @return the check
     */
    public static Clearance of(SiteShapes shapes, Optional<ElevationGrid> ground) {
        return of(shapes, ground, Map.of());
    }

    /**
     * Checks a site with the finished covers on it and remembers how.
     *
     * @param shapes outlines of the site
     * @param ground the ground as it is at that moment; without it nothing about the ground is said
     * @param mounds the ground with the finished cover of a hull on it, by the hull's id, on the same grid; covers of
     *               other hulls are known by their toes alone
     * @return the check
     */
    public static Clearance of(SiteShapes shapes, Optional<ElevationGrid> ground,
            Map<String, ElevationGrid> mounds) {
        return new Clearance(shapes, ground, mounds, Optional.empty());
    }

    /**
     * Checks a changed site on the same ground, looking only at what changed where that is enough.
     *
     * @param changed outlines of the changed site, made by {@link SiteShapes#withPlan}
     * @return the check of the changed site
     */
    Clearance with(SiteShapes changed) {
        return with(changed, space.covers());
    }

    /**
     * Checks a changed site with other covers on the same ground.
     *
     * @param changed outlines of the changed site, made by {@link SiteShapes#withPlan}
     * @param mounds  the ground with the finished cover of a hull on it, by the hull's id
     * @return the check of the changed site
     */
    public Clearance with(SiteShapes changed, Map<String, ElevationGrid> mounds) {
        return new Clearance(changed, ground, mounds, Optional.of(this));
    }

    /**
     * What was found.
     *
     * @return the findings, the worst first
     */
    public List<Finding> findings() {
        return findings;
    }

    /** Whether only hulls differ. */
    private boolean isOnSameSite(Plan other) {
        return plan.withHulls(List.of()).equals(other.withHulls(List.of()));
    }

    private static List<Finding> withoutGround(SiteShapes shapes) {
        Plan plan = shapes.plan();
        List<Finding> all = new ArrayList<>();
        if (plan.hulls().isEmpty()) {
            all.add(Finding.of(SiteRule.NO_HULL, Finding.Level.REFUSE, "plan", Finding.Figures.NONE,
                    "The plan has no hull; there is nothing to lay down or to cover."));
        }
        for (Hull hull : plan.hulls()) {
            landing(all, plan, hull);
            clocking(hull).ifPresent(all::add);
        }
        all.addAll(LandingReach.tunnels(plan, shapes.metres()));
        for (Tunnel tunnel : plan.tunnels()) {
            for (String end : List.of(tunnel.from(), tunnel.to())) {
                if (HatchPlace.of(plan, end, shapes.metres()).isEmpty()) {
                    all.add(Finding.of(SiteRule.TUNNEL_END_UNKNOWN, Finding.Level.REFUSE, tunnel.id(),
                            Finding.Figures.NONE,
                            "Tunnel %s ends at %s, but the plan has no such hatch.".formatted(tunnel.id(), end)));
                }
            }
        }
        return all;
    }

    /** Says that the turn of a body moves nothing, so that nobody counts on it. */
    private static Optional<Finding> clocking(Hull hull) {
        double turn = Math.toDegrees(hull.placement().clocking());
        return turn == 0 ? Optional.empty() : Optional.of(Finding.of(SiteRule.CLOCKING_TURNS_NOTHING,
                Finding.Level.WARN, hull.id(), Finding.Figures.of(turn, 0, "deg"), ("clocking_deg of hull %s is %s, and"
                        + " nothing is turned by it: its hatches, stations, lugs and pass-throughs are taken to lie"
                        + " where the plan states them, from the crown of the lying hull.").formatted(hull.id(),
                        SitePairs.number(turn))).at(hull.baseCentre()));
    }

    private static void landing(List<Finding> all, Plan plan, Hull hull) {
        Optional<String> named = hull.lowering().flatMap(g -> g.landing()).flatMap(l -> l.pad());
        if (named.isEmpty()) {
            return;
        }
        Optional<LandingPad> pad = plan.landingPads().stream().filter(p -> p.id().equals(named.get())).findFirst();
        if (pad.isEmpty()) {
            all.add(Finding.of(SiteRule.LANDING_PAD_UNKNOWN, Finding.Level.REFUSE, hull.id(), Finding.Figures.NONE,
                    "Hull %s lands on pad %s, but the plan has no such pad.".formatted(hull.id(), named.get()))
                    .at(hull.baseCentre()));
            return;
        }
        double reach = hull.baseCentre().distance(pad.get().centre()) + hull.landingDispersion();
        if (reach > pad.get().radius()) {
            all.add(Finding.of(SiteRule.LANDING_OFF_PAD, Finding.Level.WARN, hull.id(),
                    Finding.Figures.of(reach, pad.get().radius(), "m"),
                    ("Hull %s may land up to %s m from the centre of pad %s, which is %s m in"
                            + " radius.").formatted(hull.id(), SitePairs.number(reach), pad.get().id(),
                    SitePairs.number(pad.get().radius()))).at(hull.baseCentre()).todo(
                            "Widen the pad to a radius of %s m or land more exactly.".formatted(
                                    SitePairs.number(reach))));
        }
    }

    private static List<Finding> crossing(OutlinedGroup group) {
        List<Finding> all = new ArrayList<>();
        for (Outlined one : group.outlines()) {
            if (one.crossesItself()) {
                Point at = one.shape().outline().corners().get(0);
                all.add(Finding.of(SiteRule.OUTLINE_CROSSES_ITSELF, Finding.Level.REFUSE, one.shape().subject(),
                        Finding.Figures.NONE, "The outline of the %s crosses itself; it was mended for the checks."
                        .formatted(one.shape().title())).at(at));
            }
        }
        return all;
    }
}
