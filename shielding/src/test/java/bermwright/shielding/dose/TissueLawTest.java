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
import org.junit.jupiter.api.Test;

class TissueLawTest {
    private static final double ROUNDING = 1e-9;
    /** A march in two parts takes other steps than one in a piece. */
    private static final double STEPS = 0.01;
    private static final Penetration PENETRATION = new Penetration(
            new Shield(Materials.named("highland"), List.of()), 1, Penetration.Resolution.STANDARD);
    private static final Beam COSMIC = Beam.cosmic(new CosmicSpectrum(10), PENETRATION.grid(), 0);

    @Test
    void theWeightsAddUpToOneAndTheDepthsRise() {
        assertEquals(1, Arrays.stream(Tissue.values()).mapToDouble(Tissue::weight).sum(), ROUNDING);
        double before = 0;
        for (Tissue tissue : Tissue.values()) {
            assertTrue(tissue.depthGCm2() > before, tissue.name());
            before = tissue.depthGCm2();
        }
    }

    @Test
    void theBodysDoseIsTheWeightedSumOverTissuesAtTheirOwnDepths() {
        PointDose point = new PointDose(PENETRATION);
        double sum = 0;
        for (Tissue tissue : Tissue.values()) {
            sum += tissue.weight() * point.behind(COSMIC, tissue.depthGCm2()).equivalent();
        }
        assertEquals(1, point.mean(COSMIC).equivalent() / sum, STEPS);
    }

    @Test
    void ionsCountWithAllThatTheyMakeInTheBody() {
        PointDose point = new PointDose(PENETRATION);
        Field field = field(COSMIC);
        Beam helium = field.beam().ions(2, 2);
        double whole = point.mean(helium).equivalent();
        double alone = 0;
        for (Tissue tissue : Tissue.values()) {
            alone += tissue.weight() * point.ions(PENETRATION.inBody(helium, tissue.depthGCm2()), 2).equivalent();
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
    void theBodysMeanOfASoftEventLiesBetweenItsShallowestAndDeepestTissue() {
        OrganExposure organs = new OrganExposure(PENETRATION);
        Field field = field(Beam.event(EventSpectra.named("august 1972"), PENETRATION.grid()));
        double skin = organs.at(field, OrganDose.Organ.SKIN).equivalent();
        double marrow = organs.at(field, OrganDose.Organ.BLOOD_FORMING).equivalent();
        double mean = organs.mean(field).equivalent();
        double known = Tissue.SKIN.weight() * skin + Tissue.MARROW.weight() * marrow;
        assertTrue(mean > known && mean < known + Tissue.OTHER.weight() * marrow, mean + " Sv");
    }

    private static Field field(Beam beam) {
        return PENETRATION.carry(beam, new double[] {0}, Progress.NONE).fields().get(0);
    }
}
