// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.lowering.ReferenceBody;
import bermwright.lowering.rig.Anchor;
import bermwright.lowering.sequence.Lowering;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.thrust.Thrusters;
import bermwright.regolith.LunarProfile;
import bermwright.regolith.Regolith;
import bermwright.regolith.Soils;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ChoiceTest {
    private static final Regolith SOIL = LunarProfile.with(Soils.strength(42, 500));
    private static final LoweringCase CASE = new LoweringCase(ReferenceBody.onRim(), ReferenceBody.fullRig(-56), SOIL,
            Math.toRadians(0.1));

    private static double fullTension(Suggestion s) {
        LoweringResult result = Lowering.of(CASE.with(s.rig())).result().orElseThrow();
        assertTrue(result.deadPoints().isEmpty());
        return result.greatestLineTension();
    }

    @Test
    void lowestPolesJustKeepTheWinchRating() {
        double rating = 80_000;
        Suggestions found = Suggestions.of(CASE, Limits.of(rating, 50, 9));
        Suggestion lowest = found.of(Suggestion.Goal.LOWEST_POLES).orElseThrow();
        assertTrue(fullTension(lowest) <= rating * 1.0001);
        assertTrue(fullTension(lowest) > rating * 0.995, "" + fullTension(lowest));
        Suggestion least = found.of(Suggestion.Goal.LEAST_TENSION).orElseThrow();
        assertTrue(fullTension(least) < fullTension(lowest));
        assertEquals(75, least.height(), 1e-9);
        Suggestion lightest = found.of(Suggestion.Goal.LIGHTEST_POLES).orElseThrow();
        assertTrue(lightest.poleMass() <= lowest.poleMass());
        assertTrue(fullTension(lightest) <= rating * 1.0001);
        assertEquals(3, found.words().size());
        found.found().forEach(s -> assertFalse(s.governs().isBlank()));
    }

    @Test
    void noPoleElsewhereIsLowerForTheSameRating() {
        double rating = 80_000;
        Limits limits = Limits.of(rating, 50, 9);
        Suggestion lowest = Suggestions.of(CASE, limits).of(Suggestion.Goal.LOWEST_POLES).orElseThrow();
        for (double behind = 10; behind <= 60; behind += 3.7) {
            Limits here = new Limits(rating, behind, behind + 0.1, 75);
            Suggestions.of(CASE, here).of(Suggestion.Goal.LOWEST_POLES)
                    .ifPresent(s -> assertTrue(s.height() >= lowest.height() - 0.02));
        }
    }

    @Test
    void saysWhereNothingKeepsTheRating() {
        Suggestions found = Suggestions.of(CASE, Limits.of(10_000, 50, 9));
        assertTrue(found.of(Suggestion.Goal.LOWEST_POLES).isEmpty());
        assertTrue(found.words().get(0).contains("no poles keep a winch of 10.0 kN"), found.words().get(0));
    }

    @Test
    void putsAllMeansSideBySide() {
        List<MeansRow> rows = Comparison.of(ReferenceBody.onRim(), Math.toRadians(1),
                new Comparison.Candidates(Optional.of(CASE), Optional.of(new Thrusters(6, 20_000, 46, 0, 320)),
                        Comparison.Touchdown.USUAL));
        assertEquals(List.of("lines over poles", "lines without poles", "side thrusters", "lands lying"),
                rows.stream().map(MeansRow::means).toList());
        assertTrue(rows.get(1).greatestLoad() > 2 * rows.get(0).greatestLoad());
        assertFalse(rows.get(1).against().isEmpty());
        assertTrue(rows.get(2).gearMass() > 1.1 * 1234);
        rows.forEach(r -> assertTrue(r.gearMass() > 0 && !r.gear().isEmpty(), r.means()));
    }

    @Test
    void loadGrowsWithMassInProportionAndWithTheHeightOfTheCentreOfMass() {
        List<PayloadSweep.PayloadPoint> byMass = PayloadSweep.byMass(CASE, 60_000, 120_000, 3);
        assertEquals(2 * byMass.get(0).lineEach(), byMass.get(2).lineEach(), 1e-6);
        List<PayloadSweep.PayloadPoint> byCentre = PayloadSweep.byCentre(CASE, 15, 30, 4);
        for (int i = 1; i < byCentre.size(); i++) {
            assertTrue(byCentre.get(i).lineEach() > byCentre.get(i - 1).lineEach());
            assertTrue(byCentre.get(i).balanceTilt() < byCentre.get(i - 1).balanceTilt());
        }
    }

    @Test
    void everyKindOfAnchorHoldsAndWeighsSomething() {
        List<Anchor> kinds = List.of(new Anchor.Plate(2, 1, 1.5), new Anchor.Block(2, 1, 1, 1.5),
                new Anchor.Ballast(30_000), new Anchor.Screw(4, 0.4, 2), new Anchor.Pile(2, 0.15, 2.5),
                new Anchor.OnSlope(new Anchor.Plate(2, 1, 1.5), 0.1, 0));
        List<Class<?>> left = new ArrayList<>(List.of(Anchor.class.getPermittedSubclasses()));
        for (Anchor anchor : kinds) {
            left.remove(anchor.getClass());
            for (double elevation = 0; elevation <= 1.5; elevation += 0.25) {
                assertTrue(anchor.capacity(SOIL, 1.62, elevation) > 500, anchor.kind() + " at " + elevation);
            }
            assertTrue(anchor.gearMass() > 5, anchor.kind());
        }
        assertEquals(List.of(), left);
    }
}
