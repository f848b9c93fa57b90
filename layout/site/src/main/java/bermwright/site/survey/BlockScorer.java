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
 * <p>The slopes of a bed come from sums along its rows, for all headings of a strip of cells. They, the pads and the
 * ground under the gear bound the score of a heading from above: it is worked out only where they do not lie below the
 * best score so far, and only until one of its own criteria does. First comes the heading that is best at the cell
 * before, and in each heading what ruled it out there: the same criterion and the same ground. So most headings cost
 * little, and the cell's best heading and score are those that working out every heading would give, in whatever order
 * they are asked. Belongs to one thread.
 */
final class BlockScorer {
    /** Ground in the sweep, high spots of the bed, its bench, and lines. */
    private static final int CRITERIA = 4;
    /** Rounding never takes a heading out: what is broken off lies this much beyond (1). */
    private static final double SURE = 1e-9;
    private static final Point ANYWHERE = new Point(0, 0);

    private final SurveySetup setup;
    private final SurveyGround ground;
    private final NearSoil soil;
    private final FarSight sight;
    private final int headings;
    private final int hulls;
    private final Kernel[] kernels;
    private final double spacing;
    private final StripBounds strip;
    private final double[] bound;
    /** By kernel, the criterion that last ruled it out, and the nodes of sweep, bed and lines that did. */
    private final int[] ruledOut;
    private final int[] sweepNode;
    private final int[] bedNode;
    private final int[] lineBeyond;
    private final int[] lineNode;
    private final long[] counts = new long[ScoredBlock.Count.values().length];
    private final boolean bounded;
    private double cut;
    private int bestHeading;
    /** The best heading of the last cell that has one. */
    private int leading;

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
        strip = new StripBounds(ground, kernels, headings, setup.group().isSymmetric());
        bound = new double[headings];
        ruledOut = new int[kernels.length];
        sweepNode = new int[kernels.length];
        bedNode = new int[kernels.length];
        lineBeyond = new int[kernels.length];
        lineNode = new int[kernels.length];
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
        leading = -1;
        for (int r = 0; r < block.rows(); r++) {
            for (int from = 0; from < block.columns(); from += StripBounds.CELLS) {
                int count = Math.min(StripBounds.CELLS, block.columns() - from);
                if (mayLie(r, from, count)) {
                    strip.fill(r, from, count);
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
        double best = bounded ? bestHeading(at, c, middle) : bestOfAll(at, c, middle);
        if (bestHeading < 0) {
            return out(reaches(0) > 0 ? ScoredBlock.Count.TOO_ROUGH : ScoredBlock.Count.TOO_STEEP);
        }
        leading = bestHeading;
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

    /** No score of a heading lies above this: the margins of its slopes, its gear's ground and its pads. */
    private double bound(int heading, int c, Point middle) {
        double least = strip.bound(heading, c);
        // Written so that a plane that is not known is out.
        if (!(least >= 0)) {
            return -1;
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

    private double bestHeading(int at, int c, Point middle) {
        double best = -1;
        int first = leading >= 0 ? leading : strip.highest(c);
        for (int n = -1; n < headings; n++) {
            int k = n < 0 ? first : n;
            if (n == first) {
                continue;
            }
            bound[k] = bound(k, c, middle);
            if (bound[k] < 0 || bound[k] < best) {
                continue;
            }
            double score = workedOut(k, at, c, Math.max(0, best));
            if (score >= 0 && (score > best || score == best && k < bestHeading)) {
                best = score;
                bestHeading = k;
            }
        }
        counts[ScoredBlock.Count.WORKED_OUT.ordinal()] += reaches(Math.max(0, best));
        return best;
    }

    /** How many headings the bounds alone do not put below a score. */
    private int reaches(double score) {
        int count = 0;
        for (double most : bound) {
            count += most >= score ? 1 : 0;
        }
        return count;
    }

    private double bestOfAll(int at, int c, Point middle) {
        double best = -1;
        for (int k = 0; k < headings; k++) {
            bound[k] = bound(k, c, middle);
            double score = workedOut(k, at, c, Double.NEGATIVE_INFINITY);
            if (score >= 0 && score > best) {
                best = score;
                bestHeading = k;
            }
        }
        counts[ScoredBlock.Count.WORKED_OUT.ordinal()] += headings;
        return best;
    }

    /** The score of a heading; any value below the floor where it lies below. */
    private double workedOut(int heading, int at, int c, double floor) {
        double least = bound[heading];
        for (int i = 0; i < hulls && least >= floor; i++) {
            int kernel = heading * hulls + i;
            int first = ruledOut[kernel];
            for (int n = -1; n < CRITERIA && least >= floor; n++) {
                int criterion = n < 0 ? first : n;
                if (n != first) {
                    least = Math.min(least, margin(criterion, kernel, at, c, floor));
                    ruledOut[kernel] = least >= floor ? first : criterion;
                }
            }
        }
        return least;
    }

    /** What one criterion of a kernel leaves; any value below the floor where it leaves less. */
    private double margin(int criterion, int kernel, int at, int c, double floor) {
        Kernel k = kernels[kernel];
        double limit = k.hull.allowance();
        cut = limit * (1 - floor) * (1 + SURE) + SURE;
        return switch (criterion) {
            case 0 -> 1 - Math.max(0, highest(k.sweep, sweepNode, kernel, at, c)) / limit;
            case 1 -> 1 - Math.max(0, highest(k.bed, bedNode, kernel, at, c)) / limit;
            case 2 -> 1 - bench(k, at, strip.height(kernel, c)) / benchLimit(k);
            default -> {
                cut = (1 - floor) * (1 + SURE) + SURE;
                yield 1 - linesTaken(kernel, at);
            }
        };
    }

    private double benchLimit(Kernel k) {
        return setup.limits().mostBench() * k.hull.length() * k.hull.width();
    }

    /**
     * The highest ground over the plane at the skin; broken off where it lies beyond the cut. The node that lay beyond
     * it last is asked first, and at the next cell the one over the same ground.
     */
    private double highest(Kernel.Nodes nodes, int[] beyond, int kernel, int at, int c) {
        double base = strip.base(kernel, c);
        double east = strip.riseEast(kernel, c);
        double north = strip.riseNorth(kernel, c);
        double highest = Double.NEGATIVE_INFINITY;
        double[] z = ground.z;
        int count = nodes.offset.length;
        for (int n = count > 0 ? -1 : 0; n < count; n++) {
            int i = n < 0 ? beyond[kernel] : n;
            double over = z[at + nodes.offset[i]] - (base + east * nodes.x[i] + north * nodes.y[i]) - nodes.skin[i];
            if (over > highest) {
                highest = over;
                if (over > cut) {
                    beyond[kernel] = nodes.west[i];
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

    /** The greatest share that the ground between the ends takes of a line's height; broken off beyond the cut. */
    private double linesTaken(int kernel, int at) {
        Kernel.LineNodes[] lines = kernels[kernel].lines;
        double most = 0;
        for (int n = lines.length > 0 ? -1 : 0; n < lines.length; n++) {
            Kernel.LineNodes line = lines[n < 0 ? lineBeyond[kernel] : n];
            double from = ground.z[at + line.from];
            double rise = ground.z[at + line.to] - from;
            int first = n < 0 ? lineNode[kernel] : 0;
            int end = n < 0 ? Math.min(first + 1, line.offset.length) : line.offset.length;
            for (int i = first; i < end; i++) {
                double over = ground.z[at + line.offset[i]] - from - line.share[i] * rise;
                double share = over * line.perHeight[i];
                if (!(share <= most)) {
                    most = Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
                    if (most > cut) {
                        lineBeyond[kernel] = n < 0 ? lineBeyond[kernel] : n;
                        lineNode[kernel] = i;
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
        strip.fill(row, column, 1);
        int at = ground.place(row, column);
        Figures figures = new Figures();
        cut = Double.POSITIVE_INFINITY;
        for (int i = 0; i < hulls; i++) {
            int kernel = heading * hulls + i;
            Kernel k = kernels[kernel];
            double rise = strip.riseEast(kernel, 0) * k.east + strip.riseNorth(kernel, 0) * k.north;
            double across = strip.riseNorth(kernel, 0) * k.east - strip.riseEast(kernel, 0) * k.north;
            figures.slope(Criterion.SLOPE_ALONG, -rise, rise < 0 ? k.hull.fallLimit() : k.hull.riseLimit());
            figures.slope(Criterion.SLOPE_ACROSS, -across, k.hull.riseLimit());
            figures.most(Criterion.HIGH_SPOT, highest(k.bed, bedNode, kernel, at, 0), k.hull.allowance());
            figures.most(Criterion.BENCH, bench(k, at, strip.height(kernel, 0)), benchLimit(k));
            if (k.sweep.offset.length > 0) {
                figures.most(Criterion.SWEEP, highest(k.sweep, sweepNode, kernel, at, 0), k.hull.allowance());
            }
            if (k.spots.length > 0) {
                figures.slope(Criterion.GEAR, strip.gearGrade(k, at), LaidGroup.GEAR_GRADE);
            }
            if (k.lines.length > 0) {
                figures.most(Criterion.LINES, linesTaken(kernel, at), 1);
            }
            if (setup.bounds().hasPads()) {
                Azimuth way = heading(heading, headings);
                double[] pad = setup.bounds().nearestPad(k.hull, middle(row, column), way.east(), way.north());
                figures.least(Criterion.PADS, pad[0], pad[1]);
            }
            figures.bed(strip.height(kernel, 0));
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
