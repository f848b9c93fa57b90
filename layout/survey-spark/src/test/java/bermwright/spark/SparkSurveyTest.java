// SPDX-License-Identifier: Apache-2.0
package bermwright.spark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.report.SurveyFolder;
import bermwright.site.survey.BlockSpread;
import bermwright.site.survey.LocalSpread;
import bermwright.site.survey.PlanFolders;
import bermwright.site.survey.Survey;
import bermwright.site.survey.SurveyLimits;
import bermwright.site.survey.SurveyOrder;
import bermwright.site.survey.SurveyResult;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GeoTiffWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The survey on Spark: the same bytes as on the processors of this machine, whatever the partitioning and losses. */
class SparkSurveyTest {
    private static final int BEST = 4;

    @TempDir
    static Path folder;
    private static SurveyOrder order;
    private static Map<String, byte[]> expected;

    @BeforeAll
    static void onThisMachine() throws IOException {
        // Nine blocks, with hillsides where nothing lies.
        GridFrame frame = new GridFrame(2100, 2100, 0, 0, 4);
        Path file = folder.resolve("region.tif");
        GeoTiffWriter.write(file, ElevationGrid.sampled(frame, (e, n) -> 60 * Math.sin(e / 310) * Math.cos(n / 270)
                + 0.4 * Math.sin(e / 13 + n / 17)), Optional.empty(), Progress.NONE);
        SurveyLimits u = SurveyLimits.USUAL;
        order = Survey.order(new Survey.Question(file, Optional.empty(), false, List.of(), new SurveyLimits(4,
                u.mostBench(), u.soilReach(), u.borrowDepth(), u.borrowYield(), u.borrowGrade(), List.of(), List.of(),
                1000)));
        assertEquals(9, order.blocks());
        expected = files(new LocalSpread(), Progress.NONE, "here");
        assertTrue(expected.containsKey("place-" + BEST + ".json"), expected.keySet().toString());
    }

    private static Map<String, byte[]> files(BlockSpread spread, Progress progress, String name) throws IOException {
        Path out = folder.resolve(name);
        SurveyResult result = Survey.run(order, BEST, new PlanFolders(folder, out), spread, progress);
        SurveyFolder.write(result, out, Progress.NONE);
        Map<String, byte[]> all = new TreeMap<>();
        try (var list = Files.list(out)) {
            for (Path file : list.toList()) {
                all.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return all;
    }

    private static void assertSame(Map<String, byte[]> found) {
        assertEquals(expected.keySet(), found.keySet());
        expected.forEach((name, bytes) -> assertArrayEquals(bytes, found.get(name), name));
    }

    @Test
    void theCommandLineFindsIt() {
        assertEquals("Apache Spark at local[2]", ServiceLoader.load(BlockSpread.OfCluster.class).findFirst()
                .orElseThrow().on("local[2]").words());
    }

    @Test
    void givesTheSameBytesWhateverThePartitioning() throws IOException {
        assertSame(files(new SparkSpread("local[2]", 1), Progress.NONE, "one"));
        assertSame(files(new SparkSpread("local[2]", 4), Progress.NONE, "four"));
    }

    @Test
    void aWorkerKilledInTheMiddleLosesNothing() throws IOException, InterruptedException {
        AtomicBoolean killed = new AtomicBoolean();
        try (Cluster cluster = new Cluster(folder, 2)) {
            Progress killing = new Progress() {
                @Override
                public void report(double share, String step) {
                    if (step.startsWith("scoring") && share > 0.1 && share < 0.9 && !killed.getAndSet(true)) {
                        cluster.kill(0);
                    }
                }

                @Override
                public boolean isCancelled() {
                    return false;
                }
            };
            assertSame(files(new SparkSpread(cluster.master(), 9), killing, "cluster"));
        }
        assertTrue(killed.get());
    }
}
