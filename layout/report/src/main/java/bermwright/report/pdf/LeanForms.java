// SPDX-License-Identifier: Apache-2.0
package bermwright.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Writes the places of drawings in a PDF to a hundredth of a pixel (3 micrometres on paper) instead of a ten
 * thousandth, which makes the file a good deal smaller.
 */
final class LeanForms {
    /** A line of a drawing's path: operands and what is done with them. */
    private static final Pattern PATH = Pattern.compile("(?m)^((?:-?[0-9.]+ )+)(m|l|c|v|y|re)$");
    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+\\.[0-9]{3,}");

    private LeanForms() {
    }

    /** Makes the drawings of a document lean. */
    static void of(PDDocument document) throws IOException {
        Set<COSStream> done = new HashSet<>();
        for (PDPage page : document.getPages()) {
            if (page.getResources() != null) {
                of(page.getResources(), done);
            }
        }
    }

    private static void of(PDResources resources, Set<COSStream> done) throws IOException {
        for (COSName name : resources.getXObjectNames()) {
            PDXObject object = resources.getXObject(name);
            if (object instanceof PDFormXObject form && done.add(form.getCOSObject())) {
                rewrite(form.getCOSObject());
                if (form.getResources() != null) {
                    of(form.getResources(), done);
                }
            }
        }
    }

    private static void rewrite(COSStream stream) throws IOException {
        String text;
        try (InputStream in = stream.createInputStream()) {
            text = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        }
        String lean = PATH.matcher(text).replaceAll(line -> Matcher.quoteReplacement(NUMBER.matcher(line.group(1))
                .replaceAll(number -> rounded(Double.parseDouble(number.group()))) + line.group(2)));
        try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(lean.getBytes(StandardCharsets.ISO_8859_1));
        }
    }

    private static String rounded(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "").replaceAll("^-0?$", "0");
    }
}
