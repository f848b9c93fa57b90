// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.finding.Finding.Figures;
import bermwright.report.drawing.Bars;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Patterns;
import bermwright.report.drawing.Svg;
import bermwright.report.drawing.Ticks;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.FigureDoubt;
import bermwright.site.doubt.UncertainInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Pictures and tables of what is in doubt.
 *
 * @param doubts the doubts
 */
public record DoubtSheets(Doubts doubts) {
    private static final double PERCENT = 100;
    private static final int MOST_BARS = 10;
    private static final int BINS = 36;
    private static final double WIDTH = 860;
    private static final double LEFT = 76;
    private static final double TOP = 92;
    private static final double HEIGHT = 260;
    private static final double INSIDE = 0.0005;

    /** What decides a figure: bars ranked by share. */
    public Drawing shares(FigureDoubt figure) {
        List<Bars.Bar> bars = new ArrayList<>();
        for (FigureDoubt.GroupShare share : figure.shares()) {
            if (bars.size() < MOST_BARS && share.total() > INSIDE) {
                double low = PERCENT * Math.max(0, share.total() - share.error());
                double high = PERCENT * Math.min(1, share.total() + share.error());
                bars.add(new Bars.Bar(share.group(), List.of(PERCENT * share.first(),
                        PERCENT * Math.max(0, share.total() - share.first())), low, high,
                        String.format(Locale.ROOT, "%.0f %%", PERCENT * share.total())));
            }
        }
        return new Bars(Drawing.name("shares", figure.figure().id()), "What decides: " + figure.figure().name(),
                String.format(Locale.ROOT, "share of the doubt, as variance (%%); %.1f %% of it is not explained so",
                        PERCENT * figure.leftOut()), List.of("by itself", "together with others"), bars, List.of())
                .drawing();
    }

    /** How often the figure comes out where, against its limit. */
    public Drawing distribution(FigureDoubt figure) {
        List<Double> all = figure.values();
        double least = all.get(0);
        double most = all.get(all.size() - 1);
        if (figure.figure().limit().isPresent()) {
            double limit = figure.figure().limit().getAsDouble();
            double reach = 3 * Math.max(most - least, 1e-9);
            least = limit > least - reach ? Math.min(least, limit) : least;
            most = limit < most + reach ? Math.max(most, limit) : most;
        }
        Ticks ticks = Ticks.linear(least, most > least ? most : least + 1, 8);
        double scale = (WIDTH - LEFT - 24) / (ticks.high() - ticks.low());
        Svg svg = new Svg(Drawing.name("distribution", figure.figure().id()));
        String title = "How it may come out: " + figure.figure().name();
        svg.text(new Dot(12, 22), title, "font-size", "15", "font-weight", "bold");
        Patterns.values()[0].define(svg, "kept", Ink.BLUE, "#cfe3f0");
        Patterns.values()[1].define(svg, "broken", Ink.RED, "#f7ddc9");
        legend(svg, figure);
        columns(svg, figure, ticks, scale);
        for (double mark : ticks.marks()) {
            svg.text(new Dot(LEFT + (mark - ticks.low()) * scale, TOP + HEIGHT + 18), ticks.words(mark), "text-anchor",
                    "middle");
        }
        svg.line(new Dot(LEFT, TOP + HEIGHT), new Dot(WIDTH - 24, TOP + HEIGHT), "stroke", Ink.BLACK);
        svg.text(new Dot(12, TOP + 14), "more");
        svg.text(new Dot(12, TOP + 28), "samples");
        svg.text(new Dot(26, TOP + 46), "\u2191", "font-size", "15");
        String unit = figure.figure().unit().equals("1") ? "" : " (" + figure.figure().unit() + ")";
        svg.text(new Dot((LEFT + WIDTH) / 2, TOP + HEIGHT + 38), figure.figure().name() + unit, "text-anchor", "middle",
                "font-size", "13");
        return svg.drawing(title, new Dot(WIDTH, TOP + HEIGHT + 52));
    }

