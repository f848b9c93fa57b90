// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.shape.MadeGround;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the survey leaves out by its bounds changes nothing: a million cells, each also worked out at every heading. */
class SurveyBoundLawTest {
    private static final int SIDE = 1000;
    private static final int BAND = 250;
    private static final int BEST = 10;

    @TempDir
    Path folder;

    @Test
    void theBestPlacesAreThoseOfWorkingOutEveryHeading() throws IOException {
        GridFrame frame = new GridFrame(SIDE, SIDE, 0, 0, 3.5);
        Path file = Regions.write(folder, new MadeGround(frame, MadeGround.Recipe.HIGHLAND, 7));
        SurveyOrder order = Regions.order(file, Survey.builtIn(), SurveyLimits.USUAL, SIDE);
        float[] scores = new float[SIDE * SIDE];
        short[] headings = new short[SIDE * SIDE];
        try (SurveySetup setup = SurveySetup.open(order, Progress.NONE)) {
            int bands = SIDE / BAND;
            IntStream.range(0, bands).parallel().forEach(b -> {
                BlockScorer all = new BlockScorer(setup, BAND, false);
                float[] part = new float[BAND * BAND];
                short[] way = new short[BAND * BAND];
                for (int c = 0; c < bands; c++) {
                    all.cells(new NodeRange(b * BAND, c * BAND, BAND, BAND), part, way);
                    for (int r = 0; r < BAND; r++) {
                        System.arraycopy(part, r * BAND, scores, (b * BAND + r) * SIDE + c * BAND, BAND);
                        System.arraycopy(way, r * BAND, headings, (b * BAND + r) * SIDE + c * BAND, BAND);
                    }
                }
            });
            SurveyResult result = Regions.run(order, BEST, folder);
            float[] bounded = new float[scores.length];
            for (int i = 0; i < bounded.length; i++) {
                bounded[i] = result.map().score(i / SIDE, i % SIDE);
            }
            assertArrayEquals(scores, bounded, 0);
            assertTrue(result.tally().workedOut() < result.tally().cells() * result.tally().headings() / 3,
                    result.tally().toString());
            assertTrue(result.tally().admitted() > 1000 && result.tally().tooSteep() > 1000, result.tally().toString());
            assertPlaces(greedy(scores, headings, result.apart() / 3.5), result);
        }
    }

    /** Every cell in the order of its score, taken where it overlaps none before. */
    private static List<BestCells.Cell> greedy(float[] scores, short[] headings, double apart) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, scores.length).filter(i -> !Float.isNaN(scores[i]))
                .boxed().toList());
        order.sort(Comparator.<Integer>comparingDouble(i -> -scores[i]).thenComparing(i -> i));
        List<BestCells.Cell> taken = new ArrayList<>();
        for (int i : order) {
            int row = i / SIDE;
            int column = i % SIDE;
            if (taken.size() < BEST && taken.stream().allMatch(t -> Math.hypot(row - t.row(), column - t.column())
                    >= apart)) {
                taken.add(new BestCells.Cell(row, column, headings[i], scores[i]));
            }
        }
        return taken;
    }

    private static void assertPlaces(List<BestCells.Cell> expected, SurveyResult result) {
        assertEquals(expected.size(), result.places().size());
        for (int i = 0; i < expected.size(); i++) {
            SurveyPlace place = result.places().get(i);
            assertEquals(expected.get(i).column() * 3.5, place.centre().east(), 1e-9);
            assertEquals(expected.get(i).row() * 3.5, place.centre().north(), 1e-9);
            assertEquals(expected.get(i).heading() * 10.0, place.heading().degrees(), 1e-9);
            assertEquals(place.tightest().margin(), place.score(), 1e-6);
        }
    }
}
