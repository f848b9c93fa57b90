// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Vec3;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.clearance.ClearanceTable;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.ReferenceSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ground, where each hull lies on it, and how far things are apart; also for the editor.
 *
 * @param assessment the assessment
 */
public record PlaceSheets(Assessment assessment) {
    /** What is farther off than this is left out of the table of distances (m). */
    private static final double REACH = 30;

    /** The elevation file in words. */
    public Table ground() {
        GroundFile file = assessment.ground().file();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("elevation file", assessment.plan().ground().elevationFile() + ", " + file.format()));
        rows.add(List.of("columns of nodes", String.valueOf(file.grid().frame().columns())));
        rows.add(List.of("rows of nodes", String.valueOf(file.grid().frame().rows())));
        rows.add(List.of("spacing (m)", Words.fixed(file.spacing(), 3)));
        rows.add(List.of("nodes without a height", String.valueOf(file.missing())));
        rows.add(List.of("lowest height (m)", Words.fixed(file.grid().lowest(), 2)));
        rows.add(List.of("greatest height (m)", Words.fixed(file.grid().highest(), 2)));
        rows.add(List.of("spread of heights, one standard deviation (m)",
                Words.fixed(assessment.plan().ground().elevationSpread(), 3)));
        Optional<ReferenceSystem> system = file.referenceSystem();
        rows.add(List.of("reference system", system.map(s -> s.name() + s.code().map(c -> ", " + c).orElse(""))
                .orElse("not stated; coordinates are taken as true metres")));
        rows.add(List.of("true metres in a projected metre", Words.fixed(file.grid().metreScale(), 6)));
        rows.add(List.of("true north, clockwise from grid north (°)", file.scale().trueNorth().map(a ->
                Words.fixed(a.degrees(), 3)).orElse("not known")));
        file.cautions().forEach(caution -> rows.add(List.of("caution", caution)));
        return new Table("ground", "The ground", List.of(Column.words("what", "what"), Column.words("value", "value")),
                rows);
    }

    /** Where each hull stands and lies. */
    public Table hulls() {
        List<List<String>> rows = new ArrayList<>();
        for (HullAssessment hull : assessment.hulls()) {
            Optional<Vec3> base = hull.lying().map(p -> p.axisStart());
            Optional<Vec3> far = hull.lying().map(p -> p.axisEnd());
            rows.add(List.of(hull.hull().id(), hull.hull().arrival().word(),
                    Words.fixed(hull.hull().layDownAzimuth().degrees(), 2),
                    Words.fixed(hull.hull().baseCentre().east(), 2), Words.fixed(hull.hull().baseCentre().north(), 2),
                    base.map(p -> Words.fixed(p.x(), 2)).orElse(""), base.map(p -> Words.fixed(p.y(), 2)).orElse(""),
                    base.map(p -> Words.fixed(p.z(), 2)).orElse(""), far.map(p -> Words.fixed(p.x(), 2)).orElse(""),
                    far.map(p -> Words.fixed(p.y(), 2)).orElse(""), far.map(p -> Words.fixed(p.z(), 2)).orElse(""),
                    hull.lying().map(p -> Words.degrees(p.slopeAlong())).orElse(""),
                    hull.lying().map(p -> Words.degrees(p.slopeAcross())).orElse("")));
        }
        return new Table("hulls", "Where each hull stands, and where its axis lies", List.of(
                Column.words("hull", "hull"), Column.words("arrival", "arrival"),
                Column.number("lay_down_azimuth_deg", "azimuth from grid north (°)"),
                Column.number("base_centre_east_m", "stands at east (m)"),
                Column.number("base_centre_north_m", "north (m)"),
                Column.number("lying_base_east_m", "lies, base end: east (m)"),
                Column.number("lying_base_north_m", "north (m)"),
                Column.number("axis_start_height_m", "axis height (m)"),
                Column.number("lying_far_east_m", "far end: east (m)"),
                Column.number("lying_far_north_m", "north (m)"),
                Column.number("axis_end_height_m", "axis height (m)"),
                Column.number("slope_along_deg", "ground falls along (°)"),
                Column.number("slope_across_deg", "ground falls left (°)")), rows);
    }

    /** How far hulls, sweeps and covers are from what stands near them. */
    public Table clearances() {
        return new Table("clearances", "Distances in plan, the nearest first, up to " + Words.said(REACH, "m"),
                List.of(Column.words("hull", "hull"), Column.words("part", "its"), Column.words("other", "to"),
                Column.number("distance_m", "distance (m)"), Column.number("required_m", "required (m)"),
                Column.words("apart", "in plan")), ClearanceTable.of(assessment.shapes(), REACH).stream()
                .map(r -> List.of(r.hull(), r.part().equals("lying") ? "lying hull" : r.part(), r.other(),
                        Words.fixed(r.distance(), 2), Words.fixed(r.required(), 2), r.joined() ? "joined on purpose"
                        : r.distance() <= 0 ? "OVERLAP"
                        : r.distance() < r.required() ? "NEARER than required" : "apart")).toList());
    }
}
