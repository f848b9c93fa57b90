// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.shielding.dose.DoseLimit;
import bermwright.site.plan.ExposurePlan.From;
import bermwright.site.plan.ExposurePlan.Over;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LimitInForceTest {
    /** Nothing is reckoned: the figures are the table's or the plan's own. */
    private static final double EXACT = 0;
    private static final String BLOOD = "short term, blood-forming organs";

    private static ExposurePlan.Limit given(Optional<String> name, Optional<Over> over, OptionalDouble limit) {
        return new ExposurePlan.Limit(name, Optional.empty(), Optional.empty(), over, limit, Optional.empty(),
                Annotations.NOTHING);
    }

    @Test
    void aNameGivesAllThatTheTableHas() {
        for (DoseLimit published : DoseLimit.all()) {
            LimitInForce limit = LimitInForce.of(given(Optional.of(published.name()), Optional.empty(),
                    OptionalDouble.empty()));
            assertEquals(published.quantity(), limit.quantity());
            assertEquals(published.from(), limit.from().word());
            assertEquals(published.over(), limit.over().word());
            assertEquals(published.limit(), limit.limit(), EXACT);
            assertEquals(published.source() + "; confirm the revision before use", limit.source());
            assertEquals(List.of(), limit.differences());
        }
    }

    @Test
    void anOwnLimitIsAsThePlanSays() {
        LimitInForce limit = LimitInForce.of(given(Optional.empty(), Optional.empty(), OptionalDouble.of(0.15)));
        assertEquals(new LimitInForce("effective dose", From.ALL, Over.STAY, 0.15,
                "the plan, which names no source", Optional.empty(), List.of()), limit);
    }

    @Test
    void ofAValueBesideANameTheSmallerHolds() {
        LimitInForce above = LimitInForce.of(given(Optional.of(BLOOD), Optional.empty(), OptionalDouble.of(0.3)));
        assertEquals(0.25, above.limit(), EXACT);
        assertEquals(List.of("limit_mSv 300 against 250"), above.differences());
        assertTrue(above.source().startsWith("NASA-STD-3001 Volume 1 Revision C"), above.source());
        LimitInForce below = LimitInForce.of(given(Optional.of(BLOOD), Optional.empty(), OptionalDouble.of(0.1)));
        assertEquals(0.1, below.limit(), EXACT);
        assertEquals(List.of("limit_mSv 100 against 250"), below.differences());
        assertTrue(below.source().startsWith("limit_mSv of the plan, below the published limit " + BLOOD),
                below.source());
        LimitInForce same = LimitInForce.of(given(Optional.of(BLOOD), Optional.of(Over.THIRTY_DAYS),
                OptionalDouble.of(250 / 1000.0)));
        assertEquals(List.of(), same.differences());
    }

    @Test
    void anotherTimeThanThePublishedOneDoesNotHold() {
        LimitInForce limit = LimitInForce.of(given(Optional.of(BLOOD), Optional.of(Over.STAY),
                OptionalDouble.empty()));
        assertEquals(Over.THIRTY_DAYS, limit.over());
        assertEquals(List.of("over \"stay\" against \"30 days\""), limit.differences());
    }

    @Test
    void aCareerCountsAllOfTheStayAndADayOneOfIt() {
        assertEquals(700, Over.CAREER.days(700), EXACT);
        assertEquals(700, Over.STAY.days(700), EXACT);
        assertEquals(365.25, Over.YEAR.days(700), EXACT);
        assertEquals(30, Over.THIRTY_DAYS.days(700), EXACT);
        assertEquals(20, Over.THIRTY_DAYS.days(20), EXACT);
        assertEquals(1, Over.DAY.days(700), EXACT);
        assertEquals(0.5, Over.DAY.days(0.5), EXACT);
    }

    @Test
    void aNameInTheTableStandsOnce() {
        assertEquals(LimitInForce.names().size(), LimitInForce.names().stream().distinct().count());
        assertFalse(LimitInForce.names().isEmpty());
    }
}
