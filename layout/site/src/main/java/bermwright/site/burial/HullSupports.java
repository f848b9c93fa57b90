// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.lowering.strength.SupportedBeam;
import bermwright.regolith.SoilSensitivity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What carries a buried hull and how the hull bends between its supports, under its weight and the soil over it.
 *
 * @param kind     how it is carried
 * @param supports what carries it, from the base on; none where it could not be reckoned
 * @param beam     the hull as a beam on them; empty where it lies along its length or could not be reckoned
 * @param shell    stresses in the bare shell; empty where no shell is stated or the hull lies along its length
 * @param findings what is wrong
 * @param note     the model behind the figures
 */
public record HullSupports(Kind kind, List<Support> supports, Optional<SupportedBeam> beam,
        Optional<Stresses> shell, List<Finding> findings, ModelNote note) {
    /** Copies the lists. */
    public HullSupports {
        supports = List.copyOf(supports);
        findings = List.copyOf(findings);
    }

    HullSupports with(List<Finding> found) {
        return new HullSupports(kind, supports, beam, shell, found, note);
    }

    /**
     * Greatest moment over a support, the crown side pulled.
     *
     * @return the moment (N m), zero or more; nothing without a beam
     */
    public double hogging() {
        return beam.map(SupportedBeam::hogging).orElse(0.0);
    }

    /**
     * Greatest moment between supports, the lay-down side pulled.
     *
     * @return the moment (N m), zero or more; nothing without a beam
     */
    public double sagging() {
        return beam.map(SupportedBeam::sagging).orElse(0.0);
    }

    /** How a hull is carried. */
    public enum Kind {
        /** It lies on the ground along its length, which bends it no further. */
        ALONG,
        /** It lies on saddles. */
        SADDLES,
        /** Its base lies on the feet it turned over, its nose on the ground. */
        FEET_AND_NOSE;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * One support.
     *
     * @param name     what it is
     * @param along    its middle from the base plane (m)
     * @param reaction what it bears (N); nothing where the hull lifts off it, below zero where it would tip
     * @param pressure mean pressure on the soil under it (Pa), zero or more; under a hull along its length at the end
     *                 that presses most
     * @param bearing  pressure at which that soil gives way (Pa), positive
     * @param soil     how the factor moves with the soil's strength, where something presses
     */
    public record Support(String name, double along, double reaction, double pressure, double bearing,
            Optional<SoilSensitivity> soil) {
        /**
         * How often the soil bears it.
         *
         * @return bearing over pressure (1); endless without pressure
         */
        public double bearingFactor() {
            return pressure > 0 ? bearing / pressure : Double.POSITIVE_INFINITY;
        }
    }

    /**
     * Stresses in the bare shell, without rings and frames.
     *
     * @param overSupport bending over a support, with the part of the round that stays in shape (Pa), zero or more
     * @param between     bending between supports, with the whole round (Pa), zero or more
     * @param bearable    stress at which the wall buckles under thrust or yields (Pa), positive
     * @param pull        lengthwise stress of the inner pressure p R / (2 t), which bending takes off on one side and
     *                    adds to on the other (Pa), zero or more
     * @param horn        stress at the upper edge of the hardest saddle (Pa); empty without saddles
     * @param yield       yield stress (Pa), positive
     */
    public record Stresses(double overSupport, double between, double bearable, double pull, Optional<Double> horn,
            double yield) {
        /**
         * How often the shell bears the bending with the pressure off.
         *
         * @return bearable over the greater stress (1); endless without bending
         */
        public double bendingFactor() {
            return factor(bearable, greatest());
        }

        /**
         * How often it bears the bending with the pressure on: the pressed side against buckling, which the pressure
         * may be trusted to hinder no further than it pulls, the pulled side against yielding.
         *
         * @return the lesser of both (1); endless without stress
         */
        public double pressurisedFactor() {
            return Math.min(factor(bearable, greatest() - pull), factor(yield, greatest() + pull));
        }

        private double greatest() {
            return Math.max(overSupport, between);
        }

        private static double factor(double bearable, double stress) {
            return stress > 0 ? bearable / stress : Double.POSITIVE_INFINITY;
        }
    }
}
