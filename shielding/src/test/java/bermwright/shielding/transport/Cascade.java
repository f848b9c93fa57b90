// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Intranuclear cascade: a nucleon or pion crosses a nucleus, its collisions are those of free particles with Pauli
 * blocking, pions are made and absorbed through the resonance; what is left over is excitation.
 *
 * <p>No figure in it was fitted to thick shields, air or any dose.
 *
 * @see "Serber (1947), Phys. Rev. 72, 1114; Bertini (1969), Phys. Rev. 188, 1711; Oset and Salcedo (1987), Nucl. Phys.
 *     A 468, 631 (width of resonance absorption in matter); formulas from memory"
 */
final class Cascade {
    private static final double STEP = 0.3;
    private static final double MB_IN_FM2 = 0.1;
    private static final double RESONANCE = 1232;
    private static final double RESONANCE_WIDTH = 115;
    /** Absorption width of the resonance in nuclear matter of central density (MeV). */
    private static final double ABSORPTION_WIDTH = 80;
    /** Slope of the momentum transfer, and of leading particles across, in inelastic collisions, (GeV/c)^-2. */
    static final double INELASTIC_SLOPE = 4;
    /** Mean energy that each further pion leaves in a cluster beyond its mass (MeV), mean transverse motion. */
    private static final double CLUSTER_ENERGY = 250;
    /** Mass of pion and nucleon up to which they form one resonance (MeV). */
    private static final double RESONANCES_UP_TO = 1500;
    /** Up to this many pions two hadrons go apart as resonances, a pion or two from each; with more they lead. */
    private static final int RESONANT_PIONS = 2;
    /** Leading particles that keep their charge, as of protons at 12 to 160 GeV (from memory). */
    private static final double CHARGE_KEPT = 2.0 / 3;
    /** Times that leaving nucleons are asked for missing energy, and what a nucleus then keeps (MeV). */
    private static final int ROUNDS = 6;
    private static final double LEAST_EXCITATION = 0.01;
    /** Share of pairs that absorb a stopped negative pion which leave as two neutrons. */
    private static final double NEUTRON_PAIRS = 0.8;

    private final Nuclide target;
    private final SplittableRandom random;
    private final List<CascadeParticle> emitted = new ArrayList<>();
    private final Deque<CascadeParticle> waiting = new ArrayDeque<>();
    private List<Coalescence.Cluster> clusters = List.of();
    private int protons;
    private int nucleons;
    private int collisions;

    Cascade(Nuclide target, SplittableRandom random) {
        this.target = target;
        this.random = random;
    }

    List<CascadeParticle> emitted() {
        return emitted;
    }

    /** Clusters that left besides. */
    List<Coalescence.Cluster> clusters() {
        return clusters;
    }

    /** Sends one projectile at a random place; the answer is null where it passed through without a collision. */
    Residue shoot(boolean pion, int charge, double energy) {
        if (!send(pion, charge, energy)) {
            return null;
        }
        double total = (pion ? FreeCollision.PION : rest(charge)) + energy;
        Residue left = settled(total, energy, pion);
        while (left.excitation() < 0) {
            left = send(pion, charge, energy) ? settled(total, energy, pion) : left;
        }
        clusters = Coalescence.join(emitted);
        return left;
    }

    /**
     * What is left. The well binds each nucleon alike, real nuclei by more or less: where a nucleus would be left with
     * less than its ground state, the nucleons that leave give what is missing, each the same, up to half its energy;
     * a reaction that cannot is drawn again.
     */
    private Residue settled(double projectileTotal, double energy, boolean pion) {
        Residue left = residue(projectileTotal, energy, pion);
        for (int round = 0; left.excitation() < 0 && round < ROUNDS; round++) {
            double missing = -left.excitation() + LEAST_EXCITATION;
            List<CascadeParticle> out = emitted.stream().filter(p -> !p.pion).toList();
            for (CascadeParticle p : out) {
                p.energy -= Math.min(missing / out.size(), p.energy / 2);
            }
            left = residue(projectileTotal, energy, pion);
        }
        return left;
    }

    /** Follows one projectile and what it makes until nothing is left; false where it met nothing. */
    private boolean send(boolean pion, int charge, double energy) {
        emitted.clear();
        waiting.clear();
        protons = target.charge() + charge;
        nucleons = target.mass() + (pion ? 0 : 1);
        collisions = 0;
        CascadeParticle projectile = new CascadeParticle(pion, charge);
        double b = target.edge() * Math.sqrt(random.nextDouble());
        projectile.x = b;
        projectile.z = -Math.sqrt(target.edge() * target.edge() - b * b) + 1e-6;
        projectile.uz = 1;
        projectile.energy = energy;
        waiting.push(projectile);
        while (!waiting.isEmpty()) {
            follow(waiting.pop());
        }
        return collisions > 0;
    }

