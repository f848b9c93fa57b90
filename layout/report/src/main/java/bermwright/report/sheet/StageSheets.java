// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.ModelNote;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.TimeBars;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.answer.WorkAnswers;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
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
        List<TimeBars.Step> steps = work.stages().stream()
                .map(s -> new TimeBars.Step(s.step().id(), WorkAnswers.title(s.step()),
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
            part.stations().forEach(s -> high.computeIfAbsent(s.name(), k -> new ArrayList<>())
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
        return AnswerSheets.table("part-built", "Cover and dose after each step that places soil" + mark,
                WorkAnswers.PART_BUILT, WorkAnswers.Built.of(built, exposure));
    }

    /**
     * The steps as a table.
     *
     * @param steps the steps
     * @return the table
     */
    public Table steps(List<WorkAnswers.InStage> steps) {
        return AnswerSheets.table("order-of-work", "Order of work" + Marks.of(work.notes()), WorkAnswers.STAGES, steps);
    }

    /**
     * The steps that count no time because none is known for them, in words.
     *
     * @return a sentence; empty where every step has a time
     */
    public String untimed() {
        String steps = work.stages().stream().filter(s -> s.bar().machineHours().isEmpty()).map(s -> s.step().id())
                .collect(Collectors.joining(", "));
        return steps.isEmpty() ? "" : " No time is known for, and none is counted for: " + steps + ".";
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
        return AnswerSheets.table("setting-out", "Points to set out, in projected metres", WorkAnswers.SETTING_OUT,
                points);
    }
}
