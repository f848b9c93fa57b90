// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import bermwright.lowering.statics.HandOver;
import bermwright.lowering.statics.LoweringCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The sequence and its hold points in plain words. */
final class SequenceWords {
    private final LoweringCase setup;
    private final HandOver band;
    private final double rest;

    SequenceWords(LoweringCase setup, HandOver band) {
        this.setup = setup;
        this.band = band;
        this.rest = setup.tipping().restTilt();
    }

    List<HoldPoint> holdPoints() {
        List<HoldPoint> points = new ArrayList<>();
        points.add(new HoldPoint(0, "ground surveyed, centre of mass and lugs certified, anchors proof-loaded to 1.25"
                + " times their pull, poles plumb and stayed, sweep clear of people"));
        points.add(new HoldPoint(0, "pivot held along the ground both ways, lines pre-tensioned, pay-out set to zero"));
        if (band.from() > 0) {
            points.add(new HoldPoint(band.from(), "lowering lines taut before balance can come"));
        }
        if (band.balance() > 0) {
            points.add(new HoldPoint(band.balance(), "balance by the stated centre of mass: pull-over goes slack,"
                    + " lowering lines take over"));
        }
        points.add(new HoldPoint(band.to(), "hand-over ended: pull-over slack, lowering lines alone hold; compare"
                + " their tension with the table"));
        for (int deg = 15; deg < 90; deg += 15) {
            double tilt = Math.toRadians(deg);
            if (tilt > band.to()) {
                points.add(new HoldPoint(tilt, "tension, slip of the base, roll and azimuth against the table"));
            }
        }
        points.add(new HoldPoint(Math.toRadians(80), "slow down for contact"));
        points.add(new HoldPoint(rest, "contact: share of load, chocks on both sides before any line is slacked"));
        points.sort((a, b) -> Double.compare(a.tilt(), b.tilt()));
        return points;
    }

    List<String> sequence() {
        List<String> steps = new ArrayList<>();
        steps.add("Clear the sweep and set winches, poles, stays and anchors; proof-load each anchor.");
        if (band.balance() > 0) {
            steps.add(text("Pull the hull over from standing to its balance at %.1f deg with the pull-over line.",
                    deg(band.balance())));
            steps.add(text("From %.1f deg on keep the lowering lines taut, for balance may come early.",
                    deg(band.from())));
        }
        steps.add(text("At %.1f deg the lowering lines alone hold; let the pull-over line go slack.",
                deg(band.to())));
        steps.add(text("Pay out at %.2f deg a minute with all lines alike, stopping at each hold point.",
                deg(setup.rate()) * 60));
        steps.add(text("The tension rises to its greatest near the end; slow down from 80 deg and land at %.1f deg.",
                deg(rest)));
        steps.add("Chock both sides, then slack the lines, unload and lock out the rigging, and survey the pose.");
        return steps;
    }

    private static double deg(double angle) {
        return Math.toDegrees(angle);
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
