// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.example.SiteExample;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClearanceLawTest {
    /** Outlines are snapped to whole millimetres after turning, and circles have corners. */
    private static final double SNAP = 0.02;
    /** Of common ground (m2): edges of a hundred metres, moved by a millimetre. */
    private static final double AREA_SNAP = 0.1;

    private static Stream<Long> seeds() {
        return Stream.of(1L, 2L, 3L, 4L, 5L, 6L);
    }

    private static Plan random(long seed) {
        Random random = new Random(seed);
        List<Hull> hulls = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            hulls.add(SiteExample.hull("H" + i, 240 + 120 * random.nextDouble(), 240 + 120 * random.nextDouble(),
                    360 * random.nextDouble()));
        }
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "boulders",
                SiteExample.square(240 + 120 * random.nextDouble(), 240 + 120 * random.nextDouble(), 25),
                Annotations.NOTHING));
        return SiteExample.with(SiteExample.plan(hulls.toArray(Hull[]::new)), change);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatIsFoundIsNeverWhatIsAllowed(long seed) {
        check(random(seed)).forEach(f -> f.limit().ifPresent(limit -> assertNotEquals(
                String.format(Locale.ROOT, "%.3g", limit),
                String.format(Locale.ROOT, "%.3g", f.measured().orElseThrow()), f.text())));
    }

    private static List<Finding> check(Plan plan) {
        return Clearance.of(SiteShapes.of(plan, Optional.empty(), Map.of()), Optional.empty()).findings();
    }

    private static List<Finding> ordered(List<Finding> findings) {
        return findings.stream().sorted(Comparator.comparing((Finding f) -> f.rule().id())
                .thenComparing(Finding::subject)
                .thenComparing(f -> f.measured().orElse(-1))).toList();
    }

    private static void assertSame(List<Finding> expected, List<Finding> found) {
        assertEquals(ordered(expected).stream().map(f -> f.rule().id() + " " + f.subject()).toList(),
                ordered(found).stream().map(f -> f.rule().id() + " " + f.subject()).toList());
        for (int i = 0; i < expected.size(); i++) {
            Finding one = ordered(expected).get(i);
            assertEquals(one.measured().orElse(-1), ordered(found).get(i).measured().orElse(-1),
                    "m2".equals(one.unit()) ? AREA_SNAP : SNAP, one.text());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aMirroredSiteHasTheSameFindings(long seed) {
        Plan plan = random(seed);
        Change change = new Change();
        change.keepOuts = plan.keepOuts().stream().map(k -> new KeepOut(k.id(), k.kind(),
                new bermwright.foundation.Ring(k.area().corners().stream()
                        .map(p -> new Point(600 - p.east(), p.north())).toList()), k.annotations())).toList();
        Plan mirrored = SiteExample.with(plan.withHulls(plan.hulls().stream()
                .map(h -> h.withBaseCentre(new Point(600 - h.baseCentre().east(), h.baseCentre().north()))
                        .withLayDownAzimuth(new Azimuth(-h.layDownAzimuth().radians()))).toList()), change);
        assertSame(check(plan), check(mirrored));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aTurnedSiteHasTheSameFindings(long seed) {
        Plan plan = random(seed);
        Azimuth turn = Azimuth.ofDegrees(37);
        Point middle = new Point(300, 300);
        Change change = new Change();
        change.keepOuts = plan.keepOuts().stream().map(k -> new KeepOut(k.id(), k.kind(),
                new bermwright.foundation.Ring(k.area().corners().stream()
                        .map(p -> middle.moved(turn, p.north() - 300, 300 - p.east())).toList()), k.annotations()))
                                .toList();
        Plan turned = SiteExample.with(plan.withHulls(plan.hulls().stream().map(h -> h
                .withBaseCentre(middle.moved(turn, h.baseCentre().north() - 300, 300 - h.baseCentre().east()))
                .withLayDownAzimuth(h.layDownAzimuth().turned(turn.radians()))).toList()), change);
        assertSame(check(plan), check(turned));
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void followingADragFindsTheSameAsLookingAfresh(long seed) {
        Plan plan = random(seed);
        SiteShapes shapes = SiteShapes.of(plan, Optional.of(SiteExample.level()), Map.of());
        Clearance clearance = Clearance.of(shapes, Optional.of(SiteExample.level()));
        for (int i = 1; i <= 5; i++) {
            double east = 250 + 20 * i;
            Plan moved = plan.withHull("H1", h -> h.withBaseCentre(new Point(east, 300)));
            shapes = shapes.withPlan(moved, Map.of());
            clearance = clearance.with(shapes);
            List<Finding> afresh = Clearance.of(SiteShapes.of(moved, Optional.of(SiteExample.level()), Map.of()),
                    Optional.of(SiteExample.level())).findings();
            assertEquals(afresh, clearance.findings());
        }
    }

    @Test
    void movingHullsApartNeverAddsARefusal() {
        long before = Long.MAX_VALUE;
        for (double gap = 0; gap < 200; gap += 10) {
            Plan plan = SiteExample.plan(SiteExample.hull("A", 200, 300, 0), SiteExample.hull("B", 200 + gap, 300, 0));
            long refused = check(plan).stream().filter(f -> f.level() == Finding.Level.REFUSE).count();
            assertTrue(refused <= before, "gap " + gap);
            before = refused;
        }
        assertEquals(0, before);
    }
}
