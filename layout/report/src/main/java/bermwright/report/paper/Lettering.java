// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The typeface of sheets: how wide words are, and what of them it can show. */
public final class Lettering {
    /** Least height of a capital on a sheet (mm): what can still be read on a copy. */
    public static final double LEAST = 2.0;
    /** Height of capitals in headings (mm). */
    public static final double HEADING = 3.5;
    /** Names that programs know the typeface by, and others of the same widths. */
    static final String FAMILY = "Liberation Sans, Arial, Helvetica, sans-serif";
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final Lettering FACE = read();

    private final CmapLookup glyphs;
    private final double[] widths;
    private final double capital;

    private Lettering(TrueTypeFont font) throws IOException {
        this.glyphs = font.getUnicodeCmapLookup();
        this.widths = new double[font.getNumberOfGlyphs()];
        double em = font.getUnitsPerEm();
        for (int i = 0; i < widths.length; i++) {
            widths[i] = font.getAdvanceWidth(i) / em;
        }
        this.capital = font.getOS2Windows().getCapHeight() / em;
    }

    private static Lettering read() {
        try (InputStream in = open(); TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            return new Lettering(font);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface " + FILE + " of PDFBox cannot be read", e);
        }
    }

    static InputStream open() {
        return PlainFont.open(PDFont.class, FILE);
    }

    /**
     * The size that programs ask for.
     *
     * @param capitals height of a capital letter (mm)
     * @return the size of the type (mm)
     */
    static double size(double capitals) {
        return capitals / FACE.capital;
    }

    /**
     * How wide words are.
     *
     * @param words    the words
     * @param capitals height of a capital letter (mm)
     * @return their width (mm)
     */
    public static double width(String words, double capitals) {
        return shown(words).codePoints().mapToDouble(c -> FACE.widths[FACE.glyphs.getGlyphId(c)]).sum()
                * size(capitals);
    }

    /**
     * Words as the typeface can show them: a sign that it lacks as U+ and its number, controls as a blank.
     *
     * @param words the words
     * @return the same with nothing that would be an empty box
     */
    public static String shown(String words) {
        StringBuilder all = new StringBuilder();
        words.codePoints().forEach(c -> {
            if (c < ' ' || c == 0x7F) {
                all.append(' ');
            } else if (FACE.glyphs.getGlyphId(c) == 0) {
                all.append(String.format(Locale.ROOT, "U+%04X", c));
            } else {
                all.appendCodePoint(c);
            }
        });
        return all.toString();
    }

    /**
     * Words cut to a width.
     *
     * @param words    the words
     * @param capitals height of a capital letter (mm)
     * @param widest   width they may take (mm)
     * @return the words, or their beginning and an ellipsis
     */
    public static String cut(String words, double capitals, double widest) {
        if (width(words, capitals) <= widest) {
            return words;
        }
        int end = words.length();
        while (end > 0 && width(words.substring(0, end) + "\u2026", capitals) > widest) {
            end = words.offsetByCodePoints(end, -1);
        }
        return words.substring(0, end).stripTrailing() + "\u2026";
    }

    /**
     * Words on as many lines as they need.
     *
     * @param words    the words
     * @param capitals height of a capital letter (mm)
     * @param widest   width of a line (mm)
     * @return the lines; a word that is too wide for one is cut
     */
    public static List<String> wrapped(String words, double capitals, double widest) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer, capitals) > widest) {
                lines.add(line);
                longer = word;
            }
            line = cut(longer, capitals, widest);
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
