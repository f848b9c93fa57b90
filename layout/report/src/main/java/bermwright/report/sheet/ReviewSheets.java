// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.site.answer.ReviewAnswers;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * What motion, the pivot's edge and the loss of one thing at a time do; also for the editor.
 *
 * @param hull   the hull
 * @param review its lowering under review
 */
public record ReviewSheets(Hull hull, Review review) {
    private static final double KILO = 1000;

    /**
     * Tension of one line when a winch stops dead and when slack comes taut, against tilt.
     *
     * @return the drawing
     */
    public Drawing shocks() {
        List<Chart.Mark> limits = new ArrayList<>();
        hull.lowering().flatMap(LoweringGear::lines).ifPresent(lines -> {
            lines.winch().ratingEach().ifPresent(r -> limits.add(new Chart.Mark("rating of one winch", r / KILO,
                    "kN")));
            lines.line().breakingLoad().ifPresent(b -> limits.add(new Chart.Mark("one line breaks", b / KILO, "kN")));
        });
        return new Chart(Drawing.name("shock", hull.id()), "Hull " + hull.id() + ": one line in a dead stop and in a"
                + " snatch" + mark(), "tilt from standing (°)", "tension (kN)", List.of(
                new Chart.Curve("a winch stops dead", motion(s -> s.stopEach() / KILO), Ink.of(0)),
                new Chart.Curve("a tenth of a metre of slack comes taut", motion(s -> s.snatchEach() / KILO),
                        Ink.of(1))), limits, List.of(), Chart.Scale.LINEAR).drawing();
    }

    /**
     * Speed of the far end at rest when the brakes fail at a tilt.
     *
     * @return the drawing
     */
    public Drawing runAway() {
        return new Chart(Drawing.name("run-away", hull.id()), "Hull " + hull.id()
                + ": brakes fail, speed of the far end"
                + " when it comes down" + mark(), "tilt at which the brakes fail (°)", "speed (m/s)", List.of(
                new Chart.Curve("far end", motion(MotionState::runAwaySpeed), Ink.of(0))), List.of(
                new Chart.Mark("free topple from balance", review.motion().freeSpeed(), "m/s"),
                new Chart.Mark("at the set rate", review.motion().contactSpeed(), "m/s")), List.of(),
                Chart.Scale.LINEAR).drawing();
    }

    /**
     * Pressure under the pivot against what the ground bears.
     *
     * @return the drawing
     */
    public Drawing edge() {
        return new Chart(Drawing.name("pivot-edge", hull.id()), "Hull " + hull.id() + ": pressure under the pivot"
                + mark(),
                "tilt from standing (°)", "pressure (kPa)", List.of(
                new Chart.Curve("mean pressure", edge(e -> e.pressure() / KILO), Ink.of(0)),
                new Chart.Curve("the ground gives way", edge(e -> e.bearing() / KILO), Ink.of(1))), List.of(),
                List.of(), Chart.Scale.LINEAR).drawing();
    }

    /**
     * The balance on the cross slope by tilt.
     *
     * @return the table; absent where the ground does not fall across
     */
    public Optional<Table> cross() {
        return review.cross().filter(c -> c.sideForce() > 0).map(this::cross);
    }

    /** Columns that say something: the rest pose of a rim only on a rim, side lines only where one is needed. */
    private Table cross(CrossSlope slope) {
        return AnswerSheets.table(Drawing.name("cross-slope", hull.id()), "Hull " + hull.id() + ": held still on the"
                + " cross slope, lower and upper side; below hand-over the pull-over line stands as both lines, and a"
                + " rim as the lower shoe" + mark(), ReviewAnswers.CROSS_TILTS,
                slope.every(ReviewAnswers.CROSS_STEP_DEG));
    }

    private List<Dot> motion(ToDoubleFunction<MotionState> value) {
        return review.motion().states().stream().map(s -> new Dot(Math.toDegrees(s.tilt()), value.applyAsDouble(s)))
                .toList();
    }

    private List<Dot> edge(ToDoubleFunction<EdgeState> value) {
        return review.edge().stream().map(s -> new Dot(Math.toDegrees(s.tilt()), value.applyAsDouble(s))).toList();
    }

    private String mark() {
        return Marks.of(review.notes());
    }

    /** Every loss at every tilt. */
    public Table losses() {
        return losses(review.losses(), "every tilt");
    }

    /** For each thing that may be lost, the tilt at which it is worst. */
    public Table worstLosses() {
        return losses(review.worstLosses(), "each at its worst tilt; the file holds all");
    }

    private Table losses(List<Loss> losses, String which) {
        return AnswerSheets.table(Drawing.name("losses", hull.id()), "Hull " + hull.id()
                + ": one thing lost at a time, "
                + which + mark(), ReviewAnswers.LOSSES, losses);
    }

    /** Lines and motion in single figures. */
    public Table figures() {
        return AnswerSheets.figures(Drawing.name("lines-and-motion", hull.id()), "Hull " + hull.id()
                + ": lines and motion" + mark(), ReviewAnswers.FIGURES, review);
    }
}
