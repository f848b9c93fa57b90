// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import java.util.Arrays;

/**
 * Scores the cells of a block, each at every heading.
 *
 * <p>The slopes of a bed come from sums along its rows, for all headings of a cell. They, the pads and the ground
 * under the gear bound the score of a heading from above; headings are worked out from the highest bound down until the
 * next bound lies below the best score of the cell, and each only until it is known to lie below it. So the cell's best
 * heading and score are those that working out every heading would give. Belongs to one thread.
 */
final class BlockScorer {
    private static final int STRIP = 256;
    /** Rounding never takes a heading out: what is broken off lies this much beyond (1). */
    private static final double SURE = 1e-9;
    private static final Point ANYWHERE = new Point(0, 0);

    private final SurveySetup setup;
    private final SurveyGround ground;
    private final NearSoil soil;
    private final FarSight sight;
    private final int headings;
    private final int hulls;
    private final int beds;
    private final Kernel[] kernels;
    private final double spacing;
    private final double[][] riseEast;
    private final double[][] riseNorth;
    private final double[][] height;
    private final double[] total = new double[STRIP];
    private final double[] byColumn = new double[STRIP];
    private final double[] byRow = new double[STRIP];
    private final int[] missing = new int[STRIP];
    private final double[] bound;
    private final long[] counts = new long[ScoredBlock.Count.values().length];
    private final boolean bounded;
    private double cut;
    private int bestHeading;

    /**
     * A scorer of blocks of one size.
     *
     * @param setup   the survey
     * @param side    nodes along a block's side at most (1)
     * @param bounded false to work out every heading, for checking
     */
    BlockScorer(SurveySetup setup, int side, boolean bounded) {
        this.setup = setup;
        this.bounded = bounded;
        spacing = setup.ground().trueSpacing();
        ground = new SurveyGround(setup.ground(), setup.bounds(), side, setup.margin());
        soil = setup.soil();
        sight = setup.sight();
        headings = setup.limits().headings();
        hulls = setup.group().hulls().size();
        kernels = new Kernel[headings * hulls];
        for (int k = 0; k < headings; k++) {
            for (int i = 0; i < hulls; i++) {
                kernels[k * hulls + i] = new Kernel(setup.group().hulls().get(i), heading(k, headings), spacing,
                        ground.stride);
            }
        }
        beds = setup.group().isSymmetric() && headings % 2 == 0 ? headings / 2 : headings * hulls;
        riseEast = new double[beds][STRIP];
        riseNorth = new double[beds][STRIP];
        height = new double[beds][STRIP];
        bound = new double[headings];
    }

    /** A heading, evenly from grid north on. */
    static Azimuth heading(int number, int count) {
        return Azimuth.ofDegrees(360.0 * number / count);
    }

    /** Scores a block; the best of squares of the map, of tiles, and counts. */
    ScoredBlock score(NodeRange block, int mapSquare) {
        Arrays.fill(counts, 0);
        float[] scores = new float[(int) block.nodes()];
        cells(block, scores, new short[scores.length]);
        return new ScoredBlock(block, mapSquare, scores, counts);
    }

    /** Scores a block cell by cell: best score and its heading, {@code NaN} where the group cannot lie. */
    void cells(NodeRange block, float[] scores, short[] into) {
        fill(block);
        for (int r = 0; r < block.rows(); r++) {
            for (int from = 0; from < block.columns(); from += STRIP) {
                int count = Math.min(STRIP, block.columns() - from);
                if (mayLie(r, from, count)) {
                    planes(r, from, count);
                    for (int c = 0; c < count; c++) {
                        int i = r * block.columns() + from + c;
                        scores[i] = cell(r, from + c, c);
                        into[i] = (short) bestHeading;
                    }
                } else {
                    Arrays.fill(scores, r * block.columns() + from, r * block.columns() + from + count, Float.NaN);
                }
            }
        }
    }

    void fill(NodeRange block) {
        ground.fill(block);
        soil.fill(ground);
    }

