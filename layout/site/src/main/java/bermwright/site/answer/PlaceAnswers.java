// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.Figure.count;
import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.list;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.foundation.Azimuth;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.GroundSheet;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.clearance.ClearanceTable;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** The ground, where each hull lies on it, and how far things are apart. */
public final class PlaceAnswers {
    /** What an elevation file holds. */
    public static final AnswerTable<GroundSheet> FILE = new AnswerTable<>("", "What an elevation file holds.", "",
            List.of(
            words("file", "elevation file", s -> s.file().file().toString()),
            words("format", "format", s -> s.file().format()),
            count("rows", "rows of nodes", s -> s.file().frame().rows()),
            count("columns", "columns of nodes", s -> s.file().frame().columns()),
            of("spacing_m", "spacing, projected", Unit.M, (GroundSheet s) -> s.file().frame().spacing()).digits(3),
            of("true_spacing_m", "spacing on the ground", Unit.M, (GroundSheet s) -> s.file().trueSpacing())
                    .digits(3),
            of("west_m", "west edge, east", Unit.M, (GroundSheet s) -> s.file().frame().west()),
            of("east_m", "east edge, east", Unit.M, (GroundSheet s) -> s.file().frame().eastEdge()),
            of("south_m", "south edge, north", Unit.M, (GroundSheet s) -> s.file().frame().south()),
            of("north_m", "north edge, north", Unit.M, (GroundSheet s) -> s.file().frame().northEdge()),
            of("lowest_m", "lowest height", Unit.M, (GroundSheet s) -> s.statistics().lowest()),
            of("highest_m", "highest height", Unit.M, (GroundSheet s) -> s.statistics().highest()),
            count("missing", "nodes without a height", s -> s.statistics().missing()),
            slope("median", "slope, median", 0.5),
            slope("ninety_percent", "slope, 90 % below", 0.9),
            slope("ninety_nine_percent", "slope, 99 % below", 0.99),
            slope("greatest", "slope, greatest", 1),
            words("stored", "heights are stored as", s -> s.file().heights().stored()),
            words("vertical_unit", "unit of the heights", s -> s.file().heights().verticalUnit()),
            maybe("no_data_mark", "mark of a missing height", Unit.BESIDE, s -> s.file().heights().noDataMark()),
            flag("cells_are_areas", "heights are means over cells", s -> s.file().heights().cellsAreAreas()),
            system("name", "reference system", ReferenceSystem::name),
            said("reference_system.code", "its code", s -> s.file().referenceSystem().flatMap(ReferenceSystem::code)),
            maybe("reference_system.body_radius_m", "radius of the body", Unit.M, (GroundSheet s) ->
                    s.file().referenceSystem().map(r -> OptionalDouble.of(r.bodyRadius()))
                            .orElse(OptionalDouble.empty())).digits(0),
            system("well_known_text", "its well-known text", ReferenceSystem::wellKnownText).filesOnly(),
            of("middle_latitude_deg", "latitude of the middle", Unit.DEG, (GroundSheet s) -> s.middle()
                    .map(p -> Math.toRadians(p.latitudeDeg())).orElse(Double.NaN)).digits(5),
            of("middle_longitude_deg", "longitude of the middle", Unit.DEG, (GroundSheet s) -> s.middle()
                    .map(p -> Math.toRadians(p.longitudeDeg())).orElse(Double.NaN)).digits(5),
            of("scale_east", "true metres in a projected metre, along east", Unit.ONE, (GroundSheet s) ->
                    s.file().scale().east()).digits(6),
            of("scale_north", "true metres in a projected metre, along north", Unit.ONE, (GroundSheet s) ->
                    s.file().scale().north()).digits(6),
            of("true_north_azimuth_deg", "true north, clockwise from grid north", Unit.DEG, (GroundSheet s) ->
                    angle(s.file().scale().trueNorth())),
            list("cautions", "cautions", GroundSheet::cautions).filesOnly()));
    /** The ground of a plan. */
    public static final AnswerTable<Assessment> GROUND = new AnswerTable<>("", "The ground of the plan.", "", List.of(
            words("elevation_file", "elevation file", a -> a.plan().ground().elevationFile() + ", "
                    + a.ground().file().format()),
            count("columns", "columns of nodes", a -> a.ground().file().grid().frame().columns()),
            count("rows", "rows of nodes", a -> a.ground().file().grid().frame().rows()),
            of("spacing_m", "spacing", Unit.M, (Assessment a) -> a.ground().file().spacing()).digits(3),
            count("missing", "nodes without a height", a -> a.ground().file().missing()),
            of("lowest_m", "lowest height", Unit.M, (Assessment a) -> a.ground().file().grid().lowest()),
            of("highest_m", "greatest height", Unit.M, (Assessment a) -> a.ground().file().grid().highest()),
            of("spread_m", "spread of heights, one standard deviation", Unit.M, (Assessment a) ->
                    a.plan().ground().elevationSpread()).digits(3),
            words("reference_system", "reference system", a -> a.ground().file().referenceSystem()
                    .map(s -> s.name() + s.code().map(c -> ", " + c).orElse(""))
                    .orElse("not stated; coordinates are taken as true metres")),
            of("scale", "true metres in a projected metre", Unit.ONE, (Assessment a) ->
                    a.ground().file().grid().metreScale()).digits(6),
            of("true_north_deg", "true north, clockwise from grid north", Unit.DEG, (Assessment a) ->
                    angle(a.ground().file().scale().trueNorth())).digits(3)));
    /** Where each hull stands and lies. */
    public static final AnswerTable<HullAssessment> HULLS = new AnswerTable<>("", "Where each hull stands, and where"
            + " its axis lies.", "", List.of(
            words("hull", "hull", h -> h.hull().id()),
            words("arrival", "arrival", h -> h.hull().arrival().word()),
            of("lay_down_azimuth_deg", "azimuth from grid north", Unit.DEG, (HullAssessment h) ->
                    h.hull().layDownAzimuth().radians()),
            of("base_centre_east_m", "stands at east", Unit.M, (HullAssessment h) -> h.hull().baseCentre().east()),
            of("base_centre_north_m", "north", Unit.M, (HullAssessment h) -> h.hull().baseCentre().north()),
            lying("lying_base_east_m", "lies, base end: east", Unit.M, p -> p.axisStart().x()),
            lying("lying_base_north_m", "north", Unit.M, p -> p.axisStart().y()),
            lying("axis_start_height_m", "axis height", Unit.M, p -> p.axisStart().z()),
            lying("lying_far_east_m", "far end: east", Unit.M, p -> p.axisEnd().x()),
            lying("lying_far_north_m", "north", Unit.M, p -> p.axisEnd().y()),
            lying("axis_end_height_m", "axis height", Unit.M, p -> p.axisEnd().z()),
            lying("slope_along_deg", "ground falls along", Unit.DEG, LyingPose::slopeAlong),
            lying("slope_across_deg", "ground falls left", Unit.DEG, LyingPose::slopeAcross)));
    /** How far hulls, sweeps and covers are from what stands near them. */
    public static final AnswerTable<ClearanceTable.Row> CLEARANCES = new AnswerTable<>("", "Distances in plan.", "",
            List.of(
            words("hull", "hull", ClearanceTable.Row::hull),
            words("part", "its", r -> r.part().equals("lying") ? "lying hull" : r.part()),
            words("other", "to", ClearanceTable.Row::other),
            of("distance_m", "distance", Unit.M, ClearanceTable.Row::distance),
            of("required_m", "required", Unit.M, ClearanceTable.Row::required),
            words("apart", "in plan", r -> r.joined() ? "joined on purpose" : r.distance() <= 0 ? "OVERLAP"
                    : r.distance() < r.required() ? "NEARER than required" : "apart")));

    private PlaceAnswers() {
    }

    private static Figure<GroundSheet> slope(String key, String heading, double share) {
        return of("slope_deg." + key, heading, Unit.DEG, (GroundSheet s) -> s.statistics().slope(share));
    }

    private static Figure<GroundSheet> system(String key, String heading,
            Function<ReferenceSystem, String> of) {
        return said("reference_system." + key, heading, s -> s.file().referenceSystem().map(of));
    }

    private static Figure<HullAssessment> lying(String key, String heading, Unit unit, ToDoubleFunction<LyingPose> of) {
        return of(key, heading, unit, (HullAssessment h) -> h.lying().map(of::applyAsDouble).orElse(Double.NaN));
    }

    private static double angle(Optional<Azimuth> azimuth) {
        return azimuth.map(Azimuth::radians).orElse(Double.NaN);
    }
}
