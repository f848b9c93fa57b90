// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class SlopeChecksTest {
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 5);

    private static Ring square(double corner) {
        return new Ring(List.of(new Point(corner, 220), new Point(corner + 40, 220), new Point(corner + 40, 260),
                new Point(corner, 260)));
    }

    /** A sample plan with a borrow ground and a bench, in soil of a cohesion (Pa) and friction angle. */
    private static Plan plan(double pitDeg, double benchDeg, double cohesion, double frictionDeg) {
        Plan p = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(150, 120), 0)));
        GroundPlan g = p.ground();
        GroundPlan.Regolith r = g.regolith();
        GroundPlan.Regolith soil = new GroundPlan.Regolith(r.composition(), r.placedDensity(), r.bankDensity(),
                r.looseDensity(), r.densitySpreadShare(), r.densityProfile(), r.stableSlope(),
                Math.toRadians(frictionDeg), cohesion, r.frictionSpread(), r.cohesionSpread(), r.strengthProfile(),
                r.annotations());
        GroundPlan ground = new GroundPlan(g.elevationFile(), g.referenceSystem(), g.elevationSpread(),
                g.elevationCorrelation(), g.gravity(), g.pivotFriction(), soil, g.annotations());
        BorrowGround pit = new BorrowGround("pit", square(20), 2, Math.toRadians(pitDeg), 0.9, 5, Annotations.NOTHING);
        Preparation bench = new Preparation("bench", Preparation.Kind.BENCH, square(220), OptionalDouble.of(3), 0.02,
                Math.toRadians(benchDeg), Annotations.NOTHING);
        return new Plan(p.title(), ground, p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), List.of(bench), List.of(pit), p.stockpiles(), p.machines(), p.exposure(), p.rules(),
                p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    private static SlopeChecks checks(Plan plan) {
        return SlopeChecks.of(plan, SiteCover.raised(plan, LEVEL, PreparedGround.of(plan, LEVEL).surface()));
    }

    private static Optional<Finding> found(SlopeChecks checks, String rule) {
        return checks.findings().stream().filter(f -> f.rule().id().equals(rule)).findFirst();
    }

    @Test
    void aMoundAtItsStableSlopeStandsAndSaysHowWell() {
        SlopeChecks checks = checks(plan(30, 30, 500, 42));
        SlopeChecks.Slope mound = checks.slopes().get(0);
        assertEquals("A", mound.subject());
        assertEquals("mound", mound.kind());
        assertEquals(2 * 3.8 + 2.5, mound.height(), 0.3);
        assertEquals(Math.tan(Math.toRadians(42)) / Math.tan(Math.toRadians(33)), mound.plane(), 1e-9);
        assertTrue(mound.circle() > mound.plane(), "cohesion adds");
        assertEquals("pit", checks.slopes().get(1).kind());
        assertTrue(checks.slopes().get(1).circle() > mound.circle(), "two metres stand better than ten");
        assertEquals(List.of(), checks.findings());
    }

    @Test
    void aPitTooSteepForItsSoilSlides() {
        Finding slides = found(checks(plan(70, 30, 100, 38)), "slope-slides").orElseThrow();
        assertEquals(Finding.Level.REFUSE, slides.level());
        assertEquals("pit", slides.subject());
        assertTrue(slides.measured().orElseThrow() < 1);
        Finding little = found(checks(plan(30, 30, 0, 38)), "slope-slides").orElseThrow();
        assertEquals(Finding.Level.WARN, little.level());
        assertEquals("A", little.subject());
    }

    @Test
    void madeGroundSteeperThanItsSoilStandsIsFound() {
        SlopeChecks steep = checks(plan(30, 45, 500, 42));
        Finding made = found(steep, "made-ground-steep").orElseThrow();
        assertEquals(45, made.measured().orElseThrow(), 1.5);
        assertTrue(checks(plan(30, 30, 500, 42)).steepest() <= Math.toRadians(34));
    }
}
