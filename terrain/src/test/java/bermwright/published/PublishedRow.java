// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Map;

/** One row of a published table, with the work it is from; every comparison is written to the list of checks. */
public final class PublishedRow {
    private final Map<String, String> head;
    private final Map<String, String> cells;
    private final String label;
    private boolean read;
    private String test = "";

    PublishedRow(Map<String, String> head, Map<String, String> cells, String label) {
        this.head = head;
        this.cells = cells;
        this.label = label;
    }

    /** The cell's text; fails where the table has no such column. */
    public String text(String column) {
        read = true;
        String cell = cells.get(column);
        assertTrue(cell != null, () -> "no column " + column + " in " + cells.keySet());
        return cell;
    }

    /** The cell's number. */
    public double number(String column) {
        return Double.parseDouble(text(column));
    }

    /** Whether the cell holds something. */
    public boolean has(String column) {
        return cells.containsKey(column) && !cells.get(column).isBlank();
    }

    /** Asserts that our answer is within a tolerance, in the column's unit, of the printed cell. */
    public void assertNear(String column, double ours, double tolerance) {
        double printed = number(column);
        boolean inside = Math.abs(ours - printed) <= tolerance;
        PublishedRecord.write(test, new PublishedRecord.Line(head.getOrDefault("work", ""),
                head.getOrDefault("place", "") + ", " + label + ", " + column, printed, ours,
                head.getOrDefault("units", ""), tolerance, "true".equals(head.get("remembered")), inside));
        assertTrue(inside, () -> String.format(Locale.ROOT, "%s, %s: %s prints %s; ours is %s, allowed +-%.6g",
                head.get("work"), label, column, printed, ours, tolerance));
    }

    /** Asserts that our answer is within a share (1) of the printed cell. */
    public void assertShare(String column, double ours, double share) {
        assertNear(column, ours, Math.abs(number(column)) * share);
    }

    boolean wasRead() {
        return read;
    }

    void belongsTo(String testName) {
        test = testName;
    }

    @Override
    public String toString() {
        return label;
    }
}
