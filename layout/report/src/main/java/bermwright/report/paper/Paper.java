// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import bermwright.report.paper.Mark.Align;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One sheet as it is drawn, back to front; for one thread. */
public final class Paper {
    private final double width;
    private final double height;
    private final List<Mark> marks = new ArrayList<>();

    /**
     * An empty sheet.
     *
     * @param width  its width (mm)
     * @param height its height (mm)
     */
    public Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /**
     * Its width.
     *
     * @return the width (mm)
     */
    public double width() {
        return width;
    }

    /**
     * Its height.
     *
     * @return the height (mm)
     */
    public double height() {
        return height;
    }

    /**
     * What is on it.
     *
     * @return the marks, the hindmost first
     */
    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    /**
     * Draws a line.
     *
     * @param pen    how
     * @param points its corners (mm)
     * @return this sheet
     */
    public Paper line(Pen pen, List<Dot> points) {
        return path(new Mark.Path(points, false, Optional.of(pen), Optional.empty(), ""));
    }

    /**
     * Draws a straight line.
     *
     * @param pen  how
     * @param from one end (mm)
     * @param to   the other (mm)
     * @return this sheet
     */
    public Paper line(Pen pen, Dot from, Dot to) {
        return line(pen, List.of(from, to));
    }

    /**
     * Draws an outline.
     *
     * @param pen    how
     * @param points its corners (mm)
     * @return this sheet
     */
    public Paper outline(Pen pen, List<Dot> points) {
        return path(new Mark.Path(points, true, Optional.of(pen), Optional.empty(), ""));
    }

    /**
     * Fills an outline.
     *
     * @param grey   0 black to 1 white (1)
     * @param points its corners (mm)
     * @return this sheet
     */
    public Paper fill(double grey, List<Dot> points) {
        return path(new Mark.Path(points, true, Optional.empty(), Optional.of(grey), ""));
    }

    /**
     * Draws a rectangle.
     *
     * @param pen   how
     * @param patch the rectangle
     * @return this sheet
     */
    public Paper box(Pen pen, Patch patch) {
        return outline(pen, patch.corners());
    }

    /**
     * Draws a path; one of fewer than two points is left out.
     *
     * @param path the path
     * @return this sheet
     */
    public Paper path(Mark.Path path) {
        if (path.points().size() > 1) {
            marks.add(path);
        }
        return this;
    }

    /**
     * Writes words to the right of a place, upright.
     *
     * @param at      where they begin on their foot line (mm)
     * @param words   the words; none where they are blank
     * @param capital height of a capital (mm)
     * @return this sheet
     */
    public Paper words(Dot at, String words, double capital) {
        return words(new Mark.Words(at, words, capital, 0, Align.LEFT));
    }

    /**
     * Writes words.
     *
     * @param words the words; none where they are blank
     * @return this sheet
     */
    public Paper words(Mark.Words words) {
        if (!words.words().isBlank()) {
            marks.add(words);
        }
        return this;
    }
}
