// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.WorkRule;
import bermwright.foundation.ModelNote;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Rules;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import bermwright.terrain.gridfile.GeographicPlace;
import bermwright.terrain.gridfile.ReferenceSystem;
import bermwright.terrain.relief.SunPlace;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The order of work with dates: all work goes on at its full pace while the sun is up, and at the plan's share of it
 * while the sun is down.
 *
 * <p>The sun is up while any of its disc stands over the level horizon of the site; hills are left out, so that a site
 * in a hollow has longer nights, one on a rise shorter ones.
 *
 * @param steps      the steps with begin and end
 * @param nights     the nights until the work ends
 * @param end        when the last step ends
 * @param stoodStill how much longer the work takes than by its pace alone (days)
 */
public record WorkCalendar(List<Dated> steps, List<Night> nights, Instant end, double stoodStill) {
    private static final double HOURS_A_DAY = 24;
    private static final double NEVER_AFTER_DAYS = 4000;
    private static final Duration STEP = Duration.ofMinutes(30);

    /** Copies the lists. */
    public WorkCalendar {
        steps = List.copyOf(steps);
        nights = List.copyOf(nights);
    }

    /**
     * A step with its dates, by universal time.
     *
     * @param step  its id
     * @param start its begin
     * @param end   its end
     */
    public record Dated(String step, Instant start, Instant end) {
    }

    /**
     * A time during which the sun is down, by universal time; the last one may reach beyond the work.
     *
     * @param sunset  its begin; the begin of the work where the sun is down then
     * @param sunrise its end
     */
    public record Night(Instant sunset, Instant sunrise) {
    }

    /**
     * The calendar of an assessment.
     *
     * @param assessment the assessment
     * @return the calendar; empty where the plan has no first day of work or no order of work, where the elevation file
     *     does not say where on the Moon it lies, and where the sun never lets the work end
     */
    public static Optional<WorkCalendar> of(Assessment assessment) {
        Rules rules = assessment.plan().rules();
        Optional<ReferenceSystem> system = assessment.ground().file().referenceSystem();
        if (rules.workStart().isEmpty() || assessment.stages().isEmpty() || system.isEmpty()) {
            return Optional.empty();
        }
        GeographicPlace place = system.get().geographic(assessment.ground().grid().frame().centre());
        return of(assessment.stages().get(), rules, Math.toRadians(place.latitudeDeg()),
                Math.toRadians(place.longitudeDeg()));
    }

    /** Why a plan that states its first day of work has no dates, or dates that leave work out. */
    static Optional<Finding> lacking(Plan plan, SiteGround ground, Optional<StagesResult> work) {
        Rules rules = plan.rules();
        if (rules.workStart().isEmpty() || work.isEmpty()) {
            return Optional.empty();
        }
        Optional<ReferenceSystem> system = ground.file().referenceSystem();
        if (system.isEmpty()) {
            return Optional.of(lacking("no dates: the elevation file does not say where on the Moon it lies, so nights"
                    + " are not known"));
        }
        GeographicPlace place = system.get().geographic(ground.grid().frame().centre());
        if (of(work.get(), rules, Math.toRadians(place.latitudeDeg()), Math.toRadians(place.longitudeDeg()))
                .isEmpty()) {
            return Optional.of(lacking("no dates: with the sun over this site and a night_work_share of "
                    + rules.nightWorkShare() + " the work does not end in ten years"));
        }
        return !plan.machines().isEmpty() ? Optional.empty() : Optional.of(lacking("dates in which soil takes no"
                + " time: the plan has no machine, so its hours are not known"));
    }

    private static Finding lacking(String what) {
        return Finding.of(WorkRule.CALENDAR_LACKS, Finding.Level.WARN, "plan", Finding.Figures.NONE,
                "work_start is stated, and gives " + what + ".");
    }

    static Optional<WorkCalendar> of(StagesResult work, Rules rules, double latitude, double longitude) {
        Instant start = rules.workStart().orElseThrow().atStartOfDay(ZoneOffset.UTC).toInstant();
        Pace pace = new Pace(start, latitude, longitude, rules.nightWorkShare());
        if (!pace.reaches(work.days())) {
            return Optional.empty();
        }
        List<Dated> dated = new ArrayList<>();
        for (Stage stage : work.stages()) {
            dated.add(new Dated(stage.step().id(), pace.when(stage.bar().start()), pace.when(stage.bar().end())));
        }
        Instant end = pace.when(work.days());
        double took = Duration.between(start, end).toMinutes() / 60.0 / HOURS_A_DAY;
        return Optional.of(new WorkCalendar(dated, pace.nights(end), end, Math.max(0, took - work.days())));
    }

    /** What the dates rest on. */
    public static ModelNote note() {
        return new ModelNote("work-calendar", "dates of the work by the sun's height over a level horizon; all work"
                + " goes on by day, and at a stated share of its pace by night", "1970 to 2095; no hills, no waiting"
                + " for power to come back after a night", "an hour or two at sunrise and sunset, days where hills"
                + " shade the site", ModelNote.Status.COMPUTED,
                "Meeus (1998), Astronomical algorithms, chapters 25, 47, 53");
    }

    /** Work done by a time, in days of full pace, half hour by half hour. */
    private static final class Pace {
        private final Instant start;
        private final List<Double> done = new ArrayList<>(List.of(0.0));
        private final List<Boolean> isUp = new ArrayList<>();
        private final double latitude;
        private final double longitude;
        private final double nightShare;

        Pace(Instant start, double latitude, double longitude, double nightShare) {
            this.start = start;
            this.latitude = latitude;
            this.longitude = longitude;
            this.nightShare = nightShare;
        }

        private Instant at(int step) {
            return start.plus(STEP.multipliedBy(step));
        }

        /** Half an hour more; up or down as in its middle. */
        private void more() {
            boolean up = SunPlace.at(at(isUp.size()).plus(STEP.dividedBy(2))).elevation(latitude, longitude)
                    > -SunPlace.HALF_DISC;
            isUp.add(up);
            done.add(done.get(done.size() - 1) + (up ? 1 : nightShare) * STEP.toMinutes() / 60 / HOURS_A_DAY);
        }

        boolean reaches(double work) {
            double most = NEVER_AFTER_DAYS * HOURS_A_DAY * 60 / STEP.toMinutes();
            while (done.get(done.size() - 1) < work && isUp.size() < most) {
                more();
            }
            return done.get(done.size() - 1) >= work;
        }

        /** When work has come so far. */
        Instant when(double work) {
            int step = 0;
            while (done.get(step) < work) {
                step++;
            }
            if (step == 0) {
                return start;
            }
            double share = (work - done.get(step - 1)) / (done.get(step) - done.get(step - 1));
            return at(step - 1).plusSeconds(Math.round(share * STEP.toSeconds()));
        }

        List<Night> nights(Instant end) {
            List<Night> nights = new ArrayList<>();
            for (int i = 0; i < isUp.size(); i++) {
                if (!isUp.get(i)) {
                    int from = i;
                    while (i < isUp.size() && !isUp.get(i)) {
                        i++;
                        if (i == isUp.size() && Duration.between(end, at(i)).toDays() < NEVER_AFTER_DAYS) {
                            more();
                        }
                    }
                    nights.add(new Night(at(from), at(i)));
                }
            }
            return nights;
        }
    }
}
