// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The nodes about a group's middle that count for one of its hulls at one heading.
 *
 * <p>Offsets are those of an array of heights of a given stride. The bed is kept both as runs of nodes, row by row,
 * for its plane, and node by node, for what stands over the plane.
 */
final class Kernel {
    /** Nodes on the very edge are in, whatever rounding says (cells). */
    private static final double ROUNDING = 1e-6;
    /** Ground where the skin is this high over the bed is never its high spot (m). */
    private static final double OUT_OF_REACH = 1e6;
    /** So near the end of a line the ground is that of its anchor or pole (m). */
    private static final double END_OF_LINE = 2;

    /** The hull's own direction. */
    final double east;
    final double north;
    final LaidHull hull;
    int[] runRow;
    int[] runFrom;
    int[] runTo;
    /** Runs of all nodes between which some of the bed lies: they have to be known. */
    int[] knownRow;
    int[] knownFrom;
    int[] knownTo;
    final Nodes bed;
    /** The bed's offsets row by row, from the south-west on: soil is summed up in that order. */
    int[] bedByRows;
    final Nodes sweep;
    final int[] spots;
    final LineNodes[] lines;
    /** Means of the bed's columns and rows about the middle (cells) and the inverse of its moments (1/m). */
    double meanColumn;
    double meanRow;
    double xx;
    double xy;
    double yy;

    private final double spacing;
    private final int stride;
    private final Azimuth heading;

    /**
     * Nodes by their offset, their place (m) and the height of the skin over the bed there (m). First stand those that
     * most likely rule a heading out: evenly among those where the skin is low, whichever way round the hull lies; then
     * the others, well spread.
     */
    static final class Nodes {
        /** How many stand first at most (1). */
        static final int FOREMOST = 12;
        private static final double LOW_SKIN = 0.15;
        private static final int SPREAD = 7;
        final int[] offset;
        final double[] x;
        final double[] y;
        final double[] skin;
        /** The node that the next cell to the east has in its place; itself where that one is none of them. */
        final int[] west;
        /** How many stand first (1). */
        final int foremost;

        Nodes(List<double[]> byRows, int stride, double spacing) {
            List<double[]> first = foremost(byRows);
            List<double[]> nodes = ordered(byRows, first);
            foremost = first.size();
            int n = nodes.size();
            offset = new int[n];
            x = new double[n];
            y = new double[n];
            skin = new double[n];
            west = new int[n];
            Map<Integer, Integer> byOffset = new HashMap<>();
            for (int i = 0; i < n; i++) {
                double[] node = nodes.get(i);
                offset[i] = (int) node[0] * stride + (int) node[1];
                x[i] = node[1] * spacing;
                y[i] = node[0] * spacing;
                skin[i] = node[2];
                byOffset.put(offset[i], i);
            }
            for (int i = 0; i < n; i++) {
                west[i] = byOffset.getOrDefault(offset[i] - 1, i);
            }
        }

        private static List<double[]> ordered(List<double[]> byRows, List<double[]> first) {
            List<double[]> ordered = new ArrayList<>(first);
            List<double[]> others = byRows.stream().filter(a -> !first.contains(a)).toList();
            for (int start = 0; start < SPREAD; start++) {
                for (int i = start; i < others.size(); i += SPREAD) {
                    ordered.add(others.get(i));
                }
            }
            return ordered;
        }

