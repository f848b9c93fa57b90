// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.foundation.Point;
import bermwright.site.SamplePlans;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.StationDose.Spread;
import bermwright.site.finding.Finding;
import bermwright.site.plan.Plan;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SizingFindingsTest {
    private static final Plan PLAN = SamplePlans.plan(List.of(SamplePlans.hull("A", new Point(120, 150), 75)));

    private static List<Finding> found(double open, List<String> covered) {
        CoverTrial.At at = new CoverTrial.At("A", PLAN.hulls().get(0).stations().get(0), Spread.NOTHING,
                Spread.NOTHING, Map.of(), open);
        return new SizingFindings(PLAN, new CoverTrial.Outcome(1, List.of(at), false))
                .of(covered, List.of(), remedy -> 0);
    }

    /** A dose that has not settled under the cover found is said, as it is where doses are handed out. */
    @Test
    void anUnsettledDoseIsSaid() {
        Finding said = found(0.04, List.of("A")).get(0);
        assertEquals("size-cover-unsettled", said.rule());
        assertEquals("A/bunks", said.subject());
        assertEquals(Finding.Level.WARN, said.level());
        assertEquals(0.04, said.measured().orElseThrow(), 1e-12);
        assertEquals(List.of(), found(CoverTrial.SETTLED, List.of("A")));
        assertEquals(1, found(Double.NaN, List.of("A")).size());
        assertEquals(List.of(), found(0.04, List.of("B")), "another hull's cover is not looked for");
    }
}
