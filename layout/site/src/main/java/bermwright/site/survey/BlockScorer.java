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
 * <p>The slopes of a bed come from sums along its rows or columns, for all headings of a strip of cells. They, the pads
 * and the ground under the gear bound the score of a heading from above ({@link StripBounds}); {@link StripSearch}
 * works a heading out only where that is of use. Belongs to one thread.
 */
final class BlockScorer {
    private final SurveySetup setup;
    private final SurveyGround ground;
    private final NearSoil soil;
    private final FarSight sight;
    private final int headings;
    private final int hulls;
    private final Kernel[] kernels;
    private final StripBounds strip;
    private final NodeMargins margins;
    private final StripSearch search;
    private final boolean bounded;
    /** By cell of a strip, what its place leaves, and whether that rules it out. */
    private final double[] place = new double[StripBounds.CELLS];
    private final boolean[] out = new boolean[StripBounds.CELLS];
    private final long[] counts = new long[ScoredBlock.Count.values().length];

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
        ground = new SurveyGround(setup.ground(), setup.bounds(), side, setup.margin());
        soil = setup.soil();
        sight = setup.sight();
        headings = setup.limits().headings();
        hulls = setup.group().hulls().size();
        kernels = new Kernel[headings * hulls];
        for (int k = 0; k < headings; k++) {
            for (int i = 0; i < hulls; i++) {
                kernels[k * hulls + i] = new Kernel(setup.group().hulls().get(i), heading(k, headings),
                        setup.ground().trueSpacing(), ground.stride);
            }
        }
        strip = new StripBounds(ground, kernels, headings, setup.group().isSymmetric());
        margins = new NodeMargins(ground, kernels, hulls, strip, setup.limits().mostBench());
        search = new StripSearch(ground, strip, margins, headings, bounded);
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
            for (int from = 0; from < block.columns(); from += StripBounds.CELLS) {
                int count = Math.min(StripBounds.CELLS, block.columns() - from);
                int first = r * block.columns() + from;
                if (mayLie(r, from, count)) {
                    strip.fill(r, from, count);
                    pads(r, from, count);
                    search.search(r, from, count, out);
                    for (int c = 0; c < count; c++) {
                        scores[first + c] = out[c] ? Float.NaN : cell(r, from + c, c);
                        into[first + c] = (short) (Float.isNaN(scores[first + c]) ? -1 : search.heading(c));
                    }
                } else {
                    Arrays.fill(scores, first, first + count, Float.NaN);
                }
            }
        }
    }

    void fill(NodeRange block) {
        ground.fill(block);
        soil.fill(ground);
    }

    /** Whether some cell of a strip is not ruled out by its place alone; counts those that are. */
    private boolean mayLie(int row, int from, int count) {
        int ruledOut = 0;
        for (int c = 0; c < count; c++) {
            boolean isKnown = ground.z[ground.place(row, from + c)] != Double.POSITIVE_INFINITY;
            place[c] = isKnown ? soilMargin(row, from + c) : -1;
            out[c] = place[c] < 0;
            if (out[c]) {
                ruledOut++;
                counts[(isKnown ? ScoredBlock.Count.NO_SOIL : ScoredBlock.Count.UNKNOWN).ordinal()]++;
            }
        }
        return ruledOut < count;
    }

    private double soilMargin(int row, int column) {
        return soil.isAsked() ? soil.margin(soil.haul(row, column)) : 1;
    }

    /** Lowers the bounds of a strip to what its distance to pads leaves. */
    private void pads(int row, int from, int count) {
        if (!setup.bounds().hasPads()) {
            return;
        }
        for (int k = 0; k < headings; k++) {
            Azimuth way = heading(k, headings);
            double[] bound = strip.bounds(k);
            for (int c = 0; c < count; c++) {
                for (int i = 0; i < hulls && bound[c] >= 0; i++) {
                    double[] pad = setup.bounds().nearestPad(kernels[k * hulls + i].hull, middle(row, from + c),
                            way.east(), way.north());
                    bound[c] = Math.min(bound[c], 1 - pad[1] / pad[0]);
                }
            }
        }
    }

    /** The score of a cell of the strip that was searched last. */
    private float cell(int row, int column, int c) {
        counts[ScoredBlock.Count.WORKED_OUT.ordinal()] += bounded ? search.reached(c) : headings;
        if (search.heading(c) < 0) {
            return out(search.mayLie(c) ? ScoredBlock.Count.TOO_ROUGH : ScoredBlock.Count.TOO_STEEP);
        }
        double least = place[c];
        if (sight.isAsked()) {
            least = Math.min(least, sight.margin(sight.at(ground.block.firstRow() + row,
                    ground.block.firstColumn() + column)));
            if (!(least >= 0)) {
                return out(ScoredBlock.Count.NO_SIGHT);
            }
        }
        counts[ScoredBlock.Count.ADMITTED.ordinal()]++;
        return (float) Math.min(search.best(c), least);
    }

    private float out(ScoredBlock.Count why) {
        counts[why.ordinal()]++;
        return Float.NaN;
    }

    private Point middle(int row, int column) {
        GridFrame frame = setup.ground().frame();
        return new Point(frame.east(ground.block.firstColumn() + column), frame.north(ground.block.firstRow() + row));
    }

    SurveyGround ground() {
        return ground;
    }

    /** All figures of a cell and heading of the block that was filled last. */
    Figures figures(int row, int column, int heading) {
        strip.fill(row, column, 1);
        int at = ground.place(row, column);
        Figures figures = new Figures();
        for (int i = 0; i < hulls; i++) {
            int kernel = heading * hulls + i;
            Kernel k = kernels[kernel];
            double rise = strip.riseEast(kernel, 0) * k.east + strip.riseNorth(kernel, 0) * k.north;
            double across = strip.riseNorth(kernel, 0) * k.east - strip.riseEast(kernel, 0) * k.north;
            figures.slope(Criterion.SLOPE_ALONG, -rise, rise < 0 ? k.hull.fallLimit() : k.hull.riseLimit());
            figures.slope(Criterion.SLOPE_ACROSS, -across, k.hull.riseLimit());
            figures.most(Criterion.HIGH_SPOT, margins.highSpot(kernel, at, 0), margins.allowance(kernel));
            figures.most(Criterion.BENCH, margins.bench(kernel, at, 0, Double.POSITIVE_INFINITY),
                    margins.benchLimit(kernel));
            if (k.sweep.offset.length > 0) {
                figures.most(Criterion.SWEEP, margins.inSweep(kernel, at, 0), margins.allowance(kernel));
            }
            if (k.spots.length > 0) {
                figures.slope(Criterion.GEAR, strip.gearGrade(k, at), LaidGroup.GEAR_GRADE);
            }
            if (k.lines.length > 0) {
                figures.most(Criterion.LINES, margins.linesTaken(kernel, at), 1);
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
