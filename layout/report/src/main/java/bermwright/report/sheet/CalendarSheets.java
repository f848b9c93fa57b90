// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.TimeBars;
import bermwright.report.page.Table;
import bermwright.site.answer.AsBuiltAnswers;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.stages.StagesResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The order of work with dates, as table and time bars; also for the editor.
 *
 * @param calendar the dates
 * @param work     the work
 */
public record CalendarSheets(WorkCalendar calendar, StagesResult work) {
    private static final double HOURS_A_DAY = 24;
    private static final int DAY_LETTERS = 10;

    /** How long it takes, in a sentence. */
    public String words() {
        return "Work ends on " + AsBuiltAnswers.shown(calendar.end()) + " universal time; it stands still for "
                + Words.fixed(calendar.stoodStill(), 1) + " days in " + calendar.nights().size()
                + " nights. The sun's height is that over a level horizon: hills make nights longer.";
    }

    /** Begin and end of each step. */
    public Table dates() {
        return AnswerSheets.table("calendar", "Dates of the work, universal time", AsBuiltAnswers.DATES,
                calendar.steps());
    }

    /** The nights. */
    public Table nights() {
        return AnswerSheets.table("nights", "Nights until the work ends, universal time", AsBuiltAnswers.NIGHTS,
                calendar.nights());
    }

    /** The steps over the calendar. */
    public Drawing bars() {
        Instant begin = calendar.steps().stream().map(WorkCalendar.Dated::start).min(Instant::compareTo)
                .orElse(calendar.end());
        List<TimeBars.Step> steps = new ArrayList<>();
        for (int i = 0; i < calendar.steps().size(); i++) {
            WorkCalendar.Dated dated = calendar.steps().get(i);
            steps.add(new TimeBars.Step(dated.step(), dated.step() + ", " + day(dated.start()) + " to "
                    + day(dated.end()), new TimeBars.Span(days(begin, dated.start()), days(begin, dated.end())),
                    work.stages().get(i).bar().critical(), work.stages().get(i).step().after()));
        }
        return new TimeBars("calendar", "Dates of the work: " + day(begin) + " to " + day(calendar.end()),
                "days from the begin, nights counted", steps).drawing();
    }

    private static String day(Instant time) {
        return AsBuiltAnswers.shown(time).substring(0, DAY_LETTERS);
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / 60.0 / HOURS_A_DAY;
    }
}
