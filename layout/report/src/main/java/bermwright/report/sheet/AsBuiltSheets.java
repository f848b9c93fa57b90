// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.AsBuilt;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was surveyed after steps of the work beside the plan, as tables; also for the editor.
 *
 * @param surveys one for each surveyed step
 */
public record AsBuiltSheets(List<AsBuilt> surveys) {
    /** Doses that differ by less are the same (1). */
    private static final double SAME = 0.02;
    /** Depths that differ by less are the same (m). */
    private static final double SAME_DEPTH = 0.05;

    /** Copies the surveys. */
    public AsBuiltSheets {
        surveys = List.copyOf(surveys);
    }

    /** Soil placed and left, by survey. */
    public Table volumes() {
        List<List<String>> rows = new ArrayList<>();
        surveys.forEach(s -> rows.add(List.of(s.step().id(), s.step().asBuilt().map(a -> a.elevationFile()).orElse(""),
                s.step().asBuilt().flatMap(a -> a.surveyed()).map(LocalDate::toString).orElse("not stated"),
                Words.fixed(100 * s.surveyed(), 0), s.step().asBuilt().filter(a -> a.placedDensity().isPresent())
                .map(a -> Words.fixed(a.placedDensity().getAsDouble(), 0)).orElse("as planned"),
                Words.fixed(s.volumes().placed(), 0), Words.fixed(s.volumes().planned(), 0),
                Words.fixed(s.volumes().left(), 0), Words.fixed(s.volumes().over(), 0))));
        return new Table("as-built", "As surveyed: soil placed and left", List.of(Column.words("step", "after step"),
                Column.words("file", "survey"), Column.words("surveyed", "surveyed on"),
                Column.number("covered_percent", "of the ground (%)"),
                Column.words("density_kg_m3", "density measured (kg/m³)"),
                Column.number("placed_m3", "placed (m³)"), Column.number("planned_m3", "planned by then (m³)"),
                Column.number("left_m3", "left to place (m³)"),
                Column.number("over_m3", "higher than planned (m³)")), rows);
    }

    /** Least depth of each cover as surveyed and as planned by then. */
    public Table covers() {
        List<List<String>> rows = new ArrayList<>();
        for (AsBuilt survey : surveys) {
            for (HullCover built : survey.built()) {
                Optional<HullCover> design = survey.design().stream().filter(d -> d.id().equals(built.id()))
                        .findFirst();
                double planned = design.map(d -> d.least().depth()).orElse(Double.NaN);
                rows.add(List.of(survey.step().id(), built.id(), Words.fixed(built.least().depth(), 2),
                        Words.fixed(planned, 2), Words.fixed(built.least().wanted(), 2),
                        Words.fixed(built.least().along(), 1),
                        Words.fixed(Math.toDegrees(built.least().around()), 0),
                        Words.fixed(100 * built.shareBelowWanted(), 1), built.least().depth() < planned - SAME_DEPTH
                        ? "THINNER than planned" : "as planned or thicker"));
            }
        }
        return new Table("as-built-covers", "As surveyed: least cover beside the plan's by then", List.of(
                Column.words("step", "after step"), Column.words("hull", "hull"),
                Column.number("least_depth_m", "least cover (m)"), Column.number("planned_depth_m", "planned (m)"),
                Column.number("required_m", "required when whole (m)"),
                Column.number("along_m", "from the base plane (m)"), Column.number("around_deg", "from the crown (°)"),
                Column.number("below_percent", "skin below required (%)"), Column.words("verdict", "against the plan")),
                rows);
    }

    /** Dose at each station as it stands beside the plan's by then. */
    public Table doses() {
        List<List<String>> rows = new ArrayList<>();
        for (AsBuilt survey : surveys) {
            for (StationDose built : survey.stations()) {
                Optional<StationDose> planned = survey.planned().stream().filter(p -> p.hull().equals(built.hull())
                        && p.station().equals(built.station())).findFirst();
                double was = planned.map(p -> p.covered().high()).orElse(Double.NaN);
                rows.add(List.of(survey.step().id(), built.hull(), built.station(),
                        Words.millisieverts(built.covered().best()), Words.millisieverts(built.covered().low()),
                        Words.millisieverts(built.covered().high()), planned.map(p ->
                        Words.millisieverts(p.covered().best())).orElse(""), Words.millisieverts(was),
                        built.covered().high() > was * (1 + SAME) ? "MORE than planned" : Double.isNaN(was) ? ""
                        : "as planned or less"));
            }
        }
        return new Table("as-built-doses", "As surveyed: dose for a whole stay as if work stopped here, beside the"
                + " plan's by then", List.of(Column.words("step", "after step"), Column.words("hull", "hull"),
                Column.words("station", "station"), Column.number("covered_mSv", "best (mSv)"),
                Column.number("low_mSv", "low (mSv)"), Column.number("high_mSv", "high (mSv)"),
                Column.number("planned_mSv", "planned, best (mSv)"),
                Column.number("planned_high_mSv", "planned, high (mSv)"), Column.words("verdict", "against the plan")),
                rows);
    }
}
