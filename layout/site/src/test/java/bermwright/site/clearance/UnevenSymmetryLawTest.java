// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.laydown.LaydownOfHull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stockpile;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A whole site on uneven ground, mirrored and turned by a quarter: the same rules about the same things, at the same
 * levels, with the same figures. The nodes of the ground fall on nodes, so nothing but the searches may differ.
 */
class UnevenSymmetryLawTest {
    /** Searches go by halves to a tenth of a degree and a few centimetres; twice the ends of their steps (m, deg). */
    private static final double LENGTH = 0.05;
    /** Outlines are snapped to millimetres; relative to an area or a force. */
    private static final double SHARE = 0.01;

    private static DoubleBinaryOperator uneven(Random random) {
        double[] wave = random.doubles(6, 0, 6.28).toArray();
        double east = 0.04 * random.nextGaussian();
        double north = 0.04 * random.nextGaussian();
        return (e, n) -> east * e + north * n + 1.2 * Math.sin(e / 23 + wave[0]) * Math.cos(n / 31 + wave[1])
                + 0.25 * Math.sin(e / 7 + wave[2]) * Math.sin(n / 9 + wave[3]) + 0.5 * Math.cos((e + n) / 17 + wave[4]);
    }

    private static Plan random(Random random) {
        List<Hull> hulls = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            hulls.add(SiteExample.hull("H" + i, 255 + 90 * random.nextDouble(), 255 + 90 * random.nextDouble(),
                    360 * random.nextDouble()));
        }
        Change change = new Change();
        change.keepOuts = List.of(new KeepOut("K", "boulders", box(random, 14), OptionalDouble.of(2),
                Annotations.NOTHING), new KeepOut("L", "rock", box(random, 8), Annotations.NOTHING));
        change.stockpiles = List.of(new Stockpile("S", box(random, 12), Annotations.NOTHING));
        change.corridors = List.of(new Corridor("C", 5, Math.toRadians(10), List.of(
                new Point(230 + 140 * random.nextDouble(), 230), new Point(230 + 140 * random.nextDouble(), 370)),
                Annotations.NOTHING));
        return SiteExample.with(SiteExample.plan(hulls.toArray(Hull[]::new)), change);
    }

    private static Ring box(Random random, double side) {
        return SiteExample.square(245 + 110 * random.nextDouble(), 245 + 110 * random.nextDouble(), side);
    }

    /** Where things go, and where their azimuths do. */
    private record Move(UnaryOperator<Point> place, UnaryOperator<Azimuth> way, UnaryOperator<Point> back) {
        static final Move MIRROR = new Move(p -> new Point(600 - p.east(), p.north()),
                a -> new Azimuth(-a.radians()), p -> new Point(600 - p.east(), p.north()));
        static final Move QUARTER = new Move(p -> new Point(p.north(), 600 - p.east()),
                a -> a.turned(Math.PI / 2), p -> new Point(600 - p.north(), p.east()));

        Ring ring(Ring ring) {
            return new Ring(ring.corners().stream().map(place).toList());
        }

        Plan plan(Plan plan) {
            Change change = new Change();
            change.keepOuts = plan.keepOuts().stream().map(k -> new KeepOut(k.id(), k.kind(), ring(k.area()),
                    k.height(), k.annotations())).toList();
            change.stockpiles = plan.stockpiles().stream().map(s -> new Stockpile(s.id(), ring(s.area()),
                    s.annotations())).toList();
            change.corridors = plan.corridors().stream().map(c -> new Corridor(c.id(), c.width(), c.greatestGrade(),
                    c.line().stream().map(place).toList(), c.annotations())).toList();
            return SiteExample.with(plan.withHulls(plan.hulls().stream().map(h -> h.withBaseCentre(
                    place.apply(h.baseCentre())).withLayDownAzimuth(way.apply(h.layDownAzimuth()))).toList()), change);
        }

        DoubleBinaryOperator ground(DoubleBinaryOperator ground) {
            return (e, n) -> {
                Point from = back.apply(new Point(e, n));
                return ground.applyAsDouble(from.east(), from.north());
            };
        }
    }

    private static List<Finding> findings(Plan plan, DoubleBinaryOperator height) {
        ElevationGrid ground = SiteExample.ground(height);
        List<Finding> all = new ArrayList<>(Clearance.of(SiteShapes.of(plan, Optional.of(ground), Map.of()),
                Optional.of(ground)).findings());
        all.addAll(LaydownOfHull.asPlanned(plan, plan.hulls().get(0), ground).findings());
        return all.stream().sorted(Comparator.comparing((Finding f) -> f.rule().id()).thenComparing(Finding::subject)
                .thenComparing(f -> String.join(",", f.parts())
                        .replace("left", "side").replace("right", "side").replaceAll("line [0-9]", "line"))
                .thenComparing(f -> f.measured().orElse(0))).toList();
    }

    private static String name(Finding f) {
        return f.level() + " " + f.rule().id() + " " + f.subject();
    }

    private static void assertSame(List<Finding> known, List<Finding> found, String where) {
        assertEquals(known.stream().map(UnevenSymmetryLawTest::name).toList(),
                found.stream().map(UnevenSymmetryLawTest::name).toList(), where);
        for (int i = 0; i < known.size(); i++) {
            double one = known.get(i).measured().orElse(0);
            double other = found.get(i).measured().orElse(0);
            assertEquals(one, other, Math.max(LENGTH, SHARE * Math.abs(one)), where + ": " + known.get(i).text()
                    + " against " + found.get(i).text());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void mirroredAndTurnedSitesAnswerTheSame(long seed) {
        Random random = new Random(seed);
        DoubleBinaryOperator ground = uneven(random);
        Plan plan = random(random);
        List<Finding> known = findings(plan, ground);
        assertTrue(known.size() > 8, "enough is found to be compared: " + known.size());
        assertSame(known, findings(Move.MIRROR.plan(plan), Move.MIRROR.ground(ground)), "mirrored");
        assertSame(known, findings(Move.QUARTER.plan(plan), Move.QUARTER.ground(ground)), "turned by a quarter");
    }
}
