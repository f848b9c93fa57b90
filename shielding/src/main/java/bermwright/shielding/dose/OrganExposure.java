// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;

/**
 * Doses of organs, and of the body by its tissues, in a field: all that flies straight is carried into water to
 * the depths of the organ ({@link Tissue}); slow neutrons count by the body's mean (effective dose per fluence, over
 * its radiation weight for the absorbed dose).
 */
final class OrganExposure {
    /** What covers a detector as thin as skin (g/cm2). */
    private static final double THIN_GCM2 = 0.01;

    private final PointDose point;

    OrganExposure(Penetration penetration) {
        point = new PointDose(penetration);
    }

    /** Dose of an organ in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose at(Field field, OrganDose.Organ organ) {
        return point.in(field.inSpace(), organ.tissue()).plus(slow(field.sphere()));
    }

    /** Dose of a thin detector in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose thinDetector(Field field) {
        return point.behind(field.inSpace(), THIN_GCM2).plus(slow(field.sphere()));
    }

    /** Tissue-weighted dose of the body in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose mean(Field field) {
        return point.mean(field.inSpace()).plus(slow(field.sphere()));
    }

    /** Dose of an organ under a dome on the ground: half of what flies straight and all of the slow neutrons. */
    OrganDose underDome(Field field, OrganDose.Organ organ) {
        return point.in(field.onGround(), organ.tissue()).times(0.5).plus(slow(field.slow()));
    }

    /** Tissue-weighted dose of the body under a dome on the ground. */
    OrganDose meanUnderDome(Field field) {
        return point.mean(field.onGround()).times(0.5).plus(slow(field.slow()));
    }

    /** Gray equivalent of what flies straight to an organ in the middle of a sphere (Gy-Eq, a second's). */
    double straight(Field field, OrganDose.Organ organ) {
        return point.in(field.onGround(), organ.tissue()).grayEquivalent();
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
