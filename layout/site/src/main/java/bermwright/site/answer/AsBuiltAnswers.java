// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.finding.WorkRule;
import bermwright.site.answer.AnswerTable.Part;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.assessment.SurveyedHull;
import bermwright.site.assessment.WorkCalendar;
import bermwright.site.burial.MachineOverHull;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was surveyed after steps of the work, and the work's dates. */
public final class AsBuiltAnswers {
    /** Doses that differ by less are the same (1). */
    private static final double SAME = 0.02;
    /** Depths that differ by less are the same (m). */
    private static final double SAME_DEPTH = 0.05;
    /** Said of hulls that the survey has no height over. */
    private static final String NOT_SURVEYED = "not surveyed";
    private static final double MINUTES_OF_A_DAY = 1440;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    /** Least cover as surveyed beside the plan's by then. */
    public static final AnswerTable<BuiltCover> COVERS = new AnswerTable<>("as_built[].covers[]",
            "Least cover as surveyed, beside the plan's by then.", "cover-surface", List.of(
            words("step", "after step", (BuiltCover c) -> c.survey.step().id()),
            words("id", "hull", (BuiltCover c) -> c.cover.id()),
            of("least_depth_m", "least cover", Unit.M, (BuiltCover c) -> c.cover.least().depth()),
            of("planned_depth_m", "planned by then", Unit.M, BuiltCover::planned),
            of("required_m", "required when whole", Unit.M, (BuiltCover c) -> c.cover.least().wanted()),
            of("along_m", "from base plane", Unit.M, (BuiltCover c) -> c.cover.least().along()),
            of("share_below_required", "skin below required depth", Unit.PERCENT,
                    (BuiltCover c) -> c.cover.shareBelowWanted()),
            words("against_plan", "against the plan", BuiltCover::againstPlan)));
    /** Dose as it stands beside the plan's by then. */
    public static final AnswerTable<BuiltDose> DOSES = new AnswerTable<>("as_built[].stations[]",
            "Dose as surveyed for a whole stay as if work stopped then, beside the plan's by then.", "dose-particles",
            List.of(
            words("step", "after step", (BuiltDose d) -> d.survey.step().id()),
            words("hull", "hull", (BuiltDose d) -> d.dose.hull()),
            words("id", "station", (BuiltDose d) -> d.dose.station()),
            of("covered_mSv", "best", Unit.MSV, (BuiltDose d) -> d.dose.covered().best()),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (BuiltDose d) -> d.dose.covered().low()),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (BuiltDose d) -> d.dose.covered().high()),
            of("planned_mSv", "planned by then, best", Unit.MSV, (BuiltDose d) -> d.planned()
                    .map(p -> p.covered().best()).orElse(Double.NaN)),
            of("planned_high_mSv", "planned by then, high", Unit.MSV, BuiltDose::plannedHigh),
            words("against_plan", "against the plan", BuiltDose::againstPlan)));
    /** What was surveyed after a step. */
    public static final AnswerTable<AsBuilt> SURVEYS = new AnswerTable<>("as_built[]",
            "What was surveyed after a step: soil placed and left.", "cover-surface", List.of(
            words("step", "after step", (AsBuilt a) -> a.step().id()),
            said("elevation_file", "survey", (AsBuilt a) -> a.step().asBuilt().flatMap(s -> s.elevationFile())),
            said("surveyed", "surveyed on", (AsBuilt a) -> a.step().asBuilt().flatMap(s -> s.surveyed())
                    .map(LocalDate::toString)),
            maybe("placed_density_kg_m3", "density measured", Unit.KG_M3, (AsBuilt a) -> a.step().asBuilt()
                    .map(s -> s.placedDensity()).orElse(OptionalDouble.empty())),
            of("surveyed_share", "of the ground surveyed", Unit.PERCENT, AsBuilt::surveyed).digits(0),
            of("placed_m3", "placed", Unit.M3, (AsBuilt a) -> a.volumes().placed()),
            of("planned_m3", "planned by then", Unit.M3, (AsBuilt a) -> a.volumes().planned()),
            of("left_m3", "left to place", Unit.M3, (AsBuilt a) -> a.volumes().left()),
            of("over_m3", "higher than planned", Unit.M3, (AsBuilt a) -> a.volumes().over())))
            .with(List.of(Part.all("covers", COVERS, AsBuiltAnswers::covers),
                    Part.all("stations", DOSES, AsBuiltAnswers::doses)));
    /** Hulls as surveyed. */
    public static final AnswerTable<HullEnd> HULLS = new AnswerTable<>("as_built_hulls[]",
            "Hulls as surveyed: how far their ends lie from the plan's places.", "", List.of(
            words("step", "after step", (HullEnd e) -> e.of.step()), words("id", "hull", (HullEnd e) -> e.of.hull()),
            words("end", "end", (HullEnd e) -> e.end.name()),
            of("east_m", "east", Unit.M, (HullEnd e) -> e.end.place().east()),
            of("north_m", "north", Unit.M, (HullEnd e) -> e.end.place().north()),
            of("aside_m", "off in plan", Unit.M, (HullEnd e) -> e.end.aside()),
            maybe("above_m", "higher than planned", Unit.M, (HullEnd e) -> e.end.above())));
    /** Dates of a step. */
    public static final AnswerTable<WorkCalendar.Dated> DATES = new AnswerTable<>("calendar.steps[]",
            "Dates of the work, universal time.", "", List.of(
            words("id", "step", WorkCalendar.Dated::step),
            words("start", "begins", (WorkCalendar.Dated d) -> TIME.format(d.start())),
            words("end", "ends", (WorkCalendar.Dated d) -> TIME.format(d.end())),
            of("took_days", "with nights", Unit.DAYS, (WorkCalendar.Dated d) -> days(d.start(), d.end()))));
    /** Nights. */
    public static final AnswerTable<WorkCalendar.Night> NIGHTS = new AnswerTable<>("calendar.nights[]",
            "Nights until the work ends, universal time.", "", List.of(
            words("sunset", "sun down from", (WorkCalendar.Night n) -> TIME.format(n.sunset())),
            words("sunrise", "to", (WorkCalendar.Night n) -> TIME.format(n.sunrise())),
            of("length_days", "length", Unit.DAYS, (WorkCalendar.Night n) -> days(n.sunset(), n.sunrise()))));
    /** The calendar of the work. */
    public static final AnswerTable<WorkCalendar> CALENDAR = new AnswerTable<>("calendar",
            "The order of work with dates.", "", List.of(
            words("end", "work ends", (WorkCalendar c) -> TIME.format(c.end())),
            of("stood_still_days", "longer by nights", Unit.DAYS, WorkCalendar::stoodStill)))
            .with(List.of(Part.all("steps", DATES, WorkCalendar::steps),
                    Part.all("nights", NIGHTS, WorkCalendar::nights)));

    /** Machines over hulls. */
    public static final AnswerTable<MachineOverHull> CROSSINGS = new AnswerTable<>("earthworks.crossings[]",
            "Soil that must lie over a crown before a loaded machine may cross it; factor of safety 2.",
            "machine-over-hull", List.of(
            words("machine", "machine", MachineOverHull::machine), words("id", "over hull", MachineOverHull::hull),
            maybe("required_m", "required with the pressure inside on", Unit.M, MachineOverHull::on),
            maybe("required_off_m", "required with it off", Unit.M, MachineOverHull::off),
            of("planned_m", "planned over the crown", Unit.M, MachineOverHull::planned),
            words("verdict", "may cross", (MachineOverHull m) -> !m.why().isEmpty() ? "NOT JUDGED: " + m.why()
                    : m.on().isEmpty() ? "NEVER under this cover" : m.off().isEmpty()
                    ? "only while the pressure is on" : "once it lies there")));

    private AsBuiltAnswers() {
    }

    /**
     * A cover as surveyed.
     *
     * @param survey the survey
     * @param cover  the cover
     */
    public record BuiltCover(AsBuilt survey, HullCover cover) {
        double planned() {
            return design().map(d -> d.least().depth()).orElse(Double.NaN);
        }

        private Optional<HullCover> design() {
            return survey.design().stream().filter(d -> d.id().equals(cover.id())).findFirst();
        }

        /**
         * Thinner where the least cover is, where more of the skin lacks depth though the least is the same, and where
         * soil lacks or was not surveyed though neither says so.
         */
        String againstPlan() {
            return survey.unseen().contains(cover.id()) ? NOT_SURVEYED : design().map(d ->
                    cover.least().depth() < d.least().depth() - SAME_DEPTH ? "THINNER than planned"
                    : cover.shareBelowWanted() > d.shareBelowWanted() + SAME ? "MORE skin below required depth"
                    : survey.has(WorkRule.AS_BUILT_LOW, cover.id()) ? "LOWER than planned in places"
                    : survey.has(WorkRule.AS_BUILT_NOT_SURVEYED, cover.id()) ? "as planned where surveyed, not all is"
                    : "as planned or thicker").orElse("not in the plan by then");
        }
    }

    /**
     * An end of a hull as surveyed.
     *
     * @param of  the hull
     * @param end the end
     */
    public record HullEnd(SurveyedHull of, SurveyedHull.End end) {
        /**
         * The ends of hulls.
         *
         * @param hulls the hulls
         * @return their ends, in the same order
         */
        public static List<HullEnd> all(List<SurveyedHull> hulls) {
            return hulls.stream().flatMap(h -> h.ends().stream().map(e -> new HullEnd(h, e))).toList();
        }
    }

    /**
     * A dose as surveyed.
     *
     * @param survey the survey
     * @param dose   the dose
     */
    public record BuiltDose(AsBuilt survey, StationDose dose) {
        Optional<StationDose> planned() {
            return survey.planned().stream().filter(p -> p.hull().equals(dose.hull())
                    && p.station().equals(dose.station())).findFirst();
        }

        double plannedHigh() {
            return planned().map(p -> p.covered().high()).orElse(Double.NaN);
        }

        /** What the survey did not see is not judged, whatever stands there in the plan. */
        String againstPlan() {
            return survey.unseen().contains(dose.hull()) ? NOT_SURVEYED : planned().isEmpty()
                    ? "not judged: no dose of the plan after this step"
                    : dose.covered().high() > plannedHigh() * (1 + SAME) ? "MORE than planned"
                    : dose.covered().high() > plannedHigh() * (1 - SAME) ? "within 2 % of planned"
                    : "less than planned";
        }
    }

    /**
     * The covers of a survey.
     *
     * @param survey the survey
     * @return one for each hull that lies by then
     */
    public static List<BuiltCover> covers(AsBuilt survey) {
        return survey.built().stream().map(c -> new BuiltCover(survey, c)).toList();
    }

    /**
     * The doses of a survey.
     *
     * @param survey the survey
     * @return one for each station of the hulls that lie by then
     */
    public static List<BuiltDose> doses(AsBuilt survey) {
        return survey.stations().stream().map(d -> new BuiltDose(survey, d)).toList();
    }

    /**
     * A time as answers show it.
     *
     * @param time the time
     * @return day, hour and minute, universal time
     */
    public static String shown(Instant time) {
        return TIME.format(time);
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes() / MINUTES_OF_A_DAY;
    }
}
