// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.Finding.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Says in sentences what doubts come to, from their figures alone. */
public final class DoubtWords {
    /** A gain of less than this changes nothing that anyone would notice (1). */
    private static final double NOTHING = 0.005;
    private static final double NAMED = 0.1;
    /** Left-out error above which nothing is said of what decides (1). */
    private static final double TRUSTED = 0.5;
    private static final int MOST = 3;
    /** A chance above this is told as a count of samples (1). */
    private static final double SURE = 0.985;

    private DoubtWords() {
    }

    /**
     * The sentences, one for each figure with a limit.
     *
     * @param doubts the doubts
     * @return the sentences; those on limits that every sample keeps, or none, are short
     */
    public static List<String> of(Doubts doubts) {
        return doubts.figures().stream().filter(f -> f.figure().limit().isPresent()).map(DoubtWords::of).toList();
    }

    /**
     * The sentence on one figure.
     *
     * @param f the figure, with a limit
     * @return the sentence
     */
    static String of(FigureDoubt f) {
        String what = "the limit of " + number(f.figure().limit().orElseThrow()) + (f.figure().unit().equals("1") ? ""
                : " " + f.figure().unit()) + " on " + f.figure().name();
        if (!f.varies()) {
            return text("%s is %s whatever the inputs are: nothing here that is not known touches it.",
                    capital(what), f.kept() == 1 ? "kept" : "not kept");
        }
        String chance = f.kept() == 1 ? text("%s is kept in every one of %d samples; nineteen of twenty lie between %s"
                + " and %s.", capital(what), f.values().size(), number(f.at(0.025)), number(f.at(0.975)))
                : f.kept() == 0 ? text("%s is kept in none of %d samples.", capital(what), f.values().size())
                : f.kept() > SURE || f.kept() < 1 - SURE ? text("%s is kept in %d of %d samples.", capital(what),
                        Math.round(f.kept() * f.values().size()), f.values().size())
                : text("The chance that %s is kept is %.2f.", what, f.kept());
        return chance + " " + deciding(f) + worth(f);
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
        if (f.worth().isEmpty() && f.leftOut() > TRUSTED) {
            return "";
        } else if (f.worth().isEmpty()) {
            return f.kept() == 1 || f.kept() == 0 ? " Finding out would not change the verdict." : "";
        }
        FigureDoubt.Worth best = f.worth().get(0);
        if (best.now() > SURE) {
            return " Finding out would hardly change the verdict.";
        }
        List<String> more = new ArrayList<>();
        f.worth().stream().filter(w -> w.then() - w.now() >= NOTHING).limit(MOST).forEach(w -> more.add(
                w.finding() + " would bring it to " + text("%.2f", w.then())));
        List<String> idle = f.worth().stream().filter(w -> w.then() - w.now() < NOTHING).map(FigureDoubt.Worth::finding)
                .distinct().limit(MOST).toList();
        return text(" The likelier verdict is right with a chance of %.2f", best.now())
                + (more.isEmpty() ? "; no single finding-out would change that." : ": " + String.join(", ", more)
                + (idle.isEmpty() ? "." : "; " + String.join(", ", idle) + " would change nothing."));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static String number(double value) {
        return Figures.number(value);
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
