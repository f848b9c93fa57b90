// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.CoverRule;
import bermwright.finding.Verdict;
import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.HazardPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class SiteHazardsTest {
    private static final Hull HULL = SamplePlans.hull("A", new Point(60, 60), 90);

    private static SiteHazards of(Plan plan) {
        var ground = SamplePlans.ground((east, north) -> 0);
        return SiteHazards.of(plan, SiteCover.raised(plan, ground, ground), Optional.empty());
    }

    private static Plan plan(Hull hull, UnaryOperator<HazardPlan> change, List<LandingPad> pads) {
        Plan p = SamplePlans.plan(List.of(hull));
        ExposurePlan e = p.exposure();
        ExposurePlan exposure = new ExposurePlan(e.stayDays(), e.hoursOutsideADay(), e.timeToShelter(),
                e.solarActivity(), e.solarDate(),
                e.modulationW(), e.event(), e.eventSpectrumFile(), e.eventFit(), e.response(), e.moreResponses(),
                e.limits(), e.people(), change.apply(e.hazards()), e.annotations());
        return new Plan(p.title(), p.ground(), p.hulls(), p.walls(), p.tunnels(), p.keepOuts(), p.corridors(), pads,
                p.preparations(), p.borrowGrounds(), p.stockpiles(), p.machines(), exposure, p.rules(),
                p.orderOfWork(),
                p.arrangeWithin(), p.annotations());
    }

    private static HazardPlan hazards(double chance, double conductivity, double quake) {
        HazardPlan u = HazardPlan.USUAL;
        return new HazardPlan(chance, u.landings(), u.thrownSoil(), u.surfaceTemperature(), u.surfaceSwing(),
                u.cabinTemperature(), conductivity, u.specificHeat(), quake, Annotations.NOTHING);
    }

    private static JudgedCover line(SiteHazards all, String station, Hazard hazard) {
        return all.judged().stream().filter(l -> l.station().equals(station) && l.hazard() == hazard).findFirst()
                .orElseThrow();
    }

    @Test
    void aCoveredHullIsJudgedForAllAndDoseIsOpenWhereNoneWasAskedFor() {
        SiteHazards all = of(plan(HULL, h -> h, List.of()));
        assertEquals(Verdict.MET, line(all, "", Hazard.METEOROIDS).verdict());
        assertEquals(Verdict.MET, line(all, "bunks", Hazard.HEAT).verdict());
        assertEquals(Verdict.NOT_JUDGED, line(all, "bunks", Hazard.RADIATION).verdict());
        assertTrue(all.findings().isEmpty(), all.findings().toString());
        assertEquals(1, all.judged().stream().filter(l -> l.station().isEmpty() && l.governs()).count());
    }

    @Test
    void aBareHullIsPerforatedMoreOftenAndSaysThatItIsBareSkin() {
        SiteHazards bare = of(plan(HULL.withCover(Optional.empty()), h -> h, List.of()));
        SiteHazards covered = of(plan(HULL, h -> h, List.of()));
        assertTrue(bare.hulls().get(0).meteoroids().chance() > 1e3 * covered.hulls().get(0).meteoroids().chance());
        assertEquals(1, bare.hulls().get(0).meteoroids().byBare(), 1e-12);
        assertTrue(has(bare, CoverRule.COVER_METEOROIDS));
        assertEquals(Verdict.NOT_JUDGED, line(bare, "", Hazard.HEAT).verdict());
    }

    @Test
    void everyInputMovesWhatItShould() {
        SiteHazards all = of(plan(HULL, h -> hazards(1e-15, 1, 1.5), List.of()));
        assertEquals(Verdict.NOT_MET, line(all, "", Hazard.METEOROIDS).verdict());
        assertEquals(Verdict.NOT_MET, line(all, "", Hazard.HEAT).verdict());
        assertEquals(Verdict.NOT_MET, line(all, "", Hazard.MOONQUAKE).verdict());
        assertTrue(has(all, CoverRule.COVER_HEAT) && has(all, CoverRule.COVER_QUAKE));
        double loss = of(plan(HULL, h -> h, List.of())).hulls().get(0).heat().loss();
        assertEquals(100 * loss, all.hulls().get(0).heat().loss(), 1e-6 * loss);
    }

    @Test
    void aPadBringsThrownSoilAndANearerOneMore() {
        assertFalse(of(plan(HULL, h -> h, List.of())).judged().stream().anyMatch(l ->
                l.hazard() == Hazard.THROWN_SOIL));
        double far = of(plan(HULL, h -> h, List.of(pad(400)))).hulls().get(0).thrown().mass();
        SiteHazards near = of(plan(HULL, h -> h, List.of(pad(200))));
        assertTrue(near.hulls().get(0).thrown().mass() > 3 * far);
        assertEquals(Verdict.MET, line(near, "", Hazard.THROWN_SOIL).verdict());
    }

    private static LandingPad pad(double east) {
        return new LandingPad("P", new Point(60 + east, 60), 10, 100, Annotations.NOTHING);
    }

    private static boolean has(SiteHazards all, CoverRule rule) {
        return all.findings().stream().anyMatch(f -> f.rule() == rule);
    }
}
