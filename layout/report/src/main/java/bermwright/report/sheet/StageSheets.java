// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.ModelNote;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.TimeBars;
import bermwright.report.page.Table.Column;
import bermwright.report.page.Table;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.WorkStep;
import bermwright.site.pose.LyingPose;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The drawings and tables of the order of work, also for the editor.
 *
 * @param work the work step by step
 */
public record StageSheets(StagesResult work) {
    private static final double BARE = 0.05;
    private static final double MILLI = 1000;

    /**
     * The steps over time, with what comes before and the critical chain.
     *
     * @return the drawing
     */
    public Drawing time() {
        List<TimeBars.Step> steps = work.stages().stream().map(s -> new TimeBars.Step(s.step().id(), words(s.step()),
                new TimeBars.Span(s.bar().start(), s.bar().end()), s.bar().critical(), s.step().after())).toList();
        return new TimeBars("order-of-work", "Order of work: " + Words.said(work.days(), "1") + " days in all"
                + Marks.of(work.notes()), "days from the start of the work", steps).drawing();
    }

    /**
     * Soil placed against the height of each cover.
     *
     * @return the drawing
     */
    public Drawing lifts() {
        List<Chart.Curve> curves = new ArrayList<>();
        for (StagesResult.LiftCurve lift : work.lifts()) {
            curves.add(new Chart.Curve("hull " + lift.hull(), lift.points().stream()
                    .map(p -> new Dot(p.height(), p.placed())).toList(), Ink.of(curves.size())));
        }
        return new Chart("volume-by-lift", "Soil placed against the height of the cover" + Marks.of(work.notes()),
                "height over the hull's bed (m)", "placed volume (m³)", curves, List.of(), List.of(),
                Chart.Scale.LINEAR).drawing();
    }

    /** A cover on which no step is left: whole only where the skin has what the plan wants. */
    private static String finished(PartBuilt part, StationDose station) {
        return part.covers().stream().filter(c -> c.id().equals(station.hull())).findFirst()
                .filter(c -> !(c.shareBelowWanted() == 0)).map(c -> c.least().depth() > BARE
                        ? "finished, thin in places" : "finished, SKIN BARE in places").orElse("whole");
    }

    /**
     * Dose at the stations as the cover rises, for the whole stay as if work stopped after a step.
     *
     * @param built  what is part-built after each step that places soil
     * @param models models behind the doses
     * @return the drawing
     */
    public Drawing partBuilt(List<PartBuilt> built, List<ModelNote> models) {
        Map<String, List<Dot>> high = new LinkedHashMap<>();
        for (PartBuilt part : built) {
            double day = Stage.of(work.stages(), part.step()).map(s -> s.bar().end()).orElse(Double.NaN);
            part.stations().forEach(s -> high.computeIfAbsent(s.hull() + "/" + s.station(), k -> new ArrayList<>())
                    .add(new Dot(day, s.covered().high() * MILLI)));
        }
        List<Chart.Curve> curves = new ArrayList<>();
        high.forEach((station, dots) -> curves.add(new Chart.Curve(station, dots,
                Ink.scattered(Ink.of(curves.size()).colour(), Ink.Marker.values()[1 + curves.size() % 4]))));
        return new Chart("part-built", "Dose, high value, if work stopped as the covers rise" + Marks.of(models),
                "days from the start of the work", StationDose.QUANTITY + " for the stay and event (mSv)", curves,
                List.of(), List.of(), Chart.Scale.LOGARITHMIC).drawing();
    }

    /**
     * Cover and dose after each step that places soil, and whether people may count on the cover then.
     *
     * @param built    what is part-built after each step that places soil
     * @param exposure the plan's stay and limits
     * @param mark     words that follow the title
     * @return the table
     */
    public Table partBuilt(List<PartBuilt> built, ExposurePlan exposure, String mark) {
        List<List<String>> rows = new ArrayList<>();
        for (PartBuilt part : built) {
            for (StationDose s : part.stations()) {
                String depth = part.covers().stream().filter(c -> c.id().equals(s.hull())).findFirst()
                        .map(c -> Words.fixed(c.least().depth(), 2)).orElse("");
                rows.add(List.of(part.step(), s.hull(), s.station(), depth, Words.millisieverts(s.covered().best()),
                        Words.millisieverts(s.covered().low()), Words.millisieverts(s.covered().high()),
                        exposure.judgedLimits().isEmpty() ? "" : Words.fixed(100 * PartBuilt.used(exposure, s), 0),
                        isCovered(part, s) ? part.whole().contains(s.hull()) ? finished(part, s)
                                : "PART-BUILT: not safe"
                                : "no cover"));
            }
        }
        return new Table("part-built", "Cover and dose after each step that places soil" + mark, List.of(
                Column.words("step", "after step"), Column.words("hull", "hull"), Column.words("station", "station"),
                Column.number("least_depth_m", "least cover (m)"), Column.number("covered_mSv", "best (mSv)"),
                Column.number("low_mSv", "low (mSv)"), Column.number("high_mSv", "high (mSv)"),
                Column.number("of_limit_percent", "of the narrowest limit, all the time there (%)"),
                Column.words("cover", "cover")), rows);
    }

