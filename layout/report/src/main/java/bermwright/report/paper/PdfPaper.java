// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.util.Matrix;

/** Sheets as a PDF of lines and lettering, the typeface embedded, a page for each; the same sheets, the same bytes. */
public final class PdfPaper {
    private static final double POINTS = 72 / 25.4;

    private final PDPageContentStream out;
    private final PDFont font;
    private final double height;

    private PdfPaper(PDPageContentStream out, PDFont font, double height) {
        this.out = out;
        this.font = font;
        this.height = height;
    }

    /**
     * The sheets as a file.
     *
     * @param sheets the sheets
     * @param title  title of the document
     * @return its bytes
     * @throws IOException if the typeface cannot be read
     */
    public static byte[] of(List<Paper> sheets, String title) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(1 << 18);
        try (PDDocument document = new PDDocument(); InputStream face = Lettering.open()) {
            // What would be made from the clock is made from the title.
            document.setDocumentId((long) title.hashCode());
            document.getDocumentInformation().setTitle(title);
            document.getDocumentInformation().setProducer("Bermwright");
            PDFont font = PDType0Font.load(document, face, true);
            for (Paper sheet : sheets) {
                PDPage page = new PDPage(new PDRectangle((float) (sheet.width() * POINTS),
                        (float) (sheet.height() * POINTS)));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    new PdfPaper(content, font, sheet.height()).draw(sheet);
                }
            }
            document.save(bytes, CompressParameters.NO_COMPRESSION);
        }
        return bytes.toByteArray();
    }

    private void draw(Paper sheet) throws IOException {
        out.setLineJoinStyle(1);
        for (Mark mark : sheet.marks()) {
            if (mark instanceof Mark.Path path) {
                path(path);
            } else if (mark instanceof Mark.Words words) {
                words(words);
            } else {
                throw new AssertionError(mark);
            }
        }
    }

    private static float points(double millimetres) {
        return (float) (millimetres * POINTS);
    }

    private void path(Mark.Path path) throws IOException {
        if (path.fill().isPresent()) {
            float grey = path.fill().get().floatValue();
            out.setNonStrokingColor(grey);
        }
        if (path.pen().isPresent()) {
            Pen pen = path.pen().get();
            out.setLineWidth(points(pen.width()));
            out.setStrokingColor((float) pen.grey());
            float[] dash = new float[pen.dash().size()];
            for (int i = 0; i < dash.length; i++) {
                dash[i] = points(pen.dash().get(i));
            }
            out.setLineDashPattern(dash, 0);
        }
        List<Dot> points = path.points();
        out.moveTo(points(points.get(0).x()), points(height - points.get(0).y()));
        for (Dot p : points.subList(1, points.size())) {
            out.lineTo(points(p.x()), points(height - p.y()));
        }
        if (path.closed()) {
            out.closePath();
        }
        if (path.fill().isPresent() && path.pen().isPresent()) {
            out.fillAndStroke();
        } else if (path.fill().isPresent()) {
            out.fill();
        } else {
            out.stroke();
        }
    }

    private void words(Mark.Words words) throws IOException {
        double shift = Lettering.width(words.words(), words.capital())
                * (words.align() == Mark.Align.LEFT ? 0 : words.align() == Mark.Align.MIDDLE ? 0.5 : 1);
        double cos = Math.cos(words.turn());
        double sin = Math.sin(words.turn());
        out.beginText();
        out.setNonStrokingColor(0f);
        out.setFont(font, points(Lettering.size(words.capital())));
        out.setTextMatrix(new Matrix((float) cos, (float) sin, (float) -sin, (float) cos,
                points(words.at().x() - shift * cos), points(height - words.at().y() - shift * sin)));
        out.showText(Lettering.shown(words.words()));
        out.endText();
    }
}
