// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.Sun;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurveLawTest {
    private static final Responses RESPONSES =
            new Responses(Path.of(System.getProperty("bermwright.target", "target")).resolve("responses"));
    private static final Shield BARE = Shield.of("highland", List.of());
    private static final Shield STEEL = Shield.of("mare", List.of(new Layer(Materials.named("steel"), 39.5)));

    /** With protons that stray from their ray the dose no longer rises from 40 to 75 g/cm2, nor does it fall. */
    private static final double KEPT = 0.03;

    @Test
    void aCurveNeverOvershootsItsPoints() {
        MonotoneCurve curve = new MonotoneCurve(new double[] {0, 1, 2, 3, 10}, new double[] {5, 2, 2, 4, 0});
        for (double x = 0; x <= 10; x += 0.01) {
            double low = x < 1 ? 2 : x < 2 ? 2 : x < 3 ? 2 : 0;
            double high = x < 1 ? 5 : x < 2 ? 2 : 4;
            assertTrue(curve.at(x) >= low - 1e-12 && curve.at(x) <= high + 1e-12, "at " + x);
        }
    }

    @Test
    void theCurveIsTheResponseAndItsParticlesAddUp() {
        DoseCurve curve = RESPONSES.cosmicCurve(BARE, Sun.of(10), Progress.NONE);
        Response response = RESPONSES.cosmic(BARE, 10, Progress.NONE);
        for (DoseCurve.Point point : curve.points()) {
            double total = point.isotropic().total();
            assertEquals(total, response.isotropicDose(point.arealDensity()), total * 1e-9);
            assertEquals((total + response.diffuseDose(point.arealDensity())) / 2, point.dome(), 1e-9 * total);
        }
        assertTrue(curve.published().size() >= 10);
    }

    @Test
    void secondariesKeepTheDoseUnderThinCoverUpAndNeutronsFallSlowlyBeyond() {
        DoseCurve curve = RESPONSES.cosmicCurve(BARE, Sun.of(10), Progress.NONE);
        double least = at(curve, 400).dome();
        assertEquals(1, at(curve, 750).dome() / least, KEPT, "secondaries keep the dose up beyond 40 g/cm2");
        assertTrue(at(curve, 5000).isotropic().neutronShare() > at(curve, 1050).isotropic().neutronShare());
    }

    @Test
    void moreSunMeansFewerCosmicRays() {
        Response quiet = RESPONSES.cosmic(BARE, 0, Progress.NONE);
        Response active = RESPONSES.cosmic(BARE, 150, Progress.NONE);
        for (double depth = 0; depth < 10_000; depth += 500) {
            assertTrue(active.isotropicDose(depth) < quiet.isotropicDose(depth), "at " + depth);
        }
    }

    @Test
    void aSkinOfSteelCountsNearlyAsItsSoil() {
        Response bare = RESPONSES.cosmic(Shield.of("mare", List.of()), 10, Progress.NONE);
        Response steel = RESPONSES.cosmic(STEEL, 10, Progress.NONE);
        for (double depth : new double[] {100, 1000, 3000}) {
            assertEquals(1, steel.isotropicDose(depth) / bare.isotropicDose(depth), 0.12, "at " + depth);
        }
        assertTrue(steel.skinEquivalence() > 0.7 && steel.skinEquivalence() < 0.95);
    }

    @Test
    void organsFarInsideGetLessOfASoftEvent() {
        DoseLimit limit = DoseLimit.all().stream().filter(l -> l.over().equals("event")).findFirst().orElseThrow();
        assertEquals(0.25, limit.limit(), 0);
        OrganDose[] organs = RESPONSES.eventOrgans(BARE, EventSpectra.named("august 1972"), 10, Progress.NONE)
                .values().toArray(OrganDose[]::new);
        assertEquals(3, organs.length);
        assertTrue(organs[0].absorbed() > organs[1].absorbed() && organs[1].absorbed() > organs[2].absorbed());
        assertTrue(organs[0].equivalent() > organs[0].absorbed());
        assertTrue(organs[2].grayEquivalent() > organs[2].absorbed());
    }

    private static DoseCurve.Point at(DoseCurve curve, double depth) {
        return curve.points().stream().filter(p -> p.arealDensity() == depth).findFirst().orElseThrow();
    }
}
