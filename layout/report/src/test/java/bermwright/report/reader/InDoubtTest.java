// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.report.drawing.Drawing;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.Figure;
import bermwright.site.doubt.FigureDoubt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class InDoubtTest {
    private static final int SAMPLES = 200;

    /** A figure whose samples run evenly from one value to another. */
    private static FigureDoubt figure(String id, String unit, double from, double to) {
        Figure figure = new Figure(id, "figure " + id, unit, OptionalDouble.of(50), false);
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < SAMPLES; i++) {
            values.add(from + (to - from) * i / (SAMPLES - 1));
        }
        double kept = values.stream().filter(figure::keeps).count() / (double) SAMPLES;
        return new FigureDoubt(figure, (from + to) / 2, values, kept, List.of(new FigureDoubt.GroupShare("cohesion",
                0.5, 0.6, 0.01)), 0.02, List.of());
    }

    private static Pack written(boolean isOnPeople) {
        Doubts doubts = new Doubts(List.of(), SAMPLES, 0, 7, List.of(figure("dose-far", "mSv", 10, 20),
                figure("dose-half", "mSv", 40, 60), figure("dose-over", "mSv", 60, 70), figure("mound", "1", 45, 53)),
                List.of(new Doubts.FindingChance("either:elm", 0.25, 0, 0, Optional.empty()),
                        new Doubts.FindingChance("sure:elm", 1, 0, 0, Optional.empty())), new Doubts.InFull(0,
                                List.of(), List.of()));
        Pack pack = new Pack();
        new InDoubt(pack, Optional.of(doubts)).write(f -> f.isOnPeople() == isOnPeople);
        return pack;
    }

    @Test
    void whatIsInDoubtComesFirstAndWhatIsSureIsGathered() {
        String page = written(true).text();
        int half = page.indexOf("The chance that the limit of 50 mSv on figure dose-half is kept is 0.50.");
        int over = page.indexOf("Kept in none of 200 samples");
        int far = page.indexOf("Kept in every one of 200 samples");
        assertTrue(half > 0 && half < over && over < far, half + " " + over + " " + far);
        assertTrue(page.indexOf("figure dose-far (10.25 to 19.75)") > far, page);
        assertFalse(page.contains("figure mound"), "the planner's");
        assertTrue(page.contains("either:elm") && !page.contains("sure:elm"), "findings that may come out either way");
    }

    @Test
    void theLimitMostInDoubtIsDrawnAndOnlyTheReadersOwn() {
        assertEquals(List.of("distribution-dose-half", "shares-dose-half"), written(true).drawings().stream()
                .map(Drawing::name).toList());
        assertEquals(List.of("distribution-mound", "shares-mound"), written(false).drawings().stream()
                .map(Drawing::name).toList());
        Pack none = new Pack();
        new InDoubt(none, Optional.empty()).write(f -> true);
        assertFalse(none.text().contains("in doubt"), "nothing was sampled");
    }
}
