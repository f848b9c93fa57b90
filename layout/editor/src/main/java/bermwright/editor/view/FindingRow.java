// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FindingBoard;
import bermwright.finding.Numbered;
import java.util.Optional;

/**
 * A row of the list of findings: a heading over several, or a finding.
 *
 * @param key     what tells it apart, the same after an edit
 * @param group   the group it is the heading of
 * @param finding the finding
 * @param isInner whether it stands under a heading that says what it is about
 */
record FindingRow(String key, Optional<FindingBoard.Group> group, Optional<Numbered> finding, boolean isInner) {
    static final FindingRow ROOT = new FindingRow("", Optional.empty(), Optional.empty(), false);

    static FindingRow of(FindingBoard.Group group) {
        return new FindingRow("group " + group.key(), Optional.of(group), Optional.empty(), false);
    }

    static FindingRow of(Numbered finding, boolean isInner) {
        return new FindingRow("finding " + finding.finding().id(), Optional.empty(), Optional.of(finding), isInner);
    }
}
