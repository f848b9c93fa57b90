// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LiveSiteTest {
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 3 + Math.sin(e / 40) + 0.02 * n);
    private static final Hull STAYING = SamplePlans.hull("B", new Point(200, 100), 20);
    /** Places of the hatch follow from its hull's within rounding (m). */
    private static final double ROUNDING = 1e-9;

    private static Plan plan(double east, double north) {
        return SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(east, north), 0), STAYING));
    }

    private static List<Shape> of(LiveSite site, String hull) {
        return site.shapes().stream().filter(s -> s.subject().equals(hull)).toList();
    }

    @Test
    void aPlanFollowedStepByStepIsAnsweredAsIfItWereNew() {
        LiveSite followed = LiveSite.of(plan(110, 100), Optional.of(GROUND), Map.of());
        for (int i = 1; i <= 8; i++) {
            Plan next = plan(110 + 11 * i, 100 + 2 * i);
            followed = followed.with(next);
            assertEquals(LiveSite.of(next, Optional.of(GROUND), Map.of()).findings(), followed.findings());
            assertEquals(next, followed.plan());
        }
        assertTrue(followed.findings().stream().anyMatch(f -> f.rule().id().equals("hulls-in-one-place")),
                () -> followed(plan(198, 116)).toString());
    }

    private static List<String> followed(Plan plan) {
        return LiveSite.of(plan, Optional.of(GROUND), Map.of()).findings().stream().map(f -> f.rule().id()).toList();
    }

    @Test
    void outlinesOfAHullThatStayedAreTheSameObjects() {
        LiveSite before = LiveSite.of(plan(110, 100), Optional.of(GROUND), Map.of());
        LiveSite after = before.with(plan(115, 100));
        List<Shape> kept = of(before, "B");
        List<Shape> now = of(after, "B");
        assertEquals(kept.size(), now.size());
        for (int i = 0; i < kept.size(); i++) {
            assertTrue(kept.get(i) == now.get(i), kept.get(i).title());
        }
        assertFalse(of(after, "A").contains(of(before, "A").get(0)), "the outline of the hull that moved is another");
    }

    @Test
    void toesAreShownAsLongAsTheyAreKnown() {
        Ring toe = new Ring(List.of(new Point(100, 90), new Point(125, 90), new Point(125, 150), new Point(100, 150)));
        LiveSite known = LiveSite.of(plan(110, 100), Optional.of(GROUND), Map.of("A", List.of(toe)));
        assertTrue(of(known, "A").stream().anyMatch(s -> s.kind() == ShapeKind.COVER_TOE));
        assertTrue(of(known.with(plan(110, 100)), "A").stream().anyMatch(s -> s.kind() == ShapeKind.COVER_TOE));
        LiveSite forgotten = known.with(plan(130, 100), Map.of());
        assertFalse(of(forgotten, "A").stream().anyMatch(s -> s.kind() == ShapeKind.COVER_TOE));
    }

    @Test
    void withoutGroundNothingIsSaidAboutIt() {
        List<String> rules = LiveSite.of(plan(110, 100), Optional.empty(), Map.of()).findings().stream()
                .map(f -> f.rule().id()).toList();
        assertFalse(rules.stream().anyMatch(r -> r.contains("slope") || r.contains("grid") || r.contains("belly")),
                rules::toString);
    }

    @Test
    void aHatchLiesWhereItsHullTakesIt() {
        LiveSite site = LiveSite.of(plan(110, 100), Optional.of(GROUND), Map.of());
        Point hatch = site.hatch("A/main").orElseThrow();
        assertEquals(110, hatch.east(), ROUNDING);
        assertEquals(103.8, hatch.north(), ROUNDING);
        assertTrue(site.hatch("A/none").isEmpty());
    }
}
