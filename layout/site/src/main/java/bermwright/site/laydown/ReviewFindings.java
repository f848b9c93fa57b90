// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.review.EdgeState;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.Review;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.Trouble;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words what a review finds. */
final class ReviewFindings {
    private static final String PRACTICE = "common practice, no source";
    private static final double CONTACT_SPEED = 1;
    private static final double EDGE_FACTOR = 2;
    private final LoweringCase what;
    private final Review review;

    ReviewFindings(LoweringCase what, Review review) {
        this.what = what;
        this.review = review;
    }

    List<Trouble> troubles() {
        List<Trouble> troubles = new ArrayList<>();
        mismatch(troubles);
        edge(troubles);
        losses(troubles);
        double speed = review.motion().contactSpeed();
        if (speed > CONTACT_SPEED) {
            troubles.add(Trouble.of("lowering-contact-speed", Trouble.Level.WARN,
                    new Trouble.Figures(speed, CONTACT_SPEED, "m/s"), PRACTICE,
                    text("At the set rate the far end comes down at %.2f m/s; slow down before contact.", speed)));
        }
        return troubles;
    }

    private void mismatch(List<Trouble> troubles) {
        LineReview.Mismatch m = review.lines().mismatch();
        if (m.slack()) {
            troubles.add(Trouble.of("lowering-line-slack", Trouble.Level.WARN,
                    new Trouble.Figures(m.hardest() / 1000, m.hardest() / 2000, "kN"), PRACTICE,
                    text("A difference of %.2f m in what the lines pay out lets one hang slack: the other carries"
                            + " %.1f kN and turns the base with %.0f kN m.", m.mismatch(), m.hardest() / 1000,
                            m.yawMoment() / 1000)));
        }
        double shade = review.lines().coolingShortening();
        if (what.rig().lines().count() > 1 && shade > m.mismatch()) {
            troubles.add(Trouble.of("lowering-sun-and-shade", Trouble.Level.NOTE,
                    new Trouble.Figures(shade, m.mismatch(), "m"), "growth of steel, 1.2e-5 per kelvin; " + PRACTICE,
                    text("A line in shade 100 K colder than one in sun is %.2f m shorter, more than the stated"
                            + " mismatch of %.2f m: lower with all lines in sun or all in shade, and level them by"
                            + " tension.", shade, m.mismatch())));
        }
        what.rig().lines().winch().rating().ifPresent(rating -> {
            if (m.hardest() > rating) {
                troubles.add(Trouble.of("lowering-pay-out-mismatch", Trouble.Level.WARN,
                        new Trouble.Figures(m.hardest() / 1000, rating / 1000, "kN"), "rating of the winch",
                        text("With %.2f m difference in pay-out one line carries %.1f kN, more than its winch is rated"
                                + " for. Level the lines by tension, not by length.", m.mismatch(),
                                m.hardest() / 1000)));
            }
        });
    }

    private void edge(List<Trouble> troubles) {
        Optional<EdgeState> worst = review.edge().stream().min(Comparator.comparingDouble(EdgeState::factor));
        if (worst.isPresent() && worst.get().factor() < EDGE_FACTOR) {
            EdgeState e = worst.get();
            troubles.add(Trouble.of("lowering-edge-sinks", Trouble.Level.WARN,
                    new Trouble.Figures(e.factor(), EDGE_FACTOR, "1"), "Vesic (1973) at lunar gravity; " + PRACTICE,
                    text("At %.0f deg the pivot presses %.0f kPa on ground that gives way at %.0f kPa under so slanting"
                            + " a load, %.2f m sunk: spread it by shoes or pads.", Math.toDegrees(e.tilt()),
                            e.pressure() / 1000, e.bearing() / 1000, e.sinkage())));
        }
    }

    /** The worst tilt of each thing whose loss lets the hull fall. */
    private void losses(List<Trouble> troubles) {
        for (String lost : review.losses().stream().map(Loss::lost).distinct().toList()) {
            review.losses().stream().filter(l -> l.lost().equals(lost) && l.outcome() == Loss.Outcome.FALLS)
                    .max(Comparator.comparingDouble(Loss::speed)).ifPresent(l -> troubles.add(
                            Trouble.of("lowering-single-failure", Trouble.Level.WARN,
                                    new Trouble.Figures(l.speed(), 0, "m/s"), PRACTICE,
                                    text("Lost at %.0f deg, %s lets the hull fall: %s.", Math.toDegrees(l.tilt()),
                                            l.lost(), l.words()))));
        }
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
