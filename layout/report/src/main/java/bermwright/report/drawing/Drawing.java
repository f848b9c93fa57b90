// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import bermwright.foundation.Require;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * A finished picture.
 *
 * @param name    file-safe name, unique among the drawings of a report
 * @param title   title for people
 * @param size    width and height (px)
 * @param figures what is on it, the undermost first
 */
public record Drawing(String name, String title, Dot size, List<Figure> figures) {
    /** Copies the list. */
    public Drawing {
        figures = List.copyOf(figures);
    }

    /**
     * A file-safe name from any text.
     *
     * @param kind what the drawing shows, already safe
     * @param id   any text, such as a hull's id
     * @return letters, digits, - and _ only; texts that would fall together are told apart by a number made from them
     */
    public static String name(String kind, String id) {
        String safe = id.replaceAll("[^A-Za-z0-9_-]", "_");
        String cut = safe.length() > 40 ? safe.substring(0, 40) : safe;
        return kind + "-" + (cut.equals(id) ? id : cut + "-" + Integer.toHexString(id.hashCode()));
    }

    /**
     * The picture as an SVG element, for a page.
     *
     * @return the element
     */
    public String svg() {
        return SvgText.of(this);
    }

    /**
     * The picture as the text of a file of its own.
     *
     * @return XML with its declaration
     */
    public String file() {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg();
    }

    /**
     * Writes the picture to a file of its own, replacing what is there.
     *
     * @param directory where to
     * @return the file written, named after the drawing
     * @throws IOException if it cannot be written
     */
    public Path write(Path directory) throws IOException {
        return Files.writeString(directory.resolve(name + ".svg"), file());
    }

    /**
     * A number for people: {@code digits} figures, no exponent, no needless zeros.
     *
     * @param value  the value, in any unit
     * @param digits significant figures (1), 1 to 9
     * @return the text; "not known" for what is not a number
     */
    public static String figure(double value, int digits) {
        Require.within("significant figures", digits, 1, 9, "1");
        if (Double.isNaN(value)) {
            return "not known";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "without end" : "minus without end";
        }
        if (value == 0) {
            return "0";
        }
        int places = digits - 1 - (int) Math.floor(Math.log10(Math.abs(value)));
        String text = String.format(Locale.ROOT, "%." + Math.max(0, Math.min(places, 9)) + "f", value);
        if (text.contains(".")) {
            text = text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }
        return "-0".equals(text) ? "0" : text;
    }
}
