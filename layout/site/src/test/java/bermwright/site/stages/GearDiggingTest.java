// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.SamplePlans;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Seat;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class GearDiggingTest {
    private static final Point PLACE = new Point(150, 120);
    /** Outlines are kept to the millimetre. */
    private static final double MILLIMETRES = 1e-3;
    private static final double ROUNDING = 1e-6;

    private static Hull hull(Optional<Anchor> winchAnchor, double sunk) {
        Hull h = SamplePlans.hull("A", PLACE, 0);
        LoweringGear g = SamplePlans.gear();
        LoweringGear.Lines l = g.lines().orElseThrow();
        LoweringGear.Lines lines = new LoweringGear.Lines(l.count(), l.lugFromBase(), l.lugOffAxis(),
                l.lugHalfSpread(), l.line(), new LoweringGear.Winch(l.winch().ratingEach(), l.winch().brakeHeat(),
                l.winch().behindPivot(), winchAnchor.or(() -> l.winch().anchor()), Annotations.NOTHING),
                        l.payOutMismatch(),
                l.sheaveEfficiency(), l.ends(), l.slack(), Annotations.NOTHING);
        LoweringGear gear = new LoweringGear(g.means(), g.rate(), g.wander(), g.margin(), Optional.of(lines),
                g.poles(), g.stays(), g.pullOver(), g.pivotHold(), g.sideThrusters(), g.landing(), g.temperature(),
                g.annotations());
        return new Hull(h.id(), h.body(), h.massProperties(),
                h.placement(), Optional.of(gear), Seat.usual(Seat.Kind.GROUND, sunk, 0), h.hatches(),
                h.stations(), h.cover(), h.held(), h.annotations());
    }

    private static Plan plan(Hull hull, List<Preparation> preparations) {
        Plan p = SamplePlans.plan(List.of(hull));
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), preparations, p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.arrangeWithin(), p.annotations());
    }

    private static Optional<GearDigging.Item> item(GearDigging digging, String part) {
        return digging.items().stream().filter(i -> i.part().equals(part)).findFirst();
    }

    /** A level square on a plane: half of it cut and half filled, a wedge each, a3 tan s / 8. */
    @Test
    void padsOnASlopeCutWhatTheyFill() {
        GearDigging digging = dug(plan(hull(Optional.empty(), 0), List.of()),
                SamplePlans.ground((e, n) -> 0.1 * e));
        GearDigging.Item foot = item(digging, "pad, left pole").orElseThrow();
        double side = Math.sqrt(2) + 1;
        assertEquals(side * side * side * 0.1 / 8, foot.cut(), MILLIMETRES);
        assertEquals(foot.cut(), foot.fill());
        assertTrue(item(digging, "pad, right pole").isPresent());
        assertTrue(item(digging, "pad, winch of lowering line 1").isPresent());
        assertTrue(item(digging, "pad, ballast of left stay").isPresent());
        GearDigging level = dug(plan(hull(Optional.empty(), 0), List.of()),
                SamplePlans.ground((e, n) -> 5));
        assertEquals(List.of(), level.items(), "level ground needs no pads");
    }

    /** A block two metres deep in ground that stands upright that far, and in ground that does not. */
    @Test
    void aBuriedBlockIsDugInAndCoveredUpAgain() {
        Anchor block = new Anchor(Anchor.Kind.BLOCK, OptionalDouble.of(3), OptionalDouble.of(1.5),
                OptionalDouble.of(2), OptionalDouble.of(1.2), OptionalDouble.empty(), OptionalInt.empty(),
                OptionalDouble.empty(), Annotations.NOTHING);
        Plan plan = plan(hull(Optional.of(block), 0), List.of());
        GearDigging digging = dug(plan, SamplePlans.ground((e, n) -> 5));
        GearDigging.Item hole = item(digging, "hole, block of lowering line 1").orElseThrow();
        double depth = block.depth().orElseThrow();
        double length = block.length().orElseThrow() + 1;
        double width = block.width().orElseThrow() + 1;
        double out = depth > 4 * 500 / (1800 * 1.62) * Math.tan(Math.toRadians(45 + 21))
                ? depth / Math.tan(Math.toRadians(33)) : 0;
        double frustum = depth * (length * width + out * (length + width) + out * out * 4 / 3);
        assertEquals(frustum, hole.cut(), ROUNDING);
        double body = block.length().orElseThrow() * block.width().orElseThrow() * block.height().orElseThrow();
        assertEquals(hole.cut() - body, hole.fill(), ROUNDING);
        double left = digging.leftOver(plan).get(0).bank();
        double each = hole.cut() - hole.fill() * 1650 / 1800;
        assertEquals(2 * each, left, ROUNDING);
        assertEquals("A gear", digging.leftOver(plan).get(0).from());
    }

    @Test
    void aSunkHullNeedsABedUnlessOneIsStated() {
        double sunk = 0.8;
        GearDigging digging = dug(plan(hull(Optional.empty(), sunk), List.of()),
                SamplePlans.ground((e, n) -> 5));
        double segment = 3.8 * 3.8 * Math.acos(3 / 3.8) - 3 * Math.sqrt(3.8 * 3.8 - 9);
        assertEquals(38 * segment, item(digging, "bed of the sunk hull").orElseThrow().cut(), ROUNDING);
        Ring all = new Ring(List.of(new Point(100, 50), new Point(200, 50), new Point(200, 250), new Point(100, 250)));
        Preparation bench = new Preparation("bed", Preparation.Kind.TRENCH, all, OptionalDouble.of(4), 0.02, 0.5,
                Annotations.NOTHING);
        assertEquals(List.of(), dug(plan(hull(Optional.empty(), sunk), List.of(bench)),
                SamplePlans.ground((e, n) -> 0.1 * e)).items(), "what the plan states is not derived again");
    }

    private static GearDigging dug(Plan plan, ElevationGrid ground) {
        return GearDigging.of(SiteShapes.of(plan, Optional.of(ground), Map.of()), ground);
    }
}
