// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding;
import java.util.List;

/** What the program says to the shell when it ends. */
enum ExitCode {
    /** Done, and nothing refuses the plan. */
    DONE,
    /** Done, and at least one finding refuses the plan. */
    REFUSED,
    /** The input cannot be read; nothing was written. */
    BAD_INPUT,
    /** Ours. */
    OURS;

    int number() {
        return ordinal();
    }

    static ExitCode of(List<Finding> findings) {
        return findings.stream().anyMatch(f -> f.level() == Finding.Level.REFUSE) ? REFUSED : DONE;
    }
}