    private void legend(Svg svg, FigureDoubt figure) {
        svg.text(new Dot(12, 44), String.format(Locale.ROOT, "%d samples: 16th percentile %s, middle %s, 84th"
                + " percentile %s", figure.values().size(), number(figure.at(0.16)), number(figure.at(0.5)),
                number(figure.at(0.84))));
        if (figure.figure().limit().isPresent()) {
            svg.box(new Dot(12, 54), new Dot(26, 14), "fill", svg.reference("kept"), "stroke", Ink.BLACK);
            svg.text(new Dot(44, 66), "limit kept in " + Math.round(figure.kept() * figure.values().size()) + " of "
                    + figure.values().size());
            svg.box(new Dot(240, 54), new Dot(26, 14), "fill", svg.reference("broken"), "stroke", Ink.BLACK);
            svg.text(new Dot(272, 66), "limit not kept");
        }
    }

    private void columns(Svg svg, FigureDoubt figure, Ticks ticks, double scale) {
        double from = figure.values().get(0);
        double to = figure.values().get(figure.values().size() - 1);
        double wide = to > from ? (to - from) / BINS : 1;
        int[] counts = new int[BINS];
        figure.values().forEach(v -> counts[(int) Math.max(0, Math.min(BINS - 1, (v - from) / wide))]++);
        int greatest = 1;
        for (int count : counts) {
            greatest = Math.max(greatest, count);
        }
        for (int i = 0; i < BINS; i++) {
            double middle = from + (i + 0.5) * wide;
            double tall = HEIGHT * 0.92 * counts[i] / greatest;
            if (counts[i] > 0) {
                svg.box(new Dot(LEFT + (from + i * wide - ticks.low()) * scale, TOP + HEIGHT - tall),
                        new Dot(Math.max(1, wide * scale), tall), "fill",
                        svg.reference(figure.figure().keeps(middle) ? "kept" : "broken"), "stroke", Ink.BLACK,
                        "stroke-width", "0.6");
            }
        }
        best(svg, figure, LEFT + (figure.best() - ticks.low()) * scale);
        figure.figure().limit().ifPresent(limit -> {
            double x = LEFT + (limit - ticks.low()) * scale;
            if (x >= LEFT && x <= WIDTH - 24) {
                svg.line(new Dot(x, TOP - 8), new Dot(x, TOP + HEIGHT), "stroke", Ink.RED, "stroke-width", "2.2",
                        "stroke-dasharray", "7 4");
                svg.text(new Dot(x > WIDTH / 2 ? x - 6 : x + 6, TOP - 2), "limit: " + reach(figure) + number(limit),
                        "text-anchor",
                        x > WIDTH / 2 ? "end" : "start", "font-weight", "bold");
            } else {
                svg.text(new Dot(x > LEFT ? WIDTH - 30 : LEFT, TOP - 2), "limit: " + reach(figure) + number(limit)
                        + ", far off "
                        + (x > LEFT ? "to the right" : "to the left"), "text-anchor", x > LEFT ? "end" : "start",
                        "font-weight", "bold");
            }
        });
    }

    private static String reach(FigureDoubt figure) {
        return figure.figure().isLeast() ? "at least " : "at most ";
    }

    /** A line at the value with best inputs, its words above the columns. */
    private static void best(Svg svg, FigureDoubt figure, double x) {
        if (x >= LEFT && x <= WIDTH - 24) {
            svg.line(new Dot(x, TOP + 4), new Dot(x, TOP + HEIGHT), "stroke", Ink.BLACK, "stroke-width",
                    "1.6");
            boolean isLeft = figure.figure().limit().isPresent() ? figure.best() < figure.figure().limit().getAsDouble()
                    : x > WIDTH / 2;
            svg.text(new Dot(isLeft ? x - 6 : x + 6, TOP + 14), "with best inputs "
                    + number(figure.best()), "text-anchor", isLeft ? "end" : "start", "stroke", "#ffffff",
                    "stroke-width", "3", "paint-order", "stroke");
        }
    }

