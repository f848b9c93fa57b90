// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * The ground of a plan and the place beside which its other files are found.
 *
 * @param file      what the elevation file holds, with its scale and convergence at the plan's centre
 * @param directory directory of the plan file
 */
public record SiteGround(GroundFile file, Path directory) {
    /**
     * Reads the elevation file a plan names.
     *
     * @param plan     the plan
     * @param planFile the plan's file; the elevation file's path starts beside it
     * @param progress told how far reading has come
     * @return the ground
     * @throws InputException if the elevation file is missing or cannot be used
     */
    public static SiteGround read(Plan plan, Path planFile, Progress progress) {
        Path directory = Optional.ofNullable(planFile.toAbsolutePath().getParent()).orElse(Path.of("."));
        InputException.Place place = new InputException.Place(planFile.toString(), 0, "ground.elevation_file");
        Path file = InputException.beside(directory, plan.ground().elevationFile(), place);
        InputException.checkRegular(place, file, "an elevation file beside the plan (GeoTIFF or ESRI ASCII grid)");
        GroundFiles.Knowledge known =
                new GroundFiles.Knowledge(plan.ground().referenceSystem(), centre(plan));
        return new SiteGround(GroundFiles.read(file, known, progress), directory);
    }

    /**
     * The heights.
     *
     * @return the elevation grid
     */
    public ElevationGrid grid() {
        return file.grid();
    }

    /** The middle of where the hulls stand; empty where there is none. */
    private static Optional<Point> centre(Plan plan) {
        List<Hull> hulls = plan.hulls();
        if (hulls.isEmpty()) {
            return Optional.empty();
        }
        double east = hulls.stream().mapToDouble(h -> h.baseCentre().east()).average().orElse(0);
        double north = hulls.stream().mapToDouble(h -> h.baseCentre().north()).average().orElse(0);
        return Optional.of(new Point(east, north));
    }
}
