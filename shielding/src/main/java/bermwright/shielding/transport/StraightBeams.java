// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayList;
import java.util.List;

/** What comes in from outside and its fragments, along a ray: ions and protons that no reaction has turned aside. */
final class StraightBeams {
    private final BeamTransport march;
    private final double outerRadius;
    private final List<Double> places = new ArrayList<>();
    private final List<double[][]> reacting = new ArrayList<>();
    private final List<double[]> neutrons = new ArrayList<>();

    /** Along rays through a shell of an outer radius (g/cm2), without end for a level slab. */
    StraightBeams(BeamTransport march, double outerRadiusGCm2) {
        this.march = march;
        outerRadius = outerRadiusGCm2;
    }

    /** Way along a ray from the outer face to a depth at which it has a cosine to the way down (g/cm2). */
    double along(double depthGCm2, double cosine) {
        if (Double.isInfinite(outerRadius)) {
            return depthGCm2 / cosine;
        }
        double radius = Math.max(0, outerRadius - depthGCm2);
        double across = outerRadius * outerRadius - radius * radius;
        return across / (Math.sqrt(radius * radius * cosine * cosine + across) + radius * cosine);
    }

    /** Takes a beam at a depth along the ray (g/cm2), deeper than the last one. */
    void add(double alongGCm2, Beam beam) {
        places.add(alongGCm2);
        double[][] hadrons = march.effective(beam);
        reacting.add(new double[][] {hadrons[0], hadrons[1]});
        neutrons.add(march.letGo(beam));
    }

    /** Depths along the ray (g/cm2). */
    double[] places() {
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Nucleons (0 neutrons, 1 protons) that react at an energy, by place (1/m2/MeV). */
    double[] reacting(int nucleon, int k) {
        return reacting.stream().mapToDouble(r -> r[nucleon][k]).toArray();
    }

    /** Neutrons that ions let go ahead at an energy, by place (1/m2/MeV per g/cm2). */
    double[] neutrons(int k) {
        return neutrons.stream().mapToDouble(n -> n[k]).toArray();
    }
}
