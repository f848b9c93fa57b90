// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

/**
 * Dose in an organ, in the quantities that limits use.
 *
 * @param absorbed       absorbed dose (Gy), a day's or an event's
 * @param equivalent     dose equivalent with the quality factor of 1990 (Sv)
 * @param grayEquivalent absorbed dose weighted for early effects (Gy-Eq)
 */
public record OrganDose(double absorbed, double equivalent, double grayEquivalent) {
    /** Organs, by the depth of water that stands for the body around them. */
    public enum Organ {
        /** Skin, 0.01 g/cm2. */
        SKIN("skin", 0.01),
        /** Lens of the eye, 0.3 g/cm2. */
        EYE("eye", 0.3),
        /** Blood-forming organs, 5 g/cm2. */
        BLOOD_FORMING("blood-forming organs", 5);

        private final String word;
        private final double depth;

        Organ(String word, double depth) {
            this.word = word;
            this.depth = depth;
        }

        /**
         * The quantity that short-term limits of this organ are given in, counted in Gy-Eq.
         *
         * @return such as {@code gray equivalent, skin}
         */
        public String quantity() {
            return "gray equivalent, " + word;
        }

        /**
         * Depth of water around the organ.
         *
         * @return areal density (g/cm2), positive
         */
        public double depthGCm2() {
            return depth;
        }
    }

    /**
     * Both together.
     *
     * @param other the other dose
     * @return the sum, quantity by quantity
     */
    OrganDose plus(OrganDose other) {
        return new OrganDose(absorbed + other.absorbed, equivalent + other.equivalent,
                grayEquivalent + other.grayEquivalent);
    }

    /**
     * The same dose times a factor.
     *
     * @param factor factor (1)
     * @return the dose
     */
    public OrganDose times(double factor) {
        return new OrganDose(absorbed * factor, equivalent * factor, grayEquivalent * factor);
    }
}
