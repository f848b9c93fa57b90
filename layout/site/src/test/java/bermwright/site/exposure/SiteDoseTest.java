// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Responses;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SiteDoseTest {
    @TempDir
    Path directory;

    private SiteDose dose(Plan plan, SiteCover cover) {
        return SiteDose.of(plan, cover, new DoseSources(new Responses(directory), directory), Progress.NONE);
    }

    @Test
    void coverTakesMostOfTheDoseAway() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0.01 * e);
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));
        SiteCover cover = SiteCover.raised(plan, ground, ground);
        SiteDose dose = dose(plan, cover);
        StationDose bunks = dose.stations().get(0);
        assertTrue(bunks.reduction() > 0.5);
        assertEquals(1, dose.stations().size());
        assertTrue(cover.findings().stream().noneMatch(f -> f.level() == Finding.Level.REFUSE
                && !f.rule().id().equals("cover-hatch-buried")));
    }

    private static Hull with(Hull hull, List<Station> stations, List<Hull.SkinLayer> skin) {
        return new Hull(hull.id(), new HullBody(hull.length(),
                hull.diameter(), hull.baseEnd(), hull.farEnd(), skin, hull.stowage(), hull.shell(),
                hull.innerPressure()),
                hull.massProperties(), hull.placement(), hull.lowering(), hull.seat(), hull.hatches(), stations,
                hull.cover(), hull.held(), hull.annotations());
    }

    private static Station station(String id, double along, double up) {
        return new Station(id, along, 0, up, 0.5, true, Annotations.NOTHING);
    }

    private static List<Finding> of(SiteDose dose, String rule) {
        return dose.findings().stream().filter(f -> f.rule().id().equals(rule)).toList();
    }

    /** Under the floor a station lies in the soil, past the far end outside: each is refused and gives no dose. */
    @Test
    void stationsInTheSoilAndPastTheEndAreRefusedByName() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Hull hull = SamplePlans.hull("A", new Point(120, 150), 75);
        Plan plan = SamplePlans.plan(List.of(with(hull, List.of(station("bunks", 18, 1), station("cellar", 18, -4.2),
                station("porch", 39, 0)), hull.skin())));
        SiteDose dose = dose(plan, SiteCover.raised(plan, ground, ground));
        assertEquals(List.of("bunks"), dose.stations().stream().map(StationDose::station).toList());
        List<Finding> outside = of(dose, "station-outside-hull");
        assertEquals(List.of("A/cellar", "A/porch"), outside.stream().map(Finding::subject).toList());
        outside.forEach(f -> assertEquals(Finding.Level.REFUSE, f.level()));
        assertEquals(4.2, outside.get(0).measured().orElseThrow(), 1e-12);
        assertEquals(3.8, outside.get(0).limit().orElseThrow(), 1e-12);
        assertEquals(39, outside.get(1).measured().orElseThrow(), 1e-12);
        assertEquals(38, outside.get(1).limit().orElseThrow(), 1e-12);
    }

    /** Twenty metres of soil are more than any response was made for; one per cent of the dose there is said. */
    @Test
    void doseThroughMoreSoilThanTheResponseWasMadeForIsSaid() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Plan plain = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));
        assertEquals(List.of(), of(dose(plain, SiteCover.raised(plain, ground, ground)), "dose-extrapolated"));
        ElevationGrid deep = SamplePlans.ground((e, n) -> 27);
        SiteDose dose = dose(plain, SiteCover.standing(plain, ground, ground, deep));
        Finding said = of(dose, "dose-extrapolated").get(0);
        assertEquals("A/bunks", said.subject());
        assertEquals(Finding.Level.WARN, said.level());
        assertTrue(said.measured().orElseThrow() > 0.9, said.text());
        assertEquals(said.measured().orElseThrow(), dose.stations().get(0).seen().shareBeyondTable(), 1e-12);
    }

    /** Soil is piled on until a small part of the dose, not yet a tenth, comes from beyond the table. */
    @Test
    void aSmallShareBeyondTheTableIsANote() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));
        double thin = 0;
        boolean noted = false;
        for (double top = 7; top < 20 && !noted; top += 0.25) {
            double height = top;
            SiteDose dose = dose(plan, SiteCover.standing(plan, ground, ground, SamplePlans.ground((e, n) -> height)));
            double share = dose.stations().get(0).seen().shareBeyondTable();
            assertTrue(share >= thin, "more soil, less beyond the table");
            thin = share;
            List<Finding> notes = of(dose, "dose-beyond-table");
            assertEquals(share > 0.01 && share <= 0.1, !notes.isEmpty(), "share " + share);
            noted = !notes.isEmpty();
        }
        assertTrue(noted, "no height of soil gave a note");
    }

    /** What did not settle within the greatest number of rays is a finding and marks the model, at that station. */
    @Test
    void aDoseThatHasNotSettledIsSaid() {
        ElevationGrid ground = SamplePlans.ground((e, n) -> 0);
        Plan plan = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));
        SiteDose dose = dose(plan, SiteCover.raised(plan, ground, ground));
        assertEquals(List.of(), of(dose, "dose-unsettled"));
        ModelNote note = dose.models().stream().filter(m -> m.id().equals("sky-directions")).findAny().orElseThrow();
        assertEquals(ModelNote.Status.COMPUTED, note.status());
        StationDose settled = dose.stations().get(0);
        StationDose.Seen seen = settled.seen();
        StationDose open = new StationDose(settled.hull(), settled.station(), settled.place(), settled.stormShelter(),
                settled.occupancyShare(), settled.standing(), settled.parts(), new StationDose.Seen(
                seen.leastArealDensity(), seen.medianArealDensity(), seen.shareBeyondTable(), seen.shareBeyondEdge(),
                seen.directions(), 0.02, seen.worst(), seen.distribution(), seen.picture()));
        Finding said = DoseFindings.of(List.of(open)).stream()
                .filter(f -> f.rule().id().equals("dose-unsettled")).findAny().orElseThrow();
        assertEquals("A/bunks", said.subject());
        assertEquals(Finding.Level.WARN, said.level());
        assertEquals(0.02, said.measured().orElseThrow(), 1e-12);
        ModelNote marked = DoseFindings.directions(List.of(open));
        assertEquals(ModelNote.Status.EXTRAPOLATED, marked.status());
        assertEquals("not settled at A/bunks: up to 2.0 % open", marked.spread());
        StationDose standing = new StationDose(settled.hull(), settled.station(), settled.place(),
                settled.stormShelter(), settled.occupancyShare(), new StationDose.Upright(settled.upright(), 0.03),
                settled.parts(), settled.seen());
        Finding upright = DoseFindings.of(List.of(standing)).stream()
                .filter(f -> f.rule().id().equals("dose-upright-unsettled")).findAny().orElseThrow();
        assertEquals(0.03, upright.measured().orElseThrow(), 1e-12);
        assertEquals("not settled at A/bunks upright: up to 3.0 % open",
                DoseFindings.directions(List.of(standing)).spread());
    }
}
