// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import org.junit.jupiter.api.Test;

class FindingTest {
    @Test
    void aSourceIsOnlyThatOfALimitWhereThereIsOne() {
        Finding near = Finding.of("hull-spacing", Level.REFUSE, "A", Figures.of(3, 8, "m"), "Too near.");
        assertEquals("limit from: hull_spacing_m in the rules of the plan",
                near.from("hull_spacing_m in the rules of the plan").origin());
        assertEquals("source: hulls of the plan", Finding.of("no-hull", Level.REFUSE, "plan", Figures.NONE,
                "No hull.").from("hulls of the plan").origin());
    }

    @Test
    void nothingIsAscribedToTheRulesOfThePlanUnasked() {
        assertEquals("", Finding.of("no-hull", Level.NOTE, "plan", Figures.NONE, "No hull.").source());
    }
}
