// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.PairingRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.arrangement.ArrangedSite.Turned;
import bermwright.site.clearance.Clearance;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.footprint.SiteShapes;
import bermwright.site.laydown.KnownLaydowns;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ArrangementSearchLawTest {
    /** What a turned or moved site may cost more or less (1), as the planner was promised. */
    private static final double ONE_PERCENT = 0.01;
    private static final int STEPS = 1;
    /** Steps after which a made-up site of two hulls gets no better by a percent. */
    private static final int CONVERGED = 3;

    private static final int LATTICE = 6;
    private static final int HEADINGS = 4;

    private static List<Hull> two(Turned turned) {
        return List.of(turned.hull("A", 80, 100, 75), turned.hull("B", 90, 260, 75));
    }

    private static double hours(ArrangementSearch.Found found) {
        return found.arrangements().get(0).figures().hours().orElseThrow();
    }

    @Test
    void aWiderAreaIsNeverWorseThanTheNarrowerItStartsFrom() {
        Turned not = Turned.NOT;
        ArrangedSite narrow = ArrangedSite.of(not, Optional.of(not.ring(60, 60, 200, 60, 200, 330, 60, 330)), two(not));
        ArrangementSearch.Found first = narrow.search(3, STEPS);
        Plan best = first.arrangements().get(0).plan();
        ArrangedSite wide = ArrangedSite.of(not, Optional.of(not.ring(40, 40, 295, 40, 295, 360, 40, 360)),
                best.hulls());
        assertTrue(hours(wide.search(5, 1)) <= hours(first));
        QuickSite within = narrow.quick(Set.of(0, 1));
        for (int i = 0; i < 2; i++) {
            assertTrue(within.isWithin(i, Pose.of(best.hulls().get(i))), best.hulls().get(i).id());
        }
    }

    @Test
    void aQuarterTurnAndAShiftByWholeCellsTurnAndShiftTheAnswer() {
        double hours = hours(ArrangedSite.of(Turned.NOT, Optional.empty(), two(Turned.NOT)).search(7, CONVERGED));
        Turned turned = new Turned(1, 0, 0);
        assertEquals(hours, hours(ArrangedSite.of(turned, Optional.empty(), two(turned)).search(7, CONVERGED)),
                hours * ONE_PERCENT);
        Turned moved = new Turned(0, 4000, -700);
        assertEquals(hours, hours(ArrangedSite.of(moved, Optional.empty(), two(moved)).search(7, CONVERGED)),
                hours * ONE_PERCENT);
    }

    @Test
    void aHeldHullStaysAndTheSameSeedAndStepsGiveTheSamePlan() {
        ArrangedSite site = ArrangedSite.of(Turned.NOT, Optional.empty(), two(Turned.NOT))
                .with(p -> PlanValues.with(p, "hulls[1].held", "true"));
        ArrangementSearch.Found one = site.search(11, STEPS);
        assertFalse(one.arrangements().isEmpty());
        one.arrangements().forEach(a -> assertEquals(site.plan().hulls().get(1), a.plan().hulls().get(1)));
        assertFalse(site.plan().hulls().get(0).equals(one.arrangements().get(0).plan().hulls().get(0)));
        ArrangementSearch.Found again = site.search(11, STEPS);
        assertEquals(texts(one), texts(again));
    }

    /** All pairs of poses on a lattice: where one of them is let pass, the search answers, and at no more cost. */
    @Test
    void noPairOfPosesOnALatticeCostsLessThanTheAnswer() {
        Turned not = Turned.NOT;
        Ring within = not.ring(60, 60, 225, 60, 225, 330, 60, 330);
        ArrangedSite site = ArrangedSite.of(not, Optional.of(within), two(not));
        QuickSite quick = site.quick(Set.of(0, 1));
        List<List<Pose>> alone = new ArrayList<>();
        for (int hull = 0; hull < 2; hull++) {
            List<Pose> let = new ArrayList<>();
            for (int k = 0; k < LATTICE * LATTICE * HEADINGS; k++) {
                Pose pose = Pose.of(new Point(70 + 145.0 * (k / HEADINGS % LATTICE) / (LATTICE - 1),
                        70 + 250.0 * (k / HEADINGS / LATTICE) / (LATTICE - 1)),
                        Azimuth.ofDegrees(360.0 * (k % HEADINGS) / HEADINGS));
                if (quick.alone(hull, pose).isAllowed()) {
                    let.add(pose);
                }
            }
            alone.add(let);
        }
        double least = Double.POSITIVE_INFINITY;
        int pairs = 0;
        for (Pose a : alone.get(0)) {
            for (Pose b : alone.get(1)) {
                Estimate e = quick.of(List.of(a, b));
                pairs += e.isAllowed() ? 1 : 0;
                least = e.isAllowed() ? Math.min(least, e.hours()) : least;
            }
        }
        assertTrue(pairs > 10, pairs + " pairs let pass");
        assertTrue(hours(site.search(2, CONVERGED)) <= least * (1 + ONE_PERCENT), "lattice: " + least);
    }

    /** Clearance and lowering asked anew of each answer refuse nothing, and the search did meet what they refuse. */
    @Test
    void nothingThatIsRefusedIsAnswered() {
        ArrangedSite site = ArrangedSite.of(Turned.NOT, Optional.empty(), two(Turned.NOT));
        ArrangementSearch.Found found = site.search(13, STEPS);
        assertFalse(found.arrangements().isEmpty());
        for (Arrangement one : found.arrangements()) {
            Plan plan = one.plan();
            List<Finding> all = new ArrayList<>(Clearance.of(SiteShapes.of(plan, Optional.of(site.ground()), Map.of()),
                    Optional.of(site.ground())).findings());
            new KnownLaydowns().all(plan, site.ground()).forEach(l -> all.addAll(l.findings()));
            assertEquals(List.of(), all.stream().filter(f -> f.level() == Finding.Level.REFUSE).map(Finding::text)
                    .toList());
        }
        ArrangementSearch.Found none = ArrangementSearch.run(new ArrangementSearch.Task(site.plan(), site.ground(),
                Set.of(0, 1), 13), (asked, progress) -> new Judge.Verdict(asked, List.of(refusal()),
                        found.planned().figures()), (done, known) -> done < STEPS, Progress.NONE);
        assertEquals(List.of(), none.arrangements());
        assertTrue(none.refused().containsKey(PairingRule.HULL_SPACING.id()), none.refused().toString());
    }

    private static Finding refusal() {
        return Finding.of(PairingRule.HULL_SPACING, Finding.Level.REFUSE, "A", Finding.Figures.NONE, "Refused.");
    }

    private static List<String> texts(ArrangementSearch.Found found) {
        List<String> texts = new ArrayList<>();
        found.arrangements().forEach(a -> texts.add(PlanFiles.text(a.plan())));
        return texts;
    }
}
