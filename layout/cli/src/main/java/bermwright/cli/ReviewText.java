// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.lowering.thrust.ThrustState;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.answer.ReviewAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.LoweringChoices;
import bermwright.site.laydown.LandingDisc;
import bermwright.site.laydown.Laydown;
import bermwright.site.laydown.LoweringWords;
import java.io.PrintStream;
import java.util.List;
import java.util.function.ToDoubleFunction;

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
        laydown.review().ifPresent(r -> out.println(TextTable.of(ReviewAnswers.MOTION_TILTS, every(r.motion().states(),
                MotionState::tilt))));
        laydown.review().flatMap(Review::cross).filter(c -> c.sideForce() > 0).ifPresent(c -> {
            CommonText.wrapped(ReviewAnswers.CROSS_TILTS.meaning(), 2, out);
            out.println(TextTable.of(ReviewAnswers.CROSS_TILTS, c.every(EVERY)));
        });
        laydown.disc().ifPresent(d -> landings(d, out));
        laydown.review().ifPresent(r -> {
            CommonText.wrapped(ReviewAnswers.LOSSES.meaning() + " Each at its worst tilt:", 2, out);
            out.println(TextTable.of(ReviewAnswers.LOSSES, r.worstLosses()));
        });
        laydown.thrusters().ifPresent(t -> out.println(TextTable.of(LoweringAnswers.THRUST, every(t.states(),
                ThrustState::tilt))));
    }

    private static <T> List<T> every(List<T> states, ToDoubleFunction<T> tilt) {
        return states.stream().filter(s -> Math.round(Unit.DEG.of(tilt.applyAsDouble(s))) % EVERY == 0).toList();
    }

    private static void landings(LandingDisc disc, PrintStream out) {
        CommonText.wrapped("Landings inside the dispersion, each on its own ground, the gear where it was set out, the"
                + " hull let swing " + TextTable.words(Unit.DEG.of(disc.swing()), 1) + " deg and its centre of mass"
                + " shifted " + TextTable.words(disc.centre(), 2) + " m to either end (worst), or turning to ease it;"
                + " worst of all is " + disc.worst().where() + ":", 2, out);
        out.println(TextTable.of(LoweringAnswers.SPOTS, disc.spots()));
    }
}
