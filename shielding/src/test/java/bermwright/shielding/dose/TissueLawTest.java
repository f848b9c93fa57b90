// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TissueLawTest {
    private static final double ROUNDING = 1e-9;
    /** Shares are printed with five digits. */
    private static final double PRINTED = 2e-4;
    /** The whole body is looked at in half as many depths. */
    private static final double FEWER_DEPTHS = 0.015;
    /** Five standard deviations of a sum of shares over 1,500 points, whose rays go together. */
    private static final double CHANCE = 0.04;
    private static final Penetration PENETRATION = new Penetration(
            new Shield(Materials.named("highland"), List.of()), 1, Penetration.Resolution.STANDARD);
    private static final Beam COSMIC = Beam.cosmic(new CosmicSpectrum(10), PENETRATION.grid(), 0);

    @Test
    void theWeightsAndTheSharesAddUpToOneAndTheDepthsRise() {
        assertEquals(1, Arrays.stream(Tissue.values()).mapToDouble(Tissue::weight).sum(), ROUNDING);
        assertEquals(1, Arrays.stream(Tissue.bodyShares(new double[] {0.5, 5, 20})).sum(), PRINTED);
        double before = 0;
        for (int node = 0; node < Tissue.depths(); node++) {
            assertTrue(Tissue.depthGCm2(node) > before);
            before = Tissue.depthGCm2(node);
        }
        for (Tissue tissue : Tissue.values()) {
            assertEquals(1, IntStream.range(0, Tissue.depths()).mapToDouble(tissue::share).sum(), PRINTED);
        }
    }

    @Test
    void theDepthsAreThoseOfTheBodyThatMakesThem() {
        double[][] made = BodyDepthTable.table(1500, 7);
        for (Tissue tissue : Tissue.values()) {
            double shipped = 0;
            double again = 0;
            for (int node = 0; node < Tissue.depths(); node++) {
                assertEquals(BodyDepthTable.NODES[node], Tissue.depthGCm2(node), 0);
                shipped += tissue.share(node);
                again += made[tissue.ordinal()][node];
                assertEquals(shipped, again, CHANCE, tissue + " to " + Tissue.depthGCm2(node)
                        + " g/cm2; make the table again: BodyDepthTable");
            }
        }
    }

    @Test
    void theBodysDoseIsTheWeightedSumOverTissues() {
        PointDose point = new PointDose(PENETRATION);
        double sum = 0;
        for (Tissue tissue : Tissue.values()) {
            sum += tissue.weight() * point.in(COSMIC, tissue).equivalent();
        }
        assertEquals(1, point.mean(COSMIC).equivalent() / sum, FEWER_DEPTHS);
    }

    @Test
    void ionsCountWithAllThatTheyMakeInTheBody() {
        PointDose point = new PointDose(PENETRATION);
        Field field = field(COSMIC);
        Beam helium = field.beam().ions(2, 2);
        double whole = point.mean(helium).equivalent();
        double alone = 0;
        for (int node = 0; node < Tissue.depths(); node++) {
            double there = point.ions(PENETRATION.inBody(helium, Tissue.depthGCm2(node)), 2).equivalent();
            for (Tissue tissue : Tissue.values()) {
                alone += tissue.weight() * tissue.share(node) * there;
            }
        }
        assertEquals(1, new BodyDose(PENETRATION).inSphere(field).helium() / whole, ROUNDING);
        assertTrue(whole > alone, whole + " of " + alone);
    }

    @Test
    void aBeamWithoutIonsHasNoneAndNoDoseOfThem() {
        Field field = field(Beam.event(EventSpectra.named("august 1972"), PENETRATION.grid()));
        assertTrue(field.beam().ions(2, 28).isEmpty());
        assertFalse(field.beam().isEmpty());
        assertEquals(0, new BodyDose(PENETRATION).inSphere(field).heavy(), 0);
    }

    @Test
    void aSoftEventGivesSkinMoreThanTheLensAndTheLensMoreThanMarrow() {
        OrganExposure organs = new OrganExposure(PENETRATION);
        Field field = field(Beam.event(EventSpectra.named("august 1972"), PENETRATION.grid()));
        double skin = organs.at(field, OrganDose.Organ.SKIN).equivalent();
        double eye = organs.at(field, OrganDose.Organ.EYE).equivalent();
        double marrow = organs.at(field, OrganDose.Organ.BLOOD_FORMING).equivalent();
        double mean = organs.mean(field).equivalent();
        assertTrue(skin > eye && eye > marrow && marrow > 0, skin + " " + eye + " " + marrow);
        assertTrue(mean > Tissue.SKIN.weight() * skin + Tissue.MARROW.weight() * marrow && mean < skin, mean + " Sv");
        assertTrue(organs.thinDetector(field).absorbed() > organs.at(field, OrganDose.Organ.SKIN).absorbed());
    }

    private static Field field(Beam beam) {
        return PENETRATION.carry(beam, new double[] {0}, Progress.NONE).fields().get(0);
    }
}
