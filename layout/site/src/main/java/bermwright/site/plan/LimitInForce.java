// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Require;
import bermwright.shielding.dose.DoseLimit;
import bermwright.site.plan.ExposurePlan.From;
import bermwright.site.plan.ExposurePlan.Over;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A dose limit that holds: the plan's own, or a published one that the plan names.
 *
 * <p>A published limit gives quantity, time and what is counted. Where the plan gives a value beside the name, the
 * smaller of both holds; whatever else the plan gives otherwise than the published limit does not hold, and is named in
 * {@code differences}.
 *
 * @param quantity    {@code effective dose}, or the gray equivalent of skin, eye or blood-forming organs
 * @param from        what it counts
 * @param over        the time it runs over
 * @param limit       the limit (Sv; Gy-Eq for gray equivalents), above zero
 * @param source      where the value is from; a published one with its revision and the word that it is to be confirmed
 * @param published   the published limit that the plan names; empty where the limit is the plan's own
 * @param differences what the plan gives otherwise than the published limit, each in plain words
 */
public record LimitInForce(String quantity, From from, Over over, double limit, String source,
        Optional<DoseLimit> published, List<String> differences) {
    /** The quantity of a limit that names none. */
    public static final String EFFECTIVE_DOSE = "effective dose";
    private static final double MILLI = 1000;
    private static final int SHOWN_DIGITS = 6;
    /** Two values this near are the same (1): what the file's decimal figures leave. */
    private static final double SAME = 1e-9;

    /** Copies the list. */
    public LimitInForce {
        Require.positive("limit", limit, "Sv");
        differences = List.copyOf(differences);
    }

    /**
     * What it counts, in words.
     *
     * @return such as "effective dose from all sources over the whole stay"
     */
    public String words() {
        return quantity + " from " + from.words() + " over " + over.words();
    }

    /**
     * What holds of a limit that a plan gives.
     *
     * @param given the limit as the plan gives it
     * @return the limit in force
     * @throws IllegalArgumentException if it has neither a value nor the name of a published limit
     */
    public static LimitInForce of(ExposurePlan.Limit given) {
        if (given.published().isEmpty()) {
            return new LimitInForce(given.quantity().orElse(EFFECTIVE_DOSE), given.from().orElse(From.ALL),
                    given.over().orElse(Over.STAY), given.limit().orElse(Double.NaN),
                    given.source().orElse("the plan, which names no source"), Optional.empty(), List.of());
        }
        String name = given.published().get();
        DoseLimit published = DoseLimit.named(name).orElseThrow(() -> new IllegalArgumentException(
                "published is " + name + "; accepted: " + names()));
        From from = named(From.values(), From::word, published.from());
        Over over = named(Over.values(), Over::word, published.over());
        List<String> differences = new ArrayList<>();
        differs(given.quantity(), published.quantity(), "quantity", Function.identity()).ifPresent(differences::add);
        differs(given.from(), from, "from", From::word).ifPresent(differences::add);
        differs(given.over(), over, "over", Over::word).ifPresent(differences::add);
        double value = given.limit().orElse(published.limit());
        boolean isSame = Math.abs(value / published.limit() - 1) <= SAME;
        if (!isSame) {
            differences.add("limit_mSv " + figure(value) + " against " + figure(published.limit()));
        }
        boolean isOwn = !isSame && value < published.limit();
        String source = isOwn ? given.source().orElse("limit_mSv of the plan") + ", below the published limit "
                + name + " (" + published.source() + "; " + DoseLimit.CONFIRM + ")"
                : published.source() + "; " + DoseLimit.CONFIRM;
        return new LimitInForce(published.quantity(), from, over, isOwn ? value : published.limit(), source,
                Optional.of(published), differences);
    }

    /**
     * Whether the limit counts cosmic rays.
     *
     * @return false for a limit on an event
     */
    public boolean countsCosmic() {
        return from != From.EVENT && over != Over.EVENT;
    }

    /**
     * Whether the limit counts the event.
     *
     * @return false for a limit on cosmic rays alone
     */
    public boolean countsEvent() {
        return from != From.COSMIC;
    }

    /**
     * Names of the published limits that a plan may name.
     *
     * @return the names, in the order of the table
     */
    public static List<String> names() {
        return DoseLimit.all().stream().map(DoseLimit::name).toList();
    }

    private static String figure(double sieverts) {
        return new BigDecimal(sieverts * MILLI, new MathContext(SHOWN_DIGITS)).stripTrailingZeros().toPlainString();
    }

    private static <T> Optional<String> differs(Optional<T> given, T published, String key,
            Function<T, String> word) {
        return given.filter(g -> !g.equals(published)).map(g -> key + " \"" + word.apply(g) + "\" against \""
                + word.apply(published) + "\"");
    }

    private static <E> E named(E[] values, Function<E, String> word, String name) {
        return Arrays.stream(values).filter(v -> word.apply(v).equals(name)).findFirst().orElseThrow(
                () -> new IllegalStateException("the table of limits has a word nobody knows: " + name));
    }
}
