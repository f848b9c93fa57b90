// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import java.util.List;
import java.util.Objects;

/**
 * Dose against areal density for one shield, with the particles that make it, beside published figures.
 *
 * @param per       what the dose is counted over
 * @param points    computed points, areal densities rising from 0
 * @param published published figures, where there are any for these particles
 */
public record DoseCurve(Response.Per per, List<Point> points, List<PublishedDose> published) {
    /**
     * One computed point.
     *
     * @param arealDensity soil along the ray plus the skin as soil (kg/m2)
     * @param isotropic    effective dose at the middle of a sphere of that areal density (Sv a day or an event)
     * @param band         how far it may be off
     */
    public record Point(double arealDensity, Particles isotropic, Band band) {
        /** Refuses missing parts. */
        public Point {
            Objects.requireNonNull(isotropic, "isotropic");
            Objects.requireNonNull(band, "band");
        }

        /**
         * Dose under a dome of equal areal density on the ground.
         *
         * @return half the dose of the sphere (Sv a day or an event)
         */
        public double dome() {
            return isotropic.total() / 2;
        }
    }

    /** Copies the lists. */
    public DoseCurve {
        Objects.requireNonNull(per, "per");
        points = List.copyOf(points);
        published = List.copyOf(published);
    }
}
