// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.Field;
import bermwright.shielding.transport.Penetration;
import bermwright.shielding.transport.Stopping;
import java.util.Map;

/**
 * Doses of organs in a field: charged particles are carried into water to the depth of the organ and give their energy
 * there, reactions leave theirs on the spot with the quality of what they send out; slow neutrons by the body's mean
 * (effective dose per fluence, over its radiation weight for the absorbed dose).
 *
 * @see "NCRP Report 132 (2000), table 6.4, relative effectiveness: protons 1.5, heavier ions 2.5; from memory"
 */
final class OrganExposure {
    private static final double GRAY = 1.602177e-10 * 1e-4;
    private static final double PROTON_EFFECTIVENESS = 1.5;
    private static final double ION_EFFECTIVENESS = 2.5;
    /** Kinds of what reactions leave: charge, mass number and mean energy (MeV), from the cascade's own table. */
    private static final double[][] LEFT = {{1, 1, 9}, {1, 1, 4.5}, {1, 2.3, 5}, {2, 4, 7}, {7, 14, 2}};

    private final Penetration penetration;
    private final BodyDose body;
    private final double[] leftQuality = new double[LEFT.length];

    OrganExposure(Penetration penetration) {
        this.penetration = penetration;
        Stopping water = penetration.water();
        body = new BodyDose(penetration);
        for (int i = 0; i < LEFT.length; i++) {
            leftQuality[i] = Quality.mean(water, (int) LEFT[i][0], LEFT[i][1], LEFT[i][2]);
        }
    }

    /** Dose of an organ in the middle of a sphere in free space (a second's for cosmic rays). */
    OrganDose at(Field field, OrganDose.Organ organ) {
        return inside(penetration.inBody(field.beam(), organ.depthGCm2(), false)).plus(slow(field.sphere()));
    }

    /**
     * Tissue-weighted dose of the body in the middle of a sphere in free space (a second's for cosmic rays): its dose
     * equivalent is the effective dose equivalent.
     */
    OrganDose mean(Field field) {
        OrganDose sum = slow(field.sphere());
        for (Map.Entry<Tissue, Beam> reached : Tissue.reached(penetration, field.beam(), false).entrySet()) {
            sum = sum.plus(inside(reached.getValue()).times(reached.getKey().weight()));
        }
        return sum;
    }

    /** Dose where a beam is, without slow neutrons. */
    private OrganDose inside(Beam beam) {
        double light = body.gammas(beam) + body.pions(beam) + body.muons(beam);
        double absorbed = body.absorbed(beam, 1) + body.absorbedMade(beam) + light;
        double equivalent = body.equivalent(beam, 1) + body.equivalentMade(beam) + light;
        double early = PROTON_EFFECTIVENESS * (body.absorbed(beam, 1) + body.absorbedMade(beam)) + light;
        for (int z = 2; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            double dose = body.absorbed(beam, z);
            absorbed += dose;
            early += ION_EFFECTIVENESS * dose;
            equivalent += body.equivalent(beam, z);
        }
        double[] left = penetration.leftByReactions(beam);
        for (int i = 0; i < left.length; i++) {
            double dose = left[i] * GRAY;
            absorbed += dose;
            equivalent += dose * leftQuality[i];
            early += dose * (LEFT[i][0] > 1 ? ION_EFFECTIVENESS : PROTON_EFFECTIVENESS);
        }
        return new OrganDose(absorbed, equivalent, early);
    }

    /** Dose of an organ under a dome on the ground: half of what flies straight and all of the slow neutrons. */
    OrganDose underDome(Field field, OrganDose.Organ organ) {
        return underDome(field, at(field, organ));
    }

    /** Tissue-weighted dose of the body under a dome on the ground. */
    OrganDose meanUnderDome(Field field) {
        return underDome(field, mean(field));
    }

    private static OrganDose underDome(Field field, OrganDose sphere) {
        return sphere.plus(slow(field.sphere()).times(-1)).times(0.5).plus(slow(field.slow()));
    }

    /** Gray equivalent of what flies straight to an organ in the middle of a sphere (Gy-Eq, a second's). */
    double straight(Field field, OrganDose.Organ organ) {
        return Math.max(0, at(field, organ).grayEquivalent() - early(field.sphere()));
    }

    /** Gray equivalent of slow neutrons by group (Gy-Eq). */
    static double early(double[] groups) {
        return slow(groups).grayEquivalent();
    }

    /** Gray equivalent of nucleons that open ground sends back (Gy-Eq). */
    double back(Beam beam) {
        return PROTON_EFFECTIVENESS * body.absorbedMade(beam) + body.fastNeutrons(beam,
                energy -> Quality.neutronEffectiveness(energy) / Quality.neutronWeight(energy));
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
