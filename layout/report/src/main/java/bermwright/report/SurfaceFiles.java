// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.report.exchange.Detail;
import bermwright.report.exchange.DxfSurfaceFile;
import bermwright.report.exchange.LandXmlFile;
import bermwright.report.exchange.SiteFrame;
import bermwright.report.exchange.Tin;
import bermwright.report.exchange.TinSurface;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.report.sheet.Words;
import bermwright.report.sheet.WorkGround;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.WorkStep;
import bermwright.site.stages.Stage;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GeoTiffWriter;
import bermwright.terrain.gridfile.ReferenceSystem;
import bermwright.terrain.gridfile.SurfaceContent;
import bermwright.terrain.gridfile.SurfaceFile;
import bermwright.terrain.relief.GradientMethod;
import bermwright.terrain.relief.HeightBlock;
import bermwright.terrain.relief.SlopeSurface;
import bermwright.terrain.relief.Surface;
import bermwright.terrain.relief.SurfaceStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;

/** The finished ground and each lift as grids (GeoTIFF) and as triangles (LandXML, DXF). */
final class SurfaceFiles {
    /** How far triangles may be off where soil is placed (m); blades hold no less: common practice, no source. */
    static final double TOLERANCE = 0.02;
    /** No triangle is farther off where nothing is built (m), however little is known of the ground; our own choice. */
    private static final double COARSEST = 0.25;
    /** Slopes are written to this (degrees), a part of one that is exact in binary. */
    private static final double SLOPE_STEP = 1.0 / 2;
    /** Heights and depths are written to this (m), about a millimetre, exact in binary: files then pack well. */
    private static final double HEIGHT_STEP = 1.0 / 1024;
    /** Thinner soil is not placed (m). */
    private static final double THINNEST = 1e-3;
    /** A lift is handed over this many nodes beyond its soil. */
    private static final int BESIDE = 3;
    /** Ground is followed as closely as soil so far beside it (m): else the toe's soil would be spread over it. */
    private static final double BY_THE_TOE = 3;

    private final Assessment assessment;
    private final SiteFrame frame;
    private final Path folder;
    private final Optional<ReferenceSystem> system;

    private SurfaceFiles(Assessment assessment, SiteFrame frame, Path folder) {
        this.assessment = assessment;
        this.frame = frame;
        this.folder = folder;
        this.system = assessment.ground().file().referenceSystem();
    }

    /** Writes them all; none where the plan has no cover. */
    static void write(Assessment assessment, SiteFrame frame, Path folder, Progress progress) throws IOException {
        if (assessment.cover().isPresent()) {
            SurfaceFiles files = new SurfaceFiles(assessment, frame, folder);
            files.finished(assessment.cover().get());
            files.lifts(progress);
        }
    }

    /** What heights are counted from. */
    static String datum(Assessment assessment) {
        return "heights in metres as in the elevation file " + assessment.ground().file().file().getFileName()
                + assessment.ground().file().referenceSystem().map(s -> String.format(Locale.ROOT,
                ", over the sphere of %.0f m radius of its reference system", s.bodyRadius()))
                .orElse(", over its own datum");
    }

    private void finished(SiteCover cover) throws IOException {
        WorkGround work = WorkGround.of(assessment, cover);
        double[] finished = work.finished();
        ElevationGrid grid = grid(work.frame(), finished);
        GeoTiffWriter.write(folder.resolve("finished.tif"), grid(work.frame(), rounded(finished)), system,
                Progress.NONE);
        try (SurfaceFile slope = SurfaceFile.packed(folder.resolve("slope.tif"), layer(work.frame(), "deg",
                "slope of the finished ground to the level, to 1/2 degree"))) {
            SurfaceStream.run(grid, new Rounded(new SlopeSurface(GradientMethod.HORN), SLOPE_STEP), slope,
                    Progress.NONE);
            slope.finish(Progress.NONE);
        }
        values("placed_thickness.tif", work.frame(), work.placed(), "soil placed as cover, upright");
        values("cover_depth.tif", work.frame(), work.coverDepth(),
                "least way from the skin seen from above to the surface");
        BitSet closely = Detail.with(work.frame().columns(), work::isBuilt, (int) Math.ceil(BY_THE_TOE
                / work.frame().spacing()));
        Tin net = Tin.over(work.frame(), List.of(finished, work.prepared()), new Detail(
                node -> closely.get(node) ? TOLERANCE : work.isDug(node) ? known() : untouched(), work::isBuilt,
                false));
        TinSurface whole = new TinSurface("finished", "Finished ground: benches, mounds and borrow pits" + off(net),
                net, 0);
        landXml(whole);
        faces(whole);
        landXml(new TinSurface("prepared", "Ground after benches, before soil is placed or borrowed" + off(net), net,
                1));
    }

    /** How well the ground is known (m), which a pit's floor follows. */
    private double known() {
        return Math.max(TOLERANCE, Math.min(COARSEST, assessment.plan().ground().elevationSpread()));
    }

    /** Ground that stays as it is is followed to two standard deviations of its file's heights (m). */
    private double untouched() {
        return Math.min(COARSEST, 2 * known());
    }

    private String off(Tin net) {
        return String.format(Locale.ROOT, "; no node of the grid is farther than %.3f m from it where soil is placed"
                + " or a bed prepared, and %.3f m elsewhere (held to %.2f m there, %.2f m in borrow pits and %.2f m on"
                + " untouched ground)", net.greatestMiss(), net.greatestMissElsewhere(),
                TOLERANCE, known(), untouched());
    }

    private void landXml(TinSurface surface) throws IOException {
        LandXmlFile.write(folder.resolve(surface.name() + ".xml"), surface, frame, datum(assessment));
    }

