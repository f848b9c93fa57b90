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

    private final List<PublishedDose> figures;

    PublishedSpread(List<PublishedDose> figures) {
        this.figures = List.copyOf(figures);
    }

    /** The band at an areal density (kg/m2). */
    static Band cosmic(double arealDensity) {
        return ALL.at(arealDensity);
    }

    Band at(double depth) {
        double arealDensity = Math.min(depth, DEEPEST_TABLE);
        double weights = 0;
        double squares = 0;
        for (PublishedDose figure : figures) {
            double apart = Math.log((arealDensity + OFFSET) / (figure.arealDensity() + OFFSET)) / WIDTH;
            double weight = Math.exp(-apart * apart / 2);
            weights += weight;
            squares += weight * figure.distance() * figure.distance();
        }
        double deepest = figures.stream().mapToDouble(PublishedDose::arealDensity).max().orElse(0);
        double floor = Math.log(PlanningSpread.cosmic(arealDensity).high());
        double spread = Math.max(floor, weights > 0 ? Math.sqrt(squares / weights) : floor);
        spread *= deepest > 0 ? Math.max(1, arealDensity / deepest) : 1;
        return new Band(Math.exp(-spread), Math.exp(spread));
    }
}
