// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * How far soil for the cover has to be hauled: over squares of gentle ground, the nearest first, until there is enough.
 *
 * <p>Squares are those of {@link SurveySquares}. What lies under the hulls and their covers gives nothing.
 */
final class NearSoil {
    private final SurveySquares squares;
    private final double need;
    private final double grade;
    private final double volumeOfNode;
    private final int reach;
    private final int[] rowStep;
    private final int[] columnStep;
    private final double[] distance;
    private int firstRow;
    private int firstColumn;
    private int across;
    private int[] rowPart = new int[0];
    private int[] columnPart = new int[0];
    private double[] haul = new double[0];
    private final double furthest;
    private final double shortest;

    NearSoil(LaidGroup group, Plan plan, SurveyLimits limits, SurveySquares squares) {
        this.squares = squares;
        this.need = need(plan);
        this.grade = limits.borrowGrade();
        this.furthest = limits.soilReach();
        this.volumeOfNode = squares.spacing() * squares.spacing() * limits.borrowDepth() * limits.borrowYield();
        double side = squares.side();
        this.reach = (int) Math.ceil(limits.soilReach() / side);
        double within = group.bedRadius() + toe(plan);
        List<double[]> steps = new ArrayList<>();
        for (int r = -reach; r <= reach; r++) {
            for (int c = -reach; c <= reach; c++) {
                double d = Math.hypot(r, c) * side;
                if (d > within && d <= limits.soilReach()) {
                    steps.add(new double[] {d, r, c});
                }
            }
        }
        steps.sort(Comparator.<double[]>comparingDouble(s -> s[0]).thenComparingDouble(s -> s[1])
                .thenComparingDouble(s -> s[2]));
        distance = steps.stream().mapToDouble(s -> s[0]).toArray();
        rowStep = steps.stream().mapToInt(s -> (int) s[1]).toArray();
        columnStep = steps.stream().mapToInt(s -> (int) s[2]).toArray();
        int wide = 2 * reach + 1;
        int[] all = new int[wide * wide];
        Arrays.fill(all, squares.nodes() * squares.nodes());
        shortest = haul(all, reach * wide + reach, wide);
    }

    /** Mean haul where all the ground around is gentle (m); infinite where not even that is enough. */
    double shortest() {
        return shortest;
    }

    /**
     * Soil in the bank that the covers of a plan's lying hulls need, on level ground (m3): the section of the least
     * cover (design, "cover: conventions") over the length, and its like about each covered end.
     */
    static double need(Plan plan) {
        GroundPlan.Regolith soil = plan.ground().regolith();
        double placed = 0;
        for (Hull hull : plan.hulls()) {
            if (hull.cover().isPresent() && hull.arrival() != Hull.Arrival.STAYS_UPRIGHT) {
                CoverPlan cover = hull.cover().get();
                double density = cover.density().orElse(soil.placedDensity());
                placed += placed(hull, cover, soil.stableSlope()) * density / soil.bankDensity();
            }
        }
        return placed;
    }

    private static double placed(Hull hull, CoverPlan cover, double slope) {
        double r = hull.radius();
        double out = r + cover.thickness();
        double h = Math.max(0, r - hull.seat().sunk() + hull.seat().cradleHeight());
        double within = h < r ? r * r * (Math.PI - Math.acos(h / r)) + h * Math.sqrt(r * r - h * h) : Math.PI * r * r;
        double section = 2 * h * out * Math.sin(slope) + out * out * (Math.sin(slope) * Math.cos(slope) + slope)
                + Math.pow(h + out * Math.cos(slope), 2) / Math.tan(slope) - within;
        int ends = (cover.baseEnd() == CoverPlan.End.COVERED ? 1 : 0)
                + (cover.farEnd() == CoverPlan.End.COVERED ? 1 : 0);
        return section * (hull.length() + ends * (cover.thickness() + (h + out) / 2 / Math.tan(slope)));
    }

    /** How far the toe of a cover reaches beyond its hull (m). */
    static double toe(Plan plan) {
        double toe = 0;
        for (Hull hull : plan.hulls()) {
            double t = hull.cover().map(CoverPlan::thickness).orElse(0.0);
            toe = Math.max(toe, (hull.diameter() + t) / Math.tan(plan.ground().regolith().stableSlope()));
        }
        return toe;
    }

    boolean isAsked() {
        return need > 0;
    }

    /** Nodes about a block that count (1). */
    int margin() {
        return isAsked() ? (reach + 1) * squares.nodes() : 0;
    }

    /** Works out the haul of each square that a block has a part of. */
    void fill(SurveyGround ground) {
        int k = squares.nodes();
        firstRow = Math.floorDiv(ground.block.firstRow(), k);
        firstColumn = Math.floorDiv(ground.block.firstColumn(), k);
        int down = Math.floorDiv(ground.block.firstRow() + ground.block.rows() - 1, k) - firstRow + 1;
        across = Math.floorDiv(ground.block.firstColumn() + ground.block.columns() - 1, k) - firstColumn + 1;
        if (!isAsked()) {
            return;
        }
        int wide = across + 2 * reach;
        rowPart = new int[ground.block.rows()];
        columnPart = new int[ground.block.columns()];
        for (int r = 0; r < rowPart.length; r++) {
            rowPart[r] = (squares.of(ground.block.firstRow() + r) - firstRow) * across;
        }
        for (int c = 0; c < columnPart.length; c++) {
            columnPart[c] = squares.of(ground.block.firstColumn() + c) - firstColumn;
        }
        int[] gentle = gentle(ground, down + 2 * reach, wide);
        haul = new double[down * across];
        for (int r = 0; r < down; r++) {
            for (int c = 0; c < across; c++) {
                haul[r * across + c] = haul(gentle, (r + reach) * wide + c + reach, wide);
            }
        }
    }

    private double haul(int[] gentle, int at, int wide) {
        double got = 0;
        double moment = 0;
        for (int i = 0; i < distance.length; i++) {
            double here = Math.min(need - got, gentle[at + rowStep[i] * wide + columnStep[i]] * volumeOfNode);
            got += here;
            moment += here * distance[i];
            if (got >= need) {
                return moment / got;
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Nodes of each square on which soil can be dug. */
    private int[] gentle(SurveyGround ground, int down, int wide) {
        int k = squares.nodes();
        int[] counts = new int[down * wide];
        int south = ground.block.firstRow() - ground.margin;
        int west = ground.block.firstColumn() - ground.margin;
        for (int r = 0; r < ground.rows; r++) {
            int squareRow = Math.floorDiv(south + r, k) - firstRow + reach;
            if (squareRow < 0 || squareRow >= down) {
                continue;
            }
            for (int c = 0; c < ground.stride; c++) {
                int squareColumn = Math.floorDiv(west + c, k) - firstColumn + reach;
                if (squareColumn >= 0 && squareColumn < wide && ground.grade[r * ground.stride + c] <= grade) {
                    counts[squareRow * wide + squareColumn]++;
                }
            }
        }
        return counts;
    }

    /** Mean haul for a row and column of the block (m); infinite where there is not enough within reach. */
    double haul(int row, int column) {
        return haul[rowPart[row] + columnPart[column]];
    }

    /** Margin of a haul (1): 1 where all the ground around is gentle, 0 at the reach. */
    double margin(double meanHaul) {
        return isAsked() ? 1 - (meanHaul - shortest) / (furthest - shortest) : 1;
    }

    double volume() {
        return need;
    }
}
