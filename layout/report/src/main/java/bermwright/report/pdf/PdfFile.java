// SPDX-License-Identifier: Apache-2.0
package bermwright.report.pdf;

import bermwright.report.paper.PlainFont;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer.SvgScriptMode;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.zip.CRC32;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * A page as PDF 1.7: tagged for readers of screens, fonts embedded, nothing fetched from anywhere.
 *
 * <p>Dates and the document's id come from the page and the date given, so that the same page gives the same bytes.
 */
public final class PdfFile {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/DejaVuSansCondensed";
    private static final String FAMILY = "DejaVu Sans Condensed";
    private static final int REGULAR = 400;
    private static final int BOLD = 700;
    private static final float VERSION = 1.7f;
    private static final String COUNT = "/Size ";
    private static final double PIXEL_MM = 25.4 / 96;
    /** Room for a drawing on a sheet of A4 lying: across, down, and down where two stand on a sheet (mm). */
    private static final double WIDEST_MM = 270;
    private static final double SHEET_MM = 148;
    private static final double HALF_SHEET_MM = 76;
    /** Drawings lower than this share of their width stand two to a sheet. */
    private static final double FLAT = 0.65;
    /** Characters of a colour without its opacity. */
    private static final int SOLID = 7;
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    private PdfFile() {
    }

    /**
     * Writes a page.
     *
     * @param file    the file
     * @param page    the page: well-formed XML, styled for print
     * @param date    date of the document, which the file states as the day it was made
     * @param program name and version of the program, which the file states
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, String page, LocalDate date, String program) throws IOException {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder();
        font(builder, ".ttf", REGULAR, FontStyle.NORMAL);
        font(builder, "-Bold.ttf", BOLD, FontStyle.NORMAL);
        font(builder, "-Oblique.ttf", REGULAR, FontStyle.ITALIC);
        font(builder, "-BoldOblique.ttf", BOLD, FontStyle.ITALIC);
        builder.usePdfUaAccessibility(true);
        builder.usePdfVersion(VERSION);
        builder.useSVGDrawer(new BatikSVGDrawer(SvgScriptMode.SECURE, Set.of("data")));
        builder.withProducer(program);
        builder.useExternalResourceAccessControl((address, kind) -> address.startsWith("data:"),
                ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withW3cDocument(parsed(page), "");
        CRC32 sum = new CRC32();
        sum.update(page.getBytes(StandardCharsets.UTF_8));
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            dated(document, date);
            LeanForms.of(document);
            document.setDocumentId(sum.getValue());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            Files.write(file, counted(out.toByteArray()));
        }
    }

    /** PDFBox 3.0.3 counts one object too many where it packs objects into streams, and strict readers complain. */
    private static byte[] counted(byte[] file) {
        String text = new String(file, StandardCharsets.ISO_8859_1);
        int at = text.lastIndexOf(COUNT) + COUNT.length();
        int end = at;
        while (Character.isDigit(text.charAt(end))) {
            end++;
        }
        String fewer = String.valueOf(Integer.parseInt(text.substring(at, end)) - 1);
        byte[] mended = (fewer + " ".repeat(end - at - fewer.length())).getBytes(StandardCharsets.ISO_8859_1);
        System.arraycopy(mended, 0, file, at, mended.length);
        return file;
    }

    private static void font(PdfRendererBuilder builder, String ending, int weight, FontStyle style) {
        builder.useFont(() -> PlainFont.open(PdfFile.class, FONTS + ending), FAMILY, weight, style, true);
    }

    /** The page as a tree; pictures in drawings get the address and the words that the PDF writer looks for. */
    private static Document parsed(String page) {
        Document document;
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setFeature("http://xml.org/sax/features/external-parameter-entities", false);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new IllegalArgumentException("the page is not well-formed: " + e.getMessage(), e);
        }
        NodeList pictures = document.getElementsByTagName("image");
        for (int i = 0; i < pictures.getLength(); i++) {
            Element picture = (Element) pictures.item(i);
            picture.setAttributeNS(XLINK, "xlink:href", picture.getAttribute("href"));
        }
        NodeList drawings = document.getElementsByTagName("svg");
        for (int i = 0; i < drawings.getLength(); i++) {
            Element drawing = (Element) drawings.item(i);
            drawing.setAttribute("alt", drawing.getElementsByTagName("title").item(0).getTextContent());
            fit(drawing);
            plain(drawing);
        }
        return document;
    }

    /** Says in the words of SVG 1.1 what browsers understand in those of SVG 2: see-through colours, edged words. */
    private static void plain(Element drawing) {
        NodeList all = drawing.getElementsByTagName("*");
        List<Element> edged = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element element = (Element) all.item(i);
            String fill = element.getAttribute("fill");
            if (fill.matches("#[0-9a-fA-F]{8}")) {
                element.setAttribute("fill", fill.substring(0, SOLID));
                element.setAttribute("fill-opacity", String.format(Locale.ROOT, "%.2f",
                        Integer.parseInt(fill.substring(SOLID), 16) / 255.0));
            }
            if (element.getAttribute("paint-order").equals("stroke")) {
                edged.add(element);
            }
        }
        for (Element words : edged) {
            Element under = (Element) words.cloneNode(true);
            words.getParentNode().insertBefore(under, words);
            words.removeAttribute("stroke");
        }
    }

    /** Makes a drawing as large as its sheet allows, but not larger than it was drawn. */
    private static void fit(Element drawing) {
        double width = Double.parseDouble(drawing.getAttribute("width")) * PIXEL_MM;
        double height = Double.parseDouble(drawing.getAttribute("height")) * PIXEL_MM;
        double room = height < FLAT * width ? HALF_SHEET_MM : SHEET_MM;
        double scale = Math.min(1, Math.min(WIDEST_MM / width, room / height));
        drawing.setAttribute("style", String.format(Locale.ROOT, "width: %.2fmm; height: %.2fmm", scale * width,
                scale * height));
    }

    private static void dated(PDDocument document, LocalDate date) throws IOException {
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone(ZoneOffset.UTC), Locale.ROOT);
        day.setTimeInMillis(date.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        PDDocumentInformation about = document.getDocumentInformation();
        about.setCreationDate(day);
        about.setModificationDate(day);
        PDMetadata metadata = document.getDocumentCatalog().getMetadata();
        if (metadata != null) {
            try (InputStream words = metadata.exportXMPMetadata()) {
                String text = new String(words.readAllBytes(), StandardCharsets.UTF_8).replaceAll(
                        "(<xmp:(?:Create|Modify|Metadata)Date>)[^<]*", "$1" + date + "T00:00:00Z");
                metadata.importXMPMetadata(text.getBytes(StandardCharsets.UTF_8));
            }
        }
    }
}
