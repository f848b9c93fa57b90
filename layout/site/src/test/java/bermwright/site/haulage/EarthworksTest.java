// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.example.SiteExample.Change;
import bermwright.site.example.SiteExample;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.KeepOut;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Machine;
import bermwright.site.plan.Plan;
import bermwright.terrain.earthworks.CutAndFill;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import org.junit.jupiter.api.Test;

class EarthworksTest {
    /** Sides of a pit are made at nodes a metre apart, each about as wide as a node. */
    private static final double SAMPLED = 0.01;
    /** Hours follow from distances over the lattice. */
    private static final double LATTICE = 0.03;

    private static SoilNeed need(String to, double placed, double east, double north) {
        return new SoilNeed(to, SoilNeed.Kind.COVER, placed, 1650, List.of(SiteExample.square(east, north, 40)));
    }

    private static EarthworksResult of(Plan plan, ElevationGrid ground, SoilNeed... needs) {
        return Earthworks.of(new EarthworksInput(plan, ground, List.of(needs), List.of(),
                EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE);
    }

    private static Plan plan(BorrowGround... borrow) {
        Change change = new Change();
        change.borrow = List.of(borrow);
        return SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change);
    }

    private static boolean has(EarthworksResult result, String rule) {
        return result.findings().stream().anyMatch(f -> f.rule().id().equals(rule));
    }

