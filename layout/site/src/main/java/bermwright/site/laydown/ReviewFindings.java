// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.review.CrossPull;
import bermwright.lowering.review.EdgeState;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.Review;
import bermwright.lowering.rig.Tube;
import bermwright.lowering.sequence.LoweringCase;
import bermwright.lowering.sequence.Trouble;
import bermwright.lowering.strength.HullBeam;
import bermwright.lowering.strength.ThinTube;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words what a review finds. */
final class ReviewFindings {
    private static final String PRACTICE = "common practice, no source";
    private static final double CONTACT_SPEED = 1;
    private static final String GROWTH = "growth of the lines with temperature, from the plan; ";
    private static final String MOMENTS = "moments about the pivot, closed form";
    /** Side pull as a share of the weight that nobody rigs for (1). */
    private static final double NEGLIGIBLE = 0.005;
    /** Least factor of the hull's own shell in bending; common practice, no source. */
    private static final double BENDING_FACTOR = 1.5;
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
        light(troubles);
        review.cross().ifPresent(c -> cross(c, troubles));
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
                    new Trouble.Figures(shade, m.mismatch(), "m"), GROWTH + PRACTICE,
                    text("A line in shade %.0f K colder than one in sun is %.2f m shorter, more than the stated"
                            + " mismatch of %.2f m: lower with all lines in sun or all in shade, and level them by"
                            + " tension.", review.lines().cooling(), shade, m.mismatch())));
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

    /** Where sun gives way to shade within the lift, and what a line then gains that is held fast. */
    private void light(List<Trouble> troubles) {
        for (LineReview.LightChange change : review.lines().lightChanges()) {
            double then = change.held() + (change.intoShade() ? change.gain().orElse(0) : 0);
            double rating = what.rig().lines().winch().rating().orElse(Double.MAX_VALUE);
            boolean tooMuch = then > rating;
            troubles.add(Trouble.of("lowering-light-changes", tooMuch ? Trouble.Level.WARN : Trouble.Level.NOTE,
                    tooMuch ? new Trouble.Figures(then / 1000, rating / 1000, "kN")
                            : new Trouble.Figures(change.shortening(), what.rig().lines().payOutMismatch(), "m"),
                    GROWTH + PRACTICE,
                    text("After %.1f h, at %.0f deg, the lines pass into %s and get %.2f m %s; held fast there one"
                            + " carries %.1f kN. Keep moving through it, or lower inside one window.",
                            change.time() / 3600, Math.toDegrees(change.tilt()), change.intoShade() ? "shade" : "sun",
                            change.shortening(), change.intoShade() ? "shorter" : "longer", then / 1000)));
        }
        review.lines().lightUnknownFrom().ifPresent(tilt -> troubles.add(Trouble.plain("lowering-light-not-stated",
                Trouble.Level.NOTE, text("From %.0f deg on no window says whether the lines stand in sun or in shade.",
                        Math.toDegrees(tilt)))));
    }

    private void cross(CrossPull c, List<Trouble> troubles) {
        double rating = what.rig().lines().winch().rating().orElse(Double.MAX_VALUE);
        if (c.hardest() > rating || c.slack()) {
            troubles.add(Trouble.of("lowering-cross-slope", Trouble.Level.WARN,
                    c.slack() ? new Trouble.Figures(c.unequal() / 1000, (c.hardest() - c.unequal()) / 1000, "kN")
                            : new Trouble.Figures(c.hardest() / 1000, rating / 1000, "kN"), MOMENTS,
                    text("At %.0f deg the cross slope puts %.1f kN more on the line of the lower side: %.1f kN%s.",
                            Math.toDegrees(c.tilt()), c.unequal() / 1000, c.hardest() / 1000,
                            c.slack() ? ", and the other hangs slack" : "")));
        }
        if (c.sideLine() > NEGLIGIBLE * what.tipping().weight()) {
            troubles.add(Trouble.of("lowering-side-line", Trouble.Level.NOTE,
                    new Trouble.Figures(c.left() / 1000, c.byPivot() / 1000, "kN m"), MOMENTS,
                    text("The cross slope pulls %.1f kN sideways; neither lowering lines nor pivot take all of it: give"
                            + " side lines at the lugs for up to %.1f kN on the upper side.", c.sideForce() / 1000,
                            c.sideLine() / 1000)));
        }
    }

    /** Whether a bare shell bears what bends the nearly lying hull. */
    static Optional<Trouble> bending(HullBeam beam, Tube shell, double lug) {
        double ratio = (shell.diameter() - shell.wall()) / 2 / shell.wall();
        double bears = Math.min(shell.yield(), ThinTube.knockDown(ratio) * ThinTube.perfect(shell));
        double factor = bears / beam.stress(shell);
        if (factor >= BENDING_FACTOR) {
            return Optional.empty();
        }
        return Optional.of(Trouble.of("lowering-hull-bends", Trouble.Level.WARN,
                new Trouble.Figures(factor, BENDING_FACTOR, "1"), "bare shell, NASA SP-8007, from memory; " + PRACTICE,
                text("Held at base and lugs the hull bends with %.0f kN m: %.1f MPa in its shell, which bears %.1f MPa"
                        + " without inner pressure and frames. Lugs at %.1f m instead of %.1f m bend it least.",
                        beam.greatest() / 1000, beam.stress(shell) / 1e6, bears / 1e6, beam.bestLug(), lug)));
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
