// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.AddItem;
import bermwright.editor.edit.NewPart;
import bermwright.editor.edit.Part;
import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Something new that is being drawn on the map with the tool in the hand; told places, not pixels.
 *
 * <p>A drag places it at once; clicks set corner after corner. While the hand moves, the plan with it is tried, so that
 * what is found against it shows before it is placed.
 */
public final class Drafting {
    private final Workbench bench;
    private final Snapping snapping;
    private final Signal changed = new Signal();
    private MapTool tool = MapTool.PICK;
    private List<Point> corners = List.of();
    private Optional<Point> end = Optional.empty();
    private Optional<Point> pressed = Optional.empty();
    private Optional<Point> lastClick = Optional.empty();
    private boolean isDone;
    private Optional<Snapping.Snapped> snapped = Optional.empty();

    /**
     * Drafting on a workbench.
     *
     * @param bench    the workbench
     * @param snapping what places snap to
     */
    public Drafting(Workbench bench, Snapping snapping) {
        this.bench = bench;
        this.snapping = snapping;
    }

    /**
     * Raised when the tool or what is drawn changed.
     *
     * @return the signal
     */
    public Signal changed() {
        return changed;
    }

    /**
     * The tool in the hand.
     *
     * @return the tool
     */
    public MapTool tool() {
        return tool;
    }

    /**
     * Takes a tool into the hand; what was being drawn is given up.
     *
     * @param other the tool
     */
    public void take(MapTool other) {
        bench.giveUp();
        clear();
        tool = other;
        changed.raise();
    }

    /**
     * Whether the hand draws and does not pick.
     *
     * @return true with any tool but the one that picks
     */
    public boolean isActive() {
        return tool != MapTool.PICK;
    }

    private void clear() {
        corners = List.of();
        end = Optional.empty();
        pressed = Optional.empty();
        isDone = false;
        snapped = Optional.empty();
    }