    /** Whether some cell of a strip is not ruled out by its place alone; counts those of a strip that are. */
    private boolean mayLie(int row, int from, int count) {
        int unknown = 0;
        int noSoil = 0;
        for (int c = from; c < from + count; c++) {
            if (ground.z[ground.place(row, c)] == Double.POSITIVE_INFINITY) {
                unknown++;
            } else if (soilMargin(row, c) < 0) {
                noSoil++;
            }
        }
        if (unknown + noSoil == count) {
            counts[ScoredBlock.Count.UNKNOWN.ordinal()] += unknown;
            counts[ScoredBlock.Count.NO_SOIL.ordinal()] += noSoil;
            return false;
        }
        return true;
    }

    private double soilMargin(int row, int column) {
        return soil.isAsked() ? soil.margin(soil.haul(row, column)) : 1;
    }

    /** The planes of all beds for a strip of cells. */
    private void planes(int row, int from, int count) {
        for (int b = 0; b < beds; b++) {
            Kernel k = kernels[b];
            Arrays.fill(total, 0);
            Arrays.fill(byColumn, 0);
            Arrays.fill(byRow, 0);
            for (int i = 0; i < k.runRow.length; i++) {
                int line = (row + ground.margin + k.runRow[i]) * (ground.stride + 1) + from + ground.margin;
                addRun(line + k.runFrom[i], line + k.runTo[i] + 1, k.runRow[i], count);
            }
            double n = k.bed.offset.length;
            double step = spacing / SurveyGround.STEPS;
            for (int c = 0; c < count; c++) {
                double s = total[c];
                double x = (byColumn[c] - (from + c + ground.margin) * s - k.meanColumn * s) * step;
                double y = (byRow[c] - k.meanRow * s) * step;
                riseEast[b][c] = k.xx * x + k.xy * y;
                riseNorth[b][c] = k.xy * x + k.yy * y;
                height[b][c] = s / (n * SurveyGround.STEPS);
            }
            if (ground.hasGaps) {
                gaps(k, row, from, count);
                for (int c = 0; c < count; c++) {
                    riseEast[b][c] = missing[c] > 0 ? Double.NaN : riseEast[b][c];
                }
            }
        }
    }

    private void addRun(int low, int high, double rowStep, int count) {
        double[] sum = ground.sum;
        double[] times = ground.sumByColumn;
        for (int c = 0; c < count; c++) {
            double s = sum[high + c] - sum[low + c];
            total[c] += s;
            byRow[c] += rowStep * s;
            byColumn[c] += times[high + c] - times[low + c];
        }
    }

    private void gaps(Kernel k, int row, int from, int count) {
        Arrays.fill(missing, 0);
        for (int i = 0; i < k.knownRow.length; i++) {
            int line = (row + ground.margin + k.knownRow[i]) * (ground.stride + 1) + from + ground.margin;
            for (int c = 0; c < count; c++) {
                missing[c] += ground.gaps[line + k.knownTo[i] + 1 + c] - ground.gaps[line + k.knownFrom[i] + c];
            }
        }
    }

    private float cell(int row, int column, int c) {
        int at = ground.place(row, column);
        bestHeading = -1;
        if (ground.z[at] == Double.POSITIVE_INFINITY) {
            return out(ScoredBlock.Count.UNKNOWN);
        }
        double place = soilMargin(row, column);
        if (place < 0) {
            return out(ScoredBlock.Count.NO_SOIL);
        }
        Point middle = setup.bounds().hasPads() ? middle(row, column) : ANYWHERE;
        boolean any = false;
        for (int k = 0; k < headings; k++) {
            bound[k] = bound(k, at, c, middle);
            any |= bound[k] >= 0;
        }
        if (!any) {
            return out(ScoredBlock.Count.TOO_STEEP);
        }
        double best = bounded ? bestHeading(at, c) : bestOfAll(at, c);
        if (bestHeading < 0) {
            return out(ScoredBlock.Count.TOO_ROUGH);
        }
        if (sight.isAsked()) {
            place = Math.min(place, sight.margin(sight.at(ground.block.firstRow() + row,
                    ground.block.firstColumn() + column)));
            if (!(place >= 0)) {
                bestHeading = -1;
                return out(ScoredBlock.Count.NO_SIGHT);
            }
        }
        counts[ScoredBlock.Count.ADMITTED.ordinal()]++;
        return (float) Math.min(best, place);
    }

