// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What a reaction lets out, with pions, evaporation, gammas and what holds the nucleus together, is what came in. */
class EnergyBalanceLawTest {
    private static final int EVENTS = 1500;
    private static final double CLOSED = 0.02;
    @Test
    void energyClosesForNucleonsAndPions() {
        List<String> off = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(9);
        for (int[] target : new int[][] {{16, 8}, {28, 14}}) {
            for (int[] projectile : new int[][] {{0, 0}, {0, 1}, {1, -1}, {1, 1}}) {
                for (double energy : new double[] {50, 100, 300, 1000}) {
                    double ratio = ratio(target, projectile, energy, random);
                    if (!(Math.abs(ratio - 1) <= CLOSED)) {
                        off.add(String.format(Locale.ROOT, "%s %d on %d, %.0f MeV: %.3f",
                                projectile[0] == 1 ? "pion" : "nucleon", projectile[1], target[0], energy, ratio));
                    }
                }
            }
            double stopped = ratio(target, new int[] {2, -1}, 0, random);
            if (!(Math.abs(stopped - 1) <= CLOSED)) {
                off.add(String.format(Locale.ROOT, "stopped pion on %d: %.3f", target[0], stopped));
            }
        }
        assertEquals(List.of(), off);
    }

    /** Energy that comes out over what came in, kinetic energy and the pion's rest energy. */
    private static double ratio(int[] target, int[] projectile, double energy, SplittableRandom random) {
        Cascade cascade = new Cascade(new Nuclide(target[0], target[1]), random);
        double out = 0;
        int done = 0;
        while (done < EVENTS) {
            Residue residue = projectile[0] == 2 ? cascade.absorbAtRest()
                    : cascade.shoot(projectile[0] == 1, projectile[1], energy);
            if (residue != null) {
                done++;
                out += out(cascade, residue, random);
            }
        }
        double rest = projectile[0] == 0 ? projectile[1] == 1 ? Nuclide.PROTON : Nuclide.NEUTRON : FreeCollision.PION;
        double came = energy + rest + Nuclide.restEnergy(target[0], target[1]);
        double free = energy + (projectile[0] == 0 ? 0 : FreeCollision.PION);
        return 1 + (out / EVENTS - came) / free;
    }

    private static double out(Cascade cascade, Residue residue, SplittableRandom random) {
        double sum = residue.recoil();
        for (CascadeParticle p : cascade.emitted()) {
            sum += p.energy + (p.pion ? FreeCollision.PION : p.charge == 1 ? Nuclide.PROTON : Nuclide.NEUTRON);
        }
        for (Coalescence.Cluster c : cascade.clusters()) {
            sum += c.energy() + c.charge() * Nuclide.PROTON + (c.mass() - c.charge()) * Nuclide.NEUTRON;
        }
        List<Evaporation.Emission> emissions = new ArrayList<>();
        sum += Evaporation.cool(residue, random, emissions);
        int mass = residue.mass();
        int charge = residue.charge();
        for (Evaporation.Emission e : emissions) {
            sum += e.energy() + Nuclide.restEnergy(e.mass(), e.charge());
            mass -= e.mass();
            charge -= e.charge();
        }
        return sum + Nuclide.restEnergy(mass, charge);
    }
}
