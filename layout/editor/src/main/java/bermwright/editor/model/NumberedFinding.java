// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A finding under the number it has in list and map.
 *
 * @param number  its number (1), from 1
 * @param finding the finding
 */
public record NumberedFinding(int number, Finding finding) {
    /**
     * Numbers findings, the worst first; findings of one level keep their order.
     *
     * @param findings the findings
     * @return the numbered findings
     */
    public static List<NumberedFinding> of(List<Finding> findings) {
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(Comparator.comparing(Finding::level));
        List<NumberedFinding> numbered = new ArrayList<>();
        for (Finding finding : sorted) {
            numbered.add(new NumberedFinding(numbered.size() + 1, finding));
        }
        return List.copyOf(numbered);
    }
}