    /** The distribution of every figure. */
    public Table figures() {
        return new Table("figures", "Main figures as they may come out", List.of(Column.words("figure", "figure"),
                Column.words("unit", "unit"), Column.number("best", "best inputs"),
                Column.number("percentile_5", "5th percentile"), Column.number("percentile_16", "16th percentile"),
                Column.number("middle", "middle"), Column.number("percentile_84", "84th percentile"),
                Column.number("percentile_95", "95th percentile"), Column.number("limit", "limit"),
                Column.number("kept_chance", "chance that it is kept"), Column.words("decides", "what decides most")),
                doubts.figures().stream().map(f -> List.of(f.figure().name(), f.figure().unit(), number(f.best()),
                        number(f.at(0.05)), number(f.at(0.16)), number(f.at(0.5)), number(f.at(0.84)),
                        number(f.at(0.95)), f.figure().limit().isPresent() ? number(f.figure().limit().getAsDouble())
                                : "", Double.isNaN(f.kept()) ? "" : String.format(Locale.ROOT, "%.3f", f.kept()),
                        f.shares().isEmpty() ? "nothing here" : String.format(Locale.ROOT, "%s, %.0f %%",
                                f.shares().get(0).group(), PERCENT * f.shares().get(0).total()))).toList());
    }

    /** The chance of each finding. */
    public Table findings() {
        return new Table("findings", "Chance of each finding", List.of(Column.words("finding", "finding"),
                Column.words("best", "with best inputs"), Column.number("refuses", "chance that it refuses"),
                Column.number("warns", "chance that it warns"), Column.number("notes", "chance of a note")),
                doubts.findings().stream().map(this::row).toList());
    }

    /** The chance of each finding that may or may not refuse or warn. */
    public Table uncertain() {
        Table all = findings();
        return new Table("findings-in-doubt", "Findings that may come out either way", all.columns(),
                doubts.findings().stream().filter(f -> isEither(f.refuses()) || isEither(f.warns())).map(this::row)
                        .toList());
    }

    private static boolean isEither(double chance) {
        return chance > INSIDE && chance < 1 - INSIDE;
    }

    private List<String> row(Doubts.FindingChance f) {
        return List.of(f.id(), f.best().map(l -> l.word()).orElse("not found"), chance(f.refuses()), chance(f.warns()),
                chance(f.notes()));
    }

    /** What each group of inputs has in each figure. */
    public Table shareTable() {
        List<List<String>> rows = new ArrayList<>();
        doubts.figures().forEach(f -> f.shares().forEach(s -> rows.add(List.of(f.figure().name(), s.group(),
                chance(s.first()), chance(s.total()), chance(s.error()), chance(f.leftOut())))));
        return new Table("shares", "Shares of the inputs in the figures", List.of(Column.words("figure", "figure"),
                Column.words("input", "input"), Column.number("first_order", "by itself"),
                Column.number("total_order", "together with others"), Column.number("error", "may be off by"),
                Column.number("left_out_error", "left-out error of the surrogate")), rows);
    }

    /** What is not known, and where its spread is from. */
    public Table inputs() {
        return new Table("inputs", "What is not known exactly", List.of(Column.words("input", "input"),
                Column.number("best", "best value"), Column.number("spread", "one standard deviation"),
                Column.words("unit", "unit"), Column.words("source", "source of the spread")),
                doubts.inputs().stream().map(i -> List.of(i.group(), number(i.value()), i.spread() > 0
                        ? number(i.spread()) : isFactor(i) ? "band of each dose" : "0", i.unit(), i.source()))
                        .toList());
    }

    /** How well what was kept holds. */
    public Table confirmed() {
        return new Table("confirmed", "Quick samples against the full assessment", List.of(
                Column.words("figure", "figure"), Column.number("samples_1", "samples"),
                Column.number("middle_difference_percent", "half differ by less than (%)"),
                Column.number("greatest_difference_percent", "greatest difference (%)")),
                doubts.inFull().confirmed().stream().map(c -> List.of(c.figure().name(),
                Integer.toString(doubts.inFull().samples()), String.format(Locale.ROOT, "%.2f", PERCENT * c.middle()),
                String.format(Locale.ROOT, "%.2f", PERCENT * c.greatest()))).toList());
    }

    private static boolean isFactor(UncertainInput input) {
        return input.unit().equals("1") && input.targets().isEmpty();
    }

    private static String chance(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String number(double value) {
        return Figures.number(value);
    }
}
