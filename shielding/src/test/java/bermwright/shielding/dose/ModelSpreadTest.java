// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ModelSpreadTest {
    /** Our figures beside the published ones are written with three digits or fewer. */
    private static final double WRITTEN = 0.02;
    /** A band of one standard deviation holds two thirds; with eleven figures, six to nine. */
    private static final int LEAST_INSIDE = 6;

    @Test
    void theBandHoldsMostPublishedFiguresThoughItIsMadeOfNone() {
        List<PublishedDose> figures = PublishedDose.cosmic().stream().filter(d -> d.work().counts()).toList();
        assertTrue(inside(figures) >= LEAST_INSIDE, inside(figures) + " of " + figures.size());
    }

    @Test
    void theBandHoldsTheMonteCarloOfCosmicRays() {
        List<String> off = new ArrayList<>();
        for (MonteCarlo.Row row : MonteCarlo.all()) {
            if (row.quantity().equals("effective dose without electrons and gammas") && row.depthGCm2() > 0
                    && (row.source().equals("gcr_p") || row.source().equals("gcr_he"))
                    && Math.abs(Math.log(row.ratio())) > Math.log(ModelSpread.cosmic(row.depthGCm2() * 10).high())) {
                off.add(row.toString());
            }
        }
        assertEquals(List.of(), off);
    }

    @Test
    void theWholeIsTheRootOfItsPartsSquaredAndSaysThem() {
        double square = 0;
        for (double share : new double[] {14, 6, 10, 9, 10}) {
            square += share * share * 1e-4;
        }
        assertEquals(Math.exp(Math.sqrt(square)), ModelSpread.cosmic(3000).high(), 1e-12);
        assertTrue(ModelSpread.words(true).contains("reactions 12, 12, 14, 20, 32 %"), ModelSpread.words(true));
        assertTrue(ModelSpread.event(3000).high() > ModelSpread.cosmic(3000).high());
    }

    @Test
    void beyondTheDeepestComparisonTheBandWidens() {
        double at = Math.log(ModelSpread.cosmic(10_000).high());
        assertTrue(Math.log(ModelSpread.cosmic(15_000).high()) > 1.45 * at);
        assertEquals(ModelSpread.cosmic(15_000).high(), ModelSpread.cosmic(1e6).high(), 0);
        assertEquals(1, ModelSpread.cosmic(15_000).high() * ModelSpread.cosmic(15_000).low(), 1e-9);
    }

    static long inside(List<PublishedDose> figures) {
        return figures.stream().filter(figure -> Math.abs(figure.distance())
                <= Math.log(ModelSpread.cosmic(figure.arealDensity()).high())).count();
    }

    @Test
    void ourFiguresBesideThePublishedOnesAreThoseOfToday() {
        List<String> off = new ArrayList<>();
        for (PublishedDose figure : PublishedDose.cosmic()) {
            double ours = DoseRows.beside(figure);
            if (!(Math.abs(figure.ours() / ours - 1) <= WRITTEN)) {
                off.add(String.format(Locale.ROOT, "%.3g mSv a year is ours today: %s", ours * 365.25e3,
                        figure.work().source()));
            }
        }
        assertEquals(List.of(), off);
    }
}
