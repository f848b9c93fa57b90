// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bermwright.foundation.InputException;
import bermwright.shielding.spectrum.SolarActivity;
import bermwright.site.plan.Plan;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanValuesTest {
    private final Plan plan = PlanFiles.read(Sample.EVERY_KEY, "every-key.json");

    @Test
    void readsAValueInFileUnits() {
        assertEquals(Optional.of("41"), PlanValues.json(plan, "hulls[0].mass_t"));
        assertEquals(Optional.of("101.3"), PlanValues.json(plan, "hulls[0].lay_down_azimuth_deg"));
        assertEquals(Optional.of("[10, 0]"), PlanValues.json(plan, "keep_outs[0].area[1]"));
    }

    @Test
    void readsTheDefaultOfAKeyLeftOut() {
        Plan least = PlanFiles.read(Sample.LEAST, "least.json");
        assertEquals(Optional.of("8"), PlanValues.json(least, "rules.hull_spacing_m"));
        assertEquals(Optional.empty(), PlanValues.json(least, "ground.reference_system"));
    }

    @Test
    void changesAValueAndNothingElse() {
        Plan changed = PlanValues.with(plan, "hulls[0].mass_t", "43.5");
        assertEquals(43_500, changed.hulls().get(0).mass());
        assertEquals(plan, PlanValues.with(changed, "hulls[0].mass_t", "41"));
    }

    @Test
    void givesAKeyThatWasLeftOutAndTakesItAway() {
        Plan least = PlanFiles.read(Sample.LEAST, "least.json");
        Plan changed = PlanValues.with(least, "rules.hull_spacing_m", "11");
        assertEquals(11, changed.rules().hullSpacing());
        assertEquals(8, PlanValues.without(changed, "rules.hull_spacing_m").rules().hullSpacing());
    }

    @Test
    void soilIsNoSteeperInFrictionThanItsStrengthIsReckonedFor() {
        String key = "ground.regolith.friction_angle_deg";
        assertEquals(plan, PlanValues.with(PlanValues.with(plan, key, "60"), key, "41"));
        InputException refused = assertThrows(InputException.class, () -> PlanValues.with(plan, key, "69.7"));
        assertEquals(key, refused.key());
    }

    @Test
    void addsAndDropsListItems() {
        Plan changed = PlanValues.with(plan, "stockpiles[1]", "{\"id\": \"S2\", \"area\": [[0, 0], [1, 0], [1, 1]]}");
        assertEquals(2, changed.stockpiles().size());
        assertEquals(plan, PlanValues.without(changed, "stockpiles[1]"));
    }

    @Test
    void theSunOfADayStandsOverAPresetAndUnderAModulation() {
        assertEquals(97, plan.exposure().modulation());
        Plan dated = PlanValues.without(plan, "exposure.modulation_W");
        assertEquals(SolarActivity.modulationW(LocalDate.of(2031, 5, 1)), dated.exposure().modulation());
        assertEquals(Optional.of(LocalDate.of(2031, 5, 1)), dated.exposure().dayInForce());
        assertEquals(100, PlanValues.without(dated, "exposure.solar_date").exposure().modulation());
        for (String bad : new String[] {"\"2031-13-01\"", "\"1960-01-01\"", "\"May 2031\"", "2031"}) {
            InputException refused = assertThrows(InputException.class,
                    () -> PlanValues.with(plan, "exposure.solar_date", bad));
            assertEquals("exposure.solar_date is " + bad + "; accepted: a date as a text such as \"2031-05-01\", from"
                    + " 1966-01-01 to 2063-12-31", refused.getMessage().replaceFirst("line 1: ", ""));
        }
    }

    @Test
    void refusesWhatAFileWouldRefuse() {
        InputException refused = assertThrows(InputException.class,
                () -> PlanValues.with(plan, "hulls[0].mass_t", "-2"));
        assertEquals("hulls[0].mass_t is -2; accepted: a number 0.001 to 100000, in t",
                refused.getMessage().replaceFirst("line 1: ", ""));
        assertThrows(InputException.class, () -> PlanValues.with(plan, "hulls[7].mass_t", "2"));
        assertThrows(InputException.class, () -> PlanValues.with(plan, "hulls..mass_t", "2"));
    }

    @Test
    void knowsTheKeyBehindAPath() {
        Key key = PlanValues.key("hulls[0].lowering.lines.line.breaking_load_kN").orElseThrow();
        assertEquals("a number greater than 0, at most 1000000, in kN", key.type().accepted());
        assertEquals(Optional.empty(), PlanValues.key("hulls[0].no_such_key"));
    }
}
