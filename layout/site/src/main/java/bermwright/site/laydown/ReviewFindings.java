// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Sentence;
import bermwright.finding.Verdict;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.Part;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.LiquidReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.Review;
import bermwright.lowering.statics.LoweringCase;
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
    private static final String SPACE = "balance in space, closed form";
    /** Side pull as a share of the weight that nobody rigs for (1). */
    private static final double NEGLIGIBLE = 0.005;
    private final LoweringCase setup;
    private final Review review;
    private final double wander;
    private final Chain chain;

    /** The findings of a review, with how far the plan lets the hull swing out of its plane (rad). */
    ReviewFindings(LoweringCase setup, Chain chain, Review review, double wander) {
        this.chain = chain;
        this.setup = setup;
        this.review = review;
        this.wander = wander;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        mismatch(findings);
        light(findings);
        review.cross().ifPresent(c -> cross(c, findings));
        review.liquid().ifPresent(l -> liquid(l, findings));
        edge(findings);
        bending(findings);
        losses(findings);
        double speed = review.motion().contactSpeed();
        if (speed > CONTACT_SPEED) {
            findings.add(Finding.of(LoweringRule.LOWERING_CONTACT_SPEED, Level.WARN,
                    Figures.of(speed, CONTACT_SPEED, "m/s"),
                    text("At the set rate the far end comes down at %.2f m/s.", speed)));
        }
        return findings;
    }

    private void mismatch(List<Finding> findings) {
        LineReview.Mismatch m = review.lines().mismatch();
        if (m.slack()) {
            findings.add(Finding.of(LoweringRule.LOWERING_LINE_SLACK, Level.WARN,
                    Figures.of(m.hardest() / 1000, m.hardest() / 2000, "kN"),
                    text("A pay-out mismatch of %.2f m lets one line hang slack: the other carries"
                            + " %.1f kN and turns the base with %.0f kN m.", m.mismatch(), m.hardest() / 1000,
                            m.yawMoment() / 1000)));
        }
        double shade = review.lines().coolingShortening();
        if (setup.rig().lines().count() > 1 && shade > m.mismatch()) {
            findings.add(Finding.of(LoweringRule.LOWERING_SUN_AND_SHADE, Level.NOTE,
                    Figures.of(shade, m.mismatch(), "m"),
                    text("A line in shade %.0f K colder than one in sun is %.2f m shorter, more than the stated"
                            + " mismatch of %.2f m.", review.lines().cooling(), shade, m.mismatch())).from(GROWTH
                            + PRACTICE));
        }
        setup.rig().lines().winch().rating().ifPresent(rating -> {
            if (m.hardest() > rating) {
                findings.add(Finding.of(LoweringRule.LOWERING_PAY_OUT_MISMATCH, Level.WARN,
                        Figures.of(m.hardest() / 1000, rating / 1000, "kN"),
                        text("With a pay-out mismatch of %.2f m one line carries %.1f kN, more than the rating of"
                                + " its winch.", m.mismatch(),
                                m.hardest() / 1000)));
            }
        });
    }

    /** Where sun gives way to shade within the lift, and what a line then gains that is held fast. */
    private void light(List<Finding> findings) {
        for (LineReview.LightChange change : review.lines().lightChanges()) {
            double then = change.held() + (change.intoShade() ? change.gain().orElse(0) : 0);
            double rating = setup.rig().lines().winch().rating().orElse(Double.MAX_VALUE);
            boolean tooMuch = then > rating;
            findings.add(Finding.of(LoweringRule.LOWERING_LIGHT_CHANGES, tooMuch ? Level.WARN : Level.NOTE,
                    tooMuch ? Figures.of(then / 1000, rating / 1000, "kN")
                            : Figures.of(change.shortening(), setup.rig().lines().payOutMismatch(), "m"),
                    text("After %.1f h, at %.0f deg, the lines pass into %s and get %.2f m %s; held fast there one"
                            + " carries %.1f kN.",
                            change.time() / 3600, Math.toDegrees(change.tilt()), change.intoShade() ? "shade" : "sun",
                            change.shortening(), change.intoShade() ? "shorter" : "longer", then / 1000))
                    .with(text("%.1f h", change.time() / 3600)).from(GROWTH
                            + PRACTICE));
        }
        review.lines().lightUnknownFrom()
                .ifPresent(tilt -> findings.add(Finding.of(LoweringRule.LOWERING_LIGHT_NOT_STATED,
                Level.NOTE, Figures.NONE,
                text("From %.0f deg on no window says whether the lines stand in sun or in shade.",
                        Math.toDegrees(tilt)))));
    }

    private void cross(CrossSlope cross, List<Finding> findings) {
        double rating = setup.rig().lines().winch().rating().orElse(Double.MAX_VALUE);
        Optional<CrossState> slack = cross.states().stream().filter(c -> c.lowering() && c.isSlack()).findFirst();
        Optional<CrossState> worst = slack.or(cross::hardest).filter(c -> c.isSlack() || c.hardest() > rating);
        worst.ifPresent(c -> findings.add(Finding.of(LoweringRule.LOWERING_CROSS_SLOPE, Level.WARN,
                c.isSlack() ? Figures.of(Math.min(c.lower(), c.upper()) / 1000, 0, "kN")
                        : Figures.of(c.hardest() / 1000, rating / 1000, "kN"),
                text("At %.0f deg on the cross slope the line of the lower side %s and that of the upper side %s; the"
                        + " hull is kept in its plane by %s.", Math.toDegrees(c.tilt()), pulls(c.lower()),
                        pulls(c.upper()), c.held().word()))));
        CrossState side = cross.mostSideLine();
        if (side.sideLine() > NEGLIGIBLE * setup.tipping().weight()) {
            findings.add(Finding.of(LoweringRule.LOWERING_SIDE_LINE, Level.NOTE,
                    Figures.of(side.sideLine() / 1000, 0, "kN"),
                    text("The cross slope pulls %.1f kN sideways; neither lowering lines nor pivot hold the hull in"
                            + " its plane. Side lines at the lugs take up to %.1f kN on the upper side, most at"
                            + " %.0f deg.", cross.sideForce() / 1000, side.sideLine() / 1000,
                            Math.toDegrees(side.tilt()))));
        }
        shoe(cross, findings);
        holdAcross(cross, findings);
        cross.mostSway().filter(c -> c.sway().orElseThrow().angle() > wander).ifPresent(c -> sway(cross, c, findings));
    }

    private void liquid(LiquidReview liquid, List<Finding> findings) {
        double bears = Math.min(setup.rig().lines().winch().rating().orElse(Double.MAX_VALUE),
                setup.rig().lines().line().breakingLoad().orElse(Double.MAX_VALUE) / setup.rig().factors().line());
        liquid.worst().filter(s -> s.free() > bears && s.held() <= bears).ifPresent(s -> findings.add(Finding.of(
                LoweringRule.LOWERING_LIQUID, Level.WARN, Figures.of(s.free() / 1000, bears / 1000, "kN"),
                text("With %.1f t of liquid free to run along the hull one line may carry up to %.1f kN at %.0f deg,"
                        + " against %.1f kN with the liquid held.",
                        liquid.mass() / 1000, s.free() / 1000, Math.toDegrees(s.tilt()), s.held() / 1000))));
    }

    private static String pulls(double tension) {
        return tension > 0 ? text("carries %.1f kN", tension / 1000) : "hangs slack";
    }

    private void shoe(CrossSlope cross, List<Finding> findings) {
        CrossState lightest = cross.lightestShoe();
        if (setup.tipping().pivot().halfWidth() > 0 && !(lightest.pivot().upperShoe() > 0)) {
            findings.add(Finding.of(LoweringRule.LOWERING_SHOE_LIFTS, Level.WARN,
                    Figures.of(lightest.pivot().upperShoe() / 1000, 0, "kN"),
                    text("At %.0f deg the cross slope lifts the upper shoe: all %.1f kN stand on the lower one and only"
                            + " a side line of %.1f kN keeps the hull from going over it.",
                            Math.toDegrees(lightest.tilt()),
                            lightest.pivot().up() / 1000, lightest.sideLine() / 1000)));
        }
    }

    /** Whether friction and anchor hold what pulls along and across together, where along alone they would. */
    private void holdAcross(CrossSlope cross, List<Finding> findings) {
        double gravity = setup.tipping().ground().gravity();
        double anchor = setup.rig().pivotHold().map(a -> a.capacity(setup.soil(), gravity, 0)).orElse(0.0);
        double asked = setup.rig().factors().pivotHold();
        double mu = setup.tipping().ground().friction();
        cross.states().stream().filter(c -> anchor < c.pivot().holdNeeded()
                        && anchor >= asked * Math.abs(c.pivot().along()) - mu * c.pivot().up())
                .max(Comparator.comparingDouble(c -> c.pivot().holdNeeded())).ifPresent(c -> findings.add(
                        Finding.of(LoweringRule.LOWERING_HOLD_ACROSS, Level.WARN,
                                Figures.of(c.pivot().holdNeeded() / 1000, anchor / 1000, "kN"),
                                text("At %.0f deg the pivot is pulled %.1f kN along and %.1f kN across: demand on"
                                        + " the hold %.1f kN slanting, capacity %.1f kN.", Math.toDegrees(c.tilt()),
                                        Math.abs(c.pivot().along()) / 1000, Math.abs(c.pivot().side()) / 1000,
                                        c.pivot().holdNeeded() / 1000, anchor / 1000))));
    }

    private void sway(CrossSlope cross, CrossState worst, List<Finding> findings) {
        Optional<CrossState> calm = cross.states().stream()
                .filter(c -> c.sway().isPresent() && c.tilt() > worst.tilt()
                        && c.sway().get().angle() <= wander).findFirst();
        CrossState.Sway s = worst.sway().orElseThrow();
        double deg = Math.toDegrees(worst.tilt());
        String until = calm.map(c -> text(" From %.0f deg on it stays within the %.1f deg"
                + " that the plan lets it swing.", Math.toDegrees(c.tilt()), Math.toDegrees(wander))).orElse("");
        findings.add(Finding.of(LoweringRule.LOWERING_SWAYS, Level.WARN,
                Figures.of(Math.toDegrees(s.angle()), Math.toDegrees(wander), "deg"), s.finds()
                ? text("Without side lines the hull rolls on its rim until at %.0f deg it leans %.1f deg out of its"
                        + " plane, its far end %.1f m aside; the plan allows a swing of %.1f deg.%s", deg,
                        Math.toDegrees(s.angle()), s.farEnd(), Math.toDegrees(wander), until)
                : text("Without side lines nothing stops the hull from rolling away on its rim at %.0f deg.%s Give"
                        + " shoes, or hold it with side lines before hand-over.", deg, until)).from(SPACE
                        + "; wander of"
                        + " the plan"));
    }

    /** Whether a bare shell bears what bends the nearly lying hull. */
    private void bending(List<Finding> findings) {
        chain.governing(Part.HULL).filter(r -> r.verdict() == Verdict.NOT_MET).ifPresent(row -> findings.add(
                Finding.of(LoweringRule.LOWERING_HULL_BENDS, Level.WARN,
                        Figures.of(row.factor().orElseThrow(), row.required(), "1"),
                        text("Held at base and lugs (%s) the hull's shell is stressed with %.1f MPa and bears %.1f MPa"
                                + " without inner pressure and frames: factor of safety %.2f, %.2f required.%s",
                                row.loadWords(), row.demand().orElseThrow() / 1e6, row.capacity().orElseThrow() / 1e6,
                                row.factor().orElseThrow(), row.required(), review.beam().map(b -> text(
                                        " Lugs at %.1f m instead of %.1f m bend it least.", b.bestLug(),
                                        setup.rig().lines().lug().along())).orElse(""))).from(row.source())));
    }

    private void edge(List<Finding> findings) {
        chain.governing(Part.PIVOT_GROUND).filter(r -> r.verdict() == Verdict.NOT_MET).ifPresent(row -> findings.add(
                Finding.of(LoweringRule.LOWERING_EDGE_SINKS, Level.WARN,
                        Figures.of(row.factor().orElseThrow(), row.required(), "1"),
                        text("At %.0f deg (%s) the pivot presses the ground with %.1f kN, which gives way at %.1f kN"
                                + " under so slanting a load: factor of safety %.2f, %.2f required. %s. Spread it"
                                + " by shoes or pads.", Math.toDegrees(row.tilt()), row.loadWords(),
                                row.demand().orElseThrow() / 1000, row.capacity().orElseThrow() / 1000,
                                row.factor().orElseThrow(), row.required(), chain.soil(row).map(x -> x.words())
                                        .orElse(""))).from(row.source())));
    }

    /** What may be lost without what is left being known to hold, each at its worst tilt. */
    private void losses(List<Finding> findings) {
        for (Loss l : review.worstLosses()) {
            if (l.outcome() != Loss.Outcome.HOLDS && l.outcome() != Loss.Outcome.ROCKS_BACK) {
                findings.add(Finding.of(LoweringRule.LOWERING_SINGLE_FAILURE, Level.WARN,
                        l.speed() > 0 ? Figures.of(l.speed(), 0, "m/s") : Figures.NONE,
                        text("Lost at %.0f deg: %s. %s.", Math.toDegrees(l.tilt()), l.lost(),
                                Sentence.begin(l.words())))
                        .with(l.lost()));
            }
        }
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
