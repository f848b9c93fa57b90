// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.transport.Field;

/**
 * Dose of fast particles by areal density along the ray and by slant: what goes straight hangs on the way along the
 * ray, what reactions made on the depth under the outer face and on the direction.
 */
final class SlantedDoses {
    private static final double LEAST_DOSE = 1e-30;
    private static final int SLANTS = 33;
    private static final int SCALE = SLANTS;
    private static final int STRAIGHT = SLANTS + 1;

    private final double[][] numbers;
    /** What reactions made by slant, as a share, then the logarithm of that whole and of what goes straight. */
    private final CurveFan curves;

    /**
     * Doses by depth.
     *
     * @param depths  areal densities (kg/m2), rising from 0
     * @param numbers for each of them the dose of what goes straight, of what comes up under a level cover, and for
     *                each direction down the dose of what reactions made and its share in what comes up (1)
     */
    SlantedDoses(double[] depths, double[][] numbers) {
        this.numbers = numbers.clone();
        int n = depths.length;
        double[][] values = new double[SLANTS + 2][n];
        for (int i = 0; i < n; i++) {
            values[STRAIGHT][i] = Math.log(Math.max(LEAST_DOSE, numbers[i][0]));
            double level = numbers[i][0] + numbers[i][1];
            for (int m = 0; m < Field.directions(); m++) {
                level += Field.share(m) * numbers[i][2 + 2 * m];
            }
            level = Math.max(LEAST_DOSE, level);
            values[SCALE][i] = Math.log(level);
            for (int s = 0; s < SLANTS; s++) {
                double[] line = Field.line(s / (SLANTS - 1.0));
                double sum = 0;
                for (int m = 0; m < line.length; m++) {
                    sum += line[m] * (numbers[i][2 + 2 * m] + numbers[i][1] * numbers[i][3 + 2 * m]);
                }
                values[s][i] = Math.max(0, sum) / level;
            }
        }
        curves = new CurveFan(depths, values);
    }

    /** The numbers it was made of, to be kept. */
    double[][] numbers() {
        return numbers.clone();
    }

    /** Dose of what goes straight along a ray, as if all directions were like it. */
    double straight(double arealDensity) {
        return straight(curves.at(arealDensity));
    }

    /** A dose of what comes in square through as much soil, times that from a direction over that which comes so. */
    double slanted(double square, double arealDensity, double slant) {
        CurveFan.Spot along = curves.at(arealDensity);
        double straight = straight(along);
        return square * (straight + made(curves.at(arealDensity / slant), slant)) / (straight + made(along, 1));
    }

    private double straight(CurveFan.Spot along) {
        return Math.exp(curves.value(STRAIGHT, along));
    }

    private double made(CurveFan.Spot depth, double slant) {
        double place = (SLANTS - 1) / slant;
        int s = Math.min(SLANTS - 2, (int) place);
        double one = curves.value(s, depth);
        double share = one + (place - s) * (curves.value(s + 1, depth) - one);
        return share * Math.exp(curves.value(SCALE, depth));
    }
}
