// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Dose against areal density for one shield, with the particles that make it, beside published figures.
 *
 * @param per       what the dose is counted over
 * @param points    computed points, areal densities rising from 0
 * @param published published figures, where there are any for these particles
 * @param room      slow neutrons of a room of any walls, where they are told apart
 * @param slants    what a slant does to fast particles
 */
public record DoseCurve(Response.Per per, List<Point> points, List<PublishedDose> published,
        Optional<DiffuseRoom> room, Slants slants) {
    /** What a slant does to fast particles. */
    @FunctionalInterface
    public interface Slants {
        /** Nothing. */
        Slants NONE = (arealDensity, slant) -> 1;

        /**
         * Dose of fast particles from a direction, over that of one that comes in square through as much.
         *
         * @param arealDensity areal density along the ray (kg/m2), zero or more
         * @param slant        how much longer than thick the way through the cover is (1), 1 or more
         * @return factor (1), zero or more
         */
        double factor(double arealDensity, double slant);
    }

    /**
     * One computed point.
     *
     * @param arealDensity soil along the ray plus the skin as soil (kg/m2)
     * @param isotropic    effective dose at the middle of a sphere of that areal density (Sv a day or an event)
     * @param band         how far it may be off for the sun it was made for
     * @param sun          how far it changes with the sun
     */
    public record Point(double arealDensity, Particles isotropic, Band band, Band sun) {
        /** Refuses missing parts. */
        public Point {
            Objects.requireNonNull(isotropic, "isotropic");
            Objects.requireNonNull(band, "band");
            Objects.requireNonNull(sun, "sun");
        }

        /**
         * Dose under a dome of equal areal density on the ground.
         *
         * @return dose (Sv a day or an event)
         */
        public double dome() {
            return isotropic.underDome().total();
        }
    }

    /** Copies the lists. */
    public DoseCurve {
        Objects.requireNonNull(per, "per");
        Objects.requireNonNull(room, "room");
        Objects.requireNonNull(slants, "slants");
        Require.that(!points.isEmpty(), "a curve has no points; accepted: at least one");
        points = List.copyOf(points);
        published = List.copyOf(published);
    }

    /**
     * The dose at any areal density, its logarithm and the shares of its particles joined by straight lines.
     *
     * @param arealDensity areal density (kg/m2), zero or more; beyond the last point that point's dose, an upper bound
     * @return effective dose at the middle of a sphere of that areal density (Sv a day or an event)
     * @throws IllegalArgumentException if the areal density is negative or not a number
     */
    public Particles at(double arealDensity) {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        int above = 0;
        while (above < points.size() && points.get(above).arealDensity() < arealDensity) {
            above++;
        }
        if (above == points.size()) {
            return points.get(above - 1).isotropic();
        }
        Point to = points.get(above);
        Point from = points.get(Math.max(0, above - 1));
        double one = from.isotropic().total();
        double other = to.isotropic().total();
        if (above == 0 || to.arealDensity() == arealDensity || !(one > 0 && other > 0)) {
            return to.isotropic();
        }
        double share = (arealDensity - from.arealDensity()) / (to.arealDensity() - from.arealDensity());
        double total = one * Math.pow(other / one, share);
        return from.isotropic().times((1 - share) / one).plus(to.isotropic().times(share / other)).times(total);
    }
}
