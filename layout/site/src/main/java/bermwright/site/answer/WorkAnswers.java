// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.AnswerTable.within;
import static bermwright.site.answer.Figure.count;
import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.list;
import static bermwright.site.answer.Figure.map;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.maybeCount;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.site.answer.AnswerTable.Part;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.PartBuilt;
import bermwright.site.egress.WaysOut;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.SettingOutPoint;
import bermwright.site.stages.SlopeChecks;
import bermwright.site.stages.Stage;
import bermwright.site.stages.StagesResult;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.TreeSet;

/** Tables of soil moved, of the order of work, of points to set out, and of ways out. */
public final class WorkAnswers {
    /** Skin under less soil than this counts as bare (m). */
    private static final double BARE = 0.05;
    /** Soil to be moved, whole. */
    public static final AnswerTable<EarthworksResult> EARTHWORKS = Answers.EARTHWORKS.with(List.of(
            Part.all("hauls", Answers.HAULS, EarthworksResult::hauls),
            Part.all("machines", Answers.MACHINES, EarthworksResult::machineDays)));
    /** The steepest ground that is made. */
    public static final AnswerTable<SlopeChecks> MADE_GROUND = new AnswerTable<>("earthworks", Answers.EARTHWORKS
            .meaning(), "", List.of(of("steepest_made_ground_deg", "steepest made ground", Unit.DEG,
            SlopeChecks::steepest))).with(List.of(Part.all("slopes", Answers.SLOPES, SlopeChecks::slopes)));
    /** Cover and dose at a station after a step that places soil. */
    public static final AnswerTable<Built> PART_BUILT = within("Cover and dose after each step that places soil.",
            List.of(
            words("step", "after step", (Built b) -> b.part.step()), words("hull", "hull", (Built b) -> b.dose.hull()),
            words("id", "station", (Built b) -> b.dose.station()),
            words("quantity", "quantity", (Built b) -> StationDose.QUANTITY),
            of("least_depth_m", "least cover", Unit.M, (Built b) -> b.cover().map(c -> c.least().depth())
                    .orElse(Double.NaN)),
            of("covered_mSv", "best", Unit.MSV, (Built b) -> b.dose.covered().best()),
            of("low_mSv", "low, 16th percentile", Unit.MSV, (Built b) -> b.dose.covered().low()),
            of("high_mSv", "high, 84th percentile", Unit.MSV, (Built b) -> b.dose.covered().high()),
            of("share_of_limit", "of the narrowest limit, all the time there", Unit.PERCENT, Built::used).digits(0),
            words("cover", "cover", Built::state)));
    private static final AnswerTable<BuiltCover> BUILT_COVERS = within("The covers as they then are.", List.of(
            words("id", "hull", (BuiltCover b) -> b.cover.id()), flag("is_whole", "whole", BuiltCover::isWhole)))
            .with(List.of(Part.one("", within("Where it is least deep.", Answers.COVER.figures().stream()
            .filter(f -> f.key().startsWith("least")).toList()), BuiltCover::cover)));
    private static final AnswerTable<InStage> BUILT = within("Covers that are then part-built.",
            List.<Figure<InStage>>of()).with(List.of(
            Part.all("covers", BUILT_COVERS, s -> s.built.orElseThrow().covers().stream().map(c -> new BuiltCover(c,
                    s.built.get().whole().contains(c.id()))).toList()),
            Part.all("stations", PART_BUILT, s -> Built.of(s.built.stream().toList(), s.exposure))));
    /** The order of work, step by step. */
    public static final AnswerTable<InStage> STAGES = new AnswerTable<>("stages[]", "The order of work.", "", List.of(
            words("id", "step", (InStage s) -> s.stage.step().id()),
            words("title", "work", (InStage s) -> title(s.stage.step())),
            words("step", "kind of work", (InStage s) -> s.stage.step().step().word()).filesOnly(),
            words("of", "of", (InStage s) -> s.stage.step().of()).filesOnly(),
            maybeCount("lift", "lift", (InStage s) -> s.stage.step().lift()).filesOnly(),
            list("after", "after", (InStage s) -> s.stage.step().after()),
            said("machine", "by", (InStage s) -> Optional.of(s.stage.bar().resource()).filter(r -> !r.isEmpty())),
            maybe("machine_hours", "machine hours", Unit.HOURS, (InStage s) -> s.stage.bar().machineHours()),
            of("start_day", "start", Unit.DAYS, (InStage s) -> s.stage.bar().start()),
            of("end_day", "end", Unit.DAYS, (InStage s) -> s.stage.bar().end()),
            flag("critical", "critical", (InStage s) -> s.stage.bar().critical()),
            of("height_m", "soil up to", Unit.M, (InStage s) -> s.stage.soil().height()),
            map("cover_heights_m", "soil over each hull's bed (m)", (InStage s) -> new TreeMap<>(
                    s.stage.coverHeights())).digits(2).filesOnly(),
            of("placed_m3", "placed", Unit.M3, (InStage s) -> s.stage.soil().placed()).digits(1),
            of("ramp_m3", "ramp", Unit.M3, (InStage s) -> s.stage.soil().ramp()).digits(1),
            list("lift_tops_m", "tops of its lifts (m)", (InStage s) -> s.stage.soil().lifts()).digits(2),
            list("standing", "hulls standing", (InStage s) -> List.copyOf(new TreeSet<>(s.stage.standing())))
                    .filesOnly(),
            list("lying", "hulls lying", (InStage s) -> List.copyOf(new TreeSet<>(s.stage.lying()))).filesOnly()))
            .with(List.of(Part.maybe("part_built", BUILT, s -> Optional.of(s).filter(i -> i.built.isPresent()))));
    /** The whole of the work. */
    public static final AnswerTable<StagesResult> WORK = new AnswerTable<>("work", "The whole of the work.", "",
            List.of(of("days", "days", Unit.DAYS, StagesResult::days),
            list("critical_chain", "critical path", StagesResult::criticalChain)));
    /** Points to set out. */
    public static final AnswerTable<SettingOutPoint> SETTING_OUT = within("Points to set out, in projected metres.",
            List.of(
            words("point", "point", SettingOutPoint::id), words("subject", "of", SettingOutPoint::subject),
            words("what", "kind", (SettingOutPoint p) -> p.kind().word()),
            of("east_m", "east", Unit.M, (SettingOutPoint p) -> p.place().x()).digits(3),
            of("north_m", "north", Unit.M, (SettingOutPoint p) -> p.place().y()).digits(3),
            of("height_m", "height", Unit.M, (SettingOutPoint p) -> p.place().z()).digits(3),
            words("height_of", "height of", (SettingOutPoint p) -> p.kind().heightOf())));
    private static final AnswerTable<Assessment> WALKING = within("How people walk.", List.of(
            of("inside_speed_m_s", "walked inside", Unit.M_S, (Assessment a) -> WaysOut.WALK_SPEED).digits(1),
            of("outside_speed_m_s", "walked outside", Unit.M_S, (Assessment a) -> WaysOut.OUTSIDE_SPEED).digits(1),
            of("steepest_walked_deg", "steepest ground walked", Unit.DEG, (Assessment a) ->
                    Math.toRadians(FootWays.STEEPEST_DEG)).digits(0)));
    /** Independent ways out of each hull. */
    public static final AnswerTable<WaysOfHull> WAYS = within("Independent ways out.", List.of(
            words("id", "hull", (WaysOfHull w) -> w.hull.id()),
            flag("covered", "covered", (WaysOfHull w) -> w.hull.cover().isPresent()),
            count("independent_ways", "ways out", WaysOfHull::ways)));
    /** Ways to the nearest storm shelter. */
    public static final AnswerTable<WaysOut.WayToShelter> SHELTERS = within("Ways to the nearest storm shelter.",
            List.of(
            words("from", "from", WaysOut.WayToShelter::from), words("shelter", "shelter",
                    WaysOut.WayToShelter::shelter),
            of("inside_m", "inside", Unit.M, WaysOut.WayToShelter::inside).digits(0),
            of("outside_m", "outside", Unit.M, WaysOut.WayToShelter::outside).digits(0),
            of("time_min", "time", Unit.MIN, WaysOut.WayToShelter::seconds)));
    /** Ways to shelter with the places they bend at. */
    public static final AnswerTable<Assessment> WAYS_OUT = new AnswerTable<>("ways_out",
            "Ways out of the hulls and to the storm shelters.", "", WALKING.figures()).with(List.of(
            Part.all("hulls", WAYS, a -> WaysOfHull.of(a.plan().hulls(), a.waysOut())),
            Part.all("to_shelter", SHELTERS.and(List.of(list("way", "east and north of the places it bends at (m)",
                    (WaysOut.WayToShelter w) -> w.way().stream().map(p -> List.of(p.east(), p.north())).toList()))),
                    a -> a.waysOut().shelters())));

