// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;
import bermwright.lowering.rig.Tube;
import bermwright.numeric.Bracket;

/**
 * The nearly lying hull as a beam on its base and its lugs: what bends it most, held still.
 *
 * <p>The weight is spread along the length as a straight line whose centre is the centre of mass; with the centre at
 * the middle it is uniform. Loads square to the axis alone: the slant of the lines takes some off the bending between
 * base and lugs and adds thrust along the hull. Frames, tanks and openings are not looked at.
 *
 * @param lugLoad what the lines bear square to the axis, W c / a (N)
 * @param between greatest moment between base and lugs (N m), zero or more, the lay-down side pulled
 * @param atLugs  moment at the lugs from what stands out beyond (N m), zero or more, the crown side pulled
 * @param bestLug lug from the base at which both are equal and bending is least (m)
 */
public record HullBeam(double lugLoad, double between, double atLugs, double bestLug) {
    private static final int HALVINGS = 60;

    /**
     * What is bent.
     *
     * @param weight weight (N), positive
     * @param length length (m), positive
     * @param centre centre of mass from the base (m), a third to two thirds of the length
     */
    public record Load(double weight, double length, double centre) {
        /** Refuses centres that no straight spread of weight has. */
        public Load {
            Require.positive("weight", weight, "N");
            Require.positive("length", length, "m");
            Require.within("centre of mass from the base", centre, length / 3, 2 * length / 3, "m");
        }

        /**
         * Whether a straight spread of weight has its centre there.
         *
         * @param length length (m), positive
         * @param centre centre of mass from the base (m)
         * @return true for a third to two thirds of the length
         */
        public static boolean fits(double length, double centre) {
            return centre >= length / 3 && centre <= 2 * length / 3;
        }

        private double atBase() {
            return 2 * weight / length * (2 - 3 * centre / length);
        }

        private double rise() {
            return 6 * weight / (length * length) * (2 * centre / length - 1);
        }

        /** Moment of the base's push and the weight up to a place, the lugs' pull left out (N m). */
        private double moment(double push, double at) {
            return push * at - atBase() * at * at / 2 - rise() * at * at * at / 6;
        }

        /** Where base and lugs share the shear: none left, by the root of a quadratic (m). */
        private double noShear(double push) {
            double rise = rise();
            double base = atBase();
            double root = Math.sqrt(Math.max(0, base * base + 2 * rise * push));
            return 2 * push / (base + root);
        }
    }

    /**
     * The beam with its lugs at a place.
     *
     * @param load what is bent
     * @param lug  lugs from the base (m), positive, up to the length
     * @return the bending
     */
    public static HullBeam of(Load load, double lug) {
        Require.within("lug from the base", lug, Math.nextUp(0.0), load.length, "m");
        double pull = load.weight * load.centre / lug;
        return new HullBeam(pull, between(load, lug), Math.max(0, -load.moment(load.weight - pull, lug)),
                bestLug(load));
    }

    private static double between(Load load, double lug) {
        double push = load.weight - load.weight * load.centre / lug;
        if (!(push > 0)) {
            return 0;
        }
        return Math.max(0, load.moment(push, Math.min(lug, load.noShear(push))));
    }

    /** Bending between rises and bending at the lugs falls as the lugs go up: the crossing is the least. */
    private static double bestLug(Load load) {
        return Bracket.halved(load.centre, load.length, HALVINGS, lug -> {
            double push = load.weight - load.weight * load.centre / lug;
            return between(load, lug) < -load.moment(push, lug);
        }).middle();
    }

    /**
     * The greater of both moments.
     *
     * @return the moment (N m)
     */
    public double greatest() {
        return Math.max(between, atLugs);
    }

    /**
     * Stress in a bare round shell from the greater moment.
     *
     * @param shell the shell as a tube
     * @return the stress (Pa)
     */
    public double stress(Tube shell) {
        return greatest() * shell.diameter() / 2 / shell.secondMoment();
    }
}
