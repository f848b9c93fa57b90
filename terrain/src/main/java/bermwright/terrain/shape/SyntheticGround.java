// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;

/**
 * Invented ground that looks like the Moon's: a sloping plane, rolling ground, what was set by hand, and craters
 * strewn by a seed.
 *
 * <p>Crater numbers follow the steady state of old surfaces, in which as many small craters are worn away as are
 * made: {@code N(>= D) = 0.079 D^-2} in a square metre, D in metres (from memory), times a share. How worn each is,
 * is drawn evenly between two bounds. This is to try programs on; it stands for no place.
 *
 * @see "Trask (1966), Size and spatial distribution of craters estimated from Ranger photographs, JPL Technical Report
 *     32-800"
 */
public final class SyntheticGround {
    private static final double STEADY_STATE = 0.079;
    private static final int MOST_CRATERS = 200_000;

    private SyntheticGround() {
    }

    /**
     * Craters strewn over an area.
     *
     * @param smallest   smallest rim diameter (m), positive
     * @param largest    largest rim diameter (m), above {@code smallest}, at most 15 km
     * @param share      share of the steady state (1), zero or more
     * @param leastLeft  share of the fresh depth left in the most worn (1), above 0
     * @param mostLeft   share of the fresh depth left in the least worn (1), from {@code leastLeft} to 1
     */
    public record Strewing(double smallest, double largest, double share, double leastLeft, double mostLeft) {
        /** Refuses sizes and shares that cannot be. */
        public Strewing {
            Require.positive("smallest diameter", smallest, "m");
            Require.that(largest > smallest, "the largest diameter, %s m, is not above the smallest, %s m.", largest,
                    smallest);
            Require.notNegative("share of the steady state", share, "1");
            Require.positive("least share left", leastLeft, "1");
            Require.within("most share left", mostLeft, leastLeft, 1, "1");
        }
    }

    /**
     * A round place in which no strewn crater's rim may reach.
     *
     * @param centre the middle
     * @param radius the radius (m), positive
     */
    public record Clearing(Point centre, double radius) {
        /** Refuses a place without radius. */
        public Clearing {
            Require.positive("radius of a clearing", radius, "m");
        }
    }

    /**
     * What the ground is made of.
     *
     * @param southwest  south-west corner of the area in which craters are strewn
     * @param northeast  north-east corner of that area
     * @param plane      the plane under all
     * @param roughness  the rolling ground on it
     * @param craters    the craters strewn on it
     * @param clearings  places kept free of them
     * @param setByHand  landforms that stand where they are put
     */
    public record Recipe(Point southwest, Point northeast, InclinedPlane plane, RollingGround.Roughness roughness,
            Strewing craters, List<Clearing> clearings, List<Landform> setByHand) {
        /** Refuses an area without extent; copies the lists. */
        public Recipe {
            Require.that(southwest.east() < northeast.east() && southwest.north() < northeast.north(),
                    "the corners of the area are %s and %s; the first must lie south-west of the second.", southwest,
                    northeast);
            Objects.requireNonNull(plane, "plane");
            clearings = List.copyOf(clearings);
            setByHand = List.copyOf(setByHand);
        }
    }

    /**
     * The ground by a recipe and a seed.
     *
     * @param recipe what it is made of
     * @param seed   the seed; the same seed gives the same ground everywhere
     * @return the ground
     */
    public static Landforms of(Recipe recipe, long seed) {
        List<Landform> parts = new ArrayList<>();
        parts.add(recipe.plane());
        parts.add(RollingGround.of(seed, recipe.roughness()));
        parts.addAll(recipe.setByHand());
        parts.addAll(strewn(recipe, seed));
        return new Landforms(parts);
    }

    private static List<Crater> strewn(Recipe recipe, long seed) {
        Strewing craters = recipe.craters();
        double width = recipe.northeast().east() - recipe.southwest().east();
        double height = recipe.northeast().north() - recipe.southwest().north();
        double small = 1 / (craters.smallest() * craters.smallest());
        double large = 1 / (craters.largest() * craters.largest());
        double wanted = STEADY_STATE * craters.share() * (small - large) * width * height;
        Require.that(wanted < MOST_CRATERS, "%s craters are too many; raise the smallest diameter.", wanted);
        Random random = new Random(31 * seed + 17);
        List<Crater> list = new ArrayList<>();
        for (int i = 0; i < Math.round(wanted); i++) {
            double diameter = 1 / Math.sqrt(large + random.nextDouble() * (small - large));
            Point centre = new Point(recipe.southwest().east() + width * random.nextDouble(),
                    recipe.southwest().north() + height * random.nextDouble());
            double left = craters.leastLeft() + (craters.mostLeft() - craters.leastLeft()) * random.nextDouble();
            boolean free = recipe.clearings().stream()
                    .allMatch(c -> c.centre().distance(centre) >= c.radius() + diameter / 2);
            if (free) {
                list.add(Crater.worn(centre, diameter, left));
            }
        }
        return list;
    }
}