    /**
     * What is drawn so far, with the corner under the hand.
     *
     * @return the corners; none before the first press
     */
    public List<Point> outline() {
        List<Point> all = new ArrayList<>(corners);
        if (!isDone && !corners.isEmpty()) {
            if (tool.isRing() && corners.size() == 1 && pressed.isPresent() && end.isPresent()) {
                return rectangle(corners.get(0), end.get());
            }
            end.filter(e -> !isBackAtStart(e)).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    /** Whether a place is the first corner of a ring, which it ends on and does not have twice. */
    private boolean isBackAtStart(Point at) {
        return tool.isRing() && corners.get(0).equals(at);
    }

    /**
     * What the place under the hand snapped to.
     *
     * @return lines to be shown
     */
    public List<MapHands.SnapLine> guides() {
        return snapped.map(Snapping.Snapped::guides).orElse(List.of());
    }

    /**
     * The hand goes down.
     *
     * @param place where
     * @param feel  how the hand holds the map
     */
    public void press(Point place, MapHands.Feel feel) {
        if (isDone) {
            clear();
        }
        Point at = snap(place, feel);
        pressed = Optional.of(place);
        if (corners.isEmpty()) {
            corners = List.of(at);
        }
        end = Optional.of(at);
        tryOut();
        changed.raise();
    }

    /**
     * The hand moves, down or not.
     *
     * @param place where it is now
     * @param feel  how the hand holds the map
     */
    public void move(Point place, MapHands.Feel feel) {
        if (!isDone && !corners.isEmpty()) {
            end = Optional.of(snap(place, feel));
            tryOut();
            changed.raise();
        }
    }

    /**
     * The hand lets go: a drag ends what is drawn, a click sets a corner.
     *
     * @param place where
     * @param feel  how the hand holds the map
     */
    public void release(Point place, MapHands.Feel feel) {
        if (pressed.isEmpty() || isDone) {
            return;
        }
        boolean isDrag = pressed.get().distance(place) > feel.reach();
        Point at = snap(place, feel);
        end = Optional.of(at);
        boolean isFirst = corners.size() == 1;
        if (tool.shape().fewest() == 1 || isDrag && isFirst) {
            corners = outline();
            finish();
        } else if (lastClick.filter(l -> l.distance(place) <= feel.reach() / 2).isPresent()
                || tool.isRing() && corners.size() >= 3 && corners.get(0).distance(at) <= feel.reach()) {
            finish();
        } else {
            if (corners.get(corners.size() - 1).distance(at) > 0 && !isBackAtStart(at)) {
                List<Point> more = new ArrayList<>(corners);
                more.add(at);
                corners = List.copyOf(more);
            }
            lastClick = Optional.of(place);
            changed.raise();
        }
        pressed = Optional.empty();
    }

    /** Ends what is drawn where it has corners enough. */
    public void finish() {
        lastClick = Optional.empty();
        if (corners.size() < tool.shape().fewest()) {
            changed.raise();
            return;
        }
        end = Optional.empty();
        if (tool.isMeasure()) {
            isDone = true;
            changed.raise();
            return;
        }
        Optional<AddItem> edit = edit(corners);
        bench.giveUp();
        MapTool used = tool;
        clear();
        tool = MapTool.PICK;
        edit.ifPresent(e -> {
            if (bench.make(e)) {
                bench.pick(Optional.of(e.part()));
            } else {
                tool = used;
            }
        });
        changed.raise();
    }

    /** Takes the last corner back; with none left the tool is laid down. */
    public void back() {
        if (corners.isEmpty() || isDone) {
            take(MapTool.PICK);
        } else {
            bench.giveUp();
            corners = corners.subList(0, corners.size() - 1);
            lastClick = Optional.empty();
            isDone = false;
            changed.raise();
        }
    }

    private Point snap(Point place, MapHands.Feel feel) {
        if (tool.shape().fewest() == 1 && !corners.isEmpty()) {
            // A hull's way snaps to that of others; a pad's radius to nothing.
            Point from = corners.get(0);
            boolean isWay = tool == MapTool.HULL && !feel.isFree() && from.distance(place) > feel.reach();
            Optional<Azimuth> way = isWay ? snapping.way(bench.document().plan(), "", Azimuth.from(from, place))
                    : Optional.empty();
            snapped = way.map(w -> new Snapping.Snapped(from.moved(w, from.distance(place), 0), List.of()));
            return snapped.map(Snapping.Snapped::place).orElse(place);
        }
        Optional<Point> from = corners.isEmpty() || pressed.isPresent() && tool.isRing() && corners.size() == 1
                ? Optional.empty() : Optional.of(corners.get(corners.size() - 1));
        Optional<Point> before = corners.size() < 2 ? Optional.empty() : Optional.of(corners.get(corners.size() - 2));
        snapped = Optional.of(snapping.place(bench.document().plan(), place, feel, new Snapping.Run(before, from)));
        return snapped.get().place();
    }

    private void tryOut() {
        List<Point> now = outline();
        if (!tool.isMeasure() && now.size() >= tool.shape().fewest()) {
            edit(now).ifPresent(e -> {
                try {
                    bench.tryOut(e.words(), e.applied(bench.document().plan()));
                } catch (InputException notYet) {
                    // A ring that crosses itself on the way is no plan yet; what was tried before stays in sight.
                    changed.raise();
                }
            });
        }
    }

    private Optional<AddItem> edit(List<Point> now) {
        return tool.kind().flatMap(kind -> NewPart.drawn(bench.document().plan(), kind, now));
    }

    /** The part that is tried out. */
    private Optional<Part> part() {
        return tool.kind().map(kind -> new Part(kind, NewPart.freeId(bench.document().plan(), kind)));
    }

    private static List<Point> rectangle(Point one, Point other) {
        return List.of(one, new Point(other.east(), one.north()), other, new Point(one.east(), other.north()));
    }

    /**
     * Length, azimuth, place and what is found against it, as they are read at the pointer.
     *
     * @return the words; empty before anything is drawn
     */
    public Optional<String> readout() {
        List<Point> now = outline();
        if (now.isEmpty()) {
            return Optional.empty();
        }
        Measure measure = new Measure(now, bench.metres(), bench.answers().ground().map(g -> g.grid()));
        List<String> said = new ArrayList<>();
        switch (tool.shape()) {
            case WAY -> said.add(now.size() < 2 ? UnitWords.place(now.get(0)) : UnitWords.place(now.get(0))
                    + Readout.text("   azimuth %.1f\u00b0", NewPart.way(now).degrees()));
            case ROUND -> said.add(UnitWords.place(now.get(0))
                    + (now.size() < 2 ? "" : Readout.text("   radius %.1f m", measure.length())));
            case AREA -> said.add(measure.areaWords());
            default -> said.add(measure.lineWords());
        }
        part().ifPresent(p -> said.add(Verdict.of(bench, p)));
        return Optional.of(String.join("\n", said));
    }
}
