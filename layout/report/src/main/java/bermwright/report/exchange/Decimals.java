// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

/** Numbers in plain decimal form, the same everywhere; made for files of many numbers. */
final class Decimals {
    private static final long[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000};

    private Decimals() {
    }

    /**
     * A number with so many decimals, halves rounded up.
     *
     * @param value    the number, finite, below 1e10
     * @param decimals how many decimals (1), 1 to 8
     */
    static String of(double value, int decimals) {
        return append(new StringBuilder(24), value, decimals).toString();
    }

    static StringBuilder append(StringBuilder to, double value, int decimals) {
        if (!(Math.abs(value) < 1e10)) {
            throw new IllegalArgumentException("number " + value + "; accepted: finite, below 1e10");
        }
        long whole = Math.round(value * TENS[decimals]);
        if (whole < 0) {
            to.append('-');
        }
        long size = Math.abs(whole);
        String rest = Long.toString(size % TENS[decimals]);
        return to.append(size / TENS[decimals]).append('.').append("00000000", 0, decimals - rest.length())
                .append(rest);
    }

    /** The same without the zeros that end it, and without a point that nothing follows. */
    static StringBuilder appendTrimmed(StringBuilder to, double value, int decimals) {
        append(to, value, decimals);
        int end = to.length();
        while (to.charAt(end - 1) == '0') {
            end--;
        }
        to.setLength(to.charAt(end - 1) == '.' ? end - 1 : end);
        return to;
    }
}