    private void faces(TinSurface surface) throws IOException {
        DxfSurfaceFile.write(folder.resolve(surface.name() + "_faces.dxf"), surface, "Projected metres in "
                + frame.name() + " " + frame.authority() + " " + frame.code() + "; " + datum(assessment));
    }

    private void lifts(Progress progress) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        Map<String, Double> reached = new HashMap<>();
        for (Stage stage : assessment.stages().map(s -> s.stages()).orElse(List.of())) {
            if (stage.step().step() == WorkStep.Kind.COVER) {
                String hull = stage.step().of();
                double[] below = stage.surface(reached.getOrDefault(hull, Double.NEGATIVE_INFINITY)).heights();
                for (double height : stage.soil().lifts()) {
                    progress.check();
                    String name = String.format(Locale.ROOT, "lift_%03d", rows.size() + 1);
                    lift(stage, below, height, name).ifPresent(miss -> rows.add(List.of(name, stage.step().id(),
                            hull, Words.fixed(height, 3), Words.fixed(miss, 3))));
                    below = stage.surface(height).heights();
                    reached.put(hull, height);
                }
            }
        }
        if (!rows.isEmpty()) {
            Files.writeString(folder.resolve("lifts.csv"), new Table("lifts", "Lifts", List.of(
                    Column.words("file", "file"), Column.words("step", "step"), Column.words("hull", "hull"),
                    Column.number("height_over_bed_m", "height over the bed, m"),
                    Column.number("triangles_off_m", "triangles off by at most, m")), rows).csv(),
                    StandardCharsets.UTF_8);
        }
    }

    /** The top of the soil that one lift places, with a strip around it; how far its triangles are off. */
    private Optional<Double> lift(Stage stage, double[] below, double height, String name) throws IOException {
        ElevationGrid surface = stage.surface(height);
        double[] raised = surface.heights();
        List<Point> places = new ArrayList<>();
        GridFrame nodes = surface.frame();
        for (int i = 0; i < raised.length; i++) {
            if (raised[i] > below[i] + THINNEST) {
                places.add(new Point(nodes.east(i % nodes.columns()), nodes.north(i / nodes.columns())));
            }
        }
        if (places.isEmpty()) {
            return Optional.empty();
        }
        GridFrame square = WorkGround.square(nodes, nodes.spacing(), places);
        double[] heights = WorkGround.on(square, surface);
        double[] before = WorkGround.on(square, surface.withHeights(below));
        IntPredicate isPlaced = node -> heights[node] > before[node] + THINNEST;
        BitSet closely = Detail.with(square.columns(), isPlaced, BESIDE);
        Tin net = Tin.over(square, List.of(heights), new Detail(
                node -> closely.get(node) ? TOLERANCE : untouched(), isPlaced, true));
        GeoTiffWriter.write(folder.resolve(name + ".tif"), grid(square, rounded(strip(square, heights, before))),
                system, Progress.NONE);
        TinSurface lift = new TinSurface(name, String.format(Locale.ROOT, "Step %s: top of the lift that brings the"
                + " cover of hull %s to %.2f m over its bed, where this lift places soil; what stands below it is in"
                + " the files of the lifts before", stage.step().id(), stage.step().of(), height) + off(net), net,
                0);
        landXml(lift);
        faces(lift);
        return Optional.of(net.greatestMiss());
    }

    /** Heights where a lift places soil and beside it only. */
    private static double[] strip(GridFrame nodes, double[] heights, double[] before) {
        double[] kept = new double[heights.length];
        Arrays.fill(kept, Double.NaN);
        for (int i = 0; i < heights.length; i++) {
            if (heights[i] > before[i] + THINNEST) {
                int row = i / nodes.columns();
                int column = i % nodes.columns();
                for (int r = Math.max(0, row - BESIDE); r <= Math.min(nodes.rows() - 1, row + BESIDE); r++) {
                    int from = r * nodes.columns();
                    int first = from + Math.max(0, column - BESIDE);
                    int last = from + Math.min(nodes.columns() - 1, column + BESIDE);
                    System.arraycopy(heights, first, kept, first, last - first + 1);
                }
            }
        }
        return kept;
    }

    /** A surface whose values are rounded, for files that hold no noise. */
    private record Rounded(Surface of, double step) implements Surface {
        @Override
        public int margin() {
            return of.margin();
        }

        @Override
        public boolean reachesEdge() {
            return of.reachesEdge();
        }

        @Override
        public String unit() {
            return of.unit();
        }

        @Override
        public void row(HeightBlock heights, int row, double[] into) {
            of.row(heights, row, into);
            for (int i = 0; i < into.length; i++) {
                into[i] = Math.rint(into[i] / step) * step;
            }
        }
    }

    private ElevationGrid grid(GridFrame nodes, double[] heights) {
        return ElevationGrid.of(nodes, heights).withMetreScale(assessment.ground().grid().metreScale());
    }

    private static double[] rounded(double[] heights) {
        return Arrays.stream(heights).map(h -> Math.rint(h / HEIGHT_STEP) * HEIGHT_STEP).toArray();
    }

    private SurfaceFile.Layer layer(GridFrame nodes, String unit, String about) {
        return new SurfaceFile.Layer(nodes, system, new SurfaceContent(SurfaceContent.Kind.FLOAT32, unit,
                Optional.of(about)));
    }

    private void values(String name, GridFrame nodes, double[] values, String about) throws IOException {
        GeoTiffWriter.write(folder.resolve(name), grid(nodes, rounded(values)), layer(nodes, "m", about),
                Progress.NONE);
    }
}
