// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class PublishedRuleTest extends PublishedRule {
    /** A class that breaks the rule in three ways, planted so that the rule is seen to bite. */
    static final class Planted {
        @Test
        void carriesNothing() {
        }

        @Test
        @Published(work = "a work", place = "a place", printedValue = 1, unit = "m", tolerance = 0.1)
        void takesNoFigure() {
        }

        @Published(work = "a work", place = "a place", printedValue = 1, unit = "m", tolerance = 0.1)
        void neverRuns(PublishedValue printed) {
            printed.assertEqualTo(2);
        }
    }

    @Test
    void findsPlantedBreaches() {
        assertEquals(List.of("Planted.carriesNothing carries neither @Published nor @PublishedTable",
                "Planted.neverRuns is never run, for it carries no @Test",
                "Planted.takesNoFigure does not take a PublishedValue"),
                PublishedRule.troubles(List.of(Planted.class)).stream().sorted().toList());
    }
}