    private static boolean isCovered(PartBuilt part, StationDose station) {
        return part.covers().stream().anyMatch(c -> c.id().equals(station.hull()));
    }

    /** The steps as a table. */
    public Table steps() {
        List<List<String>> rows = new ArrayList<>();
        for (Stage s : work.stages()) {
            rows.add(List.of(s.step().id(), words(s.step()), String.join(", ", s.step().after()), s.bar().resource(),
                    Words.fixed(s.bar().machineHours(), 1), Words.fixed(s.bar().start(), 2),
                    Words.fixed(s.bar().end(), 2), s.bar().critical() ? "yes" : "no",
                    Words.fixed(s.soil().height(), 2), Words.fixed(s.soil().placed(), 1),
                    Words.fixed(s.soil().ramp(), 1), s.soil().lifts().stream().map(h -> Words.fixed(h,
                            2)).collect(Collectors.joining(" "))));
        }
        return new Table("order-of-work", "Order of work" + Marks.of(work.notes()), List.of(
                Column.words("step", "step"), Column.words("what", "what"), Column.words("after", "after"),
                Column.words("machine", "by"), Column.number("machine_time_h", "machine hours (h)"),
                Column.number("start_days", "start (days)"), Column.number("end_days", "end (days)"),
                Column.words("critical", "critical"), Column.number("height_m", "soil up to (m)"),
                Column.number("placed_m3", "placed (m³)"), Column.number("ramp_m3", "ramp (m³)"),
                Column.words("lift_tops_m", "tops of its lifts (m)")), rows);
    }

    /**
     * The top of each lift as a level, at both ends of its hull: lifts are level across and follow the bed along.
     *
     * @param hulls the hulls as assessed
     * @return the table
     */
    public Table levels(List<HullAssessment> hulls) {
        List<List<String>> rows = new ArrayList<>();
        for (Stage stage : work.stages()) {
            Optional<LyingPose> pose = hulls.stream().filter(h -> h.hull().id().equals(stage.step().of())).findFirst()
                    .flatMap(HullAssessment::lying);
            for (int i = 0; pose.isPresent() && i < stage.soil().lifts().size(); i++) {
                double top = stage.soil().lifts().get(i);
                rows.add(List.of(stage.step().id(), stage.step().of(), Integer.toString(i + 1), Words.fixed(top, 2),
                        Words.fixed(pose.get().bed().height(pose.get().axisStart().plan()) + top, 2),
                        Words.fixed(pose.get().bed().height(pose.get().axisEnd().plan()) + top, 2)));
            }
        }
        return new Table("lift-levels", "Tops of the lifts as levels; datum: the heights of the elevation file",
                List.of(Column.words("step", "step"), Column.words("hull", "hull"), Column.number("number", "lift"),
                Column.number("top_over_bed_m", "top over the hull's bed (m)"),
                Column.number("level_base_m", "level at the base end (m)"),
                Column.number("level_far_m", "level at the far end (m)")), rows);
    }

    /** Points to be staked out. */
    public static Table settingOut(List<SettingOutPoint> points) {
        return new Table("setting-out", "Points to set out, in projected metres", List.of(
                Column.words("point", "point"),
                Column.words("subject", "of"), Column.words("what", "what"), Column.number("east_m", "east (m)"),
                Column.number("north_m", "north (m)"), Column.number("height_m", "height (m)"),
                Column.words("height_of", "height of")),
                points.stream().map(p -> List.of(p.id(), p.subject(), p.kind().word(), Words.fixed(p.place().x(), 3),
                Words.fixed(p.place().y(), 3), Words.fixed(p.place().z(), 3), p.kind().heightOf())).toList());
    }

    private static String words(WorkStep step) {
        String lift = step.lift().isPresent() ? ", stage " + step.lift().getAsInt() : "";
        String height = step.upToHeight().isPresent() ? ", up to " + Words.said(step.upToHeight().getAsDouble(), "m")
                : "";
        String title = step.step().word() + " " + step.of() + lift + height;
        return title.startsWith(step.id()) ? title : step.id() + ": " + title;
    }
}
