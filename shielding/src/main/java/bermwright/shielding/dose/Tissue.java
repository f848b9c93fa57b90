// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

/**
 * Tissues of the effective dose, by the water that stands for the body around them: red bone marrow as the
 * blood-forming organs, the skin, and all others, from stomach and lung to gonads and brain, in one.
 *
 * <p>A person is a sphere of water with the tissue in its middle. The weights add up to one: 0.12 each of red bone
 * marrow, colon, lung, stomach, breast and remainder, 0.08 of gonads, 0.04 each of bladder, oesophagus, liver and
 * thyroid, 0.01 each of bone surface, brain, salivary glands and skin.
 *
 * @see "weights: ICRP Publication 103 (2007), table 3; depths: practice of space dosimetry before body models, 5 cm for
 *     blood-forming organs and 10 cm for others; both from memory"
 */
enum Tissue {
    /** Skin. */
    SKIN(0.01, OrganDose.Organ.SKIN.depthGCm2()),
    /** Red bone marrow. */
    MARROW(0.12, OrganDose.Organ.BLOOD_FORMING.depthGCm2()),
    /** All others. */
    OTHER(0.87, 10);

    private final double weight;
    private final double depth;

    Tissue(double weight, double depth) {
        this.weight = weight;
        this.depth = depth;
    }

    /** Tissue weight (1); all of them add up to 1. */
    double weight() {
        return weight;
    }

    /** Depth of water around the tissue (g/cm2), rising from tissue to tissue. */
    double depthGCm2() {
        return depth;
    }
}
