// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Svg;
import java.util.List;

/**
 * Builds one self-contained page: no network, no scripts, pictures inside; all words are escaped.
 *
 * <p>Not shared between threads.
 */
public final class Html {
    private final StringBuilder body = new StringBuilder();

    /**
     * A heading that can be linked to.
     *
     * @param level 1 to 4
     * @param id    where links lead
     * @param words its words
     * @return this
     */
    public Html heading(int level, String id, String words) {
        body.append("<h%d id=\"%s\">%s</h%d>\n".formatted(level, Svg.escaped(id), Svg.escaped(words), level));
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
     * Links to headings, in a row.
     *
     * @param links id and words of each
     * @return this
     */
    public Html links(List<Link> links) {
        body.append("<nav>");
        links.forEach(link -> body.append("<a href=\"#").append(Svg.escaped(link.id)).append("\">")
                .append(Svg.escaped(link.words)).append("</a> "));
        body.append("</nav>\n");
        return this;
    }

    /**
     * A link to a heading.
     *
     * @param id    the heading's id
     * @param words its words
     */
    public record Link(String id, String words) {
    }

    /**
     * A table.
     *
     * @param table the table; where it has no rows, a line says so
     * @return this
     */
    public Html table(Table table) {
        body.append("<div class=\"table\"><table>\n<caption>").append(Svg.escaped(table.title()))
                .append(" <span class=\"file\">").append(Svg.escaped(table.name())).append(".csv</span></caption>\n")
                .append("<thead><tr>");
        table.columns().forEach(c -> body.append("<th").append(kind(c.kind())).append('>')
                .append(Svg.escaped(c.heading())).append("</th>"));
        body.append("</tr></thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            body.append("<tr>");
            for (int i = 0; i < row.size(); i++) {
                body.append("<td").append(kind(table.columns().get(i).kind())).append('>')
                        .append(Svg.escaped(row.get(i))).append("</td>");
            }
            body.append("</tr>\n");
        }
        body.append("</tbody></table></div>\n");
        return this;
    }

    /**
     * A drawing with words under it.
     *
     * @param drawing the drawing
     * @param words   the words, empty for none
     * @return this
     */
    public Html figure(Drawing drawing, String words) {
        body.append("<figure>\n").append(drawing.svg()).append("<figcaption>").append(Svg.escaped(words))
                .append(words.isEmpty() ? "" : " ").append("<span class=\"file\">").append(Svg.escaped(drawing.name()))
                .append(".svg</span></figcaption>\n</figure>\n");
        return this;
    }

    /**
     * Opens a part of the page for one reader.
     *
     * @param kind style class
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
     * @param title  its title
     * @param footer words at the foot of the screen page and of every printed page
     * @return the text of the file
     */
    public String page(String title, String footer) {
        return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\""
                + " content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">\n"
                + "<title>" + Svg.escaped(title) + "</title>\n<style>\n" + Styles.TEXT + "</style>\n</head>\n<body>\n"
                + body + "<footer>" + Svg.escaped(footer) + "</footer>\n</body>\n</html>\n";
    }

    private static String kind(Table.Kind kind) {
        return kind == Table.Kind.NUMBER ? " class=\"number\"" : "";
    }
}
