// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class TextTableTest {
    @Test
    void putsWordsLeftAndFiguresRight() {
        TextTable table = new TextTable("hull", "mass t").row("elm", TextTable.number(1234.5, 1))
                .row("oak", TextTable.number(Double.NaN, 1));
        assertEquals("  hull   mass t\n  ----  -------\n  elm   1,234.5\n  oak         -\n", table.toString());
    }

    @Test
    void writesNoMinusBeforeNothing() {
        assertEquals("0.0", TextTable.words(-0.04, 1));
        assertEquals("-0.1", TextTable.words(-0.06, 1));
    }
}