    /**
     * Takes in a negative pion that came to rest: a pair of nucleons absorbs it by the square of the density, four
     * times of five a neutron and a proton, which leave as two neutrons (from memory), else two protons.
     */
    Residue absorbAtRest() {
        emitted.clear();
        waiting.clear();
        protons = target.charge() - 1;
        nucleons = target.mass();
        double radius;
        double share;
        do {
            radius = target.edge() * Math.cbrt(random.nextDouble());
            share = target.density(radius) / target.centralDensity();
        } while (random.nextDouble() > share * share);
        CascadeParticle place = new CascadeParticle(true, -1);
        place.x = radius;
        double[][] out;
        do {
            double[] total = Kinematics.sum(Kinematics.sum(partner(radius), partner(radius)),
                    new double[] {FreeCollision.PION, 0, 0, 0});
            out = Kinematics.pair(total, new double[] {Nuclide.NUCLEON, Nuclide.NUCLEON}, Kinematics.isotropic(random));
        } while (blocked(out[0], radius) || blocked(out[1], radius));
        add(place, false, 0, out[0], radius);
        add(place, false, random.nextDouble() < NEUTRON_PAIRS ? 0 : 1, out[1], radius);
        while (!waiting.isEmpty()) {
            follow(waiting.pop());
        }
        Residue left = settled(FreeCollision.PION, 0, true);
        clusters = Coalescence.join(emitted);
        return left.possible();
    }

    private static double rest(int charge) {
        return charge == 1 ? Nuclide.PROTON : Nuclide.NEUTRON;
    }

    private Residue residue(double projectileTotal, double energy, boolean pion) {
        double total = projectileTotal + Nuclide.restEnergy(target.mass(), target.charge());
        double m = pion ? FreeCollision.PION : Nuclide.NUCLEON;
        double[] momentum = {0, 0, Math.sqrt(energy * (energy + 2 * m))};
        int mass = nucleons;
        int charge = protons;
        for (CascadeParticle p : emitted) {
            total -= p.energy + (p.pion ? FreeCollision.PION : rest(p.charge));
            double[] four = p.fourMomentum(0);
            momentum[0] -= four[1];
            momentum[1] -= four[2];
            momentum[2] -= four[3];
        }
        charge = Math.max(0, Math.min(mass, charge));
        double rest = Nuclide.restEnergy(mass, charge);
        double square = momentum[0] * momentum[0] + momentum[1] * momentum[1] + momentum[2] * momentum[2];
        double recoil = mass > 0 ? square / (2 * rest) : 0;
        return new Residue(mass, charge, total - rest - recoil, recoil);
    }

    private void follow(CascadeParticle p) {
        while (true) {
            p.x += p.ux * STEP;
            p.y += p.uy * STEP;
            p.z += p.uz * STEP;
            double radius = p.radius();
            if (radius >= target.edge()) {
                leave(p);
                return;
            }
            if (!p.pion && p.energy < target.barrier()) {
                return;
            }
            if (p.unformed > 0) {
                p.unformed -= STEP;
                continue;
            }
            double well = target.well(radius);
            double thickness = target.density(radius) * nucleons / target.mass() * STEP * MB_IN_FM2;
            double[] sigma = crossSections(p, well);
            double share = (double) protons / Math.max(1, nucleons);
            double mean = share * sigma[1] + (1 - share) * sigma[0];
            if (random.nextDouble() < -Math.expm1(-thickness * mean)) {
                int partner = random.nextDouble() * mean < share * sigma[1] ? 1 : 0;
                boolean done = p.pion ? meetAsPion(p, partner, radius) : meetAsNucleon(p, partner, radius);
                if (done) {
                    collisions++;
                    return;
                }
            }
        }
    }

    private void leave(CascadeParticle p) {
        if (!p.pion) {
            if (p.energy <= (p.charge == 1 ? target.barrier() : 0)) {
                return;
            }
            nucleons--;
        }
        protons -= p.charge;
        emitted.add(p);
    }

