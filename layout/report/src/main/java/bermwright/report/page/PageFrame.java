// SPDX-License-Identifier: Apache-2.0
package bermwright.report.page;

import java.util.List;

/**
 * What stands around a page: its title, the running head and foot of every printed sheet.
 *
 * @param title       its title
 * @param description what the document is, in a sentence, for programs that list documents
 * @param head        words at the head of every printed sheet; empty for none
 * @param foot        words at the end of the page and at the foot of every printed sheet
 * @param sheets      parts that print on sheets of their own, with words of their own at the head: the part with the
 *                    style class {@code sheet-0} has the first, and so on
 */
public record PageFrame(String title, String description, String head, String foot, List<String> sheets) {
    /** Copies the sheets. */
    public PageFrame {
        sheets = List.copyOf(sheets);
    }

    /**
     * A page without running head and sheets of its own.
     *
     * @param title its title
     * @param foot  words at the end
     * @return the frame
     */
    public static PageFrame plain(String title, String foot) {
        return new PageFrame(title, title, "", foot, List.of());
    }
}
