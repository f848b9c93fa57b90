// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import java.util.List;
import java.util.Objects;

/**
 * The distribution of a figure and what decides it.
 *
 * @param figure  the figure
 * @param best    its value with every input at its best
 * @param values  its values in the samples, from the least
 * @param kept    chance that its limit is kept (1); not a number where it has none
 * @param shares  what each group of inputs has in its variance, the greatest first; none where it does not vary
 * @param leftOut left-out error of the surrogate behind the shares, as a share of the variance (1)
 * @param worth   what finding out would be worth, the most first; none where no limit is in doubt
 */
public record FigureDoubt(Figure figure, double best, List<Double> values, double kept, List<GroupShare> shares,
        double leftOut, List<Worth> worth) {
    /** Copies the lists. */
    public FigureDoubt {
        Objects.requireNonNull(figure, "figure");
        values = List.copyOf(values);
        shares = List.copyOf(shares);
        worth = List.copyOf(worth);
    }

    /**
     * What a group of inputs has in the variance of a figure.
     *
     * @param group the group
     * @param first by itself (1)
     * @param total together with others too (1)
     * @param error what both may be off by (1)
     */
    public record GroupShare(String group, double first, double total, double error) {
    }

    /**
     * What finding out would be worth.
     *
     * @param finding what is found out
     * @param now     chance that the verdict on the limit is right now (1): that of the likelier one
     * @param then    the same once it was found out, in the mean over what may come out (1)
     */
    public record Worth(String finding, double now, double then) {
    }

    /**
     * A percentile of the figure.
     *
     * @param share share of the samples below it (1), 0 to 1
     * @return the value, in the figure's unit
     */
    public double at(double share) {
        double place = share * (values.size() - 1);
        int below = (int) Math.floor(place);
        double low = values.get(below);
        double high = values.get(Math.min(values.size() - 1, below + 1));
        return low + (place - below) * (high - low);
    }

    /**
     * Whether it varies at all.
     *
     * @return false where all samples have one value
     */
    public boolean varies() {
        return !shares.isEmpty();
    }
}
