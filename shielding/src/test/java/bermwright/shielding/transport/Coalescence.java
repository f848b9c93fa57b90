// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * Nucleons that a cascade sends out near to each other in momentum leave as hydrogen-2, -3 or helium.
 *
 * @see "Butler and Pearson (1963), Phys. Rev. 129, 836; Gudima, Mashnik and Toneev (1983), Nucl. Phys. A 401, 329
 *     (momenta); from memory"
 */
final class Coalescence {
    /** Greatest momentum of a nucleon in the frame of its cluster of two, three and four (MeV/c). */
    private static final double[] GREATEST = {90, 108, 115};
    /** Faster clusters (MeV per nucleon) react before they stop, and so let their nucleons go again. */
    private static final double STOPPING = 150;

    private Coalescence() {
    }

    /** A cluster: charge, number of nucleons and energy (MeV). */
    record Cluster(int charge, int mass, double energy) {
    }

    /** Takes nucleons that leave together out of the list. */
    static List<Cluster> join(List<CascadeParticle> emitted) {
        List<List<CascadeParticle>> groups = new ArrayList<>();
        List<CascadeParticle> single = new ArrayList<>();
        emitted.stream().filter(p -> !p.pion && p.energy < STOPPING).forEach(single::add);
        for (int i = 0; i < single.size(); i++) {
            for (int k = i + 1; k < single.size(); k++) {
                List<CascadeParticle> pair = List.of(single.get(i), single.get(k));
                if (charge(pair) == 1 && near(pair, 0)) {
                    groups.add(new ArrayList<>(pair));
                    single.remove(k);
                    single.remove(i);
                    i--;
                    break;
                }
            }
        }
        for (int size = 1; size < GREATEST.length; size++) {
            for (List<CascadeParticle> group : groups) {
                grow(group, single, size);
            }
        }
        List<Cluster> clusters = new ArrayList<>();
        for (List<CascadeParticle> group : groups) {
            emitted.removeAll(group);
            clusters.add(new Cluster(charge(group), group.size(),
                    group.stream().mapToDouble(p -> p.energy).sum()));
        }
        return clusters;
    }

    private static void grow(List<CascadeParticle> group, List<CascadeParticle> single, int size) {
        if (group.size() != size + 1) {
            return;
        }
        for (Iterator<CascadeParticle> others = single.iterator(); others.hasNext();) {
            CascadeParticle other = others.next();
            List<CascadeParticle> more = new ArrayList<>(group);
            more.add(other);
            int charge = charge(more);
            if (charge > 0 && charge < 3 && (size == 1 || charge == 2) && near(more, size)) {
                group.add(other);
                others.remove();
                return;
            }
        }
    }

    private static int charge(List<CascadeParticle> group) {
        return group.stream().mapToInt(p -> p.charge).sum();
    }

    private static boolean near(List<CascadeParticle> group, int size) {
        double[] total = new double[4];
        for (CascadeParticle p : group) {
            total = Kinematics.sum(total, p.fourMomentum(0));
        }
        for (CascadeParticle p : group) {
            double[] own = Kinematics.inFrameOf(p.fourMomentum(0), total);
            if (own[1] * own[1] + own[2] * own[2] + own[3] * own[3] > GREATEST[size] * GREATEST[size]) {
                return false;
            }
        }
        return true;
    }
}