    private WorkAnswers() {
    }

    /**
     * The ways out of a hull.
     *
     * @param hull the hull
     * @param ways how many do not hang on each other
     */
    public record WaysOfHull(Hull hull, int ways) {
        /**
         * Those of some hulls.
         *
         * @param hulls the hulls
         * @param ways  all ways out
         * @return one for each hull
         */
        public static List<WaysOfHull> of(List<Hull> hulls, WaysOut ways) {
            return hulls.stream().map(h -> new WaysOfHull(h, ways.hulls().getOrDefault(h.id(), 0))).toList();
        }
    }

    /**
     * A step of the work with the covers it leaves part-built.
     *
     * @param stage    the step
     * @param built    the covers after it
     * @param exposure what the crew may be exposed to
     */
    public record InStage(Stage stage, Optional<PartBuilt> built, ExposurePlan exposure) {
        /**
         * The steps of a plan.
         *
         * @param assessment the assessment
         * @return its steps, in order
         */
        public static List<InStage> of(Assessment assessment) {
            return assessment.stages().stream().flatMap(r -> r.stages().stream()).map(s -> new InStage(s,
                    assessment.partBuilt().stream().filter(p -> p.step().equals(s.step().id())).findFirst(),
                    assessment.plan().exposure())).toList();
        }
    }