        private static List<double[]> foremost(List<double[]> byRows) {
            double[] skins = byRows.stream().mapToDouble(a -> a[3]).filter(a -> a < OUT_OF_REACH).sorted().toArray();
            double low = skins.length == 0 ? 0 : Math.max(LOW_SKIN, skins[Math.min(FOREMOST, skins.length) - 1]);
            List<double[]> lowest = byRows.stream().filter(a -> a[3] <= low).toList();
            int count = Math.min(FOREMOST, lowest.size());
            List<double[]> first = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                first.add(lowest.get(i * lowest.size() / count));
            }
            return first;
        }
    }

    /** The nodes under a line: its ends, and those between with their share of the way. */
    static final class LineNodes {
        int from;
        int to;
        int[] offset;
        double[] share;
        /** One over the line's height over a straight line between the ground of its ends (1/m). */
        double[] perHeight;
        /** Groups of nodes that follow each other: the first of each and of what follows, and the middle's offset. */
        int[] group;
        int[] middle;
        /** By group, the greatest of one over the line's height (1/m), and the shares of its first and last node. */
        double[] mostPerHeight;
        double[] leastShare;
        double[] mostShare;
    }

    Kernel(LaidHull hull, Azimuth heading, double spacing, int stride) {
        this.hull = hull;
        this.heading = heading;
        this.spacing = spacing;
        this.stride = stride;
        Azimuth own = hull.turn() == 0 ? heading : heading.turned(hull.turn());
        east = own.east();
        north = own.north();
        known();
        bed = bed();
        sweep = sweep();
        spots = hull.spots().stream().mapToInt(s -> offset(s[0], s[1])).toArray();
        lines = hull.lines().stream().map(this::line).toArray(LineNodes[]::new);
    }

    /** Steps to the east and north (m) of a place ahead of the group's middle and to its left. */
    private double x(double ahead, double left) {
        return ahead * heading.east() - left * heading.north();
    }

    private double y(double ahead, double left) {
        return ahead * heading.north() + left * heading.east();
    }

    private int offset(double ahead, double left) {
        return (int) Math.rint(y(ahead, left) / spacing) * stride + (int) Math.rint(x(ahead, left) / spacing);
    }

    /** The nodes of all cells that the bed touches. */
    private void known() {
        double cx = x(hull.bedAhead(), hull.bedLeft());
        double cy = y(hull.bedAhead(), hull.bedLeft());
        double beside = Math.sqrt(2) * spacing;
        double reach = Math.hypot(hull.length(), hull.width()) / 2 + 2 * beside;
        List<int[]> runs = new ArrayList<>();
        for (int r = (int) Math.ceil((cy - reach) / spacing); r * spacing <= cy + reach; r++) {
            int from = Integer.MAX_VALUE;
            int to = 0;
            for (int c = (int) Math.ceil((cx - reach) / spacing); c * spacing <= cx + reach; c++) {
                double dx = c * spacing - cx;
                double dy = r * spacing - cy;
                if (Math.abs(dx * east + dy * north) <= hull.length() / 2 + beside
                        && Math.abs(dy * east - dx * north) <= hull.width() / 2 + beside) {
                    from = Math.min(from, c);
                    to = c;
                }
            }
            if (from <= to) {
                runs.add(new int[] {r, from, to});
            }
        }
        knownRow = runs.stream().mapToInt(run -> run[0]).toArray();
        knownFrom = runs.stream().mapToInt(run -> run[1]).toArray();
        knownTo = runs.stream().mapToInt(run -> run[2]).toArray();
    }

    private Nodes bed() {
        double cx = x(hull.bedAhead(), hull.bedLeft());
        double cy = y(hull.bedAhead(), hull.bedLeft());
        double reach = Math.hypot(hull.length(), hull.width()) / 2;
        double halfLength = hull.length() / 2 + ROUNDING * spacing;
        double halfWidth = hull.width() / 2 + ROUNDING * spacing;
        List<double[]> nodes = new ArrayList<>();
        List<int[]> runs = new ArrayList<>();
        for (int r = (int) Math.ceil((cy - reach) / spacing); r * spacing <= cy + reach; r++) {
            int from = Integer.MAX_VALUE;
            int to = 0;
            for (int c = (int) Math.ceil((cx - reach) / spacing); c * spacing <= cx + reach; c++) {
                double dx = c * spacing - cx;
                double dy = r * spacing - cy;
                double along = dx * east + dy * north;
                double left = dy * east - dx * north;
                if (Math.abs(along) <= halfLength && Math.abs(left) <= halfWidth) {
                    from = Math.min(from, c);
                    to = c;
                    double skin = skin(hull.length() / 2 + along, Math.abs(left));
                    nodes.add(new double[] {r, c, skin, Math.max(skin, skin(hull.length() / 2 - along,
                            Math.abs(left)))});
                }
            }
            if (from <= to) {
                runs.add(new int[] {r, from, to});
            }
        }
        runRow = runs.stream().mapToInt(run -> run[0]).toArray();
        runFrom = runs.stream().mapToInt(run -> run[1]).toArray();
        runTo = runs.stream().mapToInt(run -> run[2]).toArray();
        moments(nodes);
        bedByRows = nodes.stream().mapToInt(n -> (int) n[0] * stride + (int) n[1]).toArray();
        return new Nodes(nodes, stride, spacing);
    }

    private void moments(List<double[]> nodes) {
        int n = nodes.size();
        meanRow = Math.rint(nodes.stream().mapToDouble(a -> a[0]).sum()) / n;
        meanColumn = Math.rint(nodes.stream().mapToDouble(a -> a[1]).sum()) / n;
        double sxx = 0;
        double sxy = 0;
        double syy = 0;
        for (double[] node : nodes) {
            double x = (node[1] - meanColumn) * spacing;
            double y = (node[0] - meanRow) * spacing;
            sxx += x * x;
            sxy += x * y;
            syy += y * y;
        }
        double determinant = sxx * syy - sxy * sxy;
        xx = syy / determinant;
        xy = -sxy / determinant;
        yy = sxx / determinant;
    }

    /** Height of the lying skin over its belly line; the ends taper and are taken as out of reach. */
    private double skin(double s, double left) {
        Hull h = hull.hull();
        if (hull.lies() && (s < h.baseEnd().depth() || s > h.length() - h.farEnd().depth())) {
            return OUT_OF_REACH;
        }
        return hull.lies() ? round(left) : 0;
    }

    /** How high a round of the hull's radius stands over its lowest line, so far beside it. */
    private double round(double beside) {
        double r = hull.width() / 2;
        return beside >= r ? r : r - Math.sqrt(r * r - beside * beside);
    }

    /** The nodes of the sweep that are not the bed's. */
    private Nodes sweep() {
        List<double[]> nodes = new ArrayList<>();
        if (hull.sweep().isPresent()) {
            double wander = hull.hull().lowering().map(LoweringGear::wander).orElse(0.0);
            double reach = hull.sweep().get().corners().stream().mapToDouble(p -> Math.hypot(p.east(), p.north()))
                    .max().orElseThrow();
            int cells = (int) Math.ceil(reach / spacing);
            for (int r = -cells; r <= cells; r++) {
                for (int c = -cells; c <= cells; c++) {
                    double dx = c * spacing;
                    double dy = r * spacing;
                    double ahead = dx * heading.east() + dy * heading.north();
                    double left = dy * heading.east() - dx * heading.north();
                    if (LaidGroup.holds(hull.sweep().get(), ahead, left)) {
                        swept(nodes, r, c, wander);
                    }
                }
            }
        }
        return new Nodes(nodes, stride, spacing);
    }

    private void swept(List<double[]> nodes, int r, int c, double wander) {
        double dx = c * spacing - x(hull.bedAhead(), hull.bedLeft());
        double dy = r * spacing - y(hull.bedAhead(), hull.bedLeft());
        double s = dx * east + dy * north + hull.length() / 2;
        double left = Math.abs(dy * east - dx * north);
        boolean inBed = s >= 0 && s <= hull.length() && left <= hull.width() / 2;
        if (inBed) {
            return;
        }
        double skin;
        if (s < 0) {
            // Where it stands nothing may stick up; around it is margin.
            double fromAxis = Math.hypot(s + hull.hull().pivotAhead(), left);
            skin = fromAxis <= hull.width() / 2 ? 0 : hull.width() / 2;
        } else {
            // Distance to the nearest belly line of all that the hull can swing to.
            double beside = left * Math.cos(wander) - s * Math.sin(wander);
            skin = round(Math.max(0, beside));
        }
        nodes.add(new double[] {r, c, skin, skin});
    }

    private LineNodes line(LaidHull.Line line) {
        LineNodes nodes = new LineNodes();
        nodes.from = offset(line.ahead()[0], line.left()[0]);
        nodes.to = offset(line.ahead()[1], line.left()[1]);
        double length = line.length();
        int steps = Math.max(1, (int) Math.ceil(length / spacing));
        int[] offset = new int[steps];
        double[] share = new double[steps];
        double[] perHeight = new double[steps];
        int n = 0;
        double clear = Math.max(END_OF_LINE, 1.5 * spacing);
        for (int i = 1; i < steps; i++) {
            double t = (double) i / steps;
            if (t * length >= clear && (1 - t) * length >= clear) {
                offset[n] = offset(line.ahead()[0] + t * (line.ahead()[1] - line.ahead()[0]),
                        line.left()[0] + t * (line.left()[1] - line.left()[0]));
                share[n] = t;
                perHeight[n++] = 1 / (line.height()[0] + t * (line.height()[1] - line.height()[0]));
            }
        }
        nodes.offset = Arrays.copyOf(offset, n);
        nodes.share = Arrays.copyOf(share, n);
        nodes.perHeight = Arrays.copyOf(perHeight, n);
        groups(nodes);
        return nodes;
    }

    /** Cuts a line's nodes into groups whose every node is near the group's middle. */
    private void groups(LineNodes nodes) {
        int n = nodes.offset.length;
        int most = 2 * SurveyGround.NEAR;
        int count = (n + most - 1) / most;
        nodes.group = new int[count + 1];
        nodes.middle = new int[count];
        nodes.mostPerHeight = new double[count];
        nodes.leastShare = new double[count];
        nodes.mostShare = new double[count];
        for (int g = 0; g < count; g++) {
            int first = g * most;
            int end = Math.min(n, first + most);
            nodes.group[g + 1] = end;
            nodes.leastShare[g] = nodes.share[first];
            nodes.mostShare[g] = nodes.share[end - 1];
            nodes.middle[g] = nodes.offset[(first + end) / 2];
            for (int i = first; i < end; i++) {
                nodes.mostPerHeight[g] = Math.max(nodes.mostPerHeight[g], nodes.perHeight[i]);
            }
        }
    }
}
