// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/** Joins the cuts of one level into lines: each side is left by one cut at most, and reached by one at most. */
final class ContourJoin {
    private static final int NONE = -1;

    private final ElevationGrid grid;
    private final double level;
    private final Contours.CutList cuts;
    private final int mask;
    /** Cut that leaves a side, by open addressing on the side's number. */
    private final int[] leaving;

    ContourJoin(ElevationGrid grid, double level, Contours.CutList cuts) {
        this.grid = grid;
        this.level = level;
        this.cuts = cuts;
        int size = Integer.highestOneBit(Math.max(4, cuts.count())) * 4;
        this.mask = size - 1;
        this.leaving = new int[size];
        Arrays.fill(leaving, NONE);
        for (int cut = 0; cut < cuts.count(); cut++) {
            int slot = slot(cuts.from(cut));
            while (leaving[slot] != NONE) {
                slot = slot + 1 & mask;
            }
            leaving[slot] = cut;
        }
    }

    private int slot(int side) {
        int mixed = side * 0x9E3779B1;
        return (mixed ^ mixed >>> 15) & mask;
    }

    private int cutLeaving(int side) {
        int slot = slot(side);
        while (leaving[slot] != NONE) {
            if (cuts.from(leaving[slot]) == side) {
                return leaving[slot];
            }
            slot = slot + 1 & mask;
        }
        return NONE;
    }

    List<ContourLine> lines() {
        BitSet follows = new BitSet(cuts.count());
        for (int cut = 0; cut < cuts.count(); cut++) {
            int next = cutLeaving(cuts.to(cut));
            if (next != NONE) {
                follows.set(next);
            }
        }
        List<ContourLine> lines = new ArrayList<>();
        BitSet done = new BitSet(cuts.count());
        for (int start = follows.nextClearBit(0); start < cuts.count(); start = follows.nextClearBit(start + 1)) {
            walk(start, done, lines);
        }
        for (int start = done.nextClearBit(0); start < cuts.count(); start = done.nextClearBit(start + 1)) {
            walk(start, done, lines);
        }
        return lines;
    }

    private void walk(int start, BitSet done, List<ContourLine> lines) {
        List<Point> points = new ArrayList<>();
        points.add(place(cuts.from(start)));
        int cut = start;
        boolean closed = false;
        while (cut != NONE && !closed) {
            done.set(cut);
            Point next = place(cuts.to(cut));
            if (!next.equals(points.get(points.size() - 1))) {
                points.add(next);
            }
            cut = cutLeaving(cuts.to(cut));
            closed = cut == start;
        }
        if (closed && points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        if (points.size() > 1) {
            lines.add(new ContourLine(level, closed, points));
        }
    }

    private Point place(int side) {
        GridFrame frame = grid.frame();
        int node = side >> 1;
        int row = node / frame.columns();
        int column = node % frame.columns();
        boolean runsNorth = (side & 1) == 1;
        double from = grid.nodeHeight(row, column);
        double to = runsNorth ? grid.nodeHeight(row + 1, column) : grid.nodeHeight(row, column + 1);
        double t = Math.max(0, Math.min(1, (level - from) / (to - from)));
        return runsNorth ? new Point(frame.east(column), frame.north(row) + t * frame.spacing())
                : new Point(frame.east(column) + t * frame.spacing(), frame.north(row));
    }
}
