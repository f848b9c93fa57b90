// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FinerPatch;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * Where a mound gets nodes of its own: frames around the parts of it that stand apart and around each finer patch of
 * the ground, every rough node kept.
 */
final class MoundFrames {
    /** Rough cells kept around a mound, so that its toe lies inside. */
    private static final int MARGIN = 3;
    /** Most nodes of one frame (1); a larger mound is cut less finely. */
    private static final double MOST_NODES = 8e6;

    private final Mound.Part rough;
    private final GridFrame frame;
    private final boolean[] seen;

    private MoundFrames(Mound.Part rough) {
        this.rough = rough;
        frame = rough.ground().frame();
        seen = new boolean[frame.size()];
    }

    /** Frames that lie apart, of a spacing or less. */
    static List<GridFrame> of(Mound.Part rough, double spacing) {
        MoundFrames made = new MoundFrames(rough);
        List<int[]> boxes = new ArrayList<>();
        for (int i = 0; i < made.seen.length; i++) {
            if (!made.seen[i] && rough.rise(i) > 0) {
                join(boxes, made.box(i));
            }
        }
        GridFrame frame = made.frame;
        for (ElevationGrid patch : rough.ground().patches()) {
            join(boxes, FinerPatch.nodes(frame, patch.frame()));
        }
        int times = (int) Math.max(1, Math.ceil(frame.spacing() / spacing - 1e-6));
        List<GridFrame> frames = new ArrayList<>();
        for (int[] b : boxes) {
            double cells = (double) (b[2] - b[0]) * (b[3] - b[1]);
            int most = (int) Math.max(1, Math.sqrt(MOST_NODES / cells));
            frames.add(frame.finerPart(b[0], b[1], b[2], b[3], Math.min(most, times)));
        }
        return frames;
    }

    /** The box, grown by the margin, of the mound that holds a node: rows and columns, first and last. */
    private int[] box(int start) {
        int columns = frame.columns();
        int[] box = {start / columns, start % columns, start / columns, start % columns};
        Deque<Integer> open = new ArrayDeque<>();
        open.add(start);
        seen[start] = true;
        while (!open.isEmpty()) {
            int node = open.poll();
            int row = node / columns;
            int column = node % columns;
            box[0] = Math.min(box[0], row);
            box[1] = Math.min(box[1], column);
            box[2] = Math.max(box[2], row);
            box[3] = Math.max(box[3], column);
            for (int r = Math.max(0, row - 1); r <= Math.min(frame.rows() - 1, row + 1); r++) {
                for (int c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
                    int beside = r * columns + c;
                    if (!seen[beside] && rough.rise(beside) > 0) {
                        seen[beside] = true;
                        open.add(beside);
                    }
                }
            }
        }
        return new int[] {Math.max(0, box[0] - MARGIN), Math.max(0, box[1] - MARGIN),
            Math.min(frame.rows() - 1, box[2] + MARGIN), Math.min(columns - 1, box[3] + MARGIN)};
    }

    /** Adds a box, joined with those it touches. */
    private static void join(List<int[]> boxes, int[] more) {
        int[] box = more;
        boolean joined = true;
        while (joined) {
            joined = false;
            for (int i = 0; i < boxes.size() && !joined; i++) {
                int[] other = boxes.get(i);
                if (other[0] <= box[2] && box[0] <= other[2] && other[1] <= box[3] && box[1] <= other[3]) {
                    box = new int[] {Math.min(box[0], other[0]), Math.min(box[1], other[1]),
                        Math.max(box[2], other[2]), Math.max(box[3], other[3])};
                    boxes.remove(i);
                    joined = true;
                }
            }
        }
        boxes.add(box);
    }
}
