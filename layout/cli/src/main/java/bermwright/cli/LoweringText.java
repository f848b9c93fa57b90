// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.PartCheck;
import bermwright.lowering.sequence.TiltState;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.plan.LoweringGear;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** How each hull comes to lie, for people. */
final class LoweringText {
    private static final double STEP_DEG = 5;

    private LoweringText() {
    }

    static void summary(Assessment assessment, PrintStream out) {
        CommonText.heading("Lowering", out);
        TextTable table = new TextTable("hull", "by", "slope along deg", "slope across deg", "balance tilt deg",
                "hand-over tilt deg", "pull-over kN", "line tension or thrust kN", "at tilt deg", "governing part");
        for (HullAssessment hull : assessment.hulls()) {
            table.row(hull.hull().id(), means(hull),
                    degrees(hull.lying().map(p -> p.slopeAlong()).orElse(Double.NaN)),
                    degrees(hull.lying().map(p -> p.slopeAcross()).orElse(Double.NaN)),
                    degrees(figure(hull, LoweringResult::balanceTilt, ThrusterResult::balanceTilt)),
                    degrees(figure(hull, LoweringResult::handOverTilt, t -> Double.NaN)),
                    kilonewtons(figure(hull, LoweringResult::greatestPullOver, ThrusterResult::greatestPush)),
                    kilonewtons(figure(hull, LoweringResult::greatestLineTension, ThrusterResult::greatestBrake)),
                    degrees(figure(hull, LoweringResult::atTilt, ThrusterResult::atTilt)),
                    byThrusters(hull) ? "thrust" : hull.laydown().flatMap(l -> l.lowering())
                            .map(LoweringResult::governingPart).orElse("-"));
        }
        out.println(table);
    }

    private static String means(HullAssessment hull) {
        return hull.hull().lowering().map(LoweringGear::means).map(LoweringGear.Means::word)
                .orElse(hull.hull().arrival().word());
    }

    private static boolean byThrusters(HullAssessment hull) {
        return hull.hull().lowering().map(LoweringGear::means)
                .filter(m -> m == LoweringGear.Means.SIDE_THRUSTERS).isPresent();
    }

    /** A figure of the means that the plan names. */
    private static double figure(HullAssessment hull, ToDoubleFunction<LoweringResult> ofLines,
            ToDoubleFunction<ThrusterResult> ofThrusters) {
        return byThrusters(hull)
                ? hull.laydown().flatMap(l -> l.thrusters()).map(ofThrusters::applyAsDouble).orElse(Double.NaN)
                : hull.laydown().flatMap(l -> l.lowering()).map(ofLines::applyAsDouble).orElse(Double.NaN);
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
        List<TiltState> shown = new ArrayList<>();
        List<TiltState> states = result.tilts();
        double next = 0;
        for (int i = 0; i < states.size(); i++) {
            TiltState state = states.get(i);
            double tilt = InUnits.degrees(state.tilt());
            if (tilt >= next - 1e-9 || i == states.size() - 1) {
                shown.add(state);
                next = (Math.floor(tilt / STEP_DEG + 1e-9) + 1) * STEP_DEG;
            }
        }
        out.println(TextTable.of(Answers.TILTS, shown));
    }

    private static void checks(LoweringResult result, PrintStream out) {
        TextTable table = new TextTable("part", "load", "demand", "capacity", "unit", "factor of safety", "required",
                "at tilt deg", "");
        for (PartCheck check : result.checks()) {
            table.row(check.part(), check.load(), figure(check.demand(), check), figure(check.capacity(), check),
                    unit(check),
                    TextTable.number(check.factor(), 2), TextTable.number(check.required(), 2), degrees(check.tilt()),
                    check.holds() ? "" : "TOO WEAK");
        }
        out.println(table);
        result.checks().forEach(check -> result.soil(check).ifPresent(soil -> CommonText.wrapped(
                "Soil: %s, factor %s; %s.".formatted(check.part(), TextTable.words(check.factor(), 2), soil.words()), 2,
                out)));
        out.println();
    }

    private static TextTable.Cell figure(double value, PartCheck check) {
        return check.unit().equals("N") ? kilonewtons(value) : new TextTable.Cell(Finding.Figures.number(value));
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
