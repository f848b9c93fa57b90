// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import java.util.Optional;

/** The nearest square of gentle ground that gives the soil for the covers, clear of hulls, covers and gear. */
final class BorrowSquare {
    /** Distance kept from hulls, anchors and pole feet (m); the plan's usual. */
    static final double KEEP_CLEAR = 5;
    /** Sides of a pit that stand back, and what the cover needs beyond level ground (1): chosen here. */
    private static final double AMPLE = 1.25;

    private final SurveySetup setup;
    private final SurveyGround ground;
    private final int reach;
    private final int[] gentle;

    /** The ground must have been filled with the one node of the place. */
    BorrowSquare(SurveySetup setup, SurveyGround ground) {
        this.setup = setup;
        this.ground = ground;
        this.reach = ground.margin;
        int side = 2 * reach + 1;
        gentle = new int[(side + 1) * (side + 1)];
        double grade = setup.limits().borrowGrade();
        for (int r = 0; r < side; r++) {
            int row = 0;
            for (int c = 0; c < side; c++) {
                row += ground.grade[r * ground.stride + c] <= grade ? 1 : 0;
                gentle[(r + 1) * (side + 1) + c + 1] = gentle[r * (side + 1) + c + 1] + row;
            }
        }
    }

    /**
     * The nearest square.
     *
     * @param need    soil in the bank (m3)
     * @param heading the group's heading
     * @return rows north and columns east of the place to its south-west node, and its side in cells; empty where
     *     there is none within reach
     */
    Optional<int[]> nearest(double need, Azimuth heading) {
        SurveyLimits limits = setup.limits();
        double spacing = setup.ground().trueSpacing();
        int side = (int) Math.ceil(Math.sqrt(AMPLE * need / limits.borrowDepth() / limits.borrowYield()) / spacing);
        double clear = setup.group().bedRadius() + NearSoil.toe(setup.plan()) + KEEP_CLEAR;
        int[] best = null;
        double least = limits.soilReach();
        for (int r = -reach; r + side <= reach; r++) {
            for (int c = -reach; c + side <= reach; c++) {
                double distance = Math.hypot(r + side / 2.0, c + side / 2.0) * spacing;
                double edge = Math.hypot(Math.max(0, Math.max(r, -r - side)), Math.max(0, Math.max(c, -c - side)))
                        * spacing;
                if (distance < least && edge >= clear && isGentle(r, c, side) && isClear(r, c, side, heading)) {
                    least = distance;
                    best = new int[] {r, c, side};
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isGentle(int r, int c, int side) {
        int stride = 2 * reach + 2;
        int south = r + reach;
        int west = c + reach;
        int count = gentle[(south + side + 1) * stride + west + side + 1] - gentle[south * stride + west + side + 1]
                - gentle[(south + side + 1) * stride + west] + gentle[south * stride + west];
        return count == (side + 1) * (side + 1);
    }

    /** Whether no winch, pole or anchor stands in or beside a square. */
    private boolean isClear(int r, int c, int side, Azimuth heading) {
        double spacing = setup.ground().trueSpacing();
        double beside = 2 * KEEP_CLEAR;
        for (LaidHull hull : setup.group().hulls()) {
            for (double[] spot : hull.spots()) {
                double x = spot[0] * heading.east() - spot[1] * heading.north();
                double y = spot[0] * heading.north() + spot[1] * heading.east();
                if (x > c * spacing - beside && x < (c + side) * spacing + beside && y > r * spacing - beside
                        && y < (r + side) * spacing + beside) {
                    return false;
                }
            }
        }
        return true;
    }
}
