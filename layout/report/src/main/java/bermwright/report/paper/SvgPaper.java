// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.List;
import java.util.Locale;

/** A sheet as SVG, in millimetres: what is one millimetre on paper is one in the file. */
public final class SvgPaper {
    private SvgPaper() {
    }

    /**
     * The sheet as text.
     *
     * @param paper the sheet
     * @param title its title
     * @return the SVG document
     */
    public static String of(Paper paper, String title) {
        StringBuilder out = new StringBuilder(1 << 16);
        String width = number(paper.width());
        String height = number(paper.height());
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(width).append("mm\" height=\"").append(height).append("mm\" viewBox=\"0 0 ").append(width)
                .append(' ').append(height).append("\" font-family=\"").append(Lettering.FAMILY)
                .append("\" stroke-linejoin=\"round\">\n<title>").append(marked(title))
                .append("</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        List<Mark> marks = paper.marks();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i) instanceof Mark.Path path) {
                int next = i + 1;
                while (next < marks.size() && marks.get(next) instanceof Mark.Path other && isOne(path, other)) {
                    next++;
                }
                path(path, marks.subList(i, next), out);
                i = next - 1;
            } else if (marks.get(i) instanceof Mark.Words words) {
                words(words, out);
            } else {
                throw new AssertionError(marks.get(i));
            }
        }
        return out.append("</svg>\n").toString();
    }

    /** Whether two lines may stand in one element: without a name or a filling, of one pen. */
    private static boolean isOne(Mark.Path path, Mark.Path other) {
        return path.name().isEmpty() && other.name().isEmpty() && path.fill().isEmpty() && other.fill().isEmpty()
                && path.pen().equals(other.pen());
    }

    /** An element for lines of one looks. */
    private static void path(Mark.Path path, List<Mark> lines, StringBuilder out) {
        out.append("<path");
        if (!path.name().isEmpty()) {
            out.append(" class=\"").append(marked(path.name())).append('"');
        }
        out.append(" d=\"");
        for (Mark line : lines) {
            outline((Mark.Path) line, out);
        }
        out.append("\" fill=\"").append(path.fill().map(SvgPaper::grey).orElse("none")).append('"');
        path.pen().ifPresent(pen -> {
            out.append(" stroke=\"").append(grey(pen.grey())).append("\" stroke-width=\"").append(number(pen.width()))
                    .append('"');
            if (!pen.dash().isEmpty()) {
                out.append(" stroke-dasharray=\"");
                pen.dash().forEach(d -> out.append(number(d)).append(' '));
                out.setCharAt(out.length() - 1, '"');
            }
        });
        out.append("/>\n");
    }

    private static void outline(Mark.Path path, StringBuilder out) {
        char command = 'M';
        for (Dot p : path.points()) {
            out.append(command).append(number(p.x())).append(' ').append(number(p.y()));
            command = 'L';
        }
        out.append(path.closed() ? "Z" : "");
    }

    private static void words(Mark.Words words, StringBuilder out) {
        String shown = Lettering.shown(words.words());
        String x = number(words.at().x());
        String y = number(words.at().y());
        out.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\" font-size=\"")
                .append(number(Lettering.size(words.capital()))).append("\" textLength=\"")
                .append(number(Lettering.width(words.words(), words.capital()))).append('"');
        if (words.align() != Mark.Align.LEFT) {
            out.append(" text-anchor=\"").append(words.align() == Mark.Align.RIGHT ? "end" : "middle").append('"');
        }
        if (words.turn() != 0) {
            out.append(" transform=\"rotate(").append(number(-Math.toDegrees(words.turn()))).append(' ').append(x)
                    .append(' ').append(y).append(")\"");
        }
        out.append('>').append(marked(shown)).append("</text>\n");
    }

    private static String grey(double grey) {
        int part = (int) Math.round(255 * grey);
        return String.format(Locale.ROOT, "#%02x%02x%02x", part, part, part);
    }

    /** A number to a thousandth of a millimetre. */
    static String number(double value) {
        long thousandths = Math.round(value * 1000);
        String sign = thousandths < 0 ? "-" : "";
        long size = Math.abs(thousandths);
        String rest = String.format(Locale.ROOT, "%03d", size % 1000).replaceAll("0+$", "");
        return sign + size / 1000 + (rest.isEmpty() ? "" : "." + rest);
    }

    private static String marked(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