    /** Cross sections (mb) with a neutron and a proton at rest. */
    private double[] crossSections(CascadeParticle p, double well) {
        double[] four = p.fourMomentum(well);
        double momentum = Math.sqrt(four[1] * four[1] + four[2] * four[2] + four[3] * four[3]) / 1000;
        if (p.pion) {
            double mass = Kinematics.mass(Kinematics.sum(four, new double[] {Nuclide.NUCLEON, 0, 0, 0}));
            return new double[] {FreeCollision.pion(p.charge, 0, mass), FreeCollision.pion(p.charge, 1, mass)};
        }
        return new double[] {FreeCollision.total(p.charge == 0, momentum),
            FreeCollision.total(p.charge == 1, momentum)};
    }

    private double[] partner(double radius) {
        double size = target.fermiMomentum(radius) * Math.cbrt(random.nextDouble());
        double[] u = Kinematics.isotropic(random);
        double m = Nuclide.NUCLEON;
        return new double[] {Math.sqrt(size * size + m * m), size * u[0], size * u[1], size * u[2]};
    }

    private boolean blocked(double[] four, double radius) {
        return four[0] - Nuclide.NUCLEON < target.fermiEnergy(radius);
    }

    private void add(CascadeParticle at, boolean pion, int charge, double[] four, double radius) {
        CascadeParticle made = new CascadeParticle(pion, charge);
        made.at(at);
        made.momentum(new double[] {four[1], four[2], four[3]}, target.well(radius));
        waiting.push(made);
    }

    private boolean meetAsNucleon(CascadeParticle p, int partnerCharge, double radius) {
        double[] first = p.fourMomentum(target.well(radius));
        double[] total = Kinematics.sum(first, partner(radius));
        double mass = Kinematics.mass(total);
        double s = mass * mass / 1e6;
        double m = Nuclide.NUCLEON / 1000;
        double laboratory = Math.sqrt(Math.max(0, s * s / (4 * m * m) - s));
        boolean like = p.charge == partnerCharge;
        double sigma = FreeCollision.total(like, laboratory);
        double[] axis = Kinematics.direction(Kinematics.inFrameOf(first, total));
        double q = Kinematics.breakup(mass, Nuclide.NUCLEON, Nuclide.NUCLEON) / 1000;
        if (random.nextDouble() * sigma >= FreeCollision.elastic(like, laboratory)
                && mass > 2 * Nuclide.NUCLEON + FreeCollision.PION + 20) {
            return inelastic(p, new int[] {p.charge, partnerCharge}, total, axis, radius);
        }
        double[] u = Kinematics.turned(axis, FreeCollision.elasticCosine(like, laboratory, q, random), random);
        double[][] out = Kinematics.pair(total, new double[] {Nuclide.NUCLEON, Nuclide.NUCLEON}, u);
        if (blocked(out[0], radius) || blocked(out[1], radius)) {
            return false;
        }
        add(p, false, p.charge, out[0], radius);
        add(p, false, partnerCharge, out[1], radius);
        return true;
    }

    /** Two clusters go apart, peaked forward and backward; each decays into a nucleon and its pions. */
    private boolean inelastic(CascadeParticle p, int[] charges, double[] total, double[] axis, double radius) {
        int count = FreeCollision.pions(Kinematics.mass(total), random);
        if (count > RESONANT_PIONS) {
            return lead(p, charges, total, axis, radius);
        }
        PionCluster[] clusters = {new PionCluster(true), new PionCluster(true)};
        for (int i = 0; i < count; i++) {
            clusters[random.nextInt(2)].pions++;
        }
        return part(p, clusters, charges[0] + charges[1], total, axis, radius);
    }

