// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What clearance and lowering say of a part while the hand still holds it. */
final class Verdict {
    private Verdict() {
    }

    /**
     * The verdict of now; what was not looked for yet is never said to be in order.
     *
     * @param bench the workbench
     * @param part  the part
     * @return a line for the pointer
     */
    static String of(Workbench bench, Part part) {
        Answers answers = bench.answers();
        if (answers.ground().isEmpty()) {
            return "not checked: no ground is read";
        }
        List<Finding> now = bench.findings().stream().map(Numbered::finding)
                .filter(f -> !answers.isStale(bench.plan(), f))
                .filter(f -> Part.bySubject(bench.plan(), f.subject()).filter(part::equals).isPresent()
                        || f.parts().contains(part.id())).toList();
        long refused = now.stream().filter(f -> f.level() == Finding.Level.REFUSE).count();
        long warned = now.stream().filter(f -> f.level() == Finding.Level.WARN).count();
        boolean isLooked = answers.isClearanceFresh(bench.plan()) && answers.isLoweringFresh(bench.plan());
        Optional<Finding> worst = now.stream().min((a, b) -> a.level().compareTo(b.level()));
        String counts = refused > 0 ? "\u2716 " + refused + " refuse" + (warned > 0 ? ", " + warned + " warn" : "")
                : warned > 0 ? "\u26a0 " + warned + " warn"
                : isLooked ? "\u2714 clearance and lowering find nothing" : "clearance and lowering being looked at";
        return counts + worst.filter(f -> f.level() != Finding.Level.NOTE)
                .map(f -> ": " + f.rule().id().toLowerCase(Locale.ROOT).replace('-', ' ')).orElse("")
                + "; cover, dose and soil follow";
    }
}