    private float out(ScoredBlock.Count why) {
        counts[why.ordinal()]++;
        return Float.NaN;
    }

    private Point middle(int row, int column) {
        GridFrame frame = setup.ground().frame();
        return new Point(frame.east(ground.block.firstColumn() + column), frame.north(ground.block.firstRow() + row));
    }

    /** No score of a heading lies above this: the margins of its slopes, its pads and the ground under its gear. */
    private double bound(int heading, int at, int c, Point middle) {
        double least = 1;
        for (int i = 0; i < hulls; i++) {
            Kernel k = kernels[heading * hulls + i];
            int b = (heading * hulls + i) % beds;
            least = Math.min(least, slopes(k, riseEast[b][c], riseNorth[b][c]));
        }
        // Written so that a plane that is not known is out.
        if (!(least >= 0)) {
            return -1;
        }
        for (int i = 0; i < hulls; i++) {
            least = Math.min(least, 1 - gearGrade(kernels[heading * hulls + i], at) / LaidGroup.GEAR_GRADE);
        }
        if (setup.bounds().hasPads()) {
            Azimuth way = heading(heading, headings);
            for (int i = 0; i < hulls; i++) {
                double[] pad = setup.bounds().nearestPad(kernels[heading * hulls + i].hull, middle, way.east(),
                        way.north());
                least = Math.min(least, 1 - pad[1] / pad[0]);
            }
        }
        return least;
    }

    private static double slopes(Kernel k, double east, double north) {
        double rise = east * k.east + north * k.north;
        double across = Math.abs(north * k.east - east * k.north);
        double along = rise < 0 ? -rise / k.hull.fallLimit() : rise / k.hull.riseLimit();
        return 1 - Math.max(along, across / k.hull.riseLimit());
    }

    private double bestHeading(int at, int c) {
        double best = -1;
        while (true) {
            int next = 0;
            for (int k = 1; k < headings; k++) {
                next = bound[k] > bound[next] ? k : next;
            }
            if (bound[next] < 0 || bound[next] < best) {
                return best;
            }
            double score = workedOut(next, at, c, Math.max(0, best));
            bound[next] = -1;
            if (score >= 0 && (score > best || score == best && next < bestHeading)) {
                best = score;
                bestHeading = next;
            }
        }
    }

    private double bestOfAll(int at, int c) {
        double best = -1;
        for (int k = 0; k < headings; k++) {
            double score = workedOut(k, at, c, Double.NEGATIVE_INFINITY);
            if (score >= 0 && score > best) {
                best = score;
                bestHeading = k;
            }
        }
        return best;
    }

    /** The score of a heading; any value below the floor where it lies below. */
    private double workedOut(int heading, int at, int c, double floor) {
        counts[ScoredBlock.Count.WORKED_OUT.ordinal()]++;
        double least = bound[heading];
        for (int i = 0; i < hulls && least >= floor; i++) {
            int b = (heading * hulls + i) % beds;
            Kernel k = kernels[heading * hulls + i];
            double base = base(k, b, c);
            double limit = k.hull.allowance();
            cut = limit * (1 - floor) * (1 + SURE) + SURE;
            least = Math.min(least, 1 - Math.max(0, highest(k.sweep, at, base, b, c)) / limit);
            least = least >= floor ? Math.min(least, 1 - Math.max(0, highest(k.bed, at, base, b, c)) / limit) : least;
            least = least >= floor ? Math.min(least, 1 - bench(k, at, height[b][c]) / benchLimit(k)) : least;
            cut = (1 - floor) * (1 + SURE) + SURE;
            least = least >= floor ? Math.min(least, 1 - linesTaken(k, at)) : least;
        }
        return least;
    }

    /** Height of a bed's plane at the group's middle. */
    private double base(Kernel k, int b, int c) {
        return height[b][c] - riseEast[b][c] * k.meanColumn * spacing - riseNorth[b][c] * k.meanRow * spacing;
    }

    private double benchLimit(Kernel k) {
        return setup.limits().mostBench() * k.hull.length() * k.hull.width();
    }

