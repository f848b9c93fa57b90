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
                .list(List.of(HOSTILE)).table(table(HOSTILE)).links(List.of(new Html.Link("a", HOSTILE))).close()
                .page(HOSTILE, HOSTILE);
        assertFalse(page.contains("<script"), page);
        assertFalse(page.contains("\u0007"));
        assertTrue(page.contains("&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt; &amp; &quot;q&quot;"));
        assertFalse(page.matches("(?s).*(src|href)=\"(?!#|data:)[^\"]*\".*"), "an address outside the page");
        assertTrue(page.contains("default-src 'none'"));
    }
}
