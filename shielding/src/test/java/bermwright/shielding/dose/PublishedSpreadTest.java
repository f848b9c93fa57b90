// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Shield;
import java.nio.file.Path;
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
        Responses responses =
                new Responses(Path.of(System.getProperty("bermwright.target", "target")).resolve("responses"));
        List<String> off = new ArrayList<>();
        for (PublishedDose figure : PublishedDose.cosmic()) {
            Response response =
                    responses.cosmic(Shield.of("highland", List.of()), figure.modulationW(), Progress.NONE);
            boolean onGround = figure.arealDensity() == 0 && !figure.work().source().contains("free space");
            boolean sphere = figure.work().source().contains("halved");
            double ours = sphere ? DoseRows.sphere(figure.modulationW(), figure.arealDensity() / 10) / 2
                    : (response.isotropicDose(figure.arealDensity()) + response.diffuseDose(figure.arealDensity())) / 2
                            + (onGround ? response.openGroundReturn() : 0);
            if (!(Math.abs(figure.ours() / ours - 1) <= WRITTEN)) {
                off.add(String.format(Locale.ROOT, "%.3g mSv a year is ours today: %s", ours * 365.25e3,
                        figure.work().source()));
            }
        }
        assertEquals(List.of(), off);
    }
}
