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

    private final double[][] numbers;
    private final MonotoneCurve logStraight;
    private final MonotoneCurve logScale;
    private final MonotoneCurve[] made = new MonotoneCurve[SLANTS];

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
        double[] straight = new double[n];
        double[] scale = new double[n];
        double[][] shares = new double[SLANTS][n];
        for (int i = 0; i < n; i++) {
            straight[i] = Math.log(Math.max(LEAST_DOSE, numbers[i][0]));
            double level = numbers[i][0] + numbers[i][1];
            for (int m = 0; m < Field.directions(); m++) {
                level += Field.share(m) * numbers[i][2 + 2 * m];
            }
            level = Math.max(LEAST_DOSE, level);
            scale[i] = Math.log(level);
            for (int s = 0; s < SLANTS; s++) {
                double[] line = Field.line(s / (SLANTS - 1.0));
                double sum = 0;
                for (int m = 0; m < line.length; m++) {
                    sum += line[m] * (numbers[i][2 + 2 * m] + numbers[i][1] * numbers[i][3 + 2 * m]);
                }
                shares[s][i] = Math.max(0, sum) / level;
            }
        }
        logStraight = new MonotoneCurve(depths, straight);
        logScale = new MonotoneCurve(depths, scale);
        for (int s = 0; s < SLANTS; s++) {
            made[s] = new MonotoneCurve(depths, shares[s]);
        }
    }

    /** The numbers it was made of, to be kept. */
    double[][] numbers() {
        return numbers.clone();
    }

    /** Dose from a direction, as if all were like it; the floor's return of it in it. */
    double at(double arealDensity, double slant) {
        double depth = arealDensity / slant;
        double place = (SLANTS - 1) / slant;
        int s = Math.min(SLANTS - 2, (int) place);
        double share = made[s].at(depth) + (place - s) * (made[s + 1].at(depth) - made[s].at(depth));
        return Math.exp(logStraight.at(arealDensity)) + share * Math.exp(logScale.at(depth));
    }
}
