// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.TimeBars;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.stages.StagesResult;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The order of work with dates, as table and time bars; also for the editor.
 *
 * @param calendar the dates
 * @param work     the work
 */
public record CalendarSheets(WorkCalendar calendar, StagesResult work) {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final double HOURS_A_DAY = 24;

    /** How long it takes, in a sentence. */
    public String words() {
        return "Work ends on " + TIME.format(calendar.end()) + " universal time; it stands still for "
                + Words.fixed(calendar.stoodStill(), 1) + " days in " + calendar.nights().size()
                + " nights. The sun's height is that over a level horizon: hills make nights longer.";
    }

    /** Begin and end of each step. */
    public Table dates() {
        List<List<String>> rows = new ArrayList<>();
        calendar.steps().forEach(s -> rows.add(List.of(s.step(), TIME.format(s.start()), TIME.format(s.end()),
                Words.fixed(days(s.start(), s.end()), 2))));
        return new Table("calendar", "Dates of the work, universal time", List.of(Column.words("step", "step"),
                Column.words("start", "begins"), Column.words("end", "ends"),
                Column.number("took_days", "with nights (days)")), rows);
    }

    /** The nights. */
    public Table nights() {
        return new Table("nights", "Nights until the work ends, universal time", List.of(
                Column.words("sunset", "sun down from"), Column.words("sunrise", "to"),
                Column.number("length_days", "length (days)")), calendar.nights().stream().map(n -> List.of(
                TIME.format(n.sunset()), TIME.format(n.sunrise()), Words.fixed(days(n.sunset(), n.sunrise()), 2)))
                .toList());
    }

    /** The steps over the calendar. */
    public Drawing bars() {
        Instant begin = calendar.steps().stream().map(WorkCalendar.Dated::start).min(Instant::compareTo)
                .orElse(calendar.end());
        List<TimeBars.Step> steps = new ArrayList<>();
        for (int i = 0; i < calendar.steps().size(); i++) {
            WorkCalendar.Dated dated = calendar.steps().get(i);
            steps.add(new TimeBars.Step(dated.step(), dated.step() + ", " + TIME.format(dated.start()).substring(0, 10)
                    + " to " + TIME.format(dated.end()).substring(0, 10), new TimeBars.Span(days(begin, dated.start()),
                    days(begin, dated.end())), work.stages().get(i).bar().critical(),
                    work.stages().get(i).step().after()));
        }
        return new TimeBars("calendar", "Dates of the work: " + TIME.format(begin).substring(0, 10) + " to "
                + TIME.format(calendar.end()).substring(0, 10), "days from the begin, nights counted", steps).drawing();
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / 60.0 / HOURS_A_DAY;
    }
}
