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
    /** Memory that working on a node takes: nine figures of several surfaces at once (bytes); an estimate. */
    private static final double BYTES_A_NODE = 72;
    private static final double BYTES_BESIDES = 0.5e9;
    private static final double GIGA = 1e9;
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
        try (GroundSource source = source(plan, planFile, progress)) {
            GridFrame frame = source.frame();
            NodeRange part = part(plan, frame, source.metreScale());
            checkMemory(part, planFile);
            return new SiteGround(source.part(part, progress), directory(planFile));
        }
    }

    private static Path directory(Path planFile) {
        return Optional.ofNullable(planFile.toAbsolutePath().getParent()).orElse(Path.of("."));
    }

    private static GroundSource source(Plan plan, Path planFile, Progress progress) {
        InputException.Place place = new InputException.Place(planFile.toString(), 0, "ground.elevation_file");
        Path file = InputException.beside(directory(planFile), plan.ground().elevationFile(), place);
        InputException.checkRegular(place, file,
                "an elevation file beside the plan (GeoTIFF, ESRI ASCII grid, PDS label)");
        return GroundFiles.open(file, new GroundFiles.Knowledge(plan.ground().referenceSystem(), centre(plan)),
                progress);
    }

    /** The nodes that are worked on: the middle of a large file while the plan places nothing. */
    private static NodeRange part(Plan plan, GridFrame frame, double metreScale) {
        if (frame.nodes() <= MOST_NODES_READ_WHOLE) {
            return NodeRange.all(frame);
        }
        PlanExtent extent = PlanExtent.of(plan);
        if (!extent.isEmpty()) {
            return extent.nodes(frame, REACH / metreScale);
        }
        int rows = (int) Math.min(frame.rows(), Math.sqrt(MOST_NODES_READ_WHOLE));
        int columns = (int) Math.min(frame.columns(), Math.sqrt(MOST_NODES_READ_WHOLE));
        return new NodeRange((frame.rows() - rows) / 2, (frame.columns() - columns) / 2, rows, columns);
    }

    /** Says what the work needs before it begins. */
    private static void checkMemory(NodeRange part, Path planFile) {
        double needed = part.nodes() * BYTES_A_NODE + BYTES_BESIDES;
        double there = Runtime.getRuntime().maxMemory();
        if (part.nodes() > MOST_NODES_READ_WHOLE && needed > there) {
            throw InputException.badValue(new InputException.Place(planFile.toString(), 0, "ground.elevation_file"),
                    String.format(Locale.ROOT, "%d x %d heights over all that the plan names and %.0f m around it,"
                            + " which need about %.1f GB of memory where the program has %.1f GB", part.columns(),
                            part.rows(), REACH, needed / GIGA, there / GIGA),
                    "a plan whose things lie closer together, an elevation file with wider nodes, or more memory"
                    + String.format(Locale.ROOT, " (java -Xmx%.0fg)", Math.ceil(needed / GIGA)));
        }
    }

    /**
     * Whether the heights that were read hold all that a plan names, so that another place of it needs no new reading.
     *
     * @param plan the plan
     * @return false where something lies beyond the part of the file that was read
     */
    public boolean covers(Plan plan) {
        return !file.isPart() || PlanExtent.of(plan).isIn(file.grid().frame(), file.whole());
    }

    /**
     * The whole of an elevation file of which only a part is worked on, with so many nodes
     * left as a picture has room for.
     *
     * @param plan     the plan
     * @param planFile the plan's file
     * @param progress told how far reading has come; may cancel it
     * @return heights of the whole file on wider nodes; at most four million of them
     * @throws InputException if the elevation file is missing or cannot be used
     */
    public static ElevationGrid overview(Plan plan, Path planFile, Progress progress) {
        try (GroundSource source = source(plan, planFile, progress)) {
            GridFrame whole = source.frame();
            int step = (int) Math.ceil(Math.sqrt((double) whole.nodes() / MOST_NODES_READ_WHOLE));
            int columns = (whole.columns() - 1) / step + 1;
            int rows = (whole.rows() - 1) / step + 1;
            GridFrame thin = new GridFrame(rows, columns, whole.west(), whole.south(), whole.spacing() * step);
            double[] heights = new double[rows * columns];
            double[] line = new double[whole.columns()];
            // From the north down, as files are written.
            for (int row = rows - 1; row >= 0; row--) {
                progress.check();
                progress.report(1 - (double) row / rows, "looking over the whole elevation file");
                source.read(new NodeRange(row * step, 0, 1, line.length), line);
                for (int column = 0; column < columns; column++) {
                    heights[row * columns + column] = line[column * step];
                }
            }
            return ElevationGrid.of(thin, heights).withMetreScale(source.metreScale());
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
