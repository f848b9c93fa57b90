// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.material.Table;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.transport.Beam;
import bermwright.shielding.transport.LogTable;
import bermwright.shielding.transport.NarrowBeam;
import bermwright.shielding.transport.Penetration;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The body of simple solids beside a body model of published coefficients: tissue-weighted absorbed
 * dose per fluence, ours over printed, where printed is the effective dose over the weight of the arriving radiation.
 */
final class BodyCheck {
    private static final double HELIUM_WEIGHT = 20;
    private static final double PROTON_WEIGHT = 2;
    /** From pSv cm2 to Sv m2. */
    private static final double PSV_CM2 = 1e-16;
    /** Marching keeps a narrow spectrum only on a grid much finer than it is wide. */
    private static final Penetration FINE = penetration(new Penetration.Resolution(80, 1));
    private static final Penetration STANDARD = penetration(Penetration.Resolution.STANDARD);
    private static final LogTable HELIUM = helium();

    private BodyCheck() {
    }

    private static Penetration penetration(Penetration.Resolution resolution) {
        return new Penetration(new Shield(Materials.named("highland"), List.of()), 1, resolution);
    }

    private static LogTable helium() {
        double[][] rows = Table.numbers(BodyCheck.class, "/bermwright/shielding/published/icrp-116-helium.csv");
        return new LogTable(Arrays.stream(rows).mapToDouble(r -> r[0]).toArray(),
                Arrays.stream(rows).mapToDouble(r -> r[1]).toArray(), LogTable.Ends.CONTINUED);
    }

    /** Energies of the printed helium table (MeV per nucleon). */
    static double[] energies() {
        return Table.rows(BodyCheck.class, "/bermwright/shielding/published/icrp-116-helium.csv", ",").stream()
                .mapToDouble(r -> Double.parseDouble(r[0])).toArray();
    }

    /** Helium of energies about one (MeV per nucleon). */
    static double helium(double energyMeV) {
        return helium(FINE, NarrowBeam.of(FINE.grid(), 2, energyMeV));
    }

    /** Protons of energies about one (MeV). */
    static double protons(double energyMeV) {
        return share(FINE, NarrowBeam.of(FINE.grid(), 1, energyMeV), 1,
                e -> FluenceCoefficients.proton(e) / PROTON_WEIGHT);
    }

    /** Helium of cosmic rays behind soil (g/cm2) all around. */
    static double heliumBehind(double modulationW, double depthGCm2) {
        Beam sky = Beam.cosmic(new CosmicSpectrum(modulationW), STANDARD.grid(), 0);
        Beam there = STANDARD.carry(sky, new double[] {depthGCm2}, Progress.NONE).fields().get(0).beam();
        return helium(STANDARD, there.ions(2, 2));
    }

    private static double helium(Penetration penetration, Beam beam) {
        return share(penetration, beam, 2, e -> HELIUM.at(e) * PSV_CM2 / HELIUM_WEIGHT);
    }

    private static double share(Penetration penetration, Beam beam, int charge, DoubleUnaryOperator printed) {
        double sum = 0;
        for (int i = 0; i < penetration.grid().size(); i++) {
            sum += beam.fluence(charge, i) * penetration.grid().widthMeV(i)
                    * printed.applyAsDouble(penetration.grid().energyMeV(i));
        }
        return new PointDose(penetration).mean(beam).absorbed() / sum;
    }
}
