// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What is taken of a part of a sheet, so that no words come to stand on others; for one thread. */
public final class Occupied {
    private static final double CELL = 6;

    private final Patch frame;
    private final List<Patch> patches = new ArrayList<>();
    private final List<Dot[]> bars = new ArrayList<>();
    private final Map<Long, List<Dot[]>> lines = new HashMap<>();

    /**
     * An empty part of a sheet.
     *
     * @param frame the part, not turned
     */
    public Occupied(Patch frame) {
        this.frame = frame;
    }

    /**
     * Whether words may stand somewhere.
     *
     * @param patch the room they need
     * @return true where it is inside and nothing stands there
     */
    public boolean isFree(Patch patch) {
        return patch.isInside(frame) && patches.stream().noneMatch(patch::overlaps)
                && bars.stream().noneMatch(b -> patch.isCrossed(b[0], b[1]));
    }

    /**
     * Whether a leader may run somewhere.
     *
     * @param from one end (mm)
     * @param to   the other (mm)
     * @return true where it crosses no words
     */
    public boolean isOpen(Dot from, Dot to) {
        return patches.stream().noneMatch(p -> p.isCrossed(from, to));
    }

    /**
     * Notes a leader, which no words may stand on.
     *
     * @param from one end (mm)
     * @param to   the other (mm)
     */
    public void bar(Dot from, Dot to) {
        bars.add(new Dot[] {from, to});
    }

    /**
     * Takes room.
     *
     * @param patch the room
     */
    public void take(Patch patch) {
        patches.add(patch);
    }

    /**
     * Notes a line, which words rather keep off.
     *
     * @param points its corners (mm)
     */
    public void line(List<Dot> points) {
        for (int i = 0; i + 1 < points.size(); i++) {
            Dot a = points.get(i);
            Dot b = points.get(i + 1);
            int pieces = (int) Math.max(1, Math.ceil(Math.hypot(b.x() - a.x(), b.y() - a.y()) / CELL));
            for (int k = 0; k < pieces; k++) {
                Dot from = between(a, b, (double) k / pieces);
                Dot to = between(a, b, (k + 1.0) / pieces);
                lines.computeIfAbsent(cell((from.x() + to.x()) / 2, (from.y() + to.y()) / 2), n -> new ArrayList<>())
                        .add(new Dot[] {from, to});
            }
        }
    }

    private static Dot between(Dot a, Dot b, double share) {
        return new Dot(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
    }

    private static long cell(double x, double y) {
        return (long) Math.floor(x / CELL) << 32 ^ (long) Math.floor(y / CELL) & 0xFFFFFFFFL;
    }

    /**
     * How many pieces of lines run through a place.
     *
     * @param patch the room
     * @return their number (1)
     */
    public int crossings(Patch patch) {
        double reach = patch.halfWidth() + patch.halfHeight() + CELL;
        int found = 0;
        for (double x = patch.middle().x() - reach; x <= patch.middle().x() + reach + CELL; x += CELL) {
            for (double y = patch.middle().y() - reach; y <= patch.middle().y() + reach + CELL; y += CELL) {
                for (Dot[] line : lines.getOrDefault(cell(x, y), List.of())) {
                    found += patch.isCrossed(line[0], line[1]) ? 1 : 0;
                }
            }
        }
        return found;
    }
}
