// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.ModelNote;
import java.util.Optional;

/**
 * Dose at the middle of a sphere of given areal density under an isotropic field from all sides, the response
 * H4pi(x), for one skin, soil, sun and spectrum.
 *
 * <p>Slow neutrons and gammas of the ground are never inside {@link #isotropicDose}; they are added once by whoever
 * folds. Fast nucleons that the ground throws back may be, each with the ray that makes it.
 */
public interface Response {
    /** How the ids of the model notes of responses begin that a reviewer handed over. */
    String HANDED_OVER = "handed-over-response";

    /** What the dose is counted over. */
    enum Per {
        /** Cosmic rays: dose per day. */
        DAY,
        /** Solar particles: dose per event. */
        EVENT
    }

    /**
     * The response itself. Slow neutrons are in it as {@link #diffuseDose} says, so that a dome on the ground gives
     * half of the rest and the whole of them.
     *
     * @param arealDensity soil along the ray plus the skin's slant areal density as soil (kg/m2), zero or more
     * @return effective dose (Sv per day or per event), zero or more; beyond {@link #deepest} the last value of the
     *     table, an upper bound
     * @throws IllegalArgumentException if the areal density is negative or not a number
     */
    double isotropicDose(double arealDensity);

    /**
     * The part of {@link #isotropicDose} that slow neutrons make. They do not fly straight but fill a room: it is their
     * dose under a dome of this areal density on the ground, the whole of it, not half.
     *
     * @param arealDensity areal density of the dome, the skin counted as soil (kg/m2), zero or more
     * @return effective dose (Sv per day or per event), at most {@link #isotropicDose}; 0 where a table does not tell
     *     slow neutrons from the rest
     * @throws IllegalArgumentException if the areal density is negative or not a number
     */
    default double diffuseDose(double arealDensity) {
        return 0;
    }

    /**
     * What flies straight: the response without slow neutrons.
     *
     * @param arealDensity areal density of the dome, the skin counted as soil (kg/m2), zero or more
     * @return effective dose (Sv per day or per event), {@link #isotropicDose} less {@link #diffuseDose}
     * @throws IllegalArgumentException if the areal density is negative or not a number
     */
    default double straightDose(double arealDensity) {
        return isotropicDose(arealDensity) - diffuseDose(arealDensity);
    }

    /**
     * What is fast from one direction of the sky, with what the floor throws back of it, at its slant through the
     * cover: what reactions make there comes in from all around it, so the same areal density along a grazing ray lets
     * more through than along one that comes in square.
     *
     * @param arealDensity areal density along the ray, the skin counted as soil (kg/m2), zero or more
     * @param slant        how much longer than thick the way through the cover is (1), 1 or more
     * @return effective dose (Sv per day or per event), as if all directions were like this one; where a table knows no
     *     directions, {@link #straightDose(double)}
     * @throws IllegalArgumentException if an argument is outside its range
     */
    default double straightDose(double arealDensity, double slant) {
        return straightDose(arealDensity);
    }

    /**
     * What one ray counts for when a view is settled: {@link #straightDose(double, double)} with {@link #diffuseDose}.
     *
     * @param arealDensity areal density along the ray, the skin counted as soil (kg/m2), zero or more
     * @param slant        how much longer than thick the way through the cover is (1), 1 or more
     * @return effective dose (Sv per day or per event), as if all directions were like this one
     * @throws IllegalArgumentException if an argument is outside its range
     */
    default double rayDose(double arealDensity, double slant) {
        return straightDose(arealDensity, slant) + diffuseDose(arealDensity);
    }

    /**
     * Slow neutrons of a room of any walls.
     *
     * @return the room; none where a table does not tell slow neutrons from the rest
     */
    default Optional<DiffuseRoom> room() {
        return Optional.empty();
    }

    /**
     * The greatest areal density the response was made for.
     *
     * @return areal density (kg/m2), positive
     */
    double deepest();

    /**
     * Whether the response is held against others for what comes from a direction; the rest is extrapolated.
     *
     * @param arealDensity areal density along the ray, the skin counted as soil (kg/m2), zero or more
     * @param slant        how much longer than thick the way through the cover is (1), 1 or more
     * @return true to the depth under the outer face to which it is; where a table knows no directions, to the end of
     *     the table along the ray
     */
    default boolean isTested(double arealDensity, double slant) {
        return arealDensity <= deepest();
    }

    /**
     * What open ground under open sky sends back to a person standing on it, beside what {@link #isotropicDose} holds
     * of it.
     *
     * @return effective dose (Sv per day or per event), zero or more
     */
    double openGroundReturn();

    /**
     * Gammas of what is radioactive in the soil by nature, over open ground; soil all around gives twice as much.
     *
     * @return effective dose (Sv per day or per event), zero or more; 0 for events and where a table does not tell
     */
    default double soilGammas() {
        return 0;
    }

    /**
     * How far the response may be off at an areal density, for the sun it was made for.
     *
     * @param arealDensity areal density (kg/m2), zero or more
     * @return the factors of the 16th and 84th percentile
     */
    Band band(double arealDensity);

    /**
     * How far the dose changes with the sun, one standard deviation about the activity that the response was made for.
     *
     * @param arealDensity areal density (kg/m2), zero or more
     * @return the factors of the 16th and 84th percentile; none for events, which are what they are, and for tables
     *     that were handed over, whose own low and high count
     */
    default Band solarBand(double arealDensity) {
        return Band.NONE;
    }

    /**
     * What one unit of the hull skin's areal density counts as in soil.
     *
     * @return equivalence (1), positive
     */
    double skinEquivalence();

    /**
     * What the dose is counted over.
     *
     * @return day or event
     */
    Per per();

    /**
     * Whether a reviewer handed it over.
     *
     * @return false for responses of the built-in calculation
     */
    default boolean isHandedOver() {
        return note().id().startsWith(HANDED_OVER);
    }

    /**
     * The model, its range, its spread and its source.
     *
     * @return the note, whose status is provisional for a stand-in
     */
    ModelNote note();
}
