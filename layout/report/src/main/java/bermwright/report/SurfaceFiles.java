// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.report.exchange.DxfSurfaceFile;
import bermwright.report.exchange.LandXmlFile;
import bermwright.report.exchange.SiteFrame;
import bermwright.report.exchange.Tin;
import bermwright.report.exchange.TinSurface;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.report.sheet.Words;
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
import bermwright.terrain.relief.SlopeSurface;
import bermwright.terrain.relief.SurfaceStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The finished ground and each lift as grids (GeoTIFF) and as triangles (LandXML, DXF). */
final class SurfaceFiles {
    /** How far a triangle's side may be off the surface at its middle (m); blades hold no less: common practice. */
    static final double TOLERANCE = 0.02;
    /** A lift is handed over this many nodes beyond its soil. */
    private static final int BESIDE = 3;

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
        GeoTiffWriter.write(folder.resolve("finished.tif"), grid, system, Progress.NONE);
        try (SurfaceFile slope = SurfaceFile.packed(folder.resolve("slope.tif"), layer(work.frame(), "deg",
                "slope of the finished ground to the level"))) {
            SurfaceStream.run(grid, new SlopeSurface(GradientMethod.HORN), slope, Progress.NONE);
            slope.finish(Progress.NONE);
        }
        values("placed_thickness.tif", work.frame(), work.placed(), "soil placed as cover, upright");
        values("cover_depth.tif", work.frame(), work.coverDepth(),
                "least way from the skin seen from above to the surface");
        double[] prepared = work.heights(cover.prepared());
        Tin net = Tin.over(work.frame(), List.of(finished, prepared), TOLERANCE);
        String off = String.format(Locale.ROOT, "; no node of the grid is farther than %.3f m from it",
                net.greatestMiss());
        TinSurface whole = new TinSurface("finished", "Finished ground: benches, mounds and borrow pits" + off, net, 0);
        landXml(whole);
        faces(whole);
        landXml(new TinSurface("prepared", "Ground after benches, before soil is placed or borrowed" + off, net, 1));
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
        for (Stage stage : assessment.stages().map(s -> s.stages()).orElse(List.of())) {
            if (stage.step().step() == WorkStep.Kind.COVER) {
                for (double height : stage.soil().lifts()) {
                    progress.check();
                    String name = String.format(Locale.ROOT, "lift_%03d", rows.size() + 1);
                    lift(stage, height, name).ifPresent(miss -> rows.add(List.of(name, stage.step().id(),
                            stage.step().of(), Words.fixed(height, 3), Words.fixed(miss, 3))));
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

    /** The soil of one cover up to a height, with a strip around it; how far its triangles are off. */
    private Optional<Double> lift(Stage stage, double height, String name) throws IOException {
        ElevationGrid surface = stage.surface(height);
        double[] bare = stage.surface(Double.NEGATIVE_INFINITY).heights();
        double[] raised = surface.heights();
        double[] kept = new double[raised.length];
        Arrays.fill(kept, Double.NaN);
        List<Point> places = new ArrayList<>();
        GridFrame nodes = surface.frame();
        for (int i = 0; i < raised.length; i++) {
            int row = i / nodes.columns();
            int column = i % nodes.columns();
            if (raised[i] > bare[i]) {
                places.add(new Point(nodes.east(column), nodes.north(row)));
                for (int r = Math.max(0, row - BESIDE); r <= Math.min(nodes.rows() - 1, row + BESIDE); r++) {
                    int from = r * nodes.columns();
                    int first = from + Math.max(0, column - BESIDE);
                    int last = from + Math.min(nodes.columns() - 1, column + BESIDE);
                    System.arraycopy(raised, first, kept, first, last - first + 1);
                }
            }
        }
        if (places.isEmpty()) {
            return Optional.empty();
        }
        GridFrame square = WorkGround.square(nodes, nodes.spacing(), places);
        double[] heights = WorkGround.on(square, surface.withHeights(kept));
        GeoTiffWriter.write(folder.resolve(name + ".tif"), grid(square, heights), system, Progress.NONE);
        Tin net = Tin.over(square, List.of(heights), TOLERANCE);
        TinSurface lift = new TinSurface(name, String.format(Locale.ROOT, "Step %s: cover of hull %s up to %.2f m over"
                + " its bed", stage.step().id(), stage.step().of(), height), net, 0);
        landXml(lift);
        faces(lift);
        return Optional.of(net.greatestMiss());
    }

    private ElevationGrid grid(GridFrame nodes, double[] heights) {
        return ElevationGrid.of(nodes, heights).withMetreScale(assessment.ground().grid().metreScale());
    }

    private SurfaceFile.Layer layer(GridFrame nodes, String unit, String about) {
        return new SurfaceFile.Layer(nodes, system, new SurfaceContent(SurfaceContent.Kind.FLOAT32, unit,
                Optional.of(about)));
    }

    private void values(String name, GridFrame nodes, double[] values, String about) throws IOException {
        GeoTiffWriter.write(folder.resolve(name), grid(nodes, values), layer(nodes, "m", about), Progress.NONE);
    }
}
