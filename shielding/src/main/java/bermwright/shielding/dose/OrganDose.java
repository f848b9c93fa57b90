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
    /** Organs that short-term limits are given for. */
    public enum Organ {
        /** Skin. */
        SKIN("skin", Tissue.SKIN),
        /** Lens of the eye. */
        EYE("eye", Tissue.EYE),
        /** Blood-forming organs: red bone marrow. */
        BLOOD_FORMING("blood-forming organs", Tissue.MARROW);

        private final String word;
        private final Tissue tissue;

        Organ(String word, Tissue tissue) {
            this.word = word;
            this.tissue = tissue;
        }

        /**
         * The quantity that short-term limits of this organ are given in, counted in Gy-Eq.
         *
         * @return such as {@code gray equivalent, skin}
         */
        public String quantity() {
            return "gray equivalent, " + word;
        }

        /** The tissue, with the depths at which it lies. */
        Tissue tissue() {
            return tissue;
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
