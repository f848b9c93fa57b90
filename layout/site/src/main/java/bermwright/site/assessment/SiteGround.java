// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.finding.Finding;
import bermwright.finding.SiteRule;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.gridfile.GroundFile;
import bermwright.terrain.gridfile.GroundFiles;
import bermwright.terrain.gridfile.GroundSource;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The ground of a plan and the place beside which its other files are found.
 *
 * <p>Site work is described on nodes no farther apart than {@link #WORKING_SPACING}, put between those of a coarser
 * file by its bilinear heights, so that no answer hangs on the cell of the file; what the cell hides stays hidden
 * ({@link ElevationGrid#surveyedSpacing}).
 *
 * @param file      what the elevation file holds, with its scale and convergence at the plan's centre
 * @param directory directory of the plan file
 * @param grid      the heights on which the site is worked out
 */
public record SiteGround(GroundFile file, Path directory, ElevationGrid grid) {
    /** Files of no more nodes than this are read whole (1). */
    private static final long MOST_NODES_READ_WHOLE = 4_000_000;
    /** Of larger ones all that the plan names is read and as much around it (m). */
    private static final double REACH = 500;
    /** Nodes of the ground that site work is described on lie no farther apart (m); a plain file of 1 m is kept. */
    public static final double WORKING_SPACING = 1.0;
    /** Most nodes put between those of a file (1); a larger file is cut less finely. */
    private static final double MOST_NODES_PUT = 6e6;

    /**
     * The ground of a file.
     *
     * @param file      what the elevation file holds
     * @param directory directory of the plan file
     */
    public SiteGround(GroundFile file, Path directory) {
        this(file, directory, working(file.grid()));
    }

    private static ElevationGrid working(ElevationGrid grid) {
        int most = (int) Math.max(1, Math.sqrt(MOST_NODES_PUT / grid.frame().nodes()));
        return grid.refined(Math.min(most, (int) Math.max(1, Math.ceil(grid.trueSpacing() / WORKING_SPACING - 0.05))));
    }

    /**
     * Reads the elevation file a plan names; of a large one the part where the plan's things are and what lies around.
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
        InputException.checkRegular(place, file,
                "an elevation file beside the plan (GeoTIFF, ESRI ASCII grid, PDS label)");
        GroundFiles.Knowledge known =
                new GroundFiles.Knowledge(plan.ground().referenceSystem(), centre(plan));
        try (GroundSource source = GroundFiles.open(file, known, progress)) {
            GridFrame frame = source.frame();
            NodeRange part = frame.nodes() <= MOST_NODES_READ_WHOLE ? NodeRange.all(frame)
                    : PlanExtent.of(plan).nodes(frame, REACH / source.metreScale());
            return new SiteGround(source.part(part, progress), directory);
        }
    }

    /**
     * What is said of the elevation file beside every figure: what is odd in it, and how much of it was read.
     *
     * @return sentences, none where nothing is odd and all of the file was read
     */
    public List<String> cautions() {
        List<String> all = new ArrayList<>();
        file.cautions().forEach(c -> all.add("Elevation file: " + c));
        if (file.isPart()) {
            GridFrame part = file.grid().frame();
            all.add(String.format(Locale.ROOT,
                    "Elevation file: of its %d x %d heights the %d x %d from %.0f m to %.0f m"
                    + " east and %.0f m to %.0f m north were read, all that the plan names and %.0f m around it. Ground"
                    + " further off hides no sky here, so doses are not too low for it; its horizon is shown by"
                    + " bermwright ground --horizon.", file.whole().rows(), file.whole().columns(), part.rows(),
                    part.columns(), part.west(), part.eastEdge(), part.south(), part.northEdge(), REACH));
        }
        return all;
    }

    /**
     * What looks odd in the heights themselves.
     *
     * @return a finding for each
     */
    public List<Finding> findings() {
        return file.oddities().stream().map(odd -> Finding.of(SiteRule.GROUND_FILE_ODD, Finding.Level.WARN,
                Finding.Figures.NONE, "The elevation file looks odd. " + odd)).toList();
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
