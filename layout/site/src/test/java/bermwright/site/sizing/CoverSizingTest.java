// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.shielding.cover.CoverThickness;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoverSizingTest {
    /** Trials settle to a per cent of the dose, and see a window of the ground. */
    private static final double TRIAL_SHARE = 0.015;
    /** Metre cells cut the slopes of a pit of 30 m to within this share of its volume. */
    private static final double PIT_SHARE = 0.03;
    private static final ElevationGrid GROUND = SamplePlans.ground((e, n) -> 0.02 * e);

    @TempDir
    Path directory;

    private DoseSources sources() {
        return new DoseSources(new Responses(directory), directory);
    }

    private static Plan limited(Plan plan, double limit) {
        ExposurePlan e = plan.exposure();
        ExposurePlan changed = new ExposurePlan(e.stayDays(), e.hoursOutsideADay(), e.timeToShelter(),
                e.solarActivity(), e.solarDate(),
                e.modulationW(), e.event(), e.eventSpectrumFile(), e.eventFit(), e.response(), e.moreResponses(),
                List.of(SamplePlans.limit(ExposurePlan.Over.STAY, limit)), e.people(), e.hazards(),
                e.annotations());
        return new Plan(plan.title(), plan.ground(), plan.hulls(), plan.walls(), plan.tunnels(), plan.keepOuts(),
                plan.corridors(), plan.landingPads(), plan.preparations(), plan.borrowGrounds(), plan.stockpiles(),
                plan.machines(), changed, plan.rules(), plan.orderOfWork(), plan.arrangeWithin(), plan.annotations());
    }

    private static Plan plan(CoverPlan.End base, double limit) {
        CoverPlan cover = new CoverPlan(2.5, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), base, CoverPlan.End.COVERED, Optional.empty(), Optional.empty(), 0, 0.5,
                OptionalDouble.empty(), List.of(), Annotations.NOTHING);
        return limited(SamplePlans.plan(List.of(
                SamplePlans.hull("A", new Point(120, 120), 75).withCover(Optional.of(cover)),
                SamplePlans.hull("B", new Point(120, 180), 90).withCover(Optional.of(cover)))), limit);
    }

    @Test
    void findsACoverThatMeetsTheLimitWithLessSoilThanTheSameThicknessEverywhere() {
        Plan plan = plan(CoverPlan.End.COVERED, 0.06);
        SizedCover sized = CoverSizing.least(plan, GROUND, GROUND, sources(), Progress.NONE);
        assertTrue(sized.isMet());
        SiteCover cover = SiteCover.raised(sized.plan(), GROUND, GROUND);
        SiteDose dose = SiteDose.of(sized.plan(), cover, sources(), Progress.NONE);
        for (StationDose station : dose.stations()) {
            assertTrue(station.covered().high() <= 0.06 * (1 + TRIAL_SHARE), station.covered().toString());
        }
        assertEquals(sized.volume(), cover.volume(), 0.01 * cover.volume());
        double uniform = sized.trade().stream().filter(TradePoint::isMet).findFirst().orElseThrow().volume();
        assertTrue(sized.volume() < uniform, sized.volume() + " against " + uniform);
        for (int i = 1; i < sized.trade().size(); i++) {
            assertTrue(sized.trade().get(i).volume() > sized.trade().get(i - 1).volume());
        }
        CoverThickness found = sized.thickness().get("A");
        assertTrue(found.baseEnd() < found.crown(), "ends far from the station need less: " + found);
        assertTrue(sized.volume() <= sized.uniformVolume().orElseThrow());
        assertEquals(List.of("A/bunks", "B/bunks"), sized.stations().stream().map(SizedCover.StationShare::station)
                .toList());
        sized.stations().forEach(s -> assertTrue(s.used() > s.dose().high() / 0.06 && s.used() <= 1,
                "an hour a day outside comes on top: " + s));
        assertTrue(sized.isBorrowEnough(), "no borrow ground, so nothing is said against it");
        for (SizedCover.Interval interval : sized.intervals()) {
            assertTrue(sized.trade().stream().filter(p -> p.thickness() >= interval.from()
                    && p.thickness() <= interval.to() && p.station().startsWith(interval.hull() + "/"))
                    .allMatch(TradePoint::isMet), interval.toString());
        }
    }

    @Test
    void saysThatAnOpenEndStandsInTheWayAndWhatWouldHelp() {
        SizedCover sized = CoverSizing.least(plan(CoverPlan.End.OPEN, 0.04), GROUND, GROUND, sources(),
                Progress.NONE);
        assertFalse(sized.isMet());
        Finding finding = sized.findings().stream().filter(f -> f.rule().id().equals("size-cover-unmet")).findFirst()
                .orElseThrow();
        assertEquals(Finding.Level.REFUSE, finding.level());
        assertTrue(finding.text().contains("Covering its open or held ends too"), finding.text());
        assertTrue(finding.text().contains("m thick everywhere, would meet it"), finding.text());
        assertTrue(finding.text().contains("It holds for"), finding.text());
        assertEquals("Cover its ends too, or shorten the hours outside or the stay.", finding.todo());
        // Of covers that come about as near, the thinnest: the open end gives the dose, and soil does not help it.
        double least = sized.trade().stream().mapToDouble(TradePoint::used).min().orElseThrow();
        double shown = sized.stations().stream().mapToDouble(SizedCover.StationShare::used).max().orElseThrow();
        assertTrue(shown <= 1.05 * least, shown + " against " + least);
        double thickest = sized.trade().get(sized.trade().size() - 1).volume();
        assertTrue(sized.volume() < thickest, sized.volume() + " against " + thickest);
    }

    @Test
    void doesNotAdviseToCoverEndsThatAreCovered() {
        Finding finding = CoverSizing.least(plan(CoverPlan.End.COVERED, 0.001), GROUND, GROUND, sources(),
                Progress.NONE).findings().stream().filter(f -> f.rule().id().equals("size-cover-unmet")).findFirst()
                .orElseThrow();
        assertEquals("Shorten the hours outside or the stay.", finding.todo());
        assertTrue(finding.text().contains(", with 1.0 h a day outside, is "), finding.text());
    }

    /** A square pit of 30 m dug 2 m deep at 45 degrees leaves a frustum standing on its side slopes. */
    @Test
    void borrowCountsSideSlopesAndWhatTheMoundForbids() {
        SizedCover far = CoverSizing.least(borrowing(plan(CoverPlan.End.COVERED, 0.06), 230, 250), GROUND, GROUND,
                sources(), Progress.NONE);
        double frustum = 2.0 / 3 * (30 * 30 + 26 * 26 + Math.sqrt(30 * 30 * 26 * 26));
        assertEquals(0.9 * frustum, far.bankAvailable().orElseThrow(), PIT_SHARE * frustum);
        Finding lacking = far.findings().stream().filter(f -> f.rule().id().equals("size-cover-borrow")).findFirst()
                .orElseThrow();
        assertEquals(far.bankVolume(), lacking.measured().orElseThrow());
        assertEquals(far.bankAvailable().getAsDouble(), lacking.limit().orElseThrow());
        assertFalse(far.isBorrowEnough());
        assertTrue(lacking.text().contains("What they give"), lacking.text());
        SizedCover near = CoverSizing.least(borrowing(plan(CoverPlan.End.COVERED, 10), 125, 184), GROUND, GROUND,
                sources(), Progress.NONE);
        assertTrue(near.bankAvailable().orElseThrow() < 0.6 * far.bankAvailable().getAsDouble(),
                "beside a hull, under the toe of its mound: " + near.bankAvailable());
    }

    private static Plan borrowing(Plan plan, double east, double north) {
        BorrowGround borrow = new BorrowGround("pit", new Ring(List.of(new Point(east, north),
                new Point(east + 30, north), new Point(east + 30, north + 30), new Point(east, north + 30))), 2,
                Math.toRadians(45), 0.9, 5, Annotations.NOTHING);
        return new Plan(plan.title(), plan.ground(), plan.hulls(), plan.walls(), plan.tunnels(), plan.keepOuts(),
                plan.corridors(), plan.landingPads(), plan.preparations(), List.of(borrow), plan.stockpiles(),
                plan.machines(), plan.exposure(), plan.rules(), plan.orderOfWork(), plan.arrangeWithin(),
                plan.annotations());
    }

    @Test
    void canBeCancelled() {
        Progress cancelled = new Progress() {
            @Override
            public void report(double share, String step) {
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancellationException.class,
                () -> CoverSizing.least(plan(CoverPlan.End.COVERED, 0.06), GROUND, GROUND, sources(), cancelled));
    }
}
