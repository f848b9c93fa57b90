// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Svg;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Builds one self-contained page: no network, no scripts, pictures inside; all words are escaped.
 *
 * <p>Not shared between threads.
 */
public final class Html {
    /** Cells of more characters make their column wide. */
    private static final int LONG = 75;
    /** Columns with cells of more characters are written under their rows, over the whole width. */
    private static final int LINE_OF_ITS_OWN = 450;
    /** Drawings lower than this share of their width are printed two to a page. */
    private static final double WIDE = 0.65;
    /** Words of more characters are broken where their column ends; shorter ones never are. */
    private static final int ENDLESS = 34;
    /** Where the contents list goes. */
    private static final String CONTENTS = "<!-- contents -->\n";
    /** Tables with more columns than this are read row by row on a narrow screen. */
    private static final int BROAD = 3;
    private final StringBuilder body = new StringBuilder();
    private final List<Link> headings = new ArrayList<>();

    /**
     * A heading that can be linked to; those of level 2 stand in the contents list.
     *
     * @param level 1 to 4
     * @param id    where links lead
     * @param words its words
     * @return this
     */
    public Html heading(int level, String id, String words) {
        if (level == 2) {
            headings.add(new Link(id, words));
        }
        body.append("<h" + level + " id=\"" + Svg.escaped(id) + "\">" + Svg.escaped(words) + "</h" + level + ">\n");
        return this;
    }

    /**
     * What has to be decided: number, what it is about, what it means, what to do.
     *
     * @param rows four texts each
     * @return this page
     */
    public Html decisions(List<List<String>> rows) {
        body.append("<table class=\"decisions\"><tbody>\n");
        for (List<String> row : rows) {
            body.append("<tr><td class=\"which\"><b>").append(Svg.escaped(row.get(0))).append("</b> ")
                    .append(Svg.escaped(row.get(1)))
                    .append("</td><td>").append(Svg.escaped(row.get(2))).append(" <b>").append(Svg.escaped(row.get(3)))
                    .append("</b></td></tr>\n");
        }
        body.append("</tbody></table>\n");
        return this;
    }

    /**
     * A link to a file beside the page.
     *
     * @param file  its name
     * @param words what the link says
     * @return this page
     */
    public Html beside(String file, String words) {
        body.append("<p><a href=\"").append(Svg.escaped(file)).append("\">").append(Svg.escaped(words))
                .append("</a></p>\n");
        return this;
    }

    /**
     * A paragraph.
     *
     * @param words its words
     * @return this
     */
    public Html paragraph(String words) {
        body.append("<p>").append(Svg.escaped(words)).append("</p>\n");
        return this;
    }

    /**
     * A paragraph set apart.
     *
     * @param kind  style class: {@code caution}, {@code refuse}, {@code warn}, {@code good} or {@code small}
     * @param words its words
     * @return this
     */
    public Html note(String kind, String words) {
        body.append("<p class=\"").append(Svg.escaped(kind)).append("\">").append(Svg.escaped(words)).append("</p>\n");
        return this;
    }

    /**
     * A list with dots.
     *
     * @param items its items
     * @return this
     */
    public Html list(List<String> items) {
        if (!items.isEmpty()) {
            body.append("<ul>\n");
            items.forEach(item -> body.append("<li>").append(Svg.escaped(item)).append("</li>\n"));
            body.append("</ul>\n");
        }
        return this;
    }

    /**
     * The answer of a page: short questions, each with its answer in a line or two.
     *
     * @param lines question and answer of each
     * @return this
     */
    public Html answer(List<Link> lines) {
        body.append("<ol class=\"answer\">\n");
        lines.forEach(line -> body.append("<li><b>").append(Svg.escaped(line.id)).append("</b> ")
                .append(Svg.escaped(line.words)).append("</li>\n"));
        body.append("</ol>\n");
        return this;
    }

    /**
     * The list of all headings of level 2, also those that follow, with the number of their sheet in print.
     *
     * @return this
     */
    public Html contents() {
        body.append(CONTENTS);
        return this;
    }

    private String contentsList() {
        StringBuilder list = new StringBuilder("<div class=\"contents\"><b>Contents</b>\n<ol>\n");
        headings.forEach(link -> list.append("<li><a href=\"#").append(Svg.escaped(link.id)).append("\">")
                .append(Svg.escaped(link.words)).append("</a></li>\n"));
        return list.append("</ol></div>\n").toString();
    }

    /**
     * A link to a heading, or a question with its answer.
     *
     * @param id    the heading's id, or the question
     * @param words its words, or the answer
     */
    public record Link(String id, String words) {
    }

