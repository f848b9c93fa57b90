// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanValues;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;

/** A made-up site for searches: rolling ground, a borrow ground, a keep-out and a machine; turned and moved at will. */
record ArrangedSite(Plan plan, ElevationGrid ground) {
    private static final Annotations K = Annotations.NOTHING;
    private static final int NODES = 403;
    private static final double MIDDLE = 201;
    private static final double SPACING = 1;

    /** A place of the site as made, on the site as it is turned by quarters about its middle and moved. */
    record Turned(int quarters, double east, double north) {
        static final Turned NOT = new Turned(0, 0, 0);

        Point place(double x, double y) {
            double u = x - MIDDLE;
            double v = y - MIDDLE;
            for (int i = 0; i < quarters; i++) {
                // A quarter clockwise, as azimuths run.
                double w = u;
                u = v;
                v = -w;
            }
            return new Point(u + MIDDLE + east, v + MIDDLE + north);
        }

        double back(double x, double y, boolean first) {
            double u = x - east - MIDDLE;
            double v = y - north - MIDDLE;
            for (int i = 0; i < quarters; i++) {
                double w = u;
                u = -v;
                v = w;
            }
            return MIDDLE + (first ? u : v);
        }

        Ring ring(double... xy) {
            List<Point> corners = new ArrayList<>();
            for (int i = 0; i < xy.length; i += 2) {
                corners.add(place(xy[i], xy[i + 1]));
            }
            return new Ring(corners);
        }

        Hull hull(String id, double x, double y, double azimuthDeg) {
            Hull made = SamplePlans.hull(id, place(x, y), azimuthDeg);
            return made.withLayDownAzimuth(new Azimuth(made.layDownAzimuth().radians() + quarters * Math.PI / 2));
        }
    }

    static ArrangedSite of(Turned turned, Optional<Ring> within, List<Hull> hulls) {
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(NODES, NODES, turned.east, turned.north, SPACING),
                (x, y) -> height(turned.back(x, y, true), turned.back(x, y, false)));
        Plan p = SamplePlans.plan(hulls);
        KeepOut boulders = new KeepOut("boulders", "boulder field", turned.ring(230, 150, 270, 150, 270, 190, 230, 190),
                K);
        BorrowGround pit = new BorrowGround("pit", turned.ring(300, 180, 390, 180, 390, 270, 300, 270), 3,
                Math.toRadians(30), 0.9, 5, K);
        Machine machine = new Machine("haulers", "scoop hauler", 4, 3000, 0.7, Math.toRadians(14), 3, 400, 90, 17, 0.8,
                OptionalDouble.empty(), OptionalDouble.empty(), K);
        Plan made = new Plan(p.title(), p.ground(), hulls, List.of(), List.of(), List.of(boulders),
                List.of(), List.of(), List.of(), List.of(pit), List.of(), List.of(machine), p.exposure(), p.rules(),
                List.of(), within, K);
        return new ArrangedSite(stronger(made), ground);
    }

    /** The same on other ground. */
    ArrangedSite on(ElevationGrid other) {
        return new ArrangedSite(plan, other);
    }

    /** Anchors and a hold at the pivot that bear on rolling ground, and poles clear of the sweep on a cross slope. */
    private static Plan stronger(Plan plan) {
        Map<String, Double> gear = new HashMap<>();
        for (int i = 0; i < plan.hulls().size(); i++) {
            String of = "hulls[" + i + "].lowering.";
            gear.put(of + "lines.winch.anchor.mass_t", 200.0);
            gear.put(of + "pivot_hold.anchor.mass_t", 200.0);
            gear.put(of + "poles.half_spread_m", 8.0);
        }
        return PlanValues.with(plan, gear);
    }

    private static double height(double x, double y) {
        return 3 * Math.sin(x / 37) * Math.cos(y / 53) + 0.02 * y;
    }

    QuickSite quick(Set<Integer> movable) {
        return QuickSite.of(plan, ground, movable, Progress.NONE);
    }

    /** Searches some steps; what passes is judged by the quick engines and by clearance and lowering in full. */
    ArrangementSearch.Found search(long seed, int steps) {
        Set<Integer> movable = ArrangementSearch.movable(plan, Set.of());
        QuickSite site = quick(movable);
        return ArrangementSearch.run(new ArrangementSearch.Task(plan, ground, movable, seed),
                (asked, progress) -> judged(site, asked), (done, found) -> done < steps, Progress.NONE);
    }

    static Judge.Verdict judged(QuickSite site, Plan asked) {
        List<Pose> poses = asked.hulls().stream().map(Pose::of).toList();
        Estimate e = site.of(poses);
        List<Finding> refusals = site.screened(poses);
        return new Judge.Verdict(asked, refusals, new Figures(OptionalDouble.of(e.hours()), e.soil(),
                e.warnings(), e.tunnels(), e.cut(), OptionalDouble.empty()));
    }

    ArrangedSite with(UnaryOperator<Plan> change) {
        return new ArrangedSite(change.apply(plan), ground);
    }
}
