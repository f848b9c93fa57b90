// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.foundation.Point;
import bermwright.lowering.chain.Part;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The sample hull of 3.8 m radius stands at 150, 120 and is laid down to the north; its right is east. */
class FaultPlacesTest {
    private static final Point BASE = new Point(150, 120);
    private static final Point PIVOT = new Point(150, 123.8);
    private static final Point WINCH = new Point(156, 78.8);
    private static final Point POLE_FOOT = new Point(156, 113.8);
    private static final Point STAY_ANCHOR = new Point(156, 85.8);
    private static final Point PULL_OVER = new Point(150, 183.8);
    private static final Set<Part> OF_THE_HULL = EnumSet.of(Part.LUG, Part.PULL_OVER_LUG, Part.HULL);
    private static final double SAME_PLACE = 1e-9;
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 3);

    private static Finding of(LoweringRule rule, String... parts) {
        return Finding.of(rule, Level.WARN, Figures.NONE, "text").with(parts);
    }

    private static Point place(Hull hull, Finding finding) {
        return new FaultPlaces(hull, new LayPlane(hull.baseCentre().moved(hull.layDownAzimuth(), 3.8, 0), 3,
                hull.layDownAzimuth(), 0, new TrueMetres(1))).of(finding);
    }

    private static Point place(Finding finding) {
        return place(SamplePlans.hull("A", BASE, 0), finding);
    }

    private static void assertAt(Point expected, Point actual, String about) {
        assertEquals(expected.east(), actual.east(), SAME_PLACE, about);
        assertEquals(expected.north(), actual.north(), SAME_PLACE, about);
    }

    /** Where a rigger would look, by the words the part has on pages. */
    private static Point byWords(String words) {
        if (words.contains("pivot")) {
            return PIVOT;
        } else if (words.contains("pull-over")) {
            return PULL_OVER;
        } else if (words.contains("stay")) {
            return STAY_ANCHOR;
        } else if (words.contains("pole") || words.contains("head")) {
            return POLE_FOOT;
        }
        return WINCH;
    }

    @ParameterizedTest
    @EnumSource
    void standsWhereThePartStands(Part part) {
        Point expected = OF_THE_HULL.contains(part) ? BASE : byWords(part.words());
        assertAt(expected, place(of(LoweringRule.LOWERING_FACTOR, part.words(), "held")), part.words());
    }

    @Test
    void theFirstOfSeveralPartsCounts() {
        assertAt(PIVOT, place(of(LoweringRule.LOWERING_FACTOR, Part.PIVOT_HOLD.words(), Part.WINCH.words())), "pivot");
        assertAt(WINCH, place(of(LoweringRule.LOWERING_FACTOR, Part.WINCH.words(), Part.PIVOT_HOLD.words())), "winch");
    }

    @ParameterizedTest
    @CsvSource({"a lowering line; its winch or its anchor, 156, 78.8", "a pole, 156, 113.8",
        "a stay or its anchor, 156, 85.8", "the hold at the pivot, 150, 123.8",
        "the pull-over line; its winch or anchor, 150, 183.8", "power (brakes close), 150, 120"})
    void standsWhereTheLostThingStood(String lost, double east, double north) {
        assertAt(new Point(east, north), place(of(LoweringRule.LOWERING_SINGLE_FAILURE, lost.replace(';', ','))), lost);
    }

    @ParameterizedTest
    @CsvSource({"LOWERING_POLE_IN_SWEEP, 156, 113.8", "LOWERING_LINE_SLACK, 156, 78.8",
        "LOWERING_EDGE_SINKS, 150, 123.8", "LOWERING_NO_GEAR, 150, 120", "LOWERING_CENTRE_OF_MASS_OUTSIDE, 150, 120"})
    void standsWhereTheRuleLooks(LoweringRule rule, double east, double north) {
        assertAt(new Point(east, north), place(of(rule)), rule.id());
    }

    @Test
    void turnsWithTheHullAndKeepsToTheMapsMetres() {
        Hull hull = SamplePlans.hull("A", BASE, 90);
        Finding pole = of(LoweringRule.LOWERING_FACTOR, Part.POLE.words());
        assertAt(new Point(143.8, 114), place(hull, pole), "laid down to the east, its right is south");
        LayPlane wide = new LayPlane(new Point(151.9, 120), 3, hull.layDownAzimuth(), 0, new TrueMetres(2));
        assertAt(new Point(146.9, 117), new FaultPlaces(hull, wide).of(pole), "two true metres in one of the map");
    }

    @Test
    void withoutThatGearItStandsAtTheBase() {
        Hull bare = SamplePlans.hull("A", BASE, 0).withLowering(Optional.empty());
        for (Part part : Part.values()) {
            Point expected = part.words().contains("pivot") ? PIVOT : BASE;
            assertAt(expected, place(bare, of(LoweringRule.LOWERING_FACTOR, part.words())), part.words());
        }
    }

    /** A winch of 1 kN fails, and the finding lies where it is to be mended. */
    @Test
    void aWeakWinchIsFoundWhereItStands() {
        LoweringGear g = SamplePlans.gear();
        LoweringGear.Lines l = g.lines().orElseThrow();
        LoweringGear.Winch w = l.winch();
        LoweringGear.Winch weak = new LoweringGear.Winch(OptionalDouble.of(1e3), w.brakeHeat(), w.behindPivot(),
                w.anchor(), w.annotations());
        LoweringGear.Lines lines = new LoweringGear.Lines(l.count(), l.lugFromBase(), l.lugOffAxis(),
                l.lugHalfSpread(), l.line(), weak, l.payOutMismatch(), l.sheaveEfficiency(), l.ends(), l.slack(),
                l.annotations());
        Hull hull = SamplePlans.hull("A", BASE, 0).withLowering(Optional.of(new LoweringGear(g.means(), g.rate(),
                g.wander(), g.margin(), Optional.of(lines), g.poles(), g.stays(), g.pullOver(), g.pivotHold(),
                g.sideThrusters(), g.landing(), g.temperature(), g.annotations())));
        List<Finding> found = LaydownOfHull.of(SamplePlans.plan(List.of(hull)), hull, LEVEL).findings().stream()
                .filter(f -> f.parts().contains(Part.WINCH.words())).toList();
        assertFalse(found.isEmpty());
        found.forEach(f -> assertAt(WINCH, f.place().orElseThrow(), f.text()));
        assertTrue(found.stream().anyMatch(f -> f.level() == Level.REFUSE));
    }
}
