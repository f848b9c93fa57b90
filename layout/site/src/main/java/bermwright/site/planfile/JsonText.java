// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;

/** Writes JSON for version control: two-space indent, one key a line, lists of plain values on one line. */
final class JsonText {
    private JsonText() {
    }

    /** A number without a needless point or exponent. */
    static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        double size = Math.abs(value);
        return size >= 1e-6 && size < 1e15 ? new BigDecimal(Double.toString(value)).toPlainString()
                : Double.toString(value);
    }

    static String quoted(String text) {
        return '"' + new String(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
    }

    /** On several lines, with a line end at the end. */
    static String pretty(Json value) {
        StringBuilder out = new StringBuilder();
        write(value, out, 0);
        return out.append('\n').toString();
    }

    /** On one line. */
    static String compact(Json value) {
        StringBuilder out = new StringBuilder();
        writeCompact(value, out);
        return out.toString();
    }

    private static void write(Json value, StringBuilder out, int depth) {
        if (value instanceof Json.Fields fields && !fields.members().isEmpty()) {
            String indent = "  ".repeat(depth + 1);
            String mark = "{\n";
            for (Map.Entry<String, Json> member : fields.members().entrySet()) {
                out.append(mark).append(indent).append(quoted(member.getKey())).append(": ");
                write(member.getValue(), out, depth + 1);
                mark = ",\n";
            }
            out.append('\n').append("  ".repeat(depth)).append('}');
        } else if (value instanceof Json.Items items && !items.items().stream().allMatch(Json.Leaf.class::isInstance)) {
            String indent = "  ".repeat(depth + 1);
            String mark = "[\n";
            for (Json item : items.items()) {
                out.append(mark).append(indent);
                write(item, out, depth + 1);
                mark = ",\n";
            }
            out.append('\n').append("  ".repeat(depth)).append(']');
        } else {
            writeCompact(value, out);
        }
    }

    private static void writeCompact(Json value, StringBuilder out) {
        if (value instanceof Json.Fields fields) {
            String mark = "{";
            for (Map.Entry<String, Json> member : fields.members().entrySet()) {
                out.append(mark).append(quoted(member.getKey())).append(": ");
                writeCompact(member.getValue(), out);
                mark = ", ";
            }
            out.append(fields.members().isEmpty() ? "{}" : "}");
        } else if (value instanceof Json.Items items) {
            List<Json> all = items.items();
            out.append('[');
            for (int i = 0; i < all.size(); i++) {
                out.append(i == 0 ? "" : ", ");
                writeCompact(all.get(i), out);
            }
            out.append(']');
        } else if (value instanceof Json.Leaf leaf) {
            out.append(leaf.kind() == Json.Kind.TEXT ? quoted(leaf.text()) : leaf.text());
        } else {
            throw new AssertionError("a kind of JSON value nobody wrote for: " + value);
        }
    }
}
