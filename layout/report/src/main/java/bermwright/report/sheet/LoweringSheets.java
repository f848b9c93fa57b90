// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.sequence.HoldPoint;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.answer.Answers;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The drawings and tables of a hull's lowering, also for the editor. */
public final class LoweringSheets {
    private static final double KILO = 1000;
    /** Rows of the tilt table stand this far apart in pages (rad); the file holds all tilts. */
    private static final double PAGE_STEP = Math.toRadians(5);
    /** The same on the sheet that the crew holds in its hands, which is one page. */
    private static final double SHEET_STEP = Math.toRadians(10);
    private static final int SHEET_PARTS = 8;

    private LoweringSheets() {
    }

    /**
     * Tension against tilt: full balance, hand balance and pull-over, with the ratings.
     *
     * @param hull   the hull
     * @param result its lowering
     * @return the drawing
     */
    public static Drawing tension(Hull hull, LoweringResult result) {
        List<Chart.Curve> curves = new ArrayList<>();
        curves.add(new Chart.Curve("all lowering lines, full moment balance", curve(result, t -> t.lineTotal() > 0
                ? t.lineTotal() : Double.NaN), Ink.of(0)));
        curves.add(new Chart.Curve("all lowering lines, hand balance", curve(result, t -> t.lineTotal() > 0
                ? t.handBalance().orElse(Double.NaN) : Double.NaN), Ink.of(1)));
        if (result.greatestPullOver() > 0) {
            curves.add(new Chart.Curve("pull-over line", curve(result, t -> t.pullOver() > 0 ? t.pullOver()
                    : Double.NaN), Ink.of(2)));
        }
        curves.add(new Chart.Curve("one lowering line, with its spread", curve(result, t -> t.lineEach() > 0
                ? t.lineEach() : Double.NaN), Ink.of(4)));
        List<Chart.Mark> limits = new ArrayList<>();
        hull.lowering().flatMap(LoweringGear::lines).ifPresent(lines -> lines.winch().ratingEach().ifPresent(rating ->
                limits.add(new Chart.Mark("rating of one winch", rating / KILO, "kN"))));
        hull.lowering().flatMap(LoweringGear::pullOver).ifPresent(line -> line.winchRating().ifPresent(rating ->
                limits.add(new Chart.Mark("rating of the pull-over winch", rating / KILO, "kN"))));
        return new Chart(Drawing.name("tension", hull.id()), "Hull " + hull.id() + ": pull of the lines against tilt"
                + Marks.of(result.notes()),
                "tilt from standing (°)", "pull (kN)", curves, limits, marks(result), pullScale(result,
                        limits)).drawing();
    }

    /** Up to what matters: the hand balance grows without end where a line hardly rises, and runs off the top. */
    private static Chart.Scale pullScale(LoweringResult result, List<Chart.Mark> limits) {
        double pull = result.tilts().stream().mapToDouble(t -> Math.max(t.lineTotal(), t.pullOver())).max().orElse(0);
        double most = Math.max(pull, result.balances().hand().orElse(0)) / KILO;
        double rating = limits.stream().mapToDouble(Chart.Mark::value).filter(v -> v < 4 * most).max().orElse(0);
        return new Chart.Scale(false, OptionalDouble.empty(), OptionalDouble.of(Math.max(1.3 * most, 1.05 * rating)));
    }

    /**
     * What the ground does to the pivot, and the poles' thrust, against tilt.
     *
     * @param hull   the hull
     * @param result its lowering
     * @return the drawing
     */
    public static Drawing reactions(Hull hull, LoweringResult result) {
        List<Chart.Curve> curves = new ArrayList<>(List.of(
                new Chart.Curve("pivot, square to the ground", curve(result, TiltState::pivotUp), Ink.of(0)),
                new Chart.Curve("pivot, along the ground (positive: pushed back)", curve(result, TiltState::pivotAlong),
                        Ink.of(1)),
                new Chart.Curve("hold needed beyond friction", curve(result, TiltState::holdNeeded), Ink.of(3))));
        if (result.tilts().stream().anyMatch(t -> t.poleEach() > 0)) {
            curves.add(new Chart.Curve("thrust of one pole", curve(result, TiltState::poleEach), Ink.of(2)));
        }
        return new Chart(Drawing.name("pivot", hull.id()), "Hull " + hull.id() + ": pivot and poles against tilt"
                + Marks.of(result.notes()),
                "tilt from standing (°)", "force (kN)", curves, List.of(), marks(result), Chart.Scale.LINEAR).drawing();
    }

    private static List<Chart.Mark> marks(LoweringResult result) {
        return List.of(new Chart.Mark("balance", Math.toDegrees(result.balanceTilt()), "°"),
                new Chart.Mark("hand-over", Math.toDegrees(result.handOverTilt()), "°"));
    }

