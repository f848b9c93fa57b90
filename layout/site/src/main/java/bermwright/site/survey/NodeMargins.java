// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

/**
 * What the ground leaves of the score of a heading node by node: what stands in the sweep and over the bed, the bench,
 * and what it takes of the height of lines.
 *
 * <p>A heading is given up where one criterion leaves less than asked. In each heading what ruled it out at the cell
 * before is asked first: the same criterion, and the node over the same ground. What is asked first changes no score.
 * Belongs to one thread.
 */
final class NodeMargins {
    /** Ground in the sweep, high spots of the bed, its bench, lines, and ground under the gear. */
    private static final int CRITERIA = 5;
    /** Rounding never takes a heading out: what is broken off lies this much beyond (1). */
    private static final double SURE = 1e-9;

    private final SurveyGround ground;
    private final Kernel[] kernels;
    private final StripBounds strip;
    private final int hulls;
    private final double spacing;
    /** By kernel, highest ground that the skin may meet (m), and most soil cut for its bench (m3). */
    private final double[] allowance;
    private final double[] benchLimit;
    /** By kernel, the criterion that last ruled it out, and the nodes of sweep and bed and the line that did. */
    private final int[] ruledOut;
    private final int[] sweepNode;
    private final int[] bedNode;
    private final int[] lineBeyond;
    /** The cell that is asked about: where it stands in the arrays of the ground, and in the strip. */
    private int place;
    private int cell;

    /**
     * Margins of kernels on a ground.
     *
     * @param ground    the ground
     * @param kernels   by heading, one for each hull
     * @param hulls     how many hulls (1)
     * @param strip     the planes of the beds
     * @param mostBench most soil cut for each square metre of a bed (m)
     */
    NodeMargins(SurveyGround ground, Kernel[] kernels, int hulls, StripBounds strip, double mostBench) {
        this.ground = ground;
        this.kernels = kernels;
        this.hulls = hulls;
        this.strip = strip;
        spacing = ground.spacing();
        allowance = new double[kernels.length];
        benchLimit = new double[kernels.length];
        for (int k = 0; k < kernels.length; k++) {
            LaidHull hull = kernels[k].hull;
            allowance[k] = hull.allowance();
            benchLimit[k] = mostBench * hull.length() * hull.width();
        }
        ruledOut = new int[kernels.length];
        sweepNode = new int[kernels.length];
        bedNode = new int[kernels.length];
        lineBeyond = new int[kernels.length];
    }

    /**
     * The score of a heading.
     *
     * @param heading the heading's number
     * @param at      where the cell stands in the arrays of the ground
     * @param c       the cell in the strip
     * @param bound   what slopes, gear and pads leave (1)
     * @param floor   the least that is of use (1)
     * @return the score (1); any value below the floor where it lies below
     */
    double score(int heading, int at, int c, double bound, double floor) {
        stand(at, c);
        double least = bound;
        for (int kernel = heading * hulls; kernel < (heading + 1) * hulls && least >= floor; kernel++) {
            int first = ruledOut[kernel];
            least = Math.min(least, margin(first, kernel, floor, least));
            for (int n = 0; n < CRITERIA && least >= floor; n++) {
                if (n != first) {
                    least = Math.min(least, margin(n, kernel, floor, least));
                    if (!(least >= floor)) {
                        ruledOut[kernel] = n;
                    }
                }
            }
        }
        return least;
    }

    private void stand(int at, int c) {
        place = at;
        cell = c;
    }

    /** What one criterion of a kernel leaves; any value below the floor where it leaves less. */
    private double margin(int criterion, int kernel, double floor, double least) {
        double share = (1 - floor) * (1 + SURE) + SURE;
        Kernel k = kernels[kernel];
        return switch (criterion) {
            case 0 -> skin(k.sweep, sweepNode, kernel, floor);
            case 1 -> skin(k.bed, bedNode, kernel, floor);
            case 2 -> 1 - bench(kernel, place, cell, share * benchLimit[kernel]) / benchLimit[kernel];
            case 3 -> 1 - linesTaken(kernel, place, (1 - least) * (1 - SURE) - SURE, share);
            default -> gear(k.spots, place);
        };
    }

