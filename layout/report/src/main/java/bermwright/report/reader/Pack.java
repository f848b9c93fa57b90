// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.report.drawing.Drawing;
import bermwright.report.page.Html;
import bermwright.report.page.PageFrame;
import bermwright.report.page.Table;
import java.util.ArrayList;
import java.util.List;

/** A page as it grows, with the drawings and tables that go into files of their own; for one thread. */
public final class Pack {
    final Html page = new Html();
    private final List<Drawing> drawings = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final List<String> sheets = new ArrayList<>();
    private PageFrame frame = PageFrame.plain("", "");

    /**
     * Sets a drawing into the page and keeps it for its own file.
     *
     * @param drawing the drawing
     * @param words   words under it, empty for none
     * @return this
     */
    public Pack figure(Drawing drawing, String words) {
        page.figure(drawing, words);
        drawings.add(drawing);
        return this;
    }

    /**
     * Sets a table into the page and keeps it for its own file.
     *
     * @param table the table
     * @return this
     */
    public Pack table(Table table) {
        page.table(table);
        tables.add(table);
        return this;
    }

    /**
     * Keeps a table for its own file only.
     *
     * @param table the table
     * @return this
     */
    public Pack file(Table table) {
        tables.add(table);
        return this;
    }

    /** Opens a part that prints on an upright sheet of its own with words at its head. */
    Pack sheet(String words) {
        page.open("sheet sheet-" + sheets.size());
        sheets.add(words);
        return this;
    }

    /**
     * Sets title, head and foot.
     *
     * @param title       the page's title
     * @param description what the document is
     * @param head        words at the head of every printed sheet
     * @param foot        words at its foot
     * @return this
     */
    public Pack framed(String title, String description, String head, String foot) {
        frame = new PageFrame(title, description, head, foot, List.of());
        return this;
    }

    /**
     * The page as it stands.
     *
     * @return the page
     */
    public Html page() {
        return page;
    }

    /**
     * The text of the page.
     *
     * @return the whole page
     */
    public String text() {
        return page.page(new PageFrame(frame.title(), frame.description(), frame.head(), frame.foot(), sheets));
    }

    /**
     * The drawings in files of their own.
     *
     * @return the drawings so far
     */
    public List<Drawing> drawings() {
        return List.copyOf(drawings);
    }

    /**
     * The tables in files of their own.
     *
     * @return the tables so far
     */
    public List<Table> tables() {
        return List.copyOf(tables);
    }
}
