// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.gridfile.GeoTiffWriter;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;

/** Elevation files for tests of the survey. */
final class Regions {
    /** A hull without gear, 40 m by 8 m. */
    static final String BARE = """
            {"bermwright_plan": 1, "ground": {"elevation_file": "region.tif"},
             "hulls": [{"id": "A", "length_m": 40, "diameter_m": 8, "mass_t": 80, "centre_of_mass_from_base_m": 18,
               "base_centre": {"east_m": 0, "north_m": 0}, "lay_down_azimuth_deg": 0, "arrival": "lands lying"}]}
            """;

    private Regions() {
    }

    static Path write(Path folder, HeightSource ground) throws IOException {
        Path file = folder.resolve("region.tif");
        GeoTiffWriter.write(file, ground, Optional.empty(), Progress.NONE);
        return file;
    }

    /** Square ground by a formula of metres east and north of its middle. */
    static Path write(Path folder, int nodes, double spacing, DoubleBinaryOperator height) throws IOException {
        double half = (nodes - 1) * spacing / 2;
        return write(folder, ElevationGrid.sampled(new GridFrame(nodes, nodes, -half, -half, spacing), height));
    }

    static SurveyOrder order(Path file, String plan, SurveyLimits limits, int nodes) {
        return new SurveyOrder(file.toString(), plan, "test plan", true, limits,
                new SurveyOrder.Window(0, 0, nodes, nodes));
    }

    static SurveyLimits headings(int count) {
        SurveyLimits u = SurveyLimits.USUAL;
        return new SurveyLimits(count, u.mostBench(), u.soilReach(), u.borrowDepth(), u.borrowYield(), u.borrowGrade(),
                List.of(), List.of(), u.sightReach());
    }

    static SurveyResult run(SurveyOrder order, int best, Path folder) {
        return Survey.run(order, best, new PlanFolders(folder, folder), new LocalSpread(), Progress.NONE);
    }

    static double measured(SurveyPlace place, Criterion what) {
        return place.reasons().stream().filter(r -> r.criterion() == what).findFirst().orElseThrow().measured();
    }
}
