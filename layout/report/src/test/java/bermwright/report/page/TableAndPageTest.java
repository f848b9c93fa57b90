// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableAndPageTest {
    private static final String HOSTILE = "</td><script>alert('x')</script> & \"q\" \u0007";

    private static Table table(String words) {
        return new Table("hauls", "Hauls", List.of(Table.Column.words("from", "from"),
                Table.Column.number("bank_m3", "bank (m³)")), List.of(List.of(words, "-1.5")));
    }

    @Test
    void filesHoldOneNumberACellAlsoWherePagesShowMore() {
        Table table = new Table("t", "T", List.of(Table.Column.words("model_percent", "model"),
                Table.Column.words("lift_tops_m", "tops"), Table.Column.words("valid_for", "valid for"),
                Table.Column.number("factor", "factor")), List.of(
                List.of("-49 to +99", "0.5 1.0 1.5", "1 to 2 m", "-1"), List.of("0 to 3", "0.5", "-x", "2.5")));
        assertEquals("model_low_percent,model_high_percent,lift_tops_1_m,lift_tops_2_m,lift_tops_3_m,valid_for,factor"
                + "\r\n-49,99,0.5,1.0,1.5,1 to 2 m,-1\r\n0,3,0.5,,,'-x,2.5\r\n", table.csv());
    }

    @Test
    void cellsWithCommasQuotesAndLineBreaksAreQuoted() {
        assertEquals("from,bank_m3\r\n\"a,\"\"b\"\"\nc\",-1.5\r\n", table("a,\"b\"\nc").csv());
    }

    @Test
    void wordsASpreadsheetWouldRunAreDisarmedAndNumbersAreNot() {
        for (String formula : List.of("=1+1", "+1", "-1", "@x")) {
            assertEquals("from,bank_m3\r\n'" + formula + ",-1.5\r\n", table(formula).csv());
        }
    }

    @Test
    void rowsMustFitTheColumns() {
        IllegalArgumentException thrown = assertThrows(IllegalArgumentException.class, () -> new Table("t", "t",
                List.of(Table.Column.words("a", "a")), List.of(List.of("1", "2"))));
        assertEquals("2 cells for 1 columns.", thrown.getMessage());
    }

    @Test
    void aPageEscapesAllWordsAndAsksForNothingFromTheNetwork() {
        String page = new Html().open("first").heading(1, HOSTILE, HOSTILE).paragraph(HOSTILE).note("caution", HOSTILE)
                .list(List.of(HOSTILE)).table(table(HOSTILE)).answer(List.of(new Html.Link(HOSTILE, HOSTILE))).close()
                .page(new PageFrame(HOSTILE, HOSTILE, HOSTILE, HOSTILE, List.of(HOSTILE)));
        assertFalse(page.contains("<script"), page);
        assertFalse(page.contains("\u0007"));
        assertTrue(page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;q&quot;"));
        assertFalse(page.matches("(?s).*(src|href)=\"(?!#|data:)[^\"]*\".*"), "an address outside the page");
        assertTrue(page.contains("default-src 'none'"));
    }

    @Test
    void aVeryLongCellStandsUnderItsRowOverTheWholeWidth() {
        Table table = new Table("means", "Means", List.of(Table.Column.words("means", "means"),
                Table.Column.number("load_kN", "load (kN)"), Table.Column.words("against", "against it")),
                List.of(List.of("lines", "58.3", "word ".repeat(200)), List.of("thrusters", "40.0", "")));
        String page = new Html().table(table).page(PageFrame.plain("t", "f"));
        assertFalse(page.contains("<th>against it</th>"));
        assertTrue(page.contains("<tr class=\"more\"><td colspan=\"2\"><i>against it:</i> word word"));
        assertEquals(1, page.split("class=\"more\"", -1).length - 1, "an empty cell makes no line");
        assertTrue(table.csv().startsWith("means,load_kN,against\r\n"), "the file keeps its columns");
    }

    @Test
    void theFootOfPrintedPagesCannotLeaveItsString() {
        String page = new Html().page(PageFrame.plain("t", "a\"; } </style> \\ é µ"));
        assertTrue(page.contains("content: \"a\\22 ; \\7d  \\3c /style\\3e  \\5c  é µ\""), page);
        assertEquals(1, page.split("</style>", -1).length - 1);
    }
}
