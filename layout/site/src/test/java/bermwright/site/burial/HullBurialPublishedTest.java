// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.Point;
import bermwright.published.Published;
import bermwright.published.PublishedRow;
import bermwright.published.PublishedTable;
import bermwright.published.PublishedValue;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.MassProperties;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class HullBurialPublishedTest {
    /** The table prints two decimals: half a unit of the last. */
    private static final double HALF_PRINTED_DIGIT = 0.005;

    @PublishedTable("/bermwright/site/burial/published/long-tube-buckling.csv")
    void longTubes(PublishedRow row) {
        row.assertNear("pressure_Pa", ShellBuckling.longTube(new ShellBuckling.ThinShell(row.number("thickness_m"),
                row.number("modulus_Pa"), 300e6, row.number("poisson")), row.number("radius_m")), HALF_PRINTED_DIGIT);
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, sinking",
            printedValue = 11.2004, unit = "mm", tolerance = 5e-5)
    void sinkingOfALyingHull(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).sinking() * 1000);
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, half width",
            printedValue = 0.317496, unit = "m", tolerance = 5e-7)
    void halfWidthOfContact(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).halfWidth());
    }

    @Test
    @Published(work = "common practice, no source", place = "hull lying on soil of 820 kN/m3, 3888 N/m, peak",
            printedValue = 9.1844, unit = "kPa", tolerance = 5e-5)
    void greatestPressureOnTheSeat(PublishedValue printed) {
        printed.assertEqualTo(SeatLoad.on(3888, 4.5, 820_000).greatest() / 1000);
    }

    /** A crown cell of the depth map lies up to 2.5 degrees aside, and straight cells are a millimetre low there. */
    private static final double CROWN_SHARE = 2e-3;

    @PublishedTable("/bermwright/site/burial/published/soil-weight-over-crown.csv")
    void soilOverTheCrown(PublishedRow row) {
        List<LiftLoad> lifts = buried(row.number("thickness_m"), row.number("density_kg_m3")).lifts();
        row.assertShare("pressure_Pa", lifts.get(lifts.size() - 1).greatest(), CROWN_SHARE);
    }

    /** The map's cells of 5 degrees and cells of 0.25 m leave 0.1 % of the soil's weight, 0.07 kN/m; twice that. */
    @Test
    @Published(work = "common practice, no source", place = "soil over a hull of radius 4.5 m under 2.5 m at 35"
            + " degrees, 1700 kg/m3, worked by hand", printedValue = 73.10, unit = "kN/m", tolerance = 0.15)
    void soilOverTheWholeHull(PublishedValue printed) {
        printed.assertEqualTo((buried(2.5, 1700).seat().perLength() - MASS * GRAVITY / LENGTH) / 1000);
    }

    /** Slide-rule figures of the table: one unit of their last digit. */
    private static final double LAST_DIGIT = 1e-4;

    @PublishedTable("/bermwright/site/burial/published/saddle-coefficients.csv")
    void shellsOnSaddles(PublishedRow row) {
        double contact = Math.toRadians(row.number("contact_deg"));
        row.assertNear("kept_over_saddle", SaddleShell.keptOverSaddle(contact), 5 * LAST_DIGIT);
        row.assertNear("horn_free", SaddleShell.hornMoment(contact, 2), LAST_DIGIT);
        row.assertNear("horn_held", SaddleShell.hornMoment(contact, 0.3), LAST_DIGIT);
    }

    private static final double GRAVITY = 1.62;
    private static final double MASS = 71e3;
    private static final double LENGTH = 50;

    /** A hull of radius 4.5 m on level ground at 35 degrees, laid down eastwards along a line of nodes. */
    private static HullBurial buried(double thickness, double density) {
        Hull h = SamplePlans.hull("A", new Point(25, 40), 90);
        CoverPlan cover = new CoverPlan(thickness, OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), CoverPlan.End.COVERED, CoverPlan.End.COVERED,
                Optional.empty(), Optional.empty(), 0, 0.5, OptionalDouble.of(density), List.of(), Annotations.NOTHING);
        Hull wide = new Hull(h.id(),
                new HullBody(LENGTH, 9, h.baseEnd(), h.farEnd(), h.skin(), h.stowage(), h.shell(),
                        h.innerPressure()),
                new MassProperties(MASS, h.centreOfMassFromBase(), h.centreOfMassOffAxis(),
                h.centreOfMassSpread(), h.inertiaAboutCentre(), h.residualPropellant()), h.placement(),
                h.lowering(), h.seat(), h.hatches(), h.stations(), Optional.of(cover), h.held(),
                h.annotations());
        Plan p = SamplePlans.plan(List.of(wide));
        GroundPlan g = p.ground();
        GroundPlan.Regolith r = g.regolith();
        GroundPlan steep = new GroundPlan(g.elevationFile(), g.referenceSystem(), g.elevationSpread(),
                g.elevationCorrelation(), GRAVITY, g.pivotFriction(), new GroundPlan.Regolith(
                        r.composition(), r.placedDensity(), r.bankDensity(),
                        r.looseDensity(), r.densitySpreadShare(), r.densityProfile(), Math.toRadians(35),
                        r.frictionAngle(), r.cohesion(), r.frictionSpread(), r.cohesionSpread(), r.strengthProfile(),
                        r.annotations()), g.annotations());
        Plan plan = new Plan(p.title(), steep, p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(),
                p.landingPads(), p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), p.exposure(),
                p.rules(), p.orderOfWork(), p.arrangeWithin(), p.annotations());
        ElevationGrid ground = ElevationGrid.sampled(new GridFrame(321, 441, 0, 0, 0.25), (e, n) -> 0);
        return HullBurial.of(plan, SiteCover.raised(plan, ground, ground)).get(0);
    }
}
