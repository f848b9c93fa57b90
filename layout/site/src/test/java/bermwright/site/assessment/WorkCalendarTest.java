// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Rules;
import bermwright.site.planfile.PlanValues;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.gridfile.GroundFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkCalendarTest {
    private static final LocalDate START = LocalDate.of(2031, 3, 2);
    private static final Instant BEGIN = Instant.parse("2031-03-02T00:00:00Z");
    private static final double WORK = 20;
    /** Steps of half an hour, rounded at both ends (days). */
    private static final double HALF_HOURS = 0.05;
    /**
     * Mean synodic month (days), Meeus (1998), chapter 49; it varies by 0.3 days, and so does the time between two
     * sunsets at one place.
     */
    private static final double MONTH = 29.53;
    private static final double VARIES = 0.35;

    private static Optional<WorkCalendar> calendar(double work, double nightShare, double latitudeDeg) {
        StagesResult stages = stages(work);
        Rules rules = new Rules(0.1, 8, 3, 2, 2, 1.5, 1.5, 1, Optional.of(START), nightShare, 0.1, 0.2,
                Annotations.NOTHING);
        return WorkCalendar.of(stages, rules, Math.toRadians(latitudeDeg), 0);
    }

    private static StagesResult stages(double work) {
        return new StagesResult(List.of(), work, List.of(), Set.of(), List.of(), List.of(), List.of(), List.of());
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / 1440.0;
    }

    @Test
    void workThatGoesOnByNightTakesItsOwnTime() {
        WorkCalendar through = calendar(WORK, 1, 0).orElseThrow();
        assertEquals(WORK, days(BEGIN, through.end()), HALF_HOURS);
        assertEquals(0, through.stoodStill(), HALF_HOURS);
    }

    @Test
    void workThatStandsStillTakesItsOwnTimeAndTheNightsWithinIt() {
        WorkCalendar still = calendar(WORK, 0, 0).orElseThrow();
        double nights = still.nights().stream().mapToDouble(n -> days(n.sunset(),
                n.sunrise().isBefore(still.end()) ? n.sunrise() : still.end())).filter(d -> d > 0).sum();
        assertTrue(nights > 10, "20 days of work meet a night of the Moon");
        assertEquals(WORK + nights, days(BEGIN, still.end()), HALF_HOURS);
        assertEquals(nights, still.stoodStill(), HALF_HOURS);
        WorkCalendar half = calendar(WORK, 0.5, 0).orElseThrow();
        assertTrue(half.end().isBefore(still.end()) && half.stoodStill() > 0);
    }

    @Test
    void sunsetsComeAMonthApart() {
        List<WorkCalendar.Night> nights = calendar(60, 0, 10).orElseThrow().nights();
        assertTrue(nights.size() >= 3, nights::toString);
        for (int i = 2; i < nights.size(); i++) {
            assertEquals(MONTH, days(nights.get(i - 1).sunset(), nights.get(i).sunset()), VARIES);
        }
    }

    @Test
    void aFirstDayThatGivesNoDatesIsSaid(@TempDir Path directory) throws IOException {
        Path file = directory.resolve("nowhere.asc");
        Files.writeString(file, "ncols 2\nnrows 2\nxllcenter 0\nyllcenter 0\ncellsize 1\n0 0\n0 0\n");
        SiteGround ground = new SiteGround(GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE),
                directory);
        Plan plan = SamplePlans.plan(List.of());
        assertEquals(Optional.empty(), WorkCalendar.lacking(plan, ground, Optional.of(stages(WORK))));
        Finding said = WorkCalendar.lacking(PlanValues.with(plan, "rules.work_start", "\"2031-03-02\""), ground,
                Optional.of(stages(WORK))).orElseThrow();
        assertTrue(said.text().contains("does not say where on the Moon it lies"), said.text());
    }

    @Test
    void workThatNeverEndsHasNoDates() {
        assertEquals(Optional.empty(), calendar(5000, 0, 0));
    }
}
