// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds room for words on a drawing so that they cover neither each other nor what must stay seen.
 *
 * <p>Not shared between threads. Where there is no free room the place with the least overlap is taken: a label is
 * never left out.
 */
public final class Labels {
    private static final double SIZE = 12;
    private static final int STEPS = 24;
    /** Rings of tries around a place. */
    private static final int RINGS = 14;
    private final Dot corner;
    private final Dot far;
    private final List<Box> taken = new ArrayList<>();

    /**
     * Room inside a rectangle.
     *
     * @param corner upper left corner (px)
     * @param far    lower right corner (px)
     */
    public Labels(Dot corner, Dot far) {
        this.corner = corner;
        this.far = far;
    }

    /** A rectangle on the paper. */
    private record Box(double left, double top, double right, double bottom) {
        double overlap(Box other) {
            double across = Math.min(right, other.right) - Math.max(left, other.left);
            double up = Math.min(bottom, other.bottom) - Math.max(top, other.top);
            return across > 0 && up > 0 ? across * up : 0;
        }
    }

    /**
     * Keeps words off a curve.
     *
     * @param dots the curve's points (px)
     */
    public void avoid(List<Dot> dots) {
        for (int i = 0; i < dots.size(); i++) {
            Dot a = dots.get(i);
            Dot b = dots.get(Math.min(i + 1, dots.size() - 1));
            int parts = (int) Math.min(200, 1 + Math.hypot(b.x() - a.x(), b.y() - a.y()) / 6);
            for (int part = 0; part < parts; part++) {
                double x = a.x() + (b.x() - a.x()) * part / parts;
                double y = a.y() + (b.y() - a.y()) * part / parts;
                taken.add(new Box(x - 2, y - 2, x + 2, y + 2));
            }
        }
    }

    /**
     * Keeps words off a rectangle.
     *
     * @param upperLeft  its upper left corner (px)
     * @param lowerRight its lower right corner (px)
     */
    public void avoid(Dot upperLeft, Dot lowerRight) {
        taken.add(new Box(upperLeft.x(), upperLeft.y(), lowerRight.x(), lowerRight.y()));
    }

    /**
     * Whether a rectangle lies wholly on the drawing.
     *
     * @param upperLeft  its upper left corner (px)
     * @param lowerRight its lower right corner (px)
     * @return true where it does
     */
    public boolean holds(Dot upperLeft, Dot lowerRight) {
        return outside(new Box(upperLeft.x(), upperLeft.y(), lowerRight.x(), lowerRight.y())) == 0;
    }

    /**
     * Whether a rectangle is free.
     *
     * @param upperLeft  its upper left corner (px)
     * @param lowerRight its lower right corner (px)
     * @return true where nothing taken lies in it
     */
    public boolean isFree(Dot upperLeft, Dot lowerRight) {
        Box box = new Box(upperLeft.x(), upperLeft.y(), lowerRight.x(), lowerRight.y());
        return taken.stream().allMatch(other -> other.overlap(box) == 0);
    }

    /**
     * Sets words just above or below a level line, where they cover least.
     *
     * @param svg   the picture
     * @param y     the line (px)
     * @param words the words
     */
    public void alongRow(Svg svg, double y, String words) {
        double width = Svg.width(words, SIZE);
        List<Box> tries = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double left = corner.x() + 4 + (far.x() - corner.x() - width - 8) * i / STEPS;
            tries.add(new Box(left, y - SIZE - 5, left + width, y - 3));
            tries.add(new Box(left, y + 3, left + width, y + SIZE + 5));
        }
        write(svg, least(tries), words);
    }

    /**
     * Sets words beside an upright line, where they cover least.
     *
     * @param svg   the picture
     * @param x     the line (px)
     * @param words the words
     */
    public void alongColumn(Svg svg, double x, String words) {
        double width = Svg.width(words, SIZE);
        List<Box> tries = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double top = corner.y() + 4 + (far.y() - corner.y() - SIZE - 10) * i / STEPS;
            tries.add(new Box(x + 5, top, x + 5 + width, top + SIZE + 2));
            tries.add(new Box(x - 5 - width, top, x - 5, top + SIZE + 2));
        }
        write(svg, least(tries), words);
    }

    /**
     * Finds room near a place for something of a given size; the room is then taken.
     *
     * @param place the place (px)
     * @param size  width and height (px)
     * @param gap   least distance from the place to the room (px)
     * @return the middle of the room (px)
     */
    public Dot near(Dot place, Dot size, double gap) {
        List<Box> tries = new ArrayList<>();
        for (int ring = 0; ring < RINGS; ring++) {
            for (int turn = 0; turn < 12; turn++) {
                double angle = Math.PI * turn / 6;
                double x = place.x() + Math.cos(angle) * (gap + ring * 14 + size.x() / 2);
                double y = place.y() - Math.sin(angle) * (gap + ring * 14 + size.y() / 2);
                tries.add(new Box(x - size.x() / 2, y - size.y() / 2, x + size.x() / 2, y + size.y() / 2));
            }
        }
        Box room = least(tries);
        taken.add(room);
        return new Dot((room.left + room.right) / 2, (room.top + room.bottom) / 2);
    }

    private void write(Svg svg, Box room, String words) {
        taken.add(room);
        svg.text(new Dot(room.left, room.bottom - 3), words, "stroke", "#ffffff", "stroke-width", "3", "paint-order",
                "stroke", "stroke-linejoin", "round");
    }

    private Box least(List<Box> tries) {
        Box best = tries.get(0);
        double leastOverlap = Double.POSITIVE_INFINITY;
        for (Box box : tries) {
            double overlap = taken.stream().mapToDouble(box::overlap).sum() + outside(box);
            if (overlap < leastOverlap) {
                leastOverlap = overlap;
                best = box;
            }
            if (overlap == 0) {
                break;
            }
        }
        return best;
    }

    private double outside(Box box) {
        double beyond = Math.max(0, corner.x() - box.left) + Math.max(0, box.right - far.x())
                + Math.max(0, corner.y() - box.top) + Math.max(0, box.bottom - far.y());
        return beyond * 1000;
    }
}
