// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.CosmicSpectrum;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TransportLawTest {
    /** Sums of doubles. */
    private static final double ROUNDING = 1e-9;
    /** Just below 20 MeV, a point of every grid: there the fast products of the cascade begin. */
    private static final double FAST = 19.2;
    /** The cascade's energy is kept but for nuclei left with less than nothing, which are set to their ground state. */
    private static final double ENERGY = 0.04;
    /** A hundredth; at 1000 g/cm2 the grid costs a tenth of that more. */
    private static final double STEPS = 0.012;

    @Test
    void ionsBreakUpWithoutLosingMassOrCharge() {
        for (String name : List.of("highland", "water", "aluminium")) {
            Fragmentation fragmentation = new Fragmentation(Materials.named(name));
            for (int k = 2; k <= CosmicSpectrum.GREATEST_CHARGE; k++) {
                double mass = fragmentation.participants(k) + fragmentation.neutrons(k) + fragmentation.yield(k, 1);
                double charge = fragmentation.participants(k) * k / CosmicSpectrum.massNumber(k)
                        + fragmentation.yield(k, 1);
                for (int j = 2; j <= k; j++) {
                    assertTrue(fragmentation.yield(k, j) >= 0);
                    mass += fragmentation.yield(k, j) * CosmicSpectrum.massNumber(j);
                    charge += fragmentation.yield(k, j) * j;
                }
                assertEquals(CosmicSpectrum.massNumber(k), mass, ROUNDING * mass, name + " " + k);
                assertEquals(k, charge, ROUNDING * k, name + " " + k);
            }
        }
    }

    @Test
    void theCascadeKeepsEnergyMassAndCharge() {
        SplittableRandom random = new SplittableRandom(3);
        for (double energy : new double[] {200, 1000, 5000}) {
            Cascade cascade = new Cascade(new Nuclide(28, 14), random);
            double out = 0;
            int events = 0;
            while (events < 2000) {
                Residue residue = cascade.shoot(false, 1, energy);
                if (residue == null) {
                    continue;
                }
                events++;
                int mass = residue.mass();
                int charge = residue.charge();
                double total = residue.excitation() + residue.recoil()
                        + Nuclide.restEnergy(residue.mass(), residue.charge());
                for (CascadeParticle p : cascade.emitted()) {
                    mass += p.pion ? 0 : 1;
                    charge += p.charge;
                    total += p.energy + (p.pion ? FreeCollision.PION
                            : p.charge == 1 ? Nuclide.PROTON : Nuclide.NEUTRON);
                }
                for (Coalescence.Cluster cluster : cascade.clusters()) {
                    mass += cluster.mass();
                    charge += cluster.charge();
                    total += cluster.energy() + cluster.charge() * Nuclide.PROTON
                            + (cluster.mass() - cluster.charge()) * Nuclide.NEUTRON;
                }
                assertEquals(29, mass);
                assertEquals(15, charge);
                out += total - Nuclide.restEnergy(28, 14) - Nuclide.PROTON;
            }
            assertEquals(energy, out / events, energy * ENERGY);
        }
    }

    @Test
    void withoutReactionsNothingIsLostOfABeamThatOnlySlowsDown() {
        EnergyGrid grid = new EnergyGrid(40);
        Medium water = new Medium(Materials.named("water"), grid);
        double[] range = water.range(1);
        for (int i = 1; i < grid.size(); i++) {
            assertTrue(range[i] > range[i - 1]);
        }
        Stopping stopping = Stopping.in(Materials.named("water"));
        double left = stopping.protonEnergyMeV(stopping.protonRangeGCm2(200) - 10);
        assertEquals(10, stopping.protonRangeGCm2(200) - stopping.protonRangeGCm2(left), 1e-6);
    }

    @Test
    void halvingStepsAndGridHardlyChangesFluenceFoldedWithDose() {
        double[] depths = {0, 5, 30, 100, 180, 400, 1000};
        double[] standard = energyWeighted(Penetration.Resolution.STANDARD, depths);
        double[] fineSteps = energyWeighted(new Penetration.Resolution(23, 0.5), depths);
        double[] fineGrid = energyWeighted(new Penetration.Resolution(46, 1), depths);
        for (int i = 0; i < depths.length; i++) {
            assertEquals(standard[i], fineSteps[i], standard[i] * STEPS, "steps at " + depths[i]);
            assertEquals(standard[i], fineGrid[i], standard[i] * STEPS, "grid at " + depths[i]);
        }
    }

    /** A weight like that of dose: ions by the square of the charge, nucleons by one; slow neutrons by a fifth. */
    private static double[] energyWeighted(Penetration.Resolution resolution, double[] depths) {
        Penetration penetration = new Penetration(Shield.of("highland", List.of()), 1, resolution);
        Penetration.Outcome outcome = penetration.carry(
                Beam.cosmic(new CosmicSpectrum(10), penetration.grid(), 0), depths, Progress.NONE);
        return outcome.fields().stream().mapToDouble(field -> {
            double sum = 0;
            for (int s = 0; s < Medium.SPECIES; s++) {
                for (int i = 0; i < penetration.grid().size(); i++) {
                    double fluence = field.beam().fluence(s, i);
                    assertTrue(fluence >= 0, "negative fluence");
                    double weight = s > 1 && s < Medium.PION ? s * s : 1;
                    sum += penetration.grid().energyMeV(i) < FAST ? 0
                            : weight * fluence * penetration.grid().widthMeV(i);
                }
            }
            for (double group : field.slow()) {
                sum += 0.2 * group;
            }
            return sum;
        }).toArray();
    }
}
