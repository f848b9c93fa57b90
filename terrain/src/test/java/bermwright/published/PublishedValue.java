// SPDX-License-Identifier: Apache-2.0
package bermwright.published;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

/** The printed figure a test is held against; every comparison is written to the list of checks. */
public final class PublishedValue {
    private final Published source;
    private final String test;
    private boolean read;

    PublishedValue(Published source, String test) {
        this.source = source;
        this.test = test;
    }

    /** The figure as printed, in its printed unit. */
    public double printed() {
        read = true;
        return source.printedValue();
    }

    /** Asserts that our answer, in the printed unit, is within the stated tolerance of the printed figure. */
    public void assertEqualTo(double ours) {
        read = true;
        double distance = Math.abs(ours - source.printedValue());
        boolean inside = distance <= source.tolerance();
        PublishedRecord.write(test, new PublishedRecord.Line(source.work(), source.place(), source.printedValue(),
                ours, source.unit(), source.tolerance(), source.remembered(), inside));
        assertTrue(inside, () -> String.format(Locale.ROOT, "%s, %s prints %s %s; ours is %s, off by %.6g, allowed %s",
                source.work(), source.place(), source.printedValue(), source.unit(), ours, distance,
                source.tolerance()));
    }

    boolean wasRead() {
        return read;
    }
}
