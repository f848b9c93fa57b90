// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;

/** Rules by which volumes of single cells are reckoned by hand; they stand beside the exact volumes as a check. */
public final class HandRules {
    private HandRules() {
    }

    /**
     * Cut of a cell with corners in cut and in fill: {@code (A/4) (sum c)^2 / (sum c + sum f)}; its fill by the same
     * rule with both exchanged. The difference of both is the exact net volume; each for itself is near.
     *
     * @param area area of the cell (m2), positive
     * @param cut  sum of the cut depths at corners (m), zero or more
     * @param fill sum of the fill heights at corners (m), zero or more
     * @return the volume of cut (m3)
     */
    public static double mixedCellCut(double area, double cut, double fill) {
        Require.positive("area of the cell", area, "m2");
        Require.notNegative("sum of cut depths", cut, "m");
        Require.notNegative("sum of fill heights", fill, "m");
        return cut + fill == 0 ? 0 : area / 4 * cut * cut / (cut + fill);
    }

    /**
     * Volume of a body between two level faces of like shape: {@code L (A1 + sqrt(A1 A2) + A2) / 3}.
     *
     * @param length distance between the faces (m), zero or more
     * @param one    area of one face (m2), zero or more
     * @param other  area of the other face (m2), zero or more
     * @return the volume (m3)
     */
    public static double frustum(double length, double one, double other) {
        Require.notNegative("length", length, "m");
        Require.notNegative("area", one, "m2");
        Require.notNegative("area", other, "m2");
        return length * (one + Math.sqrt(one * other) + other) / 3;
    }
}
