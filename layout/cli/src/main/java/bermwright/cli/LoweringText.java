// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.plan.LoweringGear;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
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
            double tilt = InUnits.degrees(state.tilt());
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
        TextTable table = new TextTable("part", "governing load case", "demand", "capacity", "unit",
                "factor of safety", "required", "at tilt deg", "verdict");
        for (ChainRow row : result.chain().governing()) {
            table.row(row.part().words(), row.loadWords(), figure(row.demandShown()), figure(row.capacityShown()),
                    row.unitShown(), TextTable.number(row.factor(), 2),
                    TextTable.number(row.required(), 2), degrees(row.tilt()), row.verdict().word());
        }
        out.println(table);
        result.chain().governing().forEach(row -> result.chain().soil(row).ifPresent(soil -> CommonText.wrapped(
                "Soil: %s, factor %s; %s.".formatted(row.part().words(),
                        TextTable.words(row.factor().orElse(Double.NaN), 2), soil.words()), 2, out)));
        out.println();
    }

    private static TextTable.Cell figure(OptionalDouble value) {
        return value.isPresent() ? TextTable.number(value.getAsDouble(), 1) : new TextTable.Cell("-");
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
