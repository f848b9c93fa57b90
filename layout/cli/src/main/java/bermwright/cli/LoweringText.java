// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.PartCheck;
import bermwright.lowering.sequence.TiltState;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.plan.LoweringGear;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;

/** How each hull comes to lie, for people. */
final class LoweringText {
    private static final double STEP_DEG = 5;

    private LoweringText() {
    }

    static void summary(Assessment assessment, PrintStream out) {
        CommonText.heading("Lowering", out);
        TextTable table = new TextTable("hull", "by", "slope along deg", "slope across deg", "balance tilt deg",
                "hand-over tilt deg", "pull-over kN", "line tension kN", "at tilt deg", "governing part");
        for (HullAssessment hull : assessment.hulls()) {
            Optional<LoweringResult> result = hull.laydown().flatMap(l -> l.lowering());
            String by = hull.hull().lowering().map(LoweringGear::means).map(LoweringGear.Means::word)
                    .orElse(hull.hull().arrival().word());
            table.row(hull.hull().id(), by,
                    degrees(hull.lying().map(p -> p.slopeAlong()).orElse(Double.NaN)),
                    degrees(hull.lying().map(p -> p.slopeAcross()).orElse(Double.NaN)),
                    degrees(result.map(LoweringResult::balanceTilt).orElse(Double.NaN)),
                    degrees(result.map(LoweringResult::handOverTilt).orElse(Double.NaN)),
                    kilonewtons(result.map(LoweringResult::greatestPullOver).orElse(Double.NaN)),
                    kilonewtons(result.map(LoweringResult::greatestLineTension).orElse(Double.NaN)),
                    degrees(result.map(LoweringResult::atTilt).orElse(Double.NaN)),
                    result.map(LoweringResult::governingPart).orElse("-"));
        }
        out.println(table);
    }

    static void tilts(Assessment assessment, PrintStream out) {
        for (HullAssessment hull : assessment.hulls()) {
            hull.laydown().flatMap(l -> l.lowering()).ifPresent(result -> {
                CommonText.heading("Lowering of " + hull.hull().id() + ", tilt by tilt", out);
                tilts(result, out);
                CommonText.wrapped(("Hull lying: full moment balance %s kN for all lines together, hand balance"
                        + " %s kN. %s").formatted(TextTable.words(InUnits.kilonewtons(result.balances().full()), 1),
                                TextTable.words(InUnits.kilonewtons(result.balances().hand()).orElse(Double.NaN), 1),
                                result.balances().words()), 2, out);
                out.println();
                checks(result, out);
                holds(result, out);
            });
        }
    }

    private static void tilts(LoweringResult result, PrintStream out) {
        TextTable table = new TextTable("tilt deg", "all lines kN", "one line kN", "hand balance kN", "pull-over kN",
                "pivot up kN", "pivot along kN", "one pole kN");
        List<TiltState> states = result.tilts();
        double next = 0;
        for (int i = 0; i < states.size(); i++) {
            TiltState state = states.get(i);
            double tilt = InUnits.degrees(state.tilt());
            if (tilt >= next - 1e-9 || i == states.size() - 1) {
                table.row(degrees(state.tilt()), kilonewtons(state.lineTotal()), kilonewtons(state.lineEach()),
                        TextTable.number(InUnits.kilonewtons(state.handBalance()), 1), kilonewtons(state.pullOver()),
                        kilonewtons(state.pivotUp()), kilonewtons(state.pivotAlong()), kilonewtons(state.poleEach()));
                next = (Math.floor(tilt / STEP_DEG + 1e-9) + 1) * STEP_DEG;
            }
        }
        out.println(table);
    }

    private static void checks(LoweringResult result, PrintStream out) {
        TextTable table = new TextTable("part", "asked", "bears", "unit", "factor", "wanted", "at tilt deg", "");
        for (PartCheck check : result.checks()) {
            table.row(check.part(), figure(check.demand(), check), figure(check.capacity(), check), unit(check),
                    TextTable.number(check.factor(), 2), TextTable.number(check.required(), 2), degrees(check.tilt()),
                    check.holds() ? "" : "TOO WEAK");
        }
        out.println(table);
    }

    private static TextTable.Cell figure(double value, PartCheck check) {
        return check.unit().equals("N") ? kilonewtons(value) : new TextTable.Cell(CommonText.shortNumber(value));
    }

    private static String unit(PartCheck check) {
        return check.unit().equals("N") ? "kN" : check.unit();
    }

    private static void holds(LoweringResult result, PrintStream out) {
        out.println("  Stop and check at");
        result.holdPoints().forEach(hold -> CommonText.wrapped("%s deg: %s".formatted(
                TextTable.words(InUnits.degrees(hold.tilt()), 1), hold.check()), 4, out));
        out.println();
    }

    private static TextTable.Cell degrees(double radians) {
        return TextTable.number(InUnits.degrees(radians), 1);
    }

    private static TextTable.Cell kilonewtons(double newtons) {
        return TextTable.number(InUnits.kilonewtons(newtons), 1);
    }
}
