// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import bermwright.finding.Verdict;
import bermwright.lowering.body.TippingBody;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.LoadCase;
import bermwright.lowering.chain.Part;
import bermwright.lowering.motion.HeldBody;
import bermwright.lowering.motion.Shock;
import bermwright.lowering.motion.Topple;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.LoweringCase;
import bermwright.lowering.statics.TiltState;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One thing lost at a time, at every fifth degree: what is left holds only where every part of it does. */
final class SingleFailures {
    private final LoweringCase setup;
    private final LoweringResult result;
    private final List<Loss> losses = new ArrayList<>();

    SingleFailures(LoweringCase setup, LoweringResult result) {
        this.setup = setup;
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
                lost("a lowering line, its winch or its anchor", LoadCase.LINE_LOST, s);
                if (setup.rig().poles().isPresent()) {
                    lost("a pole", LoadCase.POLE_LOST, s);
                    lost("a stay or its anchor", LoadCase.STAY_LOST, s);
                }
                power(s);
                lost("the hold at the pivot", LoadCase.PIVOT_HOLD_LOST, s);
            }
        }
        return losses;
    }

    private void lost(String lost, LoadCase load, TiltState s) {
        Chain left = Chain.after(setup, load, s.tilt());
        if (!left.rows().isEmpty()) {
            losses.add(judged(lost, left, s));
        }
    }

    /** All brakes close and every line is jolted: the chain as it stands, at the worst tilt it has. */
    private void power(TiltState s) {
        Optional<HeldBody> held = setup.held();
        if (held.isEmpty()) {
            losses.add(new Loss("power (brakes close)", s.tilt(), Loss.Outcome.NOT_JUDGED, 0, 0, 0,
                    "the brakes close and the lines take a jolt that cannot be worked out without their stiffness"));
            return;
        }
        double peak = s.lineEach() * Shock.emergencyStop(held.get(), s.tilt(), setup.rate()).factor();
        Chain stop = Chain.stopped(setup, s.tilt());
        Loss judged = judged("power (brakes close)", stop, s);
        losses.add(new Loss(judged.lost(), judged.tilt(), judged.outcome(), judged.demand(), judged.capacity(),
                judged.speed(), text("each line is jolted to %.0f kN; %s", peak / 1000, judged.words())));
    }

    private Loss judged(String lost, Chain left, TiltState s) {
        ChainRow worst = left.governing().get(0);
        double demand = worst.demand().orElse(0);
        double capacity = worst.capacity().orElse(0);
        return switch (left.verdict()) {
            case MET -> new Loss(lost, s.tilt(), Loss.Outcome.HOLDS, demand, capacity, 0,
                    "every part of what is left holds, least " + words(worst));
            case NOT_JUDGED -> new Loss(lost, s.tilt(), Loss.Outcome.NOT_JUDGED, demand, capacity, 0,
                    "not judged: " + String.join("; ", left.rows().stream()
                            .filter(r -> r.verdict() == Verdict.NOT_JUDGED).map(r -> r.part().words()).distinct()
                            .toList()) + (worst.factor().isPresent() ? "; of the rest least " + words(worst) : ""));
            case NOT_MET -> {
                Loss.Outcome outcome = outcome(left);
                double speed = outcome == Loss.Outcome.FALLS ? runAway(s) : 0;
                String then = switch (outcome) {
                    case FALLS -> text("the hull comes down at %.1f m/s", speed);
                    case SWINGS -> "the hull turns out of its plane";
                    default -> "the base slides";
                };
                yield new Loss(lost, s.tilt(), outcome, demand, capacity, speed, then + "; " + words(worst));
            }
        };
    }

    /** Falls where a part that carries breaks; where only the pivot gives way, the hull slides or swings. */
    private static Loss.Outcome outcome(Chain left) {
        List<Part> broken = left.rows().stream().filter(r -> r.verdict() == Verdict.NOT_MET).map(ChainRow::part)
                .toList();
        if (!List.of(Part.PIVOT_HOLD, Part.PIVOT_FRICTION, Part.PIVOT_TURNING).containsAll(broken)) {
            return Loss.Outcome.FALLS;
        }
        return broken.contains(Part.PIVOT_TURNING) ? Loss.Outcome.SWINGS : Loss.Outcome.SLIDES;
    }

    private static String words(ChainRow row) {
        double scale = 1000;
        String unit = row.unit().equals("N m") ? "kN m" : row.unit().equals("Pa") ? "kPa" : "kN";
        return text("%s: demand %.0f %s, capacity %.0f %s", row.part().words(), row.demand().orElse(0) / scale, unit,
                row.capacity().orElse(0) / scale, unit);
    }

    private void pullOver(TiltState s) {
        TippingBody tipping = setup.tipping();
        double rise = tipping.fall(s.tilt(), 0);
        double rate = Math.sqrt(Math.max(0, 2 * tipping.weight() * rise / tipping.inertiaAboutPivot()));
        double speed = rate * (tipping.pivotAhead() + tipping.body().outline().radius());
        losses.add(new Loss("the pull-over line, its winch or anchor", s.tilt(), Loss.Outcome.ROCKS_BACK, 0, 0, speed,
                text("the hull rocks back to standing, its back edge at %.2f m/s", speed)));
    }

    private double runAway(TiltState s) {
        return Topple.rate(setup.tipping(), s.tilt(), setup.rate(), setup.tipping().restTilt())
                * Topple.farRadius(setup.tipping());
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