    @Test
    void volumesFollowTheMassOfTheSoil() {
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8)),
                SiteExample.level(), need("A", 1000, 300, 324));
        assertEquals(1000, result.placed(), 1e-6);
        assertEquals(1000 * 1650.0 / 1800, result.bank(), 1e-3);
        assertEquals(1000 * 1650.0 / 1450, result.loose(), 1e-6);
        assertEquals(1000 * 1650.0, result.mass(), 1e-6);
        assertEquals(0.1 * Math.sqrt(2) * result.bank(), result.spread().bank(), 1e-6);
        assertEquals(0, result.shortage());
    }

    @Test
    void aSquarePitHoldsItsFrustumTimesItsYield() {
        BorrowGround borrow = SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8);
        double inset = 2 * 0.8 / Math.tan(Math.toRadians(30));
        double floor = (60 - inset) * (60 - inset);
        double exact = 0.8 / 3 * (3600 + floor + Math.sqrt(3600 * floor));
        EarthworksResult result = of(plan(borrow), SiteExample.level(), need("A", 100, 300, 324));
        assertEquals(0.9 * exact, result.dug().get(0).usable(), SAMPLED * exact);
        assertEquals(0.9 * exact - result.bank(), result.borrowLeft(), SAMPLED * exact);
    }

    @Test
    void machineHoursAreLoadsTimesTheirRoundTrip() {
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8)),
                SiteExample.level(), need("A", 1000, 300, 324));
        Haul haul = result.hauls().get(0);
        assertEquals(224, haul.distance(), LATTICE * 224);
        double loads = 1000 * 1650.0 / 2000;
        double cycle = 300 + 120 + 2 * haul.distance() / 0.6;
        assertEquals(loads * cycle / 3600, result.machineHours().orElseThrow(), 0.01);
        EarthworksResult.MachineDays days = result.machineDays().get(0);
        assertEquals(days.hours() / (2 * 16 * 0.8), days.days(), 1e-9);
    }

    @Test
    void theNearerBorrowGroundIsUsedFirst() {
        Plan plan = plan(SiteExample.borrow("far", SiteExample.square(100, 100, 60), 0.8),
                SiteExample.borrow("near", SiteExample.square(300, 200, 60), 0.8));
        EarthworksResult result = of(plan, SiteExample.level(), need("A", 3000, 300, 324));
        Haul near = result.hauls().stream().filter(h -> h.from().equals("near")).findFirst().orElseThrow();
        Haul far = result.hauls().stream().filter(h -> h.from().equals("far")).findFirst().orElseThrow();
        assertTrue(near.bank() > 2000 && far.bank() > 0);
        assertTrue(near.distance() < far.distance());
        assertEquals(result.bank(), near.bank() + far.bank(), 1e-3);
    }

    @Test
    void tooLittleSoilIsAFindingWithTheShortage() {
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(300, 100, 30), 0.5)),
                SiteExample.level(), need("A", 5000, 300, 324));
        Finding shortage = result.findings().stream().filter(f -> f.rule().id().equals("borrow-shortage")).findFirst()
                .orElseThrow();
        assertEquals(result.shortage(), shortage.measured().orElseThrow(), 1e-6);
        assertEquals(5000 * 1650.0 / 1800, result.bank(), 1);
        assertEquals(0, result.borrowLeft(), 0.01);
    }

    @Test
    void withoutAnyBorrowGroundEverythingIsShort() {
        EarthworksResult result = of(plan(), SiteExample.level(), need("A", 5000, 300, 324));
        assertEquals(5000 * 1650.0 / 1800, result.shortage(), 1e-3);
        assertTrue(has(result, "borrow-shortage"));
    }

    @Test
    void noWayRoundIsAFindingAtTheBlockingPlace() {
        ElevationGrid trench = SiteExample.ground((e, n) -> Math.abs(n - 200) < 5 ? -20 : 0);
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8)), trench,
                need("A", 1000, 300, 324));
        Finding blocked = result.findings().stream().filter(f -> f.rule().id().equals("no-way-round")).findFirst()
                .orElseThrow();
        assertEquals(195, blocked.place().orElseThrow().north(), 10);
        assertFalse(has(result, "borrow-shortage"));
        assertTrue(result.hauls().isEmpty());
    }

    @Test
    void waysLeadAroundKeepOuts() {
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8));
        Ring wide = new Ring(List.of(new bermwright.foundation.Point(200, 190),
                new bermwright.foundation.Point(400, 190), new bermwright.foundation.Point(400, 200),
                new bermwright.foundation.Point(200, 200)));
        change.keepOuts = List.of(new KeepOut("K", "rocks", wide, Annotations.NOTHING));
        Plan plan = SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change);
        Haul haul = of(plan, SiteExample.level(), need("A", 1000, 300, 324)).hauls().get(0);
        double around = Math.hypot(100, 90) + Math.hypot(100, 124);
        assertTrue(haul.distance() > around, "distance " + haul.distance());
        assertTrue(haul.distance() < 1.1 * around, "distance " + haul.distance());
    }

    @Test
    void withoutMachinesHoursAreNotKnown() {
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8));
        change.machines = List.<Machine>of();
        EarthworksResult result = of(SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change),
                SiteExample.level(), need("A", 1000, 300, 324));
        assertTrue(result.machineHours().isEmpty());
        assertTrue(has(result, "no-machine"));
        assertEquals(224, result.hauls().get(0).distance(), 1e-6);
    }

    @Test
    void densitiesTheFileDoesNotStateAreSaid() {
        assertEquals(3, of(plan(), SiteExample.level()).findings().stream()
                .filter(f -> f.rule().id().equals("density-missing")).count());
    }

    @Test
    void theMassHaulCurveEndsAtNothingAndItsAreaIsVolumeTimesWay() {
        Plan plan = plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8));
        EarthworksInput input = new EarthworksInput(plan, SiteExample.level(), List.of(need("A", 1000, 300, 324)),
                List.of(), EarthworksInput.Objective.MACHINE_HOURS);
        EarthworksResult result = Earthworks.of(input, Progress.NONE);
        MassHaulCurve curve = MassHaulCurve.of(input, result, 2).orElseThrow();
        assertEquals(0, curve.azimuth().degrees(), 1e-9);
        assertEquals(0, curve.ordinates().get(curve.ordinates().size() - 1), 1e-6);
        assertEquals(result.bank(), curve.ordinates().stream().mapToDouble(v -> v).max().orElseThrow(), 1e-6);
        assertEquals(result.bank() * 224, curve.moment(), 0.002 * curve.moment());
    }

    @Test
    void leastEnergyMayChooseAnotherBorrowGroundThanLeastHours() {
        // Level way for the same time: 194 m + 12 m / 0.3 = 234 m; for the same energy: 194 m + 12 m 4 / (6 x 0.15)
        // = 247 m. The level pit is 241 m away.
        ElevationGrid ground = SiteExample.ground((e, n) -> n < 250 ? Math.max(-12, (n - 250) / 10) : 0);
        Change change = new Change();
        change.borrow = List.of(SiteExample.borrow("low", SiteExample.square(300, 130, 40), 0.8),
                SiteExample.borrow("level", SiteExample.square(300, 565, 40), 0.8));
        Plan plan = SiteExample.with(SiteExample.plan(SiteExample.hull("A", 300, 300, 0)), change);
        List<SoilNeed> needs = List.of(need("A", 500, 300, 324));
        String hours = Earthworks.of(new EarthworksInput(plan, ground, needs, List.of(),
                EarthworksInput.Objective.MACHINE_HOURS), Progress.NONE).hauls().get(0).from();
        EarthworksResult energy = Earthworks.of(new EarthworksInput(plan, ground, needs, List.of(),
                EarthworksInput.Objective.ENERGY), Progress.NONE);
        assertEquals("level", energy.hauls().get(0).from());
        assertTrue(energy.energy().orElseThrow() > 0);
        assertEquals("low", hours);
    }

    @Test
    void thePitLeftBehindHoldsWhatWasTaken() {
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8)),
                SiteExample.ground((e, n) -> 0.02 * e), need("A", 1000, 300, 324));
        DugGround dug = result.dug().get(0);
        assertTrue(dug.depth() > 0.2 && dug.depth() < 0.5, "depth " + dug.depth());
        ElevationGrid before = SiteExample.ground((e, n) -> 0.02 * e);
        ElevationGrid after = dug.dugIn(before).patches().get(0);
        double cut = CutAndFill.between(before.patch(after.frame()), after).cut();
        assertEquals(result.bank(), cut * 0.9, 1e-3 * cut);
    }

    /** A pit that holds a cover and half the ramp to it: the cover is whole, and nothing but spare soil goes back. */
    @Test
    void aRampTakesNoSoilThatItsCoverLacks() {
        Plan plan = plan(SiteExample.borrow("B", SiteExample.square(300, 100, 60), 0.8));
        double usable = Earthworks.usable(new EarthworksInput(plan, SiteExample.level(), List.of(), List.of(),
                EarthworksInput.Objective.MACHINE_HOURS)) * 1800 / 1650;
        for (double share = 0.7; share <= 1.31; share += 0.1) {
            SoilNeed cover = need("A", share * usable, 300, 324);
            Ramp ramp = new Ramp(5, 4, Math.toRadians(14), Math.toRadians(33));
            EarthworksResult result = of(plan, SiteExample.level(), cover, cover.forRamp(ramp));
            double short3 = Math.max(0, (share - 1) * usable * 1650 / 1800);
            assertEquals(short3, result.shortage(), 1e-6 * usable, "share " + share);
            double carried = result.hauls().stream().filter(h -> h.kind() == SoilNeed.Kind.COVER)
                    .mapToDouble(Haul::placed).sum();
            assertEquals(Math.min(1, share) * usable, carried, 1e-6 * usable);
            boolean borrowed = share * usable + ramp.volume() > usable * (1 + 1e-9);
            assertEquals(borrowed, has(result, "ramp-of-cover-soil"), "share " + share);
        }
    }

    @Test
    void nothingIsDugWhereItWouldUndercutAHullOrAnAnchor() {
        BorrowGround near = SiteExample.borrow("B", SiteExample.square(330, 280, 60), 0.8);
        EarthworksResult result = of(plan(near), SiteExample.level(), need("A", 100, 300, 324));
        Finding cutBack = result.findings().stream().filter(f -> f.rule().id().equals("borrow-cut-back")).findFirst()
                .orElseThrow();
        assertEquals(result.dug().get(0).usable(), cutBack.measured().orElseThrow(), 1e-9);
        assertTrue(cutBack.measured().orElseThrow() < cutBack.limit().orElseThrow());
        ElevationGrid after = result.dug().get(0).withUsed(result.dug().get(0).usable()).dugIn(SiteExample.level());
        assertEquals(0, after.height(308.0, 300.0), 1e-12);
        assertTrue(after.height(350.0, 280.0) < -0.5);
    }

    @Test
    void aBorrowGroundOffTheGridGivesNothing() {
        EarthworksResult result = of(plan(SiteExample.borrow("B", SiteExample.square(590, 100, 60), 0.8)),
                SiteExample.level(), need("A", 100, 300, 324));
        assertTrue(has(result, "borrow-off-grid"));
        assertEquals(0, result.borrowLeft());
    }
}