    /** Two clusters leave a collision and decay. */
    private boolean part(CascadeParticle p, PionCluster[] clusters, int charge, double[] total, double[] axis,
            double radius) {
        double mass = Kinematics.mass(total);
        double free = mass - clusters[0].least() - clusters[1].least();
        for (int tries = 0; tries == 0 || clusters[0].mass + clusters[1].mass > mass - 1; tries++) {
            for (PionCluster cluster : clusters) {
                cluster.mass = tries < 50 ? clusterMass(cluster)
                        : cluster.least() + 0.8 * free * cluster.pions / (clusters[0].pions + clusters[1].pions);
            }
        }
        double q = Kinematics.breakup(mass, clusters[0].mass, clusters[1].mass) / 1000;
        double[] u = Kinematics.turned(axis, FreeCollision.peaked(INELASTIC_SLOPE, q, random), random);
        double[][] bodies = Kinematics.pair(total, new double[] {clusters[0].mass, clusters[1].mass}, u);
        int[][] shared = shareCharge(charge, clusters);
        List<double[]> made = new ArrayList<>();
        List<int[]> kinds = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            if (!decayOrAbsorb(bodies[i], clusters[i], shared[i], radius, made, kinds)) {
                return false;
            }
        }
        boolean many = clusters[0].pions + clusters[1].pions > 1;
        for (int i = 0; i < made.size(); i++) {
            boolean pion = kinds.get(i)[0] == 1;
            add(p, pion, kinds.get(i)[1], made.get(i), radius);
            if (pion && many) {
                waiting.peek().unformed = FreeCollision.formation(made.get(i));
            }
        }
        return true;
    }

    /** Fast hadrons lead, pions are made between them; where there is no room for pions nothing happens. */
    private boolean lead(CascadeParticle p, int[] charges, double[] total, double[] axis, double radius) {
        double[] masses = {p.restEnergy(), Nuclide.NUCLEON};
        List<double[]> made = new LeadingParticles(random).part(total, axis, masses);
        if (made.isEmpty() || !p.pion && blocked(made.get(0), radius) || blocked(made.get(1), radius)) {
            return false;
        }
        int[] shared = leadingCharges(p.pion, charges, made.size());
        for (int i = 0; i < made.size(); i++) {
            boolean pion = i > 1 || i == 0 && p.pion;
            add(p, pion, shared[i], made.get(i), radius);
            if (i > 1) {
                waiting.peek().unformed = FreeCollision.formation(made.get(i));
            }
        }
        return true;
    }

    /** A leading particle keeps its charge in two cases of three; the pions share what is left. */
    private int[] leadingCharges(boolean pion, int[] charges, int count) {
        while (true) {
            int[] shared = new int[count];
            int sum = charges[0] + charges[1];
            for (int i = 0; i < count; i++) {
                if (i < 2) {
                    int other = pion && i == 0 ? random.nextInt(3) - 1 : 1 - charges[i];
                    shared[i] = random.nextDouble() < CHARGE_KEPT ? charges[i] : other;
                } else {
                    shared[i] = random.nextInt(3) - 1;
                }
                sum -= shared[i];
            }
            if (sum == 0) {
                return shared;
            }
        }
    }

    private double clusterMass(PionCluster cluster) {
        if (cluster.pions == 0 || !cluster.baryon && cluster.pions == 1) {
            return cluster.least();
        }
        if (cluster.baryon && cluster.pions == 1) {
            double m;
            do {
                m = RESONANCE + RESONANCE_WIDTH / 2 * Math.tan(Math.PI * (random.nextDouble() - 0.5));
            } while (m < Nuclide.NUCLEON + FreeCollision.PION + 5 || m > RESONANCE + 600);
            return m;
        }
        double more = 0;
        for (int i = 0; i < cluster.pions; i++) {
            more -= CLUSTER_ENERGY * Math.log(1 - random.nextDouble());
        }
        return cluster.least() + more;
    }

    /** Charges by cluster: the nucleon's, if any, then its pions'; all shares that keep the sum are as likely. */
    private int[][] shareCharge(int total, PionCluster[] clusters) {
        while (true) {
            int sum = 0;
            int[][] shared = new int[2][];
            for (int i = 0; i < 2; i++) {
                int first = clusters[i].baryon ? 1 : 0;
                shared[i] = new int[clusters[i].pions + first];
                for (int k = 0; k < shared[i].length; k++) {
                    shared[i][k] = k < first ? random.nextInt(2) : random.nextInt(3) - 1;
                    sum += shared[i][k];
                }
            }
            if (sum == total) {
                return shared;
            }
        }
    }

    private boolean decayOrAbsorb(double[] four, PionCluster cluster, int[] charges, double radius, List<double[]> made,
            List<int[]> kinds) {
        if (cluster.baryon && cluster.pions == 1 && absorbs(four, charges, radius, made, kinds)) {
            return true;
        }
        double[] masses = new double[charges.length];
        java.util.Arrays.fill(masses, FreeCollision.PION);
        if (cluster.baryon) {
            masses[0] = Nuclide.NUCLEON;
        }
        double[][] bodies = masses.length == 1 ? new double[][] {four} : Kinematics.decay(four, masses, random);
        if (cluster.baryon && blocked(bodies[0], radius)) {
            return false;
        }
        for (int i = 0; i < bodies.length; i++) {
            made.add(bodies[i]);
            kinds.add(new int[] {cluster.baryon && i == 0 ? 0 : 1, charges[i]});
        }
        return true;
    }

    /** The resonance meets a second nucleon and both go apart without a pion. */
    private boolean absorbs(double[] cluster, int[] charges, double radius, List<double[]> made, List<int[]> kinds) {
        double off = (Kinematics.mass(cluster) - RESONANCE) / RESONANCE_WIDTH;
        double width = ABSORPTION_WIDTH * target.density(radius) / target.centralDensity() / (1 + off * off);
        if (random.nextDouble() > width / (width + RESONANCE_WIDTH)) {
            return false;
        }
        int second = random.nextInt(Math.max(1, nucleons)) < protons ? 1 : 0;
        int sum = charges[0] + charges[1] + second;
        if (sum < 0 || sum > 2) {
            return false;
        }
        double[] total = Kinematics.sum(cluster, partner(radius));
        double[][] out = Kinematics.pair(total, new double[] {Nuclide.NUCLEON, Nuclide.NUCLEON},
                Kinematics.isotropic(random));
        if (blocked(out[0], radius) || blocked(out[1], radius)) {
            return false;
        }
        int first = sum == 1 ? random.nextInt(2) : sum / 2;
        made.addAll(List.of(out[0], out[1]));
        kinds.addAll(List.of(new int[] {0, first}, new int[] {0, sum - first}));
        return true;
    }

    /** Up to the resonances one cluster, above them elastic or two clusters, the pion's one going ahead. */
    private boolean meetAsPion(CascadeParticle p, int partnerCharge, double radius) {
        double[] first = p.fourMomentum(0);
        double[] total = Kinematics.sum(first, partner(radius));
        double mass = Kinematics.mass(total);
        int charge = p.charge + partnerCharge;
        double[] axis = Kinematics.direction(Kinematics.inFrameOf(first, total));
        if (mass > RESONANCES_UP_TO) {
            return meetAsFastPion(p, partnerCharge, total, axis, radius);
        }
        PionCluster one = new PionCluster(true);
        one.pions = 1;
        int[] charges;
        do {
            charges = new int[] {random.nextInt(2), random.nextInt(3) - 1};
        } while (charges[0] + charges[1] != charge);
        List<double[]> made = new ArrayList<>();
        List<int[]> kinds = new ArrayList<>();
        if (!decayOrAbsorb(total, one, charges, radius, made, kinds)) {
            return false;
        }
        for (int i = 0; i < made.size(); i++) {
            add(p, kinds.get(i)[0] == 1, kinds.get(i)[1], made.get(i), radius);
        }
        return true;
    }

    /** Elastic, or two clusters of which the pion's goes ahead, or with more pions both lead. */
    private boolean meetAsFastPion(CascadeParticle p, int partnerCharge, double[] total, double[] axis, double radius) {
        double mass = Kinematics.mass(total);
        double momentum = (mass * mass - Nuclide.NUCLEON * Nuclide.NUCLEON - FreeCollision.PION * FreeCollision.PION)
                / (2 * Nuclide.NUCLEON) / 1000;
        double fast = Math.max(momentum, FreeCollision.FAST_PION);
        if (random.nextDouble() * FreeCollision.fastPion(fast) < FreeCollision.fastPionElastic(fast)) {
            double[] masses = {FreeCollision.PION, Nuclide.NUCLEON};
            double q = Kinematics.breakup(mass, masses[0], masses[1]) / 1000;
            double[] u = Kinematics.turned(axis,
                    FreeCollision.peaked(FreeCollision.regge(true, mass), q, random), random);
            double[][] out = Kinematics.pair(total, masses, u);
            if (blocked(out[1], radius)) {
                return false;
            }
            add(p, true, p.charge, out[0], radius);
            add(p, false, partnerCharge, out[1], radius);
            return true;
        }
        // As many as nucleons make with the same energy to spare.
        int more = FreeCollision.pions(mass + Nuclide.NUCLEON - FreeCollision.PION, random);
        if (more > RESONANT_PIONS) {
            return lead(p, new int[] {p.charge, partnerCharge}, total, axis, radius);
        }
        PionCluster[] clusters = {new PionCluster(false), new PionCluster(true)};
        clusters[0].pions = 1;
        for (int i = 0; i < more; i++) {
            clusters[random.nextInt(2)].pions++;
        }
        while (clusters[0].least() + clusters[1].least() > mass - 20) {
            clusters[clusters[1].pions > 0 ? 1 : 0].pions--;
        }
        return part(p, clusters, p.charge + partnerCharge, total, axis, radius);
    }
}