    private static List<Dot> curve(LoweringResult result, ToDoubleFunction<TiltState> force) {
        return result.tilts().stream().map(t -> new Dot(Math.toDegrees(t.tilt()), force.applyAsDouble(t) / KILO))
                .toList();
    }

    /** All forces, tilt by tilt, for the file. */
    public static Table tilts(String hull, LoweringResult result) {
        return tilts(hull, result.tilts(), "all tilts" + Marks.of(result.notes()));
    }

    /** The tilts that a page shows: every five degrees, balance, hand-over, the hardest pull, and at rest. */
    public static Table shownTilts(String hull, LoweringResult result) {
        return tilts(hull, stepped(result, PAGE_STEP), "every 5° and the tilts that matter; the file holds all"
                + Marks.of(result.notes()));
    }

    /** The tilts of the lowering sheet: every ten degrees and those that matter. */
    public static Table sheetTilts(String hull, LoweringResult result) {
        return tilts(hull, stepped(result, SHEET_STEP), "every 10° and the tilts that matter"
                + Marks.of(result.notes()));
    }

    private static List<TiltState> stepped(LoweringResult result, double width) {
        List<TiltState> shown = new ArrayList<>();
        List<TiltState> all = result.tilts();
        for (int i = 0; i < all.size(); i++) {
            double tilt = all.get(i).tilt();
            double next = i + 1 < all.size() ? all.get(i + 1).tilt() : tilt;
            boolean step = Math.abs(tilt / width - Math.rint(tilt / width)) < 1e-6;
            boolean hardest = Math.abs(tilt - result.atTilt()) < 1e-9;
            boolean turns = tilt <= result.balanceTilt() && next > result.balanceTilt()
                    || tilt <= result.handOverTilt() && next > result.handOverTilt();
            if (step || hardest || turns || i == all.size() - 1) {
                shown.add(all.get(i));
            }
        }
        return shown;
    }

    private static Table tilts(String hull, List<TiltState> tilts, String which) {
        return AnswerSheets.table(Drawing.name("lowering", hull), "Hull " + hull + ": forces by tilt, " + which,
                Answers.TILTS, tilts);
    }

    /** Each part with the load case that governs it, the least margin first. */
    public static Table governing(String hull, LoweringResult result) {
        return chain(hull, result, result.chain().governing(), "each part at the load case that governs it, least"
                + " margin first; the file holds every load case");
    }

    /** Every part asked for every load case. */
    public static Table chain(String hull, LoweringResult result) {
        return chain(hull, result, result.chain().rows(), "every part asked for every load case");
    }

    private static Table chain(String hull, LoweringResult result, List<ChainRow> shown, String which) {
        return AnswerSheets.table(Drawing.name("parts", hull), "Hull " + hull + ": " + which
                + Marks.of(result.notes()), LoweringAnswers.CHAIN, LoweringAnswers.InChain.of(result.chain(), shown));
    }

    /** The parts with the least margin, short enough for one sheet. */
    public static Table sheetParts(String hull, LoweringResult result) {
        List<ChainRow> all = result.chain().governing();
        List<ChainRow> shown = all.stream().limit(SHEET_PARTS).toList();
        return AnswerSheets.table(Drawing.name("least-margins", hull), "Hull " + hull + ": the " + shown.size()
                + " parts of " + all.size() + " with the least margin" + Marks.of(result.notes()),
                LoweringAnswers.CHAIN.only("part", "case", "demand", "capacity", "unit", "factor", "required",
                "verdict"), LoweringAnswers.InChain.of(result.chain(), shown));
    }

    /** Where to stop and check. */
    public static Table holdPoints(String hull, LoweringResult result) {
        return holdPoints(hull, result.holdPoints());
    }

    /** Hold points with room for name, signature and time. */
    static Table holdPoints(String hull, List<HoldPoint> points) {
        List<List<String>> rows = new ArrayList<>();
        for (HoldPoint point : points) {
            rows.add(List.of(Integer.toString(rows.size() + 1), Words.degrees(point.tilt()), point.check(), "", "",
                    ""));
        }
        return new Table(Drawing.name("hold-points", hull), "Hull " + hull + ": hold points, to be signed", List.of(
                Column.number("number", "no."), Column.number("tilt_deg", "tilt (°)"),
                Column.words("check", "stop and check"), Column.words("name", "name"),
                Column.words("signature", "signature"), Column.words("time", "time")), rows);
    }

    /** Which balance is higher, in words with figures. */
    public static String balances(LoweringResult result) {
        Optional<String> hand = result.balances().hand().isPresent() ? Optional.of(Words.said(
                result.balances().hand().getAsDouble() / KILO, "kN")) : Optional.empty();
        return "With the hull lying, all lines together pull " + Words.said(result.balances().full() / KILO, "kN")
                + " by the full moment balance" + hand.map(h -> " and " + h + " by the hand balance").orElse("")
                + ". " + result.balances().words();
    }
}
