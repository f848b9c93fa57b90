// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.Finding.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Says in sentences what doubts come to, from their figures alone. */
public final class DoubtWords {
    private static final double NAMED = 0.1;
    /** Left-out error above which nothing is said of what decides (1). */
    private static final double TRUSTED = 0.5;
    private static final int MOST = 3;
    /** A limit is in doubt where the chance that it is kept lies below this and above what is left to one (1). */
    private static final double SURE = 0.985;

    private DoubtWords() {
    }

    /**
     * The sentences on all figures with a limit.
     *
     * @param doubts the doubts
     * @return one each for those in doubt, the most doubtful first; then those that are sure, gathered by what they are
     */
    public static List<String> of(Doubts doubts) {
        return of(doubts.figures());
    }

    /**
     * The sentences on some figures.
     *
     * @param figures the figures; those without a limit say nothing
     * @return as of all of them
     */
    public static List<String> of(List<FigureDoubt> figures) {
        List<FigureDoubt> judged = figures.stream().filter(f -> f.figure().limit().isPresent()).toList();
        List<String> words = new ArrayList<>(judged.stream().filter(DoubtWords::isInDoubt)
                .sorted(Comparator.comparingDouble(DoubtWords::sureness)).map(DoubtWords::of).toList());
        gathered(judged, f -> f.varies() && !isInDoubt(f) && f.kept() > 0 && f.kept() < 1, "In all but a few of %d"
                + " samples it comes out alike, and finding out would hardly change the verdict", f -> limit(f)
                + " is kept in " + Math.round(f.kept() * f.values().size())).ifPresent(words::add);
        gathered(judged, f -> f.varies() && f.kept() == 0, "Kept in none of %d samples, so finding out would not change"
                + " the verdict (in brackets where nineteen of twenty lie)", DoubtWords::range).ifPresent(words::add);
        gathered(judged, f -> f.varies() && f.kept() == 1, "Kept in every one of %d samples, so finding out would not"
                + " change the verdict (in brackets where nineteen of twenty lie)", DoubtWords::range)
                .ifPresent(words::add);
        gathered(judged, f -> !f.varies(), "Touched by nothing here that is not known", f -> limit(f) + " is "
                + (f.kept() == 1 ? "kept" : "not kept")).ifPresent(words::add);
        return words;
    }

    /**
     * The figure whose limit is most in doubt; where none is, the one whose samples come nearest to it.
     *
     * @param figures the figures
     * @return the figure; empty where none with a limit varies
     */
    public static Optional<FigureDoubt> mostInDoubt(List<FigureDoubt> figures) {
        return figures.stream().filter(f -> f.varies() && f.figure().limit().isPresent())
                .min(Comparator.comparingDouble(DoubtWords::sureness).thenComparingDouble(DoubtWords::room));
    }

    /** Room from the middle to the limit, in half the middle two thirds of the samples. */
    private static double room(FigureDoubt f) {
        return Math.abs(f.figure().limit().orElseThrow() - f.at(0.5)) / Math.max(1e-300, f.at(0.84) - f.at(0.16));
    }

    private static double sureness(FigureDoubt f) {
        return Math.abs(f.kept() - 0.5);
    }

    private static boolean isInDoubt(FigureDoubt f) {
        return f.varies() && f.kept() > 1 - SURE && f.kept() < SURE;
    }

    private static Optional<String> gathered(List<FigureDoubt> all, Predicate<FigureDoubt> which, String head,
            Function<FigureDoubt, String> each) {
        List<FigureDoubt> some = all.stream().filter(which).toList();
        return some.isEmpty() ? Optional.empty() : Optional.of(text(head, some.get(0).values().size()) + ": "
                + some.stream().map(each).collect(Collectors.joining("; ")) + ".");
    }

    private static String range(FigureDoubt f) {
        return limit(f) + " (" + number(f.at(0.025)) + " to " + number(f.at(0.975)) + ")";
    }

    private static String limit(FigureDoubt f) {
        return (f.figure().isLeast() ? "the requirement of at least " : "the limit of ")
                + number(f.figure().limit().orElseThrow()) + (f.figure().unit().equals("1") ? ""
                : " " + f.figure().unit()) + " on " + f.figure().name();
    }

    /**
     * The sentence on one figure in doubt.
     *
     * @param f the figure, with a limit
     * @return the sentence
     */
    static String of(FigureDoubt f) {
        return text("The chance that %s is kept is %.2f. ", limit(f), f.kept()) + deciding(f) + worth(f);
    }

    private static String deciding(FigureDoubt f) {
        if (f.leftOut() > TRUSTED) {
            return "What decides it can't be told from these samples: the surrogate leaves out "
                    + text("%.0f %% of the variance.", 100 * Math.min(1, f.leftOut()));
        }
        List<String> parts = new ArrayList<>();
        for (FigureDoubt.GroupShare share : f.shares()) {
            if (parts.size() < MOST && share.total() >= NAMED) {
                parts.add(text("%.0f %% (\u00b1 %.0f) from %s", 100 * share.total(), Math.max(1, 100 * share.error()),
                        share.group()));
            }
        }
        return parts.isEmpty() ? "" : "Of the doubt come " + String.join(", ", parts) + ".";
    }

    private static String worth(FigureDoubt f) {
        if (f.worth().isEmpty()) {
            return "";
        }
        String now = chance(f.worth().get(0).now());
        List<String> more = f.worth().stream().filter(w -> !chance(w.then()).equals(now)).limit(MOST).map(w ->
                w.finding() + " would bring it to " + chance(w.then())).toList();
        List<String> idle = f.worth().stream().filter(w -> chance(w.then()).equals(now)).map(FigureDoubt.Worth::finding)
                .distinct().limit(MOST).toList();
        return " The likelier verdict is right with a chance of " + now
                + (more.isEmpty() ? "; no single finding-out would change that." : ": " + String.join(", ", more)
                + (idle.isEmpty() ? "." : "; " + String.join(", ", idle) + " would change nothing."));
    }

    private static String chance(double value) {
        return text("%.2f", value);
    }

    private static String number(double value) {
        return Figures.number(value);
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
