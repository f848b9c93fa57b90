// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.example.SiteExample;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Ramp;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.site.plan.WorkStep;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class StagesTest {
    private static final double SLOPE = Math.tan(Math.toRadians(33));
    private static final double TOP = 11;
    /** A lift is a tenth of a per cent of the whole at the least. */
    private static final double SMALL = 1e-6;

    /** A ridge along the hull's axis with slopes of 33 deg and half cones at its ends. */
    private static PlacedCover cover(Hull hull, ElevationGrid ground) {
        Point base = hull.lyingBase(TrueMetres.SAME);
        Point far = base.moved(hull.layDownAzimuth(), hull.length(), 0);
        ElevationGrid finished = ElevationGrid.sampled(ground.frame(), (e, n) -> {
            double natural = ground.height(e, n);
            return Math.max(natural, TOP - SLOPE * distance(new Point(e, n), base, far));
        });
        double reach = TOP / SLOPE;
        List<Point> toe = new ArrayList<>();
        for (int i = 0; i < 32; i++) {
            double a = Math.PI * i / 31 - Math.PI / 2;
            toe.add(far.moved(hull.layDownAzimuth(), reach * Math.cos(a), reach * Math.sin(a)));
        }
        for (int i = 0; i < 32; i++) {
            double a = Math.PI * i / 31 + Math.PI / 2;
            toe.add(base.moved(hull.layDownAzimuth(), reach * Math.cos(a), reach * Math.sin(a)));
        }
        double gross = TOP * reach * hull.length() + Math.PI * reach * reach * TOP / 3;
        return new PlacedCover(hull.id(), finished, gross - Math.PI * 16 * hull.length(), List.of(new Ring(toe)));
    }

    private static double distance(Point p, Point a, Point b) {
        double length = a.distance(b);
        double t = ((p.east() - a.east()) * (b.east() - a.east()) + (p.north() - a.north()) * (b.north() - a.north()))
                / length / length;
        double u = Math.max(0, Math.min(1, t));
        return p.distance(new Point(a.east() + u * (b.east() - a.east()), a.north() + u * (b.north() - a.north())));
    }

    private static WorkStep step(String id, WorkStep.Kind kind, String of, String... after) {
        return new WorkStep(id, kind, of, OptionalInt.empty(), OptionalDouble.empty(), Optional.empty(),
                List.of(after), Optional.empty(), Annotations.NOTHING);
    }

    private static WorkStep lift(String id, String of, int number, double upTo, String... after) {
        return new WorkStep(id, WorkStep.Kind.COVER, of, OptionalInt.of(number), OptionalDouble.of(upTo),
                Optional.empty(), List.of(after), Optional.empty(), Annotations.NOTHING);
    }

    private static Plan plan(List<WorkStep> order, Hull... hulls) {
        Change change = new Change();
        change.order = order;
        change.borrow = List.of(SiteExample.borrow("B", SiteExample.square(300, 100, 120), 1.5));
        return SiteExample.with(SiteExample.plan(hulls), change);
    }

    private static StagesResult stages(Plan plan, ElevationGrid ground, boolean withHaul, Hull... covered) {
        List<PlacedCover> covers = List.of(covered).stream().map(h -> cover(h, ground)).toList();
        List<SoilNeed> needs = covers.stream().map(c -> new SoilNeed(c.hull(), SoilNeed.Kind.COVER, c.placed(), 1650,
                c.toes())).toList();
        Optional<EarthworksResult> haul = withHaul ? Optional.of(Earthworks.of(new EarthworksInput(plan, ground, needs,
                List.of(), EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE)) : Optional.empty();
        return Stages.of(new StagesInput(plan, ground, covers, haul), Progress.NONE);
    }

    private static boolean has(StagesResult result, String rule) {
        return result.findings().stream().anyMatch(f -> f.rule().id().equals(rule));
    }

    private static final Hull A = SiteExample.hull("A", 300, 300, 0);

    @Test
    void theUsualOrderLowersFirstAndThenCoversInLifts() {
        StagesResult result = stages(plan(List.of(), A), SiteExample.level(), true, A);
        assertEquals("lower A", result.stages().get(0).step().id());
        assertEquals((int) Math.ceil(TOP / 0.5), result.stages().size() - 1);
        assertEquals(TOP, result.stages().get(result.stages().size() - 1).soil().height(), SMALL);
        assertFalse(has(result, "sides-not-level"));
        assertFalse(has(result, "cover-not-finished"));
    }

    @Test
    void theLiftsAddUpToTheCover() {
        PlacedCover cover = cover(A, SiteExample.level());
        StagesResult result = stages(plan(List.of(), A), SiteExample.level(), false, A);
        assertEquals(cover.placed(), result.stages().stream().mapToDouble(s -> s.soil().placed()).sum(),
                SMALL * cover.placed());
        for (Stage stage : result.stages()) {
            assertTrue(stage.soil().placed() >= 0);
        }
    }

    @Test
    void aLiftHoldsTheTrapezoidBetweenTwoLevelsLessTheHull() {
        LiftedCover lifted = LiftedCover.of(A, SiteExample.level(), cover(A, SiteExample.level())).orElseThrow();
        double h = 2;
        double reach = TOP / SLOPE;
        double inner = (TOP - h) / SLOPE;
        double trapezoid = 40 * h * (reach + inner) + Math.PI * h / 3 * (reach * reach + reach * inner + inner * inner);
        double off = 4 - h;
        double segment = 16 * Math.acos(off / 4) - off * Math.sqrt(16 - off * off);
        double exact = trapezoid - 40 * segment;
        // Sampled on nodes 1 m apart.
        assertEquals(exact, lifted.volume(h), 0.01 * exact);
    }

    @Test
    void theSurfaceOfAStageIsTheGroundUpToTheLift() {
        StagesResult result = stages(plan(List.of(), A), SiteExample.level(), false, A);
        Stage third = result.stages().get(3);
        assertEquals(1.5, third.surface().highest(), SMALL);
        assertEquals(1.5, third.coverHeights().get("A"), SMALL);
        assertEquals(SiteExample.level(), result.stages().get(0).surface());
        assertEquals(cover(A, SiteExample.level()).finished(),
                result.stages().get(result.stages().size() - 1).surface());
    }

    @Test
    void onGroundThatFallsAcrossBothSidesStandEquallyHigh() {
        ElevationGrid cross = SiteExample.ground((e, n) -> 0.05 * (e - 300));
        Hull hull = A;
        StagesResult result = stages(plan(List.of(), hull), cross, false, hull);
        ElevationGrid surface = result.stages().get(4).surface();
        assertEquals(surface.height(294.0, 320.0), surface.height(306.0, 320.0), 1e-3);
    }

    @Test
    void coverBeforeLoweringWaitsForIt() {
        StagesResult result = stages(plan(List.of(lift("1", "A", 1, 11), step("2", WorkStep.Kind.LOWER, "A")), A),
                SiteExample.level(), true, A);
        assertEquals(List.of("2", "1"), result.stages().stream().map(s -> s.step().id()).toList());
    }

    @Test
    void stepsInACircleAreAFinding() {
        StagesResult result = stages(plan(List.of(step("1", WorkStep.Kind.LOWER, "A", "3"),
                lift("2", "A", 1, 11, "1"), step("3", WorkStep.Kind.CLOSE, "A", "2")), A),
                SiteExample.level(), true, A);
        Finding circle = result.findings().stream().filter(f -> f.rule().id().equals("order-circle")).findFirst()
                .orElseThrow();
        assertTrue(circle.text().contains("1") && circle.text().contains("3"), circle.text());
        assertTrue(result.stages().isEmpty());
    }

    @Test
    void unknownStepsObjectsAndMissingStepsAreFindings() {
        StagesResult result = stages(plan(List.of(step("1", WorkStep.Kind.LOWER, "Z", "9")), A), SiteExample.level(),
                true, A);
        assertTrue(has(result, "order-unknown-step"));
        assertTrue(has(result, "order-unknown-object"));
        assertTrue(has(result, "order-missing-step"));
    }

    @Test
    void aStepIsPlacedInLiftsAndItsSurfaceRisesWithThem() {
        StagesResult result = stages(plan(List.of(step("1", WorkStep.Kind.LOWER, "A"), lift("2", "A", 1, 2, "1")), A),
                SiteExample.level(), true, A);
        Stage stage = Stage.of(result.stages(), "2").orElseThrow();
        assertEquals(List.of(0.5, 1.0, 1.5, 2.0), stage.soil().lifts());
        assertEquals(1, stage.surface(1).highest(), SMALL);
        assertFalse(has(result, "sides-not-level"));
        assertTrue(has(result, "cover-not-finished"));
    }

    @Test
    void liftsTooHighPutTheSidesOutOfLevel() {
        Hull high = A.withCover(A.cover().map(c -> new bermwright.site.plan.CoverPlan(c.thickness(), c.crown(),
                c.flank(), c.baseEndThickness(), c.farEndThickness(), c.baseEnd(), c.farEnd(), c.baseEndWall(),
                c.farEndWall(), c.crownWidth(), 1.5, c.density(), c.passThroughs(), c.annotations())));
        Finding uneven = stages(plan(List.of(), high), SiteExample.level(), true, high).findings().stream()
                .filter(f -> f.rule().id().equals("sides-not-level")).findFirst().orElseThrow();
        assertEquals(1.5, uneven.measured().orElseThrow(), SMALL);
    }

    @Test
    void soilBelowTheBedOnGroundThatFallsAwayBelongsToTheFirstLift() {
        ElevationGrid cross = SiteExample.ground((e, n) -> 0.08 * (e - 300));
        StagesResult result = stages(plan(List.of(step("1", WorkStep.Kind.LOWER, "A"), lift("2", "A", 1, 4, "1"),
                lift("3", "A", 2, 20, "2")), A), cross, false, A);
        double placed = result.stages().stream().mapToDouble(s -> s.soil().placed()).sum();
        assertEquals(cover(A, cross).placed(), placed, SMALL * placed);
    }

    @Test
    void loweringAHullOntoAMoundAlreadyThereIsRefused() {
        Hull b = SiteExample.hull("B", 300, 375, 180);
        List<WorkStep> bad = List.of(step("1", WorkStep.Kind.LOWER, "A"), lift("2", "A", 1, 11, "1"),
                step("3", WorkStep.Kind.LOWER, "B", "2"), lift("4", "B", 1, 11, "3"));
        StagesResult result = stages(plan(bad, A, b), SiteExample.level(), true, A, b);
        assertTrue(overCover(result));
        List<WorkStep> good = List.of(step("1", WorkStep.Kind.LOWER, "A"), step("3", WorkStep.Kind.LOWER, "B", "1"),
                lift("2", "A", 1, 11, "3"), lift("4", "B", 1, 11, "3"));
        assertFalse(overCover(stages(plan(good, A, b), SiteExample.level(), true, A, b)));
    }

    private static boolean overCover(StagesResult result) {
        return result.findings().stream().anyMatch(f -> f.rule() == WorkRule.STEP_CLEARANCE
                && f.parts().get(0).startsWith("sweep-over-cover"));
    }

    @Test
    void machinesMayNotDriveThroughTheDangersOfAHullBeingLowered() {
        Hull b = SiteExample.hull("B", 300, 170, 90);
        List<WorkStep> together = List.of(step("1", WorkStep.Kind.LOWER, "A"), lift("2", "A", 1, 11, "1"),
                step("3", WorkStep.Kind.LOWER, "B", "1"));
        assertTrue(has(stages(plan(together, A, b), SiteExample.level(), true, A, b), "machine-in-danger-zone"));
        List<WorkStep> after = List.of(step("1", WorkStep.Kind.LOWER, "A"), lift("2", "A", 1, 11, "1"),
                step("3", WorkStep.Kind.LOWER, "B", "2"));
        assertFalse(has(stages(plan(after, A, b), SiteExample.level(), true, A, b), "machine-in-danger-zone"));
    }

    @Test
    void theScheduleAddsMachineDaysAndFindsTheCriticalChain() {
        Hull b = SiteExample.hull("B", 450, 300, 0);
        StagesResult result = stages(plan(List.of(step("1", WorkStep.Kind.LOWER, "A"), step("2", WorkStep.Kind.LOWER,
                "B"), lift("3", "A", 1, 11), lift("4", "B", 1, 11)), A, b), SiteExample.level(), true, A, b);
        double a = Stage.of(result.stages(), "3").orElseThrow().bar().end();
        Stage last = Stage.of(result.stages(), "4").orElseThrow();
        assertEquals(a, last.bar().start(), SMALL);
        assertEquals(result.days(), last.bar().end(), SMALL);
        assertEquals(List.of("1", "3", "4"), result.criticalChain());
        double machine = last.bar().machineHours().orElseThrow() / (2 * 16 * 0.8);
        assertEquals(machine, last.bar().end() - last.bar().start(), 1e-9);
        // 90 deg at 2 deg a minute.
        assertEquals(45 / 60.0, result.stages().get(0).bar().machineHours().orElseThrow(), 1e-9);
    }

    @Test
    void aRampIsHauledThereAndBack() {
        Ramp ramp = Ramp.on(plan(List.of(), A), "A", TOP).orElseThrow();
        double run = TOP / Math.tan(Math.toRadians(15));
        assertEquals(4 * TOP * (run + TOP / SLOPE) / 2, ramp.volume(), 1e-6);
        Plan plan = plan(List.of(), A);
        PlacedCover cover = cover(A, SiteExample.level());
        SoilNeed need = new SoilNeed("A", SoilNeed.Kind.COVER, cover.placed(), 1650, cover.toes());
        EarthworksResult bare = haul(plan, List.of(need));
        EarthworksResult ramped = haul(plan, List.of(need, need.forRamp(ramp)));
        assertEquals(bare.placed(), ramped.placed(), SMALL);
        assertEquals(bare.bank(), ramped.bank(), 1e-3);
        double share = ramp.volume() / cover.placed();
        assertEquals(bare.machineHours().orElseThrow() * (1 + 2 * share), ramped.machineHours().orElseThrow(),
                1e-6 * ramped.machineHours().orElseThrow());
        assertEquals(bare.borrowLeft() - ramp.volume() * 1650 / 1800, ramped.borrowLeft(), 0.01);
    }

    private static EarthworksResult haul(Plan plan, List<SoilNeed> needs) {
        return Earthworks.of(new EarthworksInput(plan, SiteExample.level(), needs, List.of(),
                EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE);
    }

    @Test
    void pointsToBeStakedOutHaveUniqueNamesAndStandOnTheGround() {
        ElevationGrid slope = SiteExample.ground((e, n) -> 0.01 * e);
        StagesResult result = stages(plan(List.of(), A), slope, true, A);
        List<SettingOutPoint> points = result.settingOut();
        assertEquals(points.size(), points.stream().map(SettingOutPoint::id).distinct().count());
        for (SettingOutPoint.Kind kind : List.of(SettingOutPoint.Kind.PIVOT, SettingOutPoint.Kind.AXIS,
                SettingOutPoint.Kind.TOE, SettingOutPoint.Kind.CREST, SettingOutPoint.Kind.ANCHOR,
                SettingOutPoint.Kind.POLE_FOOT, SettingOutPoint.Kind.WINCH, SettingOutPoint.Kind.BORROW)) {
            assertTrue(points.stream().anyMatch(p -> p.kind() == kind), kind.word());
        }
        SettingOutPoint pivot = points.stream().filter(p -> p.id().equals("A-pivot-rim")).findFirst().orElseThrow();
        assertEquals(304, pivot.place().y(), SMALL);
        assertEquals(3, pivot.place().z(), 1e-3);
    }

    @Test
    void endsOfTheAxisAreSetOutWhereTheHullComesToLie() {
        ElevationGrid slope = SiteExample.ground((e, n) -> 0.05 * n + 0.04 * e);
        Plan plan = plan(List.of(), A);
        List<SettingOutPoint> points = stages(plan, slope, false, A).settingOut();
        LyingPose pose = LyingPose.of(plan.hull("A").orElseThrow(), slope).orElseThrow();
        Vec3 base = point(points, "A-axis-end-base");
        Vec3 far = point(points, "A-axis-end-far");
        assertEquals(0, base.minus(pose.axisStart()).norm(), SMALL);
        assertEquals(0, far.minus(pose.axisEnd()).norm(), 1e-2);
        Vec3 under = point(points, "A-axis-base");
        assertEquals(0, under.plan().distance(base.plan()), SMALL);
        assertEquals(slope.height(under.plan()), under.z(), SMALL);
        assertTrue(base.z() - under.z() > 0.9 * plan.hull("A").orElseThrow().radius());
    }

    private static Vec3 point(List<SettingOutPoint> points, String id) {
        return points.stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow().place();
    }

    @Test
    void theCurveOfSoilAgainstHeightRisesToTheWhole() {
        StagesResult result = stages(plan(List.of(), A), SiteExample.level(), false, A);
        List<StagesResult.LiftCurve.Point> points = result.lifts().get(0).points();
        for (int i = 1; i < points.size(); i++) {
            assertTrue(points.get(i).placed() >= points.get(i - 1).placed());
        }
        assertEquals(0, points.get(0).placed(), 1);
        assertEquals(cover(A, SiteExample.level()).placed(), points.get(points.size() - 1).placed(), SMALL);
    }

    private static Plan driven(double gradeDeg) {
        Machine m = SiteExample.machine();
        Change change = new Change();
        change.machines = List.of(new Machine(m.id(), m.kind(), m.count(), m.load(), m.speed(),
                Math.toRadians(gradeDeg), m.width(), m.fillTime(), m.dumpTime(), m.hoursADay(), m.availabilityShare(),
                m.mass(), m.contactArea(), m.annotations()));
        return SiteExample.with(plan(List.of(), A), change);
    }

    /** The sides stand at 33 deg; a ramp of 15 deg is 41 m long, one of 1 deg longer than the mound's toe. */
    @Test
    void aMachineThatCannotClimbTheSideNeedsARampWithRoomForIt() {
        Finding fits = stages(driven(15), SiteExample.level(), false, A).findings().stream()
                .filter(f -> f.rule().id().equals("lift-beyond-machine")).findFirst().orElseThrow();
        assertEquals(Finding.Level.NOTE, fits.level());
        assertEquals(33, fits.measured().orElseThrow(), 1e-9);
        assertEquals(15, fits.limit().orElseThrow(), 1e-9);
        assertTrue(fits.text().contains("a ramp of 41 m"), fits.text());
        Finding tooLong = stages(driven(1), SiteExample.level(), false, A).findings().stream()
                .filter(f -> f.rule().id().equals("lift-beyond-machine")).findFirst().orElseThrow();
        assertEquals(Finding.Level.WARN, tooLong.level());
        assertTrue(tooLong.text().contains("longer than once round the mound"), tooLong.text());
        assertFalse(has(stages(driven(35), SiteExample.level(), false, A), "lift-beyond-machine"));
    }
}
