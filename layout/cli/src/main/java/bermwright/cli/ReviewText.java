// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.lowering.thrust.ThrustState;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LoweringWords;
import java.io.PrintStream;

/** A laying down under review, for people. */
final class ReviewText {
    private static final int EVERY = 10;

    private ReviewText() {
    }

    static void show(Assessment assessment, PrintStream out) {
        assessment.hulls().forEach(hull -> hull.laydown().ifPresent(laydown -> show(laydown, out)));
    }

    private static void show(Laydown laydown, PrintStream out) {
        LoweringWords words = LoweringChoices.words(laydown);
        if (laydown.review().isEmpty() && laydown.thrusters().isEmpty() && laydown.landing().isEmpty()) {
            return;
        }
        CommonText.heading("How " + laydown.hull() + " comes to lie", out);
        words.sequence().forEach(line -> CommonText.wrapped(line, 2, out));
        words.motion().forEach(line -> CommonText.wrapped(line, 2, out));
        out.println();
        laydown.review().ifPresent(r -> motion(r, out));
        laydown.review().flatMap(Review::cross).filter(c -> c.sideForce() > 0).ifPresent(c -> cross(c, out));
        laydown.disc().ifPresent(d -> DiscJson.show(d, out));
        laydown.review().ifPresent(r -> losses(r, out));
        laydown.thrusters().ifPresent(t -> thrusters(t, out));
    }

    private static void motion(Review review, PrintStream out) {
        TextTable table = new TextTable("tilt deg", "winch stops dead x", "one line then kN", "0.1 m slack kN",
                "brakes fail m/s", "MJ");
        for (MotionState s : review.motion().states()) {
            if (Math.round(InUnits.degrees(s.tilt())) % EVERY == 0) {
                table.row(TextTable.number(InUnits.degrees(s.tilt()), 1), TextTable.number(s.stopFactor(), 2),
                        kilonewtons(s.stopEach()), kilonewtons(s.snatchEach()),
                        TextTable.number(s.runAwaySpeed(), 1),
                        TextTable.number(InUnits.megajoules(s.runAwayEnergy()), 2));
            }
        }
        out.println(table);
    }

    private static void cross(CrossSlope cross, PrintStream out) {
        TextTable table = new TextTable("tilt deg", "lower line kN", "upper line kN", "lower shoe kN", "upper shoe kN",
                "pivot across kN", "side line kN", "kept in its plane by");
        for (CrossState c : cross.every(EVERY)) {
            table.row(TextTable.number(InUnits.degrees(c.tilt()), 1), kilonewtons(c.lower()), kilonewtons(c.upper()),
                    kilonewtons(c.pivot().lowerShoe()), kilonewtons(c.pivot().upperShoe()),
                    kilonewtons(c.pivot().side()), kilonewtons(c.sideLine()), c.held().word());
        }
        CommonText.wrapped("Held still on the cross slope; below hand-over the pull-over line stands as both lines, and"
                + " a rim as the lower shoe:", 2, out);
        out.println(table);
    }

    /** For each thing that may be lost, the tilt at which it is worst. */
    private static void losses(Review review, PrintStream out) {
        TextTable table = new TextTable("one thing lost", "worst at deg", "then", "what");
        review.worstLosses().forEach(l -> table.row(l.lost(), TextTable.number(InUnits.degrees(l.tilt()), 1),
                l.outcome().word(), l.words()));
        out.println(table);
    }

    private static void thrusters(ThrusterResult result, PrintStream out) {
        TextTable table = new TextTable("tilt deg", "thrust kN", "pivot up kN", "pivot along kN");
        for (ThrustState s : result.states()) {
            if (Math.round(InUnits.degrees(s.tilt())) % EVERY == 0) {
                table.row(TextTable.number(InUnits.degrees(s.tilt()), 1), kilonewtons(s.thrust()),
                        kilonewtons(s.pivotUp()), kilonewtons(s.pivotAlong()));
            }
        }
        out.println(table);
    }

    private static TextTable.Cell kilonewtons(double newtons) {
        return TextTable.number(InUnits.kilonewtons(newtons), 1);
    }
}