    private double skin(Kernel.Nodes nodes, int[] beyond, int kernel, double floor) {
        double limit = allowance[kernel];
        double cut = limit * (1 - floor) * (1 + SURE) + SURE;
        return 1 - Math.max(0, highest(nodes, beyond, kernel, cut)) / limit;
    }

    private double gear(int[] spots, int at) {
        double least = 1;
        for (int offset : spots) {
            double margin = ground.gearMargin(at + offset);
            least = margin >= least ? least : margin;
        }
        return least;
    }

    double allowance(int kernel) {
        return allowance[kernel];
    }

    double benchLimit(int kernel) {
        return benchLimit[kernel];
    }

    /** The highest ground of the bed over its plane (m). */
    double highSpot(int kernel, int at, int c) {
        stand(at, c);
        return highest(kernels[kernel].bed, bedNode, kernel, Double.POSITIVE_INFINITY);
    }

    /** The highest ground of the sweep over what passes there (m). */
    double inSweep(int kernel, int at, int c) {
        stand(at, c);
        return highest(kernels[kernel].sweep, sweepNode, kernel, Double.POSITIVE_INFINITY);
    }

    /**
     * The highest ground over the plane at the skin; broken off where it lies beyond the cut. The node that lay beyond
     * it last is asked first, and at the next cell the one over the same ground.
     */
    private double highest(Kernel.Nodes nodes, int[] beyond, int kernel, double cut) {
        int at = place;
        int c = cell;
        double base = strip.base(kernel, c);
        double east = strip.riseEast(kernel, c);
        double north = strip.riseNorth(kernel, c);
        double[] z = ground.z;
        int[] offset = nodes.offset;
        double[] x = nodes.x;
        double[] y = nodes.y;
        double[] skin = nodes.skin;
        if (offset.length == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        int first = beyond[kernel];
        double highest = z[at + offset[first]] - (base + east * x[first] + north * y[first]) - skin[first];
        if (highest > cut) {
            beyond[kernel] = nodes.west[first];
            return highest;
        }
        for (int i = 0; i < offset.length; i++) {
            double over = z[at + offset[i]] - (base + east * x[i] + north * y[i]) - skin[i];
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

    /** Soil cut, and as much filled, to make a bed level at its mean height (m3); broken off beyond the cut. */
    double bench(int kernel, int at, int c, double cut) {
        double mean = strip.height(kernel, c);
        double most = cut * 2 / (spacing * spacing);
        double sum = 0;
        double[] z = ground.z;
        for (int offset : kernels[kernel].bedByRows) {
            sum += Math.abs(z[at + offset] - mean);
            if (sum > most) {
                break;
            }
        }
        return sum / 2 * spacing * spacing;
    }

    double linesTaken(int kernel, int at) {
        return linesTaken(kernel, at, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * The greatest share that the ground between the ends takes of a line's height; broken off beyond the cut. Groups
     * of nodes whose highest ground near by takes no more than what matters are left out.
     */
    private double linesTaken(int kernel, int at, double matters, double cut) {
        Kernel.LineNodes[] lines = kernels[kernel].lines;
        int first = lineBeyond[kernel];
        double most = lines.length == 0 ? 0 : taken(lines[first], at, Math.max(0, matters));
        for (int n = 0; n < lines.length && !(most > cut); n++) {
            if (n != first) {
                most = taken(lines[n], at, most);
                lineBeyond[kernel] = most > cut ? n : first;
            }
        }
        return most;
    }

    /** The greatest share of one line's height, or what was taken or does not matter where that is more. */
    private double taken(Kernel.LineNodes line, int at, double before) {
        double[] z = ground.z;
        double[] peak = ground.peak;
        double from = z[at + line.from];
        double rise = z[at + line.to] - from;
        double most = before;
        for (int g = 0; g < line.middle.length; g++) {
            double lowest = (rise >= 0 ? line.leastShare[g] : line.mostShare[g]) * rise;
            if (!((peak[at + line.middle[g]] - from - lowest) * line.mostPerHeight[g] <= most)) {
                for (int i = line.group[g]; i < line.group[g + 1]; i++) {
                    double share = (z[at + line.offset[i]] - from - line.share[i] * rise) * line.perHeight[i];
                    if (!(share <= most)) {
                        most = Double.isNaN(share) ? Double.POSITIVE_INFINITY : share;
                    }
                }
            }
        }
        return most;
    }
}
