// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.lowering.body.TippingBody;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.motion.Topple;
import bermwright.lowering.rig.LoweringLines;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.sequence.TiltState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** One thing lost at a time, at every fifth degree. */
final class Losses {
    private final LoweringCase what;
    private final LoweringResult result;
    private final List<Loss> losses = new ArrayList<>();

    Losses(LoweringCase what, LoweringResult result) {
        this.what = what;
        this.result = result;
    }

    List<Loss> all() {
        for (TiltState s : result.tilts()) {
            if (!Reviews.onStep(s.tilt())) {
                continue;
            }
            if (s.tilt() < result.balanceTilt()) {
                pullOver(s);
            } else if (s.lineTotal() > 0) {
                line("a lowering line", s);
                line("a lowering winch or its anchor", s);
                if (what.rig().poles().isPresent()) {
                    line("a pole", s);
                    stay(s);
                }
                power(s);
                pivotHold(s);
            }
        }
        return losses;
    }

    /** The line is gone: the others take its share, overshooting by what they gain. */
    private void line(String lost, TiltState s) {
        LoweringLines lines = what.rig().lines();
        int left = lines.count() - 1;
        if (left < 1) {
            falls(lost, s, "nothing else holds the hull: it runs away and comes down");
            return;
        }
        double each = s.lineEach() * lines.count() / left;
        double peak = 2 * each - s.lineEach();
        double yaw = lines.halfSpread() * s.lineTotal() * Math.cos(s.lineAngle());
        String rest = text("the other takes %.0f kN after a jolt of %.0f kN, and %.0f kN m turn the base", each / 1000,
                peak / 1000, yaw / 1000);
        if (lines.line().breakingLoad().isEmpty()) {
            losses.add(new Loss(lost, s.tilt(), Loss.Outcome.NOT_KNOWN, peak, 0, 0, rest + "; it is not rated"));
            return;
        }
        double breaking = lines.line().breakingLoad().getAsDouble();
        double rating = lines.winch().rating().orElse(Double.MAX_VALUE);
        if (peak <= breaking && each <= rating) {
            losses.add(new Loss(lost, s.tilt(), Loss.Outcome.HOLDS, peak, breaking, 0, rest));
            return;
        }
        boolean breaks = peak > breaking;
        double speed = runAway(s);
        losses.add(new Loss(lost, s.tilt(), Loss.Outcome.FALLS, breaks ? peak : each, breaks ? breaking : rating, speed,
                rest + text(", more than the capacity of its %s: the hull comes down at %.1f m/s",
                        breaks ? "line" : "winch", speed)));
    }

    private void stay(TiltState s) {
        int sets = what.rig().stays().size();
        if (sets == 0 || !(s.head().stay() > 0)) {
            return;
        }
        if (sets == 1) {
            line("a stay or its anchor (its pole falls)", s);
            return;
        }
        double each = s.head().stay() * sets / (sets - 1);
        double peak = 2 * each - s.head().stay();
        OptionalDouble bears = what.rig().stays().get(0).breakingLoad();
        Loss.Outcome outcome = bears.isEmpty() ? Loss.Outcome.NOT_KNOWN
                : peak <= bears.getAsDouble() ? Loss.Outcome.HOLDS : Loss.Outcome.FALLS;
        losses.add(new Loss("a stay or its anchor", s.tilt(), outcome, peak, bears.orElse(0),
                outcome == Loss.Outcome.FALLS ? runAway(s) : 0,
                text("the other stays of the pole take %.0f kN", peak / 1000)));
    }

    private void power(TiltState s) {
        Optional<HeldBody> held = Reviews.held(what);
        OptionalDouble breaking = what.rig().lines().line().breakingLoad();
        if (held.isEmpty() || breaking.isEmpty()) {
            losses.add(new Loss("power (brakes close)", s.tilt(), Loss.Outcome.NOT_KNOWN, 0, 0, 0,
                    "the brakes close and the lines take a jolt that cannot be worked out without their ratings"));
            return;
        }
        double peak = s.lineEach() * Shock.emergencyStop(held.get(), s.tilt(), what.rate()).factor();
        boolean holds = peak <= breaking.getAsDouble();
        losses.add(new Loss("power (brakes close)", s.tilt(), holds ? Loss.Outcome.HOLDS : Loss.Outcome.FALLS, peak,
                breaking.getAsDouble(), holds ? 0 : runAway(s),
                text("each line is jolted to %.0f kN", peak / 1000)));
    }

    private void pivotHold(TiltState s) {
        if (what.rig().pivotHold().isEmpty()) {
            return;
        }
        double friction = what.tipping().ground().friction() * s.pivotUp();
        boolean holds = Math.abs(s.pivotAlong()) <= friction;
        losses.add(new Loss("the hold at the pivot", s.tilt(), holds ? Loss.Outcome.HOLDS : Loss.Outcome.SLIDES,
                Math.abs(s.pivotAlong()), friction, 0, holds ? "friction alone holds the base"
                : text("friction holds %.0f of %.0f kN: the base slides", friction / 1000,
                        Math.abs(s.pivotAlong()) / 1000)));
    }

    private void pullOver(TiltState s) {
        TippingBody tipping = what.tipping();
        double rise = tipping.fall(s.tilt(), 0);
        double rate = Math.sqrt(Math.max(0, 2 * tipping.weight() * rise / tipping.inertiaAboutPivot()));
        double speed = rate * (tipping.pivotAhead() + tipping.body().outline().radius());
        losses.add(new Loss("the pull-over line, its winch or anchor", s.tilt(), Loss.Outcome.ROCKS_BACK, 0, 0, speed,
                text("the hull rocks back to standing, its back edge at %.2f m/s", speed)));
    }

    private void falls(String lost, TiltState s, String words) {
        double speed = runAway(s);
        losses.add(new Loss(lost, s.tilt(), Loss.Outcome.FALLS, 0, 0, speed,
                words + text(" at %.1f m/s", speed)));
    }

    private double runAway(TiltState s) {
        return Topple.rate(what.tipping(), s.tilt(), what.rate(), what.tipping().restTilt())
                * Topple.farRadius(what.tipping());
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
