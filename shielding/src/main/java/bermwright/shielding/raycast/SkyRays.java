// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;
import java.util.Optional;

/** What a fan of rays of one azimuth crosses on its way to the sky; to be filled again and again by one thread. */
public final class SkyRays {
    /** From this slant on ray and face run side by side, and rounding is all that is left. */
    private static final double SIDE_BY_SIDE = 1e9;

    double[] placed = new double[0];
    double[] inPlace = new double[0];
    double[] skin = new double[0];
    /** Rise of the face left through, along the ray; a place on it until faces are asked for. */
    double[] rise = new double[0];
    /** Square of its gradient. */
    double[] steep = new double[0];
    double[] beyond = new double[0];
    double[] sines = new double[0];
    int count;
    int beyondEdge;
    private boolean anyBeyond;
    /** The slant to the wall that holds the first soil, by ray; zero where none does. */
    private double[] held = new double[0];
    private boolean anyHeld;
    private double[] slants = new double[0];
    private Optional<SoilFaces> faces = Optional.empty();
    private final ProfileWalk.Way way = new ProfileWalk.Way();
    private boolean isLookedAt;

    /** Rays to be filled. */
    public SkyRays() {
    }

    /** Makes room for rays along some elevations. */
    void room(double[] elevations) {
        sines = elevations;
        count = elevations.length;
        if (placed.length < count) {
            placed = new double[count];
            inPlace = new double[count];
            skin = new double[count];
            rise = new double[count];
            steep = new double[count];
            beyond = new double[count];
            slants = new double[count];
            held = new double[count];
        }
    }

    /** Takes places where rays leave soil; their faces are looked at when first asked for. */
    void leave(double[] places, SoilFaces toLookAt, double east, double north) {
        System.arraycopy(places, 0, rise, 0, count);
        faces = Optional.of(toLookAt);
        way.east = east;
        way.north = north;
        isLookedAt = false;
    }

    /** Begins with no soil beyond the first of any ray. */
    void noneBeyond() {
        if (anyBeyond) {
            Arrays.fill(beyond, 0);
            anyBeyond = false;
        }
    }

    /** Takes what lies beyond the first soil of a ray (kg/m2). */
    void setBeyond(int ray, double arealDensity) {
        beyond[ray] = arealDensity;
        anyBeyond = true;
    }

    /** Begins with no wall before the first soil of any ray. */
    void noneHeld() {
        if (anyHeld) {
            Arrays.fill(held, 0);
            anyHeld = false;
        }
    }

    /** Takes how slanted a ray goes through the wall that holds its first soil: the face of the soil is the wall's. */
    void setHeld(int ray, double slant) {
        held[ray] = slant;
        anyHeld |= slant > 0;
    }

    /** Takes over rays whose faces have been looked at. */
    void looked() {
        faces = Optional.empty();
        isLookedAt = false;
    }

    private void lookAtFaces() {
        faces.ifPresent(f -> f.along(way, rise, steep, count));
        for (int k = 0; k < count; k++) {
            double sin = sines[k];
            double slant = Math.sqrt(1 + steep[k]) / Math.abs(sin - rise[k] * Math.sqrt(1 - sin * sin));
            // Not a number where it leaves no face.
            slants[k] = held[k] > 0 ? Math.min(SIDE_BY_SIDE, held[k])
                    : placed[k] + inPlace[k] > 0 && slant >= 1 ? Math.min(SIDE_BY_SIDE, slant) : 1;
        }
        isLookedAt = true;
    }

    /** Takes over the only ray of others. */
    void takeFirst(int ray, SkyRays alone) {
        placed[ray] = alone.placed[0];
        inPlace[ray] = alone.inPlace[0];
        skin[ray] = alone.skin[0];
        alone.slant(0);
        rise[ray] = alone.rise[0];
        steep[ray] = alone.steep[0];
        setBeyond(ray, alone.beyond[0]);
        setHeld(ray, alone.held[0]);
        beyondEdge += alone.beyondEdge;
    }

    /**
     * How many rays there are.
     *
     * @return the number (1)
     */
    int count() {
        return count;
    }

    /**
     * Placed soil on the way.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double placed(int ray) {
        return placed[ray];
    }

    /**
     * Undisturbed soil on the way.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double inPlace(int ray) {
        return inPlace[ray];
    }

    /**
     * Skins on the way, at a slant.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double skin(int ray) {
        return skin[ray];
    }

    /**
     * How much longer the way through a thin layer of the surface is than the layer is thick, where the ray comes
     * out of the first soil on its way, or out of the wall that holds that soil: 1 over the cosine between the ray and
     * the normal of the face there. Under an
     * even face, level or sloping, soil along any ray over its slant is how deep the station lies under that face,
     * however low the ray and whatever its azimuth.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return slant (1), 1 or more; 1 where the ray crosses no soil
     */
    public double slant(int ray) {
        if (!isLookedAt) {
            lookAtFaces();
        }
        return slants[ray];
    }

    /**
     * Soil beyond the first that the ray leaves, such as a ridge it clips further out. It shields what flies along the
     * ray, and is in {@link #placed(int)} and {@link #inPlace(int)}, but adds nothing to how thick the wall is seen.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2), zero where the ray leaves soil once or never
     */
    double beyond(int ray) {
        return beyond[ray];
    }

    /**
     * Rays that were still in soil at the edge of the known ground; beyond it level ground is assumed.
     *
     * @return the number of such rays (1), always the lowest ones of a fan
     */
    public int beyondEdge() {
        return beyondEdge;
    }

    /**
     * A copy of what some of the rays crossed.
     *
     * @param first number of the first ray (1)
     * @param many  how many rays (1)
     * @return rows placed, in place, skin, slant and beyond, each of that many
     */
    public double[][] copy(int first, int many) {
        slant(first);
        return new double[][] {Arrays.copyOfRange(placed, first, first + many),
            Arrays.copyOfRange(inPlace, first, first + many), Arrays.copyOfRange(skin, first, first + many),
            Arrays.copyOfRange(slants, first, first + many), Arrays.copyOfRange(beyond, first, first + many)};
    }
}
