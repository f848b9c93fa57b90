// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample;
import bermwright.site.plan.Hull;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SiteShapesTest {
    /** Corners lie on whole millimetres. */
    private static final double SNAP = 0.001;
    /** A circle of 96 corners is drawn this much too large, as a share of its area. */
    private static final double CIRCLE_SHARE = 0.0015;

    private static HullShapes shapes(Hull hull) {
        return SiteShapes.of(SiteExample.plan(hull), Optional.of(SiteExample.level()), Map.of()).hull(hull.id())
                .orElseThrow();
    }

    @Test
    void theLyingHullReachesFromThePivotAlongTheAzimuth() {
        Ring lying = shapes(SiteExample.hull("A", 300, 300, 90)).first(ShapeKind.LYING).orElseThrow().outline();
        assertEquals(304, lying.corners().stream().mapToDouble(Point::east).min().orElseThrow(), SNAP);
        assertEquals(344, lying.corners().stream().mapToDouble(Point::east).max().orElseThrow(), SNAP);
        assertEquals(296, lying.corners().stream().mapToDouble(Point::north).min().orElseThrow(), SNAP);
        assertEquals(304, lying.corners().stream().mapToDouble(Point::north).max().orElseThrow(), SNAP);
        assertEquals(40 * 8, lying.area(), 8 * 40 * SNAP);
    }

    @Test
    void theStandingCircleHoldsTheWholeCircle() {
        Ring standing = shapes(SiteExample.hull("A", 300, 300, 17)).first(ShapeKind.STANDING).orElseThrow().outline();
        double circle = Math.PI * 16;
        assertTrue(standing.area() >= circle);
        assertEquals(circle, standing.area(), CIRCLE_SHARE * circle);
    }

    @Test
    void theSweepHoldsEveryPlaceTheTurningBodyPassesAndItsMargin() {
        Hull hull = SiteExample.hull("A", 300, 300, 35);
        Ring sweep = shapes(hull).first(ShapeKind.SWEEP).orElseThrow().outline();
        LayDownFrame frame = LayDownFrame.of(hull, TrueMetres.SAME);
        double wander = Math.toRadians(3);
        for (double turn : new double[] {-wander, 0, wander / 3, wander}) {
            for (int tilt = 0; tilt <= 90; tilt += 5) {
                for (double s = 0; s <= 40; s += 4) {
                    for (int k = 0; k < 12; k++) {
                        double n = 4 * Math.cos(k * Math.PI / 6) - 4;
                        double y = 4 * Math.sin(k * Math.PI / 6);
                        double x = s * Math.sin(Math.toRadians(tilt)) + n * Math.cos(Math.toRadians(tilt));
                        double r = Math.hypot(x, y);
                        double a = Math.atan2(y, x) + turn;
                        Point at = frame.place((r + 1.99) * Math.cos(a), (r + 1.99) * Math.sin(a));
                        assertTrue(r < 1e-9 || sweep.contains(at), () -> "outside the sweep: " + at);
                    }
                }
            }
        }
    }

    @Test
    void theSweepWithoutWanderOnLevelGroundIsTheBodyFromStandingToLyingWidenedByTheMargin() {
        Hull hull = SiteExample.hull("A", 300, 300, 0);
        Hull straight = hull.withLowering(hull.lowering().map(g -> new bermwright.site.plan.LoweringGear(g.means(),
                g.rate(), 0, 2, g.lines(), g.poles(), g.stays(), g.pullOver(), g.pivotHold(), g.sideThrusters(),
                g.landing(), g.temperature(), g.annotations())));
        // Half a circle of r + m behind, 44 m of width 2 (r + m), two quarter circles of m and 2 r m in front.
        double exact = Math.PI * 36 / 2 + 44 * 12 + Math.PI * 4 / 2 + 8 * 2;
        Ring sweep = shapes(straight).first(ShapeKind.SWEEP).orElseThrow().outline();
        assertEquals(exact, sweep.area(), 0.002 * exact);
    }

    @Test
    void aHullOnFallingGroundLeansAndSweepsFarther() {
        Hull hull = SiteExample.hull("A", 300, 300, 90);
        Plan plan = SiteExample.plan(hull);
        Ring level = shapes(hull).first(ShapeKind.SWEEP).orElseThrow().outline();
        Ring leaning = SiteShapes.of(plan, Optional.of(SiteExample.ground((e, n) -> -0.05 * n)), Map.of())
                .hull("A").orElseThrow().first(ShapeKind.SWEEP).orElseThrow().outline();
        double north = leaning.corners().stream().mapToDouble(Point::north).max().orElseThrow();
        assertTrue(leaning.area() > level.area());
        // The top of the standing hull leans 40 m x sin(atan(0.05)) = 1.998 m to the north; radius 4, margin 2.
        assertTrue(north > 300 + 4 + 1.998 + 2, "north edge " + north);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 33, 90, 211})
    void turningAHullTurnsAllItsOutlines(double azimuthDeg) {
        HullShapes straight = shapes(SiteExample.hull("A", 300, 300, 0));
        HullShapes turned = shapes(SiteExample.hull("A", 300, 300, azimuthDeg));
        assertEquals(straight.shapes().size(), turned.shapes().size());
        for (int i = 0; i < straight.shapes().size(); i++) {
            Ring a = straight.shapes().get(i).outline();
            Ring b = turned.shapes().get(i).outline();
            // Snapping and leaving corners out moves an outline by some millimetres.
            assertEquals(a.area(), b.area(), 0.002 * a.area() + 0.05);
            Point from = a.centre();
            Azimuth azimuth = Azimuth.ofDegrees(azimuthDeg);
            Point expected = new Point(300, 300).moved(azimuth, from.north() - 300, 300 - from.east());
            assertEquals(0, expected.distance(b.centre()), 0.05);
        }
    }

    @Test
    void sizesAreTrueMetresOnAStretchedMap() {
        Hull hull = SiteExample.hull("A", 300, 300, 90);
        Ring lying = SiteShapes.of(SiteExample.plan(hull), Optional.of(SiteExample.level().withMetreScale(0.98)),
                Map.of()).hull("A").orElseThrow().first(ShapeKind.LYING).orElseThrow().outline();
        assertEquals(40 * 8 / 0.98 / 0.98, lying.area(), 0.05);
    }

    @Test
    void hullsThatDidNotMoveKeepTheirOutlines() {
        Plan plan = SiteExample.plan(SiteExample.hull("A", 200, 200, 0), SiteExample.hull("B", 400, 400, 0));
        SiteShapes before = SiteShapes.of(plan, Optional.empty(), Map.of());
        SiteShapes after = before.withPlan(plan.withHull("B", h -> h.withBaseCentre(new Point(410, 400))), Map.of());
        assertSame(before.hulls().get(0), after.hulls().get(0));
        assertNotSame(before.hulls().get(1), after.hulls().get(1));
    }

    @Test
    void aConeEndNarrowsTheOutline() {
        Hull h = SiteExample.hull("A", 300, 300, 0);
        Hull cone = new Hull(h.id(), new HullBody(h.length(),
                h.diameter(), h.baseEnd(), new Hull.End(Hull.Shape.CONE, 6, h.annotations()), h.skin(),
                h.stowage(), h.shell(), h.innerPressure()),
                new MassProperties(h.mass(), h.centreOfMassFromBase(), 0, 0, h.inertiaAboutCentre(), 0),
                new HullPlacement(h.baseCentre(), 0, h.layDownAzimuth(), 0, h.pivot(), h.arrival()),
                h.lowering(), h.seat(), h.hatches(), h.stations(), h.cover(), h.held(), h.annotations());
        Ring lying = shapes(cone).first(ShapeKind.LYING).orElseThrow().outline();
        assertEquals(34 * 8 + 6 * 8 / 2.0, lying.area(), 0.05);
    }

    @Test
    void aHullThatLandsLyingHasNoStandingCircleAndNoSweep() {
        Hull hull = SiteExample.with(SiteExample.hull("A", 300, 300, 0), Hull.Arrival.LANDS_LYING, 0, List.of());
        HullShapes shapes = shapes(hull);
        assertTrue(shapes.of(ShapeKind.STANDING).isEmpty());
        assertTrue(shapes.of(ShapeKind.SWEEP).isEmpty());
        assertTrue(shapes.of(ShapeKind.WINCH).isEmpty());
        double south = shapes.first(ShapeKind.LYING).orElseThrow().outline().corners().stream()
                .mapToDouble(Point::north).min().orElseThrow();
        assertEquals(300, south, SNAP);
    }
}
