// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import java.util.List;

/**
 * Band of the cosmic-ray response: how far published figures near an areal density lie from ours, and never less than
 * the planning spread.
 *
 * <p>The distance is the root mean square of the logarithms, each figure weighted by a bell in the logarithm of the
 * depth plus 30 g/cm2, half a unit wide. Deeper than the deepest figure the logarithm grows with the depth. The fit of
 * the band is tested by leaving out one figure at a time.
 */
final class PublishedSpread {
    private static final double OFFSET = 300;
    private static final double WIDTH = 0.5;
    /** Where tables end and their last value is taken (kg/m2). */
    private static final double DEEPEST_TABLE = 15_000;
    private static final PublishedSpread ALL =
            new PublishedSpread(PublishedDose.cosmic().stream().filter(d -> d.work().counts()).toList());

    /** Logarithm of each figure's depth and offset. */
    private final double[] places;
    /** Square of each figure's distance. */
    private final double[] squares;
    private final double deepest;

    PublishedSpread(List<PublishedDose> figures) {
        places = figures.stream().mapToDouble(f -> Math.log(f.arealDensity() + OFFSET)).toArray();
        squares = figures.stream().mapToDouble(f -> f.distance() * f.distance()).toArray();
        this.deepest = figures.stream().mapToDouble(PublishedDose::arealDensity).max().orElse(0);
    }

    /** The band at an areal density (kg/m2). */
    static Band cosmic(double arealDensity) {
        return ALL.at(arealDensity);
    }

    Band at(double depth) {
        double arealDensity = Math.min(depth, DEEPEST_TABLE);
        double weights = 0;
        double sum = 0;
        double place = Math.log(arealDensity + OFFSET);
        for (int i = 0; i < places.length; i++) {
            double apart = (place - places[i]) / WIDTH;
            double weight = Math.exp(-apart * apart / 2);
            weights += weight;
            sum += weight * squares[i];
        }
        double floor = Math.log(PlanningSpread.cosmic(arealDensity).high());
        double spread = Math.max(floor, weights > 0 ? Math.sqrt(sum / weights) : floor);
        spread *= deepest > 0 ? Math.max(1, arealDensity / deepest) : 1;
        return new Band(Math.exp(-spread), Math.exp(spread));
    }
}
