// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

/**
 * The values a key accepts, in the key's own unit.
 *
 * @param least         least value, minus infinity for none
 * @param leastItself   whether the least value itself is accepted
 * @param greatest      greatest value, infinity for none
 * @param greatestItself whether the greatest value itself is accepted
 */
public record Range(double least, boolean leastItself, double greatest, boolean greatestItself) {
    /**
     * Both ends accepted.
     *
     * @param least    least value, in the key's unit
     * @param greatest greatest value, in the key's unit
     * @return the range
     */
    public static Range between(double least, double greatest) {
        return new Range(least, true, greatest, true);
    }

    /**
     * Above a value, up to another.
     *
     * @param least    value below the range, in the key's unit
     * @param greatest greatest value, in the key's unit
     * @return the range
     */
    public static Range above(double least, double greatest) {
        return new Range(least, false, greatest, true);
    }

    /**
     * Between two values, neither of them accepted.
     *
     * @param least    value below the range, in the key's unit
     * @param greatest value above the range, in the key's unit
     * @return the range
     */
    public static Range inside(double least, double greatest) {
        return new Range(least, false, greatest, false);
    }

    /**
     * Whether a value is accepted; what is not a number never is.
     *
     * @param value the value, in the key's unit
     * @return true where it is accepted
     */
    public boolean contains(double value) {
        boolean low = leastItself ? value >= least : value > least;
        boolean high = greatestItself ? value <= greatest : value < greatest;
        return low && high;
    }

    /**
     * The range in words.
     *
     * @return such as {@code greater than 0, at most 500}
     */
    public String words() {
        if (leastItself && greatestItself) {
            return JsonText.number(least) + " to " + JsonText.number(greatest);
        }
        return (leastItself ? "at least " : "greater than ") + JsonText.number(least)
                + (greatestItself ? ", at most " : ", less than ") + JsonText.number(greatest);
    }
}