    /** The highest ground over the plane at the skin; broken off where it lies beyond the cut. */
    private double highest(Kernel.Nodes nodes, int at, double base, int b, int c) {
        double east = riseEast[b][c];
        double north = riseNorth[b][c];
        double highest = Double.NEGATIVE_INFINITY;
        double[] z = ground.z;
        for (int i = 0; i < nodes.offset.length; i++) {
            double over = z[at + nodes.offset[i]] - (base + east * nodes.x[i] + north * nodes.y[i]) - nodes.skin[i];
            if (over > highest) {
                highest = over;
                if (over > cut) {
                    return over;
                }
            }
        }
        return highest;
    }

    /** Soil cut, and as much filled, to make the bed level at its mean height (m3). */
    private double bench(Kernel k, int at, double mean) {
        double sum = 0;
        double[] z = ground.z;
        for (int offset : k.bed.offset) {
            sum += Math.abs(z[at + offset] - mean);
        }
        return sum / 2 * spacing * spacing;
    }

    /** The steepest rise under winches, poles and anchors (1). */
    private double gearGrade(Kernel k, int at) {
        double steepest = 0;
        for (int offset : k.spots) {
            steepest = Math.max(steepest, ground.grade[at + offset]);
        }
        return steepest;
    }

    /** The greatest share that the ground between the ends takes of a line's height. */
    private double linesTaken(Kernel k, int at) {
        double most = 0;
        for (Kernel.LineNodes line : k.lines) {
            double from = ground.z[at + line.from];
            double rise = ground.z[at + line.to] - from;
            for (int i = 0; i < line.offset.length; i++) {
                double over = ground.z[at + line.offset[i]] - from - line.share[i] * rise;
                double share = over * line.perHeight[i];
                if (!(share <= most)) {
                    most = Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
                    if (most > cut) {
                        return most;
                    }
                }
            }
        }
        return most;
    }

    SurveyGround ground() {
        return ground;
    }

    /** All figures of a cell and heading of the block that was filled last. */
    Figures figures(int row, int column, int heading) {
        planes(row, column, 1);
        int at = ground.place(row, column);
        Figures figures = new Figures();
        cut = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hulls; i++) {
            Kernel k = kernels[heading * hulls + i];
            int b = (heading * hulls + i) % beds;
            double rise = riseEast[b][0] * k.east + riseNorth[b][0] * k.north;
            double across = riseNorth[b][0] * k.east - riseEast[b][0] * k.north;
            figures.slope(Criterion.SLOPE_ALONG, -rise, rise < 0 ? k.hull.fallLimit() : k.hull.riseLimit());
            figures.slope(Criterion.SLOPE_ACROSS, -across, k.hull.riseLimit());
            figures.most(Criterion.HIGH_SPOT, highest(k.bed, at, base(k, b, 0), b, 0), k.hull.allowance());
            figures.most(Criterion.BENCH, bench(k, at, height[b][0]), benchLimit(k));
            if (k.sweep.offset.length > 0) {
                figures.most(Criterion.SWEEP, highest(k.sweep, at, base(k, b, 0), b, 0), k.hull.allowance());
            }
            if (k.spots.length > 0) {
                figures.slope(Criterion.GEAR, gearGrade(k, at), LaidGroup.GEAR_GRADE);
            }
            if (k.lines.length > 0) {
                figures.most(Criterion.LINES, linesTaken(k, at), 1);
            }
            if (setup.bounds().hasPads()) {
                Azimuth way = heading(heading, headings);
                double[] pad = setup.bounds().nearestPad(k.hull, middle(row, column), way.east(), way.north());
                figures.least(Criterion.PADS, pad[0], pad[1]);
            }
            figures.bed(height[b][0]);
        }
        if (soil.isAsked()) {
            double haul = soil.haul(row, column);
            figures.keep(new Reason(Criterion.SOIL, haul, setup.limits().soilReach(), soil.margin(haul)));
        }
        if (sight.isAsked()) {
            figures.seen(sight.at(ground.block.firstRow() + row, ground.block.firstColumn() + column),
                    setup.limits());
        }
        return figures;
    }
}