    /**
     * A table.
     *
     * @param whole the table; where it has no rows, a line says so
     * @return this
     */
    public Html table(Table whole) {
        Table table = whole.shown();
        boolean cards = table.columns().size() > BROAD && table.columns().stream()
                .filter(c -> c.kind() == Table.Kind.WORDS).count() > 1;
        body.append("<div class=\"table\"><table").append(kinds(table, cards)).append(">\n<caption>")
                .append(Svg.escaped(table.title()))
                .append(" <span class=\"file\">").append(Svg.escaped(table.name())).append(".csv</span></caption>\n")
                .append("<thead><tr>");
        int[] longest = IntStream.range(0, table.columns().size()).map(i -> table.rows().stream()
                .mapToInt(row -> row.get(i).length()).max().orElse(0)).toArray();
        for (int i = 0; i < longest.length; i++) {
            if (longest[i] <= LINE_OF_ITS_OWN) {
                body.append("<th").append(style(table.columns().get(i), longest[i], false)).append('>')
                        .append(Svg.escaped(table.columns().get(i).heading())).append("</th>");
            }
        }
        body.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            row(table, row, longest, cards);
        }
        body.append("</tbody></table></div>\n");
        return this;
    }

    /** Style classes of a table: read row by row on a narrow screen, and with room to sign. */
    private static String kinds(Table table, boolean cards) {
        boolean signed = table.columns().stream().anyMatch(c -> c.key().equals("signature"));
        String words = (cards ? "cards" : "") + (signed ? " signed" : "");
        return words.isEmpty() ? "" : " class=\"" + words.strip() + "\"";
    }

    private void row(Table table, List<String> row, int[] longest, boolean cards) {
        List<Integer> below = IntStream.range(0, longest.length)
                .filter(i -> longest[i] > LINE_OF_ITS_OWN && !row.get(i).isEmpty()).boxed().toList();
        body.append(below.isEmpty() ? "<tr>" : "<tr class=\"more-follows\">");
        for (int i = 0; i < longest.length; i++) {
            if (longest[i] <= LINE_OF_ITS_OWN) {
                body.append("<td").append(style(table.columns().get(i), longest[i], isEndless(row.get(i))))
                        .append(cards ? " data-label=\"" + Svg.escaped(table.columns().get(i).heading()) + "\"" : "")
                        .append('>').append(Svg.escaped(row.get(i))).append("</td>");
            }
        }
        body.append("</tr>\n");
        long span = IntStream.of(longest).filter(n -> n <= LINE_OF_ITS_OWN).count();
        for (int i : below) {
            body.append("<tr class=\"more\"><td colspan=\"").append(span).append("\"><i>")
                    .append(Svg.escaped(table.columns().get(i).heading())).append(":</i> ")
                    .append(Svg.escaped(row.get(i))).append("</td></tr>\n");
        }
    }

    /**
     * A drawing with words under it.
     *
     * @param drawing the drawing
     * @param words   the words, empty for none
     * @return this
     */
    public Html figure(Drawing drawing, String words) {
        boolean wide = drawing.size().y() < WIDE * drawing.size().x();
        body.append(wide ? "<figure class=\"wide\">\n" : "<figure>\n").append(drawing.svg())
                .append("<figcaption>").append(Svg.escaped(words))
                .append(words.isEmpty() ? "" : " ").append("<span class=\"file\">").append(Svg.escaped(drawing.name()))
                .append(".svg</span></figcaption>\n</figure>\n");
        return this;
    }

    /**
     * Opens a part of the page.
     *
     * @param kind style classes
     * @return this
     */
    public Html open(String kind) {
        body.append("<section class=\"").append(Svg.escaped(kind)).append("\">\n");
        return this;
    }

    /**
     * Closes the part opened last.
     *
     * @return this
     */
    public Html close() {
        body.append("</section>\n");
        return this;
    }

    /**
     * The whole page.
     *
     * @param frame title and what stands at head and foot
     * @return the text of the file, which is well-formed XML too
     */
    public String page(PageFrame frame) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
                + "<meta name=\"description\" content=\"" + Svg.escaped(frame.description()) + "\"/>\n"
                + "<meta http-equiv=\"Content-Security-Policy\""
                + " content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\"/>\n"
                + "<title>" + Svg.escaped(frame.title()) + "</title>\n<style>\n"
                + Styles.of(frame) + "</style>\n</head>\n<body>\n"
                + body.toString().replace(CONTENTS, contentsList())
                + "<div class=\"foot\">" + Svg.escaped(frame.foot()) + "</div>\n</body>\n</html>\n";
    }

    private static boolean isEndless(String words) {
        return Arrays.stream(words.split("\\s")).anyMatch(w -> w.length() > ENDLESS);
    }

    private static String style(Table.Column column, int longest, boolean isEndless) {
        String kind = column.kind() == Table.Kind.NUMBER ? "number" : longest > LONG ? "long" : longest == 0 ? "blank"
                : "";
        String all = (kind + (isEndless ? " endless" : "")).strip();
        return all.isEmpty() ? "" : " class=\"" + all + "\"";
    }
}
