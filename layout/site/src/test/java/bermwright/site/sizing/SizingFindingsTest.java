// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.shielding.dose.OrganDose;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.StationDose;
import bermwright.site.exposure.StationDose.Spread;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Station;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SizingFindingsTest {
    private static final double STAY = 100;

    /** Cosmic rays give 0.1 Sv over the stay and 0.2 Gy-Eq to the skin, the event 0.05 Sv. */
    private static String shorter(String quantity, ExposurePlan.From from, double limit, double dose) {
        StationDose.BySource skin = new StationDose.BySource(spread(0.2), spread(0));
        CoverTrial.At at = new CoverTrial.At("A", new Station("s", 1, 0, 0, 1, false, Annotations.NOTHING), spread(0.1),
                spread(0.05), Map.of(OrganDose.Organ.SKIN, skin), 0);
        return SizingFindings.shorter(new SizingFindings.Unmet(at, new LimitInForce(quantity, from,
                ExposurePlan.Over.STAY, limit, "test", Optional.empty(), List.of()), spread(dose),
                at.in(quantity).cosmic().high()), STAY);
    }

    private static Spread spread(double dose) {
        return new Spread(dose, dose, dose);
    }

    @Test
    void aShorterStayHelpsByWhatTheEventLeaves() {
        String effective = LimitInForce.EFFECTIVE_DOSE;
        assertEquals("It holds for 50 days.", shorter(effective, ExposurePlan.From.ALL, 0.1, 0.15));
        assertEquals("No stay is short enough, since the event alone is above it.",
                shorter(effective, ExposurePlan.From.ALL, 0.04, 0.15));
        assertEquals("It does not hold for a day.", shorter(effective, ExposurePlan.From.COSMIC, 0.0005, 0.1));
    }

    @Test
    void aLimitOfAnOrganGoesByTheOrgansOwnDose() {
        assertEquals("It holds for 25 days.", shorter(OrganDose.Organ.SKIN.quantity(), ExposurePlan.From.COSMIC, 0.05,
                0.2));
    }
}
