// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * What a skin makes of hadrons, next to soil that counts as much: their ratio by kind and energy, on the straight way.
 *
 * @param ratio         by kind (neutrons, made protons, pions, muons) and energy (1)
 * @param electromagnetic that of electrons and gammas (1)
 */
record SkinEffect(double[][] ratio, double electromagnetic) {
    /** No skin. */
    static final SkinEffect NONE = new SkinEffect(new double[0][], 1);
    private static final int[] SPECIES = {Medium.NEUTRON, Medium.MADE_PROTON, Medium.PION, Medium.MUON};
    /** Where next to nothing flies, ratios say little. */
    private static final double MOST = 3;

    /** The effect, from a beam behind the skin and the same behind soil. */
    static SkinEffect of(Beam skin, Beam soil) {
        double[][] ratio = new double[SPECIES.length][];
        for (int kind = 0; kind < ratio.length; kind++) {
            double[] one = skin.of(SPECIES[kind]);
            double[] other = soil.of(SPECIES[kind]);
            ratio[kind] = new double[one.length];
            for (int i = 0; i < one.length; i++) {
                ratio[kind][i] = other[i] > 0 ? Math.min(MOST, one[i] / other[i]) : 1;
            }
        }
        double all = soil.electromagnetic();
        return new SkinEffect(ratio, all > 0 ? Math.min(MOST, skin.electromagnetic() / all) : 1);
    }

    /** What the skin makes of a beam that was worked out with soil in its place. */
    Beam on(Beam soil) {
        if (ratio.length == 0) {
            return soil;
        }
        double[][] kinds = new double[SPECIES.length][];
        for (int kind = 0; kind < kinds.length; kind++) {
            kinds[kind] = soil.of(SPECIES[kind]).clone();
            for (int i = 0; i < kinds[kind].length; i++) {
                kinds[kind][i] *= ratio[kind][i];
            }
        }
        return Beam.made(SPECIES, kinds, soil.electromagnetic() * electromagnetic);
    }
}