    /**
     * A station under a cover that is not yet whole.
     *
     * @param part     the covers after the step
     * @param dose     the station's dose then
     * @param exposure what the crew may be exposed to
     */
    public record Built(PartBuilt part, StationDose dose, ExposurePlan exposure) {
        /**
         * All stations after all steps.
         *
         * @param parts    covers after steps
         * @param exposure what the crew may be exposed to
         * @return one for each station and step
         */
        public static List<Built> of(List<PartBuilt> parts, ExposurePlan exposure) {
            return parts.stream().flatMap(p -> p.stations().stream().map(s -> new Built(p, s, exposure))).toList();
        }

        Optional<HullCover> cover() {
            return part.covers().stream().filter(c -> c.id().equals(dose.hull())).findFirst();
        }

        double used() {
            return exposure.judgedLimits().isEmpty() ? Double.NaN : PartBuilt.used(exposure, dose);
        }

        String state() {
            return cover().isEmpty() ? "no cover" : !part.whole().contains(dose.hull()) ? "PART-BUILT: not safe"
                    : cover().filter(c -> !(c.shareBelowWanted() == 0)).map(c -> c.least().depth() > BARE
                    ? "finished, thin in places" : "finished, SKIN BARE in places").orElse("whole");
        }
    }

    private record BuiltCover(HullCover cover, boolean isWhole) {
    }

    /**
     * A step of the work in words.
     *
     * @param step the step
     * @return its id, kind, subject and height
     */
    public static String title(WorkStep step) {
        String lift = step.lift().isPresent() ? ", stage " + step.lift().getAsInt() : "";
        OptionalDouble height = step.upToHeight();
        String title = step.step().word() + " " + step.of() + lift
                + (height.isPresent() ? ", up to " + new BigDecimal(height.getAsDouble()).round(new MathContext(3))
                .stripTrailingZeros().toPlainString() + " m" : "");
        return title.startsWith(step.id()) ? title : step.id() + ": " + title;
    }
}
