// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.site.answer.Answers;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

/** How each hull comes to lie, for people. */
final class LoweringText {
    private static final double STEP_DEG = 5;

    private LoweringText() {
    }

    static void summary(Assessment assessment, PrintStream out) {
        CommonText.heading("Lowering", out);
        out.println(TextTable.of(LoweringAnswers.SUMMARY, assessment.hulls()));
    }

    static void tilts(Assessment assessment, PrintStream out) {
        for (HullAssessment hull : assessment.hulls()) {
            hull.laydown().flatMap(l -> l.lowering()).ifPresent(result -> {
                CommonText.heading("Lowering of " + hull.hull().id() + ", tilt by tilt", out);
                tilts(result, out);
                CommonText.wrapped(("Hull lying: full moment balance %s kN for all lines together, hand balance"
                        + " %s kN. %s").formatted(TextTable.words(Unit.KN.of(result.balances().full()), 1),
                                TextTable.words(Unit.KN.of(result.balances().hand().orElse(Double.NaN)), 1),
                                result.balances().words()), 2, out);
                out.println();
                chain(result, out);
                holds(result, out);
            });
        }
    }

    private static void tilts(LoweringResult result, PrintStream out) {
        List<TiltState> shown = new ArrayList<>();
        List<TiltState> states = result.tilts();
        double next = 0;
        for (int i = 0; i < states.size(); i++) {
            TiltState state = states.get(i);
            double tilt = Unit.DEG.of(state.tilt());
            if (tilt >= next - 1e-9 || i == states.size() - 1) {
                shown.add(state);
                next = (Math.floor(tilt / STEP_DEG + 1e-9) + 1) * STEP_DEG;
            }
        }
        out.println(TextTable.of(Answers.TILTS, shown));
    }

    private static void chain(LoweringResult result, PrintStream out) {
        CommonText.wrapped("Each part in the load path with the load case that governs it, least margin first; --json"
                + " has every load case.", 2, out);
        out.println(TextTable.of(LoweringAnswers.CHAIN, LoweringAnswers.InChain.of(result.chain(),
                result.chain().governing())));
        result.chain().governing().forEach(row -> result.chain().soil(row).ifPresent(soil -> CommonText.wrapped(
                "Soil: %s, factor %s; %s.".formatted(row.part().words(),
                        TextTable.words(row.factor().orElse(Double.NaN), 2), soil.words()), 2, out)));
        out.println();
    }

    private static void holds(LoweringResult result, PrintStream out) {
        out.println("  Stop and check at");
        result.holdPoints().forEach(hold -> CommonText.wrapped("%s deg: %s".formatted(
                TextTable.words(Unit.DEG.of(hold.tilt()), 1), hold.check()), 4, out));
        out.println();
    }
}
