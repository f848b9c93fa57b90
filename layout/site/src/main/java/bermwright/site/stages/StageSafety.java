// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.clearance.LiveClearance;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.plan.WorkStep;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether a hull can be lowered on the site as it then is, and whether machines keep out of its dangers meanwhile.
 */
final class StageSafety {
    private static final Set<ShapeKind> LIVE_GEAR = EnumSet.of(ShapeKind.SWEEP, ShapeKind.LINE, ShapeKind.STAY,
            ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH);
    private static final Set<ShapeKind> DANGER = EnumSet.of(ShapeKind.SWEEP, ShapeKind.SNAP_BACK,
            ShapeKind.POLE_FALL_ZONE, ShapeKind.THRUSTER_PLUME);

    private final StagesInput input;
    private final SiteShapes shapes;
    private final LiveClearance live;
    private final List<Finding> findings = new ArrayList<>();

    StageSafety(StagesInput input) {
        this.input = input;
        Map<String, List<Ring>> toes = new LinkedHashMap<>();
        input.covers().forEach(c -> toes.put(c.hull(), c.toes()));
        this.shapes = SiteShapes.of(input.plan(), Optional.of(input.ground()), toes);
        this.live = new LiveClearance(shapes, input.ground());
    }

    List<Finding> findings() {
        return findings;
    }

    /** Compares what moves and is rigged while a hull is lowered with what then stands on the site. */
    void lowering(WorkStep step, Stage.State before) {
        Optional<HullShapes> lowered = shapes.hull(step.of());
        if (lowered.isEmpty()) {
            return;
        }
        List<Shape> moving = lowered.get().shapes().stream().filter(s -> LIVE_GEAR.contains(s.kind())).toList();
        List<Shape> there = new ArrayList<>();
        for (HullShapes other : shapes.hulls()) {
            String id = other.hull().id();
            if (id.equals(step.of())) {
                continue;
            }
            if (before.standing().contains(id)) {
                there.addAll(other.of(ShapeKind.STANDING));
            }
            if (before.lying().contains(id)) {
                there.addAll(other.of(ShapeKind.LYING));
            }
            if (before.heights().getOrDefault(id, 0.0) > 0) {
                there.addAll(other.of(ShapeKind.COVER_TOE));
            }
        }
        List<Finding> all = new ArrayList<>(live.check(moving, there));
        all.addAll(live.lowered(step.of(), new LiveClearance.Moment(before.standing(), before.lying(),
                before.placed())));
        for (Finding found : all) {
            findings.add(new Finding(WorkRule.STEP_CLEARANCE, Finding.Level.REFUSE, step.id(), List.of(found.id()),
                    found.figures(), found.place(), found.source(), "Step %s, as the site then is: %s".formatted(
                            step.id(), found.text()), found.todo()));
        }
    }

    /** Looks for machines at work, at the same time, inside the dangers of a hull being lowered. */
    void machines(WorkStep lowering, WorkStep cover) {
        Optional<HullShapes> lowered = shapes.hull(lowering.of());
        if (lowered.isEmpty()) {
            return;
        }
        List<Haul> hauls = input.earthworks().map(EarthworksResult::hauls).orElse(List.of()).stream()
                .filter(h -> h.to().equals(cover.of())).toList();
        for (Shape danger : lowered.get().shapes()) {
            if (!DANGER.contains(danger.kind())) {
                continue;
            }
            Optional<Point> place = hauls.stream().flatMap(h -> crossing(h.way(), danger.outline()).stream())
                    .findFirst();
            if (place.isPresent()) {
                findings.add(Finding.of(WorkRule.MACHINE_IN_DANGER_ZONE, Finding.Level.REFUSE, cover.id(),
                        Finding.Figures.NONE, ("While step %s runs, machines of step %s drive through the"
                                + " %s.").formatted(lowering.id(), cover.id(), danger.title()))
                        .at(place.get()));
                return;
            }
        }
    }

    /** A place where a way is inside an outline or crosses it. */
    static Optional<Point> crossing(List<Point> way, Ring ring) {
        for (int i = 0; i < way.size(); i++) {
            if (ring.contains(way.get(i))) {
                return Optional.of(way.get(i));
            }
            for (int j = 0; i + 1 < way.size() && j < ring.corners().size(); j++) {
                Optional<Point> cut = cut(way.get(i), way.get(i + 1), ring.corners().get(j),
                        ring.corners().get((j + 1) % ring.corners().size()));
                if (cut.isPresent()) {
                    return cut;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Point> cut(Point a, Point b, Point c, Point d) {
        double dx = b.east() - a.east();
        double dy = b.north() - a.north();
        double ex = d.east() - c.east();
        double ey = d.north() - c.north();
        double cross = dx * ey - dy * ex;
        if (cross == 0) {
            return Optional.empty();
        }
        double t = ((c.east() - a.east()) * ey - (c.north() - a.north()) * ex) / cross;
        double u = ((c.east() - a.east()) * dy - (c.north() - a.north()) * dx) / cross;
        return t >= 0 && t <= 1 && u >= 0 && u <= 1
                ? Optional.of(new Point(a.east() + t * dx, a.north() + t * dy)) : Optional.empty();
    }
}
