// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class PublishedSpreadTest {
    /** Our figures beside the published ones are written with three digits or fewer. */
    private static final double WRITTEN = 0.02;
    /** A band of one standard deviation holds two thirds; with eleven figures, six to nine. */
    private static final int LEAST_INSIDE = 6;

    @Test
    void leavingOutOneSourceAtATimeTheBandHoldsMostOfThem() {
        List<PublishedDose> figures = PublishedDose.cosmic().stream().filter(d -> d.work().counts()).toList();
        assertTrue(inside(figures) >= LEAST_INSIDE, inside(figures) + " of " + figures.size());
    }

    @Test
    void beyondTheDeepestFigureTheBandWidens() {
        double at = Math.log(PublishedSpread.cosmic(10_000).high());
        assertTrue(Math.log(PublishedSpread.cosmic(15_000).high()) > 1.45 * at);
        assertEquals(PublishedSpread.cosmic(15_000).high(), PublishedSpread.cosmic(1e6).high(), 0);
        assertEquals(1, PublishedSpread.cosmic(15_000).high() * PublishedSpread.cosmic(15_000).low(), 1e-9);
    }

    static long inside(List<PublishedDose> figures) {
        return figures.stream().filter(left -> {
            List<PublishedDose> others = new ArrayList<>(figures);
            others.remove(left);
            return Math.abs(left.distance())
                    <= Math.log(new PublishedSpread(others).at(left.arealDensity()).high());
        }).count();
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
