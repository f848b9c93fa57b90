// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SceneRays;
import java.util.List;

/**
 * The whole sky as one station sees it, in as many directions as the dose there needs.
 *
 * <p>Azimuths begin with an even turn and both sides of every edge that the scene tells of, and are halved where the
 * dose still changes; along each azimuth panels of elevation are halved by the difference of two rules over the same
 * rays. What is narrower than 2 degrees of azimuth and lies at no end of a hull, tunnel or wall may be missed. Where
 * the doses have not settled within the greatest number of directions, {@link #isSettled} says so.
 */
public final class SkyView {
    private final Vec3 station;
    private final List<SkyRing> rings;
    private final double openShare;
    private final double tolerance;

    private SkyView(Vec3 station, List<SkyRing> rings, double openShare, double tolerance) {
        this.station = station;
        this.rings = List.copyOf(rings);
        this.openShare = openShare;
        this.tolerance = tolerance;
    }

    /**
     * Looks at the sky until the doses are settled.
     *
     * @param scene     the scene, ready for rays
     * @param station   where to look from
     * @param responses the responses that have to settle, at least one
     * @param tolerance share of each dose that may stay open (1), such as 0.005
     * @return the view
     */
    public static SkyView settled(SceneRays scene, Vec3 station, List<Response> responses, double tolerance) {
        return settled(scene, station, responses, tolerance, KnownSky.nothing());
    }

    /** The same with what is known of it already, which takes up what is seen now. */
    static SkyView settled(SceneRays scene, Vec3 station, List<Response> responses, double tolerance, KnownSky known) {
        SkyLook look = new SkyLook(scene.from(station), SkyEdges.azimuths(scene.scene(), station), responses,
                tolerance, known);
        look.settle();
        return new SkyView(station, look.rings, look.openShare, tolerance);
    }

    /** Takes one direction at a time. */
    @FunctionalInterface
    public interface Visitor {
        /**
         * One direction.
         *
         * @param direction what is seen there
         */
        void visit(Direction direction);
    }

    /**
     * One direction of the sky and what lies in it.
     *
     * @param azimuth azimuth (rad)
     * @param sine    sine of the elevation (1), 0 to 1
     * @param share   share of the whole ball of directions it stands for (1); all of a view's together are 0.5
     * @param placed  placed soil (kg/m2)
     * @param inPlace undisturbed soil (kg/m2)
     * @param skin    skins at a slant (kg/m2)
     * @param slant   how much longer than thick the way through the outer layer of the cover is (1)
     * @param beyond  soil beyond the cover, which is the first soil the ray leaves (kg/m2), in the sum of both soils
     */
    public record Direction(double azimuth, double sine, double share, double placed, double inPlace, double skin,
            double slant, double beyond) {
        /**
         * Everything counted as soil.
         *
         * @param skinEquivalence what one unit of skin counts as in soil (1)
         * @return areal density (kg/m2)
         */
        public double arealDensity(double skinEquivalence) {
            return placed + inPlace + skin * skinEquivalence;
        }

        /**
         * How far the wall that is seen there is from the outer face of its cover: what the ray crosses on the way out
         * of the first soil, over its slant to the face through which it leaves it. Soil further out does not count.
         *
         * @param skinEquivalence what one unit of skin counts as in soil (1)
         * @return areal density (kg/m2)
         */
        public double across(double skinEquivalence) {
            return (arealDensity(skinEquivalence) - beyond) / slant;
        }
    }

    /**
     * Goes through all directions.
     *
     * @param visitor takes each of them
     */
    public void forEach(Visitor visitor) {
        for (SkyRing ring : rings) {
            ring.forEach(ring.turnShare, visitor);
        }
    }

    /** What all directions give together when they are folded, azimuth by azimuth. */
    FoldedDose.Sums folded(FoldedDose.Key key) {
        FoldedDose.Sums all = new FoldedDose.Sums(key);
        for (SkyRing ring : rings) {
            all.add(ring.folded(key), ring.turnShare);
        }
        return all;
    }

    /**
     * Where it was looked from.
     *
     * @return the station
     */
    Vec3 station() {
        return station;
    }

    /**
     * How many directions were looked along and kept.
     *
     * @return the number (1)
     */
    public int directions() {
        return rings.stream().mapToInt(SkyRing::directions).sum();
    }

    /**
     * The share of the dose that may still be open, as halving azimuths and elevations last changed it.
     *
     * @return share (1)
     */
    public double openShare() {
        return openShare;
    }

    /**
     * Whether the doses settled to the share asked for.
     *
     * @return false where the greatest number of directions was spent before
     */
    boolean isSettled() {
        return openShare <= tolerance;
    }

    /**
     * The share of the sky whose rays were still in soil where the known ground ends.
     *
     * @return share of the sky (1), 0 to 1
     */
    public double shareBeyondEdge() {
        return rings.stream().mapToDouble(r -> r.turnShare * r.beyondEdge()).sum();
    }
}
