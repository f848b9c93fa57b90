// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;

/**
 * Doses of organs, and of the body by its tissues, in a field: all that flies straight is carried into water to the
 * depth of the organ ({@link PointDose}); slow neutrons count by the body's mean (effective dose per fluence, over its
 * radiation weight for the absorbed dose).
 */
final class OrganExposure {
    private final PointDose point;

    OrganExposure(Penetration penetration) {
        point = new PointDose(penetration);
    }

    /** Dose of an organ in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose at(Field field, OrganDose.Organ organ) {
        return point.behind(field.inSpace(), organ.depthGCm2()).plus(slow(field.sphere()));
    }

    /** Tissue-weighted dose of the body in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose mean(Field field) {
        return point.mean(field.inSpace()).plus(slow(field.sphere()));
    }

    /** Dose of an organ under a dome on the ground: half of what flies straight and all of the slow neutrons. */
    OrganDose underDome(Field field, OrganDose.Organ organ) {
        return point.behind(field.onGround(), organ.depthGCm2()).times(0.5).plus(slow(field.slow()));
    }

    /** Tissue-weighted dose of the body under a dome on the ground. */
    OrganDose meanUnderDome(Field field) {
        return point.mean(field.onGround()).times(0.5).plus(slow(field.slow()));
    }

    /** Gray equivalent of what flies straight to an organ in the middle of a sphere (Gy-Eq, a second's). */
    double straight(Field field, OrganDose.Organ organ) {
        return point.behind(field.onGround(), organ.depthGCm2()).grayEquivalent();
    }

    /** Gray equivalent of slow neutrons by group (Gy-Eq). */
    static double early(double[] groups) {
        return slow(groups).grayEquivalent();
    }

    private static OrganDose slow(double[] groups) {
        double absorbed = 0;
        double equivalent = 0;
        double early = 0;
        for (int g = 0; g < groups.length; g++) {
            double energy = Field.groupMeV(g);
            double effective = groups[g] * FluenceCoefficients.neutron(energy);
            double dose = effective / Quality.neutronWeight(energy);
            absorbed += dose;
            equivalent += effective;
            early += dose * Quality.neutronEffectiveness(energy);
        }
        return new OrganDose(absorbed, equivalent, early);
    }
}
