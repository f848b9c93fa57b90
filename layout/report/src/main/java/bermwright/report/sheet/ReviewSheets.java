// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.LiquidReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.MotionReview;
import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table.Column;
import bermwright.report.page.Table;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What motion, the pivot's edge and the loss of one thing at a time do; also for the editor.
 *
 * @param hull   the hull
 * @param review its lowering under review
 */
public record ReviewSheets(Hull hull, Review review) {
    private static final double KILO = 1000;
    private static final double CROSS_STEP_DEG = 5;

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
        boolean sways = slope.mostSway().isPresent();
        boolean sideLines = slope.mostSideLine().sideLine() > 0;
        List<Column> columns = new ArrayList<>(List.of(Column.number("tilt_deg", "tilt (°)"),
                Column.number("lower_line_kN", "lower line (kN)"), Column.number("upper_line_kN", "upper line (kN)"),
                Column.number("harder_pole_kN", "harder pole (kN)"),
                Column.number("lower_shoe_kN", sways ? "rim (kN)" : "lower shoe (kN)"),
                Column.number("upper_shoe_kN", sways ? "beside it (kN)" : "upper shoe (kN)"),
                Column.number("pivot_across_kN", "pivot across (kN)"),
                Column.number("hold_needed_kN", "hold slanting (kN)"),
                Column.words("held_by", "kept in its plane by")));
        if (sideLines) {
            columns.add(Column.number("side_line_kN", "side line (kN)"));
        }
        if (sways) {
            columns.add(Column.words("sway_deg", "sways by itself to (°)"));
        }
        return new Table(Drawing.name("cross-slope", hull.id()), "Hull " + hull.id() + ": held still on the cross"
                + " slope, lower and upper side; below hand-over the pull-over line stands as both lines" + mark(),
                columns, slope.every(CROSS_STEP_DEG).stream().map(c -> cross(c, sideLines, sways)).toList());
    }

    private static List<String> cross(CrossState c, boolean sideLines, boolean sways) {
        List<String> row = new ArrayList<>(List.of(Words.degrees(c.tilt()), Words.kilonewtons(c.lower()),
                Words.kilonewtons(c.upper()), c.pole() > 0 ? Words.kilonewtons(c.pole()) : "",
                Words.kilonewtons(c.pivot().lowerShoe()), Words.kilonewtons(c.pivot().upperShoe()),
                Words.kilonewtons(c.pivot().side()), Words.kilonewtons(c.pivot().holdNeeded()), c.held().word()));
        if (sideLines) {
            row.add(Words.kilonewtons(c.sideLine()));
        }
        if (sways) {
            row.add(c.sway().map(w -> w.finds() ? Words.degrees(w.angle()) : "rolls away").orElse(""));
        }
        return row;
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
        return new Table(Drawing.name("losses", hull.id()), "Hull " + hull.id() + ": one thing lost at a time, " + which
                + mark(), List.of(Column.words("lost", "lost"), Column.number("tilt_deg", "at tilt (°)"),
                Column.words("outcome", "outcome"), Column.number("demand_kN", "demand on what is left (kN)"),
                Column.number("capacity_kN", "its capacity (kN)"), Column.number("speed_m_s", "comes down at (m/s)"),
                Column.words("words", "what then")), losses.stream().map(l -> List.of(l.lost(),
                Words.degrees(l.tilt()), l.outcome().word(),
                l.demand() > 0 ? Words.kilonewtons(l.demand()) : "", l.capacity() > 0
                ? Words.kilonewtons(l.capacity()) : "", l.speed() > 0 ? Words.fixed(l.speed(), 2) : "",
                l.words())).toList());
    }

    /** Lines and motion in single figures. */
    public Table figures() {
        LineReview line = review.lines();
        MotionReview motion = review.motion();
        Figures f = new Figures();
        f.add("sag of a lowering line at rest", line.sag(), 3, "m");
        f.add("sag of a lowering line at hand-over", line.sagAtHandOver(), 3, "m");
        f.add("pretension of one line at hand-over", line.pretension() / KILO, 2, "kN");
        f.add("stretch of one line at rest", line.stretch(), 3, "m");
        f.add("line paid out from balance to rest", line.paidOut(), 2, "m");
        f.add("longest line, winch to lug", line.longest(), 2, "m");
        f.add("load of one head sheave", line.sheaveLoad() / KILO, 2, "kN");
        f.add("pull of one line across the plane", line.lateralAtHead() / KILO, 2, "kN");
        f.add("how much colder a line in shade is", line.cooling(), 0, "K");
        f.add("tension gained by a held line that cools so", scaled(line.coolingGain()), 2, "kN");
        f.add("unequal pay-out taken", line.mismatch().mismatch(), 3, "m");
        f.add("most loaded line with that", line.mismatch().hardest() / KILO, 2, "kN");
        f.add("yaw moment on the pivot with that", line.mismatch().yawMoment() / KILO, 1, "kN m");
        review.cross().ifPresent(c -> {
            f.add("weight pulling across the plane", c.sideForce() / KILO, 2, "kN");
            c.hardest().ifPresent(h -> f.add("most loaded line on the cross slope", h.hardest() / KILO, 2, "kN"));
            if (c.mostSideLine().sideLine() > 0) {
                f.add("side line at the lugs", c.mostSideLine().sideLine() / KILO, 2, "kN");
            }
        });
        review.liquid().flatMap(LiquidReview::worst).ifPresent(l -> {
            f.add("most loaded line with the liquid free in the hull's own cylinder, a bound",
                    l.free() / KILO, 2, "kN");
            f.add("centre of mass then nearer the far end", l.along(), 2, "m");
            f.add("centre of mass then nearer the lay-down side", l.off(), 2, "m");
        });
        review.beam().ifPresent(b -> {
            f.add("bending of the hull between base and lugs", b.between() / KILO, 1, "kN m");
            f.add("bending of the hull at the lugs", b.atLugs() / KILO, 1, "kN m");
            f.add("lugs that bend it least, from the base", b.bestLug(), 2, "m");
        });
        f.add("time of the lowering at the set rate", motion.duration() / 60, 1, "min");
        f.add("heat of all brakes together", motion.brakeHeat() / 1e6, 2, "MJ");
        f.add("mean power of all brakes", motion.meanBrakePower() / KILO, 2, "kW");
        f.add("speed of the far end at contact, set rate", motion.contactSpeed(), 3, "m/s");
        f.add("speed of the far end in a free topple", motion.freeSpeed(), 2, "m/s");
        f.add("energy of a free topple", motion.freeEnergy() / 1e6, 2, "MJ");
        f.add("time of a free topple from one degree past balance", motion.freeTime(), 1, "s");
        return new Table(Drawing.name("lines-and-motion", hull.id()), "Hull " + hull.id() + ": lines and motion"
                + mark(),
                Figures.COLUMNS, f.rows);
    }

    private static OptionalDouble scaled(OptionalDouble force) {
        return force.isPresent() ? OptionalDouble.of(force.getAsDouble() / KILO) : force;
    }
}
